//! Reading the command line.

use super::Arguments;
use super::in_language::in_language;
use super::refusal::refusal;
use clap::error::ErrorKind;
use clap::{CommandFactory, FromArgMatches};
use messages::Language;
use std::ffi::OsString;

impl Arguments {
    /// Reads the command line; what cannot be understood, and help, is said in the language
    /// that is asked for, and ends the program.
    pub fn read(given: &[OsString]) -> Self {
        let language = language_asked(given).unwrap_or_else(Language::of_system);
        let mut command = in_language(Self::command(), language);
        let read = command.try_get_matches_from_mut(std::env::args_os());
        let read = read.and_then(|mut matches| {
            let arguments = Self::from_arg_matches_mut(&mut matches);
            arguments.map_err(|error| error.format(&mut command))
        });
        read.unwrap_or_else(|error| match error.kind() {
            ErrorKind::DisplayHelp
            | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand
            | ErrorKind::DisplayVersion => error.exit(),
            _ if language == Language::English => error.exit(),
            _ => {
                anstream::eprint!("{}", refusal(&error, &command, given, language));
                std::process::exit(error.exit_code())
            }
        })
    }
}

/// The language that is asked for, whatever else is on the command line.
fn language_asked(given: &[OsString]) -> Option<Language> {
    let mut given = given.iter().filter_map(|word| word.to_str());
    let at = |word: &str| word.strip_prefix("--language").map(str::to_owned);
    let rest = given.by_ref().find_map(at)?;
    let code = match rest.strip_prefix('=') {
        Some(code) => code,
        None if rest.is_empty() => given.next()?,
        None => return None,
    };
    code.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_is_found_however_the_rest_reads() {
        for (given, language) in [
            (
                &["check", "--language", "de", "--wrong"][..],
                Some(Language::German),
            ),
            (&["--language=es"], Some(Language::Spanish)),
            (&["check", "--language"], None),
            (&["check", "--language", "xx"], None),
            (&["check", "--languages", "de"], None),
            (&["check", "a.ply"], None),
        ] {
            let given: Vec<OsString> = given.iter().map(OsString::from).collect();
            assert_eq!(language_asked(&given), language, "{given:?}");
        }
    }
}
