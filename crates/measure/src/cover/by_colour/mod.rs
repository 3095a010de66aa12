//! Show-through by colour: where the tissue surface has the tray's colour.
//!
//! Colours are compared in CIELAB (CIE 15:2018, D65). There a change of the
//! light's strength scales L* + 16, a* and b* alike (all three are made of cube
//! roots), so that one smooth factor over the surface, fitted to the material
//! itself, takes the light out. What is left is told apart along the direction
//! that separates tray and material best for the scatter of the scan's own
//! colours (Fisher 1936).

mod cielab;
mod cluster;
mod contrasts;
mod figures;
mod light;

pub use contrasts::Contrast;
pub use figures::{BesideCover, NoColour, TrayColour};

use super::figures::{Cover, Spot, SpotKind};
use crate::amount::Amount;
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use cielab::{of_srgb, to_srgb};
use cluster::{Apart, Cluster, HALFWAY, Share, tray_among};
use geometry::field::{smoothed, smoothing_rounds};
use geometry::patches::{area_between, nearest_vertex, patches};
use light::Light;
use mesh::Topology;
use nalgebra::Vector3;

/// The share is known no better than this: a blurred edge lies between.
const SHARE_DOUBT: f64 = 0.15;

/// What the scan's colours show.
pub(crate) struct ColourReading {
    /// What they show of the tray, or why that is not known: the tray's colour is
    /// neither given nor clear from the outer surface, or too like the material's.
    pub(crate) tray: Result<TrayColour, NoColour>,
    /// Patches of the tray's colour.
    pub(crate) spots: Vec<Spot>,
    /// Where the tray's colour is not known: patches of another colour.
    pub(crate) contrasts: Vec<Contrast>,
}

impl From<NoColour> for ColourReading {
    fn from(why: NoColour) -> Self {
        Self {
            tray: Err(why),
            spots: Vec::new(),
            contrasts: Vec::new(),
        }
    }
}

/// What the colours of an impression's scan show; `None` where it has no colours.
pub(crate) fn read(
    impression: &Impression,
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Option<ColourReading> {
    let colours: Vec<Vector3<f64>> = impression
        .local
        .colours()?
        .iter()
        .map(|&colour| of_srgb(colour))
        .collect();
    Some(of_colours(impression, &colours, cover, settings).unwrap_or_else(Into::into))
}

fn of_colours(
    impression: &Impression,
    colours: &[Vector3<f64>],
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Result<ColourReading, NoColour> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let smooth = |on_tissue: bool| smoothed_colours(impression, colours, weights, on_tissue);
    let (inner, outer) = (smooth(true), smooth(false));
    let light = Light::over(
        tissue
            .iter()
            .filter_map(|&v| Some((mesh.vertices()[v], inner[v]?.x))),
    )
    .ok_or(NoColour::TooUneven { separation: 0.0 })?;
    let evened = |from: &[Option<Vector3<f64>>], v: usize| {
        from[v].map(|colour| colour / light.at(&mesh.vertices()[v]))
    };
    let on_tissue: Vec<Option<Vector3<f64>>> =
        (0..weights.len()).map(|v| evened(&inner, v)).collect();
    let material = Cluster::most_of(on_tissue.iter().flatten().copied().collect())
        .ok_or(NoColour::TooUneven { separation: 0.0 })?;
    let near_rim = near_rim(impression, weights);
    let inferred = || {
        let off: Vec<Vector3<f64>> = (0..weights.len())
            .filter_map(|v| evened(&outer, v))
            .collect();
        let shown = impression.regions.has_outer_surface();
        shown.then(|| tray_among(&off, &material)).flatten()
    };
    let given = settings.tray_colour.map(of_srgb);
    let Some(tray) = given.or_else(inferred) else {
        let contrasts =
            contrasts::contrasts(impression, &on_tissue, &near_rim, &material, settings);
        return Ok(ColourReading {
            contrasts,
            ..NoColour::TrayColourUnknown.into()
        });
    };
    let apart = Apart::between(&material, tray)?;
    let shares: Vec<Option<Share>> = on_tissue
        .iter()
        .map(|colour| colour.map(|colour| apart.share(&colour)))
        .collect();
    let at_vertex: Vec<Option<f64>> = (shares.iter().zip(near_rim))
        .map(|(share, near_rim)| share.filter(|_| !near_rim).map(Share::toward_tray))
        .collect();
    let area = |is: &dyn Fn(usize) -> bool| -> f64 {
        tissue.iter().filter(|&&v| is(v)).map(|&v| weights[v]).sum()
    };
    let is_tray = |v: usize| at_vertex[v].is_some_and(|share| share > HALFWAY);
    let areas_mm2: Vec<(usize, f64)> = tissue.iter().map(|&v| (v, weights[v])).collect();
    let reading = TrayColour {
        material: to_srgb(&material.centre),
        tray: to_srgb(&tray),
        inferred: given.is_none(),
        difference: apart.way.norm(),
        separation: apart.separation,
        area_judged_mm2: area(&|v| at_vertex[v].is_some()),
        tray_seen_mm2: area(&is_tray),
        other_mm2: area(&|v| at_vertex[v].is_some() && matches!(shares[v], Some(Share::Other))),
        beside_cover: cover.map(|cover| beside_cover(cover, settings, &is_tray, &areas_mm2)),
        at_vertex,
    };
    let spots = outlined(impression, &reading, &on_tissue, &apart, cover, settings);
    Ok(ColourReading {
        tray: Ok(reading),
        spots,
        contrasts: Vec::new(),
    })
}

/// Where colours and cover map agree, over the tissue surface's vertices, each with
/// its area, mm².
fn beside_cover(
    cover: &Cover,
    settings: &MeasureSettings,
    is_tray: &dyn Fn(usize) -> bool,
    areas_mm2: &[(usize, f64)],
) -> BesideCover {
    let area = |is: &dyn Fn(usize) -> bool| -> f64 {
        areas_mm2
            .iter()
            .filter(|(v, _)| is(*v))
            .map(|(_, area)| area)
            .sum()
    };
    let least = settings.show_through_mm;
    let covered =
        |v: usize| cover.at_vertex_mm[v].is_some_and(|mm| mm > least + cover.uncertainty_mm);
    let surely_bare =
        |v: usize| cover.at_vertex_mm[v].is_some_and(|mm| mm <= least - cover.uncertainty_mm);
    BesideCover {
        both_mm2: area(&|v| is_tray(v) && may_be_bare(cover, settings, v)),
        colour_only_mm2: area(&|v| is_tray(v) && covered(v)),
        cover_only_mm2: area(&|v| !is_tray(v) && surely_bare(v)),
    }
}

/// Whether the cover map does not surely call a place covered.
fn may_be_bare(cover: &Cover, settings: &MeasureSettings, v: usize) -> bool {
    let least = settings.show_through_mm + cover.uncertainty_mm;
    cover.at_vertex_mm[v].is_some_and(|mm| mm <= least)
}

/// Vertices of the tissue surface that lie so near to the outer surface or to the
/// end of the scan that the tray's own rim may be taken for them.
fn near_rim(impression: &Impression, weights: &[f64]) -> Vec<bool> {
    const REACH_MM: f64 = 1.0;
    const MOST_STEPS: f64 = 8.0;
    let steps = (REACH_MM / impression.edge_mm).ceil().min(MOST_STEPS) as usize;
    let mut near: Vec<bool> = weights.iter().map(|weight| *weight == 0.0).collect();
    // The scan may end at the rim.
    for ends in Topology::of(&impression.local).boundary_loops() {
        for &v in ends {
            near[v as usize] = true;
        }
    }
    for _ in 0..steps {
        let before = near.clone();
        for corners in impression.local.triangles() {
            if corners.iter().any(|&v| before[v as usize]) {
                for &v in corners {
                    near[v as usize] = true;
                }
            }
        }
    }
    near
}

/// Least cover in a patch that is known over half of it at least, mm.
fn least_cover(cover: &Cover, patch: &[u32]) -> Option<Amount> {
    let vertices = || patch.iter().map(|&v| v as usize);
    let known = vertices().filter(|&v| cover.at_vertex_mm[v].is_some());
    let enough = 2 * known.count() >= patch.len();
    cover.least_of(vertices()).filter(|_| enough)
}

/// Patches of the tray's colour, largest first; beside a cover map those alone
/// in which it shows no tray.
fn outlined(
    impression: &Impression,
    reading: &TrayColour,
    colours: &[Option<Vector3<f64>>],
    apart: &Apart,
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Vec<Spot> {
    let mesh = &impression.local;
    let above = |share| patches(mesh, &reading.at_vertex, share, f64::INFINITY);
    let (smaller, larger) = (above(HALFWAY + SHARE_DOUBT), above(HALFWAY - SHARE_DOUBT));
    let scan_from_local = impression.frame.local_from_scan().inverse();
    let by_cover_too = |patch: &[u32]| {
        cover.is_some_and(|cover| (patch.iter()).any(|&v| may_be_bare(cover, settings, v as usize)))
    };
    above(HALFWAY)
        .into_iter()
        .filter(|patch| patch.area_mm2 >= settings.least_area_mm2)
        .filter(|patch| !by_cover_too(&patch.vertices))
        .map(|patch| {
            let on_surface = nearest_vertex(mesh, &patch);
            let least = cover.and_then(|cover| least_cover(cover, &patch.vertices));
            Spot {
                kind: SpotKind::ShowThrough,
                centre: scan_from_local * on_surface,
                area_mm2: patch.area_mm2,
                area_uncertainty_mm2: area_between(&patch, &smaller, &larger) / 2.0,
                min_mm: least.map(|least| least.value),
                min_uncertainty_mm: least.map(|least| least.uncertainty),
                confidence: Some(apart.likeness(&patch.vertices, colours)),
                zone: impression.zones.zone(&on_surface),
                side: impression.zones.side(&on_surface),
                edge: None,
                stop: None,
                around: None,
                vertices: patch.vertices,
            }
        })
        .collect()
}

/// Colours averaged over the scan's noise, on the tissue surface or off it.
fn smoothed_colours(
    impression: &Impression,
    colours: &[Vector3<f64>],
    weights: &[f64],
    on_tissue: bool,
) -> Vec<Option<Vector3<f64>>> {
    // Once more than a distance is smoothed: colours are noisier.
    let rounds = smoothing_rounds(impression.edge_mm) + 1;
    let channel = |k: usize| {
        let raw: Vec<Option<f64>> = colours
            .iter()
            .zip(weights)
            .map(|(colour, &weight)| ((weight > 0.0) == on_tissue).then_some(colour[k]))
            .collect();
        smoothed(&impression.local, &raw, rounds)
    };
    let [l, a, b] = [0, 1, 2].map(channel);
    (0..colours.len())
        .map(|v| Some(Vector3::new(l[v]?, a[v]?, b[v]?)))
        .collect()
}
