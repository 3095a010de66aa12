//! The cover map: the impression mesh coloured by its cover.

use crate::names;
use crate::result::CoverMap;
use crate::road::CheckedCase;
use judge::LimitKey;
use mesh::MeshError;
use mesh::write::EncodeError;
use thiserror::Error;

/// Colour where cover is not known: off the tissue surface.
const NEUTRAL: [u8; 3] = [176, 176, 176];

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

/// The cover map of an impression as the bytes of a PLY file: the mesh in the
/// numbers of its scan file, coloured by cover, and the cover at each vertex,
/// mm: NaN where it is not known. `None` where cover was not measured.
pub(crate) fn encoded(
    checked: &CheckedCase,
    impression: usize,
) -> Result<Option<Vec<u8>>, MapError> {
    let one = &checked.impressions[impression];
    let Ok(cover) = &one.measurement.cover else {
        return Ok(None);
    };
    let map = described(checked, impression);
    let colours = cover
        .at_vertex_mm
        .iter()
        .map(|cover| cover.map_or(NEUTRAL, |mm| colour(mm, map.from_mm, map.to_mm)))
        .collect();
    let cover_mm: Vec<f32> = cover
        .at_vertex_mm
        .iter()
        .map(|cover| cover.map_or(f32::NAN, |mm| mm as f32))
        .collect();
    let mesh = one.scan.mesh.scaled(1.0 / one.scan.unit.unit().in_mm());
    let mesh = mesh.with_colours(Some(colours))?;
    Ok(Some(mesh::write::encode_ply(
        &mesh,
        &[("cover_mm", &cover_mm)],
    )?))
}

fn colour(cover_mm: f64, from_mm: f64, to_mm: f64) -> [u8; 3] {
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
