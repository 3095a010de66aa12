//! How a tray bent: a tray of plastic yields while it is seated or taken out, so
//! that the tray in the impression is not quite the tray that was scanned.

mod fitting;
mod limbs;

pub(super) use fitting::{BentPose, FROM_FAR_MM, FROM_NEAR_MM, fitted};
pub(super) use limbs::{Limb, Limbs};
