//! Patches of little cover.

use super::figures::{Cover, Spot, SpotKind};
use super::stops::Stop;
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use geometry::patches::{Patch, area_between, nearest_vertex, patches};
use mesh::Mesh;

/// Show-through, then thin patches, each largest first.
pub(crate) fn spots(
    impression: &Impression,
    cover: &Cover,
    stops: &[Stop],
    settings: &MeasureSettings,
) -> Vec<Spot> {
    let mesh = &impression.local;
    let outlined = |low, high| patches(mesh, &cover.at_vertex_mm, low, high);
    let found = |kind, low, high: f64| -> Vec<(SpotKind, Patch, f64)> {
        let doubt = cover.uncertainty_mm;
        let (smaller, larger) = (outlined(low, high - doubt), outlined(low, high + doubt));
        outlined(low, high)
            .into_iter()
            .filter(|patch| patch.area_mm2 >= settings.least_area_mm2)
            .map(|patch| {
                let doubt = area_between(&patch, &smaller, &larger) / 2.0;
                (kind, patch, doubt)
            })
            .collect()
    };
    let (show_through, thin) = (settings.show_through_mm, settings.thin_cover_mm);
    let mut all = found(SpotKind::ShowThrough, f64::NEG_INFINITY, show_through);
    all.extend(found(SpotKind::Thin, show_through, thin));
    let around = show_through_within(mesh, &all);
    let scan_from_local = impression.frame.local_from_scan().inverse();
    all.iter()
        .zip(around)
        .map(|((kind, patch, area_uncertainty_mm2), around)| {
            let on_surface = nearest_vertex(mesh, patch);
            let stop = stops
                .iter()
                .position(|s| (on_surface - s.place).norm() <= s.reach_mm);
            Spot {
                kind: *kind,
                centre: scan_from_local * on_surface,
                area_mm2: patch.area_mm2,
                area_uncertainty_mm2: *area_uncertainty_mm2,
                min_mm: Some(patch.min),
                min_uncertainty_mm: cover
                    .least_of(patch.vertices.iter().map(|&v| v as usize))
                    .map(|least| least.uncertainty),
                confidence: None,
                zone: impression.zones.zone(&on_surface),
                side: impression.zones.side(&on_surface),
                stop,
                around,
                vertices: patch.vertices.clone(),
            }
        })
        .collect()
}

/// For each patch that is thin, the number of the show-through that it
/// borders, if any: one place, not two.
fn show_through_within(mesh: &Mesh, all: &[(SpotKind, Patch, f64)]) -> Vec<Option<usize>> {
    const NONE: usize = usize::MAX;
    let mut owner = vec![NONE; mesh.vertices().len()];
    for (i, (_, patch, _)) in all.iter().enumerate() {
        for &v in &patch.vertices {
            owner[v as usize] = i;
        }
    }
    let mut around = vec![None; all.len()];
    for corners in mesh.triangles() {
        let owners = corners.map(|v| owner[v as usize]);
        for &thin in owners
            .iter()
            .filter(|&&o| o != NONE && all[o].0 == SpotKind::Thin)
        {
            let show_through = owners
                .iter()
                .copied()
                .filter(|&o| o != NONE && all[o].0 == SpotKind::ShowThrough)
                .min();
            around[thin] = match (around[thin], show_through) {
                (Some(a), Some(b)) => Some(usize::min(a, b)),
                (a, b) => a.or(b),
            };
        }
    }
    around
}
