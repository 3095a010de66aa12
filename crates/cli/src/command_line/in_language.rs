//! The help of the command line in other languages.
//!
//! English is what clap makes of the doc comments beside the arguments. In every other
//! language each text is a message `help-…` of the catalogue, which tests hold against the
//! arguments: all texts or none.

use clap::builder::{PossibleValue, StyledStr};
use clap::{Arg, ArgAction, Command};
use messages::{Language, Message};

/// The command with its help in a language.
pub fn in_language(command: Command, language: Language) -> Command {
    match language {
        Language::English => command,
        _ => translated(command, &[], language),
    }
}

/// The text of a message that the catalogue need not have.
fn said(message: &Message, language: Language) -> Option<String> {
    let text = message.text(language);
    (text != message.key()).then_some(text)
}

/// A word around the help.
fn word(name: &str, language: Language) -> String {
    Message::name("help-word", name).text(language)
}

/// A command below others, with all commands below it.
fn translated(command: Command, above: &[&str], language: Language) -> Command {
    let own = command.get_name().to_owned();
    let is_program = command.get_version().is_some();
    let path = [above, &[own.as_str()]].concat();
    let name = path.join(" ");
    let below = if is_program { &[][..] } else { &path };
    let about = said(&Message::name("help-command", &name), language).unwrap_or_default();
    let more = said(&Message::name("help-more", &name), language);
    // Under a heading of its own, clap would sort arguments by their names.
    let mut order = 0..;
    let explained = |argument| {
        explained(argument, &name, language).display_order(order.next().unwrap_or(usize::MAX))
    };
    let mut command = command
        .mut_args(explained)
        .mut_subcommands(|command| translated(command, below, language))
        .subcommand_help_heading(word("commands", language))
        .disable_help_flag(true);
    if let Some(more) = more {
        command = command.long_about(format!("{about}\n\n{more}"));
    }
    let is_long = command.get_long_about().is_some()
        || command
            .get_arguments()
            .any(|arg| arg.get_long_help().is_some());
    let usage = usage_heading(&command, language);
    command = command
        .about(about)
        .help_template(format!(
            "{{about-with-newline}}\n{usage} {{usage}}\n\n{{all-args}}"
        ))
        .arg(help_flag(is_long, language));
    if is_program {
        command = command
            .disable_version_flag(true)
            .arg(version_flag(language));
    }
    command
}

/// `Usage:`, in the style that it has in English.
fn usage_heading(command: &Command, language: Language) -> String {
    let style = command.get_styles().get_usage();
    format!("{style}{}{style:#}", word("usage", language))
}

fn help_flag(is_long: bool, language: Language) -> Arg {
    let flag = Arg::new("help")
        .short('h')
        .long("help")
        .action(ArgAction::Help)
        .help_heading(word("options", language));
    if is_long {
        flag.help(word("help short", language))
            .long_help(word("help long", language))
    } else {
        flag.help(word("help", language))
    }
}

fn version_flag(language: Language) -> Arg {
    Arg::new("version")
        .short('V')
        .long("version")
        .action(ArgAction::Version)
        .help_heading(word("options", language))
        .help(word("version", language))
}

/// An argument of a command with its help, its default and its possible values.
fn explained(argument: Arg, command: &str, language: Language) -> Arg {
    let text = help_of(&argument, command, language).unwrap_or_default();
    let id = format!("{command} {}", argument.get_id());
    let more = said(&Message::name("help-long", &id), language);
    let has_value = argument.get_action().takes_values();
    let values = argument.get_possible_values();
    let values = if has_value { &values[..] } else { &[] };
    let default = default_of(&argument, language);
    let listed = listed(values, language);
    let short = [
        Some(text.clone()),
        in_a_row(values, language),
        default.clone(),
    ];
    let long = [Some(text), more, listed, default];
    let is_long = long[1].is_some() || long[2].is_some();
    let joined = |parts: &[Option<String>], by: &str| {
        let parts: Vec<&str> = parts.iter().flatten().map(String::as_str).collect();
        StyledStr::from(parts.join(by))
    };
    let heading = heading_of(&argument, language);
    let argument = argument
        .help(joined(&short, " "))
        .help_heading(heading)
        .hide_default_value(has_value)
        .hide_possible_values(has_value);
    if is_long {
        argument.long_help(joined(&long, "\n\n"))
    } else {
        argument
    }
}

/// The help of an argument of this command, or that of its name in every command.
fn help_of(argument: &Arg, command: &str, language: Language) -> Option<String> {
    let id = argument.get_id().as_str();
    let own = Message::name("help-option", &format!("{command} {id}"));
    let every = Message::name("help-option", id);
    said(&own, language).or_else(|| said(&every, language))
}

fn heading_of(argument: &Arg, language: Language) -> String {
    match argument.get_help_heading() {
        Some(heading) => Message::name("help-heading", &heading.to_lowercase()).text(language),
        None if argument.is_positional() => word("arguments", language),
        None => word("options", language),
    }
}

fn default_of(argument: &Arg, language: Language) -> Option<String> {
    let values = argument.get_default_values().iter();
    let values: Vec<_> = values.map(|value| value.to_string_lossy()).collect();
    let is_shown = !values.is_empty() && argument.get_action().takes_values();
    is_shown.then(|| {
        let default = Message::name("help-word", "default");
        default.with("value", values.join(", ")).text(language)
    })
}

/// `[possible values: maxillary, mandibular]`.
fn in_a_row(values: &[PossibleValue], language: Language) -> Option<String> {
    let names: Vec<&str> = values.iter().map(PossibleValue::get_name).collect();
    (!names.is_empty()).then(|| {
        let row = Message::name("help-word", "values");
        row.with("values", names.join(", ")).text(language)
    })
}

/// Each value with what it means, a line for each; `None` where they need no explanation.
fn listed(values: &[PossibleValue], language: Language) -> Option<String> {
    let explained = values.iter().filter_map(|value| {
        value.get_help()?;
        let meaning = Message::name("help-value", value.get_name()).text(language);
        Some(format!("\n- {}: {meaning}", value.get_name()))
    });
    let lines: String = explained.collect();
    (!lines.is_empty()).then(|| word("values listed", language) + &lines)
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may panic")]
mod tests {
    use super::*;
    use crate::command_line::Arguments;
    use clap::CommandFactory;
    use messages::texts_of;
    use std::collections::{BTreeMap, BTreeSet};

    const TRANSLATED: [Language; 2] = [Language::German, Language::Spanish];

    /// The keys of the help and of what is refused in a language.
    fn keys(language: Language) -> BTreeSet<String> {
        let texts = texts_of(language).iter();
        let mut help = texts.filter(|(subject, _)| *subject == "help");
        let lines = help.next().unwrap().1.lines();
        let keys = lines.filter_map(|line| Some(line.split_once(" = ")?.0));
        keys.map(str::to_owned).collect()
    }

    /// Whether a text is one of clap's own words, which are no part of a command.
    fn is_of_clap(key: &str) -> bool {
        key.starts_with("help-word-") || key.starts_with("refusal-")
    }

    /// What a text of the help is for: its keys, the first that there is, and the English.
    type Wanted = (Vec<String>, String);

    fn key(kind: &str, name: &str) -> String {
        Message::name(kind, name).key().to_owned()
    }

    fn wanted(command: &Command, above: &[&str], all: &mut Vec<Wanted>) {
        let path = [above, &[command.get_name()]].concat();
        let name = path.join(" ");
        let about = command.get_about().unwrap().to_string();
        all.push((vec![key("help-command", &name)], about));
        if let Some(more) = command.get_long_about() {
            all.push((vec![key("help-more", &name)], more.to_string()));
        }
        for argument in command.get_arguments() {
            let id = argument.get_id();
            let own = format!("{name} {id}");
            let keys = vec![key("help-option", &own), key("help-option", id.as_str())];
            all.push((keys, argument.get_help().unwrap().to_string()));
            if let Some(long) = argument.get_long_help() {
                all.push((vec![key("help-long", &own)], long.to_string()));
            }
            if let Some(heading) = argument.get_help_heading() {
                let heading = heading.to_lowercase();
                all.push((vec![key("help-heading", &heading)], heading));
            }
            for value in argument.get_possible_values() {
                if let Some(help) = value.get_help() {
                    all.push((vec![key("help-value", value.get_name())], help.to_string()));
                }
            }
        }
        let is_program = command.get_version().is_some();
        for below in command.get_subcommands() {
            wanted(below, if is_program { &[] } else { &path }, all);
        }
    }

    #[test]
    fn every_command_option_and_value_has_its_text_and_every_text_is_used() {
        let mut all = Vec::new();
        wanted(&Arguments::command(), &[], &mut all);
        for language in TRANSLATED {
            let there = keys(language);
            let mut used: BTreeMap<&str, &str> = BTreeMap::new();
            for (keys, english) in &all {
                let found = keys.iter().find(|key| there.contains(*key));
                let found = found.unwrap_or_else(|| panic!("{language}: {keys:?}: {english}"));
                // One text says one thing.
                let before = used.insert(found, english);
                assert!(before.is_none_or(|it| it == english), "{found}: {english}");
            }
            let unused =
                (there.iter()).filter(|key| !used.contains_key(key.as_str()) && !is_of_clap(key));
            let unused: Vec<&String> = unused.collect();
            assert!(unused.is_empty(), "{language}: {unused:?}");
        }
    }

    #[test]
    fn help_in_a_language_is_sound_and_names_no_key() {
        for language in TRANSLATED {
            let mut command = in_language(Arguments::command(), language);
            command.build();
            command.clone().debug_assert();
            let mut below = vec![command];
            while let Some(mut command) = below.pop() {
                for help in [command.render_help(), command.render_long_help()] {
                    let help = help.to_string();
                    let listed = |argument: &Arg| help.find(&format!("\n  {argument}"));
                    let places: Vec<_> = command.get_positionals().map(listed).collect();
                    assert!(
                        places.iter().all(Option::is_some) && places.is_sorted(),
                        "{help}"
                    );
                    for key in ["help-", "Usage:", "Options:", "[default", "possible values"] {
                        let lines = help.lines();
                        let mut left =
                            lines.filter(|line| !line.contains("--") && line.contains(key));
                        assert_eq!(left.next(), None, "{help}");
                    }
                }
                below.extend(command.get_subcommands().cloned());
            }
        }
    }
}
