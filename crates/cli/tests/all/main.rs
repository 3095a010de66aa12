//! The command, run as a user runs it. One program: each one more would be linked anew.

mod agreement;
mod artefact;
mod bad_input;
mod batch;
mod border_road;
mod browser;
mod common;
mod drift;
mod gauge;
mod in_transit;
mod installed;
mod intake;
mod interrupted;
mod judge;
mod language;
mod language_of_errors;
mod questions;
mod repeat;
mod report_in_browser;
mod report_turns;
mod return_note;
mod shelf;
mod sides;
mod start;
mod view;
mod whole_road;
