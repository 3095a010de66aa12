//! How far the border moved between an earlier impression and a later one in
//! the same tray: a first pass and its wash.

use crate::border::{Border, BorderPart, Measured, Station};
use crate::frame::Frame;
use geometry::registration::Registered;
use nalgebra::Point3;

/// Stations of two passes are matched to this along the border (k = 2), mm: both lie
/// in one frame, half a millimetre apart.
const MATCHED_WITHIN_MM: f64 = 0.5;

/// For each station of the later border how much further along the seating axis
/// it reaches than the earlier one, mm, negative where it is lower; `None`
/// across the back and where either was not scanned. `laid` takes the earlier
/// scan to the later one, whose frame is given (see [`super::laid()`]).
#[must_use]
pub fn changes(
    earlier: &Border,
    later: &Border,
    frame: &Frame,
    laid: &Registered,
) -> Vec<Option<Measured>> {
    let local_from_scan = frame.local_from_scan();
    let local_from_earlier = local_from_scan * laid.target_from_source;
    let before: Vec<(&Station, Point3<f64>)> = (earlier.stations.iter())
        .map(|station| (station, local_from_earlier * station.point))
        .collect();
    let places: Vec<Point3<f64>> = later.stations.iter().map(|s| s.point).collect();
    let pose_mm = laid.uncertainty_mm(&places);
    (later.stations.iter())
        .map(|station| {
            change(
                station,
                &(local_from_scan * station.point),
                &before,
                pose_mm,
            )
        })
        .collect()
}

fn change(
    station: &Station,
    point: &Point3<f64>,
    before: &[(&Station, Point3<f64>)],
    pose_mm: f64,
) -> Option<Measured> {
    /// Borders farther apart in plan are not of one place, mm.
    const WITHIN_MM: f64 = 4.0;
    let own_mm = known_mm(station)?;
    let off = |place: &Point3<f64>| (place - point).xy().norm();
    let nearest =
        (0..before.len()).min_by(|&a, &b| off(&before[a].1).total_cmp(&off(&before[b].1)))?;
    let (then, place) = &before[nearest];
    let count = before.len();
    let slope = (before[(nearest + 1) % count].1 - before[(nearest + count - 1) % count].1)
        .try_normalize(0.0)
        .map_or(0.0, |along| along.z.abs() / along.xy().norm().max(0.2));
    if off(place) > WITHIN_MM || then.part != station.part {
        return None;
    }
    Some(Measured {
        mm: point.z - place.z,
        uncertainty_mm: own_mm
            .hypot(known_mm(then)?)
            .hypot(pose_mm)
            .hypot(slope * MATCHED_WITHIN_MM),
    })
}

/// Uncertainty of a flange's border where it was scanned.
fn known_mm(station: &Station) -> Option<f64> {
    let on_flange = station.part != BorderPart::Posterior && !station.scan_ends;
    station.uncertainty_mm.filter(|_| on_flange)
}
