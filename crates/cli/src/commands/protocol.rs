//! `archproof protocol`.

use crate::command_line::ProtocolCommand;
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::terminal::say;
use judge::Protocol;
use mesh::read::shown_path;
use messages::{Language, text};

pub fn run(command: &ProtocolCommand, language: Language) -> Result<(), Failure> {
    let said = match command {
        ProtocolCommand::Show { file: None, .. } => Protocol::default().to_toml(),
        ProtocolCommand::Show {
            file: Some(file), ..
        } => Protocol::from_file(file)?.to_toml(),
        ProtocolCommand::New { file, .. } => {
            let limits = Protocol::default().to_toml();
            write_new(file, limits.as_bytes())?;
            text!(language, "protocol-written", path = shown_path(file)) + "\n"
        }
        ProtocolCommand::Check { file, .. } => {
            let protocol = Protocol::from_file(file)?;
            // In quotation marks, and without signs that steer a terminal.
            let name = format!("{:?}", protocol.name());
            let path = shown_path(file);
            text!(language, "protocol-usable", path = path, name = name) + "\n"
        }
    };
    say(&said)?;
    Ok(())
}
