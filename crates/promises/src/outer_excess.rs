//! Material on the outer faces of the tray: planted pads, and impressions without.

use crate::Population;
use measure::{MeasureSettings, Measuring};
use phantom::{Options, OuterExcess, Phantom, TrayForm};
use serde::{Deserialize, Serialize};

/// What was measured of one impression.
#[derive(Debug, Serialize, Deserialize)]
struct Row {
    /// Found over planted.
    area_ratio: f64,
    /// Greatest thickness beyond the planted, and its stated uncertainty, mm.
    thicker_mm: [f64; 2],
    off_mm: f64,
    /// Found in the same impression without a pad, mm².
    without_mm2: f64,
}

/// A pad of material under the tray is as large and as thick as it was planted; usual lap and
/// plugs in holes are none.
pub fn material_on_the_outer_faces_is_measured(population: Population) {
    let asked = population.asked("outer-excess");
    let rows: Vec<Row> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        let planted = OuterExcess {
            station: -0.5 + 0.2 * (seed % 6) as f64,
            radius_mm: 3.0 + 0.5 * (seed % 4) as f64,
            thickness_mm: 1.5 + 0.5 * (seed % 3) as f64,
        };
        let measured = |pads: Vec<OuterExcess>| {
            let made = Phantom::new(&Options {
                arch,
                seed: 800 + seed,
                edge_mm: 0.4,
                tray_edge_mm: 0.4,
                noise_sd_mm: 0.015,
                outer_excess: pads,
                tray_form: TrayForm {
                    hole_radius_mm: if seed.is_multiple_of(2) { 1.25 } else { 0.0 },
                    holes_apart_mm: 7.0,
                    rolled_rim_mm: 0.0,
                },
                ..Options::default()
            });
            let settings = MeasureSettings::default();
            let measuring = Measuring::new(&made.impression, Some(&made.tray), &settings);
            (made.truth.outer_excess, measuring.outer_excess().copied())
        };
        let (truth, found) = measured(vec![planted]);
        let found = found.unwrap_or_else(|| panic!("{arch:?} {seed}: nothing found"));
        let (_, without) = measured(Vec::new());
        Row {
            area_ratio: found.area_mm2.value / truth[0].area_mm2,
            thicker_mm: [
                found.thickest_mm.value - truth[0].thickness_mm,
                found.thickest_mm.uncertainty,
            ],
            off_mm: (found.at - truth[0].foot).norm(),
            without_mm2: without.map_or(0.0, |excess| excess.area_mm2.value),
        }
    });
    let range = |of: fn(&Row) -> f64| {
        let figures = rows.iter().map(of);
        let least = figures.clone().fold(f64::INFINITY, f64::min);
        [least, figures.fold(f64::NEG_INFINITY, f64::max)]
    };
    let [least, most] = range(|row| row.area_ratio);
    let [thinner, thicker] = range(|row| row.thicker_mm[0]);
    let [_, without] = range(|row| row.without_mm2);
    asked.figure(
        "pads of 30 to 100 mm² under the tray, edges 0.4 mm, noise 0.015 mm: area over the truth's; greatest thickness off; without a pad at most",
        "0.85 to 1.15; 0.1 mm; 50 mm²",
        format!("{least:.2} to {most:.2}; {thinner:.2} to {thicker:.2} mm; {without:.0} mm²"),
    );
    assert!(least >= 0.85 && most <= 1.15, "{rows:?}");
    assert!(thinner >= -0.1 && thicker <= 0.1, "{rows:?}");
    assert!(without <= 50.0, "{rows:?}");
    assert!(rows.iter().all(|row| row.off_mm <= 9.0), "{rows:?}");
}
