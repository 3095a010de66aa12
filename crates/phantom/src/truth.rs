//! What is known about a phantom by formula.

use crate::impression::Impression;
use crate::mouth::Arch;
use nalgebra::{Isometry3, Point3, Unit, Vector3};
use serde::Serialize;

/// What is known about a phantom. Points and directions are in the
/// coordinates of the impression's scan unless said otherwise; lengths in mm.
#[derive(Debug, Clone, Serialize)]
pub struct Truth {
    /// Which jaw.
    pub arch: Arch,
    /// The seed it was made from.
    pub seed: u64,
    /// The patient's axes.
    pub axes: Axes,
    /// Moves tray-scan coordinates into impression-scan coordinates.
    pub impression_from_tray: Isometry3<f64>,
    /// Thickness of the tray's shell, mm.
    pub tray_thickness_mm: f64,
    #[serde(skip)]
    pub(crate) impression: Impression,
    #[serde(skip)]
    pub(crate) made_from_scan: Isometry3<f64>,
}

/// Unit vectors of the patient's axes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Axes {
    /// Toward the patient's right.
    pub right: Vector3<f64>,
    /// Toward the patient's front.
    pub anterior: Vector3<f64>,
    /// From the tray toward the tissue.
    pub seating: Vector3<f64>,
}

impl Axes {
    /// The axes of an arch whose scan was moved by `pose` from where it was
    /// made (seating along z, anterior along y).
    #[must_use]
    pub fn of(arch: Arch, pose: &Isometry3<f64>) -> Self {
        let [anterior, seating] =
            [Vector3::y_axis(), Vector3::z_axis()].map(|a: Unit<_>| pose * a.into_inner());
        let right = anterior.cross(&seating) * arch.right_sign();
        Self {
            right,
            anterior,
            seating,
        }
    }
}

impl Truth {
    /// Distance from a point in scan coordinates to the tray's surface by
    /// formula, mm; negative inside the tray.
    #[must_use]
    pub fn cover_at(&self, point: &Point3<f64>) -> f64 {
        self.impression
            .tray
            .exact_distance(&(self.made_from_scan * point))
    }
}
