//! The colours of material and tray, and the way from one to the other.

use super::figures::{LEAST_DIFFERENCE, LEAST_SEPARATION, NoColour};
use geometry::order::median;
use nalgebra::{Matrix3, Vector3};

/// A colour of the outer surface counts as the tray's where it differs from the
/// material's at least so much, fills at least this share of the outer surface
/// and of what there is not material.
const TRAY_STANDS_OUT: f64 = 15.0;
const TRAY_SHARE: f64 = 0.2;
const TRAY_SHARE_OF_THE_REST: f64 = 0.6;
/// Share of the way from material to tray from which a place counts as tray.
pub(super) const HALFWAY: f64 = 0.5;

/// The colour that most of a surface has, and its scatter.
pub(super) struct Cluster {
    pub(super) centre: Vector3<f64>,
    covariance: Matrix3<f64>,
}

impl Cluster {
    pub(super) fn most_of(colours: Vec<Vector3<f64>>) -> Option<Self> {
        const ROUNDS: usize = 5;
        /// In median distances: beyond nearly all of a normal scatter.
        const REACH: f64 = 2.5;
        /// Of the steps in which colours come, so that an even colour has a scatter.
        const LEAST_SCATTER: f64 = 0.5;
        if colours.is_empty() {
            return None;
        }
        let mut centre = Vector3::from([0, 1, 2].map(|k| middle(colours.iter().map(|c| c[k]))));
        let mut covariance = Matrix3::zeros();
        for _ in 0..ROUNDS {
            let off = |c: &Vector3<f64>| (c - centre).norm();
            let reach = REACH * middle(colours.iter().map(off)).max(LEAST_SCATTER);
            let kept: Vec<&Vector3<f64>> = colours.iter().filter(|c| off(c) <= reach).collect();
            let count = kept.len() as f64;
            let mean = kept.iter().copied().sum::<Vector3<f64>>() / count;
            covariance = kept
                .iter()
                .map(|c| (*c - mean) * (*c - mean).transpose())
                .sum::<Matrix3<f64>>()
                / count;
            centre = mean;
        }
        Some(Self {
            centre,
            covariance: covariance + Matrix3::identity() * LEAST_SCATTER.powi(2),
        })
    }
}

impl Cluster {
    /// How far a colour lies from the middle, in standard deviations of the scatter
    /// in that direction.
    pub(super) fn deviations(&self, colour: &Vector3<f64>) -> f64 {
        let off = colour - self.centre;
        let metric = self.covariance.try_inverse().unwrap_or_default();
        off.dot(&(metric * off)).sqrt()
    }
}

/// The tray's colour among those of the outer surface, where it is clear.
pub(super) fn tray_among(outer: &[Vector3<f64>], material: &Cluster) -> Option<Vector3<f64>> {
    const ROUNDS: usize = 8;
    let rest: Vec<Vector3<f64>> = outer
        .iter()
        .filter(|c| (*c - material.centre).norm() > TRAY_STANDS_OUT)
        .copied()
        .collect();
    if rest.is_empty() {
        return None;
    }
    let median_of = |colours: &[Vector3<f64>]| {
        Vector3::from([0, 1, 2].map(|k| middle(colours.iter().map(|c| c[k]))))
    };
    let mut centre = median_of(&rest);
    let mut near = Vec::new();
    for _ in 0..ROUNDS {
        near = rest
            .iter()
            .filter(|c| (*c - centre).norm() <= TRAY_STANDS_OUT)
            .copied()
            .collect();
        if near.is_empty() {
            return None;
        }
        centre = median_of(&near);
    }
    let share = near.len() as f64 / outer.len() as f64;
    let of_the_rest = near.len() as f64 / rest.len() as f64;
    let clear = share >= TRAY_SHARE
        && of_the_rest >= TRAY_SHARE_OF_THE_REST
        && (centre - material.centre).norm() > TRAY_STANDS_OUT;
    clear.then_some(centre)
}

/// The median of values; not a number without any.
fn middle(values: impl Iterator<Item = f64>) -> f64 {
    median(&mut values.collect::<Vec<f64>>()).unwrap_or(f64::NAN)
}

/// The way from the material's colour to the tray's.
pub(super) struct Apart {
    material: Vector3<f64>,
    pub(super) way: Vector3<f64>,
    /// Inverse of the material's covariance.
    metric: Matrix3<f64>,
    pub(super) separation: f64,
}

/// A colour beside those of material and tray.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Share {
    Between(f64),
    Other,
}

impl Share {
    pub(super) fn toward_tray(self) -> f64 {
        match self {
            Self::Between(share) => share,
            Self::Other => 0.0,
        }
    }
}

impl Apart {
    pub(super) fn between(material: &Cluster, tray: Vector3<f64>) -> Result<Self, NoColour> {
        let way = tray - material.centre;
        if way.norm() < LEAST_DIFFERENCE {
            return Err(NoColour::Alike {
                difference: way.norm(),
            });
        }
        let metric = material.covariance.try_inverse().unwrap_or_default();
        let separation = way.dot(&(metric * way)).sqrt();
        if separation.is_nan() || separation < LEAST_SEPARATION {
            return Err(NoColour::TooUneven { separation });
        }
        Ok(Self {
            material: material.centre,
            way,
            metric,
            separation,
        })
    }

    pub(super) fn share(&self, colour: &Vector3<f64>) -> Share {
        /// Off the way by more than this part of it, and than the scatter has
        /// by chance, is another colour.
        const ASIDE: f64 = 0.5;
        const BY_CHANCE: f64 = 4.5;
        let off = colour - self.material;
        let share = off.dot(&(self.metric * self.way)) / self.separation.powi(2);
        let aside = off - self.way * share;
        let far = aside.dot(&(self.metric * aside)).sqrt();
        if far > BY_CHANCE.max(ASIDE * self.separation) {
            Share::Other
        } else {
            Share::Between(share)
        }
    }

    /// How like the tray's the colour in the middle of a patch is: 1 the same,
    /// 0 no nearer to it than halfway.
    pub(super) fn likeness(&self, patch: &[u32], colours: &[Option<Vector3<f64>>]) -> f64 {
        let share = |c: &Vector3<f64>| self.share(c).toward_tray();
        let mut inside: Vec<Vector3<f64>> =
            patch.iter().filter_map(|&v| colours[v as usize]).collect();
        inside.sort_by(|a, b| share(b).total_cmp(&share(a)));
        inside.truncate(inside.len().div_ceil(2));
        let core = inside.iter().sum::<Vector3<f64>>() / inside.len().max(1) as f64;
        let off = (core - self.material - self.way).norm() / self.way.norm();
        (1.0 - off / HALFWAY).clamp(0.0, 1.0)
    }
}
