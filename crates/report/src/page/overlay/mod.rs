//! Marks, scales and words over a picture, as SVG, so that they print sharp.

mod clearance;
mod labels;
mod marks;
mod scales;
mod sheet;
mod symbols;
mod views;

pub(super) use clearance::{InMouth, in_mouth};
pub(crate) use labels::apart;
pub(super) use marks::to_relieve;
pub(crate) use marks::{Kind, Mark, finding_marks};
pub(super) use marks::{MOST_MARKS, point_mm, radius_mm, stretch};
pub(super) use scales::colour_scale;
pub(super) use symbols::sample;
pub(crate) use views::telling;
pub(super) use views::{Marked, close, cover_levels, tray, view_name, wash, whole};
