//! Thickness of a wash over its first pass, and cover under it at the places of
//! the first pass, over phantoms whose tissue surface is raised by a formula.

use crate::Population;
use crate::wash_pair::WashPair;
use fixtures::quantile;
use nalgebra::Point3;
use phantom::PlantedSpot;

/// Thickness of the planted wash, mm: 0.15 to 0.8, in waves over the arch.
fn planted_mm(p: &Point3<f64>) -> f64 {
    0.475 + 0.325 * (p.x / 9.0).sin() * (p.y / 13.0).cos()
}

/// A wash of 0.15 to 0.8 mm, and the cover under it at the places of the first
/// pass.
pub fn a_planted_wash_is_recovered_and_its_places_are_told(population: Population) {
    let promise = population.asked("wash");
    let trials = population.both_jaws(0, 3);
    let outcomes: Vec<(Vec<f64>, Vec<f64>, [usize; 3])> = promise.rows(trials, |&(arch, seed)| {
        let spots = PlantedSpot::random(arch, seed, 3, 2);
        let pair = WashPair::new((arch, seed), spots, |p, _| planted_mm(p));
        let found = pair
            .compared(&pair.first_pass(), &pair.second_pass(true))
            .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"))
            .wash
            .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"));
        let wash = &pair.wash;
        let vertices = wash.impression.vertices().iter();
        let mut errors: Vec<f64> = vertices
            .zip(&found.at_vertex_mm)
            .filter(|(p, _)| wash.truth.is_tissue_side(p))
            .filter_map(|(p, measured)| Some((measured.as_ref()? - planted_mm(p)).abs()))
            .collect();
        let held = errors
            .iter()
            .filter(|e| **e <= found.uncertainty_mm)
            .count();
        let share = held as f64 / errors.len() as f64;
        let (median, p95) = (quantile(&mut errors, 0.5), quantile(&mut errors, 0.95));
        let mut told = [0; 3];
        for place in &found.places {
            let now = place.cover_mm.expect("the wash was scanned whole");
            // Both phantoms have the same spots, in the same order.
            let near = |a: &Point3<f64>| (a - place.at).norm();
            let truth = wash
                .truth
                .spots
                .iter()
                .min_by(|a, b| near(&a.centre).total_cmp(&near(&b.centre)));
            let truth = truth.expect("spots were planted");
            let reach = (place.area_mm2 / std::f64::consts::PI).sqrt();
            let expected = (pair.raised())
                .filter(|(p, made)| near(p) <= reach && wash.truth.is_tissue_side(made))
                .map(|(p, _)| wash.truth.cover_at(p))
                .fold(f64::INFINITY, f64::min);
            told[0] += 1;
            told[1] += usize::from((now - expected).abs() <= 0.1);
            told[2] += usize::from(near(&truth.centre) <= 2.0);
        }
        assert!(!pair.first.truth.spots.is_empty());
        (vec![median, p95], vec![share, found.uncertainty_mm], told)
    });
    let mut medians: Vec<f64> = outcomes.iter().map(|o| o.0[0]).collect();
    let worst = medians.iter().copied().fold(0.0, f64::max);
    let worst_p95 = outcomes.iter().map(|o| o.0[1]).fold(0.0, f64::max);
    let least_held = outcomes.iter().map(|o| o.1[0]).fold(1.0, f64::min);
    let stated = outcomes.iter().map(|o| o.1[1]).fold(0.0, f64::max);
    let told = outcomes
        .iter()
        .fold([0; 3], |sum, o| [0, 1, 2].map(|i| sum[i] + o.2[i]));
    promise.figure(
        "0.15 to 0.8 mm, edges 0.4 mm, noise 0.02 mm: absolute error, median (worst pair); 95th percentile of the worst pair",
        "worst median 0.03 mm",
        format!("{:.4} mm ({worst:.4}); {worst_p95:.3} mm", quantile(&mut medians, 0.5)),
    );
    promise.figure(
        "stated uncertainty at most; holds the error, least",
        "none; 90 %",
        format!("{stated:.3} mm; {:.1} %", 100.0 * least_held),
    );
    promise.figure(
        "cover under the wash at the places of the first pass, within 0.1 mm; at a planted place",
        "95 %; all",
        format!("{1} of {0}; {2} of {0}", told[0], told[1], told[2]),
    );
    assert!(worst <= 0.03);
    assert!(least_held >= 0.9);
    assert_eq!(told[0], told[2]);
    assert!(told[1] * 20 >= told[0] * 19);
}
