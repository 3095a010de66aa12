//! Reading and writing scans. One program: each one more would be linked anew.

mod bad_input;
mod common;
mod containers;
mod ply_spellings;
mod robustness;
mod round_trip;
mod spellings;
mod truncation;
