//! A reference artefact: its certified sizes, and what a scan of it errs.

mod fault;
mod file;

pub use fault::ArtefactFault;
pub use file::{ArtefactError, ArtefactProblem};

use super::scanned::{NominalSphere, NominalStep, ScannedArtefact, ScannedStep};
use judge::{Bound, Conformity, decide};

/// A reference artefact of spheres, and steps between them, with its certified sizes.
#[derive(Debug, Clone, PartialEq)]
pub struct Artefact {
    /// Its own number or name.
    pub id: String,
    /// Where its sizes come from.
    pub certificate: String,
    /// Its spheres.
    pub spheres: Vec<CertifiedSphere>,
    /// Its certified centre distances.
    pub distances: Vec<CertifiedDistance>,
    /// Its steps.
    pub steps: Vec<CertifiedStep>,
    /// What a scan of it may err.
    pub limits: ArtefactLimits,
}

/// A size with what is known of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Certified {
    /// The size, mm.
    pub mm: f64,
    /// Its expanded uncertainty (k = 2), mm.
    pub uncertainty_mm: f64,
}

/// A sphere of the artefact.
#[derive(Debug, Clone, PartialEq)]
pub struct CertifiedSphere {
    /// Its name.
    pub name: String,
    /// Where it is and how large: enough to find it by.
    pub nominal: NominalSphere,
    /// Its certified diameter.
    pub diameter: Certified,
}

/// A certified distance between two centres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CertifiedDistance {
    /// Numbers of the spheres, from 0.
    pub between: [usize; 2],
    /// The distance.
    pub distance: Certified,
}

/// A step of the artefact.
#[derive(Debug, Clone, PartialEq)]
pub struct CertifiedStep {
    /// Its name.
    pub name: String,
    /// Where its faces are: enough to find it by.
    pub nominal: NominalStep,
    /// Its certified height.
    pub height: Certified,
}

/// What a scan may err, mm; `None` where that is not judged.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ArtefactLimits {
    /// Greatest error of a diameter.
    pub diameter_error_mm: Option<f64>,
    /// Greatest error of a centre distance.
    pub distance_error_mm: Option<f64>,
    /// Greatest error of a step's height.
    pub step_error_mm: Option<f64>,
    /// Widest shell that 95 of 100 points of a sphere may need.
    pub dispersion_mm: Option<f64>,
}

/// What was measured of an artefact.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    /// Diameter of the sphere with this number.
    Diameter(usize),
    /// The certified centre distance with this number.
    Distance(usize),
    /// Height of the step with this number.
    Step(usize),
    /// Dispersion of the points of the sphere with this number.
    Dispersion(usize),
}

/// One size in one scan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SizeReading {
    /// What it is.
    pub quantity: Quantity,
    /// As scanned, mm.
    pub found_mm: f64,
    /// As certified; `None` of a dispersion.
    pub certified: Option<Certified>,
    /// As scanned less as certified (of a dispersion: itself), mm.
    pub error_mm: f64,
    /// Expanded uncertainty (k = 2) of the error, mm: of the certified size and
    /// of the fit together.
    pub uncertainty_mm: f64,
    /// What it may err, mm.
    pub limit_mm: Option<f64>,
    /// What that says; `None` without a limit.
    pub conformity: Option<Conformity>,
}

impl Artefact {
    /// Where its spheres should be, to be looked for.
    #[must_use]
    pub fn nominal(&self) -> Vec<NominalSphere> {
        self.spheres.iter().map(|s| s.nominal).collect()
    }

    /// Every size in a scan, decided by the rule of [`decide`]; `steps` are its
    /// steps as scanned, in their order.
    #[must_use]
    pub fn judge(&self, scan: &ScannedArtefact, steps: &[ScannedStep]) -> Vec<SizeReading> {
        let limits = &self.limits;
        let spheres = self.spheres.iter().zip(&scan.spheres).enumerate();
        let diameters = spheres.clone().map(|(number, (sphere, seen))| {
            let quantity = Quantity::Diameter(number);
            let certified = Some(sphere.diameter);
            reading(
                quantity,
                seen.diameter_mm(),
                certified,
                limits.diameter_error_mm,
            )
        });
        let distances = self.distances.iter().enumerate().map(|(number, known)| {
            let [one, other] = known.between.map(|k| &scan.spheres[k]);
            let quantity = Quantity::Distance(number);
            let found = one.distance_mm(other);
            reading(
                quantity,
                found,
                Some(known.distance),
                limits.distance_error_mm,
            )
        });
        let steps = self.steps.iter().zip(steps).enumerate();
        let steps = steps.map(|(number, (known, seen))| {
            reading(
                Quantity::Step(number),
                (seen.height_mm, seen.uncertainty_mm),
                Some(known.height),
                limits.step_error_mm,
            )
        });
        let dispersions = spheres.map(|(number, (_, seen))| {
            let found = (seen.dispersion_mm, seen.dispersion_uncertainty_mm());
            reading(
                Quantity::Dispersion(number),
                found,
                None,
                limits.dispersion_mm,
            )
        });
        (diameters.chain(distances).chain(steps).chain(dispersions)).collect()
    }

    /// How many times as long as certified the centre distances of a scan are,
    /// by least squares, with its expanded uncertainty (k = 2). `None` without
    /// a certified distance.
    #[must_use]
    pub fn scale(&self, scan: &ScannedArtefact) -> Option<(f64, f64)> {
        let pairs: Vec<(f64, f64, f64)> = (self.distances.iter())
            .map(|known| {
                let [one, other] = known.between.map(|k| &scan.spheres[k]);
                let (found, doubt) = one.distance_mm(other);
                let doubt = doubt.hypot(known.distance.uncertainty_mm);
                (known.distance.mm, found, doubt)
            })
            .collect();
        let squares: f64 = pairs.iter().map(|p| p.0 * p.0).sum();
        let products: f64 = pairs.iter().map(|p| p.0 * p.1).sum();
        // Certified lengths of one artefact err together: their doubts add up.
        let doubt: f64 = pairs.iter().map(|p| p.0 * p.2).sum();
        (squares > 0.0).then(|| (products / squares, doubt / squares))
    }
}

fn reading(
    quantity: Quantity,
    (found_mm, of_fit_mm): (f64, f64),
    certified: Option<Certified>,
    limit_mm: Option<f64>,
) -> SizeReading {
    let error_mm = found_mm - certified.map_or(0.0, |c| c.mm);
    let uncertainty_mm = of_fit_mm.hypot(certified.map_or(0.0, |c| c.uncertainty_mm));
    SizeReading {
        quantity,
        found_mm,
        certified,
        error_mm,
        uncertainty_mm,
        limit_mm,
        conformity: limit_mm
            .map(|limit| decide(error_mm.abs(), uncertainty_mm, Bound::AtMost(limit))),
    }
}
