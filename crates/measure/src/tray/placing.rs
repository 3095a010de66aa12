//! Where the tray of an impression lies: its scan registered on what of it shows
//! on the impression's outer surface.

use super::figures::{COARSEST_EDGE_FOR_COVER_MM, TrayNotPlaced, TrayRegistration};
use super::limb_bends::limb_bends;
use super::mismatch::{self, Mismatch};
use crate::anatomy;
use crate::bend::{BentPose, FROM_FAR_MM, FROM_NEAR_MM, Limbs, fitted};
use crate::frame;
use crate::impression::{Impression, Surface};
use crate::intake::main_parts;
use geometry::registration::{self, NotRegistered, Registered, Target};
use geometry::sampling::{SurfacePoint, spread_over};
use geometry::signed_distance::{Beside, Solid, angle_weighted_normals};
use geometry::{NotLaid, Refined, lay_refined};
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Isometry3, Point3, Translation3, Unit, UnitVector3, Vector3};
use std::collections::BTreeSet;
use std::f64::consts::SQRT_2;
use std::sync::OnceLock;

/// Points that stand for the impression's outer surface.
const OUTER_POINTS: usize = 12_000;
/// So much of the outer surface must lie on the tray.
const LEAST_FITTING: f64 = 0.15;
/// Nothing can be scanned through a tray: more than this behind it, as a part of
/// what fits, means another tray.
const MOST_BEHIND: f64 = 0.1;
/// More than this behind it, and the tray may have slid along itself: where it lies
/// is looked for elsewhere, too.
const DOUBTED_BEHIND: f64 = 0.02;
/// A bend must fit at least this part of what the rigid pose fits.
const MOST_LOST: f64 = 0.9;
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
    /// Of a tray in pieces, the surface of each; empty of a tray in one.
    pieces: OnceLock<Vec<SpatialIndex>>,
}

impl PreparedTray {
    /// A tray scan, mm, in any pose.
    #[must_use]
    pub fn of(mesh: &Mesh) -> Self {
        Self::watched(mesh, &|| {})
    }

    /// As [`PreparedTray::of`]; `look` is called between its parts.
    pub(crate) fn watched(mesh: &Mesh, look: &(dyn Fn() + Sync)) -> Self {
        let surface = Surface::watched(mesh, look);
        let (found, (target, corner_normals)) = rayon::join(
            || frame::find(&surface.mesh),
            || {
                let normals = angle_weighted_normals(&surface.mesh);
                look();
                (Target::new(&surface.mesh), normals)
            },
        );
        look();
        Self {
            local_from_tray: found.ok().map(|f| f.frame.local_from_scan()),
            target,
            corner_normals,
            surface,
            pieces: OnceLock::new(),
        }
    }

    /// Whether two pieces of the tray meet beside a place of its surface: another begins within
    /// a distance to one side of it, not behind its wall.
    pub(crate) fn is_at_joint(&self, beside: &Beside, within_mm: f64) -> bool {
        /// Sine of the angle to the surface up to which a piece lies to one side.
        const TO_ONE_SIDE: f64 = 0.5;
        /// So near, mm, the way to a piece says nothing: the place lies on it.
        const COINCIDE_MM: f64 = 0.1;
        let is_beside = |piece: &&SpatialIndex| {
            let nearest = piece.nearest(&beside.place, within_mm);
            nearest.is_some_and(|nearest| {
                let off = nearest.point - beside.place;
                let (off_mm, behind_mm) = (off.norm(), beside.away.dot(&off).abs());
                off_mm <= COINCIDE_MM || behind_mm <= TO_ONE_SIDE * off_mm
            })
        };
        self.pieces().iter().filter(is_beside).count() > 1
    }

    fn pieces(&self) -> &[SpatialIndex] {
        self.pieces.get_or_init(|| {
            let Surface { mesh, topology, .. } = &self.surface;
            let is_main = main_parts(&self.surface);
            let of = topology.component_of_triangle();
            let main: BTreeSet<u32> = (of.iter().zip(is_main))
                .filter_map(|(&piece, is_main)| is_main.then_some(piece))
                .collect();
            if main.len() < 2 {
                return Vec::new();
            }
            (main.iter())
                .map(|piece| SpatialIndex::new(&mesh.filtered(|t| of[t] == *piece)))
                .collect()
        })
    }

    /// How far the facets of the tray's scan may stray from the edge that they
    /// stand for, mm, where a place is nearest to such: the sagitta of a triangle's
    /// side on an edge that is rounded over twice the angle seen there.
    pub(crate) fn edge_doubt_mm(&self, beside: &Beside) -> f64 {
        self.surface.integrity.median_edge * beside.off_normal / 4.0
    }

    /// Median edge of its scan, mm.
    pub(super) fn median_edge_mm(&self) -> f64 {
        self.surface.integrity.median_edge
    }

    /// Its surface, in its own coordinates.
    pub(super) fn mesh(&self) -> &Mesh {
        &self.surface.mesh
    }

    /// What another surface is laid on.
    pub(super) fn target(&self) -> &Target {
        &self.target
    }

    /// From its own coordinates to those of the frame that it shows; `None` where it
    /// shows none.
    pub(super) fn local_from_scan(&self) -> Option<Isometry3<f64>> {
        self.local_from_tray
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
    /// Where and as it lay.
    pose: BentPose,
    /// As it leaves, in scan coordinates.
    pub registration: TrayRegistration,
    /// Its surface, local coordinates.
    mesh: Mesh,
    /// Expanded uncertainty (k = 2) of a distance to its rim, but for the bend and for
    /// the other end's own, mm.
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

    /// A place of the impression, local coordinates, beside the tray as it was
    /// scanned, in the scan's own coordinates.
    pub(crate) fn in_tray_scan(&self, place: &Point3<f64>) -> Point3<f64> {
        self.placed.in_tray_scan(place)
    }

    /// A place of the tray's scan where it lay, local coordinates.
    pub(crate) fn out_of_tray(&self, place: &Point3<f64>) -> Point3<f64> {
        self.placed.out_of_tray(place)
    }

    /// How places (tray scan coordinates) lie beside it.
    pub(crate) fn beside(&self, places: &[Point3<f64>]) -> Vec<Option<Beside>> {
        self.scan.solid().beside(places)
    }

    /// Normal of a triangle of the tray's scan; `None` of one without area.
    pub(crate) fn scan_normal(&self, triangle: u32) -> Option<Vector3<f64>> {
        let mesh = &self.scan.surface.mesh;
        mesh.area_vector(triangle as usize).try_normalize(0.0)
    }

    /// Its surface as it lay, in local coordinates.
    pub(crate) fn mesh(&self) -> &'a Mesh {
        &self.placed.mesh
    }

    /// Expanded uncertainty (k = 2) of the distance of a place (local
    /// coordinates) to its rim, mm.
    pub(crate) fn rim_uncertainty_mm(&self, place: &Point3<f64>, rim: &Point3<f64>) -> f64 {
        let bend = Unit::try_new(self.in_tray_scan(place) - rim, 0.0)
            .map_or(0.0, |away| self.placed.bend_uncertainty_mm(place, &away));
        self.placed.rim_uncertainty_mm.hypot(bend)
    }
}

impl PlacedTray {
    /// A place of the impression, local coordinates, beside the tray as it was
    /// scanned, in the scan's own coordinates.
    pub(crate) fn in_tray_scan(&self, place: &Point3<f64>) -> Point3<f64> {
        self.pose.in_tray_scan(place)
    }

    /// A place of the tray's scan where it lay, local coordinates.
    pub(crate) fn out_of_tray(&self, place: &Point3<f64>) -> Point3<f64> {
        self.pose.out_of_tray(place)
    }

    /// Whether a place of the tray as it lay, local coordinates, is where its scan
    /// ends at the back.
    pub(crate) fn is_at_the_back(&self, place: &Point3<f64>) -> bool {
        const WITHIN_MM: f64 = 3.0;
        place.y < self.pose.back_y(place.x) + WITHIN_MM
    }

    /// Places of the outer surface behind the tray, local coordinates, mm:
    /// neither the tray nor material over it can be there.
    pub(crate) fn unexplained(&self) -> &[Point3<f64>] {
        &self.pose.behind
    }

    /// Expanded uncertainty (k = 2) of where the tray lay near a place (local
    /// coordinates) along a direction (tray coordinates), mm: what of its bend
    /// does not show.
    pub(crate) fn bend_uncertainty_mm(
        &self,
        place: &Point3<f64>,
        direction: &UnitVector3<f64>,
    ) -> f64 {
        2.0 * self.pose.sd_along(place, direction)
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
    scanner_uncertainty_mm: f64,
    look: &(dyn Fn() + Sync),
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
    let refined = |found: &Registered| {
        look();
        bent_from(impression, &outer, tray, found)
    };
    let laid = lay_refined(&outer, &tray.target, &starts, refined, look);
    let (found, pose) = laid
        .map_err(|why| why_unfit(&outer, tray, &starts, &why, look))
        .map_err(|why| match why {
            // A part of the outer surface may lie elsewhere on the right tray, too.
            TrayNotPlaced::DoesNotFit { .. } if !regions.may_be_seen_from_all_sides() => {
                TrayNotPlaced::LittleOuterSurface {
                    outer_cm2: regions.outer_mm2 / 100.0,
                    tissue_cm2: regions.tissue_mm2 / 100.0,
                }
            }
            why => why,
        })?;
    let uncertainty_mm = rigid_uncertainty_mm(&found, impression, tray);
    let registration = TrayRegistration {
        impression_from_tray: (found.target_from_source * impression.frame.local_from_scan())
            .inverse(),
        rms_mm: pose.rms_mm,
        uncertainty_mm,
        tray_seen_mm2: pose.fitting_share * regions.outer_mm2,
        fitting_share: pose.fitting_share,
        behind_share: pose.behind.len() as f64 / outer.len().max(1) as f64,
        limbs: limb_bends(
            &pose,
            &impression.frame,
            |p| impression.zones.zone(p),
            SQRT_2 * scanner_uncertainty_mm,
        ),
    };
    let edge_mm = tray.surface.integrity.median_edge;
    Ok(PlacedTray {
        mesh: tray.surface.mesh.mapped(|p| pose.out_of_tray(p)),
        pose,
        rim_uncertainty_mm: uncertainty_mm
            .hypot(2.0 * noise_mm)
            .hypot(scanner_uncertainty_mm)
            .hypot(edge_mm.powi(2) / (8.0 * anatomy::TRAY_RIM_RADIUS_MM)),
        registration,
    })
}

/// Poses near that in which the frames of tray and impression agree; none where
/// the tray has no frame.
pub(super) fn starts(tray: &PreparedTray) -> Vec<Isometry3<f64>> {
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

/// As the tray lay where a rigid pose fits, its bend allowed for.
pub(super) fn bent_from(
    impression: &Impression,
    outer: &[SurfacePoint],
    tray: &PreparedTray,
    found: &Registered,
) -> Option<Refined<(Registered, BentPose)>> {
    let local_from_tray = found.target_from_source.inverse();
    let vertices = tray.surface.mesh.vertices().iter();
    let limbs = Limbs::under(
        impression.zones.crest().points(),
        vertices.map(|p| local_from_tray * p),
    );
    bent(outer, tray, found, limbs)
}

/// The bend by which a rigid pose fits, if the tray then lies as it can.
fn bent(
    outer: &[SurfacePoint],
    tray: &PreparedTray,
    rigid: &Registered,
    limbs: Limbs,
) -> Option<Refined<(Registered, BentPose)>> {
    if rigid.fitting_share < LEAST_FITTING {
        return None;
    }
    let behind_share = |pose: &BentPose| pose.behind.len() as f64 / outer.len().max(1) as f64;
    let lies_as_it_can = |pose: &BentPose| {
        // A bend that fits less than none does was drawn aside by material.
        pose.fitting_share >= LEAST_FITTING.max(MOST_LOST * rigid.fitting_share)
            && behind_share(pose) <= MOST_BEHIND * pose.fitting_share
    };
    let pose = [&FROM_FAR_MM[..], &FROM_NEAR_MM[..]]
        .into_iter()
        .filter_map(|widths_mm| {
            let rigid = &rigid.target_from_source;
            fitted(outer, &tray.target, rigid, limbs, widths_mm)
        })
        .find(lies_as_it_can)?;
    Some(Refined {
        fitting_share: pose.fitting_share,
        is_doubted: behind_share(&pose) > DOUBTED_BEHIND * pose.fitting_share,
        pose: (rigid.clone(), pose),
    })
}

fn why_unfit(
    outer: &[SurfacePoint],
    tray: &PreparedTray,
    starts: &[Isometry3<f64>],
    why: &NotLaid,
    look: &(dyn Fn() + Sync),
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
        let found = if starts.is_empty() {
            registration::register_anywhere(mirrored, &tray.target, look)
        } else {
            registration::register(mirrored, &tray.target, starts, look)
        };
        let is_beyond_doubt =
            |found: &Registered| found.behind_share <= DOUBTED_BEHIND * found.fitting_share;
        (found.ok().filter(is_beyond_doubt)).map_or(0.0, |found| found.fitting_share)
    })
}

/// Expanded uncertainty (k = 2) of where a rigid pose puts the tray, mm.
fn rigid_uncertainty_mm(found: &Registered, impression: &Impression, tray: &PreparedTray) -> f64 {
    let vertices = tray.surface.mesh.vertices();
    let every = (vertices.len() / 500).max(1);
    let ends: Vec<Point3<f64>> = vertices.iter().step_by(every).copied().collect();
    found.uncertainty_mm(&ends).hypot(
        facet_doubt_mm(impression.edge_mm) + facet_doubt_mm(tray.surface.integrity.median_edge),
    )
}

/// How far facets may stray from the curved wall they stand for, mm: the
/// sagitta of an edge on the sharpest bends that make up much of a tray.
pub(super) fn facet_doubt_mm(edge_mm: f64) -> f64 {
    const BEND_MM: f64 = 8.0;
    edge_mm * edge_mm / (8.0 * BEND_MM)
}
