//! Impressions of edentulous arches in stock trays, made by formula, with
//! their truth beside them, for testing what measures them.
//!
//! ```
//! use phantom::{Arch, Options, Phantom};
//! let made = Phantom::new(&Options { arch: Arch::Mandibular, seed: 7, edge_mm: 1.0, ..Options::default() });
//! let cover = made.truth.cover_at(&made.impression.vertices()[0]);
//! assert!(cover > -0.01);
//! ```

mod arch_curve;
mod border;
mod circle;
mod design;
mod impression;
mod mandible;
mod maxilla;
mod mesher;
mod mouth;
mod options;
mod patches;
mod place;
mod profile;
mod scan;
mod shaping;
mod spots;
mod stations;
mod survey;
mod tray;
mod truth;

pub use mouth::Arch;
pub use options::{Across, Options, Place, PlantedSpot, Pose, Sides, SpotKind};
pub use truth::{Axes, BorderPart, BorderPoint, Landmark, Side, SpotTruth, Truth};

use impression::Impression;
use mesh::Mesh;
use mesher::{Grid, Solid};
use nalgebra::Point3;
use rand::SeedableRng;
use rand_pcg::Pcg64;
use spots::Spot;

/// An impression, the tray it was made in, and what is known about them.
#[derive(Debug, Clone)]
pub struct Phantom {
    /// Scan of the impression in its tray.
    pub impression: Mesh,
    /// Scan of the empty tray, in coordinates of its own.
    pub tray: Mesh,
    /// What is known by formula.
    pub truth: Truth,
}

/// Median edge of a mesh over the step of the grid it was made on.
const EDGE_PER_STEP: f64 = 1.0;

impl Phantom {
    /// Makes a phantom.
    #[must_use]
    pub fn new(options: &Options) -> Self {
        // Each use of chance has its own stream, so that one option does not
        // change what another leaves to chance.
        let stream =
            |number: u64| Pcg64::seed_from_u64(options.seed.wrapping_mul(64).wrapping_add(number));
        let design = match options.arch {
            Arch::Maxillary => maxilla::random(&mut stream(0), options.overflow, options.handle),
            Arch::Mandibular => mandible::random(&mut stream(0), options.overflow, options.handle),
        };
        let mut solid = Impression {
            tray: design.tray,
            mouth: design.mouth,
            spots: Vec::new(),
            overflow_ramp: design.overflow_ramp,
        };
        solid.spots = options
            .spots
            .iter()
            .map(|wanted| planted(&solid, wanted))
            .collect();
        let pose = scan::motion(options.pose, &mut stream(1));
        let tray_pose = scan::motion(options.tray_pose, &mut stream(2));
        let made = meshed(&solid, &solid, options.edge_mm, 0.0);
        let tray = meshed(&solid.tray, &solid, options.tray_edge_mm, 0.37);
        let truth = Truth::of(solid, &design.marks, options.seed, &pose, &tray_pose);
        Self {
            impression: scan::roughened(made.moved(&pose), options.noise_sd_mm, &mut stream(3)),
            tray: scan::roughened(tray.moved(&tray_pose), options.noise_sd_mm, &mut stream(4)),
            truth,
        }
    }
}

/// Growth of cover around a spot for each mm: gentle on the level parts,
/// steep on the slopes, which leave less room.
const RAMPS: [f64; 2] = [0.5, 1.1];

fn planted(solid: &Impression, wanted: &PlantedSpot) -> Spot {
    let (foot, axis) = solid.foot(wanted.place);
    let level = match wanted.place {
        Place::Palate { .. } => true,
        Place::Arch { across, .. } => across == Across::Crest,
    };
    Spot::of_kind(wanted.kind, foot, axis, RAMPS[usize::from(!level)])
}

/// The mesh of a solid that lies within an impression's box. `shift` moves the
/// grid by a share of its step.
fn meshed<S: Solid>(solid: &S, within: &Impression, edge_mm: f64, shift: f64) -> Mesh {
    let step = edge_mm / EDGE_PER_STEP;
    let (low, high) = within.bounds();
    let low = Point3::from(low.coords.add_scalar(-(2.0 + shift) * step));
    let high = Point3::from(high.coords.add_scalar(2.0 * step));
    let (vertices, triangles) = mesher::surface(solid, &Grid::covering(low, high, step));
    scan::rebuilt(vertices, triangles, None)
}
