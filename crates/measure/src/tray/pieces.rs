//! A tray in pieces that are joined before use: each piece placed by what shows of it on the
//! impression, and how far the pieces were joined.

use super::figures::PiecesNotPlaced;
use super::parts::{RIVAL, outside};
use super::placing::facet_doubt_mm;
use crate::frame;
use crate::impression::{Impression, Surface};
use geometry::joining::joint;
use geometry::registration::{self, Registered, Target};
use geometry::sampling::{SurfacePoint, centre_of, spread_over};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3};
use rayon::prelude::*;

/// Points that stand for the impression's outer surface.
const POINTS: usize = 12_000;
/// So much of the outer surface must lie on a piece. Own choice, no source.
const LEAST_ON_PIECE: f64 = 0.06;

/// The pieces of a tray as they lay in an impression.
#[derive(Debug, Clone)]
pub struct AssembledTray {
    /// All pieces, in the coordinates of the first one's scan.
    pub mesh: Mesh,
    /// Where pieces meet.
    pub joints: Vec<TrayJoint>,
}

/// Where two pieces of a tray meet.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayJoint {
    /// Numbers of the pieces, from 1.
    pub pieces: [usize; 2],
    /// Distance between their faces, mm.
    pub gap_mm: f64,
    /// Step of the tray's surface over the joint, mm.
    pub step_mm: f64,
    /// Expanded uncertainty (k = 2) of both, mm.
    pub uncertainty_mm: f64,
}

impl AssembledTray {
    /// Places the pieces on what shows of them on an impression. All meshes are in mm, each
    /// in any pose. What the scanner itself may add to a length is an expanded uncertainty
    /// (k = 2), mm.
    ///
    /// # Errors
    /// When the scan shows no impression or too little of its outside, or a piece is not
    /// found there.
    pub fn on(
        impression: &Mesh,
        pieces: &[&Mesh],
        scanner_uncertainty_mm: f64,
    ) -> Result<Self, PiecesNotPlaced> {
        let surface = Surface::of(impression);
        let found = frame::find(&surface.mesh).map_err(|_| PiecesNotPlaced::NoImpression)?;
        let impression = Impression::of(&surface, found);
        if !impression.regions.has_outer_surface() {
            return Err(PiecesNotPlaced::NoOuterSurface);
        }
        let is_tissue = &impression.regions.is_tissue;
        let outer = spread_over(&impression.local, POINTS, |t| !is_tissue[t]);
        let placed: Vec<Placed> = (pieces.par_iter().enumerate())
            .map(|(number, piece)| Placed::on(&outer, impression.edge_mm, piece, number + 1))
            .collect::<Result<_, _>>()?;
        let first_from_local = placed
            .first()
            .map_or_else(Isometry3::identity, |first| first.pose);
        let meshes: Vec<Mesh> = (placed.iter())
            .map(|piece| piece.mesh.moved(&(first_from_local * piece.pose.inverse())))
            .collect();
        let pairs =
            (0..meshes.len()).flat_map(|one| (one + 1..meshes.len()).map(move |b| [one, b]));
        let joints = pairs.filter_map(|pair| {
            let found = joint(&pair.map(|piece| meshes[piece].clone()))?;
            let [one, other] = pair.map(|piece| placed[piece].doubt_mm);
            Some(TrayJoint {
                pieces: pair.map(|piece| piece + 1),
                gap_mm: found.gap_mm,
                step_mm: found.step_mm,
                // The pieces are a scan each, and the impression is the third.
                uncertainty_mm: one.hypot(other).hypot(3f64.sqrt() * scanner_uncertainty_mm),
            })
        });
        Ok(Self {
            joints: joints.collect(),
            mesh: together(&meshes),
        })
    }
}

/// A piece on the outside of an impression.
struct Placed {
    mesh: Mesh,
    /// From the impression's local coordinates to those of the piece.
    pose: Isometry3<f64>,
    /// Expanded uncertainty (k = 2) of where it lies, mm.
    doubt_mm: f64,
}

impl Placed {
    fn on(
        outer: &[SurfacePoint],
        edge_mm: f64,
        piece: &Mesh,
        number: usize,
    ) -> Result<Self, PiecesNotPlaced> {
        let surface = Surface::of(piece);
        let found = registration::candidates(outer, &Target::new(&outside(&surface.mesh)));
        let best = (found.first())
            .filter(|best| best.fitting_share >= LEAST_ON_PIECE)
            .ok_or(PiecesNotPlaced::NotFound { piece: number })?;
        if let Some(rival) = found.get(1)
            && rival.agreement() > RIVAL * best.agreement()
        {
            let middle = centre_of(outer);
            let apart = best.target_from_source * middle - rival.target_from_source * middle;
            return Err(PiecesNotPlaced::Ambiguous {
                piece: number,
                spread_mm: apart.norm(),
            });
        }
        Ok(Self {
            doubt_mm: doubt_mm(best, &surface, edge_mm),
            pose: best.target_from_source,
            mesh: surface.mesh,
        })
    }
}

/// Expanded uncertainty (k = 2) of where a piece lies, mm.
fn doubt_mm(found: &Registered, piece: &Surface, edge_mm: f64) -> f64 {
    let vertices = piece.mesh.vertices();
    let every = (vertices.len() / 500).max(1);
    let ends: Vec<Point3<f64>> = vertices.iter().step_by(every).copied().collect();
    let facets_mm = facet_doubt_mm(edge_mm) + facet_doubt_mm(piece.integrity.median_edge);
    found.uncertainty_mm(&ends).hypot(2.0 * facets_mm)
}

fn together(meshes: &[Mesh]) -> Mesh {
    let mut vertices: Vec<Point3<f64>> = Vec::new();
    let mut triangles = Vec::new();
    for mesh in meshes {
        let first = vertices.len() as u32;
        triangles.extend(
            mesh.triangles()
                .iter()
                .map(|corners| corners.map(|v| v + first)),
        );
        vertices.extend(mesh.vertices());
    }
    // Every index is one of a piece, moved by the vertices before it.
    Mesh::new(vertices, triangles, None).unwrap_or_default()
}
