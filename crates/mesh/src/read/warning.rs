//! What was odd about a scan that could be read all the same.
//!
//! As in refusals, nothing is ever quoted from inside the file.

use super::format::Format;
use thiserror::Error;

/// Most bytes after the end of a scan that pass for padding: a block of a disk.
const PADDING: u64 = 4096;

/// Something odd in a file that could be read all the same; its text is one
/// line, without the file's name.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum ReadWarning {
    /// The name says one format and the contents another.
    #[error("is {} although its name ends in .{named}; the contents were believed", .format.name())]
    WrongExtension {
        /// Extension of the name, lower case.
        named: &'static str,
        /// What the contents are.
        format: Format,
    },
    /// A byte order mark before the word `ply`, which should come first.
    #[error("begins with a UTF-8 byte order mark; it was passed over")]
    ByteOrderMark,
    /// Bytes after the last item.
    #[error("{} after the end of the scan left out", counted(*.bytes, "byte"))]
    TrailingBytes {
        /// How many.
        bytes: u64,
    },
    /// Lines of an ASCII PLY with more numbers than the header declares.
    #[error("lines hold more numbers than the header declares; these were left out")]
    SurplusValues,
    /// A whole further file after the first.
    #[error(
        "a second scan of {} follows in the same file and was left out; give each scan its own file",
        counted(*.triangles, "triangle")
    )]
    SecondScan {
        /// Triangles in the second.
        triangles: u64,
    },
    /// An STL whose count is not the one that its size gives.
    #[error(
        "the header declares {declared} triangles but exactly {held} are there; all {held} were read"
    )]
    WrongCount {
        /// Number in the header.
        declared: u64,
        /// Number that the size gives.
        held: u64,
    },
    /// An ASCII STL that stops without its closing line.
    #[error("has no closing 'endsolid' line; the file may be cut short after its last triangle")]
    NoEndSolid,
    /// Several bodies in one STL.
    #[error("{solids} solids in one file were read as one scan")]
    SeveralSolids {
        /// How many.
        solids: u64,
    },
    /// Faces of fewer than three corners.
    #[error("{} with fewer than 3 corners left out", counted(*.count, "face"))]
    FacesWithoutArea {
        /// How many.
        count: u64,
    },
    /// Triangles two of whose corners are one vertex.
    #[error("{} with two equal corners left out", counted(*.count, "triangle"))]
    RepeatedCorners {
        /// How many.
        count: u64,
    },
    /// Triangles with the same three corners as an earlier one.
    #[error(
        "{} exactly on another one left out ({turned} facing the other way)",
        counted(*.count, "triangle")
    )]
    DuplicateTriangles {
        /// How many were dropped.
        count: u64,
        /// How many of them were wound the other way.
        turned: u64,
    },
    /// Vertices that no triangle uses.
    #[error("{count} of {of} vertices left out, which belong to no triangle")]
    UnusedVertices {
        /// How many.
        count: u64,
        /// How many there were in all.
        of: u64,
    },
    /// Triangles that shared no corner until near ones were joined.
    #[error(
        "the triangles did not share their corners: {joined} corners were joined to another within {tolerance:.2e} (file units)"
    )]
    JoinedNearCorners {
        /// How many corners became another.
        joined: u64,
        /// Greatest distance, in the file's unit.
        tolerance: f64,
    },
    /// Coordinates too far from the origin for their number of digits.
    #[error(
        "coordinates near {largest:.3e} can only be stored in steps of {step:.2e} (file units), coarse for a scan {size:.3e} long; export it nearer to the origin"
    )]
    CoarseCoordinates {
        /// Greatest coordinate, in the file's unit.
        largest: f64,
        /// Distance between neighbouring numbers there.
        step: f64,
        /// Diagonal of the scan's box.
        size: f64,
    },
    /// Stored normals that face the other way than their triangles.
    #[error(
        "its stored normals face the other way than its triangles: it was turned inside out or mirrored"
    )]
    NormalsAgainstTriangles,
    /// Coordinates stored as whole numbers.
    #[error("coordinates are stored as whole numbers, in steps of 1; check the unit")]
    WholeNumbers,
    /// Colour that is given per face.
    #[error("colour is given per face, not per vertex, and was not used")]
    FaceColours,
    /// Colour that is in a picture beside the file.
    #[error("colour is in a picture beside the file and was not used")]
    TexturePicture,
}

fn counted(count: u64, one: &str) -> String {
    format!("{count} {one}{}", if count == 1 { "" } else { "s" })
}

impl ReadWarning {
    /// Whether the file could mean two things, so that nothing should be
    /// judged until somebody has said which.
    #[must_use]
    pub fn asks(&self) -> bool {
        match self {
            Self::SecondScan { .. } | Self::WrongCount { .. } | Self::NormalsAgainstTriangles => {
                true
            }
            Self::TrailingBytes { bytes } => *bytes > PADDING,
            _ => false,
        }
    }
}
