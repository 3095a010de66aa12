//! Sources and criteria of limits as messages: those of the default protocol are in the
//! catalogue, those of another are as its file states them.

use super::LimitKey;
use messages::{Message, message};

impl LimitKey {
    /// The source of this limit, as a message.
    #[must_use]
    pub fn source(self, stated: &str) -> Message {
        let own = Message::name("source", self.name());
        first_that_says(stated, [message!("source-common-practice"), own])
    }

    /// The criterion that this limit puts a number to, as a message.
    #[must_use]
    pub fn criterion(self, stated: &str) -> Message {
        first_that_says(stated, [Message::name("criterion", self.name())])
    }
}

/// The source of a scanner's uncertainty, as a message.
#[must_use]
pub fn scanner_source(stated: &str) -> Message {
    first_that_says(stated, [message!("source-scanner")])
}

/// The first message that says this in English; where none does, the text as it is.
fn first_that_says<const N: usize>(stated: &str, messages: [Message; N]) -> Message {
    let mut messages = messages.into_iter();
    let found = messages.find(|message| message.to_string() == stated);
    found.unwrap_or_else(|| Message::verbatim(stated))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::protocol::Protocol;

    #[test]
    fn sources_and_criteria_of_the_default_limits_are_in_the_catalogue() {
        let protocol = Protocol::default();
        for (key, limit) in protocol.limits() {
            let criterion = limit.criterion.as_ref().map(|text| key.criterion(text));
            for said in [Some(key.source(&limit.source)), criterion]
                .into_iter()
                .flatten()
            {
                assert_ne!(said.key(), "verbatim", "{}: {said}", key.name());
            }
        }
        let scanner = scanner_source(&protocol.scanner().source);
        assert_ne!(scanner.key(), "verbatim");
        let own = LimitKey::ShowThrough.source("our own trials");
        assert_eq!(own, Message::verbatim("our own trials"));
    }
}
