//! Where the border stands lower than its neighbourhood: notches that frena
//! leave, and stretches that are short.

use super::figures::{BorderPart, Dip};
use super::station::Reached;

/// Dips of the flanges' borders.
pub fn dips(stations: &[Reached]) -> Vec<Dip> {
    let _ = (stations, BorderPart::Outer);
    Vec::new()
}
