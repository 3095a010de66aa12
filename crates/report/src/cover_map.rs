//! The cover map: the impression mesh coloured by its cover.

use crate::names;
use crate::result::CoverMap;
use crate::road::CheckedCase;
use judge::LimitKey;
use mesh::write::EncodeError;
use mesh::{Mesh, MeshError, ReadError};
use std::io;
use std::path::{Path, PathBuf};
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

/// A cover map, read back.
#[derive(Debug, Clone)]
pub struct CoveredMesh {
    /// The impression, in the numbers of its scan file.
    pub mesh: Mesh,
    /// Cover at each vertex, mm; `None` where it is not known.
    pub cover_mm: Vec<Option<f32>>,
}

/// Why a cover map could not be read back.
#[derive(Debug, Error)]
pub enum ReadMapError {
    /// It is no mesh.
    #[error(transparent)]
    Scan(#[from] ReadError),
    /// The system refused.
    #[error("{}: cannot be read ({source}); check the case again", mesh::read::shown_path(.path))]
    Io {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Another program wrote or changed it.
    #[error("{}: is not a cover map as archproof writes it; check the case again", mesh::read::shown_path(.path))]
    NotOurs {
        /// The file.
        path: PathBuf,
    },
}

/// Reads a cover map that [`crate::write_all`] wrote.
///
/// # Errors
/// When the file cannot be read, is no mesh, or holds no cover.
pub fn read_cover_map(path: &Path) -> Result<CoveredMesh, ReadMapError> {
    let mesh = mesh::read_scan(path)?.mesh;
    let bytes = std::fs::read(path).map_err(|source| ReadMapError::Io {
        path: path.to_owned(),
        source,
    })?;
    match cover_column(&bytes) {
        Some(cover_mm) if cover_mm.len() == mesh.vertices().len() => {
            Ok(CoveredMesh { mesh, cover_mm })
        }
        _ => Err(ReadMapError::NotOurs {
            path: path.to_owned(),
        }),
    }
}

/// The `cover_mm` of each vertex of a binary little-endian PLY file whose
/// vertices are of scalars alone, as [`encoded`] writes them.
fn cover_column(bytes: &[u8]) -> Option<Vec<Option<f32>>> {
    const END: &[u8] = b"end_header\n";
    let header_end = bytes.windows(END.len()).position(|w| w == END)? + END.len();
    let header = std::str::from_utf8(&bytes[..header_end]).ok()?;
    let mut lines = header.lines();
    let binary = lines.by_ref().nth(1)? == "format binary_little_endian 1.0";
    let count: usize = lines.find_map(|line| line.strip_prefix("element vertex ")?.parse().ok())?;
    let mut stride = 0;
    let mut at = None;
    for line in lines.take_while(|line| !line.starts_with("element ")) {
        let mut words = line.split(' ').skip(1);
        let size = match words.next()? {
            "uchar" => 1,
            "float" => 4,
            "double" => 8,
            _ => return None,
        };
        if words.next()? == "cover_mm" && size == 4 {
            at = Some(stride);
        }
        stride += size;
    }
    let (at, records) = (at?, bytes[header_end..].get(..count.checked_mul(stride)?)?);
    let cover = |record: &[u8]| {
        let mm = f32::from_le_bytes(record[at..at + 4].try_into().ok()?);
        Some(mm).filter(|mm| mm.is_finite())
    };
    binary.then(|| records.chunks_exact(stride).map(cover).collect())
}

fn colour(cover_mm: f64, from_mm: f64, to_mm: f64) -> [u8; 3] {
    let share = ((cover_mm - from_mm) / (to_mm - from_mm)).clamp(0.0, 1.0);
    colorous::VIRIDIS.eval_continuous(share).as_array()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cover_map_is_read_back_as_it_was_measured() {
        let folder = tempfile::tempdir().unwrap();
        let checked = crate::testing::checked_with_spots();
        let path = folder.path().join("cover.ply");
        std::fs::write(&path, encoded(&checked, 0).unwrap().unwrap()).unwrap();
        let map = read_cover_map(&path).unwrap();
        let cover = checked.impressions[0].measurement.cover.as_ref().unwrap();
        let measured: Vec<Option<f32>> = cover
            .at_vertex_mm
            .iter()
            .map(|mm| mm.map(|mm| mm as f32))
            .collect();
        assert_eq!(map.cover_mm, measured);
        assert_eq!(
            map.mesh.vertices(),
            checked.impressions[0].scan.mesh.vertices()
        );

        mesh::write::write_ply(&path, &map.mesh).unwrap();
        let error = read_cover_map(&path).unwrap_err().to_string();
        assert!(error.contains("is not a cover map"), "{error}");
    }

    // The ends of the published viridis table.
    #[test]
    fn the_scale_is_viridis_from_dark_to_bright() {
        assert_eq!(colour(0.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(-1.0, 0.0, 3.0), [68, 1, 84]);
        assert_eq!(colour(3.0, 0.0, 3.0), [253, 231, 37]);
        assert_eq!(colour(9.0, 0.0, 3.0), [253, 231, 37]);
    }
}
