//! Landmarks that are regions: their places follow from crest, border and the
//! landmarks at the ends of the trough.

use super::figures::{Seen, Unseen};
use super::ground::Ground;
use crate::anatomy;
use crate::border::{BorderPart, Station};
use crate::words::Side;
use nalgebra::Point3;

/// Places of regions are known to this, mm (k = 2).
const PLACE_MM: f64 = 3.0;
/// Regions have no relief of their own to be known by.
const CONFIDENCE: f64 = 0.5;

fn region(point: Point3<f64>) -> Seen {
    Seen {
        point,
        uncertainty_mm: PLACE_MM,
        confidence: CONFIDENCE,
        relief_mm: None,
    }
}

/// The middle of the posterior palatal seal: the border at the midline, across
/// the back. Scan coordinates.
pub(super) fn seal(ground: &Ground<'_>) -> Result<Seen, Unseen> {
    let border = ground.border.ok_or(Unseen::NoBorder)?;
    let off = |station: &Station| ground.local(&station.point).x.abs();
    let nearest = (border.stations.iter())
        .filter(|station| station.part == BorderPart::Posterior)
        .min_by(|a, b| off(a).total_cmp(&off(b)))
        .ok_or(Unseen::NoBorder)?;
    let Some(height) = nearest.uncertainty_mm else {
        return Err(Unseen::NoSurface);
    };
    Ok(Seen {
        point: nearest.point,
        // Along the seating axis by the station, along the border by the frame.
        uncertainty_mm: height.hypot(0.7),
        confidence: if nearest.scan_ends { 0.0 } else { 0.9 },
        relief_mm: None,
    })
}

/// The tuberosity: the crest before the hamular notch. Local coordinates.
pub(super) fn tuberosity(ground: &Ground<'_>, limb: &[Point3<f64>]) -> Result<Seen, Unseen> {
    on_crest(
        ground,
        limb,
        |length| length - anatomy::TUBEROSITY_BEFORE_END_MM,
        0.0,
    )
}

/// The buccal shelf: buccal to the crest between buccal frenum and retromolar
/// pad (LM-14). Local coordinates.
pub(super) fn buccal_shelf(ground: &Ground<'_>, limb: &[Point3<f64>]) -> Result<Seen, Unseen> {
    on_crest(
        ground,
        limb,
        |length| anatomy::BUCCAL_SHELF_MIDDLE_PART * length,
        anatomy::BUCCAL_SHELF_MIDDLE_MM,
    )
}

/// The surface beside the crest of a limb, at a distance along it.
fn on_crest(
    ground: &Ground<'_>,
    limb: &[Point3<f64>],
    along: impl Fn(f64) -> f64,
    outward_mm: f64,
) -> Result<Seen, Unseen> {
    let (first, last) = (limb.first(), limb.last());
    let (Some(first), Some(last)) = (first, last) else {
        return Err(Unseen::NoSurface);
    };
    let length: f64 = limb.windows(2).map(|p| (p[1] - p[0]).xy().norm()).sum();
    let side = if last.x > first.x { 1.0 } else { -1.0 };
    let (place, outward) = ground
        .crest_at(side * along(length))
        .ok_or(Unseen::NoSurface)?;
    let place = place + outward * outward_mm;
    let height = ground.map.at(place).ok_or(Unseen::NoSurface)?;
    Ok(region(Point3::new(place.x, place.y, height)))
}

/// The lingual flange down to the retromylohyoid region: its border there, where
/// it reaches deepest. Scan coordinates.
pub(super) fn lingual_flange(ground: &Ground<'_>, side: Side) -> Result<Seen, Unseen> {
    let border = ground.border.ok_or(Unseen::NoBorder)?;
    let lingual: Vec<(&Station, Point3<f64>)> = (border.stations.iter())
        .filter(|s| s.part == BorderPart::Lingual)
        .map(|station| (station, ground.local(&station.point)))
        .filter(|(_, local)| ground.side(local) == Some(side))
        .collect();
    let (front, back) = lingual.iter().fold(
        (f64::NEG_INFINITY, f64::INFINITY),
        |(front, back), (_, p)| (front.max(p.y), back.min(p.y)),
    );
    lingual
        .iter()
        .filter(|(_, local)| {
            front - local.y >= anatomy::RETROMYLOHYOID_BORDER_PART * (front - back)
        })
        .max_by(|a, b| a.1.z.total_cmp(&b.1.z))
        .map(|(station, _)| region(station.point))
        .ok_or(Unseen::NoBorder)
}
