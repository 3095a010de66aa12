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
mod design;
mod impression;
mod mandible;
mod maxilla;
mod mesher;
mod mouth;
mod options;
mod profile;
mod scan;
mod shaping;
mod spots;
mod stations;
mod tray;
mod truth;

pub use mouth::Arch;
pub use options::{Across, Options, Place, PlantedSpot, Pose, Sides, SpotKind};
pub use truth::{Axes, Truth};

use impression::Impression;
use mesh::Mesh;
use mesher::{Grid, Solid};
use nalgebra::Point3;
use rand::SeedableRng;
use rand_pcg::Pcg64;

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
        let solid = Impression {
            tray: design.tray,
            mouth: design.mouth,
            spots: Vec::new(),
            overflow_ramp: design.overflow_ramp,
        };
        let pose = scan::motion(options.pose, &mut stream(1));
        let tray_pose = scan::motion(options.tray_pose, &mut stream(2));
        let made = meshed(&solid, &solid, options.edge_mm, 0.0);
        let tray = meshed(&solid.tray, &solid, options.tray_edge_mm, 0.37);
        let truth = Truth {
            arch: options.arch,
            seed: options.seed,
            axes: Axes::of(options.arch, &pose),
            impression_from_tray: pose * tray_pose.inverse(),
            tray_thickness_mm: solid.tray.thickness(),
            made_from_scan: pose.inverse(),
            impression: solid,
        };
        Self {
            impression: scan::roughened(made.moved(&pose), options.noise_sd_mm, &mut stream(3)),
            tray: scan::roughened(tray.moved(&tray_pose), options.noise_sd_mm, &mut stream(4)),
            truth,
        }
    }
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
