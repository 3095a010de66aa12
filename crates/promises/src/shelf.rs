//! A shelf of stock trays in four sizes for each jaw: the tray that an impression was taken
//! in is found, and none is where it is not there.

use crate::Population;
use fixtures::quantile;
use measure::{MeasureSettings, Measuring, PreparedTray, ShelfTray};
use mesh::Mesh;
use phantom::{Arch, Options, Phantom};
use serde::{Deserialize, Serialize};

/// From one size to the next, as a factor.
pub(crate) const STEPS: [f64; 3] = [1.04, 1.05, 1.06];
const SIZES: i32 = 4;

#[derive(Serialize, Deserialize)]
struct Row {
    is_right: bool,
    rms_mm: f64,
    /// How many times as closely as the next the right tray lies.
    margin: f64,
    chosen_without: Option<String>,
}

pub(crate) fn made(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 1400 + seed,
        edge_mm: 0.6,
        tray_edge_mm: 0.8,
        noise_sd_mm: 0.02,
        handle: !seed.is_multiple_of(3),
        overflow: 0.6 + 0.3 * (seed % 4) as f64,
        ..Options::default()
    })
}

/// Sizes of a tray, of which the one of this number is as given.
pub(crate) fn sizes(tray: &Mesh, own: i32, step: f64) -> impl Iterator<Item = Mesh> + '_ {
    (0..SIZES).map(move |size| tray.scaled(step.powi(size - own)))
}

pub(crate) fn shelf(meshes: impl Iterator<Item = Mesh>) -> Vec<ShelfTray> {
    let tray = |(number, mesh)| ShelfTray {
        name: format!("tray {number}"),
        scan: PreparedTray::of(&mesh),
    };
    meshes.enumerate().map(tray).collect()
}

/// The right one of eight trays is found; where it is not on the shelf, none is.
pub fn the_tray_is_found_on_the_shelf(population: Population) {
    let promise = population.asked("shelf");
    let rows: Vec<Row> = promise.rows(population.both_jaws(0, 2), |&(arch, seed)| {
        let other = match arch {
            Arch::Maxillary => Arch::Mandibular,
            Arch::Mandibular => Arch::Maxillary,
        };
        let (one, other) = (made(arch, seed), made(other, seed));
        let own = (seed % SIZES as u64) as i32;
        let step = STEPS[(seed % 3) as usize];
        let both = sizes(&one.tray, own, step).chain(sizes(&other.tray, own, step));
        let mut trays = shelf(both);
        let settings = MeasureSettings::default();
        let chosen = |trays: &[ShelfTray]| {
            let measuring = Measuring::from_shelf(&one.impression, trays, &settings);
            let chosen = measuring.chosen_tray().expect("a shelf");
            chosen.cloned().map_err(Clone::clone)
        };
        let found = chosen(&trays).unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"));
        let closeness = |trial: &measure::TrayTrial| trial.fitting_share / trial.rms_mm;
        let row = Row {
            is_right: found.best.tray == own as usize,
            rms_mm: found.best.rms_mm,
            margin: found.next.map_or(f64::INFINITY, |next| {
                closeness(&found.best) / closeness(&next)
            }),
            chosen_without: {
                trays.remove(own as usize);
                let found = chosen(&trays).ok();
                found.map(|found| format!("{arch:?} {seed}: {found:?}"))
            },
        };
        println!(
            "{arch:?} {seed}: right {}, rms {:.4} mm, {:.1} times the next",
            row.is_right, row.rms_mm, row.margin
        );
        row
    });
    let right = rows.iter().filter(|row| row.is_right).count();
    let wrong: Vec<&String> = rows
        .iter()
        .filter_map(|row| row.chosen_without.as_ref())
        .collect();
    let mut rms: Vec<f64> = rows.iter().map(|row| row.rms_mm).collect();
    let mut margins: Vec<f64> = rows.iter().map(|row| row.margin).collect();
    promise.figure(
        "eight trays, sizes 4 to 6 % apart: the right one found; any chosen with that one missing",
        "all; 0",
        format!("{right} of {}; {}", rows.len(), wrong.len()),
    );
    promise.figure(
        "how closely the right tray lies, at worst; how many times as closely as the next, at least",
        "0.06 mm; -",
        format!("{:.3} mm; {:.1}", quantile(&mut rms, 1.0), quantile(&mut margins, 0.0)),
    );
    assert!(right == rows.len() && wrong.is_empty(), "{wrong:?}");
    assert!(quantile(&mut rms, 1.0) <= 0.06);
}
