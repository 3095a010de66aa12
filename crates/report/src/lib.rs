//! Says what came of a case: the result file and its schema, the coloured cover
//! map, drawings, the HTML report, the terminal summary. Nothing is decided or measured here.
//!
//! [`check::check_case`] gives a checked case. [`result::assemble`] puts it into
//! the words of the contract, from which [`summary`] and [`write_all`] speak.

#![cfg_attr(test, allow(clippy::unwrap_used))]

pub mod artefact;
mod border_table;
mod cover_map;
mod drawing;
mod figures;
pub mod folder;
pub mod gauge;
mod inspection;
mod json;
mod names;
mod outputs;
mod page;
mod picture;
pub mod repeat;
pub mod result;
mod rounding;
pub mod summary;
mod surface;
#[cfg(test)]
mod testing;
mod told;
mod wash_map;

pub use cover_map::MapError;
pub use inspection::{Inspection, inspection_head};
pub use json::{json_text, schema_of, schema_text};
pub use names::{REPORT_FILE, plain};
pub use outputs::{
    RESULT_FILE, ReadResultError, WriteError, default_folder, read_result, result_json, write_all,
};
pub use summary::summary;
pub use surface::{FiguredMesh, ReadSurfaceError, read_surface};
