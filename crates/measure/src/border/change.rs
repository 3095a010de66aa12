//! How far the border moved between an earlier impression and a later one in
//! the same tray: a first pass and its wash.

use super::{Border, BorderPart, Measured, Station};
use crate::figures::{Frame, NotMeasured};
use crate::registration::{Registered, Target, register, register_anywhere};
use crate::sampling::{SurfacePoint, spread_over};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3};

/// Points of the earlier impression that are laid on the later one.
const POINTS: usize = 12_000;
/// Where less of it fits, the two do not show one tray.
const LEAST_FITTING: f64 = 0.3;

/// An impression as it was measured.
#[derive(Debug, Clone, Copy)]
pub struct Impressed<'a> {
    /// The scan, mm.
    pub mesh: &'a Mesh,
    /// Its frame.
    pub frame: &'a Frame,
    /// Its border.
    pub border: &'a Border,
}

/// For each station of the later border how much further along the seating axis
/// it reaches than the earlier one, mm, negative where it is lower; `None`
/// across the back and where either was not scanned. The two scans may lie in
/// any pose; they are laid on one another by what faces away from the tissue,
/// which a wash leaves alone.
///
/// # Errors
/// When the two do not fit on one another.
pub fn changes(
    earlier: Impressed<'_>,
    later: Impressed<'_>,
) -> Result<Vec<Option<Measured>>, NotMeasured> {
    let laid = laid_on(earlier, later)?;
    let local_from_scan = later.frame.local_from_scan();
    let local_from_earlier = local_from_scan * laid.target_from_source;
    let before: Vec<(&Station, Point3<f64>)> = (earlier.border.stations.iter())
        .map(|station| (station, local_from_earlier * station.point))
        .collect();
    let now: Vec<Point3<f64>> = (later.border.stations.iter())
        .map(|station| local_from_scan * station.point)
        .collect();
    let places: Vec<Point3<f64>> = later.border.stations.iter().map(|s| s.point).collect();
    let pose_mm = laid.uncertainty_mm(&places);
    Ok((later.border.stations.iter().zip(&now))
        .map(|(station, point)| change(station, point, &before, pose_mm))
        .collect())
}

fn change(
    station: &Station,
    point: &Point3<f64>,
    before: &[(&Station, Point3<f64>)],
    pose_mm: f64,
) -> Option<Measured> {
    /// Borders farther apart in plan are not of one place, mm.
    const WITHIN_MM: f64 = 4.0;
    /// Slope along the border times this is not known, mm (see the stations' own
    /// doubt along the line).
    const PLACE_MM: f64 = 0.5;
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
            .hypot(slope * PLACE_MM),
    })
}

/// Uncertainty of a flange's border where it was scanned.
fn known_mm(station: &Station) -> Option<f64> {
    let on_flange = station.part != BorderPart::Posterior && !station.scan_ends;
    station.uncertainty_mm.filter(|_| on_flange)
}

fn laid_on(earlier: Impressed<'_>, later: Impressed<'_>) -> Result<Registered, NotMeasured> {
    let seating = earlier.frame.seating;
    let faces_away = |t: usize| earlier.mesh.area_vector(t).dot(&seating) < 0.0;
    let away_mm2: f64 = (0..earlier.mesh.triangles().len())
        .filter(|&t| faces_away(t))
        .map(|t| earlier.mesh.area_vector(t).norm())
        .sum();
    let all_mm2: f64 = (0..earlier.mesh.triangles().len())
        .map(|t| earlier.mesh.area_vector(t).norm())
        .sum();
    // A scan of the tissue side alone has little that faces away.
    const LEAST_AWAY: f64 = 0.2;
    let source: Vec<SurfacePoint> = if away_mm2 > LEAST_AWAY * all_mm2 {
        spread_over(earlier.mesh, POINTS, faces_away)
    } else {
        spread_over(earlier.mesh, POINTS, |_| true)
    };
    let target = Target::new(later.mesh);
    let start: Isometry3<f64> =
        later.frame.local_from_scan().inverse() * earlier.frame.local_from_scan();
    let fits = |found: &Registered| found.fitting_share >= LEAST_FITTING;
    let found = match register(&source, &target, &[start]) {
        Ok(found) if fits(&found) => found,
        _ => register_anywhere(&source, &target)?,
    };
    if fits(&found) {
        Ok(found)
    } else {
        Err(NotMeasured::EarlierDoesNotFit {
            fitting_percent: 100.0 * found.fitting_share,
        })
    }
}
