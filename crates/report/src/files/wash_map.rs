//! The wash map: the wash's mesh coloured by its thickness over the first pass.

use super::coloured_mesh::{MapError, colours, column};
use crate::result::CoverMap;
use check::CheckedCase;

/// The wash map of a wash as the bytes of a PLY file, in the numbers of its scan
/// file, with the thickness `wash_mm` at each vertex: NaN where it is not known.
/// `None` where it was not measured.
pub(crate) fn encoded(
    checked: &CheckedCase,
    impression: usize,
) -> Result<Option<Vec<u8>>, MapError> {
    let one = &checked.impressions[impression];
    let Some(Ok(wash)) = &one.measurement.wash else {
        return Ok(None);
    };
    let map = CoverMap::of_wash(checked, impression);
    let colours = colours(&wash.at_vertex_mm, map.from_mm, map.to_mm);
    let wash_mm = column(&wash.at_vertex_mm);
    let mesh = one.scan.mesh.scaled(1.0 / one.scan.unit.unit().in_mm());
    let mesh = mesh.with_colours(Some(colours))?;
    Ok(Some(mesh::write::encode_ply(
        &mesh,
        &[("wash_mm", &wash_mm)],
    )?))
}
