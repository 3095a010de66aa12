//! Trays laid into their impressions: how far the tray's surface is off, and
//! whether the stated uncertainty holds that.

use crate::Population;
use fixtures::quantile;
use measure::{MeasureSettings, Measuring, NoCover, TrayNotPlaced};
use phantom::{Arch, Options, Phantom};

/// Trays in scans without noise.
pub fn without_noise(population: Population) {
    trays_are_registered(population, "registration-no-noise", 0.0, 0.05);
}

/// Trays in scans with noise of 0.02 mm.
pub fn with_noise(population: Population) {
    trays_are_registered(population, "registration-noise-0-02-mm", 0.02, 0.08);
}

fn trays_are_registered(
    population: Population,
    promise: &'static str,
    noise_sd_mm: f64,
    allowed_mm: f64,
) {
    let asked = population.asked(promise);
    let outcomes: Vec<[f64; 2]> = asked.rows(population.jaws_in_turn(16), |&(arch, seed)| {
        let phantom = Phantom::new(&Options {
            arch,
            seed,
            noise_sd_mm,
            edge_mm: 0.6,
            tray_edge_mm: 0.6,
            handle: seed % 3 != 0,
            overflow: 0.6 + 0.3 * (seed % 4) as f64,
            ..Options::default()
        });
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&phantom.impression, Some(&phantom.tray), &settings);
        let cover = measuring.cover().expect("an impression");
        let cover = cover.unwrap_or_else(|why| panic!("{seed}: {why}"));
        let placed = cover
            .registration
            .as_ref()
            .expect("cover is from the tray's scan");
        let truth = &phantom.truth.impression_from_tray;
        let mut errors: Vec<f64> = phantom
            .tray
            .vertices()
            .iter()
            .map(|p| (placed.impression_from_tray * p - truth * p).norm())
            .collect();
        [quantile(&mut errors, 0.95), placed.uncertainty_mm]
    });
    let poses = outcomes.len();
    let held = outcomes
        .iter()
        .filter(|[error, stated]| error <= stated)
        .count();
    let [mut errors, mut stated] =
        [0, 1].map(|i| outcomes.iter().map(|o| o[i]).collect::<Vec<f64>>());
    let greatest = errors.iter().copied().fold(0.0, f64::max);
    asked.figure(
        "95th percentile of the tray's surface error: median, greatest",
        &format!("greatest {allowed_mm} mm"),
        format!("{:.4}, {greatest:.4} mm", quantile(&mut errors, 0.5)),
    );
    asked.figure(
        "stated uncertainty: median; holds the error",
        "90 %",
        format!("{:.4} mm; {held} of {poses}", quantile(&mut stated, 0.5)),
    );
    assert!(greatest <= allowed_mm);
    assert!(10 * held >= 9 * poses);
}

/// Trays of other mouths.
pub fn another_mouths_tray_is_refused(population: Population) {
    let asked = population.asked("registration-another-mouth");
    let made = |arch: Arch, seed: u64| {
        Phantom::new(&Options {
            arch,
            seed,
            noise_sd_mm: 0.02,
            ..Options::default()
        })
    };
    let trials = population.both_jaws(0, 3);
    let taken: Vec<Option<String>> = asked.rows(trials, |&(arch, seed)| {
        let (one, other) = (made(arch, seed), made(arch, seed + 50));
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&one.impression, Some(&other.tray), &settings);
        let cover = measuring.cover().expect("an impression");
        let is_refused = matches!(
            cover,
            Err(NoCover::Tray(
                TrayNotPlaced::DoesNotFit { .. }
                    | TrayNotPlaced::OtherSize { .. }
                    | TrayNotPlaced::Ambiguous { .. }
            ))
        );
        let registration = cover.map(|cover| &cover.registration);
        (!is_refused).then(|| format!("{arch:?} {seed}: {registration:?}"))
    });
    let taken: Vec<&String> = taken.iter().flatten().collect();
    asked.figure(
        "another mouth's tray: taken",
        "none",
        taken.len().to_string(),
    );
    assert!(taken.is_empty(), "{taken:?}");
}
