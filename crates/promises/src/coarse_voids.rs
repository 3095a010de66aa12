//! Voids on coarse scans: what a scan claims to show, it shows.

use crate::Population;
use measure::{DefectKind, MeasureSettings, Measuring, Zone};
use nalgebra::Point3;
use phantom::{Across, Blemish, Member, Options, Phantom, Place};
use serde::{Deserialize, Serialize};

/// Edges of the scans, mm: a void of 2 mm is near the least that shows, in some parts of the
/// arch below it.
const EDGE_MM: f64 = 0.73;
/// Found of those that the scan claims to show, %.
const LEAST_FOUND_PERCENT: usize = 95;
/// Width and depth of the voids, mm: half a ball.
const WIDTH_MM: f64 = 2.0;
/// Where on the crest they lie, from -1 on the patient's right to 1 on the left.
const STATIONS: [f64; 3] = [-0.45, -0.12, 0.35];
/// How far from its truth the middle of a void may be found, mm.
const NEAR_MM: f64 = 1.0;

/// The voids of one scan.
#[derive(Serialize, Deserialize)]
struct Row {
    /// Width of the smallest void that the scan claims to show on the ridge, mm.
    claimed_mm: f64,
    planted: usize,
    found: usize,
}

fn tried(seed: u64) -> Row {
    let member = Member::sound(seed).options(EDGE_MM);
    let void = |station| Blemish::Void {
        place: Place::Arch {
            station,
            across: Across::Crest,
        },
        diameter_mm: WIDTH_MM,
        depth_mm: WIDTH_MM / 2.0,
    };
    let phantom = Phantom::new(&Options {
        blemishes: STATIONS.map(void).to_vec(),
        // No tray scan is used.
        tray_edge_mm: 4.0,
        ..member
    });
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(&phantom.impression, None, &settings);
    let Ok(tissue) = measuring.tissue().expect("a phantom is an impression") else {
        // Too coarse for any void, which the scan says.
        return Row {
            claimed_mm: f64::MAX,
            planted: 0,
            found: 0,
        };
    };
    let ridge = (tissue.zones.iter()).filter(|part| part.zone == Zone::ResidualRidge);
    let is_found = |at: Point3<f64>| {
        let mut voids = (tissue.defects.iter()).filter(|d| d.kind == DefectKind::Void);
        voids.any(|void| (void.centre - at).norm() <= NEAR_MM)
    };
    let truths = &phantom.truth.blemishes;
    Row {
        claimed_mm: ridge.map(|part| part.least_across_mm).fold(0.0, f64::max),
        planted: truths.len(),
        found: truths.iter().filter(|truth| is_found(truth.centre)).count(),
    }
}

/// Voids of 2 mm on the crest of broad mouths, on scans whose edges leave such voids just
/// visible: those that the scan claims to show are found.
pub fn voids_that_a_coarse_scan_claims_to_show_are_found(population: Population) {
    let promise = population.asked("voids-on-coarse-scans");
    let rows = promise.rows(population.jaws_in_turn(6), |&(_, seed)| tried(seed));
    let counted = |claims: fn(&Row) -> bool| {
        let within: Vec<&Row> = rows.iter().filter(|row| claims(row)).collect();
        let sum = |of: fn(&Row) -> usize| within.iter().map(|row| of(row)).sum::<usize>();
        (sum(|row| row.found), sum(|row| row.planted))
    };
    let (found, planted) = counted(|row| row.claimed_mm <= WIDTH_MM);
    let (others_found, others) = counted(|row| row.claimed_mm > WIDTH_MM);
    promise.figure(
        "edges 0.73 mm, voids of 2 mm on the crest: found of those that the scan claims to show; of the others",
        &format!("{LEAST_FOUND_PERCENT} %; -"),
        format!("{found} of {planted}; {others_found} of {others}"),
    );
    assert!(planted > 0, "no scan claims to show them");
    assert!(100 * found >= LEAST_FOUND_PERCENT * planted);
}
