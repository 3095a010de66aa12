//! What a person decided on a case: saved beside the results, never in them.

use check::reader::not_written;
use judge::system_says;
use mesh::read::shown_path;
use mesh::write::write_atomically;
use messages::{Message, message};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::io::ErrorKind;
use std::path::Path;
use toml::value::Datetime;

/// Name of the file.
pub const DECISION_FILE: &str = "decision.toml";
/// Letters of the initials, at most.
const INITIALS: usize = 4;
/// Letters of a note, at most.
pub const NOTE: usize = 500;

/// What is done with an impression.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Outcome {
    /// It went back to the clinic.
    Returned,
    /// It is worked from.
    WorkedFrom,
    /// Something must come first.
    WaitingFor(String),
}

impl Outcome {
    /// In words; the file holds it in English.
    fn message(&self) -> Message {
        match self {
            Self::Returned => message!("outcome-returned"),
            Self::WorkedFrom => message!("outcome-worked-from"),
            Self::WaitingFor(what) => message!("outcome-waiting-for", what = what.as_str()),
        }
    }
}

/// As the file holds it.
impl fmt::Display for Outcome {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Returned => f.write_str("returned"),
            Self::WorkedFrom => f.write_str("worked from"),
            Self::WaitingFor(what) => write!(f, "waiting for {what}"),
        }
    }
}

impl From<Outcome> for String {
    fn from(outcome: Outcome) -> Self {
        outcome.to_string()
    }
}

impl TryFrom<String> for Outcome {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        match text.as_str() {
            "returned" => Ok(Self::Returned),
            "worked from" => Ok(Self::WorkedFrom),
            _ => match text.strip_prefix("waiting for ").map(str::trim) {
                Some(what) if !what.is_empty() => Ok(Self::WaitingFor(what.to_owned())),
                _ => {
                    Err("the state must be 'returned', 'worked from' or 'waiting for …'".to_owned())
                }
            },
        }
    }
}

/// A decision, as its file holds it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Decision {
    /// What is done with the impression.
    pub state: Outcome,
    /// What was noted; may be empty.
    #[serde(default)]
    pub note: String,
    /// When (RFC 3339 with its offset from UTC).
    pub time: Datetime,
    /// Who.
    pub initials: String,
    /// SHA-256 of each scan of the result that it was made for.
    pub scans_sha256: Vec<String>,
}

impl Decision {
    /// The one in a result folder; `None` where there is none.
    ///
    /// # Errors
    /// In one line for people, when it is there and cannot be used.
    pub fn load(folder: &Path) -> Result<Option<Self>, Message> {
        let path = folder.join(DECISION_FILE);
        let refused =
            |why: Message| message!("decision-refused", path = shown_path(&path), why = why);
        let text = match std::fs::read_to_string(&path) {
            Ok(text) => text,
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
            Err(error) => {
                let why = message!("decision-unreadable", reason = system_says(&error));
                return Err(refused(why));
            }
        };
        let decision: Self = toml::from_str(&text).map_err(|error| {
            let line = error.message().replace('\n', " ");
            refused(message!("decision-is-none", reason = line))
        })?;
        if decision.time.offset.is_none() {
            return Err(refused(message!("decision-time")));
        }
        decision.initials.parse::<Initials>().map_err(refused)?;
        Ok(Some(decision))
    }

    /// Whether it was made for scans of these SHA-256.
    #[must_use]
    pub fn is_of(&self, scans_sha256: &[String]) -> bool {
        self.scans_sha256 == scans_sha256
    }

    /// Saves it into a result folder, in place of `known`, which is what was shown.
    ///
    /// # Errors
    /// In one line for people, when the file there is another than `known` or
    /// cannot be used, and when it cannot be written.
    pub fn save(&self, folder: &Path, known: Option<&Self>) -> Result<(), Message> {
        let there = Self::load(folder)?;
        if let Some(there) = there.filter(|there| Some(there) != known) {
            return Err(message!("decision-meanwhile", decision = there.message()));
        }
        let text = toml::to_string(self).map_err(|error| Message::verbatim(error.to_string()))?;
        write_atomically(&folder.join(DECISION_FILE), |out| {
            out.write_all(
                b"# What a person decided on this case; beside the results, no part of them.\n",
            )?;
            out.write_all(text.as_bytes())
        })
        .map_err(|error| not_written(&error))
    }

    /// In words, without its note.
    #[must_use]
    pub fn message(&self) -> Message {
        let time = self.time.to_string().replace('T', " ");
        let minute = time.get(..16).unwrap_or(&time);
        message!(
            "decision",
            outcome = self.state.message(),
            initials = self.initials.as_str(),
            time = minute
        )
    }

    /// In words, with its note.
    #[must_use]
    pub fn with_note(&self) -> Message {
        let decision = self.message();
        match self.note.as_str() {
            "" => decision,
            note => message!("decision-with-note", decision = decision, note = note),
        }
    }
}

/// The initials of whoever decides.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Initials(pub(super) String);

impl std::str::FromStr for Initials {
    type Err = Message;

    fn from_str(text: &str) -> Result<Self, Message> {
        let text = text.trim();
        let letters = text.chars().count();
        if letters == 0 {
            return Err(message!("initials-missing"));
        }
        let has_others = text.chars().any(|c| !c.is_alphabetic());
        // "Anna" is a name, and so is "anna"; "ANNA" may be initials.
        let is_like_a_name = letters > 2 && text.chars().any(char::is_lowercase);
        if letters > INITIALS || has_others || is_like_a_name {
            return Err(message!("initials-only", most = INITIALS));
        }
        Ok(Self(text.to_uppercase()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::queue::draft::{Answer, Draft};
    use chrono::{DateTime, Local};
    use std::fs;

    fn sums(sum: &str) -> Vec<String> {
        vec![sum.to_owned()]
    }

    fn draft(answer: Answer) -> Draft {
        Draft {
            what: "  the wash ".to_owned(),
            note: "ask about\nthe tray".to_owned(),
            ..Draft::new(answer, "ab")
        }
    }

    #[test]
    fn a_decision_survives_the_round_trip_and_counts_for_its_scans_alone() {
        let folder = tempfile::tempdir().unwrap();
        assert_eq!(Decision::load(folder.path()), Ok(None));
        for (answer, state) in [
            (Answer::Returned, "returned"),
            (Answer::WorkedFrom, "worked from"),
            (Answer::WaitingFor, "waiting for the wash"),
        ] {
            let known = Decision::load(folder.path()).unwrap();
            let made = draft(answer).decision(Local::now(), &sums("1a")).unwrap();
            made.save(folder.path(), known.as_ref()).unwrap();
            let read = Decision::load(folder.path()).unwrap().unwrap();
            assert_eq!(read, made);
            assert_eq!(read.state.to_string(), state);
            assert_eq!((&*read.initials, &*read.note), ("AB", "ask about the tray"));
            assert!(read.is_of(&sums("1a")) && !read.is_of(&sums("2b")));
            // RFC 3339 with an offset, by another reader.
            let time = DateTime::parse_from_rfc3339(&read.time.to_string()).unwrap();
            assert!((Local::now() - time.with_timezone(&Local)).num_seconds() < 60);
        }
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
    }

    #[test]
    fn names_are_refused_with_a_hint() {
        for good in ["AB", "ab", "ÅÖ", " LMNO "] {
            assert!(good.parse::<Initials>().is_ok(), "{good}");
        }
        for bad in ["Anna", "anna", "A. B.", "ABCDE", "A1", "Dr A"] {
            let refused = bad.parse::<Initials>().unwrap_err().to_string();
            assert!(refused.contains("names are not stored"), "{bad}: {refused}");
        }
    }

    #[test]
    fn what_is_no_decision_is_reported_in_one_line_and_stays() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join(DECISION_FILE);
        let good = "state = \"returned\"\ntime = 2026-03-01T08:30:00+01:00\n\
            initials = \"AB\"\nscans_sha256 = [\"1a\"]\n";
        fs::write(&path, good).unwrap();
        assert!(Decision::load(folder.path()).unwrap().is_some());
        for bad in [
            "state = ".to_owned(),
            good.replace("returned", "thrown away"),
            good.replace("returned", "waiting for "),
            good.replace("+01:00", ""),
            good.replace("2026-03-01T08:30:00+01:00", "2026-03-01"),
            good.replace("AB", "Anna"),
            good.replace("initials", "name"),
        ] {
            fs::write(&path, &bad).unwrap();
            let refused = Decision::load(folder.path()).unwrap_err();
            let said = refused.to_string();
            assert!(said.contains(DECISION_FILE) && !said.contains('\n'));
            let made = draft(Answer::Returned).decision(Local::now(), &[]).unwrap();
            assert_eq!(made.save(folder.path(), None), Err(refused));
            assert_eq!(fs::read_to_string(&path).unwrap(), bad);
        }
    }

    #[test]
    fn what_somebody_else_decided_meanwhile_is_not_replaced_unseen() {
        let folder = tempfile::tempdir().unwrap();
        let of = |answer| draft(answer).decision(Local::now(), &[]).unwrap();
        let theirs = of(Answer::Returned);
        theirs.save(folder.path(), None).unwrap();
        let ours = of(Answer::WorkedFrom);
        assert!(ours.save(folder.path(), None).is_err());
        assert_eq!(Decision::load(folder.path()), Ok(Some(theirs.clone())));
        ours.save(folder.path(), Some(&theirs)).unwrap();
        assert_eq!(Decision::load(folder.path()), Ok(Some(ours)));
    }
}
