//! `archproof protocol`.

use crate::command_line::ProtocolCommand;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use judge::Protocol;
use std::io::Write;
use std::path::Path;

pub fn run(command: &ProtocolCommand) -> Result<(), Failure> {
    match command {
        ProtocolCommand::Show { file: None } => say(&Protocol::default().to_toml())?,
        ProtocolCommand::Show { file: Some(file) } => say(&Protocol::from_file(file)?.to_toml())?,
        ProtocolCommand::New { file } => {
            let text = Protocol::default().to_toml();
            uninterrupted(|| write_new(file, text.as_bytes())).map_err(|source| {
                Failure::NewProtocol {
                    path: file.clone(),
                    source,
                }
            })?;
            let shown = mesh::read::shown_path(file);
            say(&format!(
                "Written to {shown}. Edit the limits you need, then run: archproof protocol check {shown}\n"
            ))?;
        }
        ProtocolCommand::Check { file } => {
            let protocol = Protocol::from_file(file)?;
            let shown = mesh::read::shown_path(file);
            say(&format!("{shown}: can be used ({:?})\n", protocol.name()))?;
        }
    }
    Ok(())
}

/// Writes a file that must not be there yet, whole or not at all.
fn write_new(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty());
    let mut aside = tempfile::NamedTempFile::new_in(folder.unwrap_or(Path::new(".")))?;
    aside.write_all(bytes)?;
    aside
        .persist_noclobber(path)
        .map_err(|refused| refused.error)?;
    Ok(())
}
