//! Planted places where the material over the tray is thin or missing.

use nalgebra::{Point3, Vector3};

/// A round place where the tissue surface comes near the tray: `least` cover
/// within `radius`, then more with each mm away from the axis.
#[derive(Debug, Clone, Copy)]
pub struct Spot {
    /// Point of the tray's tissue-side surface under the middle.
    pub foot: Point3<f64>,
    /// Unit vector from the tray toward the tissue there.
    pub axis: Vector3<f64>,
    /// Radius of the even middle, mm.
    pub radius: f64,
    /// Cover of the middle, mm; 0 shows the tray.
    pub least: f64,
    /// Growth of cover for each mm outside the radius.
    pub ramp: f64,
}

/// Further from the tray than any material goes along a spot's axis.
const DEPTH_MM: f64 = 7.0;

impl Spot {
    /// Cover that the spot leaves at a point, mm; grows without end away from it.
    #[must_use]
    pub fn cover(&self, p: &Point3<f64>) -> f64 {
        let offset = p - self.foot;
        let height = offset.dot(&self.axis);
        let aside = (offset - self.axis * height).norm();
        // Behind the tray's tissue face and far above it the spot fades out, so
        // that neither the overflow nor the other side of the arch is touched.
        let beyond = (-height - 0.3).max(0.0) * 4.0 + (height - DEPTH_MM).max(0.0) * 4.0;
        self.least + self.ramp * (aside - self.radius).max(0.0) + beyond
    }

    /// Whether the spot can matter above a point of the plan.
    #[must_use]
    pub fn touches_column(&self, x: f64, y: f64) -> bool {
        let reach = self.radius + DEPTH_MM * (1.0 / self.ramp + 1.2);
        (x - self.foot.x).hypot(y - self.foot.y) < reach
    }

    /// Place on the tissue surface in the middle of the spot.
    #[must_use]
    pub fn centre(&self) -> Point3<f64> {
        self.foot + self.axis * self.least
    }
}
