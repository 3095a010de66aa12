//! The language of what a command prints.

use arguments::language_parser;
use clap::Args;
use messages::Language;

/// The language of what a command prints.
#[derive(Debug, Clone, Copy, Default, Args)]
pub struct Spoken {
    /// Language of what is printed [default: the system's]
    #[arg(long, value_name = "LANGUAGE", value_parser = language_parser())]
    pub language: Option<Language>,
}

impl Spoken {
    /// The language that was asked for, or the system's.
    pub fn language(self) -> Language {
        self.language.unwrap_or_else(Language::of_system)
    }
}
