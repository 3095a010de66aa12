//! Likely seating axes, and how each settles on the trough seen along it.

use super::axes::basis_along;
use super::bottoms;
use crate::anatomy;
use geometry::fit::{Plane, PrincipalAxes};
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use geometry::sampling::{spread_over, triangles_spread_over};
use mesh::Mesh;
use nalgebra::{Point3, Unit, UnitVector3, Vector3};
use rayon::prelude::*;

/// Share of the full circle over which the trough must be seen.
const LEAST_SWEEP: f64 = 0.45;

/// An axis that has settled square to the crest line seen along it.
#[derive(Debug, Clone)]
pub(super) struct Candidate {
    /// The axis, from tray toward tissue, scan coordinates.
    pub axis: UnitVector3<f64>,
    /// Size of the trough seen along it, mm³.
    pub trough_mm3: f64,
    /// Whether it is the surface's outside that forms the trough.
    pub shows_outside: bool,
    /// Height map in the system of [`basis_along`].
    pub map: HeightMap,
    /// Trough bottoms in that system by direction from their centre.
    pub bottoms: bottoms::Bottoms,
    /// Half the widest trough that was looked for, mm.
    pub half_width_mm: f64,
}

/// Mean of the outward normals by area: zero for a closed surface, by the
/// divergence theorem; toward the scanner for a surface scanned from one side.
pub(super) fn mean_normal(mesh: &Mesh) -> Vector3<f64> {
    let sum: Vector3<f64> = (0..mesh.triangles().len())
        .map(|t| mesh.area_vector(t))
        .sum();
    sum / mesh.area().max(f64::MIN_POSITIVE)
}

/// The axes worth settling: both senses of the principal axes and of the mean
/// normal, best first, poor ones left out.
pub(super) fn likely_axes(mesh: &Mesh) -> Vec<UnitVector3<f64>> {
    const SAMPLES: usize = 20_000;
    /// Triangles that show a trough as well as all do: several in each cell.
    const ENOUGH: usize = 40_000;
    const COARSE_CELL_MM: f64 = 1.5;
    let points: Vec<Point3<f64>> = spread_over(mesh, SAMPLES, |_| true)
        .iter()
        .map(|s| s.point)
        .collect();
    let Some(spread) = PrincipalAxes::of(&points) else {
        return Vec::new();
    };
    let mut axes = spread.axes.to_vec();
    axes.extend(Unit::try_new(mean_normal(mesh), 0.2));
    let triangles: Vec<[u32; 3]> = triangles_spread_over(mesh, ENOUGH, |_| true)
        .into_iter()
        .map(|t| mesh.triangles()[t])
        .collect();
    let mut scored: Vec<(f64, UnitVector3<f64>)> = axes
        .par_iter()
        .flat_map_iter(|&axis| [axis, -axis])
        .map(|axis| {
            let map = HeightMap::of(&turned(mesh, &axis), &triangles, COARSE_CELL_MM);
            (trough_size(&map, anatomy::TROUGH_HALF_WIDTH_MM), axis)
        })
        .collect();
    scored.sort_by(|a, b| b.0.total_cmp(&a.0));
    let best = scored[0].0;
    scored
        .into_iter()
        .take_while(|&(score, _)| score > 0.4 * best)
        .take(4)
        .map(|(_, axis)| axis)
        .collect()
}

/// Whether a surface scanned from one side stands up where an impression has
/// its trough: seen through its back, it shows by far the larger hollow.
pub(super) fn stands_up(mesh: &Mesh) -> bool {
    const TIMES_LARGER: f64 = 3.0;
    const NOTABLE_MM3: f64 = 300.0;
    let Some(outward) = Unit::try_new(mean_normal(mesh), 0.2) else {
        return false;
    };
    let [from_front, from_behind] = [outward, -outward].map(|axis| {
        let map = map_along(mesh, &axis, FINE_CELL_MM);
        trough_size(&map, anatomy::TROUGH_HALF_WIDTH_MM)
    });
    from_behind > NOTABLE_MM3.max(TIMES_LARGER * from_front)
}

/// Height map seen along an axis, in the system of [`basis_along`].
pub(super) fn map_along(mesh: &Mesh, axis: &UnitVector3<f64>, cell_mm: f64) -> HeightMap {
    HeightMap::of(&turned(mesh, axis), mesh.triangles(), cell_mm)
}

fn turned(mesh: &Mesh, axis: &UnitVector3<f64>) -> Vec<Point3<f64>> {
    let turn = basis_along(axis);
    mesh.vertices().iter().map(|p| turn * p).collect()
}

/// Turns an axis until it stands square to the crest line seen along it, of a trough no
/// wider than twice `half_width_mm`. `None` where no trough sweeps round an arch.
pub(super) fn settled(
    mesh: &Mesh,
    axis: UnitVector3<f64>,
    half_width_mm: f64,
) -> Option<Candidate> {
    const TURNS: usize = 6;
    const STILL: f64 = 0.1 * std::f64::consts::PI / 180.0;
    let mut axis = axis;
    for turn_number in 0..TURNS {
        let turn = basis_along(&axis);
        let map = map_along(mesh, &axis, FINE_CELL_MM);
        let depths = map.valley_depths(half_width_mm);
        let bottoms = bottoms::Bottoms::seen_from_centre(&map, &depths)?;
        if bottoms.sweep() < LEAST_SWEEP {
            return None;
        }
        let normal = robust_normal(&bottoms.points())?;
        let upright = if normal.z < 0.0 { -normal } else { normal };
        if upright.angle(&Vector3::z_axis()) < STILL || turn_number + 1 == TURNS {
            return Some(Candidate {
                axis,
                trough_mm3: size_of(&map, &depths),
                shows_outside: shows_outside(&map, &depths),
                map,
                bottoms,
                half_width_mm,
            });
        }
        axis = Unit::new_normalize(turn.inverse() * upright.into_inner());
    }
    None
}

/// Normal of the plane through most of the points: fitted again without those
/// that lie far from it.
fn robust_normal(points: &[Point3<f64>]) -> Option<UnitVector3<f64>> {
    let mut kept = points.to_vec();
    let mut plane = Plane::fit(&kept)?;
    for _ in 0..4 {
        let mut off: Vec<f64> = points.iter().map(|p| plane.distance(p).abs()).collect();
        off.sort_by(f64::total_cmp);
        let allowed = (3.0 * off[off.len() / 2]).max(0.5);
        kept.clear();
        kept.extend(points.iter().filter(|p| plane.distance(p).abs() <= allowed));
        plane = Plane::fit(&kept)?;
    }
    Some(plane.normal)
}

/// Whether most of the trough's surface shows its outside.
fn shows_outside(map: &HeightMap, depths: &[f32]) -> bool {
    let trough = (0..depths.len()).filter(|&cell| depths[cell] > anatomy::TROUGH_LEAST_DEPTH_MM);
    let (outside, all) = trough.fold((0, 0), |(outside, all), cell| {
        (outside + usize::from(map.shows_outside(cell)), all + 1)
    });
    2 * outside > all
}

/// Size of the hollows of a map that are no wider than twice `half_width_mm`, mm³.
pub(super) fn trough_size(map: &HeightMap, half_width_mm: f64) -> f64 {
    size_of(map, &map.valley_depths(half_width_mm))
}

/// Size of the ridges of a map, as wide at most, that have surface on both sides, mm³.
pub(super) fn ridge_size(map: &HeightMap, half_width_mm: f64) -> f64 {
    size_of(map, &map.ridge_heights(half_width_mm))
}

fn size_of(map: &HeightMap, depths: &[f32]) -> f64 {
    let sum: f32 = depths
        .iter()
        .filter(|&&d| d > anatomy::TROUGH_LEAST_DEPTH_MM)
        .map(|d| d.min(anatomy::TROUGH_GREATEST_DEPTH_MM))
        .sum();
    f64::from(sum) * map.cell_mm().powi(2)
}
