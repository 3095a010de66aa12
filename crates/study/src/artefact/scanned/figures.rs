//! An artefact as it is said to be, and as it was scanned: plain data.

use super::candidates::Candidate;
use geometry::fit::Sphere;
use messages::{Message, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Matrix4, Point3};

/// What a scan may be off in scale, as a share, and its spheres still be found.
pub(super) const SCALE_PLAY: f64 = 0.05;

/// A sphere as it is said to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NominalSphere {
    /// Its centre, in coordinates of the artefact, mm.
    pub centre: Point3<f64>,
    /// Its radius, mm.
    pub radius_mm: f64,
}

/// A sphere as it was scanned.
#[derive(Debug, Clone, PartialEq)]
pub struct ScannedSphere {
    /// The least-squares sphere, scan coordinates, mm.
    pub sphere: Sphere,
    /// Number of vertices that it was fitted to.
    pub points: usize,
    /// Width of the shell about its centre that holds 95 of 100 of all vertices
    /// on it, those that the fit left out included, mm (what ISO 10360-8 calls a
    /// probing dispersion).
    pub dispersion_mm: f64,
    /// Covariance of centre and radius, mm²; vertices err independently.
    covariance: Matrix4<f64>,
}

/// The spheres of an artefact in a scan.
#[derive(Debug, Clone, PartialEq)]
pub struct ScannedArtefact {
    /// Each sphere, in the order in which the nominal ones were given.
    pub spheres: Vec<ScannedSphere>,
    /// The motion that lays the nominal centres on them, scale unchanged; with
    /// fewer than three, or all in line, one of many.
    pub from_nominal: Isometry3<f64>,
    /// Root mean square distance of the centres from the nominal ones laid on
    /// them, mm.
    pub rms_mm: f64,
    /// Whether the spheres could be told from each other in more than one way.
    pub is_ambiguous: bool,
}

/// Why an artefact was not found in a scan.
#[derive(Debug, Clone, PartialEq)]
pub enum ArtefactNotFound {
    /// Too few balls.
    TooFew {
        /// How many there should be.
        wanted: usize,
        /// How many there are.
        seen: usize,
    },
    /// Balls, but not as they should stand.
    StandsOtherwise {
        /// How many were seen.
        seen: usize,
    },
}

impl ArtefactNotFound {
    /// Why, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::TooFew { wanted, seen } => {
                message!("artefact-too-few", wanted = *wanted, seen = *seen)
            }
            Self::StandsOtherwise { seen } => message!("artefact-other", seen = *seen),
        }
    }
}

said_by_the_catalogue!(ArtefactNotFound);

impl ScannedSphere {
    pub(super) fn of(candidate: &Candidate) -> Option<Self> {
        let (sphere, points) = (candidate.sphere, &candidate.points);
        let mut off: Vec<f64> = (candidate.seen.iter())
            .map(|p| sphere.distance(p))
            .collect();
        Some(Self {
            sphere,
            points: points.len(),
            dispersion_mm: narrowest(&mut off, 0.95),
            covariance: sphere.covariance(points)?,
        })
    }

    /// Diameter, with the expanded uncertainty (k = 2) that the scatter of its
    /// points leaves, mm.
    #[must_use]
    pub fn diameter_mm(&self) -> (f64, f64) {
        let of_radius = self.covariance[(3, 3)].sqrt();
        (2.0 * self.sphere.radius, 2.0 * (2.0 * of_radius))
    }

    /// Expanded uncertainty (k = 2) of the dispersion, mm, as of the width of a
    /// normal distribution (which is 3.92 standard deviations here).
    #[must_use]
    pub fn dispersion_uncertainty_mm(&self) -> f64 {
        // A quantile at 0.025 has the variance p (1 - p) / (n f²), f the density
        // there, 0.0584 over the standard deviation; the two ends make up the width.
        let sd = self.dispersion_mm / 3.92;
        let of_end = (0.025_f64 * 0.975 / self.points as f64).sqrt() * sd / 0.0584;
        2.0 * (2.0_f64.sqrt() * of_end)
    }

    /// Distance to the centre of another, with its expanded uncertainty (k = 2)
    /// by the scatter of their points, mm.
    #[must_use]
    pub fn distance_mm(&self, other: &Self) -> (f64, f64) {
        let apart = other.sphere.centre - self.sphere.centre;
        let along = apart.try_normalize(0.0).unwrap_or_default();
        let variance: f64 = [self, other]
            .iter()
            .map(|one| {
                let centre = one.covariance.fixed_view::<3, 3>(0, 0);
                (along.transpose() * centre * along).x
            })
            .sum();
        (apart.norm(), 2.0 * variance.max(0.0).sqrt())
    }
}

/// Width of the narrowest range that holds this part of the values.
fn narrowest(values: &mut [f64], part: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    let held = ((values.len() as f64 * part).ceil() as usize).max(1);
    values
        .windows(held)
        .map(|w| w[held - 1] - w[0])
        .fold(f64::INFINITY, f64::min)
}
