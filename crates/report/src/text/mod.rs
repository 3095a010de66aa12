//! How numbers and words are put.

pub(crate) mod again;
pub(crate) mod agreement;
pub(crate) mod artefact;
pub(crate) mod columns;
pub(crate) mod compared;
pub(crate) mod control;
pub(crate) mod facing;
pub mod figures;
pub(crate) mod format;
pub(crate) mod gauge;
pub(crate) mod headline;
pub(crate) mod inspection;
mod lists;
pub(crate) mod material_added;
pub(crate) mod measured;
pub(crate) mod names;
pub(crate) mod next_tray;
mod of_impression;
pub(crate) mod repeat;
pub(crate) mod rounding;
pub(crate) mod safety;
pub(crate) mod shelf_fit;
pub(crate) mod steps;
pub mod summary;
pub(crate) mod times;
pub mod words;
