//! Faults in a TOML text, each with the line that it stands in.

use serde::de::DeserializeOwned;
use std::fmt;

/// A fault and the line of the text that it stands in.
#[derive(Debug, Clone, PartialEq)]
pub struct Located<F> {
    /// Line, counted from 1; `None` where the fault has no one place.
    pub line: Option<usize>,
    /// What is wrong.
    pub fault: F,
}

impl<F: fmt::Display> fmt::Display for Located<F> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(f, "line {line}: {}", self.fault),
            None => self.fault.fmt(f),
        }
    }
}

impl<F: fmt::Debug + fmt::Display> std::error::Error for Located<F> {}

/// A fault at a byte of the text.
pub(crate) fn at<F>(text: &str, byte: usize, fault: F) -> Located<F> {
    let before = &text.as_bytes()[..byte.min(text.len())];
    Located {
        line: Some(1 + before.iter().filter(|&&b| b == b'\n').count()),
        fault,
    }
}

/// Reads a TOML text, turning the reader's many-line message into one line.
pub(crate) fn from_toml<T: DeserializeOwned, F>(
    text: &str,
    fault: impl FnOnce(String) -> F,
) -> Result<T, Located<F>> {
    toml::from_str(text).map_err(|error| {
        let message = fault(on_one_line(error.message()));
        match error.span() {
            Some(span) => at(text, span.start, message),
            None => Located {
                line: None,
                fault: message,
            },
        }
    })
}

/// What stands in a file can be anything: nothing of it may disturb a terminal.
fn on_one_line(message: &str) -> String {
    let mut line = String::new();
    for c in message.replace('\n', ", ").chars() {
        if c.is_control() {
            line.extend(c.escape_default());
        } else {
            line.push(c);
        }
    }
    line
}
