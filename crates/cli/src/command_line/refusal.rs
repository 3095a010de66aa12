//! What is said of a command line that cannot be understood, in other languages than English,
//! in which clap itself says it.

use clap::error::{ContextKind, ContextValue, ErrorKind};
use clap::{Command, Error};
use messages::{Language, Message, Value};
use std::ffi::OsString;

/// What is wrong with the command line, how the command is used and where to read more.
pub fn refusal(error: &Error, command: &Command, given: &[OsString], language: Language) -> String {
    let styles = command.get_styles();
    let (wrong, hint) = (styles.get_error(), styles.get_valid());
    let word = |name: &str| Message::name("refusal-word", name).text(language);
    let mut said = format!("{wrong}{}{wrong:#} ", word("error"));
    said += &what_is_wrong(error).text(language);
    if let Some(help) = meaning(error, command, given) {
        said += &format!("\n\n  {help}");
    }
    if let Some(nearest) = nearest(error) {
        let nearest = nearest.text(language);
        said += &format!("\n\n  {hint}{}{hint:#} {nearest}", word("tip"));
    }
    if let Some(usage) = text(error, ContextKind::Usage) {
        let usage = usage.trim_start_matches("Usage:").trim();
        let heading = Message::name("help-word", "usage").text(language);
        let style = styles.get_usage();
        said += &format!("\n\n{style}{heading}{style:#} {usage}");
    }
    format!("{said}\n\n{}\n", word("help"))
}

/// What clap says of one thing, as text.
fn text(error: &Error, kind: ContextKind) -> Option<String> {
    match error.get(kind)? {
        ContextValue::None => None,
        ContextValue::Strings(all) => Some(all.join(", ")),
        other => Some(other.to_string()),
    }
}

fn what_is_wrong(error: &Error) -> Message {
    use ContextKind as K;
    let refusal = |name: &str, parameters: &[(&'static str, ContextKind)]| {
        let known = parameters
            .iter()
            .map(|(name, kind)| Some((*name, text(error, *kind)?)));
        let known: Option<Vec<_>> = known.collect();
        let refusal = Message::name("refusal", name);
        known.map(|known| {
            let with = |said: Message, (name, text)| said.with(name, Value::Text(text));
            known.into_iter().fold(refusal, with)
        })
    };
    let value = [("value", K::InvalidValue), ("option", K::InvalidArg)];
    let said = match error.kind() {
        ErrorKind::UnknownArgument => refusal("unknown option", &[("given", K::InvalidArg)]),
        ErrorKind::InvalidSubcommand => {
            refusal("unknown command", &[("given", K::InvalidSubcommand)])
        }
        ErrorKind::InvalidValue if text(error, K::InvalidValue).is_none_or(|it| it.is_empty()) => {
            refusal("no value", &[("option", K::InvalidArg)])
        }
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => refusal("invalid value", &value),
        ErrorKind::TooManyValues => refusal("too many", &value),
        ErrorKind::TooFewValues => refusal(
            "too few",
            &[
                ("option", K::InvalidArg),
                ("least", K::MinValues),
                ("given", K::ActualNumValues),
            ],
        ),
        ErrorKind::ArgumentConflict if error.get(K::InvalidArg) == error.get(K::PriorArg) => {
            refusal("twice", &[("option", K::InvalidArg)])
        }
        ErrorKind::ArgumentConflict => refusal(
            "conflict",
            &[("option", K::InvalidArg), ("other", K::PriorArg)],
        ),
        ErrorKind::MissingRequiredArgument => refusal("missing", &[("options", K::InvalidArg)]),
        ErrorKind::InvalidUtf8 => refusal("not text", &[]),
        _ => None,
    };
    said.unwrap_or_else(|| Message::name("refusal", "other"))
}

/// What an option whose value is not possible means, and what its values are.
fn meaning(error: &Error, command: &Command, given: &[OsString]) -> Option<String> {
    let is_value = matches!(
        error.kind(),
        ErrorKind::InvalidValue | ErrorKind::ValueValidation
    );
    let option = text(error, ContextKind::InvalidArg).filter(|_| is_value)?;
    let mut arguments = named(command, given).get_arguments();
    let argument = arguments.find(|argument| argument.to_string() == option)?;
    argument.get_help().map(ToString::to_string)
}

/// The command that is named on a command line.
fn named<'a>(program: &'a Command, given: &[OsString]) -> &'a Command {
    given.iter().fold(program, |command, word| {
        command.find_subcommand(word).unwrap_or(command)
    })
}

/// What may have been meant.
fn nearest(error: &Error) -> Option<Message> {
    let kinds = [
        ContextKind::SuggestedArg,
        ContextKind::SuggestedSubcommand,
        ContextKind::SuggestedValue,
    ];
    let nearest = kinds.into_iter().find_map(|kind| error.get(kind))?;
    let nearest = match nearest {
        ContextValue::Strings(all) => all.join("', '"),
        one => one.to_string(),
    };
    Some(Message::name("refusal", "nearest").with("nearest", format!("'{nearest}'")))
}
