//! The tissue surface: its defects, and how well it was scanned.

mod defects;
mod figures;
mod quality;

pub use figures::{Defect, DefectKind, NoTissue, TissueSurface, ZoneScan};

use crate::impression::{Impression, Surface};
use figures::COARSEST_EDGE_FOR_DEFECTS_MM;
use geometry::double_layers::double_layers_over;
use geometry::noise::Heights;
use nalgebra::Point3;

/// The tissue surface of an impression.
pub(crate) fn on_tissue(
    impression: &Impression,
    surface: &Surface,
    heights: &Heights,
    scanner_uncertainty_mm: f64,
    look: &(dyn Fn() + Sync),
) -> Result<TissueSurface, NoTissue> {
    let (mesh, edge_mm) = (&impression.local, impression.edge_mm);
    if edge_mm > COARSEST_EDGE_FOR_DEFECTS_MM {
        return Err(NoTissue::TooCoarse {
            median_edge_mm: edge_mm,
        });
    }
    let is_tissue = &impression.regions.is_tissue;
    let on_tissue = (mesh.triangles().iter().zip(is_tissue))
        .filter(|(_, tissue)| **tissue)
        .flat_map(|(corners, _)| corners.map(|v| v as usize));
    let noise_mm = heights.noise_mm(on_tissue).unwrap_or(0.0);
    look();
    let (places, layers) = rayon::join(
        || defects::find(mesh, &surface.topology, is_tissue, edge_mm, noise_mm),
        || {
            double_layers_over(mesh, &surface.topology, |t| {
                is_tissue[t] && quality::is_sampled(t)
            })
        },
    );
    look();
    let edge = edge_of_tissue(impression, surface);
    let scan_from_local = impression.frame.local_from_scan().inverse();
    let mut found: Vec<Defect> = places
        .into_iter()
        .map(|place| Defect {
            kind: place.kind,
            centre: scan_from_local * place.centre,
            area_mm2: place.area_mm2,
            depth_mm: place.depth_mm,
            depth_uncertainty_mm: (place.depth_uncertainty_mm)
                .map(|own| own.hypot(scanner_uncertainty_mm)),
            across_mm: place.across_mm,
            across_uncertainty_mm: place.across_uncertainty_mm.hypot(scanner_uncertainty_mm),
            length_mm: place.length_mm,
            outline: place.outline.iter().map(|p| scan_from_local * p).collect(),
            from_edge_mm: nearest_mm(&edge, &place.centre),
            zone: impression.zones.zone(&place.centre),
            side: impression.zones.side(&place.centre),
        })
        .collect();
    look();
    found.sort_by(|a, b| {
        let by_kind = a.kind.cmp(&b.kind);
        by_kind.then(b.across_mm.total_cmp(&a.across_mm))
    });
    Ok(TissueSurface {
        zones: quality::by_zone(impression, heights, &layers.is_doubled, &found),
        loose_pieces: quality::loose_pieces(surface),
        defects: found,
    })
}

/// Vertices at which tissue surface ends: at outer surface, or at the scan's rim.
fn edge_of_tissue(impression: &Impression, surface: &Surface) -> Vec<Point3<f64>> {
    let mesh = &impression.local;
    let is_tissue = &impression.regions.is_tissue;
    let mut at_edge = vec![false; mesh.vertices().len()];
    for t in (0..mesh.triangles().len()).filter(|&t| is_tissue[t]) {
        for other in surface.topology.neighbours(t).filter(|&n| !is_tissue[n]) {
            let shared = mesh.triangles()[t].map(|v| mesh.triangles()[other].contains(&v));
            for (&v, shared) in mesh.triangles()[t].iter().zip(shared) {
                at_edge[v as usize] |= shared;
            }
        }
    }
    // The longest loop is the rim; what other loops there are bound holes.
    if let Some(rim) = surface.topology.boundary_loops().first()
        && !impression.regions.has_outer_surface()
    {
        for &v in rim {
            at_edge[v as usize] = true;
        }
    }
    let vertices = mesh.vertices().iter().zip(&at_edge);
    vertices.filter(|(_, at)| **at).map(|(p, _)| *p).collect()
}

fn nearest_mm(edge: &[Point3<f64>], to: &Point3<f64>) -> f64 {
    edge.iter()
        .map(|p| (p - to).norm_squared())
        .fold(f64::INFINITY, f64::min)
        .sqrt()
}
