//! Every language holds the same messages with the same parameters, and all of them can be
//! read.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser::parse;
use messages::Language;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::PathBuf;

/// Parameters by key, over all texts of a language.
pub(crate) type Texts = BTreeMap<String, BTreeSet<String>>;

/// The subject whose English is in the sources, where a test holds it against these texts.
const HELP: &str = "help";

pub(crate) fn texts(language: Language) -> Texts {
    texts_on(language, |subject| subject != HELP)
}

fn texts_on(language: Language, is_wanted: fn(&str) -> bool) -> Texts {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("texts");
    let mut texts = Texts::new();
    for file in fs::read_dir(folder.join(language.code())).unwrap() {
        let path = file.unwrap().path();
        if !is_wanted(path.file_stem().unwrap().to_str().unwrap()) {
            continue;
        }
        let source = fs::read_to_string(&path).unwrap();
        let resource = parse(source.as_str())
            .unwrap_or_else(|(_, faults)| panic!("{}: {faults:?}", path.display()));
        for entry in resource.body {
            let Entry::Message(message) = entry else {
                continue;
            };
            let mut parameters = BTreeSet::new();
            let value = message.value.expect("a message has a text");
            gather(&value, &mut parameters);
            let before = texts.insert(message.id.name.to_owned(), parameters);
            assert!(
                before.is_none(),
                "{}: {} is there twice",
                path.display(),
                message.id.name
            );
        }
    }
    texts
}

fn gather(pattern: &Pattern<&str>, parameters: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { .. } => {}
            PatternElement::Placeable { expression } => of_expression(expression, parameters),
        }
    }
}

fn of_expression(expression: &Expression<&str>, parameters: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, parameters),
        Expression::Select { selector, variants } => {
            of_inline(selector, parameters);
            for variant in variants {
                gather(&variant.value, parameters);
            }
        }
    }
}

fn of_inline(inline: &InlineExpression<&str>, parameters: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            parameters.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, parameters),
        _ => {}
    }
}

#[test]
fn every_language_has_every_message_with_the_same_parameters() {
    let english = texts(Language::English);
    assert!(!english.is_empty());
    for language in Language::ALL {
        let texts = texts(language);
        let keys: BTreeSet<&String> = texts.keys().chain(english.keys()).collect();
        let faults: Vec<String> = keys
            .into_iter()
            .filter_map(|key| match (english.get(key), texts.get(key)) {
                (Some(wanted), Some(there)) if wanted == there => None,
                (Some(wanted), Some(there)) => {
                    Some(format!("{key}: parameters {there:?} instead of {wanted:?}"))
                }
                (Some(_), None) => Some(format!("{key}: no text")),
                (None, _) => Some(format!("{key}: not in English")),
            })
            .collect();
        assert!(faults.is_empty(), "{language}:\n{}", faults.join("\n"));
    }
}

#[test]
fn the_help_is_the_same_in_every_language_but_english() {
    let [german, spanish] = [Language::German, Language::Spanish]
        .map(|language| texts_on(language, |subject| subject == HELP));
    assert!(!german.is_empty());
    assert_eq!(german, spanish);
    assert!(texts_on(Language::English, |subject| subject == HELP).is_empty());
}
