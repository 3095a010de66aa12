//! `archproof artefact`.

use crate::command_line::ArtefactArguments;
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::terminal::say;
use report::{ArtefactResult, Outcome, artefact_text, json_text};
use std::process::ExitCode;
use std::time::SystemTime;
use study::artefact::check_artefact;

pub fn run(arguments: &ArtefactArguments) -> Result<ExitCode, Failure> {
    let language = arguments.spoken.language();
    let study = check_artefact(&arguments.description, &arguments.scans, arguments.unit)?;
    if let Some(file) = &arguments.write {
        let scanner = study
            .scanner(SystemTime::now(), language)
            .ok_or(Failure::NoCertifiedLength)?;
        write_new(file, scanner.to_toml().as_bytes())?;
    }
    let result = ArtefactResult::of(&study);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&artefact_text(&result, language))?;
    }
    Ok(ExitCode::from(match result.outcome {
        Outcome::Conforming => 0,
        Outcome::NotConforming => 1,
        Outcome::Borderline | Outcome::NotJudged => 3,
    }))
}
