//! Formats of scan files.

/// Container and encoding of a scan file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// Binary STL.
    StlBinary,
    /// ASCII STL.
    StlAscii,
    /// Binary little-endian PLY.
    PlyBinaryLe,
    /// Binary big-endian PLY.
    PlyBinaryBe,
    /// ASCII PLY.
    PlyAscii,
    /// Wavefront OBJ, geometry only.
    Obj,
}

impl Format {
    /// Name for people.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::StlBinary => "binary STL",
            Self::StlAscii => "ASCII STL",
            Self::PlyBinaryLe => "binary little-endian PLY",
            Self::PlyBinaryBe => "binary big-endian PLY",
            Self::PlyAscii => "ASCII PLY",
            Self::Obj => "OBJ",
        }
    }

    /// Whether vertices are had from the corners of triangles, so that none is
    /// without a triangle.
    pub(super) fn numbers_corners_only(self) -> bool {
        matches!(self, Self::StlBinary | Self::StlAscii)
    }

    /// Extension of files of this format, lower case, without the dot.
    #[must_use]
    pub fn extension(self) -> &'static str {
        match self {
            Self::StlBinary | Self::StlAscii => "stl",
            Self::PlyBinaryLe | Self::PlyBinaryBe | Self::PlyAscii => "ply",
            Self::Obj => "obj",
        }
    }
}
