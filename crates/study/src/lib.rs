//! Is the measuring good: repeated scans of one impression, scans of a reference
//! artefact, and the crossed gauge study, worked out as plain data.
//!
//! ```
//! use study::gauge::study_of_table;
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! # let folder = tempfile::tempdir()?;
//! let table = folder.path().join("study.csv");
//! let readings = "1,A,1.0\n1,A,1.1\n1,B,1.2\n1,B,1.3\n2,A,2.0\n2,A,2.1\n2,B,2.3\n2,B,2.2\n";
//! std::fs::write(&table, format!("part,operator,value\n{readings}"))?;
//!
//! let found = study_of_table(&table)?;
//! assert_eq!(found.studies[0].by_variance.size, [2, 2, 2]);
//! # Ok(())
//! # }
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

pub mod agreement;
pub mod artefact;
mod figure;
pub mod gauge;
pub mod repeats;

pub use figure::{FigureLimits, NamedFigure};
