//! Voids, nodules, folds and holes of the tissue surface.
//!
//! A void is a pit that trapped air left, a nodule a bump; both are parts of a
//! ball, more or less, and meet the surface in a sharp rim. A fold is a long,
//! narrow, steep groove. A hole is a place where nothing was scanned.
//!
//! Places are proposed where the surface departs from a robust smooth surface
//! (quadrics of three sizes) and then verified one by one: their surroundings
//! are fitted anew without them, along the crest where a ridge is too sharp for a
//! quadric, and profiles with a sharp rim must explain what is left far better than
//! profiles that fade out as the hollows and pimples of the mucosa do. Proposing
//! alone would report rugae, papilla, foveae, pads and frena by the hundred.

mod background;
mod candidates;
mod find;
mod folds;
mod holes;
mod profile;
mod quadric;
mod surface;
mod verify;

pub(crate) use find::{find, least_across_mm, least_depth_mm};
