//! Reads a mesh with figures at its vertices back from a result folder.

use mesh::{Mesh, ReadError};
use std::collections::BTreeMap;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A mesh with named figures at its vertices.
#[derive(Debug, Clone, Default)]
pub struct FiguredMesh {
    /// The mesh, in the numbers of its file.
    pub mesh: Mesh,
    /// By name, a figure for each vertex; `None` where it is not known.
    pub figures: BTreeMap<String, Vec<Option<f32>>>,
}

/// Why a mesh with figures could not be read back.
#[derive(Debug, Error)]
pub enum ReadSurfaceError {
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
    #[error("{}: is not a surface as archproof writes it; check the case again", mesh::read::shown_path(.path))]
    NotOurs {
        /// The file.
        path: PathBuf,
    },
}

/// Reads a mesh with figures that [`crate::write_all`] wrote.
///
/// # Errors
/// When the file cannot be read, is no mesh, or holds no figures.
pub fn read_surface(path: &Path) -> Result<FiguredMesh, ReadSurfaceError> {
    let bytes = mesh::read::bounded(path, mesh::read::MAX_FILE_BYTES).map_err(|source| {
        ReadSurfaceError::Io {
            path: path.to_owned(),
            source,
        }
    })?;
    let (parsed, figures) = rayon::join(|| mesh::read::parse(&bytes), || columns(&bytes));
    let mesh = parsed
        .map_err(|reason| ReadError::Content {
            path: path.to_owned(),
            reason,
        })?
        .mesh;
    let fits = |figures: &BTreeMap<String, Vec<Option<f32>>>| {
        let all = mesh.vertices().len();
        figures.values().all(|values| values.len() == all)
    };
    match figures.filter(fits) {
        Some(figures) => Ok(FiguredMesh { mesh, figures }),
        None => Err(ReadSurfaceError::NotOurs {
            path: path.to_owned(),
        }),
    }
}

/// The figures of each vertex of a binary little-endian PLY file whose vertices
/// are of scalars alone: every `float` but the coordinates.
fn columns(bytes: &[u8]) -> Option<BTreeMap<String, Vec<Option<f32>>>> {
    const END: &[u8] = b"end_header\n";
    let header_end = bytes.windows(END.len()).position(|w| w == END)? + END.len();
    let header = std::str::from_utf8(&bytes[..header_end]).ok()?;
    let mut lines = header.lines();
    let binary = lines.by_ref().nth(1)? == "format binary_little_endian 1.0";
    let count: usize = lines.find_map(|line| line.strip_prefix("element vertex ")?.parse().ok())?;
    let mut stride = 0;
    let mut places = Vec::new();
    for line in lines.take_while(|line| line.starts_with("property ")) {
        let mut words = line.split(' ').skip(1);
        let size = match words.next()? {
            "uchar" => 1,
            "float" => 4,
            "double" => 8,
            _ => return None,
        };
        let name = words.next()?;
        if size == 4 && !["x", "y", "z"].contains(&name) {
            places.push((name.to_owned(), stride));
        }
        stride += size;
    }
    let records = bytes[header_end..].get(..count.checked_mul(stride)?)?;
    let figure = |record: &[u8], at: usize| {
        let value = f32::from_le_bytes(record[at..at + 4].try_into().ok()?);
        Some(value).filter(|value| value.is_finite())
    };
    let column = |at: usize| {
        let records = records.chunks_exact(stride);
        records.map(|record| figure(record, at)).collect()
    };
    let named = places.into_iter().map(|(name, at)| (name, column(at)));
    (binary && stride > 0).then(|| named.collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::files::cover_map::encoded;
    use crate::result::SurfaceFile;

    #[test]
    fn a_surface_is_read_back_as_it_was_measured() {
        let folder = tempfile::tempdir().unwrap();
        let checked = crate::testing::checked_with_spots();
        let path = folder.path().join("cover.ply");
        std::fs::write(&path, encoded(&checked, 0).unwrap().unwrap()).unwrap();
        let read = read_surface(&path).unwrap();
        let measurement = checked.impressions[0].measured().unwrap();
        let cover = measurement.cover.as_ref().unwrap();
        let measured: Vec<Option<f32>> = cover
            .at_vertex_mm
            .iter()
            .map(|mm| mm.map(|mm| mm as f32))
            .collect();
        assert_eq!(read.figures["cover_mm"], measured);
        assert_eq!(read.figures["part"], [Some(1.0), Some(0.0), None]);
        assert_eq!(read.figures["station"], [None, Some(7.0), None]);
        assert_eq!(
            read.mesh.vertices(),
            checked.impressions[0].scan.mesh.vertices()
        );
        let named = SurfaceFile::of(&checked, 0).unwrap();
        let zones: Vec<&str> = named.parts.iter().map(|part| part.zone.as_str()).collect();
        assert_eq!(zones, ["labial flange", "residual ridge"]);
    }

    #[test]
    fn a_surface_too_large_to_be_one_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("cover.ply");
        let file = std::fs::File::create(&path).unwrap();
        file.set_len(mesh::read::MAX_FILE_BYTES + 1).unwrap();
        let why = read_surface(&path).unwrap_err().to_string();
        assert!(why.contains("larger than 4096 MiB"), "{why}");
    }

    #[test]
    fn what_is_no_surface_of_ours_is_refused_in_one_line() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("cover.ply");
        let refused = || read_surface(&path).unwrap_err().to_string();
        assert!(refused().contains("cannot be read"));
        std::fs::write(
            &path,
            "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\n\
             property float z\nelement face 1\nproperty list uchar int vertex_indices\n\
             end_header\n0 0 0\n1 0 0\n0 1 0\n3 0 1 2\n",
        )
        .unwrap();
        assert!(refused().contains("is not a surface"), "{}", refused());
    }
}
