//! The tray: where it lies, and why its scan does not fit.

mod figures;
mod mismatch;
mod placing;

pub use figures::{COARSEST_EDGE_FOR_COVER_MM, TrayNotPlaced, TrayRegistration};
pub use placing::PreparedTray;
pub(crate) use placing::{LocalTray, PlacedTray, place};
