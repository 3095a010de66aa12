//! Why the parts of an impression could not be joined: plain data.

use geometry::joining::{NotJoined, SHORTEST_CUT_MM};
use messages::{Message, Value, message, said_by_the_catalogue};

/// Why parts could not be joined.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum PartsNotJoined {
    OffTheTray { part: usize, fitting_percent: f64 },
    Ambiguous { part: usize, spread_mm: f64 },
    Step { step_mm: f64 },
    NotJoined(NotJoined),
}

impl PartsNotJoined {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::OffTheTray {
                part,
                fitting_percent,
            } => message!(
                "parts-off-the-tray",
                part = *part,
                share = Value::number(*fitting_percent, 0)
            ),
            Self::Ambiguous { part, spread_mm } => message!(
                "parts-ambiguous",
                part = *part,
                spread = Value::number(*spread_mm, 1)
            ),
            Self::Step { step_mm } => message!("parts-step", step = Value::number(*step_mm, 1)),
            Self::NotJoined(NotJoined::ShownTwice {
                first,
                second,
                percent,
            }) => message!(
                "parts-shown-twice",
                first = *first,
                second = *second,
                share = Value::number(*percent, 0)
            ),
            Self::NotJoined(NotJoined::Apart { part }) => message!(
                "parts-apart",
                part = *part,
                least = Value::figure(SHORTEST_CUT_MM.to_string())
            ),
        }
    }
}

said_by_the_catalogue!(PartsNotJoined);

impl From<NotJoined> for PartsNotJoined {
    fn from(reason: NotJoined) -> Self {
        Self::NotJoined(reason)
    }
}
