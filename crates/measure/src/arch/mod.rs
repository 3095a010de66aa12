//! The arch: its measures, its zones, and which surface faced the tissue.

pub(crate) mod tissue_side;
pub(crate) mod zones;
