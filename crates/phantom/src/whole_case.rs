//! A whole case by formula: both jaws with first pass, wash and tray, and the
//! record of the relation of the jaws.

use crate::{HalfSpace, Options, Phantom, Pose, Truth, part};
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

/// The scans of a case whose impressions were taken apart for the jaw relation, each in
/// coordinates of its own.
#[derive(Debug, Clone)]
pub struct CaseInPieces {
    /// Front and back part of the upper wash, which was cut apart with its tray.
    pub upper_parts: [Mesh; 2],
    /// The whole upper tray.
    pub upper_tray: Mesh,
    /// The lower wash, scanned whole.
    pub lower_wash: Mesh,
    /// Front and back piece of the lower tray.
    pub lower_pieces: [Mesh; 2],
    /// The front parts of both washes back to back.
    pub record: Mesh,
}

/// Thickness (mm) of a wash at a point of the tissue surface, both it and the
/// truth as made, with the seating axis along z.
pub type WashThickness = dyn Fn(&Point3<f64>, &Truth) -> f64 + Sync;

/// The surface of the first pass again, triangulated anew, raised on the tissue
/// side; as made.
#[must_use]
pub fn washed(options: &Options, thickness_mm: &WashThickness) -> Mesh {
    with_wash(options, thickness_mm).impression
}

fn with_wash(options: &Options, thickness_mm: &WashThickness) -> Phantom {
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
    Phantom {
        impression: Mesh::new(raised, mesh.triangles().to_vec(), None).unwrap_or_default(),
        ..made
    }
}

/// Scanners have coordinates of their own.
fn elsewhere(mesh: &Mesh, turn: [f64; 3]) -> Mesh {
    let turn = Vector3::from(turn);
    mesh.moved(&Isometry3::new(turn * 12.0, turn))
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

impl CaseInPieces {
    /// Both washes made by their options and taken apart behind the front half of the crest
    /// line: the upper one cut, the lower one at the joint of its tray. `lower_in_place` is
    /// that of [`WholeCase::new`].
    #[must_use]
    pub fn new(
        [upper, lower]: [&Options; 2],
        [upper_wash_mm, lower_wash_mm]: [&WashThickness; 2],
        lower_in_place: &Isometry3<f64>,
    ) -> Self {
        let (upper, lower) = rayon::join(
            || with_wash(upper, upper_wash_mm),
            || with_wash(lower, lower_wash_mm),
        );
        let [upper_front, upper_back] = apart(&upper.impression, behind_front(&upper), SAW_MM);
        let joint_y = behind_front(&lower);
        let [lower_front, _] = apart(&lower.impression, joint_y, 0.0);
        // The washes are as made.
        let tray = lower.tray.moved(&lower.truth.impression_from_tray);
        let [tray_front, tray_back] = apart(&tray, joint_y, 0.0);
        let record = back_to_back(&upper_front, &lower_front.moved(lower_in_place));
        Self {
            upper_parts: [
                elsewhere(&upper_front, [0.4, -0.9, 1.7]),
                elsewhere(&upper_back, [-0.7, 1.2, 0.2]),
            ],
            upper_tray: upper.tray,
            lower_wash: elsewhere(&lower.impression, [-1.1, 0.3, 0.6]),
            lower_pieces: [
                elsewhere(&tray_front, [0.9, 0.1, -1.4]),
                elsewhere(&tray_back, [0.2, -1.5, 0.8]),
            ],
            record: elsewhere(&record, [0.5, -0.8, 1.3]),
        }
    }
}

/// Width of the saw that cuts an impression apart, mm.
const SAW_MM: f64 = 0.8;

/// Where the front half of the crest line of a jaw (as made) ends, along y, mm.
fn behind_front(made: &Phantom) -> f64 {
    let crest = &made.truth.crest_line;
    crest.get(crest.len() / 4).map_or(0.0, |place| place.y)
}

/// What is in front of `y` and what is behind it by more than `lost_mm`.
fn apart(mesh: &Mesh, y: f64, lost_mm: f64) -> [Mesh; 2] {
    [HalfSpace::above(1, y), HalfSpace::below(1, y - lost_mm)].map(|half| part(mesh, &[half]))
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
