//! Messages: keys with their parameters.

use crate::catalogue;
use crate::language::Language;
use crate::value::Value;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::fmt;

/// Text that is in no catalogue, such as the error of a library.
const VERBATIM: &str = "verbatim";

/// One sentence of the catalogue.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Sentence {
    /// Its key.
    pub key: Cow<'static, str>,
    /// Its parameters by name.
    #[serde(default)]
    pub parameters: BTreeMap<Cow<'static, str>, Value>,
}

/// Sentences of the catalogue, read one after another.
#[derive(Debug, Clone, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Message {
    sentences: Vec<Sentence>,
}

impl Message {
    /// The sentence of a key, without parameters so far.
    #[must_use]
    pub fn new(key: impl Into<Cow<'static, str>>) -> Self {
        Self {
            sentences: vec![Sentence {
                key: key.into(),
                parameters: BTreeMap::new(),
            }],
        }
    }

    /// The name of one of several things: key `zone-labial-flange` of the kind `zone` and
    /// the name `labial flange`.
    #[must_use]
    pub fn name(kind: &str, name: &str) -> Self {
        Self::new(format!("{kind}-{}", name.replace([' ', '_'], "-")))
    }

    /// Text as it is in every language.
    pub fn verbatim(text: impl Into<String>) -> Self {
        Self::new(VERBATIM).with("text", text.into())
    }

    /// The same message with a parameter of its last sentence.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        if let Some(sentence) = self.sentences.last_mut() {
            sentence.parameters.insert(name.into(), value.into());
        }
        self
    }

    /// This message, then another.
    #[must_use]
    pub fn then(mut self, other: impl Into<Option<Self>>) -> Self {
        let other = other.into();
        self.sentences
            .extend(other.into_iter().flat_map(|other| other.sentences));
        self
    }

    /// Key of the first sentence; empty where nothing is said.
    #[must_use]
    pub fn key(&self) -> &str {
        self.sentences.first().map_or("", |sentence| &sentence.key)
    }

    /// Its sentences.
    #[must_use]
    pub fn sentences(&self) -> &[Sentence] {
        &self.sentences
    }

    /// Whether a sentence of this key is in it or in one of its parameters.
    #[must_use]
    pub fn holds(&self, key: &str) -> bool {
        self.sentences.iter().any(|sentence| {
            let mut values = sentence.parameters.values();
            sentence.key == key || values.any(|value| value.holds(key))
        })
    }

    /// The same message without the sentences of a key, in its parameters as well.
    #[must_use]
    pub fn without(&self, key: &str) -> Self {
        let kept = self.sentences.iter().filter(|sentence| sentence.key != key);
        let sentences = kept.map(|sentence| {
            let parameters = sentence.parameters.iter();
            Sentence {
                key: sentence.key.clone(),
                parameters: parameters
                    .map(|(name, value)| (name.clone(), value.without(key)))
                    .collect(),
            }
        });
        Self {
            sentences: sentences.collect(),
        }
    }

    /// The same message with other sentences in place of those for which there are some.
    #[must_use]
    pub fn replaced(&self, other: impl Fn(&Sentence) -> Option<Self>) -> Self {
        let same = |sentence: &Sentence| vec![sentence.clone()];
        let replaced = self.sentences.iter().flat_map(|sentence| {
            other(sentence).map_or_else(|| same(sentence), |other| other.sentences)
        });
        Self {
            sentences: replaced.collect(),
        }
    }

    /// What is read in a language.
    #[must_use]
    pub fn text(&self, language: Language) -> String {
        let mut text = String::new();
        for sentence in &self.sentences {
            let words = sentence.text(language);
            if !text.is_empty() && !words.is_empty() {
                text.push(' ');
            }
            text.push_str(&words);
        }
        text
    }
}

impl Sentence {
    /// What is read in a language.
    #[must_use]
    pub fn text(&self, language: Language) -> String {
        if self.key == VERBATIM {
            // Not by the catalogue: this text may hold its signs.
            let text = self.parameters.get("text");
            return text.map_or_else(String::new, |text| text.text(language));
        }
        catalogue::formatted(language, self)
    }
}

/// In English.
impl fmt::Display for Message {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.text(Language::English))
    }
}

/// In English.
impl From<Message> for String {
    fn from(message: Message) -> Self {
        message.text(Language::English)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::message;

    #[test]
    fn a_message_is_the_same_after_it_was_written_and_read() {
        let message = message!(
            "findings-more",
            count = 3_u64,
            notes = "all",
            place = Value::list([Value::figure("1.5 mm"), message!("not-there").into()])
        )
        .then(Message::verbatim("{ as it is }"));
        let json = serde_json::to_string(&message).unwrap();
        assert_eq!(serde_json::from_str::<Message>(&json).unwrap(), message);
        assert_eq!(message.key(), "findings-more");
    }

    #[test]
    fn text_without_a_catalogue_is_left_as_it_is() {
        let message = Message::verbatim("{ $brace } and 1.5").then(None);
        assert_eq!(message.text(Language::German), "{ $brace } and 1.5");
        // A key that is not there is seen, and nothing ends.
        assert_eq!(message!("not-there").text(Language::German), "not-there");
    }

    #[test]
    fn a_sentence_is_taken_out_of_parameters_too() {
        let inner = message!("not-there").then(message!("safety"));
        let listed = Value::list([message!("safety"), message!("listed")]);
        let message = message!("outer", then = inner, list = listed).then(message!("safety"));
        assert!(message.holds("safety"));
        let without = message.without("safety");
        assert!(!without.holds("safety"));
        assert!(without.holds("not-there") && without.holds("listed"));
    }
}
