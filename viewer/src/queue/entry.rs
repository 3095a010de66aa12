//! A case of the list: what is shown of it in a row.

use super::decision::{Decision, Outcome};
use super::found::{Found, Input};
use messages::{Language, text};
use report::folder::CaseRecord;
use report::result::{Cause, Finding, Verdict};
use report::{ResultHead, read_head, words};
use std::path::{Path, PathBuf};

/// What a case asks of a person, what is most pressing first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum State {
    /// Something must be answered, sent or looked at before it can be judged.
    ToLookAt,
    /// Rework or retake: it goes back.
    ToReturn,
    /// It was not checked yet.
    Waiting,
    /// Accepted.
    ToWorkFrom,
    /// A person decided to wait for something.
    OnHold,
    /// A person decided.
    Decided,
    /// Its result is being read.
    BeingRead,
}

impl State {
    /// All of them, what is most pressing first.
    pub const ALL: [Self; 7] = [
        Self::ToLookAt,
        Self::ToReturn,
        Self::Waiting,
        Self::ToWorkFrom,
        Self::OnHold,
        Self::Decided,
        Self::BeingRead,
    ];

    /// In words.
    #[must_use]
    pub fn words(self, language: Language) -> String {
        match self {
            Self::ToLookAt => text!(language, "state-to-look-at"),
            Self::ToReturn => text!(language, "state-to-return"),
            Self::Waiting => text!(language, "state-waiting"),
            Self::ToWorkFrom => text!(language, "state-to-work-from"),
            Self::OnHold => text!(language, "state-on-hold"),
            Self::Decided => text!(language, "state-decided"),
            Self::BeingRead => text!(language, "state-being-read"),
        }
    }

    fn of(verdict: Verdict) -> Self {
        match verdict {
            Verdict::Undecided => Self::ToLookAt,
            Verdict::Rework | Verdict::Retake => Self::ToReturn,
            Verdict::Accept => Self::ToWorkFrom,
        }
    }
}

/// A case of the list.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Where it lies.
    pub found: Found,
    /// Its pseudonym; the name of its folder where it has none.
    pub name: String,
    /// What it asks of a person.
    pub state: State,
    /// What came of the check, or why there is no result.
    pub about: String,
    /// What was decided, or why that cannot be read.
    pub decided: String,
    /// SHA-256 of each scan of the result.
    pub scans_sha256: Vec<String>,
    /// The language that it is described in.
    pub(super) language: Language,
}

/// What opening a case asks for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Opening {
    /// Its result, which can be checked again from the case file.
    Result(PathBuf, Option<PathBuf>),
    /// The check of a case file, with a folder for the results.
    Check(PathBuf, PathBuf),
    /// Scans onto the desk.
    Desk(PathBuf),
    /// Nothing can be opened, and why.
    Nothing(String),
}

impl Entry {
    /// A case whose result is still to be read, or that has none.
    #[must_use]
    pub fn new(found: Found, language: Language) -> Self {
        let mut entry = Self {
            name: folder_name(&found),
            state: State::Waiting,
            about: String::new(),
            decided: String::new(),
            scans_sha256: Vec::new(),
            language,
            found,
        };
        if entry.found.results.is_some() {
            entry.state = State::BeingRead;
        } else if let Some(problem) = &entry.found.problem {
            entry.about = problem.text(language);
            entry.state = State::ToLookAt;
        } else {
            entry.about = match &entry.found.input {
                Some(Input::Scans(_)) => text!(language, "queue-scans-alone"),
                _ => text!(language, "queue-not-checked"),
            };
        }
        entry
    }

    /// As [`Entry::new`], with what its files say.
    #[must_use]
    pub fn read(found: Found, language: Language) -> Self {
        let mut entry = Self::new(found, language);
        if let Some(Input::CaseFile(file)) = &entry.found.input
            && let Some(name) = pseudonym(file)
        {
            entry.name = name;
        }
        if let Some(folder) = entry.found.results.clone() {
            entry.read_results(&folder);
        }
        entry
    }

    fn read_results(&mut self, folder: &Path) {
        match read_head(folder) {
            Ok(head) => self.take(&head),
            Err(why) => {
                self.state = State::ToLookAt;
                self.about = why.message().text(self.language);
                if let Ok(record) = CaseRecord::read(folder) {
                    if record.is_unreadable() {
                        self.about = record.said(self.language);
                    }
                    let row = record.impressions.into_iter().next().unwrap_or_default();
                    self.name = row.case.unwrap_or_else(|| self.name.clone());
                }
                return;
            }
        }
        match Decision::load(folder) {
            Ok(Some(decision)) => self.decide(&decision),
            Ok(None) => {}
            Err(why) => self.decided = why.text(self.language),
        }
    }

    fn take(&mut self, head: &ResultHead) {
        self.name.clone_from(&head.case);
        self.state = State::of(head.verdict);
        self.about = about(head, self.language);
        let scans = head.impressions.iter().map(|one| one.scan.sha256.clone());
        self.scans_sha256 = scans.collect();
    }

    /// Takes a decision, if it was made for these scans.
    pub fn decide(&mut self, decision: &Decision) {
        if !decision.is_of(&self.scans_sha256) {
            self.decided = text!(self.language, "decision-of-other-scans");
            return;
        }
        self.state = match decision.state {
            Outcome::WaitingFor(_) => State::OnHold,
            Outcome::Returned | Outcome::WorkedFrom => State::Decided,
        };
        self.decided = decision.with_note().text(self.language);
    }

    /// What opening it asks for.
    #[must_use]
    pub fn opening(&self) -> Opening {
        let case_file = match &self.found.input {
            Some(Input::Scans(folder)) if self.found.results.is_none() => {
                return Opening::Desk(folder.clone());
            }
            Some(Input::CaseFile(file)) => Some(file.clone()),
            _ => None,
        };
        let results = self.found.results.clone();
        let has_result = results
            .as_ref()
            .filter(|results| results.join(report::RESULT_FILE).is_file());
        match (has_result.cloned(), case_file) {
            (Some(results), case_file) => Opening::Result(results, case_file),
            (None, Some(file)) => {
                let beside = file.with_file_name(report::default_folder(&self.name));
                Opening::Check(file, beside)
            }
            (None, None) => Opening::Nothing(self.about.clone()),
        }
    }

    /// Whether a text, in small letters, is in anything that is shown of it.
    #[must_use]
    pub fn holds(&self, text: &str) -> bool {
        [&self.name, &self.found.place, &self.about, &self.decided]
            .into_iter()
            .any(|shown| shown.to_lowercase().contains(text))
            || self
                .state
                .words(self.language)
                .to_lowercase()
                .contains(text)
    }
}

fn folder_name(found: &Found) -> String {
    let last = found.place.rsplit('/').next().unwrap_or_default();
    last.to_owned()
}

/// The pseudonym that a case file gives.
fn pseudonym(file: &Path) -> Option<String> {
    let text = std::fs::read_to_string(file).ok()?;
    let table: toml::Table = text.parse().ok()?;
    let name = table.get("case")?.as_str()?.trim();
    (!name.is_empty()).then(|| name.to_owned())
}

/// What bears on the verdict, most pressing first, in one line.
fn about(head: &ResultHead, language: Language) -> String {
    let bears = |finding: &&Finding| !matches!(finding.cause, Cause::Note | Cause::HeldBack);
    let bearing: Vec<&Finding> = head.findings.iter().filter(bears).collect();
    let verdict = words::verdict_word(head.verdict, language);
    let Some(first) = bearing.first() else {
        return verdict;
    };
    let check = words::check_names(&[first.check.as_str()], language);
    let zone = first.zone.as_deref();
    let zone = zone.map(|zone| words::zone_name(zone, language));
    let side = first.side.map(|side| words::side_word(side, language));
    let parts: Vec<String> = [Some(check), zone, side].into_iter().flatten().collect();
    let (what, cause) = (parts.join(", "), words::cause_word(first, language));
    match bearing.len() - 1 {
        0 => text!(
            language,
            "queue-about",
            verdict = verdict,
            cause = cause,
            what = what
        ),
        more => text!(
            language,
            "queue-about-more",
            verdict = verdict,
            cause = cause,
            what = what,
            more = more
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::queue::draft::{Answer, Draft};
    use crate::queue::found::cases_in;
    use crate::testing::write_result;
    use chrono::Local;
    use std::fs;

    #[test]
    fn a_case_goes_from_waiting_to_its_verdict_to_decided() {
        let folder = tempfile::tempdir().unwrap();
        let case = folder.path().join("x");
        fs::create_dir(&case).unwrap();
        fs::write(case.join("case.toml"), "case = \"D-7\"").unwrap();
        let entry = || {
            Entry::read(
                cases_in(folder.path()).unwrap().remove(0),
                Language::English,
            )
        };
        let waiting = entry();
        assert_eq!((&*waiting.name, waiting.state), ("D-7", State::Waiting));
        let results = case.join("archproof-D-7");
        let opening = Opening::Check(case.join("case.toml"), results.clone());
        assert_eq!(waiting.opening(), opening);

        for (verdict, state) in [
            (Verdict::Undecided, State::ToLookAt),
            (Verdict::Rework, State::ToReturn),
            (Verdict::Retake, State::ToReturn),
            (Verdict::Accept, State::ToWorkFrom),
        ] {
            write_result(&results, "D-7", verdict);
            let read = entry();
            assert_eq!(read.state, state);
            assert!(read.holds("show-through") && read.holds("d-7") && !read.holds("zz"));
        }
        let draft = |answer| Draft {
            what: "the tray".to_owned(),
            ..Draft::new(answer, "AB")
        };
        for (answer, state) in [
            (Answer::WaitingFor, State::OnHold),
            (Answer::Returned, State::Decided),
        ] {
            let known = Decision::load(&results).unwrap();
            let made = draft(answer).decision(Local::now(), &entry().scans_sha256);
            made.unwrap().save(&results, known.as_ref()).unwrap();
            assert_eq!(entry().state, state);
        }
        let file = Some(case.join("case.toml"));
        assert_eq!(entry().opening(), Opening::Result(results.clone(), file));

        // A decision on other scans does not count, and one that cannot be read neither.
        let known = Decision::load(&results).unwrap();
        let other = draft(Answer::Returned).decision(Local::now(), &["ff".to_owned()]);
        other.unwrap().save(&results, known.as_ref()).unwrap();
        assert_eq!(entry().state, State::ToWorkFrom);
        assert!(entry().decided.contains("other scans"));
        fs::write(results.join("decision.toml"), "?").unwrap();
        assert_eq!(entry().state, State::ToWorkFrom);
        assert!(entry().decided.contains("is no decision"));
    }

    #[test]
    fn what_cannot_be_read_is_to_be_looked_at_and_says_why() {
        let folder = tempfile::tempdir().unwrap();
        let case = folder.path().join("broken");
        fs::create_dir(&case).unwrap();
        fs::write(case.join("result.json"), "{").unwrap();
        let entry = Entry::read(
            cases_in(folder.path()).unwrap().remove(0),
            Language::English,
        );
        assert_eq!((&*entry.name, entry.state), ("broken", State::ToLookAt));
        assert!(entry.about.contains("is no result"), "{}", entry.about);
    }
}
