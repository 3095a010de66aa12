//! Planted places where the material over the tray is thin or missing.

use crate::options::SpotKind;
use crate::shaping::norm;
use nalgebra::{Point3, Vector3};

/// A round place where the tissue surface comes near the tray: `least` cover
/// within `radius` of the axis, then more with each mm away from it.
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
    /// Growth of cover for each mm outside the radius, as far as it is thin;
    /// beyond, cover grows ever faster.
    pub ramp: f64,
}

/// Further from the tray than any material goes along a spot's axis, mm.
const DEPTH_MM: f64 = 7.0;
/// Cover up to which a spot's flank is an even cone, mm.
const EVEN_RAMP_MM: f64 = 1.1;
/// Radius of the even middle at least, mm.
const LEAST_RADIUS_MM: f64 = 0.2;

impl Spot {
    /// A spot of the wanted kind and, on a flat tray, the wanted area; its
    /// cover grows by about `ramp` for each mm, more if it has to be small.
    #[must_use]
    pub fn of_kind(kind: SpotKind, foot: Point3<f64>, axis: Vector3<f64>, ramp: f64) -> Self {
        let (least, limit, area) = match kind {
            SpotKind::ShowThrough { area_mm2 } => (0.0, 0.2, area_mm2),
            SpotKind::Thin { least_mm, area_mm2 } => (least_mm, 1.0, area_mm2),
        };
        let outer = (area / std::f64::consts::PI)
            .sqrt()
            .max(2.0 * LEAST_RADIUS_MM);
        let rise: f64 = limit - least;
        let ramp = ramp.max(rise / (outer - LEAST_RADIUS_MM));
        Self {
            foot,
            axis,
            radius: outer - rise / ramp,
            least,
            ramp,
        }
    }

    /// Cover that the spot leaves at a point, mm; grows without end away from it.
    #[must_use]
    pub fn cover(&self, p: &Point3<f64>) -> f64 {
        let offset = p - self.foot;
        let height = offset.dot(&self.axis);
        let aside = (offset - self.axis * height).norm();
        // Behind the tray's tissue face and far above it the spot fades out, so
        // that neither the overflow nor the other side of the arch is touched.
        let beyond = (-height - 0.8).max(0.0) * 4.0 + (height - DEPTH_MM).max(0.0) * 4.0;
        let outside = (aside - self.radius).max(0.0);
        let rounding = (outside - (EVEN_RAMP_MM - self.least) / self.ramp).max(0.0);
        self.least + self.ramp * outside + 0.5 * rounding * rounding + beyond
    }

    /// Whether the spot can matter above a point of the plan.
    #[must_use]
    pub fn touches_column(&self, x: f64, y: f64) -> bool {
        let reach = self.radius + DEPTH_MM * (1.0 / self.ramp + 1.2);
        norm(x - self.foot.x, y - self.foot.y) < reach
    }

    /// Radius around the axis within which cover stays below `limit` mm on a flat tray.
    #[must_use]
    pub fn radius_below(&self, limit: f64) -> f64 {
        self.radius + ((limit - self.least) / self.ramp).max(0.0)
    }
}
