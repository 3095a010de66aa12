//! The impression frame: plain data.

use super::axes::rotation_to;
use crate::words::Arch;
use nalgebra::{Isometry3, Point3, Translation3, Vector3};

/// Impression frame, found from the surface alone.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// Origin: centre of the crest line, in scan coordinates, mm.
    pub origin: Point3<f64>,
    /// Unit vector toward the patient's right, scan coordinates.
    pub right: Vector3<f64>,
    /// Unit vector toward the patient's front, scan coordinates.
    pub anterior: Vector3<f64>,
    /// Unit vector from tray toward tissue, scan coordinates.
    pub seating: Vector3<f64>,
    /// Maxillary or mandibular, as found.
    pub arch: Arch,
    /// 0 (a guess) to 1 (no other arch comes near), for the arch found.
    pub arch_confidence: f64,
    /// 0 to 1, for the axes.
    pub confidence: f64,
}

impl Frame {
    /// The motion from scan coordinates to local ones: x = anterior x seating,
    /// y = anterior, z = seating, a right-handed system for both jaws (x points
    /// to the patient's right in the upper jaw and to the left in the lower).
    #[must_use]
    pub fn local_from_scan(&self) -> Isometry3<f64> {
        rotation_to(&self.anterior, &self.seating) * Translation3::from(-self.origin.coords)
    }
}
