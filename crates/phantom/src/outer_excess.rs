//! Material planted on the outer face of the tray's floor.

use crate::arch_curve::ArchPlace;
use crate::options::OuterExcess;
use crate::shaping::norm;
use crate::tray::Tray;
use nalgebra::{Isometry3, Point3};
use serde::Serialize;
use std::f64::consts::PI;

/// Loss of thickness for each mm outside the even middle.
const SLOPE: f64 = 3.0;
/// Thinner material is not counted, mm.
const FILM_MM: f64 = 0.5;

/// A round pad of material under the tray.
#[derive(Debug, Clone, Copy)]
pub struct Pad {
    wanted: OuterExcess,
    /// Point of the tray's outer face over its middle.
    foot: Point3<f64>,
    half_wall: f64,
}

/// What is true of a planted pad.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct OuterExcessTruth {
    /// Middle of its face on the tray, scan coordinates, mm.
    pub foot: Point3<f64>,
    /// Thickness of its middle, mm.
    pub thickness_mm: f64,
    /// Its surface where it is at least 0.5 mm thick, on a level floor, mm².
    pub area_mm2: f64,
}

impl Pad {
    /// The wanted pad, at an arc length.
    pub(crate) fn planted(tray: &Tray, along: f64, wanted: &OuterExcess) -> Self {
        let place = ArchPlace { along, out: 0.0 };
        let at = tray.arch().point(place);
        let column = tray.column(at.x, at.y);
        let mut z = tray.low_and_front().0 - 5.0;
        for _ in 0..200 {
            z += tray.distance(&column, z).shell;
        }
        Self {
            wanted: *wanted,
            foot: Point3::new(at.x, at.y, z),
            half_wall: 0.5 * tray.thickness(),
        }
    }

    /// How far a point lies outside the pad, mm, by its distance from the tray's shell.
    pub(crate) fn distance(&self, p: &Point3<f64>, shell: f64) -> f64 {
        let aside = norm(p.x - self.foot.x, p.y - self.foot.y);
        let beside = (aside - self.wanted.radius_mm).max(0.0);
        let under = p.z - self.foot.z - self.half_wall;
        ((shell - self.wanted.thickness_mm + SLOPE * beside) / norm(SLOPE, 1.0)).max(under)
    }

    /// Whether the pad can matter above a point of the plan.
    pub(crate) fn touches_column(&self, x: f64, y: f64) -> bool {
        let reach = self.wanted.radius_mm + self.wanted.thickness_mm / SLOPE + 3.0;
        norm(x - self.foot.x, y - self.foot.y) < reach
    }

    pub(crate) fn truth(&self, pose: &Isometry3<f64>) -> OuterExcessTruth {
        let (radius, thickness) = (self.wanted.radius_mm, self.wanted.thickness_mm);
        let fall = thickness - FILM_MM;
        let flank = PI * (2.0 * radius + fall / SLOPE) * norm(fall, fall / SLOPE);
        OuterExcessTruth {
            foot: pose * self.foot,
            thickness_mm: thickness,
            area_mm2: PI * radius * radius + flank,
        }
    }
}
