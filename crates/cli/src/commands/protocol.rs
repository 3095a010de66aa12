//! `archproof protocol`.

use crate::command_line::ProtocolCommand;
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::terminal::say;
use judge::Protocol;

pub fn run(command: &ProtocolCommand) -> Result<(), Failure> {
    match command {
        ProtocolCommand::Show { file: None } => say(&Protocol::default().to_toml())?,
        ProtocolCommand::Show { file: Some(file) } => say(&Protocol::from_file(file)?.to_toml())?,
        ProtocolCommand::New { file } => {
            let text = Protocol::default().to_toml();
            write_new(file, text.as_bytes())?;
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
