//! Geometry that knows no jaw: surfaces laid on one another, height maps,
//! fields on surfaces, patches, sections, fits, noise.
//!
//! Lengths are in mm. Nothing here reads a file or knows a limit.
//!
//! ```
//! use geometry::sampling::spread_over;
//! use geometry::{Laying, Target};
//! use mesh::Mesh;
//! use nalgebra::{Point3, Translation3};
//!
//! // A bent strip, and the same strip 2 mm higher.
//! let place = |i: u32, j: u32| {
//!     let (x, y) = (f64::from(i), f64::from(j));
//!     Point3::new(x, y, 0.02 * x * x + 0.01 * x * y)
//! };
//! let vertices = (0..20).flat_map(|i| (0..30).map(move |j| place(i, j))).collect();
//! let corner = |i: u32, j: u32| 30 * i + j;
//! let squares = (0..19).flat_map(|i| (0..29).map(move |j| (i, j)));
//! let triangles = squares
//!     .flat_map(|(i, j)| {
//!         let [a, b] = [corner(i, j), corner(i + 1, j)];
//!         [[a, b, b + 1], [a, b + 1, a + 1]]
//!     })
//!     .collect();
//! let strip = Mesh::new(vertices, triangles, None)?;
//! let raised = strip.moved(&Translation3::new(0.0, 0.0, 2.0).into());
//!
//! let points = spread_over(&strip, 500, |_| true);
//! let laid = Laying::by_share(0.9).lay(&points, &Target::new(&raised), &[], &|| {}).expect("it fits");
//! assert!((laid.target_from_source.translation.z - 2.0).abs() < 0.01);
//! # Ok::<(), mesh::MeshError>(())
//! ```

#![warn(unreachable_pub)]

pub mod circle;
pub mod closed_line;
pub mod double_layers;
pub mod field;
pub mod fit;
pub mod height_map;
pub mod joining;
mod laying;
pub mod noise;
pub mod order;
pub mod patches;
pub mod polyline;
pub mod registration;
pub mod sampling;
pub mod section;
pub mod signed_distance;
pub mod winding;

pub use laying::{Laying, NotLaid, Refined, lay_refined};
pub use registration::{NotRegistered, Registered, Target};
