//! `archproof fit`.

use crate::command_line::FitArguments;
use crate::failure::Failure;
use crate::terminal::say;
use check::FitSource;
use report::{Conclusion, FitResult, fit_text, json_text};
use std::process::ExitCode;

pub fn run(arguments: &FitArguments) -> Result<ExitCode, Failure> {
    let source = FitSource {
        scan: arguments.scan.clone(),
        trays: arguments.trays.clone(),
        arch: arguments.arch.map(Into::into),
        unit: arguments.unit,
        protocol: arguments.protocol.clone(),
    };
    let result = FitResult::of(&source.check()?);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&fit_text(&result, arguments.spoken.language()))?;
    }
    Ok(ExitCode::from(match result.tried.conclusion {
        Conclusion::Take => 0,
        Conclusion::Adapt | Conclusion::Individual => 1,
        Conclusion::NoneOfThisJaw => 3,
    }))
}
