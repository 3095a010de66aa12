//! Why a scan was refused, and what was odd about one that was not.
//!
//! Every text here is one line. Triangles, faces and lines are counted from 1;
//! vertex indices and bytes are the file's own, from 0. Nothing here ever
//! quotes a header, a comment or a name from inside the file: those can hold
//! the name of a patient.

use super::sniff::Foreign;
use super::{Format, MAX_FILE_BYTES, MAX_TRIANGLES, MAX_VERTICES, shown_path};
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
    #[error("may not be read (permission denied); ask for read access")]
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
        "declares {declared} vertices, but the last of them is none: its count does not fit its data; export the scan again"
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
        "{place}: a coordinate of {value:e} is out of all proportion; repair the scan and export it again"
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
            Self::SecondScan { .. } | Self::WrongCount { .. } => true,
            Self::TrailingBytes { bytes } => *bytes > PADDING,
            _ => false,
        }
    }
}
