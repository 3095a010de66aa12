//! `archproof fit`.

use crate::command_line::FitArguments;
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::terminal::say;
use check::FitSource;
use messages::Language;
use report::{Conclusion, FitResult, fit_page, fit_text, json_text};
use std::process::ExitCode;

pub fn run(arguments: &FitArguments, language: Language) -> Result<ExitCode, Failure> {
    let source = FitSource {
        scan: arguments.scan.clone(),
        trays: arguments.trays.clone(),
        arch: arguments.arch.map(Into::into),
        unit: arguments.unit,
        protocol: arguments.protocol.clone(),
        is_shown: arguments.write.is_some(),
    };
    let checked = source.check()?;
    let result = FitResult::of(&checked);
    if let Some(file) = &arguments.write {
        let page = fit_page(&checked, &result, language).map_err(|source| Failure::NewFile {
            path: file.clone(),
            source,
        })?;
        write_new(file, page.as_bytes())?;
    }
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&fit_text(&result, language))?;
    }
    Ok(ExitCode::from(match result.tried.conclusion {
        Conclusion::Take => 0,
        Conclusion::Adapt | Conclusion::Individual => 1,
        Conclusion::NoneOfThisJaw => 3,
    }))
}
