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
//! # A limit of the border can differ by zone.
//! [limits.flange_height_mm]
//! value = 4.0
//! zones = { tuberosity = 2.0, retromolar_pad = 0.0 }
//! ```

mod file;
mod limit;

pub use file::{Problem, ProtocolError};
pub use limit::{Level, Limit, LimitKey};

use std::path::Path;

/// Acceptance limits, complete.
#[derive(Debug, Clone, PartialEq)]
pub struct Protocol {
    name: String,
    /// One for each key, in the order of [`LimitKey::ALL`].
    limits: Vec<Limit>,
}

impl Default for Protocol {
    fn default() -> Self {
        file::embedded()
    }
}

impl Protocol {
    /// The default protocol with the values of a protocol file laid over it.
    ///
    /// # Errors
    /// When the file cannot be read, is not TOML, holds an unknown key or a
    /// value of a wrong kind, or a limit that is impossible by itself or beside
    /// another; the error names file and line.
    pub fn from_file(path: &Path) -> Result<Self, ProtocolError> {
        let text = std::fs::read_to_string(path).map_err(|source| ProtocolError::Unreadable {
            path: path.to_owned(),
            source,
        })?;
        file::overlay(&Self::default(), &text).map_err(|problem| ProtocolError::Faulty {
            path: path.to_owned(),
            problem,
        })
    }

    /// The default protocol with the values of a protocol text laid over it.
    ///
    /// # Errors
    /// As for [`Protocol::from_file`], without the file.
    pub fn from_text(text: &str) -> Result<Self, Problem> {
        file::overlay(&Self::default(), text)
    }

    /// What the protocol calls itself.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
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

    /// The whole protocol as a protocol file.
    #[must_use]
    pub fn to_toml(&self) -> String {
        file::written(self)
    }

    /// Every limit with its key, in a fixed order.
    pub fn limits(&self) -> impl Iterator<Item = (LimitKey, &Limit)> {
        LimitKey::ALL.into_iter().zip(&self.limits)
    }
}
