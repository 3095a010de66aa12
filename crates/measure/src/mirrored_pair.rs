//! Two impressions of one jaw of which one is mirrored: told from how each
//! departs from symmetry. A single scan cannot show it, since its mirror image
//! is the impression of another mouth.

use crate::figures::ImpressionMeasurement;
use nalgebra::Point3;

/// How much better the one fits in the mirror than as it is, mm: more than two
/// frames differ by, and than a border differs between two passes (common
/// practice, no source).
const BETTER_BY_MM: f64 = 0.5;
/// And as a share of the distance as it is.
const SHARE: f64 = 0.6;

/// Whether two impressions of one jaw fit one another only as in a mirror.
/// `None` where that cannot be told: nothing was measured of one of them, they
/// are of different jaws, or the mouth is too nearly symmetric.
#[must_use]
pub fn only_in_the_mirror(
    one: &ImpressionMeasurement,
    other: &ImpressionMeasurement,
) -> Option<bool> {
    let (one_arch, one) = outline(one)?;
    let (other_arch, other) = outline(other)?;
    if one_arch != other_arch {
        return None;
    }
    let mirrored: Vec<Point3<f64>> = other.iter().map(|p| Point3::new(-p.x, p.y, p.z)).collect();
    let (as_it_is, in_the_mirror) = (apart(&one, &other), apart(&one, &mirrored));
    let better = |least: f64, most: f64| most - least > BETTER_BY_MM && least < SHARE * most;
    if better(in_the_mirror, as_it_is) {
        Some(true)
    } else if better(as_it_is, in_the_mirror) {
        Some(false)
    } else {
        None
    }
}

/// Crest line and border in the frame of the impression: x to the patient's
/// right, mm.
fn outline(measured: &ImpressionMeasurement) -> Option<(crate::Arch, Vec<Point3<f64>>)> {
    let frame = measured.frame.as_ref().ok()?;
    let border = measured.border.as_ref().ok()?;
    let seen = border
        .stations
        .iter()
        .filter(|station| station.uncertainty_mm.is_some() && !station.scan_ends)
        .map(|station| &station.point);
    let points: Vec<Point3<f64>> = border
        .crest_line
        .iter()
        .chain(seen)
        .map(|p| {
            let from = p - frame.origin;
            Point3::new(
                from.dot(&frame.right),
                from.dot(&frame.anterior),
                from.dot(&frame.seating),
            )
        })
        .collect();
    (!points.is_empty()).then_some((frame.arch, points))
}

/// Median distance of the points of one from the nearest of another, mm.
fn apart(one: &[Point3<f64>], other: &[Point3<f64>]) -> f64 {
    let mut distances: Vec<f64> = one
        .iter()
        .map(|p| {
            other
                .iter()
                .map(|q| nalgebra::distance_squared(p, q))
                .fold(f64::INFINITY, f64::min)
                .sqrt()
        })
        .collect();
    let middle = distances.len() / 2;
    *distances.select_nth_unstable_by(middle, f64::total_cmp).1
}
