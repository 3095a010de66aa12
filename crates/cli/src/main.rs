//! The `archproof` command. Everything it does is done by the crates beside it;
//! here are only its arguments, its progress and its exit codes.

mod command_line;
mod commands;
mod failure;
mod interrupt;
mod progress;
mod terminal;

use clap::Parser;
use command_line::Arguments;
use std::process::ExitCode;

fn main() -> ExitCode {
    interrupt::watch();
    match commands::run(Arguments::parse()) {
        Ok(code) => code,
        Err(failure) => {
            terminal::complain(&failure);
            failure::EXIT_CODE.into()
        }
    }
}
