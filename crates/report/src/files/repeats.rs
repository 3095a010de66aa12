//! Repeated scans as files: their result, and a map of their spread.

use super::coloured_mesh::{MapError, colours, column};
use super::json::json_text;
use super::output::{WriteError, write_together};
use crate::studies::repeat::{RepeatResult, SPREAD_FILE};
use std::path::Path;
use study::repeats::Repeats;

/// Name of the result of repeated scans.
const REPEAT_FILE: &str = "repeat.json";

/// Writes `repeat.json` and the map into a folder, which is made if it is not
/// there. Gives the names of the files.
///
/// # Errors
/// When they cannot be written; earlier ones then stay as they were.
pub fn write_repeats(
    repeats: &Repeats<'_>,
    result: &RepeatResult,
    folder: &Path,
) -> Result<Vec<String>, WriteError> {
    let map = spread_map(repeats, result.spread.to_mm)?;
    let outputs = vec![
        (SPREAD_FILE.to_owned(), map),
        (REPEAT_FILE.to_owned(), json_text(result).into_bytes()),
    ];
    write_together(&outputs, folder)?;
    Ok(outputs.into_iter().map(|(name, _)| name).collect())
}

/// The map as the bytes of a PLY file: the first scan, in the numbers of its
/// file, with figures at each vertex that are NaN where they are not known.
fn spread_map(repeats: &Repeats<'_>, to_mm: f64) -> Result<Vec<u8>, MapError> {
    let local = &repeats.spread.local_sd_at_vertex_mm;
    let (sd_mm, local_sd_mm) = (column(&repeats.spread.sd_at_vertex_mm), column(local));
    let scan = &repeats.first.scan;
    let mesh = scan.mesh.scaled(1.0 / scan.unit.unit().in_mm());
    let mesh = mesh.with_colours(Some(colours(local, 0.0, to_mm)))?;
    let figures: [(&str, &[f32]); 2] = [("sd_mm", &sd_mm), ("local_sd_mm", &local_sd_mm)];
    Ok(mesh::write::encode_ply(&mesh, &figures)?)
}
