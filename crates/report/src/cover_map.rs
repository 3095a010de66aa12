//! The surface file of an impression: its mesh with figures at each vertex,
//! coloured by its cover where that was measured (the cover map).

use crate::names;
use crate::result::{ArchPart, CoverMap, SurfaceFile};
use check::CheckedCase;
use judge::LimitKey;
use judge::words;
use measure::{ImpressionMeasurement, Side, VertexPlace, Zone};
use mesh::MeshError;
use mesh::write::EncodeError;
use std::collections::BTreeSet;
use thiserror::Error;

/// Colour where cover is not known: off the tissue surface.
pub(crate) const NEUTRAL: [u8; 3] = [176, 176, 176];

/// Why a cover map could not be made.
#[derive(Debug, Error)]
pub enum MapError {
    /// Cover is not known for as many vertices as there are.
    #[error(transparent)]
    Mesh(#[from] MeshError),
    /// It does not fit into a PLY file.
    #[error(transparent)]
    Encode(#[from] EncodeError),
}

/// How the cover map of an impression is called and coloured.
pub(crate) fn described(checked: &CheckedCase, impression: usize) -> CoverMap {
    CoverMap {
        file: format!("cover-{}.ply", names::impression(checked, impression)),
        colours: "viridis".to_owned(),
        from_mm: 0.0,
        to_mm: 3.0 * checked.protocol.value(LimitKey::ThinCover),
    }
}

/// The surface file of an impression; `None` where its scan shows something else.
pub(crate) fn surface_file(checked: &CheckedCase, impression: usize) -> Option<SurfaceFile> {
    let measurement = &checked.impressions[impression].measurement;
    measurement.frame.as_ref().ok()?;
    Some(SurfaceFile {
        file: match &measurement.cover {
            Ok(_) => described(checked, impression).file,
            Err(_) => format!("surface-{}.ply", names::impression(checked, impression)),
        },
        parts: parts(measurement)
            .into_iter()
            .map(|(zone, side)| ArchPart {
                zone: words::zone(zone).to_owned(),
                side: side.map(Into::into),
            })
            .collect(),
    })
}

/// Every part of the arch that has a vertex, in the order in which they are
/// numbered.
fn parts(measurement: &ImpressionMeasurement) -> Vec<(Zone, Option<Side>)> {
    let parts: BTreeSet<_> = measurement.places.iter().flatten().map(part).collect();
    parts.into_iter().collect()
}

fn part(place: &VertexPlace) -> (Zone, Option<Side>) {
    (place.zone, place.side)
}

/// The surface of an impression as the bytes of a PLY file: the mesh in the
/// numbers of its scan file, with figures at each vertex that are NaN where
/// they are not known: `cover_mm`, by which it is coloured; `tray_share`, how far
/// its colour is the tray's; `part`, a number in
/// [`SurfaceFile::parts`]; `station`, a number in the border's stations.
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
    let number = |place: &VertexPlace| parts.binary_search(&part(place)).ok();
    let numbers = |of: &dyn Fn(&VertexPlace) -> Option<usize>| -> Vec<f32> {
        let places = measurement.places.iter();
        places
            .map(|place| place.as_ref().and_then(of).map_or(f32::NAN, |n| n as f32))
            .collect()
    };
    let (part, station) = (numbers(&number), numbers(&|place| place.station));
    let mut figures: Vec<(&str, &[f32])> = Vec::new();
    let (cover_mm, tray_share): (Vec<f32>, Vec<f32>);
    let known = |values: &[Option<f64>]| -> Vec<f32> {
        let values = values.iter();
        values
            .map(|value| value.map_or(f32::NAN, |v| v as f32))
            .collect()
    };
    if let Ok(cover) = &measurement.cover {
        let map = described(checked, impression);
        let colours = cover
            .at_vertex_mm
            .iter()
            .map(|cover| cover.map_or(NEUTRAL, |mm| colour(mm, map.from_mm, map.to_mm)))
            .collect();
        mesh = mesh.with_colours(Some(colours))?;
        cover_mm = known(&cover.at_vertex_mm);
        figures.push(("cover_mm", &cover_mm));
    }
    if let Some(Ok(colour)) = &measurement.colour {
        tray_share = known(&colour.at_vertex);
        figures.push(("tray_share", &tray_share));
    }
    figures.extend([("part", part.as_slice()), ("station", station.as_slice())]);
    Ok(Some(mesh::write::encode_ply(&mesh, &figures)?))
}

pub(crate) fn colour(cover_mm: f64, from_mm: f64, to_mm: f64) -> [u8; 3] {
    let share = ((cover_mm - from_mm) / (to_mm - from_mm)).clamp(0.0, 1.0);
    colorous::VIRIDIS.eval_continuous(share).as_array()
}

#[cfg(test)]
mod tests {
    use super::*;

    // The ends of the published viridis table.
    #[test]
    fn the_scale_is_viridis_from_dark_to_bright() {
        assert_eq!(colour(0.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(-1.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(3.0, 0.0, 3.0), [253, 231, 37]);
        assert_eq!(colour(9.0, 0.0, 3.0), [253, 231, 37]);
    }
}
