//! Strips of bare tray planted at the foot of a declared stop, which itself is meant to show, and
//! along the joint between two pieces of a tray.

use crate::Population;
use crate::bare_edges::{OF_IT_MM, Row, off_line, row};
use crate::pieces::pieces;
use measure::{AssembledTray, MeasureSettings, Measuring, Spot, SpotKind};
use mesh::Mesh;
use phantom::{Arch, BareEdge, Options, Phantom, Pose, TrayEdge};

/// Width and length of the strips, mm.
const STRIPS_MM: [[f64; 2]; 2] = [[0.6, 6.0], [0.4, 3.0]];
/// Stops of an impression; a strip lies at the second alone.
const STOPS: [f64; 2] = [-0.5, 0.5];

fn made(arch: Arch, seed: u64, edge: TrayEdge) -> Phantom {
    let [width_mm, length_mm] = STRIPS_MM[(seed / 2 % 2) as usize];
    let station = match edge {
        TrayEdge::StopFoot => STOPS[1],
        // Across a limb, on either side.
        _ if seed.is_multiple_of(4) => 0.6,
        _ => -0.7,
    };
    Phantom::new(&Options {
        arch,
        seed: 900 + seed,
        edge_mm: 0.3,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.015,
        pose: Pose::AsMade,
        stops: match edge {
            TrayEdge::StopFoot => STOPS.to_vec(),
            _ => Vec::new(),
        },
        bare_edges: vec![BareEdge {
            edge,
            station,
            width_mm,
            length_mm,
        }],
        ..Options::default()
    })
}

/// Show-through that is no stop's.
fn faults(made: &Phantom, tray: &Mesh, settings: &MeasureSettings) -> Vec<Spot> {
    let measuring = Measuring::new(&made.impression, Some(tray), settings);
    let cover = measuring.cover().expect("a phantom is an impression");
    if let Err(why) = cover {
        panic!("{:?} {}: {why}", made.truth.arch, made.truth.seed);
    }
    let spots = measuring.spots().iter();
    spots
        .filter(|spot| spot.kind == SpotKind::ShowThrough && spot.stop.is_none())
        .cloned()
        .collect()
}

/// The tray of an impression, sawn along the planted strip and joined again by what shows of
/// its pieces on the impression.
fn joined(made: &Phantom) -> Mesh {
    let y = made.truth.bare_edges[0].line[0].y;
    let pieces = pieces(&made.tray, &made.truth.impression_from_tray, y);
    let found = AssembledTray::on(&made.impression, &pieces.each_ref(), 0.0);
    let (arch, seed) = (made.truth.arch, made.truth.seed);
    found
        .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"))
        .mesh
}

/// So near to the middle line of a strip at a stop's foot a finding is of it, mm: as the stop's
/// wall above it is bare, too, the finding's centre lies on that.
const OF_FOOT_MM: f64 = 2.5;

/// Strips of bare tray at the foot of a declared stop are no part of the stop, but a fault.
/// Whether one is called an edge depends on how much of the stop's wall is bare above it.
pub fn strips_at_the_foot_of_a_stop_are_found(population: Population) {
    let asked = population.asked("strips-at-the-foot-of-a-stop");
    let outcomes: Vec<[usize; 3]> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        let made = made(arch, seed, TrayEdge::StopFoot);
        let settings = MeasureSettings {
            stops: made.truth.stops.clone(),
            ..MeasureSettings::default()
        };
        let spots = faults(&made, &made.tray, &settings);
        let strip = &made.truth.bare_edges[0];
        let (of_it, elsewhere): (Vec<&Spot>, Vec<&Spot>) =
            (spots.iter()).partition(|spot| off_line(&spot.centre, strip) <= OF_FOOT_MM);
        let edges = of_it.iter().filter(|spot| spot.edge.is_some()).count();
        [
            usize::from(!of_it.is_empty()),
            edges.min(1),
            elsewhere.len(),
        ]
    });
    let [found, edges, invented] = [0, 1, 2].map(|k| outcomes.iter().map(|o| o[k]).sum::<usize>());
    asked.figure(
        "edges 0.3 mm, noise 0.015 mm: strips of 0.4 × 3 and 0.6 × 6 mm at the foot of a declared stop: found as a fault; called an edge; invented",
        "all; -; 0",
        format!("{found}; {edges}; {invented}, of {}", outcomes.len()),
    );
    assert_eq!([found, invented], [outcomes.len(), 0]);
}

/// Strips of bare tray along the joint of two pieces: found, and called an edge; nothing else
/// invented.
pub fn strips_along_a_joint_are_found(population: Population) {
    let asked = population.asked("strips-along-a-joint");
    let outcomes: Vec<(Row, usize)> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        let made = made(arch, seed, TrayEdge::Joint);
        let settings = MeasureSettings::default();
        let spots = faults(&made, &joined(&made), &settings);
        let strip = &made.truth.bare_edges[0];
        let row = row(strip, &spots, settings.show_through_mm);
        let invented = (spots.iter())
            .filter(|spot| off_line(&spot.centre, strip) > OF_IT_MM)
            .count();
        println!("{arch:?} {seed}: {row:.2?}, invented {invented}");
        (row, invented)
    });
    let found = outcomes.iter().filter(|(row, _)| row.is_edge()).count();
    let invented: usize = outcomes.iter().map(|(_, invented)| invented).sum();
    asked.figure(
        "edges 0.3 mm, noise 0.015 mm: strips of 0.4 × 3 and 0.6 × 6 mm along a joint: found and called an edge; invented",
        "95 %; 0",
        format!("{found} of {}; {invented}", outcomes.len()),
    );
    assert!(found as f64 >= 0.95 * outcomes.len() as f64);
    assert_eq!(invented, 0);
}
