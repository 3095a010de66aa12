//! A decision that is being written.

use super::decision::{Decision, Initials, NOTE, Outcome};
use chrono::{DateTime, Local, SecondsFormat};
use messages::{Language, Message, message, text};
use std::path::{Path, PathBuf};

/// The three answers that can be given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// It goes back to the clinic.
    Returned,
    /// It is worked from.
    WorkedFrom,
    /// Something must come first.
    WaitingFor,
}

impl Answer {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Returned, Self::WorkedFrom, Self::WaitingFor];

    /// In words.
    #[must_use]
    pub fn words(self, language: Language) -> String {
        match self {
            Self::Returned => text!(language, "answer-returned"),
            Self::WorkedFrom => text!(language, "answer-worked-from"),
            Self::WaitingFor => text!(language, "answer-waiting-for"),
        }
    }
}

/// A decision that is being written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Draft {
    /// What was chosen.
    pub answer: Answer,
    /// What is waited for.
    pub what: String,
    /// The note.
    pub note: String,
    /// The initials.
    pub initials: String,
    /// Why it could not be saved.
    pub refused: Message,
}

impl Draft {
    /// A new one; `initials` are those of the decision before.
    #[must_use]
    pub fn new(answer: Answer, initials: &str) -> Self {
        Self {
            answer,
            what: String::new(),
            note: String::new(),
            initials: initials.to_owned(),
            refused: Message::default(),
        }
    }

    /// The decision, made `at` this time for scans of these SHA-256.
    ///
    /// # Errors
    /// In one line for people, when something is missing or not to be stored.
    pub fn decision(
        &self,
        at: DateTime<Local>,
        scans_sha256: &[String],
    ) -> Result<Decision, Message> {
        let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        let state = match self.answer {
            Answer::Returned => Outcome::Returned,
            Answer::WorkedFrom => Outcome::WorkedFrom,
            Answer::WaitingFor if self.what.trim().is_empty() => {
                return Err(message!("draft-waiting-for-what"));
            }
            Answer::WaitingFor => Outcome::WaitingFor(one_line(&self.what)),
        };
        let Initials(initials) = self.initials.parse()?;
        let time = at.to_rfc3339_opts(SecondsFormat::Secs, false);
        Ok(Decision {
            state,
            note: one_line(&self.note).chars().take(NOTE).collect(),
            time: time.parse().map_err(|_| message!("draft-no-clock"))?,
            initials,
            scans_sha256: scans_sha256.to_owned(),
        })
    }
}

/// The decision on one result folder that is being written.
#[derive(Debug, Clone)]
pub struct Deciding {
    /// Pseudonym of the case.
    pub case: String,
    /// What was written so far.
    pub draft: Draft,
    folder: PathBuf,
    scans_sha256: Vec<String>,
    known: Option<Decision>,
}

impl Deciding {
    /// Begins with an answer; `initials` are those of the decision before.
    ///
    /// # Errors
    /// In one line for people, when the folder holds a decision that cannot be read.
    pub fn begin(
        (case, folder): (&str, &Path),
        scans_sha256: &[String],
        answer: Answer,
        initials: &str,
    ) -> Result<Self, Message> {
        Ok(Self {
            case: case.to_owned(),
            draft: Draft::new(answer, initials),
            known: Decision::load(folder)?,
            folder: folder.to_owned(),
            scans_sha256: scans_sha256.to_owned(),
        })
    }

    /// Saves it; `None`, with the reason in the draft, where that is not possible.
    pub fn save(&mut self) -> Option<Decision> {
        let made = self.draft.decision(Local::now(), &self.scans_sha256);
        let saved = made.and_then(|made| {
            made.save(&self.folder, self.known.as_ref())?;
            Ok(made)
        });
        saved.map_err(|refused| self.draft.refused = refused).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_missing_is_asked_for_and_nothing_is_saved() {
        let folder = tempfile::tempdir().unwrap();
        let mut deciding =
            Deciding::begin(("D-1", folder.path()), &[], Answer::WaitingFor, "").unwrap();
        assert_eq!(deciding.save(), None);
        assert!(deciding.draft.refused.to_string().contains("waiting for"));
        deciding.draft.what = "the tray".to_owned();
        assert_eq!(deciding.save(), None);
        assert!(deciding.draft.refused.to_string().contains("initials"));
        assert_eq!(Decision::load(folder.path()), Ok(None));
        deciding.draft.initials = "ab".to_owned();
        let saved = deciding.save();
        assert!(saved.is_some());
        assert_eq!(Decision::load(folder.path()), Ok(saved));
    }
}
