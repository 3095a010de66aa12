//! Strips of bare tray planted along its edges, and sound impressions in trays with holes and
//! rolled rims.

use crate::Population;
use measure::{MeasureSettings, Measuring, Spot, SpotKind};
use nalgebra::Point3;
use phantom::{Arch, BareEdge, BareEdgeTruth, Options, Phantom, TrayEdge, TrayForm, Variety};
use serde::{Deserialize, Serialize};

/// Width and length of the strips of one impression, mm.
const STRIPS_MM: [[f64; 2]; 3] = [[0.4, 3.0], [0.6, 6.0], [1.0, 10.0]];
/// So near to a strip's middle line a finding is of it, mm.
pub(crate) const OF_IT_MM: f64 = 1.0;

/// Material this thick by formula may be called thin, mm: the limit of 1 mm and the
/// uncertainty of cover.
const TRULY_THIN_MM: f64 = 1.1;

/// A tray with holes and a rolled rim, of a size that the seed chooses.
fn form(seed: u64) -> TrayForm {
    TrayForm {
        hole_radius_mm: [1.0, 1.25, 1.5][(seed % 3) as usize],
        holes_apart_mm: [5.0, 6.0, 7.0, 8.0][(seed % 4) as usize],
        rolled_rim_mm: [0.0, 0.3, 0.5][(seed / 2 % 3) as usize],
    }
}

/// The three strips at places that the seed chooses, far from each other.
fn strips(arch: Arch, seed: u64) -> Vec<BareEdge> {
    let share = |k: u64| ((seed * 37 + k * 53) % 100) as f64 / 100.0;
    (0..3)
        .zip([-0.7, -0.1, 0.5])
        .map(|(k, from)| {
            let [width_mm, length_mm] = STRIPS_MM[((k + seed) % 3) as usize];
            BareEdge {
                edge: match ((seed / 3 + k) % 4, arch) {
                    (0, _) if length_mm < 10.0 => TrayEdge::Opening,
                    (1, Arch::Mandibular) => TrayEdge::InnerRim,
                    _ => TrayEdge::OuterRim,
                },
                station: from + 0.2 * share(k),
                width_mm,
                length_mm,
            }
        })
        .collect()
}

fn made(arch: Arch, seed: u64, variety: Variety, bare_edges: Vec<BareEdge>) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 700 + seed,
        edge_mm: 0.3,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.015,
        handle: !seed.is_multiple_of(3),
        variety,
        bare_edges,
        tray_form: form(seed),
        ..Options::default()
    })
}

fn spots(made: &Phantom) -> Vec<Spot> {
    known_spots(made)
        .unwrap_or_else(|why| panic!("{:?} {}: {why}", made.truth.arch, made.truth.seed))
}

/// The spots, or why the cover was not judged.
fn known_spots(made: &Phantom) -> Result<Vec<Spot>, String> {
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(&made.impression, Some(&made.tray), &settings);
    let cover = measuring.cover().expect("a phantom is an impression");
    cover.map_err(|why| why.to_string())?;
    Ok(measuring.spots().to_vec())
}

pub(crate) fn off_line(place: &Point3<f64>, strip: &BareEdgeTruth) -> f64 {
    let off = strip.line.iter().map(|p| (p - place).norm());
    off.fold(f64::INFINITY, f64::min)
}

/// What became of one planted strip.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Row {
    pub(crate) width_mm: f64,
    /// Along a rim, where a strip does not bend round a hole.
    along_rim: bool,
    found: Option<Found>,
}

impl Row {
    pub(crate) fn is_edge(&self) -> bool {
        self.found.as_ref().is_some_and(|found| found.is_edge)
    }
}

#[derive(Debug, Serialize, Deserialize)]
struct Found {
    is_edge: bool,
    /// Certainly at or below the level of show-through.
    is_sure: bool,
    /// Length beyond the planted one, mm, and its stated uncertainty.
    longer_mm: [f64; 2],
}

pub(crate) fn row(strip: &BareEdgeTruth, spots: &[Spot], level_mm: f64) -> Row {
    let of_it = spots.iter().filter(|spot| {
        spot.kind == SpotKind::ShowThrough && off_line(&spot.centre, strip) <= OF_IT_MM
    });
    let best = of_it.max_by_key(|spot| spot.edge.is_some());
    Row {
        width_mm: strip.width_mm,
        along_rim: strip.edge != TrayEdge::Opening,
        found: best.map(|spot| Found {
            is_edge: spot.edge.is_some(),
            is_sure: (spot.min_mm.zip(spot.min_uncertainty_mm))
                .is_some_and(|(least, doubt)| least + doubt < level_mm),
            longer_mm: spot.edge.map_or([0.0; 2], |edge| {
                let length = edge.length_mm;
                [length.value - strip.length_mm, length.uncertainty]
            }),
        }),
    }
}

/// Strips of bare tray along rims and openings: found where they are, called an edge, sure to
/// be bare; nothing else invented.
pub fn bare_edges_are_found_and_called_so(population: Population) {
    let asked = population.asked("bare-tray-edges");
    let settings = MeasureSettings::default();
    let outcomes: Vec<(Vec<Row>, usize)> =
        asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
            let made = made(arch, seed, Variety::Usual, strips(arch, seed));
            let spots = spots(&made);
            let planted = &made.truth.bare_edges;
            let rows: Vec<Row> = (planted.iter())
                .map(|strip| row(strip, &spots, settings.show_through_mm))
                .collect();
            println!("{arch:?} {seed}: {rows:.2?}");
            let is_invented = |spot: &&Spot| {
                spot.kind == SpotKind::ShowThrough
                    && planted
                        .iter()
                        .all(|strip| off_line(&spot.centre, strip) > OF_IT_MM)
            };
            (rows, spots.iter().filter(is_invented).count())
        });
    let rows: Vec<&Row> = outcomes.iter().flat_map(|(rows, _)| rows).collect();
    let invented: usize = outcomes.iter().map(|(_, invented)| invented).sum();
    let is_edge = |row: &&&Row| row.is_edge();
    let mut all_found = 0;
    for [width, length] in STRIPS_MM {
        let of_width = rows.iter().filter(|row| row.width_mm == width);
        let (planted, found) = (of_width.clone().count(), of_width.filter(is_edge).count());
        all_found += found;
        asked.figure(
            &format!("edges 0.3 mm, noise 0.015 mm: strips of {width} × {length} mm found and called an edge"),
            "95 %",
            format!("{found} of {planted}"),
        );
    }
    let edges = || {
        rows.iter()
            .filter(is_edge)
            .filter_map(|row| Some((row, row.found.as_ref()?)))
    };
    let sure = edges().filter(|(_, found)| found.is_sure).count();
    let lengths: Vec<[f64; 2]> = edges()
        .filter(|(row, _)| row.along_rim)
        .map(|(_, found)| found.longer_mm)
        .collect();
    let longer = lengths.iter().map(|[by, _]| *by);
    asked.figure(
        "of those: certainly bare; length beyond the planted, along rims; invented",
        "95 %; -0.6 to 1 mm; 0",
        format!(
            "{sure} of {all_found}; {:.2} to {:.2} mm; {invented}",
            longer.clone().fold(f64::INFINITY, f64::min),
            longer.clone().fold(f64::NEG_INFINITY, f64::max),
        ),
    );
    assert!(all_found as f64 >= 0.95 * rows.len() as f64);
    assert!(sure as f64 >= 0.95 * all_found as f64);
    assert!(
        lengths.iter().all(|[by, _]| (-0.6..=1.0).contains(by)),
        "{lengths:?}"
    );
    assert_eq!(invented, 0);
}

/// No tray shows in sound impressions, whatever holes and rims it has: a plug of material in a
/// hole is no show-through, and a rim that is covered no bare edge.
pub fn no_edge_is_invented_in_trays_with_holes_and_rims(population: Population) {
    let asked = population.asked("sound-in-perforated-trays");
    let trials = population.jaws_in_turn(10);
    let invented: Vec<Result<Vec<String>, String>> = asked.rows(trials, |&(arch, seed)| {
        let made = made(arch, seed, Variety::Broad { cut: None }, Vec::new());
        // A rolled rim may leave little or no material beside it, by formula too.
        let is_so = |spot: &Spot| {
            let truth_mm = made.truth.cover_at(&spot.centre);
            match spot.kind {
                SpotKind::ShowThrough => truth_mm <= 0.0,
                SpotKind::Thin => truth_mm < TRULY_THIN_MM,
            }
        };
        let said = known_spots(&made)?.into_iter();
        let said = said.filter(|spot| !is_so(spot));
        let said = said.map(|spot| format!("{:?} {:.1?}", spot.kind, spot.centre));
        Ok(said.collect())
    });
    let all: Vec<&String> = invented.iter().flatten().flatten().collect();
    let unknown: Vec<&String> = (invented.iter())
        .filter_map(|row| row.as_ref().err())
        .collect();
    for why in &unknown {
        println!("not judged: {why}");
    }
    asked.figure(
        "edges 0.3 mm, noise 0.015 mm, holes of 2 to 3 mm, rolled rims: places of show-through or thin material invented; not judged, with the reason",
        "0; 5 %",
        format!("{}; {}", all.len(), unknown.len()),
    );
    assert!(all.is_empty(), "{all:?}");
    assert!(20 * unknown.len() <= invented.len(), "{unknown:?}");
}
