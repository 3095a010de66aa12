//! `archproof artefact`.

use crate::command_line::ArtefactArguments;
use crate::failure::Failure;
use crate::terminal::say;
use report::artefact::{Outcome, artefact_text, check_artefact};
use report::json_text;
use std::process::ExitCode;

pub fn run(arguments: &ArtefactArguments) -> Result<ExitCode, Failure> {
    let result = check_artefact(&arguments.description, &arguments.scans, arguments.unit)?;
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&artefact_text(&result))?;
    }
    Ok(ExitCode::from(match result.outcome {
        Outcome::Conforming => 0,
        Outcome::NotConforming => 1,
        Outcome::Borderline | Outcome::NotJudged => 3,
    }))
}
