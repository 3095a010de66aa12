//! Impressions of edentulous arches in stock trays, made by formula, with
//! their truth beside them, for testing what measures them.
//!
//! ```
//! use phantom::{Arch, Options, Phantom};
//!
//! let made = Phantom::new(&Options {
//!     arch: Arch::Mandibular,
//!     seed: 7,
//!     edge_mm: 1.0,
//!     ..Options::default()
//! });
//! let truth = &made.truth;
//! assert_eq!(truth.arch, Arch::Mandibular);
//! // The first vertex lies on the tray or over it, not inside.
//! let cover_mm = truth.cover_at(&made.impression.vertices()[0]);
//! assert!(cover_mm > -0.01);
//! ```

#![warn(unreachable_pub)]

mod arch_curve;
mod artefact;
mod back;
mod bare_edges;
mod bead;
mod blemishes;
mod border;
mod cast;
mod chance;
mod circle;
mod colour;
mod cut_apart;
mod decimate;
mod design;
mod designed;
mod family;
mod gauss;
mod impression;
mod jaw;
mod mandible;
mod maxilla;
mod mesher;
mod mouth;
mod options;
mod others;
mod outer_excess;
mod patches;
mod place;
mod plan;
mod profile;
mod random_blemishes;
mod random_border;
mod random_spots;
mod rebuilt;
mod rim;
mod scan;
mod scanning;
mod shaping;
mod spots;
mod stations;
mod survey;
mod tray;
mod trough;
mod truth;
mod whole_case;

pub use artefact::artefact;
pub use bare_edges::BareEdgeTruth;
pub use cast::cast_from;
pub use colour::Colours;
pub use cut_apart::{HalfSpace, part};
pub use family::drawn::{BackForm, DrawnWave, HandleForm, RidgeForm};
pub use family::member::{Fault, Member};
pub use family::notch::NotchShape;
pub use family::ranges::{RANGES, Range};
pub use family::truth::{EndTruth, FamilyTruth, FrenumTruth};
pub use jaw::{Arch, Side};
pub use options::{
    Across, BareEdge, Blemish, Colouring, Cut, CutPlace, FlangeSide, Options, OuterExcess, Place,
    PlantedSpot, Pose, RimFaults, Scanning, Sides, SpotKind, TrayEdge, TrayForm, Variety,
};
pub use others::Other;
pub use outer_excess::OuterExcessTruth;
pub use patches::SpotTruth;
pub use truth::{Axes, BlemishKind, BlemishTruth, BorderPart, BorderPoint, Landmark, Truth};
pub use whole_case::{CaseInPieces, JawScans, WashThickness, WholeCase, washed};

use bare_edges::BareStrip;
use designed::designed;
use impression::Impression;
use mesh::Mesh;
use mesher::{Grid, Solid};
use nalgebra::Point3;
use outer_excess::Pad;
use rand_pcg::Pcg64;
use spots::Spot;
use tray::Stop;

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

/// Finer meshes are not made: they would not fit in memory, mm.
const LEAST_EDGE_MM: f64 = 0.1;
/// Median edge of a mesh over the step of the grid it was made on.
const EDGE_PER_STEP: f64 = 1.0;

impl Phantom {
    /// Makes a phantom.
    #[must_use]
    pub fn new(options: &Options) -> Self {
        let stream = |number: u64| chance::stream(options.seed, number);
        let design = designed(options, &mut stream(0));
        let plain = design.impression();
        let solid = with_plantings(&plain, options);
        let pose = scan::motion(options.pose, &mut stream(1));
        let tray_pose = scan::motion(options.tray_pose, &mut stream(2));

        let mut made = meshed(&solid, &solid, options.edge_mm, 0.0);
        let tray = meshed(&solid.tray, &solid, options.tray_edge_mm, 0.37);
        let mut truth = Truth::of(solid, &design.marks, options.seed, &pose, &tray_pose);
        truth.family = (design.drawn.as_ref()).map(|drawn| FamilyTruth::of(&plain, drawn, &pose));
        truth.blemishes = options
            .blemishes
            .iter()
            .map(|b| blemishes::described(&plain, b, &pose))
            .collect();
        if let Some(how) = &options.colour {
            let colours = Colours::random(&mut stream(5));
            let painted = colours.painted(&truth.impression, made.vertices(), how, &mut stream(6));
            made = made.with_colours(Some(painted)).unwrap_or_default();
            truth.colours = Some(colours);
        }
        let made = lost_parts_removed(made, options, &mut truth, &mut stream(7));
        let made = rim::spoilt(&made, &options.rim, &truth, &mut stream(8));
        let made = scanning::scanned(made, &options.scanning, &mut stream(9));
        Self {
            impression: scan::roughened(made.moved(&pose), options.noise_sd_mm, &mut stream(3)),
            tray: scan::roughened(tray.moved(&tray_pose), options.noise_sd_mm, &mut stream(4)),
            truth,
        }
    }
}

/// The impression with its planted spots, blemishes and stops.
fn with_plantings(plain: &Impression, options: &Options) -> Impression {
    let formed = plain.tray.clone().with_form(&options.tray_form);
    let plain = &Impression {
        tray: formed,
        ..plain.clone()
    };
    let mut solid = plain.clone();
    let stops = options
        .stops
        .iter()
        .filter_map(|&station| stop(plain, station))
        .collect();
    solid.tray = solid.tray.with_stops(stops);
    solid.spots = options
        .spots
        .iter()
        .map(|wanted| planted(plain, wanted))
        .collect();
    solid.bare_edges = (options.bare_edges.iter())
        .filter_map(|wanted| {
            let along = plain.along(wanted.station);
            let above_z = plain.mouth.sections.at(along).crest_z;
            BareStrip::planted(&solid.tray, [along, above_z], wanted)
        })
        .collect();
    solid.pads = (options.outer_excess.iter())
        .map(|wanted| Pad::planted(&plain.tray, plain.along(wanted.station), wanted))
        .collect();
    solid.beads = options
        .blemishes
        .iter()
        .filter_map(|b| blemishes::bead(plain, b))
        .collect();
    solid
}

/// How far a tissue stop stands over the lowest tissue of its face, so that
/// all of the face shows, mm.
const STOP_RISE_MM: f64 = 0.3;

fn stop(plain: &Impression, station: f64) -> Option<Stop> {
    let along = plain.along(station);
    let crest = plain.crest(along)?;
    let bottom = plain.tray.exact_distance(&crest) + 0.5 * plain.tray.thickness();
    let foot = Point3::new(crest.x, crest.y, crest.z - bottom);
    Some(Stop {
        foot,
        height: bottom + STOP_RISE_MM,
        across: plain.across(along),
    })
}

/// The scan without what the scanner did not see or lost.
fn lost_parts_removed(made: Mesh, options: &Options, truth: &mut Truth, rng: &mut Pcg64) -> Mesh {
    let back = truth.made_from_scan;
    let mut kept = made;
    if options.sides == Sides::Tissue {
        let border: Vec<_> = truth.border.iter().map(|b| back * b.point).collect();
        let bites = rim::bites(&border, options.rim.bites_mm, rng);
        kept = scan::seen_from_tissue(&kept, &truth.impression, &border, &bites, rng);
    }
    for (blemish, described) in options.blemishes.iter().zip(&truth.blemishes) {
        let centre = back * described.centre;
        kept = kept.filtered(|t| {
            let [a, b, c] = kept.corners(t);
            let middle = Point3::from((a.coords + b.coords + c.coords) / 3.0);
            !blemishes::is_lost(&truth.impression, blemish, &centre, &middle)
        });
        for b in &mut truth.border {
            let lost = blemishes::is_lost(&truth.impression, blemish, &centre, &(back * b.point));
            b.scanned &= !lost;
        }
    }
    kept
}

/// Growth of cover around a spot for each mm: gentle on the level parts,
/// steep on the slopes, which leave less room.
const RAMPS: [f64; 2] = [0.5, 1.5];

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
    let step = edge_mm.max(LEAST_EDGE_MM) / EDGE_PER_STEP;
    let (low, high) = within.bounds();
    let low = Point3::from(low.coords.add_scalar(-(2.0 + shift) * step));
    let high = Point3::from(high.coords.add_scalar(2.0 * step));
    let (vertices, triangles) = mesher::surface(solid, &Grid::covering(low, high, step));
    rebuilt::rebuilt(vertices, triangles, None)
}
