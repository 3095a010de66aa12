//! Frames of sound impressions: axes within three degrees, right and jaw
//! correct in all.

use crate::Population;
use measure::frame;
use nalgebra::Vector3;
use phantom::{Arch, Sides};

fn degrees(a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    a.angle(b).to_degrees()
}

fn is(found: measure::Arch, made: Arch) -> bool {
    matches!(
        (found, made),
        (measure::Arch::Maxillary, Arch::Maxillary) | (measure::Arch::Mandibular, Arch::Mandibular)
    )
}

/// Frames of scans of both sides.
pub fn of_both_sides(population: Population) {
    are_right(population, "frame-both-sides", Sides::Both);
}

/// Frames of scans of the tissue side alone.
pub fn of_the_tissue_side(population: Population) {
    are_right(population, "frame-tissue-side", Sides::Tissue);
}

fn are_right(population: Population, promise: &'static str, sides: Sides) {
    let asked = population.asked(promise);
    let errors: Vec<[f64; 2]> = asked.rows(population.both_jaws(0, 16), |&(arch, seed)| {
        let phantom = fixtures::coarse(arch, seed, sides);
        let scan = &phantom.impression;
        let found = frame::find(scan).expect("a phantom is an impression");
        let (found, truth) = (found.frame, &phantom.truth.axes);
        assert!(is(found.arch, arch), "{arch:?} {seed}: {:?}", found.arch);
        assert!(found.right.dot(&truth.right) > 0.9, "{arch:?} {seed}: side");
        [
            degrees(&found.seating, &truth.seating),
            degrees(&found.anterior, &truth.anterior),
        ]
    });
    let greatest = |i: usize| errors.iter().map(|e| e[i]).fold(0.0, f64::max);
    let (seating, anterior) = (greatest(0), greatest(1));
    asked.figure(
        "greatest error of the seating axis, of the anterior axis; right and jaw",
        "3°; all correct",
        format!("{seating:.1}°, {anterior:.1}°; all"),
    );
    assert!(seating < 3.0 && anterior < 3.0);
}
