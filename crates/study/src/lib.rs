//! Is the measuring good: repeated scans of one impression, scans of a reference
//! artefact, and the crossed gauge study, worked out as plain data.

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

pub mod artefact;
mod figure;
pub mod gauge;
pub mod repeats;

pub use figure::NamedFigure;
