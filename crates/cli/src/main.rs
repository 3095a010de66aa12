//! The `archproof` command. Everything it does is done by the crates beside it;
//! here are only its arguments, its progress and its exit codes.

mod command_line;
mod commands;
mod failure;
mod interrupt;
mod new_file;
mod pages;
mod progress;
mod terminal;

use clap::CommandFactory;
use command_line::Arguments;
use commands::start;
use failure::Failure;
use messages::Language;
use std::ffi::OsString;
use std::process::ExitCode;

fn main() -> ExitCode {
    interrupt::watch();
    let (language, outcome) = carried_out();
    match outcome {
        Ok(code) => code,
        Err(failure) => {
            terminal::complain(&failure.message().text(language));
            failure::EXIT_CODE.into()
        }
    }
}

/// Carries out the command, or what a path without a command asks for; gives the language to
/// say a failure in.
fn carried_out() -> (Language, Result<ExitCode, Failure>) {
    let given: Vec<OsString> = std::env::args_os().skip(1).collect();
    let is_command = |path: &std::path::Path| {
        let known = Arguments::command();
        path.to_str()
            .is_some_and(|name| known.find_subcommand(name).is_some())
    };
    if let Some(path) = start::path_given(&given).filter(|path| !is_command(path)) {
        return (Language::of_system(), start::run(&path));
    }
    if start::is_double_click(&given)
        && let Some(opened) = start::desk()
    {
        return (Language::of_system(), opened);
    }
    let arguments = Arguments::read(&given);
    (arguments.language(), commands::run(arguments))
}
