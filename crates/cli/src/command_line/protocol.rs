//! What may be asked of acceptance limits.

use super::Spoken;
use arguments::language_parser;
use clap::Subcommand;
use messages::Language;
use std::path::PathBuf;

#[derive(Debug, Subcommand)]
pub enum ProtocolCommand {
    /// Print a protocol with every limit and its source; the default one without a file
    Show {
        /// Protocol file
        file: Option<PathBuf>,
        /// Language of error messages; the protocol is printed as it is [default: the system's]
        #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
        language: Option<Language>,
    },
    /// Write every limit with its source into a new file, to be changed
    New {
        /// Protocol file to write; one that is there already is left alone
        file: PathBuf,
        #[command(flatten)]
        spoken: Spoken,
    },
    /// Say whether a protocol file can be used
    Check {
        /// Protocol file
        file: PathBuf,
        #[command(flatten)]
        spoken: Spoken,
    },
}

impl ProtocolCommand {
    /// The language of what is printed.
    pub fn spoken(&self) -> Spoken {
        match self {
            Self::Show { language, .. } => Spoken {
                language: *language,
            },
            Self::New { spoken, .. } | Self::Check { spoken, .. } => *spoken,
        }
    }
}
