//! From the mesh to its defects.

use super::background::{self, Departures};
use super::candidates::{self, Candidate, Sense};
use super::folds::{self, Groove};
use super::holes::{self, Gap};
use super::surface::{Searcher, Surface};
use super::verify::{self, FollowedBy, Reading};
use crate::tissue::figures::DefectKind;
use mesh::{Mesh, Topology};
use nalgebra::Point3;
use rayon::prelude::*;

/// Radii of the smooth surfaces, mm. The least is larger on a coarse scan.
const RADII_MM: [f64; 3] = [1.6, 3.2, 6.0];
/// How many times as far as the surface is rough a place departs from each of them, at least.
/// The crest of a sharp ridge is rough beside the two smaller ones, with a void or
/// without. The largest reaches over a whole ridge, whose own hollows are as compact
/// as a void.
const STANDS_OUT: [f32; 3] = [1.6, 1.6, 2.0];
/// A smooth surface reaches over so many edges at least.
const EDGES_IN_RADIUS: f64 = 4.0;
/// The one from which folds are told: a fold is a small part of such a ball.
const FOLD_RADIUS_MM: f64 = RADII_MM[1];
/// Shallower places are no defect, mm.
const LEAST_DEPTH_MM: f64 = 0.1;
/// Smaller places are no defect, mm across.
const LEAST_ACROSS_MM: f64 = 0.7;
/// A void must be this many edges across for its shape to be seen: of invented voids of 2.3
/// edges and more, on scans of 0.69 to 0.75 mm, 497 of 501 were found.
const EDGES_ACROSS: f64 = 2.3;
/// A departure must be this many times the noise.
const TIMES_NOISE: f64 = 5.0;

/// A defect in the mesh's coordinates, its place in the arch not yet told.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct FoundPlace {
    /// What it is.
    pub kind: DefectKind,
    /// Its middle, on the surface as it would be without it.
    pub centre: Point3<f64>,
    /// Area of its opening, mm².
    pub area_mm2: f64,
    /// Depth or height, mm; a hole has none.
    pub depth_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the depth, mm.
    pub depth_uncertainty_mm: Option<f64>,
    /// Width at the surface: the diameter of the circle of the same area, or
    /// the width of a fold, mm.
    pub across_mm: f64,
    /// Expanded uncertainty (k = 2) of the width, mm.
    pub across_uncertainty_mm: f64,
    /// Length of a fold, mm.
    pub length_mm: Option<f64>,
    /// Its outline, as [`crate::tissue::Defect`] has it.
    pub outline: Vec<Point3<f64>>,
}

/// Width of the smallest void that a scan of these edges can show, mm.
#[must_use]
pub(crate) fn least_across_mm(edge_mm: f64) -> f64 {
    LEAST_ACROSS_MM.max(EDGES_ACROSS * edge_mm)
}

/// Depth of the shallowest void that a scan with this noise can show, mm.
#[must_use]
pub(crate) fn least_depth_mm(noise_mm: f64) -> f64 {
    LEAST_DEPTH_MM.max(TIMES_NOISE * noise_mm)
}

/// The defects among the `chosen` triangles of a mesh in mm.
#[must_use]
pub(crate) fn find(
    mesh: &Mesh,
    topology: &Topology,
    chosen: &[bool],
    edge_mm: f64,
    noise_mm: f64,
) -> Vec<FoundPlace> {
    let surface = Surface::new(mesh, topology, chosen, edge_mm, noise_mm);
    let least_mm = least_depth_mm(noise_mm);
    let mut beads: Vec<(Sense, Reading)> = Vec::new();
    let mut grooves: Vec<Groove> = Vec::new();
    for (radius_mm, stands_out) in scales(edge_mm) {
        let over = background::departures(&surface, radius_mm);
        if radius_mm == FOLD_RADIUS_MM {
            grooves = folds::find(&surface, &over, least_mm);
        }
        let candidates = candidates::proposed(&surface, &over, least_mm, stands_out);
        beads.extend(verified(&surface, &over, &candidates, radius_mm, least_mm));
    }
    let beads = apart(beads);
    let gaps = holes::find(mesh, topology, chosen, &surface.normals);
    let mut found: Vec<FoundPlace> = beads
        .iter()
        .filter(|(_, bead)| !grooves.iter().any(|g| runs_through(&surface, g, bead)))
        .map(|(sense, bead)| of_bead(*sense, bead, edge_mm))
        .collect();
    found.extend(grooves.iter().map(|groove| of_groove(groove, edge_mm)));
    let gaps = gaps.iter().map(|gap| of_gap(gap, noise_mm));
    found.extend(gaps.filter(|gap| gap.across_mm >= LEAST_ACROSS_MM));
    found
}

/// The radii of the smooth surfaces for a scan of these edges, mm, and how far a place
/// stands out of each.
fn scales(edge_mm: f64) -> impl Iterator<Item = (f64, f32)> {
    let least_mm = EDGES_IN_RADIUS * edge_mm;
    let [smallest, middle, largest] = RADII_MM;
    [smallest.max(least_mm), middle, largest]
        .into_iter()
        .zip(STANDS_OUT)
        .filter(move |(radius_mm, _)| *radius_mm >= least_mm)
}

/// The candidates at one scale that are defects.
fn verified(
    surface: &Surface<'_>,
    over: &Departures,
    candidates: &[Candidate],
    radius_mm: f64,
    least_mm: f64,
) -> Vec<(Sense, Reading)> {
    // Small groups, since some places cost far more than others.
    candidates
        .par_chunks(4)
        .map_init(
            || Searcher::new(surface),
            |searcher, group: &[Candidate]| {
                group
                    .iter()
                    .filter_map(|c| {
                        let mut read = |followed_by| {
                            let departures = &over.smoothed_mm;
                            verify::read(surface, searcher, departures, c, radius_mm, followed_by)
                        };
                        let is_defect = |reading: &Reading| {
                            2.0 * reading.rim_mm >= 0.85 * LEAST_ACROSS_MM
                                && reading.is_defect(least_mm)
                        };
                        let first = read(FollowedBy::QuadricFirst)?;
                        let found = if is_defect(&first) {
                            Some(first)
                        } else if first.may_be_on_ridge() {
                            read(FollowedBy::Ridge).filter(is_defect)
                        } else {
                            None
                        };
                        Some((c.sense, found?))
                    })
                    .collect::<Vec<_>>()
            },
        )
        .flatten_iter()
        .collect()
}

/// One reading for each place: the one that is explained best.
fn apart(mut beads: Vec<(Sense, Reading)>) -> Vec<(Sense, Reading)> {
    beads.sort_by(|a, b| b.1.explained.total_cmp(&a.1.explained));
    let mut kept: Vec<(Sense, Reading)> = Vec::new();
    for bead in beads {
        let overlaps = |other: &(Sense, Reading)| {
            (other.1.centre - bead.1.centre).norm() < f64::max(other.1.rim_mm, bead.1.rim_mm)
        };
        if !kept.iter().any(overlaps) {
            kept.push(bead);
        }
    }
    kept
}

fn runs_through(surface: &Surface<'_>, groove: &Groove, bead: &Reading) -> bool {
    groove
        .vertices
        .iter()
        .any(|&v| (surface.points[v as usize] - bead.centre).norm() < bead.rim_mm)
}

/// Expanded uncertainty (k = 2) of a width between two rims that are each known
/// to lie somewhere on an edge of the mesh, mm.
fn width_uncertainty_mm(edge_mm: f64) -> f64 {
    // Each end: a rectangle one edge wide, standard deviation edge / sqrt(12).
    2.0 * (2.0f64 / 12.0).sqrt() * edge_mm
}

fn of_bead(sense: Sense, bead: &Reading, edge_mm: f64) -> FoundPlace {
    FoundPlace {
        kind: match sense {
            Sense::Pit => DefectKind::Void,
            Sense::Bump => DefectKind::Nodule,
        },
        centre: bead.centre,
        area_mm2: std::f64::consts::PI * bead.rim_mm * bead.rim_mm,
        depth_mm: Some(bead.depth_mm),
        depth_uncertainty_mm: Some(2.0 * bead.depth_sd_mm),
        across_mm: 2.0 * bead.rim_mm,
        across_uncertainty_mm: width_uncertainty_mm(edge_mm),
        length_mm: None,
        outline: bead.rim.clone(),
    }
}

fn of_groove(groove: &Groove, edge_mm: f64) -> FoundPlace {
    FoundPlace {
        kind: DefectKind::Fold,
        centre: groove.centre,
        area_mm2: groove.length_mm * groove.width_mm,
        depth_mm: Some(groove.depth_mm),
        depth_uncertainty_mm: Some(2.0 * groove.depth_sd_mm),
        across_mm: groove.width_mm,
        across_uncertainty_mm: width_uncertainty_mm(edge_mm),
        length_mm: Some(groove.length_mm),
        outline: groove.middles.clone(),
    }
}

fn of_gap(gap: &Gap, noise_mm: f64) -> FoundPlace {
    FoundPlace {
        kind: DefectKind::Hole,
        centre: gap.centre,
        area_mm2: gap.area_mm2,
        depth_mm: None,
        depth_uncertainty_mm: None,
        across_mm: gap.across_mm(),
        across_uncertainty_mm: gap.across_uncertainty_mm(noise_mm),
        length_mm: None,
        outline: gap.rim.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The trough of a knife-edge ridge whose crest bends as the arch does: flanks of 52
    /// degrees that meet in a crest of 0.4 mm radius.
    fn knife_edge(x: f64, y: f64) -> f64 {
        1.3 * ((x - y * y / 50.0).hypot(0.5) - 0.5)
    }

    /// Noise that never repeats, up to 0.02 mm.
    fn noise(x: f64, y: f64) -> f64 {
        0.02 * (91.7 * x + 47.3 * y).sin() * (13.1 * x - 77.7 * y).cos()
    }

    /// What is found in a surface 14 mm square.
    fn found_in(height: impl Fn(f64, f64) -> f64) -> Vec<FoundPlace> {
        const STEPS: u32 = 71;
        const EDGE_MM: f64 = 0.2;
        let at = |i: u32| EDGE_MM * (f64::from(i) - f64::from(STEPS - 1) / 2.0);
        let vertices = (0..STEPS * STEPS)
            .map(|n| (at(n % STEPS), at(n / STEPS)))
            .map(|(x, y)| Point3::new(x, y, height(x, y) + noise(x, y)))
            .collect();
        let triangles = (0..STEPS * (STEPS - 1))
            .filter(|n| n % STEPS < STEPS - 1)
            .flat_map(|n| [[n, n + 1, n + STEPS], [n + 1, n + STEPS + 1, n + STEPS]])
            .collect();
        let mesh = Mesh::new(vertices, triangles, None).expect("a height field is a mesh");
        let chosen = vec![true; mesh.triangles().len()];
        find(&mesh, &Topology::of(&mesh), &chosen, EDGE_MM, 0.01)
    }

    /// A bubble of 1.1 mm radius, 0.8 mm deep.
    #[test]
    fn a_void_on_a_knife_edge_ridge_is_found() {
        let bubble = |x: f64, y: f64| 0.3 - (1.21 - x * x - y * y).max(0.0).sqrt();
        let found = found_in(|x, y| {
            let surface = knife_edge(x, y);
            if x.hypot(y) < 1.1 {
                surface.min(bubble(x, y))
            } else {
                surface
            }
        });
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].kind, DefectKind::Void);
        let depth_mm = found[0].depth_mm.expect("a void has a depth");
        // The smooth surface rounds the crest off, by which the void seems deeper.
        assert!((0.65..1.05).contains(&depth_mm), "{found:?}");
        assert!(found[0].centre.coords.norm() < 0.5, "{found:?}");
    }

    /// Two scans stitched 0.06 mm apart across it, or none.
    #[test]
    fn a_sound_knife_edge_ridge_has_no_void() {
        for step_mm in [0.0, 0.06] {
            let found = found_in(|x, y| knife_edge(x, y) + if y > 0.3 * x { step_mm } else { 0.0 });
            assert!(found.is_empty(), "{step_mm}: {found:?}");
        }
    }
}
