//! `archproof explain`.

use crate::failure::Failure;
use crate::terminal::say;
use judge::explained::{codes, page};
use std::fmt::Write;

pub fn run(code: Option<&str>) -> Result<(), Failure> {
    match code {
        Some(code) => say(page(code)?)?,
        None => say(&list())?,
    }
    Ok(())
}

/// Every code with what it is, in two columns.
fn list() -> String {
    let width = codes().map(|(code, _)| code.len()).max().unwrap_or(0);
    let mut text = String::new();
    for (code, gist) in codes() {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "{code:<width$}  {gist}");
    }
    text.push_str("\n'archproof explain CODE' prints the page of one.\n");
    text
}
