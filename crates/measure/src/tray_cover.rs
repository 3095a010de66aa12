//! Cover from the scan of the empty tray.

use crate::cover::{Tray, angle_weighted_normals, smoothed};
use crate::figures::{
    Cover, CoverMethod, MeasureSettings, NotMeasured, Spot, SpotKind, StopReading, TrayRegistration,
};
use crate::regions::smoothing_rounds;
use crate::registration::{self, Registered, Target};
use crate::sampling::spread_over;
use crate::spots::{Patch, area_between, nearest_vertex, patches};
use crate::tray_mismatch::{self, Mismatch};
use crate::{Impression, Surface, frame};
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Isometry3, Point3, Vector3};

/// Points that stand for the impression's outer surface.
const OUTER_POINTS: usize = 12_000;
/// Share of the outer surface that must lie on the tray.
const LEAST_FITTING_SHARE: f64 = 0.15;
/// Outer surface behind the tray's, as a part of what fits: nothing can be
/// scanned through a tray, so more than a little means another tray.
const MOST_BEHIND: f64 = 0.1;
/// How far the frames of an impression and of its tray may be apart.
const FRAMES_APART: registration::Scatter = registration::Scatter {
    turn: 0.15,
    step_mm: 4.0,
};
/// Part of the tissue surface over which cover may be unknown: show-through
/// there would pass unseen.
const MOST_MISSING: f64 = 0.05;
/// A tray's channel floor lies this far below the crest of the impression in
/// it, mm (common practice: 2 to 4 mm of material).
const USUAL_DEPTH_MM: f64 = 3.0;

/// A tray scan ready to be placed and measured from.
pub(crate) struct PreparedTray {
    surface: Surface,
    target: Target,
    corner_normals: Vec<Vector3<f64>>,
    local_from_tray: Option<Isometry3<f64>>,
}

impl PreparedTray {
    pub fn of(mesh: &Mesh) -> Self {
        let surface = Surface::of(mesh);
        let (found, (target, corner_normals)) = rayon::join(
            || frame::find(&surface.mesh),
            || {
                let normals = angle_weighted_normals(&surface.mesh);
                (Target::new(&surface.mesh), normals)
            },
        );
        Self {
            local_from_tray: found.ok().map(|f| f.frame.local_from_scan()),
            target,
            corner_normals,
            surface,
        }
    }
}

/// Where a tray lies.
pub(crate) struct PlacedTray {
    tray_from_local: Isometry3<f64>,
    registration: TrayRegistration,
}

/// Facets may stray from a tray's rim by the sagitta of an edge on a circle of
/// this radius, mm: half of a wall of 2 mm (BORDER-04).
const RIM_RADIUS_MM: f64 = 1.0;

/// A tray in the impression's local coordinates.
pub(crate) struct LocalTray<'a> {
    /// Its surface, in its own coordinates.
    pub index: &'a SpatialIndex,
    /// Moves local coordinates into its own.
    pub tray_from_local: Isometry3<f64>,
    /// Its surface, in local coordinates.
    pub mesh: Mesh,
    /// Expanded uncertainty (k = 2) of a distance to its rim, mm.
    pub rim_uncertainty_mm: f64,
}

impl PlacedTray {
    /// The tray in local coordinates, for distances from the border.
    pub fn in_place<'a>(&self, tray: &'a PreparedTray, noise_mm: f64) -> LocalTray<'a> {
        LocalTray {
            index: tray.target.index(),
            tray_from_local: self.tray_from_local,
            mesh: tray.surface.mesh.moved(&self.tray_from_local.inverse()),
            rim_uncertainty_mm: self
                .registration
                .uncertainty_mm
                .hypot(2.0 * noise_mm)
                .hypot(tray.surface.integrity.median_edge.powi(2) / (8.0 * RIM_RADIUS_MM)),
        }
    }
}

/// Registers the tray on the outer surface of the impression: from the frames
/// of both where the tray has one, else from every orientation.
pub(crate) fn place(
    impression: &Impression,
    tray: &PreparedTray,
) -> Result<PlacedTray, NotMeasured> {
    let regions = &impression.regions;
    let outer = spread_over(&impression.local, OUTER_POINTS, |t| !regions.is_tissue[t]);
    let fits = |found: &Registered| {
        found.fitting_share >= LEAST_FITTING_SHARE
            && found.behind_share <= MOST_BEHIND * found.fitting_share
    };
    let from_frames = tray.local_from_tray.map(|local_from_tray| {
        let tray_from_local =
            local_from_tray.inverse() * nalgebra::Translation3::new(0.0, 0.0, USUAL_DEPTH_MM);
        let starts = registration::around(
            &tray_from_local,
            &(tray_from_local * Point3::origin()),
            [
                &(tray_from_local * Vector3::z()),
                &(tray_from_local * Vector3::y()),
            ],
            FRAMES_APART,
        );
        registration::register(&outer, &tray.target, &starts)
    });
    let found = match from_frames {
        Some(Ok(found)) if fits(&found) => Ok(found),
        _ => registration::register_anywhere(&outer, &tray.target),
    };
    let found = match found {
        Ok(found) if fits(&found) => found,
        unfit => {
            let mismatch = Mismatch {
                outer: &outer,
                tray: tray.surface.mesh.vertices(),
                local_from_tray: tray.local_from_tray,
                fitting_share: unfit.as_ref().map_or(0.0, |found| found.fitting_share),
                without_cause: unfit.map_or_else(
                    |why| why,
                    |found| NotMeasured::TrayDoesNotFit {
                        fitting_percent: 100.0 * found.fitting_share,
                    },
                ),
            };
            return Err(tray_mismatch::reason(mismatch, |mirrored| {
                let refitted = registration::register_anywhere(mirrored, &tray.target);
                refitted.is_ok_and(|found| fits(&found))
            }));
        }
    };
    let ends: Vec<Point3<f64>> = tray
        .surface
        .mesh
        .vertices()
        .iter()
        .step_by((tray.surface.mesh.vertices().len() / 500).max(1))
        .copied()
        .collect();
    let tray_from_scan = found.target_from_source * impression.frame.local_from_scan();
    Ok(PlacedTray {
        tray_from_local: found.target_from_source,
        registration: TrayRegistration {
            impression_from_tray: tray_from_scan.inverse(),
            rms_mm: found.rms_mm,
            uncertainty_mm: found.uncertainty_mm(&ends).hypot(
                facet_doubt_mm(impression.edge_mm)
                    + facet_doubt_mm(tray.surface.integrity.median_edge),
            ),
            tray_seen_mm2: found.fitting_share * regions.outer_mm2,
            fitting_share: found.fitting_share,
            behind_share: found.behind_share,
        },
    })
}

/// How far facets may stray from the curved wall they stand for, mm: the
/// sagitta of an edge on the sharpest bends that make up much of a tray.
fn facet_doubt_mm(edge_mm: f64) -> f64 {
    const BEND_MM: f64 = 8.0;
    edge_mm * edge_mm / (8.0 * BEND_MM)
}

/// Cover at every tissue vertex.
pub(crate) fn over_tissue(
    impression: &Impression,
    tray: &PreparedTray,
    placed: &PlacedTray,
    noise_mm: f64,
) -> Result<Cover, NotMeasured> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let points: Vec<Point3<f64>> = tissue.iter().map(|&v| mesh.vertices()[v]).collect();
    let tray = Tray::new(
        &tray.surface.mesh,
        &tray.surface.topology,
        tray.target.index(),
        &tray.corner_normals,
    );
    let mut raw = vec![None; weights.len()];
    for (&v, distance) in tissue
        .iter()
        .zip(tray.distances(&points, &placed.tray_from_local))
    {
        raw[v] = distance;
    }
    let at_vertex_mm = smoothed(mesh, &raw, smoothing_rounds(impression.edge_mm));
    let area =
        |vertices: &mut dyn Iterator<Item = &usize>| vertices.map(|&v| weights[v]).sum::<f64>();
    let missing =
        area(&mut tissue.iter().filter(|&&v| raw[v].is_none())) / area(&mut tissue.iter());
    // Without any tissue surface the share is not a number.
    if missing.is_nan() || missing > MOST_MISSING {
        return Err(NotMeasured::TrayInsideMissing {
            missing_percent: if missing.is_nan() {
                100.0
            } else {
                100.0 * missing
            },
        });
    }
    // The pose's doubt and what smoothing leaves of the scan's noise are
    // independent of each other.
    let uncertainty_mm = placed.registration.uncertainty_mm.hypot(2.0 * noise_mm);
    let found = Cover::of(
        CoverMethod::TrayScan,
        at_vertex_mm,
        &weights,
        uncertainty_mm,
    );
    found
        .map(|cover| Cover {
            registration: Some(placed.registration.clone()),
            ..cover
        })
        .ok_or(NotMeasured::TrayInsideMissing {
            missing_percent: 100.0,
        })
}

/// A declared stop with the vertices of tissue surface that belong to it.
pub(crate) struct Stop {
    pub reading: StopReading,
    place: Point3<f64>,
    reach_mm: f64,
}

/// Looks for the declared tissue stops.
pub(crate) fn stops(
    impression: &Impression,
    placed: &PlacedTray,
    cover: &Cover,
    settings: &MeasureSettings,
) -> Vec<Stop> {
    let local_from_tray = placed.tray_from_local.inverse();
    let scan_from_local = impression.frame.local_from_scan().inverse();
    // A square of this half side reaches so far at its corners, and material
    // creeps a little over a stop's rim.
    let reach_mm = settings.stop_radius_mm * 2f64.sqrt() + 0.5;
    settings
        .stops
        .iter()
        .map(|stop| {
            let place = local_from_tray * stop;
            let min_mm = impression
                .local
                .vertices()
                .iter()
                .zip(&cover.at_vertex_mm)
                // The tissue surface over a missing stop stands off the tray.
                .filter(|(p, _)| (*p - place).xy().norm() <= settings.stop_radius_mm)
                .filter(|(p, _)| (*p - place).norm() <= settings.stop_radius_mm + 8.0)
                .filter_map(|(_, cover)| *cover)
                .reduce(f64::min);
            Stop {
                reading: StopReading {
                    at: scan_from_local * place,
                    min_mm,
                    zone: impression.zones.zone(&place),
                    side: impression.zones.side(&place),
                },
                place,
                reach_mm,
            }
        })
        .collect()
}

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
