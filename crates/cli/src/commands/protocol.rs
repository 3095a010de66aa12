//! `archproof protocol`.

use crate::arguments::ProtocolCommand;
use crate::failure::Failure;
use crate::terminal::say;
use judge::Protocol;

pub fn run(command: &ProtocolCommand) -> Result<(), Failure> {
    match command {
        ProtocolCommand::Show { file: None } => say(&Protocol::default().to_toml())?,
        ProtocolCommand::Show { file: Some(file) } => say(&Protocol::from_file(file)?.to_toml())?,
        ProtocolCommand::Check { file } => {
            let protocol = Protocol::from_file(file)?;
            let shown = mesh::read::shown_path(file);
            say(&format!("{shown}: can be used ({:?})\n", protocol.name()))?;
        }
    }
    Ok(())
}
