//! The surface file of an impression: its mesh with figures at each vertex,
//! coloured by its cover where that was measured (the cover map).

use super::coloured_mesh::{MapError, colours, column};
use crate::result::{CoverMap, parts};
use check::CheckedCase;
use measure::VertexPlace;

/// The surface of an impression as the bytes of a PLY file: the mesh in the
/// numbers of its scan file, with figures at each vertex that are NaN where
/// they are not known: `cover_mm`, by which it is coloured; `tray_share`, how far
/// its colour is the tray's; `part`, a number in
/// [`SurfaceFile::parts`](crate::result::SurfaceFile); `station`, a number in the border's stations.
/// `None` where the scan shows no impression.
pub(crate) fn encoded(
    checked: &CheckedCase,
    impression: usize,
) -> Result<Option<Vec<u8>>, MapError> {
    let one = &checked.impressions[impression];
    let measurement = &one.measurement;
    if measurement.frame.is_err() {
        return Ok(None);
    }
    let mut mesh = one.scan.mesh.scaled(1.0 / one.scan.unit.unit().in_mm());
    let parts = parts(measurement);
    let number = |place: &VertexPlace| parts.binary_search(&(place.zone, place.side)).ok();
    let numbers = |of: &dyn Fn(&VertexPlace) -> Option<usize>| -> Vec<f32> {
        let places = measurement.places.iter();
        places
            .map(|place| place.as_ref().and_then(of).map_or(f32::NAN, |n| n as f32))
            .collect()
    };
    let (part, station) = (numbers(&number), numbers(&|place| place.station));
    let mut figures: Vec<(&str, &[f32])> = Vec::new();
    let (cover_mm, tray_share): (Vec<f32>, Vec<f32>);
    if let Ok(cover) = &measurement.cover {
        let map = CoverMap::of_cover(checked, impression);
        let colours = colours(&cover.at_vertex_mm, map.from_mm, map.to_mm);
        mesh = mesh.with_colours(Some(colours))?;
        cover_mm = column(&cover.at_vertex_mm);
        figures.push(("cover_mm", &cover_mm));
    }
    if let Some(Ok(colour)) = &measurement.colour {
        tray_share = column(&colour.at_vertex);
        figures.push(("tray_share", &tray_share));
    }
    figures.extend([("part", part.as_slice()), ("station", station.as_slice())]);
    Ok(Some(mesh::write::encode_ply(&mesh, &figures)?))
}
