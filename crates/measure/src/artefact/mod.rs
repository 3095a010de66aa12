//! A reference artefact of spheres and steps, found again in a scan of it.
//!
//! Each sphere is looked for by its size alone ([`candidates`]); which of those
//! found is which follows from the rigid motion that lays the nominal centres
//! on them ([`placing`]). Sizes are then those of the least-squares spheres
//! through the scanned points, and of steps where the spheres put them ([`steps`]). Scale is never fitted: a scan of a wrong scale
//! shows it in every distance.

mod candidates;
mod figures;
mod placing;
mod steps;

pub use figures::{ArtefactNotFound, NominalSphere, SCALE_PLAY, ScannedArtefact, ScannedSphere};
pub use steps::{NominalStep, ScannedStep, StepNotFound};

use geometry::winding;
use mesh::{Mesh, Topology};

/// Finds the spheres of an artefact in a scan (mm) in any pose.
///
/// # Errors
/// When they are not all there, or stand otherwise.
pub fn find(scan: &Mesh, nominal: &[NominalSphere]) -> Result<ScannedArtefact, ArtefactNotFound> {
    let topology = Topology::of(scan);
    let (scan, _) = winding::righted(scan, &topology);
    let radii: Vec<f64> = nominal.iter().map(|n| n.radius_mm).collect();
    let found = candidates::all(&scan, &radii);
    if found.len() < nominal.len() {
        return Err(ArtefactNotFound::TooFew {
            wanted: nominal.len(),
            seen: found.len(),
        });
    }
    let seen = found.len();
    let placed =
        placing::best(nominal, &found).ok_or(ArtefactNotFound::StandsOtherwise { seen })?;
    let spheres: Option<Vec<ScannedSphere>> = placed
        .chosen
        .iter()
        .map(|&number| ScannedSphere::of(&found[number]))
        .collect();
    Ok(ScannedArtefact {
        from_nominal: placed.motion,
        spheres: spheres.ok_or(ArtefactNotFound::StandsOtherwise { seen })?,
        rms_mm: placed.rms_mm,
        is_ambiguous: placed.is_ambiguous,
    })
}
