//! Drawings of the border as SVG: the unrolled chart and dimensioned sections.
//!
//! They must be read in grey and by the colour-blind: lines differ by dashes
//! and width, marks by shape, and everything is labelled where it is.

pub(crate) mod canvas;
mod chart;
pub(crate) mod control;
mod lanes;
mod locator;
mod plot;
mod rows;
pub(crate) mod scanning;
mod section;
mod section_table;
mod track;
mod words;

pub(crate) use chart::border_chart;
pub(crate) use locator::SIDE_LETTER;
pub(crate) use section::finding_section;

#[cfg(test)]
mod tests;
