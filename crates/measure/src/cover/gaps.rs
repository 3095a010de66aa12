//! Where cover is not known although the tray was placed: the tray's scan holds no
//! tray there, or the outer surface shows that the tray does not lie there as it
//! was scanned.

use super::figures::{CoverGap, NoCoverHere};
use crate::anatomy;
use crate::impression::Impression;
use crate::tray::PlacedTray;
use crate::words::{Side, Zone};
use geometry::signed_distance::Beside;
use nalgebra::Point3;
use std::collections::{BTreeMap, BTreeSet};

/// So much tissue surface without tray under it, mm², and a part of the tray is
/// missing from its scan. Common practice, no source.
const PART_MISSING_MM2: f64 = 60.0;
/// Gaps smaller than this are not said, mm².
const LEAST_GAP_MM2: f64 = 10.0;
/// Places behind the tray, one for each 1 mm² or less of the outer surface, are
/// taken for a place of their own from so many within two cells of this size, mm.
const CELL_MM: f64 = 3.0;
const LEAST_BEHIND: usize = 24;

/// What is known at each vertex of the tissue surface; `None` where the tray shows
/// its back.
pub(super) fn known(
    placed: &PlacedTray,
    tissue: &[usize],
    in_tray: &[Point3<f64>],
    beside: &[Option<Beside>],
    weights: &[f64],
) -> Vec<Option<Result<Beside, NoCoverHere>>> {
    let without_tray: f64 = (tissue.iter().zip(beside))
        .filter(|(_, beside)| beside.is_some_and(|b| b.mm > anatomy::GREATEST_MATERIAL_MM))
        .map(|(&v, _)| weights[v])
        .sum();
    let part_is_missing = without_tray > PART_MISSING_MM2;
    let unexplained = crowded(placed.unexplained());
    in_tray
        .iter()
        .zip(beside)
        .map(|(place, beside)| {
            let beside = (*beside)?;
            let lies_off = part_is_missing && lies_beyond_an_end(placed, place, &beside);
            Some(if beside.mm > anatomy::GREATEST_MATERIAL_MM || lies_off {
                Err(NoCoverHere::NoTray)
            } else if unexplained.contains(&cell(&placed.out_of_tray(&beside.place))) {
                Err(NoCoverHere::OuterSurfaceDiffers)
            } else {
                Ok(beside)
            })
        })
        .collect()
}

/// Whether the nearest place of the tray is an end of what was scanned, and the
/// place lies past it along the arch or over a hole, not above the tray's edge.
fn lies_beyond_an_end(placed: &PlacedTray, in_tray: &Point3<f64>, beside: &Beside) -> bool {
    /// Sine and cosine of 45 degrees.
    const SLANTING: f64 = std::f64::consts::FRAC_1_SQRT_2;
    let on_tray = placed.out_of_tray(&beside.place);
    let off = placed.out_of_tray(in_tray) - on_tray;
    let (past, over) = (-off.y / off.norm(), off.z / off.norm());
    let past_the_back = past > SLANTING && placed.is_at_the_back(&on_tray);
    let past_an_open_edge = beside.on_open_edge && beside.off_normal.cos() < SLANTING;
    past_the_back || (past_an_open_edge && over < SLANTING)
}

fn cell(place: &Point3<f64>) -> [i64; 3] {
    [place.x, place.y, place.z].map(|c| (c / CELL_MM).floor() as i64)
}

/// Cells near crowds of places.
fn crowded(places: &[Point3<f64>]) -> BTreeSet<[i64; 3]> {
    let mut counts: BTreeMap<[i64; 3], usize> = BTreeMap::new();
    for place in places {
        *counts.entry(cell(place)).or_default() += 1;
    }
    let near = |at: &[i64; 3]| {
        let [x, y, z] = *at;
        (-1..=1)
            .flat_map(move |i| (-1..=1).map(move |j| (i, j)))
            .flat_map(move |(i, j)| (-1..=1).map(move |k| [x + i, y + j, z + k]))
    };
    let crowds = counts.keys().filter(|at| {
        let around = near(at).filter_map(|cell| counts.get(&cell));
        around.sum::<usize>() >= LEAST_BEHIND
    });
    crowds.flat_map(near).collect()
}

/// The gaps, by reason and part of the arch, largest first.
pub(super) fn gaps(
    impression: &Impression,
    here: &[Option<Result<Beside, NoCoverHere>>],
) -> Vec<CoverGap> {
    let mut areas: BTreeMap<(NoCoverHere, Zone, Option<Side>), f64> = BTreeMap::new();
    for ((known, place), area) in here
        .iter()
        .zip(impression.local.vertices())
        .zip(impression.tissue_weights())
    {
        if let Some(Err(why)) = known {
            let part = (
                *why,
                impression.zones.zone(place),
                impression.zones.side(place),
            );
            *areas.entry(part).or_default() += area;
        }
    }
    let mut gaps: Vec<CoverGap> = areas
        .into_iter()
        .filter(|(_, area_mm2)| *area_mm2 >= LEAST_GAP_MM2)
        .map(|((why, zone, side), area_mm2)| CoverGap {
            why,
            zone,
            side,
            area_mm2,
        })
        .collect();
    gaps.sort_by(|a, b| b.area_mm2.total_cmp(&a.area_mm2));
    gaps
}
