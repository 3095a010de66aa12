//! What a scan is, before anything is measured of it.

mod first_look;
mod scan_pieces;

pub use first_look::{FirstLook, first_look};
pub(crate) use scan_pieces::{main_parts, two_scans};
