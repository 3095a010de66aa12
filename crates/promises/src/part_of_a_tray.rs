//! Scans of a tray that do not hold all of it.

use crate::Population;
use measure::{MeasureSettings, Measuring, NoCoverHere};
use phantom::{Options, Phantom};
use serde::{Deserialize, Serialize};

/// Farther than this from the cut, mm, a place of the tissue surface belongs to one
/// part of the tray alone.
const BESIDE_THE_CUT_MM: f64 = 4.0;

#[derive(Serialize, Deserialize)]
struct Row {
    /// Share of the places over the part that is missing for which cover is given.
    invented: f64,
    /// Share of the places over the part that is there for which it is given.
    known: f64,
    says_why: bool,
}

/// Where the tray's scan lacks its back half, no cover is given; before it, it is.
pub fn no_cover_where_no_tray_was_scanned(population: Population) {
    let asked = population.asked("part-of-a-tray");
    let rows: Vec<Row> = asked.rows(population.jaws_in_turn(3), |&(arch, seed)| {
        let made = Phantom::new(&Options {
            arch,
            seed: 950 + seed,
            edge_mm: 0.6,
            tray_edge_mm: 0.6,
            ..Options::default()
        });
        let (axes, crest) = (made.truth.axes, &made.truth.crest_line);
        let along = |p: &nalgebra::Point3<f64>| axes.anterior.dot(&p.coords);
        let front = crest.iter().map(along).fold(f64::MIN, f64::max);
        let back = crest.iter().map(along).fold(f64::MAX, f64::min);
        let cut = f64::midpoint(front, back);
        let to_impression = made.truth.impression_from_tray;
        let tray = made.tray.filtered(|t| {
            let is_front = |p| along(&(to_impression * p)) > cut;
            made.tray.corners(t).into_iter().all(is_front)
        });
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&made.impression, Some(&tray), &settings);
        let cover = measuring.cover().expect("an impression");
        let cover = cover.expect("the part that is there is found");
        let given = |is_wanted: &dyn Fn(f64) -> bool| {
            let places = (cover.at_vertex_mm.iter())
                .zip(made.impression.vertices())
                .filter(|(_, p)| made.truth.is_tissue_side(p) && is_wanted(along(p)));
            let known = places.clone().filter(|(mm, _)| mm.is_some()).count();
            known as f64 / places.count() as f64
        };
        Row {
            invented: given(&|y| y < cut - BESIDE_THE_CUT_MM),
            known: given(&|y| y > cut + BESIDE_THE_CUT_MM),
            says_why: cover.gaps.iter().any(|gap| gap.why == NoCoverHere::NoTray),
        }
    });
    let worst = |of: fn(&Row) -> f64| rows.iter().map(of).fold(0.0, f64::max);
    let (invented, unknown) = (worst(|row| row.invented), worst(|row| 1.0 - row.known));
    asked.figure(
        "tray scan without its back half: cover given there; not given before the cut, at worst",
        "0; 0 %",
        format!("{:.1}; {:.1} %", 100.0 * invented, 100.0 * unknown),
    );
    assert!(invented < 0.01 && unknown < 0.02);
    assert!(rows.iter().all(|row| row.says_why));
}
