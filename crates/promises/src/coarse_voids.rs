//! Voids on coarse scans: what a scan claims to show, it shows.

use crate::Population;
use measure::{DefectKind, MeasureSettings, Measuring, Zone};
use phantom::{Across, Blemish, Member, Options, Phantom, Place};
use serde::{Deserialize, Serialize};

/// Edges of the scans, mm: those at which a void of 2 mm is near the least that shows.
const EDGES_MM: [f64; 4] = [0.65, 0.72, 0.8, 0.9];
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

fn tried(seed: u64, edge_mm: f64) -> Row {
    let member = Member::sound(seed).options(edge_mm);
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
    let measuring = Measuring::new(&phantom.impression, None, &MeasureSettings::default());
    let tissue = measuring.tissue().expect("a phantom is an impression");
    let tissue = tissue.as_ref().expect("and has a tissue surface");
    let ridge = (tissue.zones.iter()).filter(|part| part.zone == Zone::ResidualRidge);
    let is_found = |at| {
        let voids = tissue.defects.iter().filter(|d| d.kind == DefectKind::Void);
        voids.into_iter().any(|d| (d.centre - at).norm() <= NEAR_MM)
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
    let trials: Vec<(u64, usize)> = (population.jaws_in_turn(6).into_iter())
        .flat_map(|(_, seed)| (0..EDGES_MM.len()).map(move |edge| (seed, edge)))
        .collect();
    let rows = promise.rows(trials, |&(seed, edge)| tried(seed, EDGES_MM[edge]));
    let bands = [
        (0.0, 1.8),
        (1.8, 2.0),
        (2.0, 2.1),
        (2.1, 2.2),
        (2.2, 2.3),
        (2.3, 2.4),
        (2.4, 2.6),
        (2.6, 9.0),
    ];
    for (low, high) in bands {
        let within = rows
            .iter()
            .filter(|r| r.claimed_mm > low && r.claimed_mm <= high);
        let (planted, found) = within.fold((0, 0), |(p, f), r| (p + r.planted, f + r.found));
        println!("claimed {low} to {high}: {found} of {planted}");
    }
}
