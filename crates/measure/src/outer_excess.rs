//! Material on the outer faces of the tray, further from its rim than the border laps over it.

use crate::amount::Amount;
use crate::border::Border;
use crate::impression::Impression;
use crate::tray::{LocalTray, PlacedTray};
use crate::words::{Side, Zone};
use geometry::field::{smoothed, smoothing_rounds, vertex_areas};
use geometry::patches::{Patch, area_between, patches};
use nalgebra::Point3;
use std::f64::consts::{PI, SQRT_2};

/// Moulding leaves material so far over the tray's outer face, mm from its rim. Common
/// practice, no source.
const LAP_MM: f64 = 6.0;
/// Thinner material is a film that separates by itself, mm. Own choice.
const FILM_MM: f64 = 0.5;
/// Smaller patches are drops, or plugs that stand out of the tray's holes, mm². Own choice: a
/// plug of 3 mm in a hole covers 13 mm² with its brim.
const LEAST_AREA_MM2: f64 = 20.0;

/// Material on the outer faces of the tray.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OuterExcess {
    /// Its surface, patches together, mm².
    pub area_mm2: Amount,
    /// Greatest thickness over the tray, mm.
    pub thickest_mm: Amount,
    /// Where it is that thick; scan coordinates, mm.
    pub at: Point3<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

/// What lies on the outer faces of a tray; `None` where nothing does. The noise is a standard
/// deviation, what the scanner adds to a length an expanded uncertainty (k = 2), mm.
pub(crate) fn measure(
    impression: &Impression,
    (tray, placed): (LocalTray<'_>, &PlacedTray),
    border: &Border,
    [noise_mm, of_scanner_mm]: [f64; 2],
) -> Option<OuterExcess> {
    let mesh = &impression.local;
    let over = over_tray(impression, tray, border);
    let raw: Vec<Option<f64>> = over.iter().map(|over| Some((*over)?.mm)).collect();
    let thickness = smoothed(mesh, &raw, smoothing_rounds(impression.edge_mm));
    let everywhere_mm = (placed.registration.uncertainty_mm)
        .hypot(2.0 * noise_mm)
        .hypot(SQRT_2 * of_scanner_mm);
    let thicker_than = |level: f64| patches(mesh, &thickness, level, f64::INFINITY);
    let [smaller, larger] = [everywhere_mm, -everywhere_mm].map(|by| thicker_than(FILM_MM + by));
    let found: Vec<_> = (thicker_than(FILM_MM).into_iter())
        .filter(|patch| patch.area_mm2 >= LEAST_AREA_MM2)
        .collect();
    // Over a hole the nearest place is its edge, and the distance is no thickness over the tray.
    let over_face = |v: usize| over[v].is_some_and(|over| over.is_over_face);
    let thickest = (found.iter().flat_map(|patch| &patch.vertices))
        .filter_map(|&v| Some((v as usize, thickness[v as usize]?)))
        .max_by(|a, b| {
            let faces = over_face(a.0).cmp(&over_face(b.0));
            faces.then(a.1.total_cmp(&b.1))
        })?;
    let doubt_mm2 = |patch: &Patch| {
        let of_thickness = area_between(patch, &smaller, &larger) / 2.0;
        of_thickness.hypot(outline_doubt_mm2(patch.area_mm2, impression.edge_mm))
    };
    let at = mesh.vertices()[thickest.0];
    Some(OuterExcess {
        area_mm2: Amount {
            value: found.iter().map(|patch| patch.area_mm2).sum(),
            uncertainty: found.iter().map(doubt_mm2).sum(),
        },
        thickest_mm: Amount {
            value: thickest.1,
            uncertainty: everywhere_mm,
        },
        at: impression.frame.local_from_scan().inverse() * at,
        zone: impression.zones.zone(&at),
        side: impression.zones.side(&at),
    })
}

/// Expanded uncertainty (k = 2) of an area whose outline lies somewhere within an edge of the
/// mesh, as that of a circle, mm²: a rectangle one edge wide, standard deviation edge / sqrt(12).
fn outline_doubt_mm2(area_mm2: f64, edge_mm: f64) -> f64 {
    2.0 * (PI * area_mm2).sqrt() * edge_mm / 3.0_f64.sqrt()
}

/// How a vertex of the outer surface lies over the tray.
#[derive(Clone, Copy)]
struct OverTray {
    /// Distance from the tray, mm.
    mm: f64,
    /// Whether it lies over a face of the tray, not beside an edge.
    is_over_face: bool,
}

/// How each vertex of the outer surface lies over the tray; `None` of all others and of
/// material near the tray's rim.
fn over_tray(
    impression: &Impression,
    tray: LocalTray<'_>,
    border: &Border,
) -> Vec<Option<OverTray>> {
    /// Where the way to the tray leaves its normal by more, rad, the nearest place is an edge.
    const OFF_FACE_RAD: f64 = 0.2;
    let mesh = &impression.local;
    let on_tissue = impression.tissue_weights();
    let areas = vertex_areas(mesh, |_| true);
    let is_outer = |v: &usize| areas[*v] > 0.0 && on_tissue[*v] <= 0.0;
    let outer: Vec<usize> = (0..areas.len()).filter(is_outer).collect();
    let in_tray: Vec<Point3<f64>> = (outer.iter())
        .map(|&v| tray.in_tray_scan(&mesh.vertices()[v]))
        .collect();
    let rim = rim(impression, tray, border);
    let is_off_rim = |place: &Point3<f64>| {
        let squared = rim.iter().map(|on_rim| (on_rim - place).norm_squared());
        squared.fold(f64::INFINITY, f64::min) > LAP_MM * LAP_MM
    };
    let mut over = vec![None; areas.len()];
    for (v, beside) in outer.into_iter().zip(tray.beside(&in_tray)) {
        // The way to the rim matters of what is not the tray itself.
        over[v] = beside
            .filter(|beside| beside.mm < FILM_MM / 2.0 || is_off_rim(&beside.place))
            .map(|beside| OverTray {
                mm: beside.mm,
                is_over_face: beside.off_normal < OFF_FACE_RAD,
            });
    }
    over
}

/// Places of the tray nearest to the border, tray scan coordinates, mm.
fn rim(impression: &Impression, tray: LocalTray<'_>, border: &Border) -> Vec<Point3<f64>> {
    let local_from_scan = impression.frame.local_from_scan();
    let stations = border.stations.iter();
    stations
        .filter_map(|station| {
            let in_tray = tray.in_tray_scan(&(local_from_scan * station.point));
            Some(tray.index().nearest(&in_tray, f64::INFINITY)?.point)
        })
        .collect()
}
