//! `archproof control`.

use crate::command_line::ControlArguments;
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::terminal::say;
use report::{InControl, check_standard, control_page, control_text, json_text};
use statistics::control::Rule;
use std::process::ExitCode;

pub fn run(arguments: &ControlArguments) -> Result<ExitCode, Failure> {
    let rules = if arguments.rules.is_empty() {
        Rule::DEFAULT.to_vec()
    } else {
        arguments.rules.clone()
    };
    let language = arguments.spoken.language();
    let result = check_standard(&arguments.dir, arguments.first.into(), &rules)?;
    if let Some(file) = &arguments.write {
        write_new(file, control_page(&result, language).as_bytes())?;
    }
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&control_text(&result, language))?;
    }
    Ok(ExitCode::from(match result.outcome {
        InControl::InControl => 0,
        InControl::OutOfControl => 1,
        InControl::TooFew => 3,
    }))
}
