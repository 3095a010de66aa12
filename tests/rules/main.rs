//! Rules of the house: each file here holds the sources against one of them.

#![allow(clippy::unwrap_used, reason = "tests")]

mod arrows;
mod circles;
mod command_line;
mod common;
mod copied_data;
mod files;
mod functions;
mod json;
mod limits;
mod lints;
mod measuring;
mod network;
mod one_set;
mod printing;
mod rust_version;
mod top_level;
