//! The truth of cover against a search through all triangles of a fine tray.

use crate::common;
use phantom::{Arch, Options, Phantom};

#[test]
fn cover_by_formula_is_the_distance_to_a_fine_tray_mesh() {
    for (arch, seed) in [(Arch::Maxillary, 3), (Arch::Mandibular, 4)] {
        let made = Phantom::new(&Options {
            arch,
            seed,
            edge_mm: 0.8,
            tray_edge_mm: 0.17,
            ..Options::default()
        });
        let tray = made.tray.moved(&made.truth.impression_from_tray);
        // Where the tray itself is the surface, the search would only show how
        // a mesh cuts the corner between tray and handle.
        let material: Vec<_> = made
            .impression
            .vertices()
            .iter()
            .filter(|p| made.truth.cover_at(p) > 0.3)
            .collect();
        for p in material.iter().step_by(material.len() / 80) {
            let (formula, searched) = (made.truth.cover_at(p), common::distance_to(&tray, p));
            assert!(
                (formula - searched).abs() < 0.01,
                "{arch:?}: {formula} but {searched} at {p}"
            );
        }
    }
}
