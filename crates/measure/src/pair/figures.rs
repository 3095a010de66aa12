//! What two passes of one impression show together: plain data.

use super::wash::{NoWash, Wash};
use crate::border::{Measured, NoBorder};
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

/// Why the borders of two passes could not be compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoBorderChange {
    #[error("before the wash, {0}")]
    FirstPass(NoBorder),
    #[error(transparent)]
    Wash(NoBorder),
}

/// What a first pass and its wash show together.
#[derive(Debug, Clone, PartialEq)]
pub struct PassPair {
    /// For each station of the wash's border, how much further along the seating
    /// axis it reaches than the first pass's, negative where it is lower; `None`
    /// across the back and where either was not scanned.
    pub border_changes: Result<Vec<Option<Measured>>, NoBorderChange>,
    /// What the wash added.
    pub wash: Result<Wash, NoWash>,
}
