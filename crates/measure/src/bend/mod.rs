//! How one scan is bent beside another of the same thing: a tray of plastic that yielded
//! while it was seated or taken out, or an impression that changed on its way.

mod fitting;
mod limbs;

pub(crate) use fitting::{BentPose, FROM_FAR_MM, FROM_NEAR_MM, fitted};
pub(crate) use limbs::{Limb, Limbs};
