//! Labels of a case, by which results are compared: scanner, site, operator, material, lot.
//! They are codes; what looks like a person's name is refused.

use messages::{Message, message};
use std::collections::BTreeMap;
use thiserror::Error;

/// Labels by their keys, which anyone may choose.
pub type Labels = BTreeMap<String, String>;

/// Longest key or value, in letters.
const LONGEST: usize = 32;
/// Most labels of a case.
const MOST: usize = 12;
/// Keys that ask for a person, or for what tells one.
const PERSONAL: [&str; 10] = [
    "patient",
    "name",
    "surname",
    "forename",
    "first_name",
    "last_name",
    "birth",
    "birthday",
    "date_of_birth",
    "dob",
];
/// Words that stand before a name.
const TITLES: [&str; 8] = ["dr", "mr", "mrs", "ms", "miss", "prof", "herr", "frau"];

/// Why a label cannot be used. No message repeats a value, which may be a name.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", self.message())]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum BadLabel {
    Key,
    Personal(String),
    Value(String),
    Name(String),
    TooMany,
}

impl BadLabel {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Key => message!("label-key", longest = LONGEST),
            Self::Personal(key) => message!("label-personal", key = key.as_str()),
            Self::Value(key) => message!("label-value", key = key.as_str(), longest = LONGEST),
            Self::Name(key) => message!("label-name", key = key.as_str()),
            Self::TooMany => message!("label-too-many", most = MOST),
        }
    }
}

/// Says whether labels can be used.
pub(super) fn checked(key: &str, value: &str) -> Result<(), BadLabel> {
    let is_short = |text: &str| (1..=LONGEST).contains(&text.chars().count());
    let of_key = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || "_-".contains(c);
    let of_value = |c: char| c.is_ascii_alphanumeric() || "._-".contains(c);
    if !is_short(key) || !key.chars().all(of_key) {
        return Err(BadLabel::Key);
    }
    if PERSONAL.contains(&key) {
        return Err(BadLabel::Personal(key.to_owned()));
    }
    if is_like_a_name(value) {
        return Err(BadLabel::Name(key.to_owned()));
    }
    if !is_short(value) || !value.chars().all(of_value) {
        return Err(BadLabel::Value(key.to_owned()));
    }
    let is_coded = value.chars().any(|c| c.is_ascii_digit()) || value.chars().count() <= 2;
    if key.starts_with("operator") && !is_coded {
        return Err(BadLabel::Name(key.to_owned()));
    }
    Ok(())
}

/// Says whether there are too many.
pub(super) fn number_checked(number: usize) -> Result<(), BadLabel> {
    (number <= MOST).then_some(()).ok_or(BadLabel::TooMany)
}

/// A title, a word with a capital, or two words of letters alone beside each other.
fn is_like_a_name(value: &str) -> bool {
    let words: Vec<&str> = value
        .split([' ', '.', '_', '-', ','])
        .filter(|word| !word.is_empty())
        .collect();
    let is_of_letters =
        |word: &str| word.chars().count() > 1 && word.chars().all(char::is_alphabetic);
    let is_title = |word: &&str| TITLES.contains(&word.to_lowercase().as_str());
    let is_capitalised = |word: &&str| {
        let mut letters = word.chars();
        letters.next().is_some_and(char::is_uppercase)
            && letters.clone().count() > 1
            && letters.all(char::is_lowercase)
    };
    let is_pair = |apart: char| {
        let mut parts = value.split(apart);
        let both = (parts.next(), parts.next(), parts.next());
        matches!(both, (Some(a), Some(b), None) if is_of_letters(a) && is_of_letters(b))
    };
    words.iter().any(is_title)
        || words.iter().any(is_capitalised)
        || [' ', '.'].into_iter().any(is_pair)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_taken() {
        for (key, value) in [
            ("scanner", "S2"),
            ("site", "north"),
            ("operator", "op-3"),
            ("operator", "k7"),
            ("material", "pvs-heavy"),
            ("material", "PVS"),
            ("lot", "2026.11-B"),
        ] {
            assert_eq!(checked(key, value), Ok(()), "{key} {value}");
        }
        assert_eq!(number_checked(12), Ok(()));
        assert_eq!(number_checked(13), Err(BadLabel::TooMany));
    }

    /// Invented names.
    #[test]
    fn names_are_refused_and_not_repeated() {
        for (key, value) in [
            ("operator", "Ann"),
            ("operator", "ann"),
            ("operator", "ann.example"),
            ("site", "Dr. Example"),
            ("site", "Dr-7"),
            ("scanner", "ann example"),
            ("lot", "Example-2"),
            ("site", "Ännchen"),
        ] {
            let refused = checked(key, value).unwrap_err();
            assert_eq!(refused, BadLabel::Name(key.to_owned()), "{value}");
            assert!(!refused.to_string().contains(value));
        }
        for key in ["patient", "name", "dob"] {
            assert_eq!(checked(key, "a1"), Err(BadLabel::Personal(key.to_owned())));
        }
        for key in ["", "Site", "a b", "ü"] {
            assert_eq!(checked(key, "a1"), Err(BadLabel::Key), "{key}");
        }
        let long = "1".repeat(33);
        for value in ["", "a=1", "1 2", "a/b", long.as_str()] {
            assert_eq!(
                checked("lot", value),
                Err(BadLabel::Value("lot".to_owned())),
                "{value}"
            );
        }
    }
}
