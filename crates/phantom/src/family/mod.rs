//! The broad family: mouths, trays and scans drawn from wide, stated ranges, so
//! that judgements can be tried on anatomy that they were not made from.

mod common;
pub(crate) mod drawn;
mod flange;
mod frena;
pub(crate) mod lower;
pub(crate) mod member;
pub(crate) mod notch;
mod palate;
pub(crate) mod ranges;
pub(crate) mod truth;
pub(crate) mod upper;
