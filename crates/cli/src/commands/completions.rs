//! `archproof completions`: what a shell reads to complete commands and options.

use crate::command_line::Arguments;
use crate::failure::Failure;
use crate::terminal::say;
use clap::CommandFactory;
use clap_complete::{Shell, generate};

/// Prints the script for a shell.
pub fn run(shell: Shell) -> Result<(), Failure> {
    let mut script = Vec::new();
    generate(shell, &mut Arguments::command(), "archproof", &mut script);
    say(&String::from_utf8_lossy(&script))?;
    Ok(())
}
