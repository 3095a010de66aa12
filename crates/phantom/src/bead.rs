//! Round cuts and additions.

use crate::shaping::norm;
use nalgebra::Point3;

/// A round cut into the material (a void, a fold) or addition to it (a nodule):
/// everything within a radius of a spine, which is a point or a line.
#[derive(Debug, Clone)]
pub struct Bead {
    /// Points of the spine.
    pub spine: Vec<Point3<f64>>,
    /// Radius, mm.
    pub radius: f64,
    /// Whether it is material.
    pub solid: bool,
}

impl Bead {
    /// Distance to the surface around the spine, negative inside, mm.
    #[must_use]
    pub fn distance(&self, p: &Point3<f64>) -> f64 {
        let to_spine = match self.spine[..] {
            [only] => (p - only).norm(),
            _ => self
                .spine
                .windows(2)
                .map(|ends| to_segment(p, &ends[0], &ends[1]))
                .fold(f64::INFINITY, f64::min),
        };
        to_spine - self.radius
    }

    /// Whether it is near a point of the plan.
    #[must_use]
    pub fn touches_column(&self, x: f64, y: f64) -> bool {
        self.spine
            .iter()
            .any(|c| norm(x - c.x, y - c.y) < self.radius + 2.5)
    }
}

fn to_segment(p: &Point3<f64>, a: &Point3<f64>, b: &Point3<f64>) -> f64 {
    let (run, off) = (b - a, p - a);
    let share = (off.dot(&run) / run.norm_squared().max(1e-18)).clamp(0.0, 1.0);
    (off - run * share).norm()
}
