//! The wash map: the wash's mesh coloured by its thickness over the first pass.

use crate::cover_map::{MapError, NEUTRAL, colour};
use crate::names;
use crate::result::CoverMap;
use check::CheckedCase;
use judge::LimitKey;

/// How the wash map of a wash is called and coloured.
pub(crate) fn described(checked: &CheckedCase, impression: usize) -> CoverMap {
    CoverMap {
        file: names::wash_map(checked, impression),
        colours: "viridis".to_owned(),
        from_mm: 0.0,
        to_mm: checked.protocol.value(LimitKey::WashMost),
    }
}

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
    let map = described(checked, impression);
    let colour = |mm: &Option<f64>| mm.map_or(NEUTRAL, |mm| colour(mm, map.from_mm, map.to_mm));
    let colours = wash.at_vertex_mm.iter().map(colour).collect();
    let wash_mm: Vec<f32> = (wash.at_vertex_mm.iter())
        .map(|value| value.map_or(f32::NAN, |mm| mm as f32))
        .collect();
    let mesh = one.scan.mesh.scaled(1.0 / one.scan.unit.unit().in_mm());
    let mesh = mesh.with_colours(Some(colours))?;
    Ok(Some(mesh::write::encode_ply(
        &mesh,
        &[("wash_mm", &wash_mm)],
    )?))
}
