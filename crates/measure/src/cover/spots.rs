//! Patches of little cover.

use super::figures::{BareEdge, Cover, EdgeExtent, Spot, SpotKind};
use super::stops::{OFF_STRIP_MM, Stop};
use crate::amount::Amount;
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
    let found = |kind, low, high: f64| -> Vec<(SpotKind, Patch, f64)> {
        let outlined = |low, high| -> Vec<Patch> {
            let patches = patches(mesh, &cover.at_vertex_mm, low, high);
            match kind {
                SpotKind::ShowThrough => parted(mesh, cover, stops, patches, high),
                SpotKind::Thin => patches,
            }
        };
        let doubt = cover.uncertainty_mm;
        let (smaller, larger) = (outlined(low, high - doubt), outlined(low, high + doubt));
        outlined(low, high)
            .into_iter()
            .filter(|patch| {
                let is_edge = kind == SpotKind::ShowThrough && edge_in(cover, patch).is_some();
                is_edge || patch.area_mm2 >= settings.least_area_mm2
            })
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
            let stop = (stops.iter())
                .position(|stop| stop.is_at(&on_surface) && !stop.is_at_foot(&on_surface));
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
                edge: (edge_in(cover, patch).filter(|_| *kind == SpotKind::ShowThrough))
                    .map(|strip| extent(strip, patch, *area_uncertainty_mm2)),
                stop,
                around,
                vertices: patch.vertices.clone(),
            }
        })
        .collect()
}

/// Patches of show-through, largest first; those on a declared stop parted from what shows of the
/// tray at the stop's foot: the stop is meant to touch, the tray beside it is not.
fn parted(
    mesh: &Mesh,
    cover: &Cover,
    stops: &[Stop],
    patches: Vec<Patch>,
    level_mm: f64,
) -> Vec<Patch> {
    let mut all: Vec<Patch> = (patches.into_iter())
        .flat_map(|patch| off_its_stop(mesh, cover, stops, patch, level_mm))
        .collect();
    all.sort_by(|a, b| b.area_mm2.total_cmp(&a.area_mm2));
    all
}

fn off_its_stop(
    mesh: &Mesh,
    cover: &Cover,
    stops: &[Stop],
    patch: Patch,
    level_mm: f64,
) -> Vec<Patch> {
    let on_surface = nearest_vertex(mesh, &patch);
    let Some(stop) = stops.iter().find(|stop| stop.is_at(&on_surface)) else {
        return vec![patch];
    };
    let is_at_foot = |v: &u32| stop.is_at_foot(&mesh.vertices()[*v as usize]);
    if !patch.vertices.iter().any(is_at_foot) {
        return vec![patch];
    }
    let of_either = [false, true].map(|at_foot| {
        let is_of_it =
            |v: u32| patch.vertices.binary_search(&v).is_ok() && is_at_foot(&v) == at_foot;
        let elsewhere = level_mm + OFF_STRIP_MM;
        let values = cover.at_vertex_mm.iter().zip(0..).map(|(mm, v)| {
            mm.map(|mm| {
                if mm > level_mm || is_of_it(v) {
                    mm
                } else {
                    elsewhere
                }
            })
        });
        let values: Vec<Option<f64>> = values.collect();
        patches(mesh, &values, f64::NEG_INFINITY, level_mm)
    });
    of_either.into_iter().flatten().collect()
}

/// The longest strip of bare tray edge that makes up most of a patch.
fn edge_in<'a>(cover: &'a Cover, patch: &Patch) -> Option<&'a BareEdge> {
    let is_most = |strip: &&BareEdge| {
        let is_in = |v: &&u32| patch.vertices.binary_search(v).is_ok();
        2 * strip.vertices.iter().filter(is_in).count() > patch.vertices.len()
    };
    (cover.bare_edges.iter().filter(is_most))
        .max_by(|a, b| a.length_mm.value.total_cmp(&b.length_mm.value))
}

fn extent(strip: &BareEdge, patch: &Patch, area_uncertainty_mm2: f64) -> EdgeExtent {
    let (length, doubt) = (strip.length_mm.value, strip.length_mm.uncertainty);
    let width = patch.area_mm2 / length;
    EdgeExtent {
        length_mm: strip.length_mm,
        width_mm: Amount {
            value: width,
            uncertainty: (area_uncertainty_mm2 / length).hypot(width * doubt / length),
        },
    }
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
