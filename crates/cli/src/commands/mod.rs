//! One file for each command.

mod check;
mod clean;
mod demo;
mod explain;
mod inspect;
mod protocol;
mod view;

use crate::arguments::{Arguments, Command};
use crate::failure::Failure;
use crate::terminal::say;
use std::process::ExitCode;

/// Carries out a command; gives the exit code.
pub fn run(arguments: Arguments) -> Result<ExitCode, Failure> {
    match arguments.command {
        Command::Check(arguments) => return check::run(&arguments),
        Command::Inspect(arguments) => return inspect::run(&arguments),
        Command::View { arguments } => return view::run(&arguments),
        Command::Clean { scan, out } => clean::run(&scan, &out)?,
        Command::Demo { dir } => demo::run(&dir)?,
        Command::Explain { code } => explain::run(code.as_deref())?,
        Command::Protocol { command } => protocol::run(&command)?,
        Command::Schema => say(&report::result::json_schema_text())?,
    }
    Ok(ExitCode::SUCCESS)
}
