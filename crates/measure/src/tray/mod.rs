//! The tray: where it lies, and why its scan does not fit.

mod figures;
mod fit;
mod limb_bends;
mod mismatch;
mod parts;
mod pieces;
mod placing;
mod relieved;
mod shelf;

pub use figures::{
    COARSEST_EDGE_FOR_COVER_MM, LimbBend, PiecesNotPlaced, TrayNotPlaced, TrayRegistration,
};
pub use fit::{
    Clearance, EdgeToBorder, FitShown, ShelfFit, Touch, TrayInMouth, TraySuits,
    WANTED_CLEARANCE_MM, fit, fit_shown,
};
pub(crate) use limb_bends::limb_bends;
pub use parts::{JoinedParts, LaidPart};
pub use pieces::{AssembledTray, TrayJoint};
pub use placing::PreparedTray;
pub(crate) use placing::{LocalTray, PlacedTray, place};
pub use relieved::{NotRelieved, PlaceRelieved, Relaid, relaid};
pub(crate) use shelf::choose;
pub use shelf::{ChosenTray, ShelfTray, TrayTrial};
