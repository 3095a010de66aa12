//! A pose that was found.

use super::uncertainty::PoseCovariance;
use nalgebra::{Isometry3, Point3};

/// A pose found, with how sure it is.
#[derive(Debug, Clone)]
pub struct Registered {
    /// `target_from_source * source_point` lies in target coordinates.
    pub target_from_source: Isometry3<f64>,
    /// Root mean square distance of the source points that fit, mm.
    pub rms_mm: f64,
    /// Share of source points that fit.
    pub fitting_share: f64,
    /// Share of source points that lie behind the target: within 2 mm of it,
    /// deeper than those that fit. Next to nothing where the target is what
    /// the source partly shows, for nothing can be scanned through it.
    pub behind_share: f64,
    /// Covariance of the pose.
    pub(super) covariance: PoseCovariance,
    /// How far apart starts ended that fit as well, mm.
    pub spread_mm: f64,
}

impl Registered {
    /// How much fits and how closely: share of the points over the root mean
    /// square of their distances, with a floor below which closer is no better.
    #[must_use]
    pub fn closeness(&self) -> f64 {
        const CLOSE_MM: f64 = 0.02;
        self.fitting_share / self.rms_mm.max(CLOSE_MM)
    }

    /// How well it agrees with what was scanned: the share of the points that fits, less what
    /// lies behind the target, where nothing can be scanned.
    #[must_use]
    pub fn agreement(&self) -> f64 {
        const BEHIND: f64 = 5.0;
        self.fitting_share - BEHIND * self.behind_share
    }

    /// Whether it lies as parts of one thing do: smoothly, and on much of it.
    /// Otherwise it may be caught beside the true pose.
    pub(super) fn is_close(&self) -> bool {
        const ROUGH_MM: f64 = 0.06;
        const LITTLE: f64 = 0.35;
        self.rms_mm <= ROUGH_MM && self.fitting_share >= LITTLE
    }

    /// Expanded uncertainty (k = 2) of where the pose puts points of the target
    /// (target coordinates), mm: 95th percentile over the points.
    #[must_use]
    pub fn uncertainty_mm(&self, points: &[Point3<f64>]) -> f64 {
        let spread = self.spread_mm / 2.0;
        2.0 * self.covariance.displacement_sd(points, 0.95).hypot(spread)
    }
}
