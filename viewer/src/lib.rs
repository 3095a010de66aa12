//! The window: shows the result of a case on the impression itself and flies to
//! each finding. It shows figures and computes none.
//!
//! Everything but [`window`] is plain code: [`app::App`] is what is shown,
//! [`command::Command`] what can be asked for.

#![cfg_attr(test, allow(clippy::unwrap_used))]

mod acting;
mod along_border;
pub mod app;
pub mod border;
pub mod colours;
pub mod command;
pub mod desk;
pub mod drawing;
mod flight;
mod flying;
pub mod landmarks;
pub mod maps;
pub mod opened;
pub mod outline;
pub mod placement;
pub mod probe;
pub mod queue;
pub mod section;
pub mod settings;
pub mod strip;
#[cfg(test)]
mod testing;
pub mod ticks;
pub mod unrolled;
pub mod view;
pub mod window;
