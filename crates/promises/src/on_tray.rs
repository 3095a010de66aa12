//! Where the tray is to be relieved, found again on its own scan.

use crate::Population;
use measure::tray_fit::Amount;
use measure::{MeasureSettings, Measuring};
use nalgebra::Point3;
use phantom::{Options, Phantom, PlantedSpot};
use serde::{Deserialize, Serialize};

/// One planted place: errors of what is said of it on the tray, mm.
#[derive(Serialize, Deserialize)]
struct Row {
    place: f64,
    wall: Option<Error>,
    to_rim: Option<Error>,
    to_front: Option<Error>,
}

#[derive(Clone, Copy, Serialize, Deserialize)]
pub(crate) struct Error {
    pub(crate) off: f64,
    pub(crate) uncertainty: f64,
}

impl Error {
    fn of(found: Option<Amount>, truth: f64) -> Option<Self> {
        found.map(|found| Self {
            off: (found.value - truth).abs(),
            uncertainty: found.uncertainty,
        })
    }
}

/// Places of show-through on the tray's scan: where they lie, how thick the wall is there,
/// and how far from the rim and from the middle of the front they are.
pub fn places_of_relief_are_found_on_the_tray(population: Population) {
    let asked = population.asked("places-on-the-tray");
    let rows: Vec<Vec<Row>> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        let made = Phantom::new(&Options {
            arch,
            seed: 1200 + seed,
            edge_mm: 0.5,
            tray_edge_mm: 0.5,
            noise_sd_mm: 0.02,
            spots: PlantedSpot::random(arch, seed, 3, 1),
            ..Options::default()
        });
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&made.impression, Some(&made.tray), &settings);
        let rim = made.truth.tray_outer_rim();
        let front = rim[rim.len() / 2];
        let spots = measuring.spots().iter().zip(measuring.on_tray());
        spots
            .map(|(spot, on_tray)| {
                let found = on_tray.as_ref().expect("the tray was placed");
                let truth = made.truth.on_tray(&spot.centre);
                let to_rim = rim
                    .iter()
                    .map(|p| (p - truth).norm())
                    .fold(f64::MAX, f64::min);
                Row {
                    place: (found.at - truth).norm(),
                    wall: Error::of(found.wall_mm, made.truth.tray_thickness_mm),
                    to_rim: Error::of(found.to_outer_rim_mm, to_rim),
                    to_front: Error::of(found.to_front_mm, distance(&front, &truth)),
                }
            })
            .collect()
    });
    let rows: Vec<Row> = rows.into_iter().flatten().collect();
    let worst = |of: fn(&Row) -> Option<Error>| {
        rows.iter()
            .filter_map(of)
            .map(|error| error.off)
            .fold(0.0, f64::max)
    };
    let held = |of: fn(&Row) -> Option<Error>| {
        let known: Vec<Error> = rows.iter().filter_map(of).collect();
        let held = known
            .iter()
            .filter(|error| error.off <= error.uncertainty)
            .count();
        held as f64 / known.len() as f64
    };
    let unknown = rows
        .iter()
        .filter(|row| row.wall.is_none() || row.to_rim.is_none())
        .count();
    let place = rows.iter().map(|row| row.place).fold(0.0, f64::max);
    let [wall, to_rim, to_front] = [
        worst(|r| r.wall),
        worst(|r| r.to_rim),
        worst(|r| r.to_front),
    ];
    let holds = [held(|r| r.wall), held(|r| r.to_rim), held(|r| r.to_front)];
    asked.figure(
        "worst error of place, wall's thickness, way to the rim and to its middle at the front; U holds the last three; not given",
        "0.3 mm, 0.1 mm, 1 mm, 1 mm",
        format!(
            "{place:.2} mm, {wall:.2} mm, {to_rim:.2} mm, {to_front:.2} mm; {:.0} %, {:.0} %, {:.0} %; {unknown} of {}",
            100.0 * holds[0], 100.0 * holds[1], 100.0 * holds[2], rows.len()
        ),
    );
    assert!(!rows.is_empty());
    assert!(place <= 0.3 && wall <= 0.1, "{place}, {wall}");
    assert!(to_rim <= 1.0 && to_front <= 1.0, "{to_rim}, {to_front}");
    assert!(holds[0] >= 0.9, "{holds:?}");
    assert!(10 * unknown <= rows.len(), "{unknown}");
}

fn distance(a: &Point3<f64>, b: &Point3<f64>) -> f64 {
    (a - b).norm()
}
