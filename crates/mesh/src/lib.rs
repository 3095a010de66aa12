//! A scan as data: reading and writing STL and PLY (and reading OBJ), indexed
//! triangles with optional colour, topology, integrity figures, and a spatial
//! index for nearest points and rays.
//!
//! Coordinates are `f64`. A [`Mesh`] itself knows no unit: a file's numbers
//! stay as they are until [`Mesh::scaled`] brings them to millimetres.

pub mod index;
pub mod integrity;
pub mod read;
pub mod topology;
mod triangles;
pub mod unit;
pub mod write;

pub use index::{Hit, Nearest, SpatialIndex};
pub use integrity::Integrity;
pub use read::{Format, ReadError, Scan, read_scan};
pub use topology::Topology;
pub use triangles::{Mesh, MeshError};
pub use unit::Unit;
