//! The `archproof` command. Everything it does is done by the crates beside it;
//! here are only its arguments, its progress and its exit codes.

mod arguments;
mod commands;
mod failure;
mod interrupt;
mod progress;
mod terminal;

use arguments::Arguments;
use clap::Parser;
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
