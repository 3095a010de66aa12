//! Where the tray of an impression lies: its scan registered on what of it shows
//! on the impression's outer surface.

use super::figures::{COARSEST_EDGE_FOR_COVER_MM, TrayNotPlaced, TrayRegistration};
use super::mismatch::{self, Mismatch};
use crate::anatomy;
use crate::frame;
use crate::impression::{Impression, Surface};
use geometry::registration::{self, NotRegistered, Registered, Target};
use geometry::sampling::{SurfacePoint, spread_over};
use geometry::signed_distance::{Solid, angle_weighted_normals};
use geometry::{Laying, NotLaid};
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Isometry3, Point3, Translation3, Vector3};

/// Points that stand for the impression's outer surface.
const OUTER_POINTS: usize = 12_000;
/// So much of the outer surface must lie on the tray; nothing can be scanned
/// through a tray, so that more than a little behind it means another tray.
const ON_THE_TRAY: Laying = Laying {
    least_fitting: 0.15,
    most_behind: 0.1,
};
/// How far the frames of an impression and of its tray may be apart.
const FRAMES_APART: registration::Scatter = registration::Scatter {
    turn: 0.15,
    step_mm: 4.0,
};

/// A tray scan ready to be placed and measured from: made once for all
/// impressions in that tray.
pub struct PreparedTray {
    surface: Surface,
    target: Target,
    corner_normals: Vec<Vector3<f64>>,
    local_from_tray: Option<Isometry3<f64>>,
}

impl PreparedTray {
    /// A tray scan, mm, in any pose.
    #[must_use]
    pub fn of(mesh: &Mesh) -> Self {
        let surface = Surface::of(mesh);
        let (found, (target, corner_normals)) = rayon::join(
            || frame::find(&surface.mesh),
            || {
                let normals = angle_weighted_normals(&surface.mesh);
                (Target::new(&surface.mesh), normals)
            },
        );
        Self {
            local_from_tray: found.ok().map(|f| f.frame.local_from_scan()),
            target,
            corner_normals,
            surface,
        }
    }

    /// The tray as a solid, in its own coordinates.
    pub(crate) fn solid(&self) -> Solid<'_> {
        Solid::new(
            &self.surface.mesh,
            &self.surface.topology,
            self.target.index(),
            &self.corner_normals,
            anatomy::TRAY_HALF_WALL_MM,
        )
    }
}

/// Where a tray lies in the impression's local coordinates.
pub(crate) struct PlacedTray {
    /// Moves local coordinates into the tray scan's own.
    pub tray_from_local: Isometry3<f64>,
    /// As it leaves, in scan coordinates.
    pub registration: TrayRegistration,
    /// Its surface, local coordinates.
    mesh: Mesh,
    /// Expanded uncertainty (k = 2) of a distance to its rim, mm.
    rim_uncertainty_mm: f64,
}

/// A tray in the impression's local coordinates.
#[derive(Clone, Copy)]
pub(crate) struct LocalTray<'a> {
    scan: &'a PreparedTray,
    placed: &'a PlacedTray,
}

impl<'a> LocalTray<'a> {
    /// A tray where it was placed.
    pub(crate) fn new(scan: &'a PreparedTray, placed: &'a PlacedTray) -> Self {
        Self { scan, placed }
    }

    /// Its surface, in its own coordinates.
    pub(crate) fn index(&self) -> &'a SpatialIndex {
        self.scan.target.index()
    }

    /// Moves local coordinates into its own.
    pub(crate) fn tray_from_local(&self) -> &'a Isometry3<f64> {
        &self.placed.tray_from_local
    }

    /// Its surface, in local coordinates.
    pub(crate) fn mesh(&self) -> &'a Mesh {
        &self.placed.mesh
    }

    /// Expanded uncertainty (k = 2) of a distance to its rim, mm.
    pub(crate) fn rim_uncertainty_mm(&self) -> f64 {
        self.placed.rim_uncertainty_mm
    }
}

/// Registers the tray on the outer surface of the impression: from the frames
/// of both where the tray has one, else from every orientation.
///
/// # Errors
/// When the scan is too coarse or shows no outer surface, or the tray does not
/// fit on it.
pub(crate) fn place(
    impression: &Impression,
    tray: &PreparedTray,
    noise_mm: f64,
) -> Result<PlacedTray, TrayNotPlaced> {
    if impression.edge_mm > COARSEST_EDGE_FOR_COVER_MM {
        return Err(TrayNotPlaced::TooCoarse {
            median_edge_mm: impression.edge_mm,
        });
    }
    let regions = &impression.regions;
    if !regions.has_outer_surface() {
        return Err(TrayNotPlaced::NoOuterSurface);
    }
    let outer = spread_over(&impression.local, OUTER_POINTS, |t| !regions.is_tissue[t]);
    let starts = starts(tray);
    let found = ON_THE_TRAY
        .lay(&outer, &tray.target, &starts)
        .map_err(|why| why_unfit(&outer, tray, &starts, &why))?;
    let registration = TrayRegistration {
        impression_from_tray: (found.target_from_source * impression.frame.local_from_scan())
            .inverse(),
        rms_mm: found.rms_mm,
        uncertainty_mm: pose_uncertainty_mm(&found, impression, tray),
        tray_seen_mm2: found.fitting_share * regions.outer_mm2,
        fitting_share: found.fitting_share,
        behind_share: found.behind_share,
    };
    let edge_mm = tray.surface.integrity.median_edge;
    Ok(PlacedTray {
        tray_from_local: found.target_from_source,
        mesh: tray.surface.mesh.moved(&found.target_from_source.inverse()),
        rim_uncertainty_mm: registration
            .uncertainty_mm
            .hypot(2.0 * noise_mm)
            .hypot(edge_mm.powi(2) / (8.0 * anatomy::TRAY_RIM_RADIUS_MM)),
        registration,
    })
}

/// Poses near that in which the frames of tray and impression agree; none where
/// the tray has no frame.
fn starts(tray: &PreparedTray) -> Vec<Isometry3<f64>> {
    let Some(local_from_tray) = tray.local_from_tray else {
        return Vec::new();
    };
    let tray_from_local =
        local_from_tray.inverse() * Translation3::new(0.0, 0.0, anatomy::USUAL_MATERIAL_MM);
    registration::around(
        &tray_from_local,
        &(tray_from_local * Point3::origin()),
        [
            &(tray_from_local * Vector3::z()),
            &(tray_from_local * Vector3::y()),
        ],
        FRAMES_APART,
    )
}

/// A mirror image lies in the impression's frame as the outer surface does, and
/// is looked for there where the tray has a frame of its own.
fn why_unfit(
    outer: &[SurfacePoint],
    tray: &PreparedTray,
    starts: &[Isometry3<f64>],
    why: &NotLaid,
) -> TrayNotPlaced {
    let fitting_share = why.fitting_share();
    let mismatch = Mismatch {
        outer,
        tray: tray.surface.mesh.vertices(),
        local_from_tray: tray.local_from_tray,
        fitting_share,
        without_cause: match *why {
            NotLaid::NotRegistered(NotRegistered::Ambiguous { spread_mm }) => {
                TrayNotPlaced::Ambiguous { spread_mm }
            }
            _ => TrayNotPlaced::DoesNotFit {
                fitting_percent: 100.0 * fitting_share,
            },
        },
    };
    mismatch::reason(mismatch, |mirrored| {
        if starts.is_empty() {
            ON_THE_TRAY.lay(mirrored, &tray.target, &[]).is_ok()
        } else {
            let found = ON_THE_TRAY.lay_near(mirrored, &tray.target, starts);
            found.is_some()
        }
    })
}

/// Expanded uncertainty (k = 2) of where the pose puts the tray, mm.
fn pose_uncertainty_mm(found: &Registered, impression: &Impression, tray: &PreparedTray) -> f64 {
    let vertices = tray.surface.mesh.vertices();
    let every = (vertices.len() / 500).max(1);
    let ends: Vec<Point3<f64>> = vertices.iter().step_by(every).copied().collect();
    found.uncertainty_mm(&ends).hypot(
        facet_doubt_mm(impression.edge_mm) + facet_doubt_mm(tray.surface.integrity.median_edge),
    )
}

/// How far facets may stray from the curved wall they stand for, mm: the
/// sagitta of an edge on the sharpest bends that make up much of a tray.
fn facet_doubt_mm(edge_mm: f64) -> f64 {
    const BEND_MM: f64 = 8.0;
    edge_mm * edge_mm / (8.0 * BEND_MM)
}
