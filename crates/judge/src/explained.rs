//! The page of every code that results print: of checks, and of parts that several checks
//! need.

use crate::check::Check;
use crate::nearest::nearest;
use crate::not_judged::Part;
use messages::{Language, Message, message};
use thiserror::Error;

/// Nothing that results print has this code.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", self.message())]
pub struct UnknownCode {
    /// What was asked for.
    pub code: String,
    /// What was probably meant.
    pub nearest: Option<&'static str>,
}

impl UnknownCode {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!(
            "unknown-code",
            code = self.code.as_str(),
            is = if self.nearest.is_some() {
                "near"
            } else {
                "far"
            },
            nearest = self.nearest.unwrap_or_default()
        )
    }
}

/// Every code with what it is in one sentence: checks, then parts.
pub fn codes() -> impl Iterator<Item = (&'static str, Message)> {
    let checks = Check::ALL
        .into_iter()
        .map(|check| (check.code(), check.gist()));
    let parts = Part::ALL.into_iter().map(|part| (part.name(), part.gist()));
    checks.chain(parts)
}

/// The page of a code in a language, in Markdown.
///
/// # Errors
/// When nothing has this code; the error names the nearest one.
pub fn page(code: &str, language: Language) -> Result<&'static str, UnknownCode> {
    let of_part = || Part::ALL.into_iter().find(|part| part.name() == code);
    match code.parse::<Check>() {
        Ok(check) => Ok(check.page(language)),
        Err(_) => of_part()
            .map(|part| part.page(language))
            .ok_or_else(|| UnknownCode {
                code: code.escape_debug().to_string(),
                nearest: nearest(code, codes().map(|(code, _)| code)),
            }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_code_has_its_page_and_a_near_miss_its_name() {
        for (code, gist) in codes() {
            for language in Language::ALL {
                let page = page(code, language).unwrap();
                assert!(page.starts_with(&format!("# {code}\n")), "{code}");
                let gist = gist.text(language);
                assert!(gist.ends_with('.'), "{code} in {language}: {gist}");
            }
        }
        let message = |code| page(code, Language::German).unwrap_err().to_string();
        assert_eq!(
            message("show through"),
            "'show through' is not the code of a check; did you mean show-through?"
        );
        assert_eq!(message("xyz"), "'xyz' is not the code of a check");
    }
}
