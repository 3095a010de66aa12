//! What the reader of TOML texts refuses, in words that say what to do.

use crate::nearest::nearest;
use messages::{Message, Value, message, said_by_the_catalogue};

/// Why a text is not TOML, or not of the kind that is wanted.
#[derive(Debug, Clone, PartialEq)]
pub enum TomlProblem {
    /// A path is written with backslashes, which TOML takes for escapes.
    Backslash,
    /// A key or a value that is not known here.
    Unknown {
        /// Whether it is a key; else it is a value.
        is_key: bool,
        /// What is written.
        name: String,
        /// What was probably meant.
        nearest: Option<String>,
        /// What is known.
        known: Vec<String>,
    },
    /// A key that is left out.
    Missing(String),
    /// A value of another kind than the key takes.
    Kind {
        /// What is written.
        given: String,
        /// What is wanted.
        wanted: String,
    },
    /// A key that is there twice.
    Twice,
    /// Anything else, in the reader's words.
    Other(String),
}

impl TomlProblem {
    /// What the reader's message about a line means.
    pub(crate) fn of(text: &str, line: &str) -> Self {
        let is_about_escapes = ["escape", "unicode"].iter().any(|word| text.contains(word));
        if line.contains('\\') && is_about_escapes {
            return Self::Backslash;
        }
        let mut quoted = text.split('`').skip(1).step_by(2).map(on_one_line);
        let kind = text.split_once(" `").map(|(kind, _)| kind);
        match (kind, quoted.next()) {
            (Some(kind @ ("unknown field" | "unknown variant")), Some(name)) => {
                let known: Vec<String> = quoted.collect();
                Self::Unknown {
                    is_key: kind == "unknown field",
                    nearest: nearest(&name, known.iter().map(String::as_str)).map(str::to_owned),
                    name,
                    known,
                }
            }
            (Some("missing field"), Some(name)) => Self::Missing(name),
            _ if text == "duplicate key" => Self::Twice,
            _ => of_kind(text).unwrap_or_else(|| Self::Other(on_one_line(text))),
        }
    }

    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Backslash => message!("toml-backslash"),
            Self::Unknown {
                is_key,
                name,
                nearest,
                known,
            } => message!(
                "toml-unknown",
                what = if *is_key { "key" } else { "value" },
                name = name.as_str(),
                is = if nearest.is_some() { "near" } else { "far" },
                nearest = nearest.as_deref().unwrap_or_default(),
                known = known.join(", ")
            ),
            Self::Missing(key) => message!("toml-missing", key = key.as_str()),
            Self::Kind { given, wanted } => message!(
                "toml-kind",
                given = given_kind(given),
                wanted = wanted_kind(wanted)
            ),
            Self::Twice => message!("toml-twice"),
            // What the types of our own files say they expect.
            Self::Other(text) if text.starts_with("expected the name of a file") => {
                message!("toml-wanted-parts")
            }
            Self::Other(text) if text.starts_with("scanner is the path") => {
                message!("toml-wanted-scanner")
            }
            Self::Other(text) => {
                message!("toml-other", kind = syntax(text), text = text.as_str())
            }
        }
    }
}

said_by_the_catalogue!(TomlProblem);

/// What of the syntax is wrong, from the reader's words.
fn syntax(text: &str) -> &'static str {
    for (start, kind) in [
        ("unclosed", "unclosed"),
        ("string values must be quoted", "unquoted"),
        ("invalid basic string", "open-text"),
        ("invalid literal string", "open-text"),
        ("unexpected key or value", "more"),
        ("invalid float", "number"),
        ("invalid integer", "number"),
        ("invalid length", "length"),
    ] {
        if text.starts_with(start) {
            return kind;
        }
    }
    "other"
}

fn of_kind(text: &str) -> Option<TomlProblem> {
    let (given, wanted) = text
        .strip_prefix("invalid type: ")?
        .rsplit_once(", expected ")?;
    Some(TomlProblem::Kind {
        given: on_one_line(given),
        wanted: on_one_line(wanted),
    })
}

/// What is written, from the reader's words, such as `string "two"`.
fn given_kind(words: &str) -> Value {
    for (start, message) in [
        ("string ", message!("toml-given-text", value = rest(words))),
        (
            "integer ",
            message!("toml-given-number", kind = "integer", value = rest(words)),
        ),
        (
            "floating point ",
            message!(
                "toml-given-number",
                kind = "fraction",
                value = words.trim_start_matches("floating point ")
            ),
        ),
        (
            "boolean ",
            message!("toml-given-truth", value = rest(words)),
        ),
    ] {
        if words.starts_with(start) {
            return message.into();
        }
    }
    match words {
        "sequence" => message!("toml-given-list").into(),
        "map" => message!("toml-given-table").into(),
        _ => words.into(),
    }
}

fn rest(words: &str) -> &str {
    words.split_once(' ').map_or("", |(_, rest)| rest)
}

/// What is wanted, from the reader's words.
fn wanted_kind(words: &str) -> Value {
    match words {
        "f64" => message!("toml-wanted-number").into(),
        "a string" => message!("toml-wanted-text").into(),
        "path string" => message!("toml-wanted-path").into(),
        "a boolean" => message!("toml-wanted-truth").into(),
        "a sequence" => message!("toml-wanted-list").into(),
        "an array of length 3" => message!("toml-wanted-point").into(),
        words if words == "a map" || words.starts_with("struct ") => {
            message!("toml-wanted-table", words = words).into()
        }
        _ => words.into(),
    }
}

/// A file can hold anything: none of it may disturb a terminal.
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
