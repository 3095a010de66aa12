//! The studies of the measuring itself in their JSON.

pub(crate) mod agreement;
pub(crate) mod artefact;
pub(crate) mod comparable;
pub(crate) mod control;
pub(crate) mod gauge;
pub(crate) mod inspection;
pub(crate) mod repeat;
pub(crate) mod shelf_fit;
