//! The empty tray, coloured where little material lay over it.

use super::runs::Run;
use super::{PaintedSurface, Picture, along};
use crate::result::CoverMap;
use check::CheckedCase;
use measure::{Frame, Measurement};
use mesh::Mesh;
use nalgebra::Point3;
use std::collections::HashMap;
use std::io;

/// The inside of an impression's tray as its own scan shows it, coloured by cover where
/// that is little; `None` where there is no such place, or its scan was not placed.
///
/// # Errors
/// When the PNG file cannot be encoded.
pub(super) fn inside(checked: &CheckedCase, number: usize) -> Result<Option<Picture>, io::Error> {
    let drawn = || {
        let one = &checked.impressions[number];
        let (measurement, tray) = (one.measured()?, &one.tray.as_ref()?.mesh);
        if measurement.on_tray.iter().all(Option::is_none) {
            return None;
        }
        let frame = frame(measurement)?;
        let cover = over_tray(measurement, tray);
        let normals = tray.vertex_normals();
        PaintedSurface {
            mesh: tray,
            frame: &frame,
            runs: Run::all_of(tray),
            normals: normals.iter().map(|n| n.cast()).collect(),
            shares: Some(along(CoverMap::of_cover(checked, number).ends_mm(), &cover)),
            inside_out: false,
        }
        .tissue_side()
    };
    drawn().transpose()
}

/// The impression's frame in the coordinates of the tray's scan.
fn frame(measurement: &Measurement) -> Option<Frame> {
    let placed = measurement.cover.as_ref().ok()?.registration.as_ref()?;
    let tray_from_impression = placed.impression_from_tray.inverse();
    let of = &measurement.frame;
    Some(Frame {
        origin: tray_from_impression * of.origin,
        right: tray_from_impression * of.right,
        anterior: tray_from_impression * of.anterior,
        seating: tray_from_impression * of.seating,
        ..of.clone()
    })
}

/// Cover over each vertex of the tray's scan under a patch of little cover that is no
/// tissue stop, mm; `None` elsewhere.
fn over_tray(measurement: &Measurement, tray: &Mesh) -> Vec<Option<f64>> {
    /// No triangle of an impression whose cover is measured is wider.
    const WITHIN_MM: f64 = measure::COARSEST_EDGE_FOR_COVER_MM;
    type Cell = [i64; 3];
    let cell = |p: &Point3<f64>| <[f64; 3]>::from(p.coords).map(|c| (c / WITHIN_MM).floor() as i64);
    let Ok(cover) = &measurement.cover else {
        return vec![None; tray.vertices().len()];
    };
    let places = (measurement.spots.iter().zip(&measurement.on_tray))
        .filter(|(spot, _)| spot.stop.is_none())
        .filter_map(|(_, on_tray)| on_tray.as_ref())
        .flat_map(|on_tray| &on_tray.vertices);
    let mut known: HashMap<Cell, Vec<(Point3<f64>, f64)>> = HashMap::new();
    for (vertex, place) in places {
        if let Some(mm) = cover.at_vertex_mm[*vertex as usize] {
            known.entry(cell(place)).or_default().push((*place, mm));
        }
    }
    let cells = known.keys();
    let box_of =
        |axis: usize, pick: fn(i64, i64) -> i64| cells.clone().map(|c| c[axis]).reduce(pick);
    let within = [0, 1, 2].map(|axis| {
        let (low, high) = (box_of(axis, i64::min)?, box_of(axis, i64::max)?);
        Some(low - 1..=high + 1)
    });
    let at = |vertex: &Point3<f64>| {
        let here = cell(vertex);
        let may_be_near = (within.iter().zip(&here))
            .all(|(within, at)| within.as_ref().is_some_and(|within| within.contains(at)));
        if !may_be_near {
            return None;
        }
        let beside = (0..27).map(|k| [k % 3 - 1, k / 3 % 3 - 1, k / 9 - 1]);
        let near = beside
            .filter_map(|step| known.get(&std::array::from_fn(|axis| here[axis] + step[axis])))
            .flatten()
            .map(|(place, mm)| (nalgebra::distance_squared(place, vertex), mm))
            .filter(|(squared, _)| *squared <= WITHIN_MM * WITHIN_MM);
        near.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, mm)| *mm)
    };
    tray.vertices().iter().map(at).collect()
}
