//! The texts, and how a sentence is made of one.

use crate::language::Language;
use crate::message::Sentence;
use crate::value::Value;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::sync::LazyLock;
use unic_langid::LanguageIdentifier;

type Bundle = FluentBundle<FluentResource>;

/// The texts of one language: name of the subject, then its text.
macro_rules! texts {
    ($language:literal: $($subject:literal),+ $(,)?) => {
        &[$(($subject, include_str!(concat!("../texts/", $language, "/", $subject, ".ftl")))),+]
    };
}

/// The texts of every language, by subject.
macro_rules! languages {
    ($($subject:literal),+ $(,)?) => {
        /// The texts of a language, by subject.
        pub(crate) fn texts(language: Language) -> &'static [(&'static str, &'static str)] {
            match language {
                Language::English => texts!("en": $($subject),+),
                // The English of the help is beside commands and options, in the sources.
                Language::German => texts!("de": $($subject),+, "help"),
                Language::Spanish => texts!("es": $($subject),+, "help"),
            }
        }
    };
}

languages!(
    "names",
    "common",
    "findings",
    "border",
    "tray",
    "reasons",
    "checks",
    "summary",
    "sheet",
    "page",
    "page-findings",
    "page-impression",
    "page-case",
    "drawing",
    "turning",
    "case-file",
    "scan-file",
    "steps",
    "command",
    "fit",
    "sources",
    "window",
    "window-queue",
    "window-desk",
    "proposal",
    "batch",
    "folder-page",
    "control-charts",
    "studies",
    "inspect",
    "again",
    "demo"
);

/// The files of a language as they are written, each with its subject, as for the letters that
/// a font must hold.
#[must_use]
pub fn texts_of(language: Language) -> &'static [(&'static str, &'static str)] {
    texts(language)
}

static ENGLISH: LazyLock<Bundle> = LazyLock::new(|| bundle(Language::English));
static GERMAN: LazyLock<Bundle> = LazyLock::new(|| bundle(Language::German));
static SPANISH: LazyLock<Bundle> = LazyLock::new(|| bundle(Language::Spanish));

fn bundle(language: Language) -> Bundle {
    // A code of two letters is an identifier; the default has the plurals of no language.
    let id: LanguageIdentifier = language.code().parse().unwrap_or_default();
    let mut bundle = Bundle::new_concurrent(vec![id]);
    // The signs that isolate parameters serve text that runs both ways. They would be in
    // every file that is written.
    bundle.set_use_isolating(false);
    for (_, text) in texts(language) {
        // What of a text cannot be read is left out; the test of the catalogue fails on it.
        let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(rest, _)| rest);
        bundle.add_resource_overriding(resource);
    }
    bundle
}

/// The text of a sentence in a language; its key where there is none.
pub(crate) fn formatted(language: Language, sentence: &Sentence) -> String {
    let bundle = match language {
        Language::English => &ENGLISH,
        Language::German => &GERMAN,
        Language::Spanish => &SPANISH,
    };
    let message = bundle.get_message(&sentence.key);
    let Some(pattern) = message.and_then(|message| message.value()) else {
        return sentence.key.to_string();
    };
    let parameters: FluentArgs<'_> = sentence
        .parameters
        .iter()
        .map(|(name, value)| (name.as_ref(), parameter(value, language)))
        .collect();
    // A parameter that is missing is shown by its name; the test of the catalogue fails on it.
    let mut faults = Vec::new();
    bundle
        .format_pattern(pattern, Some(&parameters), &mut faults)
        .into_owned()
}

fn parameter(value: &Value, language: Language) -> FluentValue<'_> {
    match value {
        Value::Count(count) => FluentValue::from(*count),
        Value::Text(text) => FluentValue::from(text.as_str()),
        Value::Figure { .. } | Value::Message(_) | Value::List { .. } => {
            FluentValue::from(value.text(language))
        }
    }
}
