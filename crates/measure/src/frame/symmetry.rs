//! The plane of symmetry, and which way along it is forward.

use super::axes::basis_along;
use super::candidates::Candidate;
use geometry::height_map::HeightMap;
use nalgebra::{Point2, Point3, Unit, UnitVector3, Vector2, Vector3};
use rayon::prelude::*;

/// What the plane of symmetry says.
pub(super) struct SymmetryPlane {
    /// Unit vector toward the patient's front, scan coordinates.
    pub anterior: UnitVector3<f64>,
    /// A point of the plane, scan coordinates.
    pub point: Point3<f64>,
    /// 1 for a clear optimum, 0 for none.
    pub confidence: f64,
}

/// Height differences beyond this count no further, mm: jaws are naturally
/// asymmetric, and what is missing on one side must not decide.
const MOST_DIFFERENCE_MM: f64 = 3.0;

/// Finds the plane across which the surface above the crest repeats itself, by
/// mirroring the height map (Podolak et al. 2006, with the search narrowed to
/// planes along the seating axis that open toward the open end of the U).
pub(super) fn plane_of(candidate: &Candidate) -> SymmetryPlane {
    let crest = candidate.bottoms.points();
    let crest_height = crest.iter().map(|p| p.z).sum::<f64>() / crest.len().max(1) as f64;
    let surface: Vec<Point3<f64>> = thinned(&candidate.map)
        // Handle and tray lie below the trough's bottom.
        .filter(|p| p.z > crest_height - 0.5)
        .collect();
    let centre = candidate.bottoms.centre;
    let forward = candidate.bottoms.open_direction() + std::f64::consts::PI;
    let cost =
        |angle: f64, offset: f64| mirror_cost(&candidate.map, &surface, centre, angle, offset);

    let grid: Vec<(f64, f64, f64)> = (-15..=15)
        .into_par_iter()
        .flat_map_iter(|i| (-6..=6).map(move |j| (f64::from(i), f64::from(j))))
        .map(|(i, offset)| {
            let angle = forward + i * 2f64.to_radians();
            (cost(angle, offset), angle, offset)
        })
        .collect();
    let mut best = (f64::INFINITY, forward, 0.0);
    for trial in &grid {
        if trial.0 < best.0 {
            best = *trial;
        }
    }
    let (mut turn, mut shift) = (1f64.to_radians(), 0.5);
    while turn > 0.05f64.to_radians() {
        let around = [(turn, 0.0), (-turn, 0.0), (0.0, shift), (0.0, -shift)];
        let better = around
            .map(|(a, o)| (cost(best.1 + a, best.2 + o), best.1 + a, best.2 + o))
            .into_iter()
            .min_by(|a, b| a.0.total_cmp(&b.0))
            .filter(|b| b.0 < best.0);
        match better {
            Some(b) => best = b,
            None => (turn, shift) = (turn / 2.0, shift / 2.0),
        }
    }
    let mut by_cost = grid;
    by_cost.sort_by(|a, b| a.0.total_cmp(&b.0));
    let usual = by_cost[by_cost.len() / 2];
    // Faults of the impression are not what makes a plane doubtful: the worst
    // fifth of the surface does not count.
    let [least, most] = [best, usual].map(|(_, angle, offset)| {
        let off = differences(&candidate.map, &surface, centre, angle, offset);
        let mut off: Vec<f64> = off.collect();
        off.sort_by(f64::total_cmp);
        off[..off.len() * 4 / 5].iter().sum::<f64>()
    });
    let in_basis = Vector3::new(best.1.cos(), best.1.sin(), 0.0);
    let on_plane = centre + Vector2::new(-best.1.sin(), best.1.cos()) * best.2;
    let scan_from_basis = basis_along(&candidate.axis).inverse();
    SymmetryPlane {
        anterior: Unit::new_normalize(scan_from_basis * in_basis),
        point: scan_from_basis * Point3::new(on_plane.x, on_plane.y, 0.0),
        confidence: (1.0 - least / most.max(f64::MIN_POSITIVE)).clamp(0.0, 1.0),
    }
}

/// One cell in every millimetre or so: enough for a plane of symmetry.
fn thinned(map: &HeightMap) -> impl Iterator<Item = Point3<f64>> + '_ {
    let every = ((1.2 / map.cell_mm()).powi(2) as usize).max(1);
    map.cells().map(|(_, p)| p).step_by(every)
}

/// Mean height difference between the surface and its mirror image.
fn mirror_cost(
    map: &HeightMap,
    surface: &[Point3<f64>],
    centre: Point2<f64>,
    angle: f64,
    offset: f64,
) -> f64 {
    let off = differences(map, surface, centre, angle, offset);
    off.sum::<f64>() / surface.len().max(1) as f64
}

/// Height difference between each point of the surface and its mirror image.
fn differences(
    map: &HeightMap,
    surface: &[Point3<f64>],
    centre: Point2<f64>,
    angle: f64,
    offset: f64,
) -> impl Iterator<Item = f64> {
    let across = Vector2::new(-angle.sin(), angle.cos());
    surface.iter().map(move |p| {
        let side = (p.xy() - centre).dot(&across) - offset;
        let mirrored = p.xy() - across * (2.0 * side);
        map.at(mirrored).map_or(MOST_DIFFERENCE_MM, |h| {
            (h - p.z).abs().min(MOST_DIFFERENCE_MM)
        })
    })
}
