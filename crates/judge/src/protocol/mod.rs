//! The protocol: acceptance limits of one clinic or laboratory.
//!
//! The default stands in `default.toml` beside this file, each limit with its
//! source. A protocol file of one's own overrides single values of it:
//!
//! ```toml
//! name = "our laboratory"
//! [limits]
//! thin_cover_mm = { value = 1.2, level = "fail", source = "agreed with our clinics" }
//!
//! # What "archproof artefact --write scanner.toml" found of the scanner; it lies beside
//! # this file.
//! scanner = "scanner.toml"
//!
//! # The empty stock trays, each scanned once; a folder beside this file.
//! trays = "shelf"
//!
//! # A limit of the border can differ by zone.
//! [limits.flange_height_mm]
//! value = 4.0
//! zones = { tuberosity = 2.0, retromolar_pad = 0.0 }
//! ```

mod file;
mod limit;
mod possible;
mod sourced;

pub use file::{ProtocolError, ProtocolFault, ProtocolProblem};
pub use limit::{Limit, LimitKey};
pub use sourced::scanner_source;

use crate::scanner::Scanner;
use std::path::{Path, PathBuf};

/// Acceptance limits, complete, and the scanner.
#[derive(Debug, Clone, PartialEq)]
pub struct Protocol {
    name: String,
    scanner: Scanner,
    trays: Option<PathBuf>,
    /// One for each key, in the order of [`LimitKey::ALL`].
    limits: Vec<Limit>,
}

impl Protocol {
    /// What the protocol calls itself.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// What the scanner adds to lengths.
    #[must_use]
    pub fn scanner(&self) -> &Scanner {
        &self.scanner
    }

    /// Folder with the scans of the empty stock trays, where the protocol names one.
    #[must_use]
    pub fn trays(&self) -> Option<&Path> {
        self.trays.as_deref()
    }

    /// One limit.
    #[must_use]
    pub fn limit(&self, key: LimitKey) -> &Limit {
        &self.limits[key as usize]
    }

    /// Value of one limit, in the unit that its name ends with.
    #[must_use]
    pub fn value(&self, key: LimitKey) -> f64 {
        self.limit(key).value
    }

    /// Every limit with its key, in a fixed order.
    pub fn limits(&self) -> impl Iterator<Item = (LimitKey, &Limit)> {
        LimitKey::ALL.into_iter().zip(&self.limits)
    }
}
