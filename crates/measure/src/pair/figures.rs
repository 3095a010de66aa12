//! What two passes of one impression show together: plain data.

use super::wash::{NoWash, Wash};
use crate::border::{Measured, NoBorder};
use crate::not_an_impression::NotAnImpression;
use messages::{Message, Value, message, said_by_the_catalogue};

/// Why two passes could not be laid on one another.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoPair {
    NotAnImpression(NotAnImpression),
    DoesNotFit { fitting_percent: f64 },
    Ambiguous { spread_mm: f64 },
    Mirrored,
}

impl NoPair {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NotAnImpression(what) => message!("reason-not-an-impression", what = what),
            Self::DoesNotFit { fitting_percent } => message!(
                "no-pair-does-not-fit",
                share = Value::number(*fitting_percent, 0)
            ),
            Self::Ambiguous { spread_mm } => {
                message!("no-pair-ambiguous", spread = Value::number(*spread_mm, 2))
            }
            Self::Mirrored => message!("no-pair-mirrored"),
        }
    }
}

said_by_the_catalogue!(NoPair);

/// Why the borders of two passes could not be compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoBorderChange {
    FirstPass(NoBorder),
    Wash(NoBorder),
}

impl NoBorderChange {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::FirstPass(why) => message!("no-border-before-the-wash", why = why),
            Self::Wash(why) => why.message(),
        }
    }
}

said_by_the_catalogue!(NoBorderChange);

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
