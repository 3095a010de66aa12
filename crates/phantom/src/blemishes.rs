//! Planted faults of the surface and of the scan.

use crate::bead::Bead;
use crate::impression::Impression;
use crate::mesher::Solid;
use crate::options::{Blemish, FlangeSide, Place};
use crate::truth::{BlemishKind, BlemishTruth};
use nalgebra::{Isometry3, Point3, Vector3};

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

/// What a void, a nodule or a fold cuts away or adds; `None` for other blemishes.
pub(crate) fn bead(impression: &Impression, blemish: &Blemish) -> Option<Bead> {
    match *blemish {
        Blemish::Void {
            place,
            diameter_mm,
            depth_mm,
        } => Some(ball(impression, place, diameter_mm, depth_mm, false)),
        Blemish::Nodule {
            place,
            diameter_mm,
            height_mm,
        } => Some(ball(impression, place, diameter_mm, height_mm, true)),
        Blemish::Fold {
            place,
            heading_deg,
            length_mm,
            width_mm,
            depth_mm,
        } => {
            let radius = Blemish::ball_of_mouth(width_mm, depth_mm) / 2.0;
            let spine = line_on_surface(impression, place, heading_deg, length_mm)
                .into_iter()
                .map(|p| p + outward_at(impression, &p) * (radius - depth_mm))
                .collect();
            Some(Bead {
                spine,
                radius,
                solid: false,
            })
        }
        Blemish::Hole { .. }
        | Blemish::ShortBorder { .. }
        | Blemish::KnifeEdge { .. }
        | Blemish::CutScan { .. } => None,
    }
}

fn ball(impression: &Impression, place: Place, diameter: f64, rise: f64, solid: bool) -> Bead {
    let (on, _) = surface(impression, impression.foot(place));
    // Square to the surface, which the tray's own direction is not everywhere.
    let outward = outward_at(impression, &on);
    let radius = diameter / 2.0;
    let up = if solid { rise - radius } else { radius - rise };
    Bead {
        spine: vec![on + outward * up],
        radius,
        solid,
    }
}

/// Points of the tissue surface on a line whose middle is a place; a heading of
/// 0 runs along the arch (on the palate, across it).
fn line_on_surface(
    impression: &Impression,
    place: Place,
    heading_deg: f64,
    length: f64,
) -> Vec<Point3<f64>> {
    const STEP_MM: f64 = 0.25;
    let (on, axis) = surface(impression, impression.foot(place));
    let ahead = match place {
        Place::Palate { .. } => Vector3::x(),
        Place::Arch { station, .. } => {
            let along = impression.along(station);
            let run =
                impression.mouth.plan(along + 0.5, 0.0) - impression.mouth.plan(along - 0.5, 0.0);
            Vector3::new(run.x, run.y, 0.0)
        }
    };
    let level = (ahead - axis * axis.dot(&ahead)).normalize();
    let turn = heading_deg.to_radians();
    let heading = level * turn.cos() + axis.cross(&level) * turn.sin();
    let steps = (length / STEP_MM).round().max(1.0) as i32;
    (0..=steps)
        .filter_map(|i| {
            let gone = length * (f64::from(i) / f64::from(steps) - 0.5);
            impression.hit(&(on + heading * gone + axis * 5.0), &-axis, 10.0)
        })
        .collect()
}

/// Unit vector away from the material at a point of its surface.
fn outward_at(impression: &Impression, p: &Point3<f64>) -> Vector3<f64> {
    const STEP_MM: f64 = 0.05;
    let slope = |along: Vector3<f64>| {
        impression.at(&(p + along * STEP_MM)) - impression.at(&(p - along * STEP_MM))
    };
    Vector3::new(
        slope(Vector3::x()),
        slope(Vector3::y()),
        slope(Vector3::z()),
    )
    .try_normalize(1e-12)
    .unwrap_or_else(Vector3::z)
}

/// What is true of a planted blemish, in scan coordinates.
pub(crate) fn described(
    plain: &Impression,
    blemish: &Blemish,
    pose: &Isometry3<f64>,
) -> BlemishTruth {
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
        Blemish::Fold {
            place,
            length_mm,
            depth_mm,
            ..
        } => (BlemishKind::Fold, at(place), length_mm, depth_mm),
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
pub(crate) fn is_lost(
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
