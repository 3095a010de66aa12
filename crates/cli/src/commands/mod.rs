//! One file for each command.

mod agreement;
mod artefact;
mod batch;
mod check;
mod clean;
mod completions;
mod control;
mod demo;
mod explain;
mod fit;
mod gauge;
mod help;
mod inspect;
mod judge;
mod manual;
mod new;
mod protocol;
mod repeat;
pub mod start;
mod view;

use crate::command_line::{Arguments, Command, SchemaArgument};
use crate::failure::Failure;
use crate::terminal::say;
use report::again::CaseAgain;
use report::folder::{FindingRow, ImpressionRow, Overview};
use report::result::CaseResult;
use report::{
    AgreementResult, ArtefactResult, ControlResult, FitResult, GaugeResult, Inspection,
    RepeatResult, schema_text,
};
use std::process::ExitCode;

/// Carries out a command; gives the exit code.
pub fn run(arguments: Arguments) -> Result<ExitCode, Failure> {
    let language = arguments.language();
    match arguments.command {
        Command::Check(arguments) => return check::run(&arguments),
        Command::Batch(arguments) => return batch::run(&arguments),
        Command::Collect(arguments) => return batch::collect(&arguments),
        Command::Watch(arguments) => return batch::watch(&arguments),
        Command::Baseline(arguments) => batch::baseline(&arguments)?,
        Command::Judge(arguments) => judge::run(&arguments)?,
        Command::Artefact(arguments) => return artefact::run(&arguments),
        Command::Agreement(arguments) => agreement::run(&arguments)?,
        Command::Control(arguments) => return control::run(&arguments),
        Command::Fit(arguments) => return fit::run(&arguments, language),
        Command::Gauge(arguments) => gauge::run(&arguments)?,
        Command::Inspect(arguments) => return inspect::run(&arguments),
        Command::New(arguments) => return new::run(&arguments),
        Command::View { arguments } => return view::run(&arguments),
        Command::Clean { scan, out, .. } => clean::run(&scan, &out, language)?,
        Command::Completions { shell } => completions::run(shell)?,
        Command::Manual { dir } => manual::run(&dir)?,
        Command::Demo { dir, in_pieces, .. } => demo::run(&dir, in_pieces, language)?,
        Command::Help { of, html, .. } => help::run(&of, html.as_deref(), language)?,
        Command::Explain { code, .. } => explain::run(code.as_deref(), language)?,
        Command::Protocol { command } => protocol::run(&command, language)?,
        Command::Repeat(arguments) => repeat::run(&arguments)?,
        Command::Schema { of } => say(&match of {
            SchemaArgument::Result => schema_text::<CaseResult>(),
            SchemaArgument::Summary => schema_text::<ImpressionRow>(),
            SchemaArgument::Findings => schema_text::<FindingRow>(),
            SchemaArgument::Batch => schema_text::<Overview>(),
            SchemaArgument::Judge => schema_text::<CaseAgain>(),
            SchemaArgument::Inspect => schema_text::<Vec<Inspection>>(),
            SchemaArgument::Repeat => schema_text::<RepeatResult>(),
            SchemaArgument::Gauge => schema_text::<GaugeResult>(),
            SchemaArgument::Agreement => schema_text::<AgreementResult>(),
            SchemaArgument::Fit => schema_text::<FitResult>(),
            SchemaArgument::Control => schema_text::<ControlResult>(),
            SchemaArgument::Artefact => schema_text::<ArtefactResult>(),
        })?,
    }
    Ok(ExitCode::SUCCESS)
}
