//! Statistics of measuring, as plain functions over plain numbers: no file, no
//! unit and no limit is known here.

#![cfg_attr(test, allow(clippy::unwrap_used))]

pub mod control;
pub mod freedom;
pub mod gauge;
pub mod ranges;
pub mod repeatability;
mod spread;

pub use spread::{mean, pooled_sd, quantile, sd};
