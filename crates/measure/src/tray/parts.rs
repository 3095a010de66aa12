//! An impression that was cut apart with its tray: each part laid on the scan of the whole
//! tray, which is the frame of all, and the parts joined.

use super::placing::{PreparedTray, facet_doubt_mm};
use crate::cut::Cut;
use crate::frame;
use crate::impression::{Impression, Surface};
use crate::parts_not_joined::PartsNotJoined;
use geometry::joining;
use geometry::registration::{self, Target};
use geometry::sampling::{centre_of, spread_over};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3};
use rayon::prelude::*;
use std::sync::Arc;

/// Points that stand for a part.
const POINTS: usize = 12_000;
/// So much of a part's surface must be tray that shows. Own choice, no source.
const LEAST_ON_TRAY: f64 = 0.1;
/// A pose elsewhere in which so much less of it lies on the tray is no rival.
pub(super) const RIVAL: f64 = 0.9;
/// Where the surface leaves itself by more than this at the cut, mm, the parts are not of
/// one impression. Own choice, no source.
const GREATEST_STEP_MM: f64 = 0.5;

/// Parts of an impression, joined.
#[derive(Debug, Clone)]
pub struct JoinedParts {
    /// The impression, in the coordinates of the tray's scan.
    pub mesh: Mesh,
    /// The strips over the cuts, in the same coordinates: nothing was scanned there.
    pub strip: Arc<Mesh>,
    /// Median width of the cuts, mm.
    pub width_mm: f64,
    /// Where each part lies.
    pub parts: Vec<LaidPart>,
}

/// A part laid on the tray.
#[derive(Debug, Clone, PartialEq)]
pub struct LaidPart {
    /// `tray_from_part * point` lies in the tray's scan.
    pub tray_from_part: Isometry3<f64>,
    /// Root mean square distance of what lies on the tray, mm.
    pub rms_mm: f64,
    /// Share of the part's surface that lies on the tray, 0 to 1.
    pub fitting_share: f64,
    /// Expanded uncertainty (k = 2) of where the part lies, mm.
    pub uncertainty_mm: f64,
}

impl JoinedParts {
    /// Lays each part on the scan of the whole tray and joins them. All meshes are in mm, in
    /// any pose.
    ///
    /// # Errors
    /// When a part does not lie on the tray, or the parts do not meet.
    pub fn of(parts: &[&Mesh], tray: &PreparedTray) -> Result<Self, PartsNotJoined> {
        let outside = Target::new(&outside(tray.mesh()));
        let tray_doubt_mm = facet_doubt_mm(tray.median_edge_mm());
        let laid: Vec<(Mesh, LaidPart)> = (parts.par_iter().enumerate())
            .map(|(number, part)| laid(part, (&outside, tray_doubt_mm), number + 1))
            .collect::<Result<_, _>>()?;
        let (meshes, parts): (Vec<Mesh>, Vec<LaidPart>) = laid.into_iter().unzip();
        let joined = joining::joined(&meshes)?;
        if joined.step_mm > GREATEST_STEP_MM {
            return Err(PartsNotJoined::Step {
                step_mm: joined.step_mm,
            });
        }
        Ok(Self {
            mesh: joined.mesh,
            strip: Arc::new(joined.strip),
            width_mm: joined.width_mm,
            parts,
        })
    }

    /// Where they were cut.
    #[must_use]
    pub fn cut(&self) -> Cut {
        Cut {
            strip: Arc::clone(&self.strip),
            width_mm: self.width_mm,
        }
    }

    /// Expanded uncertainty (k = 2) of where a part lies, mm: the greatest of all.
    #[must_use]
    pub fn uncertainty_mm(&self) -> f64 {
        (self.parts.iter()).fold(0.0, |most, part| most.max(part.uncertainty_mm))
    }
}

/// The tray's scan without its inside, which no part shows: tissue surface, which runs
/// alongside, would be taken for it.
pub(super) fn outside(tray: &Mesh) -> Mesh {
    match frame::find(tray) {
        Ok(found) => {
            let regions = Impression::of(&Surface::of(tray), found).regions;
            tray.filtered(|t| !regions.is_tissue[t])
        }
        Err(_) => tray.clone(),
    }
}

fn laid(
    part: &Mesh,
    (tray, tray_doubt_mm): (&Target, f64),
    number: usize,
) -> Result<(Mesh, LaidPart), PartsNotJoined> {
    let surface = Surface::of(part);
    let points = spread_over(&surface.mesh, POINTS, |_| true);
    let found = registration::candidates(&points, tray);
    let Some(best) = found
        .first()
        .filter(|best| best.fitting_share >= LEAST_ON_TRAY)
    else {
        return Err(PartsNotJoined::OffTheTray {
            part: number,
            fitting_percent: 0.0,
        });
    };
    // Nearly as close elsewhere: the part may lie there as well.
    if let Some(rival) = found
        .get(1)
        .filter(|rival| rival.agreement() > RIVAL * best.agreement())
    {
        let middle = centre_of(&points);
        return Err(PartsNotJoined::Ambiguous {
            part: number,
            spread_mm: (best.target_from_source * middle - rival.target_from_source * middle)
                .norm(),
        });
    }
    let pose = best.target_from_source;
    let facets_mm = facet_doubt_mm(surface.integrity.median_edge) + tray_doubt_mm;
    let ends: Vec<Point3<f64>> = points.iter().step_by(20).map(|s| pose * s.point).collect();
    let laid = LaidPart {
        tray_from_part: pose,
        rms_mm: best.rms_mm,
        fitting_share: best.fitting_share,
        // What facets put off over the tray that shows grows toward the rest of the part.
        uncertainty_mm: best
            .uncertainty_mm(&ends)
            .hypot(facets_mm / best.fitting_share),
    };
    Ok((surface.mesh.moved(&pose), laid))
}
