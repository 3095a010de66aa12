//! The desk: scans that were dropped on the window, what each was recognised
//! as, and the case that is made of them.

use check::proposal::{
    Evidence, Looking, Proposal, ProposalError, Role, Stated, case_text, is_scan, look, neutral_id,
    propose, scans_in, write_another_case,
};
use messages::{Language, Message, message};
use report::RESULT_FILE;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};

/// Scans on the desk with what is known of them.
#[derive(Default)]
pub struct Desk {
    files: Vec<PathBuf>,
    looking: Option<Receiver<Told>>,
    step: Option<Looking>,
    evidence: Evidence,
    stated: Stated,
    proposal: Option<Proposal>,
    /// Pseudonym of the case; empty for a neutral one.
    pub id: String,
    /// What could not be done, for people.
    pub notice: Message,
}

enum Told {
    At(Looking),
    Done(Box<Evidence>),
}

/// What was dropped asks for.
#[derive(Debug, PartialEq, Eq)]
pub enum Dropped {
    /// Scans, which now lie on the desk.
    Scans,
    /// A case file or a result folder, to be opened.
    Open(PathBuf),
}

impl Desk {
    /// Whether a path is a folder without a result, whose scans go onto the desk.
    #[must_use]
    pub fn takes(path: &Path) -> bool {
        path.is_dir() && !path.join(RESULT_FILE).is_file()
    }

    /// Takes what was dropped or chosen.
    pub fn take(&mut self, paths: &[PathBuf]) -> Dropped {
        self.notice = Message::default();
        let mut scans = Vec::new();
        for path in paths {
            let is_case = path
                .extension()
                .is_some_and(|e| e.eq_ignore_ascii_case("toml"));
            if is_case || path.join(RESULT_FILE).is_file() {
                return Dropped::Open(path.clone());
            }
            let case = path.join(check::proposal::CASE_FILE);
            if case.is_file() {
                return Dropped::Open(case);
            }
            if path.is_dir() {
                match scans_in(path) {
                    Ok(found) => scans.extend(found),
                    Err(why) => self.notice = why.message(),
                }
            } else if is_scan(path) {
                scans.push(path.clone());
            }
        }
        self.add(scans);
        Dropped::Scans
    }

    fn add(&mut self, scans: Vec<PathBuf>) {
        if scans.is_empty() && self.notice.sentences().is_empty() {
            self.notice = message!("desk-no-scan");
        }
        let mut files = self.files.clone();
        files.extend(scans);
        files.sort();
        files.dedup();
        let folders = files.iter().map(|file| file.parent());
        if folders
            .clone()
            .any(|folder| Some(folder) != folders.clone().next())
        {
            self.notice = message!("desk-one-folder");
            return;
        }
        if files != self.files {
            self.files = files;
            self.look();
        }
    }

    /// Looks at the scans in the background.
    fn look(&mut self) {
        let (tell, told) = channel();
        let files = self.files.clone();
        self.stated = Stated::default();
        self.proposal = None;
        self.looking = Some(told);
        std::thread::spawn(move || {
            let steps = std::sync::Mutex::new(tell.clone());
            let evidence = look(&files, None, &|step| {
                if let Ok(tell) = steps.lock() {
                    let _ = tell.send(Told::At(step));
                }
            });
            let _ = tell.send(Told::Done(Box::new(evidence)));
        });
    }

    /// Takes what the looking thread has told; whether there was anything.
    pub fn pass(&mut self) -> bool {
        let Some(told) = &self.looking else {
            return false;
        };
        let news: Vec<Told> = told.try_iter().collect();
        let is_new = !news.is_empty();
        for one in news {
            match one {
                Told::At(step) => self.step = Some(step),
                Told::Done(evidence) => {
                    self.evidence = *evidence;
                    self.looking = None;
                    self.step = None;
                    self.propose();
                }
            }
        }
        is_new
    }

    fn propose(&mut self) {
        self.proposal = Some(propose(&self.evidence, &self.stated));
    }

    /// Takes everything off the desk.
    pub fn clear(&mut self) {
        *self = Self::default();
    }

    /// Whether no scan lies on it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.files.is_empty()
    }

    /// What is being looked at.
    #[must_use]
    pub fn step(&self) -> Option<Looking> {
        self.looking.as_ref().and(self.step)
    }

    /// What was found out, and what is proposed, once that is known.
    #[must_use]
    pub fn proposal(&self) -> Option<(&Evidence, &Proposal)> {
        Some((&self.evidence, self.proposal.as_ref()?))
    }

    /// States what a scan is.
    pub fn state(&mut self, scan: usize, role: Role) {
        self.stated.roles.insert(scan, role);
        self.propose();
    }

    /// Why the case cannot be checked yet; `None` where it can.
    #[must_use]
    pub fn waits_for(&self) -> Option<Message> {
        match &self.proposal {
            None => Some(message!("desk-looking")),
            Some(proposal) if !proposal.questions.is_empty() => Some(message!("desk-open-rows")),
            Some(proposal) if !proposal.has_impression() => Some(message!("desk-no-impression")),
            Some(_) => None,
        }
    }

    /// Writes the case file beside the scans, with comments in a language; gives it and the
    /// folder for results.
    ///
    /// # Errors
    /// A line for people.
    pub fn case_file(&self, language: Language) -> Result<[PathBuf; 2], Message> {
        let Some(proposal) = &self.proposal else {
            return Err(message!("desk-looking"));
        };
        let id = match self.id.trim() {
            "" => neutral_id(&self.evidence),
            id => id.to_owned(),
        };
        let text =
            case_text(&self.evidence, proposal, &id, language).map_err(|why| why.message())?;
        let folder = self.files.first().and_then(|file| file.parent());
        let folder = folder.unwrap_or(Path::new(""));
        let file = write_another_case(folder, &text).map_err(|why: ProposalError| why.message())?;
        Ok([file, folder.join(report::default_folder(&id))])
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may panic")]
mod tests {
    use super::*;
    use mesh::write::{write_ply, write_stl};
    use phantom::{Options, Phantom};

    #[test]
    fn a_dropped_folder_becomes_a_case_once_what_is_open_is_stated() {
        let folder = tempfile::tempdir().unwrap();
        let made = Phantom::new(&Options {
            edge_mm: 0.9,
            tray_edge_mm: 0.9,
            ..Options::default()
        });
        write_ply(&folder.path().join("a.ply"), &made.impression).unwrap();
        write_stl(&folder.path().join("b.stl"), &made.tray).unwrap();
        let mut desk = Desk::default();
        assert_eq!(desk.take(&[folder.path().to_owned()]), Dropped::Scans);
        while desk.proposal().is_none() {
            desk.pass();
            std::thread::sleep(std::time::Duration::from_millis(20));
        }
        assert!(desk.waits_for().is_some());
        let (_, proposal) = desk.proposal().unwrap();
        let (scan, role) = proposal.questions[0].choices[0].roles[0];
        desk.state(scan, role);
        assert_eq!(desk.waits_for(), None);
        let [file, _] = desk.case_file(Language::English).unwrap();
        assert_eq!(desk.case_file(Language::English).unwrap()[0], file);
        judge::Case::from_file(&file).unwrap();

        assert_eq!(desk.take(&[folder.path().to_owned()]), Dropped::Open(file));
    }
}
