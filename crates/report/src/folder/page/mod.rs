//! The page over a folder of cases: one HTML file that needs no other.

mod cases;
mod charts;
mod control;
mod counts;
mod drift;
mod gathered;
mod html;

pub use gathered::Page;

/// Name of the page.
pub const PAGE_FILE: &str = "summary.html";
