//! The catalogue of what people read. A [`Message`] is a key and its parameters; its
//! sentence is in `texts/LANGUAGE/*.ftl`, in the syntax of Project Fluent, once for each
//! [`Language`].
//!
//! Nothing here knows what a message is about.
//!
//! ```
//! use messages::{Language, Value, message};
//!
//! let so_many = message!("findings-more", count = 3, notes = "all", place = "report.html");
//! assert_eq!(so_many.text(Language::English), "3 further notes are in report.html.");
//! assert_eq!(so_many.text(Language::German), "3 weitere Hinweise in report.html.");
//! // A decimal sign is the language's own.
//! assert_eq!(Value::figure("5.31 ± 0.08 mm").text(Language::Spanish), "5,31 ± 0,08 mm");
//! ```

#![cfg_attr(test, allow(clippy::unwrap_used))]
#![warn(unreachable_pub)]

mod catalogue;
mod language;
mod message;
mod value;

pub use catalogue::texts_of;
pub use language::{Language, UnknownLanguage};
pub use message::{Message, Sentence};
pub use value::Value;

/// A message of one sentence: its key, then its parameters by name.
///
/// The key is a literal, so that a test finds every key that is used, and the names of
/// its parameters, in the source.
#[macro_export]
macro_rules! message {
    ($key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::Message::new($key)$(.with(stringify!($name), $value))*
    };
}

/// The sentence of a key in a language: `text!(language, "key", name = value)`.
#[macro_export]
macro_rules! text {
    ($language:expr, $key:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::message!($key $(, $name = $value)*).text($language)
    };
}

/// Errors and reasons whose words are in the catalogue: makes of a type with a method
/// `message(&self) -> Message` an error that reads in English, and a message of it.
#[macro_export]
macro_rules! said_by_the_catalogue {
    ($($reason:ty),+ $(,)?) => {$(
        impl ::std::fmt::Display for $reason {
            fn fmt(&self, f: &mut ::std::fmt::Formatter<'_>) -> ::std::fmt::Result {
                ::std::fmt::Display::fmt(&self.message(), f)
            }
        }

        impl ::std::error::Error for $reason {}

        impl From<&$reason> for $crate::Message {
            fn from(reason: &$reason) -> Self {
                reason.message()
            }
        }

        impl From<&$reason> for $crate::Value {
            fn from(reason: &$reason) -> Self {
                reason.message().into()
            }
        }
    )+};
}
