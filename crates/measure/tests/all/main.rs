//! Measuring single phantoms and real surfaces; populations of mouths are asked in
//! `crates/promises`. One program: each one more would be linked anew.

mod accuracy;
mod intake;
mod tissue_stops;
mod unusual_scans;
