//! One way of laying a surface on another that shows the same thing in part:
//! near the starts where there are some, else anywhere, accepted by how much of
//! it fits.

use crate::registration::{
    NotRegistered, Registered, Target, register, register_anywhere, slid_on,
};
use crate::sampling::SurfacePoint;
use nalgebra::Isometry3;
use thiserror::Error;

/// What a pose must show to be accepted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Laying {
    /// Least share of the source that must lie on the target, 0 to 1.
    pub least_fitting: f64,
    /// Greatest part of the source behind the target, as a part of what fits.
    pub most_behind: f64,
}

/// Why a surface could not be laid on another.
#[derive(Debug, Clone, Error)]
pub enum NotLaid {
    /// It could not be registered at all.
    #[error(transparent)]
    NotRegistered(#[from] NotRegistered),
    /// Too little of it fits, or too much lies behind the target.
    #[error("only {:.0} % of the surface fits", 100.0 * .0.fitting_share)]
    Unfit(Box<Registered>),
}

impl NotLaid {
    /// Share of the source that lies on the target all the same, 0 to 1.
    #[must_use]
    pub fn fitting_share(&self) -> f64 {
        match self {
            Self::NotRegistered(_) => 0.0,
            Self::Unfit(found) => found.fitting_share,
        }
    }
}

impl Laying {
    /// Poses in which at least a share of the source fits, wherever the rest lies.
    #[must_use]
    pub fn by_share(least_fitting: f64) -> Self {
        Self {
            least_fitting,
            most_behind: f64::INFINITY,
        }
    }

    fn accepts(&self, found: &Registered) -> bool {
        found.fitting_share >= self.least_fitting
            && found.behind_share <= self.most_behind * found.fitting_share
    }

    /// Lays evenly spread points of a surface on a target, from the starts if
    /// one of them leads to a pose that is accepted, else from anywhere. `look` is
    /// called as in [`register`].
    ///
    /// # Errors
    /// When no pose is found, or none is accepted.
    pub fn lay(
        &self,
        source: &[SurfacePoint],
        target: &Target,
        starts: &[Isometry3<f64>],
        look: &(dyn Fn() + Sync),
    ) -> Result<Registered, NotLaid> {
        let refined = |found: &Registered| {
            self.accepts(found).then(|| Refined {
                pose: found.clone(),
                fitting_share: found.fitting_share,
                is_doubted: false,
            })
        };
        lay_refined(source, target, starts, refined, look)
    }
}

/// A pose that was refined to something acceptable.
#[derive(Debug, Clone)]
pub struct Refined<T> {
    /// The pose.
    pub pose: T,
    /// Share of the source that lies on the target, 0 to 1.
    pub fitting_share: f64,
    /// Whether a pose from elsewhere may fit better.
    pub is_doubted: bool,
}

/// Lays evenly spread points of a surface on a target, from the starts if one of
/// them leads to a pose that can be refined to something beyond doubt, at once or
/// after it slid along the surfaces, else from anywhere. `look` is called as in [`register`].
///
/// # Errors
/// When no pose is found, or none can be refined.
pub fn lay_refined<T>(
    source: &[SurfacePoint],
    target: &Target,
    starts: &[Isometry3<f64>],
    refined: impl Fn(&Registered) -> Option<Refined<T>>,
    look: &(dyn Fn() + Sync),
) -> Result<T, NotLaid> {
    let settled = |found: &Registered| {
        let at_once = refined(found);
        if at_once.as_ref().is_some_and(|pose| !pose.is_doubted) {
            return at_once;
        }
        look();
        let slid = refined(&slid_on(source, target, found));
        (at_once.into_iter().chain(slid)).max_by(|a, b| a.fitting_share.total_cmp(&b.fitting_share))
    };
    let near = (!starts.is_empty())
        .then(|| register(source, target, starts, look).ok())
        .flatten()
        .and_then(|found| settled(&found));
    let near = match near {
        Some(near) if !near.is_doubted => return Ok(near.pose),
        near => near,
    };
    let elsewhere = register_anywhere(source, target, look)
        .map_err(NotLaid::from)
        .and_then(|found| settled(&found).ok_or_else(|| NotLaid::Unfit(Box::new(found))));
    match (near, elsewhere) {
        (Some(near), Ok(elsewhere)) if near.fitting_share < elsewhere.fitting_share => {
            Ok(elsewhere.pose)
        }
        (Some(near), _) => Ok(near.pose),
        (None, elsewhere) => Ok(elsewhere?.pose),
    }
}
