//! The figures that this software promises, each asked of phantoms whose truth
//! is known by formula.
//!
//! Each function here is one promise: it takes the [`Population`] that it is
//! asked of, prints its figures and panics where one misses its bar. Every day
//! one mouth of each jaw is asked (`tests/one_mouth.rs` of the whole); the tests
//! of this crate ask many, as many of each jaw as `ARCHPROOF_SEEDS` says.
//!
//! ```text
//! ARCHPROOF_SEEDS=50 cargo test --workspace --test border -- --nocapture
//! cargo run -p archproof-promises --bin figures
//! ```
//!
//! A run that was stopped goes on where it stopped, and the second command puts
//! the figures into `FIGURES.md`.
#![warn(unreachable_pub)]
#![allow(clippy::print_stdout, reason = "the figures are what it is for")]

pub mod bare_edges;
pub mod bent_tray;
pub mod border;
pub mod border_change;
mod border_errors;
pub mod coarse_voids;
pub mod colour;
pub mod cover;
pub mod crest;
pub mod errors;
pub mod family;
pub mod family_faults;
pub mod family_figures;
pub mod figures;
pub mod frame;
pub mod intake;
pub mod jaws;
pub mod landmarks;
pub mod landmarks_lost;
pub mod on_tray;
pub mod outer_excess;
pub mod part_of_a_tray;
pub mod parts;
pub mod pieces;
mod population;
pub mod real_surfaces;
pub mod registration;
pub mod relief;
pub mod rows;
pub mod scanner_error;
pub mod shelf;
pub mod shelf_fit;
pub mod spots;
pub mod strips_beside;
pub mod tissue;
pub mod transit;
pub mod tray;
pub mod wash;
mod wash_pair;
pub mod wash_places;

pub use population::{Asked, Population};

/// A test for each promise named, asked of a population; or for each that needs
/// none.
#[macro_export]
macro_rules! ask {
    ($population:ident, $module:ident: $($promise:ident),+ $(,)?) => {$(
        #[test]
        fn $promise() {
            $crate::$module::$promise($crate::Population::$population);
        }
    )+};
    ($module:ident: $($promise:ident),+ $(,)?) => {$(
        #[test]
        fn $promise() {
            $crate::$module::$promise();
        }
    )+};
}
