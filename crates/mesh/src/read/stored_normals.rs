//! Stored normals held against the triangles they belong to.
//!
//! Normals are always worked out from the corners. But where a file's own say
//! the opposite nearly everywhere, somebody has turned or mirrored the scan
//! without the other, and which of the two it was nobody can see.

use super::warning::ReadWarning;
use nalgebra::{Point3, Vector3};

/// Triangles or vertices looked at, from the beginning of the file.
pub(super) const LOOKED_AT: usize = 4096;
/// Least number of them for a judgement.
const FEW: u32 = 16;
/// Share of them that must face the other way.
const NEARLY_ALL: f64 = 0.9;

/// How many stored normals agree with their triangles.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Tally {
    with: u32,
    against: u32,
}

impl Tally {
    /// Counts a triangle with its stored normal, unless it has none.
    pub(super) fn add(&mut self, normal: Vector3<f64>, [a, b, c]: [Point3<f64>; 3]) {
        let alike = normal.dot(&(b - a).cross(&(c - a)));
        if alike > 0.0 {
            self.with += 1;
        } else if alike < 0.0 {
            self.against += 1;
        }
    }

    /// The warning, if nearly all are against their triangles.
    pub(super) fn warning(self) -> Option<ReadWarning> {
        let all = self.with + self.against;
        (all >= FEW && f64::from(self.against) > NEARLY_ALL * f64::from(all))
            .then_some(ReadWarning::NormalsAgainstTriangles)
    }
}
