//! What two passes of one impression show together: plain data.

use super::wash::{NoWash, Wash};
use crate::border::Measured;
use crate::not_an_impression::NotAnImpression;
use thiserror::Error;

/// Why two passes could not be laid on one another.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoPair {
    #[error("not an impression: {0}")]
    NotAnImpression(NotAnImpression),
    #[error(
        "the earlier impression does not fit on this one: only {fitting_percent:.0} % of it lies there"
    )]
    DoesNotFit { fitting_percent: f64 },
    #[error(
        "the earlier impression could be laid on this one in more than one way; they differ by {spread_mm:.2} mm"
    )]
    Ambiguous { spread_mm: f64 },
    #[error(
        "the earlier impression fits on this one only as in a mirror: one of the two scans is mirrored, or they are of two mouths"
    )]
    Mirrored,
}

/// What a first pass and its wash show together.
#[derive(Debug, Clone, PartialEq)]
pub struct PassPair {
    /// For each station of the wash's border, how much further along the seating
    /// axis it reaches than the first pass's, negative where it is lower; `None`
    /// across the back and where either was not scanned. Empty where either
    /// impression has no border.
    pub border_changes: Vec<Option<Measured>>,
    /// What the wash added.
    pub wash: Result<Wash, NoWash>,
}
