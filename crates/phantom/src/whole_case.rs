//! A whole case by formula: both jaws with first pass, wash and tray, and the
//! record of the relation of the jaws.

use crate::{Options, Phantom, Pose, Truth};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};

/// The scans of one jaw, each in coordinates of its own.
#[derive(Debug, Clone)]
pub struct JawScans {
    /// First pass and tray, with their truth.
    pub first_pass: Phantom,
    /// The wash over it.
    pub wash: Mesh,
}

/// The scans of both jaws and of the record.
#[derive(Debug, Clone)]
pub struct WholeCase {
    /// Of the upper jaw.
    pub upper: JawScans,
    /// Of the lower jaw.
    pub lower: JawScans,
    /// Both washes back to back, as they show with the registration material
    /// between the trays.
    pub record: Mesh,
}

/// Thickness (mm) of a wash at a point of the tissue surface, both it and the
/// truth as made, with the seating axis along z.
pub type WashThickness = dyn Fn(&Point3<f64>, &Truth) -> f64 + Sync;

/// The surface of the first pass again, triangulated anew, raised on the tissue
/// side; as made.
#[must_use]
pub fn washed(options: &Options, thickness_mm: &WashThickness) -> Mesh {
    // Other triangles than the first pass has, as a second scan would.
    const COARSER: f64 = 1.07;
    let made = Phantom::new(&Options {
        edge_mm: options.edge_mm * COARSER,
        pose: Pose::AsMade,
        ..options.clone()
    });
    let mesh = &made.impression;
    let raised = (mesh.vertices().iter().zip(mesh.vertex_normals()))
        .map(|(p, normal)| {
            if made.truth.is_tissue_side(p) {
                p + normal * thickness_mm(p, &made.truth)
            } else {
                *p
            }
        })
        .collect();
    Mesh::new(raised, mesh.triangles().to_vec(), None).unwrap_or_default()
}

impl WholeCase {
    /// Both jaws made by their options, each with its wash; `lower_in_place`
    /// puts the lower jaw as made (turned over, its tissue surface down) below
    /// the upper one as made.
    #[must_use]
    pub fn new(
        [upper, lower]: [&Options; 2],
        [upper_wash_mm, lower_wash_mm]: [&WashThickness; 2],
        lower_in_place: &Isometry3<f64>,
    ) -> Self {
        let jaw = |options: &Options, thickness_mm: &WashThickness| {
            rayon::join(|| Phantom::new(options), || washed(options, thickness_mm))
        };
        let ((upper_first, upper_wash), (lower_first, lower_wash)) =
            rayon::join(|| jaw(upper, upper_wash_mm), || jaw(lower, lower_wash_mm));
        let record = back_to_back(&upper_wash, &lower_wash.moved(lower_in_place));
        // Scanners have coordinates of their own.
        let elsewhere = |mesh: &Mesh, turn: [f64; 3]| {
            let turn = Vector3::from(turn);
            mesh.moved(&Isometry3::new(turn * 12.0, turn))
        };
        Self {
            upper: JawScans {
                first_pass: upper_first,
                wash: elsewhere(&upper_wash, [0.4, -0.9, 1.7]),
            },
            lower: JawScans {
                first_pass: lower_first,
                wash: elsewhere(&lower_wash, [-1.1, 0.3, 0.6]),
            },
            record: elsewhere(&record, [0.5, -0.8, 1.3]),
        }
    }
}

/// What a scanner sees of two impressions held together: what faces the other
/// jaw's tray squarely is hidden.
fn back_to_back(upper: &Mesh, lower: &Mesh) -> Mesh {
    const HIDDEN: f64 = -0.5;
    let first = upper.vertices().len() as u32;
    let below = lower.triangles().iter().map(|t| t.map(|v| v + first));
    let both = Mesh::new(
        [upper.vertices(), lower.vertices()].concat(),
        upper.triangles().iter().copied().chain(below).collect(),
        None,
    )
    .unwrap_or_default();
    both.filtered(|t| {
        let tissue = if both.triangles()[t][0] < first {
            Vector3::z()
        } else {
            -Vector3::z()
        };
        let normal = both.area_vector(t).try_normalize(0.0);
        normal.is_some_and(|normal| normal.dot(&tissue) > HIDDEN)
    })
}
