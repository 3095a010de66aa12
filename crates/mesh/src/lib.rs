//! A scan as data: reading and writing STL and PLY (and reading OBJ), indexed
//! triangles with optional colour, topology, integrity figures, and a spatial
//! index for nearest points and rays.
//!
//! Coordinates are `f64`. A [`Mesh`] itself knows no unit: a file's numbers
//! stay as they are until [`Mesh::scaled`] brings them to millimetres.
//!
//! ```
//! use mesh::{Format, Mesh, SpatialIndex, read, write};
//! use nalgebra::Point3;
//!
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! let corners = [[0.0, 0.0, 0.0], [4.0, 0.0, 0.0], [0.0, 3.0, 0.0]].map(Point3::from);
//! let triangle = Mesh::new(corners.to_vec(), vec![[0, 1, 2]], None)?;
//! let scan = read::parse(&write::encode_stl(&triangle)?)?;
//! assert_eq!(scan.format, Format::StlBinary);
//! assert_eq!(scan.mesh.area(), 6.0);
//!
//! let index = SpatialIndex::new(&scan.mesh);
//! let nearest = index.nearest(&Point3::new(1.0, 1.0, 2.0), 5.0).ok_or("none within 5")?;
//! assert_eq!(nearest.distance, 2.0);
//! # Ok(())
//! # }
//! ```

#![warn(unreachable_pub)]

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
