//! The parameters of messages.

use crate::language::Language;
use crate::message::Message;
use serde::{Deserialize, Serialize};

/// A parameter of a message.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Value {
    /// How many: it decides between singular and plural.
    Count(u64),
    /// Text that is the same in every language, such as a file name; also a word by which a
    /// sentence chooses between its forms.
    Text(String),
    /// Printed digits, with uncertainty and unit as the case may be: `5.31 ± 0.08 mm`. The
    /// point is replaced by the decimal sign of the language.
    Figure {
        /// The digits in English notation.
        figure: String,
    },
    /// Other messages, read one after another.
    Message(Message),
    /// Several things, listed: `a, b and c`.
    List {
        /// The things.
        all: Vec<Value>,
    },
}

impl Value {
    /// Printed digits, given in English notation.
    pub fn figure(figure: impl Into<String>) -> Self {
        Self::Figure {
            figure: figure.into(),
        }
    }

    /// A number with so many decimals.
    #[must_use]
    pub fn number(value: f64, decimals: usize) -> Self {
        Self::figure(format!("{value:.decimals$}"))
    }

    /// Things that are listed.
    pub fn list(all: impl IntoIterator<Item = impl Into<Self>>) -> Self {
        Self::List {
            all: all.into_iter().map(Into::into).collect(),
        }
    }

    /// What it is in a language.
    #[must_use]
    pub fn text(&self, language: Language) -> String {
        match self {
            Self::Count(count) => count.to_string(),
            Self::Text(text) => text.clone(),
            Self::Figure { figure } => figure.replace('.', &language.decimal_sign().to_string()),
            Self::Message(message) => message.text(language),
            Self::List { all } => listed(all, language),
        }
    }

    /// Whether a sentence of this key is in it.
    pub(crate) fn holds(&self, key: &str) -> bool {
        match self {
            Self::Message(message) => message.holds(key),
            Self::List { all } => all.iter().any(|value| value.holds(key)),
            Self::Count(_) | Self::Text(_) | Self::Figure { .. } => false,
        }
    }

    /// The same without the sentences of a key.
    pub(crate) fn without(&self, key: &str) -> Self {
        match self {
            Self::Message(message) => Self::Message(message.without(key)),
            Self::List { all } => Self::list(all.iter().map(|value| value.without(key))),
            Self::Count(_) | Self::Text(_) | Self::Figure { .. } => self.clone(),
        }
    }
}

fn listed(all: &[Value], language: Language) -> String {
    let texts: Vec<String> = all.iter().map(|value| value.text(language)).collect();
    match texts.as_slice() {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => Message::new("list")
            .with("first", first.join(", "))
            .with("last", last.as_str())
            .text(language),
    }
}

impl From<Message> for Value {
    fn from(message: Message) -> Self {
        Self::Message(message)
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<usize> for Value {
    fn from(count: usize) -> Self {
        // A count of things in memory fits.
        Self::Count(count as u64)
    }
}

impl From<u64> for Value {
    fn from(count: u64) -> Self {
        Self::Count(count)
    }
}

impl From<i32> for Value {
    fn from(count: i32) -> Self {
        Self::Count(count.unsigned_abs().into())
    }
}
