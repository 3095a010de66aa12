//! `archproof explain`.

use crate::failure::Failure;
use crate::terminal::say;
use judge::explained::{codes, page};
use messages::{Language, text};
use std::fmt::Write;

pub fn run(code: Option<&str>, language: Language) -> Result<(), Failure> {
    match code {
        Some(code) => say(page(code, language)?)?,
        None => say(&list(language))?,
    }
    Ok(())
}

/// Every code with what it is, in two columns.
fn list(language: Language) -> String {
    let width = codes().map(|(code, _)| code.len()).max().unwrap_or(0);
    let mut text = String::new();
    for (code, gist) in codes() {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "{code:<width$}  {}", gist.text(language));
    }
    let _ = writeln!(text, "\n{}", text!(language, "explain-one"));
    text
}
