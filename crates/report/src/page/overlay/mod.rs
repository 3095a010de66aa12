//! Marks, scales and words over a picture, as SVG, so that they print sharp.

mod labels;
mod marks;
mod scales;
mod sheet;
mod symbols;
mod views;

pub(super) use symbols::sample;
pub(super) use views::{Marked, close, telling, wash, whole};
