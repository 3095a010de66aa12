//! What findings say is in the catalogue, in every language. The cases are those of the
//! example `sentences`.
#![allow(clippy::unwrap_used)]

#[path = "../../examples/sentences/table/mod.rs"]
mod table;

use messages::{Language, Message, Sentence, Value};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// The instruction of every finding by its English text.
fn instructions() -> BTreeMap<String, Message> {
    (table::table().into_iter())
        .flat_map(|(_, findings)| findings)
        .map(|finding| (finding.instruction.to_string(), finding.instruction))
        .collect()
}

/// The sentences of a message and of its parameters.
fn sentences(message: &Message) -> Vec<&Sentence> {
    let all = message.sentences().iter();
    all.flat_map(|sentence| {
        let within = sentence.parameters.values().flat_map(of_value);
        [sentence].into_iter().chain(within)
    })
    .collect()
}

fn of_value(value: &Value) -> Vec<&Sentence> {
    match value {
        Value::Message(message) => sentences(message),
        Value::List { all } => all.iter().flat_map(of_value).collect(),
        Value::Count(_) | Value::Text(_) | Value::Figure { .. } => Vec::new(),
    }
}

#[test]
fn every_instruction_is_of_the_catalogue_in_every_language() {
    for (english, instruction) in instructions() {
        for sentence in sentences(&instruction) {
            assert_ne!(sentence.key, "verbatim", "{english}");
            for language in Language::ALL {
                let text = sentence.text(language);
                assert!(!text.is_empty(), "{}: {english}", sentence.key);
                assert_ne!(text, sentence.key, "{language}: {english}");
                // A parameter that is missing would be shown by its name.
                assert!(!text.contains("{$"), "{language}: {text}");
            }
        }
    }
}

/// A stretch as short as this is no finding.
const NEVER_SAID: &str = "stretch-at-midline";

#[test]
fn the_cases_bring_out_every_text_of_findings() {
    let instructions = instructions();
    let said: BTreeSet<&str> = (instructions.values().flat_map(sentences))
        .map(|sentence| sentence.key.as_ref())
        .collect();
    let texts = Path::new(env!("CARGO_MANIFEST_DIR")).join("../messages/texts/en");
    let all = ["findings.ftl", "border.ftl", "tray.ftl"]
        .map(|file| fs::read_to_string(texts.join(file)).unwrap())
        .concat();
    let keys = all.lines().filter_map(|line| line.split_once(" = "));
    let missing: Vec<&str> = keys
        .map(|(key, _)| key)
        .filter(|key| !key.starts_with(['#', ' ']) && *key != NEVER_SAID)
        .filter(|key| !said.contains(key))
        .collect();
    assert!(missing.is_empty(), "{}", missing.join("\n"));
}
