//! `archproof view`: starts the window, which is a program of its own, so that
//! nobody needs graphics to check an impression.

use crate::failure::Failure;
use std::env::{consts::EXE_SUFFIX, current_exe};
use std::ffi::OsString;
use std::io::ErrorKind;
use std::path::PathBuf;
use std::process::{Command, ExitCode};

const VIEWER: &str = "archproof-viewer";

pub fn run(arguments: &[OsString]) -> Result<ExitCode, Failure> {
    let mut command = Command::new(program());
    command.args(arguments);
    let status = command.status().map_err(|source| match source.kind() {
        ErrorKind::NotFound => Failure::NoViewer,
        _ => Failure::Viewer(source),
    })?;
    let code = status.code().and_then(|code| u8::try_from(code).ok());
    Ok(ExitCode::from(code.unwrap_or(crate::failure::EXIT_CODE)))
}

/// The program beside this one, or else the one on the PATH.
fn program() -> PathBuf {
    beside().unwrap_or_else(name)
}

/// The program beside this one, if it lies there.
pub fn beside() -> Option<PathBuf> {
    let this = current_exe().ok()?;
    let beside = this.parent()?.join(name());
    beside.is_file().then_some(beside)
}

fn name() -> PathBuf {
    PathBuf::from(format!("{VIEWER}{EXE_SUFFIX}"))
}
