//! Why a scan was refused.
//!
//! Every text here is one line. Triangles, faces and lines are counted from 1;
//! vertex indices and bytes are the file's own, from 0. Nothing here ever
//! quotes a header, a comment or a name from inside the file: those can hold
//! the name of a patient.

use super::foreign::Foreign;
use super::limits::{MAX_FILE_BYTES, MAX_TRIANGLES, MAX_VERTICES};
use super::shown::shown_path;
use crate::MeshError;
use std::fmt;
use std::path::PathBuf;
use thiserror::Error;

/// Why a file could not be read; its text is one line for people: the file,
/// what is wrong, where, and what to do.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum ReadError {
    /// The bytes could not be had.
    #[error("{}: {reason}", shown_path(.path))]
    Open {
        /// The file.
        path: PathBuf,
        /// What is in the way.
        reason: OpenError,
    },
    /// The bytes are not a surface.
    #[error("{}: {reason}", shown_path(.path))]
    Content {
        /// The file.
        path: PathBuf,
        /// What is wrong with them.
        reason: ParseError,
    },
}

impl ReadError {
    /// What is wrong and what to do, without the file's name.
    #[must_use]
    pub fn reason(&self) -> String {
        match self {
            Self::Open { reason, .. } => reason.to_string(),
            Self::Content { reason, .. } => reason.to_string(),
        }
    }

    /// Whether the bytes could not be had, which may be otherwise another time.
    #[must_use]
    pub fn may_pass(&self) -> bool {
        matches!(self, Self::Open { .. })
    }

    /// The file that was refused.
    #[must_use]
    pub fn path(&self) -> &std::path::Path {
        match self {
            Self::Open { path, .. } | Self::Content { path, .. } => path,
        }
    }
}

/// Why the bytes of a file could not be had.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum OpenError {
    /// Nothing has this name.
    #[error("there is no such file; check the name")]
    Missing,
    /// A symbolic link to nothing.
    #[error("is a link to a file that does not exist; give the scan itself")]
    DanglingLink,
    /// A symbolic link that leads back to itself.
    #[error("is a link that leads round in a loop; give the scan itself")]
    LinkLoop,
    /// A folder.
    #[error("is a folder; give one scan file")]
    Directory,
    /// A device, a pipe or a socket.
    #[error("is not an ordinary file (a device, pipe or socket); give a scan file")]
    Special,
    /// The user may not read it.
    #[error("cannot be read: permission denied; ask for read access")]
    PermissionDenied,
    /// More bytes than are ever read.
    #[error(
        "has {0} bytes, more than the {max} that are read; export the scan with fewer triangles",
        max = MAX_FILE_BYTES
    )]
    TooLarge(u64),
    /// The file's size changed between opening and the last byte.
    #[error(
        "changed while it was being read ({before} bytes, then {after}); wait until it has been copied"
    )]
    Changed {
        /// Size when opened, bytes.
        before: u64,
        /// Size found, bytes.
        after: u64,
    },
    /// Anything else that the system reports.
    #[error("could not be read ({0}); check the disk or the connection")]
    Io(std::io::Error),
}

/// Where in a file something is wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// A line of a text file, from 1.
    Line(u64),
    /// A triangle of a binary STL, from 1, and the byte where its record begins.
    Triangle {
        /// Triangle number, from 1.
        number: u64,
        /// Byte, from 0.
        byte: u64,
    },
    /// A byte of a binary file, from 0.
    Byte(u64),
    /// A vertex by its index in the file, from 0.
    Vertex(u64),
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Line(line) => write!(f, "line {line}"),
            Self::Triangle { number, byte } => write!(f, "triangle {number} (byte {byte})"),
            Self::Byte(byte) => write!(f, "byte {byte}"),
            Self::Vertex(index) => write!(f, "vertex {index}"),
        }
    }
}

/// Why bytes are not a surface.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum ParseError {
    /// No bytes.
    #[error("is empty; export the scan again")]
    Empty,
    /// Too few bytes for any format.
    #[error("has only {bytes} bytes, too few for a scan; export the scan again")]
    TooShort {
        /// Size of the file.
        bytes: usize,
    },
    /// Some other kind of file.
    #[error("is {what}; {}", .what.advice())]
    Foreign {
        /// The kind.
        what: Foreign,
    },
    /// No format that is known.
    #[error("is neither STL, PLY nor OBJ; export the scan as binary STL or PLY")]
    Unrecognised,
    /// Fewer items than the file says it has.
    #[error(
        "declares {declared} {items} but holds {held}: the file is cut short; export or copy it again"
    )]
    CutShort {
        /// Plural name of the items.
        items: &'static str,
        /// Number in the header.
        declared: u64,
        /// Whole items found.
        held: u64,
    },
    /// An STL that counts no triangles although data follow.
    #[error(
        "declares no triangles although {bytes} bytes follow, which are no whole number of triangles; export the scan again"
    )]
    NotCounted {
        /// Bytes after the header.
        bytes: u64,
    },
    /// A PLY whose last vertices are made of the first faces.
    #[error(
        "declares {declared} vertices but contains fewer: the header does not match the data; export the scan again"
    )]
    VertexCount {
        /// Number in the header.
        declared: u64,
    },
    /// Room for fewer items than the file says it has.
    #[error(
        "declares {declared} {items} but its size leaves room for at most {room}: the file is cut short or its header is damaged; export or copy it again"
    )]
    NoRoom {
        /// Plural name of the items.
        items: &'static str,
        /// Number in the header.
        declared: u64,
        /// Most that the bytes after the header could hold.
        room: u64,
    },
    /// A text file that stops inside an item.
    #[error("{place}: the file ends inside {item} {number}; export or copy it again")]
    EndsInside {
        /// Where it ends.
        place: Place,
        /// Name of the item.
        item: &'static str,
        /// Its number, from 1.
        number: u64,
    },
    /// A readable file without a surface.
    #[error("holds no triangles; export the scan as a mesh")]
    NoTriangles,
    /// Triangles, but each of them has lost its area.
    #[error("holds {dropped} triangles, none with three different corners; export the scan again")]
    OnlyDegenerate {
        /// How many there were.
        dropped: u64,
    },
    /// Points without triangles.
    #[error("is a point cloud ({points} points, no triangles); export a mesh")]
    PointCloud {
        /// How many points.
        points: u64,
    },
    /// A coordinate that is NaN or infinite.
    #[error("{place}: a coordinate is not a finite number; repair the scan and export it again")]
    NotFinite {
        /// Where.
        place: Place,
    },
    /// A coordinate that no scan has.
    #[error(
        "{place}: the coordinate {value:e} is far outside any plausible scan; repair the scan and export it again"
    )]
    OutOfProportion {
        /// Where.
        place: Place,
        /// The coordinate, in the file's unit.
        value: f64,
    },
    /// Numbers written with a comma.
    #[error(
        "{place}: a number with a decimal comma; export again with decimal points (set the exporting program to English numbers)"
    )]
    DecimalComma {
        /// Where.
        place: Place,
    },
    /// Something else where a number belongs.
    #[error(
        "{place}: something that is not a number where a number belongs; export the scan again"
    )]
    NotANumber {
        /// Where.
        place: Place,
    },
    /// A number that is not whole, or out of its type's range.
    #[error("{place}: {problem}; export the scan again")]
    BadNumber {
        /// Where.
        place: Place,
        /// What is wrong with it.
        problem: &'static str,
    },
    /// Another word than the format allows.
    #[error("{place}: {expected} expected; export the scan again")]
    Expected {
        /// Where.
        place: Place,
        /// What belongs there.
        expected: &'static str,
    },
    /// An ASCII STL facet that is no triangle.
    #[error("{place}: triangle {triangle} has {corners} corners, not 3; export the scan again")]
    Corners {
        /// Where.
        place: Place,
        /// Its number, from 1.
        triangle: u64,
        /// How many corners it has.
        corners: u64,
    },
    /// A PLY header that cannot be followed.
    #[error("{place}: in the PLY header, {problem}; export the scan again")]
    Header {
        /// Where.
        place: Place,
        /// What is wrong.
        problem: &'static str,
    },
    /// A face that names a vertex that is not there.
    #[error(
        "{place}: face {face} refers to vertex {index}, but the file has {vertices} vertices; export the scan again"
    )]
    IndexOutOfRange {
        /// Where.
        place: Place,
        /// Face number, from 1.
        face: u64,
        /// The index as it stands in the file.
        index: i64,
        /// How many vertices there are.
        vertices: u64,
    },
    /// A list longer than the rest of the file.
    #[error(
        "{place}: a list of {length} values, more than the rest of the file can hold; export or copy it again"
    )]
    ListTooLong {
        /// Where.
        place: Place,
        /// Its declared length.
        length: u64,
    },
    /// More triangles than are ever read.
    #[error(
        "holds more than the {max} triangles that are read; export the scan with fewer",
        max = MAX_TRIANGLES
    )]
    TooManyTriangles,
    /// More vertices than are ever read.
    #[error(
        "holds more than the {max} vertices that are read; export the scan with fewer",
        max = MAX_VERTICES
    )]
    TooManyVertices,
    /// The parts do not make a mesh.
    #[error("{0}; export the scan again")]
    Mesh(#[from] MeshError),
}
