//! Patches of little cover as they lie on the tray's own scan, for whoever relieves
//! the tray there.

use super::figures::{PlaceOnTray, Spot};
use crate::amount::Amount;
use crate::anatomy;
use crate::border::{Border, BorderPart};
use crate::impression::Impression;
use crate::tray::LocalTray;
use geometry::field::quantile;
use geometry::signed_distance::Beside;
use nalgebra::Point3;

/// Begun so far inside the wall, a line through it does not meet the face that it
/// comes from, mm.
const INSIDE_MM: f64 = 0.05;
/// A line through the wall leaves it within this angle (cosine) of the normal; at a
/// flatter one it runs along an edge.
const LEAVES: f64 = 0.7;

/// Each patch on the tray; `None` for a patch that no tray lies under. The noise is a
/// standard deviation, what the scanner adds to a length an expanded uncertainty
/// (k = 2), mm.
pub(crate) fn places(
    impression: &Impression,
    tray: LocalTray<'_>,
    border: Option<&Border>,
    spots: &[Spot],
    doubts_mm: [f64; 2],
) -> Vec<Option<PlaceOnTray>> {
    let local_from_scan = impression.frame.local_from_scan();
    let rim = border.map_or_else(Vec::new, |border| outer_rim(impression, tray, border));
    let front = rim
        .iter()
        .filter(|place| place.local.y > 0.0)
        .min_by(|a, b| a.local.x.abs().total_cmp(&b.local.x.abs()));
    let one = |spot: &Spot| {
        let centre = tray.in_tray_scan(&(local_from_scan * spot.centre));
        let at = (*tray.beside(&[centre]).first()?)?.place;
        let vertices = spot.vertices.iter();
        let in_tray: Vec<Point3<f64>> = vertices
            .map(|&v| tray.in_tray_scan(&impression.local.vertices()[v as usize]))
            .collect();
        let beside = tray.beside(&in_tray).into_iter();
        let under: Vec<(u32, Beside)> = (spot.vertices.iter().copied())
            .zip(beside)
            .filter_map(|(v, beside)| Some((v, beside?)))
            .collect();
        let to = |place: &RimPlace| Amount {
            value: (place.on_tray - at).norm(),
            uncertainty: anatomy::TRAY_RIM_RADIUS_MM.hypot(place.uncertainty_mm),
        };
        let nearest = |a: &&RimPlace, b: &&RimPlace| {
            let squared = |p: &RimPlace| (p.on_tray - at).norm_squared();
            squared(a).total_cmp(&squared(b))
        };
        Some(PlaceOnTray {
            at,
            wall_mm: wall(tray, &under, doubts_mm),
            vertices: under.iter().map(|(v, beside)| (*v, beside.place)).collect(),
            to_outer_rim_mm: rim.iter().min_by(nearest).map(to),
            to_front_mm: front.map(to),
        })
    };
    spots.iter().map(one).collect()
}

/// A place of the tray's rim.
struct RimPlace {
    /// Tray scan coordinates, mm.
    on_tray: Point3<f64>,
    /// Local coordinates of the impression, mm.
    local: Point3<f64>,
    /// Expanded uncertainty (k = 2), mm.
    uncertainty_mm: f64,
}

/// The rim on the side of lip and cheek, a place for each station of the border.
fn outer_rim(impression: &Impression, tray: LocalTray<'_>, border: &Border) -> Vec<RimPlace> {
    let local_from_scan = impression.frame.local_from_scan();
    let stations = border.stations.iter();
    stations
        .filter(|station| station.part == BorderPart::Outer && station.overlap.is_ok())
        .filter_map(|station| {
            let point = local_from_scan * station.point;
            let in_tray = tray.in_tray_scan(&point);
            let on_tray = tray.index().nearest(&in_tray, f64::INFINITY)?.point;
            Some(RimPlace {
                on_tray,
                local: tray.out_of_tray(&on_tray),
                uncertainty_mm: tray.rim_uncertainty_mm(&point, &on_tray),
            })
        })
        .collect()
}

/// Thickness of the tray's wall under a patch: the median along lines straight through
/// it, with twice their standard deviation as the part of U that the wall's own
/// unevenness makes. `None` where too few lines leave the wall again, as where one
/// face of it was not scanned.
fn wall(
    tray: LocalTray<'_>,
    under: &[(u32, Beside)],
    [noise, of_scanner]: [f64; 2],
) -> Option<Amount> {
    const LEAST_SHARE: f64 = 0.5;
    let through = |(_, beside): &(u32, Beside)| {
        let inward = -beside.away.into_inner();
        let from = beside.place + inward * INSIDE_MM;
        let reach = 4.0 * anatomy::TRAY_HALF_WALL_MM;
        let hit = tray.index().first_hit(&from, &inward, reach)?;
        let normal = tray.scan_normal(hit.triangle)?;
        (normal.dot(&inward) > LEAVES).then_some((hit.distance + INSIDE_MM, 1.0))
    };
    let mut lines: Vec<(f64, f64)> = under.iter().filter_map(through).collect();
    if (lines.len() as f64) < LEAST_SHARE * under.len() as f64 {
        return None;
    }
    let median = quantile(&mut lines, 0.5)?;
    let squares: f64 = lines.iter().map(|(mm, _)| (mm - median).powi(2)).sum();
    let spread = (squares / lines.len() as f64).sqrt();
    Some(Amount {
        value: median,
        uncertainty: (2.0 * spread)
            .hypot(2.0 * std::f64::consts::SQRT_2 * noise)
            .hypot(of_scanner),
    })
}
