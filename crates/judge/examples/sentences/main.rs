//! Prints the sentence of every check, by jaw, stage and cause, to be read from end to end
//! for sense, in English or in the language whose code is given.
//!
//! `cargo run -p archproof-judge --example sentences -- de`

#![allow(clippy::print_stdout, reason = "it prints what is to be read")]

mod table;

use judge::Check;
use messages::{Language, UnknownLanguage};
use std::collections::BTreeMap;
use std::env;

/// Check, cause and sentence, with the places that they are found at.
type Sentences = BTreeMap<(Check, &'static str, String), Vec<String>>;

fn main() -> Result<(), UnknownLanguage> {
    let language = match env::args().nth(1) {
        Some(code) => code.parse()?,
        None => Language::English,
    };
    let sentences = sentences(language);
    for check in Check::ALL {
        println!("{check}: {}", check.gist_in(language));
        let rows = sentences.iter().filter(|((of, _, _), _)| *of == check);
        let mut is_empty = true;
        for ((_, cause, sentence), places) in rows {
            is_empty = false;
            println!("  [{cause}; {}]\n    {sentence}", places.join(", "));
        }
        if is_empty {
            println!("  (no sentence was brought out)");
        }
    }
    Ok(())
}

fn sentences(language: Language) -> Sentences {
    let mut sentences = Sentences::new();
    for (place, findings) in table::table() {
        for finding in findings {
            let sentence = finding.instruction.text(language);
            let key = (finding.check, finding.cause().name(), sentence);
            let places = sentences.entry(key).or_default();
            if !places.contains(&place) {
                places.push(place.clone());
            }
        }
    }
    sentences
}
