//! Planted faults of the surface and of the scan.

use crate::impression::Impression;
use crate::options::{Blemish, FlangeSide};
use crate::truth::{BlemishKind, BlemishTruth};
use nalgebra::{Isometry3, Point3, Vector3};

/// A ball taken from the material (a void) or added to it (a nodule).
#[derive(Debug, Clone, Copy)]
pub struct Ball {
    /// Centre.
    pub centre: Point3<f64>,
    /// Radius, mm.
    pub radius: f64,
    /// Whether the ball is material.
    pub solid: bool,
}

impl Ball {
    /// Distance to the ball's surface, negative inside, mm.
    #[must_use]
    pub fn distance(&self, p: &Point3<f64>) -> f64 {
        (p - self.centre).norm() - self.radius
    }

    /// Whether the ball is near a point of the plan.
    #[must_use]
    pub fn touches_column(&self, x: f64, y: f64) -> bool {
        (x - self.centre.x).hypot(y - self.centre.y) < self.radius + 2.5
    }
}

/// Where the tissue surface lies over a planted blemish, and its direction
/// away from the material.
fn surface(
    impression: &Impression,
    foot: (Point3<f64>, Vector3<f64>),
) -> (Point3<f64>, Vector3<f64>) {
    let (foot, axis) = foot;
    let start = foot + axis * 7.0;
    (impression.hit(&start, &-axis, 8.0).unwrap_or(foot), axis)
}

/// The ball of a void or a nodule; `None` for other blemishes.
pub fn ball(impression: &Impression, blemish: &Blemish) -> Option<Ball> {
    let (place, diameter, rise, solid) = match *blemish {
        Blemish::Void {
            place,
            diameter_mm,
            depth_mm,
        } => (place, diameter_mm, depth_mm, false),
        Blemish::Nodule {
            place,
            diameter_mm,
            height_mm,
        } => (place, diameter_mm, height_mm, true),
        Blemish::Hole { .. }
        | Blemish::ShortBorder { .. }
        | Blemish::KnifeEdge { .. }
        | Blemish::CutScan { .. } => return None,
    };
    let (on, outward) = surface(impression, impression.foot(place));
    let radius = diameter / 2.0;
    let up = if solid { rise - radius } else { radius - rise };
    Some(Ball {
        centre: on + outward * up,
        radius,
        solid,
    })
}

/// What is true of a planted blemish, in scan coordinates.
pub fn described(plain: &Impression, blemish: &Blemish, pose: &Isometry3<f64>) -> BlemishTruth {
    let at = |place| pose * surface(plain, plain.foot(place)).0;
    let border = |flange, station| pose * plain.border_at(flange, station);
    let (kind, centre, diameter_mm, depth_mm) = match *blemish {
        Blemish::Void {
            place,
            diameter_mm,
            depth_mm,
        } => (BlemishKind::Void, at(place), diameter_mm, depth_mm),
        Blemish::Nodule {
            place,
            diameter_mm,
            height_mm,
        } => (BlemishKind::Nodule, at(place), diameter_mm, height_mm),
        Blemish::Hole { place, diameter_mm } => (BlemishKind::Hole, at(place), diameter_mm, 0.0),
        Blemish::ShortBorder {
            flange,
            station,
            length_mm,
            by_mm,
        } => (
            BlemishKind::ShortBorder,
            border(flange, station),
            length_mm,
            by_mm,
        ),
        Blemish::KnifeEdge {
            flange,
            station,
            length_mm,
            radius_mm,
        } => (
            BlemishKind::KnifeEdge,
            border(flange, station),
            length_mm,
            radius_mm,
        ),
        Blemish::CutScan {
            flange,
            station,
            length_mm,
            by_mm,
        } => (
            BlemishKind::CutScan,
            border(flange, station),
            length_mm,
            by_mm,
        ),
    };
    BlemishTruth {
        kind,
        centre,
        size_mm: diameter_mm,
        depth_mm,
    }
}

/// Whether a scan point was lost to a hole or a cut; all in made coordinates.
pub fn is_lost(
    impression: &Impression,
    blemish: &Blemish,
    centre: &Point3<f64>,
    p: &Point3<f64>,
) -> bool {
    match *blemish {
        Blemish::Hole { diameter_mm, .. } => (p - centre).norm() < diameter_mm / 2.0,
        Blemish::CutScan {
            flange,
            length_mm,
            by_mm,
            ..
        } => {
            let middle = impression.mouth.arch.place(centre.x, centre.y);
            let here = impression.mouth.arch.place(p.x, p.y);
            let section = impression.mouth.sections.at(here.along);
            let on_flange = match flange {
                FlangeSide::Outer => here.out > 0.0,
                FlangeSide::Lingual => here.out < 0.0 && impression.mouth.palate.is_none(),
            };
            (here.along - middle.along).abs() < length_mm / 2.0
                && on_flange
                && p.z > section.flange(flange).border_z - by_mm
        }
        _ => false,
    }
}
