//! How well each part of the tissue surface was scanned: fineness, noise, holes,
//! double layers.

use super::defects::{least_across_mm, least_depth_mm};
use super::figures::{Defect, DefectKind, ZoneScan};
use crate::impression::{Impression, Surface};
use crate::words::{Side, Zone};
use geometry::noise::Heights;
use geometry::order::{at_share, median};
use mesh::Mesh;
use nalgebra::Point3;
use rayon::prelude::*;
use std::collections::BTreeMap;

/// Smaller parts are strips beside another, mm².
const LEAST_AREA_MM2: f64 = 15.0;

/// Double layers are looked for at some of the triangles only: none is so small
/// that it would be missed, and the area follows from their share.
pub(crate) fn is_sampled(triangle: usize) -> bool {
    triangle.is_multiple_of(4)
}

/// Number of pieces of scan beside the largest.
pub(crate) fn loose_pieces(surface: &Surface) -> usize {
    surface.topology.components().saturating_sub(1)
}

/// Each part of the arch with tissue surface. `is_doubled` says for each
/// sampled triangle whether another layer lies over or under it.
pub(crate) fn by_zone(
    impression: &Impression,
    heights: &Heights,
    is_doubled: &[bool],
    defects: &[Defect],
) -> Vec<ZoneScan> {
    let mesh = &impression.local;
    let places: Vec<(usize, (Zone, Option<Side>))> = (0..mesh.triangles().len())
        .into_par_iter()
        .filter(|&t| impression.regions.is_tissue[t])
        .map(|t| {
            let [a, b, c] = mesh.corners(t);
            let middle = Point3::from((a.coords + b.coords + c.coords) / 3.0);
            let zones = &impression.zones;
            (t, (zones.zone(&middle), zones.side(&middle)))
        })
        .collect();
    let on_tissue: Vec<usize> = places.iter().map(|(t, _)| *t).collect();
    let shortest_tenth_mm = at_share(&mut edges_of(mesh, &on_tissue), 0.1).unwrap_or(0.0);
    let mut parts: BTreeMap<(Zone, Option<Side>), Vec<usize>> = BTreeMap::new();
    for (t, place) in places {
        parts.entry(place).or_default().push(t);
    }
    parts
        .into_par_iter()
        .filter_map(|((zone, side), triangles)| {
            let area = |t: &usize| mesh.area_vector(*t).norm();
            let area_mm2: f64 = triangles.iter().map(area).sum();
            if area_mm2 < LEAST_AREA_MM2 {
                return None;
            }
            let corners = triangles.iter().flat_map(|&t| mesh.triangles()[t]);
            let noise_mm = heights.noise_mm(corners.map(|v| v as usize))?;
            let median_edge_mm = median(&mut edges_of(mesh, &triangles))?;
            let shown_edge_mm = edge_of_detail(median_edge_mm, shortest_tenth_mm);
            Some(ZoneScan {
                zone,
                side,
                area_mm2,
                missing_mm2: defects
                    .iter()
                    .filter(|d| d.kind == DefectKind::Hole && d.zone == zone && d.side == side)
                    .map(|d| d.area_mm2)
                    .fold(0.0, |sum, area| sum + area),
                doubled_mm2: doubled_share(&triangles, is_doubled) * area_mm2,
                median_edge_mm,
                noise_mm,
                least_across_mm: least_across_mm(shown_edge_mm),
                least_depth_mm: least_depth_mm(noise_mm),
            })
        })
        .collect()
}

/// Share of the sampled triangles that are doubled.
fn doubled_share(triangles: &[usize], is_doubled: &[bool]) -> f64 {
    let sampled = triangles.iter().filter(|&&t| is_sampled(t));
    let doubled = sampled.clone().filter(|&&t| is_doubled[t]).count();
    doubled as f64 / sampled.count().max(1) as f64
}

fn edges_of(mesh: &Mesh, triangles: &[usize]) -> Vec<f64> {
    triangles
        .iter()
        .map(|&t| mesh.corners(t))
        .flat_map(|[a, b, c]| [b - a, c - b, a - c])
        .map(|edge| edge.norm())
        .collect()
}

/// The edge by which a part shows details. A part whose edges are much longer than
/// the shortest of the scan was thinned out because it is level: a void would have
/// kept its short edges.
fn edge_of_detail(median_mm: f64, shortest_tenth_mm: f64) -> f64 {
    /// Of triangles of one size the median is 1.4 times the edge of the shortest tenth.
    const THINNED_OUT: f64 = 1.8;
    if median_mm > THINNED_OUT * shortest_tenth_mm {
        shortest_tenth_mm
    } else {
        median_mm
    }
}
