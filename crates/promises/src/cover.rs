//! Cover over the tray beside the formula.

use crate::Population;
use crate::errors::Errors;
use measure::{MeasureSettings, Measuring};
use phantom::{Options, Phantom};

/// Cover by the tray's scan, at every vertex: edges 0.25 mm, noise 0.02 mm.
pub fn by_the_trays_scan(population: Population) {
    let asked = population.asked("cover-by-the-tray-scan");
    let rows: Vec<Errors> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        let phantom = Phantom::new(&Options {
            arch,
            seed: 200 + seed,
            edge_mm: 0.25,
            tray_edge_mm: 0.35,
            noise_sd_mm: 0.02,
            handle: seed % 3 != 0,
            ..Options::default()
        });
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&phantom.impression, Some(&phantom.tray), &settings);
        let cover = measuring.cover().expect("an impression");
        (cover.expect("the tray is there").at_vertex_mm.iter())
            .zip(phantom.impression.vertices())
            .filter_map(|(cover, p)| Some(cover.as_ref()? - phantom.truth.cover_at(p)))
            .collect()
    });
    let errors = Errors::merged(rows);
    let (middle, most) = (errors.quantile(0.5), errors.quantile(0.95));
    asked.figure(
        "edges 0.25 mm, noise 0.02 mm: absolute error, median and 95th percentile",
        "0.03, 0.10 mm",
        format!("{middle:.3}, {most:.3} mm over {} places", errors.count()),
    );
    assert!(middle <= 0.03 && most <= 0.10);
}
