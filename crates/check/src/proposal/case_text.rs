//! The proposal as a case file.

use super::concluded::{JAWS, Proposal};
use super::evidence::Evidence;
use super::question::Question;
use super::role::Role;
use judge::Stage;
use measure::Arch;
use mesh::read::shown_path;
use messages::{Language, Message, message, text};
use std::fmt::Write;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A file's name cannot be written into a case file.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", self.message())]
pub struct NameNotText(pub PathBuf);

impl NameNotText {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!("proposal-name", path = shown_path(&self.0))
    }
}

/// A name for a case made from the checksums of its scans: never from a file's name.
#[must_use]
pub fn neutral_id(evidence: &Evidence) -> String {
    let mut sums: Vec<&str> = evidence
        .scans
        .iter()
        .map(|scan| scan.sha256.as_str())
        .collect();
    sums.sort_unstable();
    sums.dedup();
    // The sums are evenly spread, so that folding them keeps them so.
    let folded = sums.iter().fold([0_u8; 8], |mut folded, sum| {
        for (i, digit) in sum.bytes().enumerate().take(32) {
            let digit = char::from(digit).to_digit(16).unwrap_or(0) as u8;
            folded[i % 8] = folded[i % 8].rotate_left(3) ^ digit;
        }
        folded
    });
    let digits: String = folded
        .iter()
        .map(|byte| format!("{:x}", byte & 15))
        .collect();
    format!("C-{digits}")
}

/// The case file of a proposal, with comments in a language; scans are named as files
/// beside it. What is open is left out as comments with the question.
///
/// # Errors
/// When a file's name is no text.
pub fn case_text(
    evidence: &Evidence,
    proposal: &Proposal,
    id: &str,
    language: Language,
) -> Result<String, NameNotText> {
    let writer = Writer {
        evidence,
        proposal,
        language,
    };
    let mut text = writer.comment(&message!("comment-proposed"));
    text += &writer.comment(&message!("comment-proposed-help"));
    let pseudonym = text!(language, "comment-pseudonym");
    // Writing to a String cannot fail.
    let _ = writeln!(text, "case = {}  # {pseudonym}", quoted(id));
    for arch in JAWS {
        text += &writer.jaw(arch)?;
    }
    text += &writer.record()?;
    text += &writer.other_questions()?;
    text += &writer.left_out();
    Ok(text)
}

struct Writer<'a> {
    evidence: &'a Evidence,
    proposal: &'a Proposal,
    language: Language,
}

impl Writer<'_> {
    fn jaw(&self, arch: Arch) -> Result<String, NameNotText> {
        let stages = [Stage::FirstPass, Stage::Wash, Stage::Single];
        let impressions = stages.map(|stage| Role::Impression {
            arch,
            stage: Some(stage),
        });
        let has_impression = impressions
            .iter()
            .any(|role| !self.proposal.scans_of(*role).is_empty());
        let mut lines = String::new();
        let trays = [Role::Tray { arch }, Role::RelievedTray { arch }];
        for role in impressions.into_iter().chain(trays) {
            lines += &self.line(role)?;
        }
        let mut asked = String::new();
        for question in self.proposal.questions.iter().filter(|q| is_of(q, arch)) {
            asked += &self.question(question, judge::words::arch(arch))?;
        }
        if lines.is_empty() && asked.is_empty() {
            return Ok(String::new());
        }
        let section = format!("[{}]\n{lines}", judge::words::arch(arch));
        // A jaw without an impression would be refused: it waits for the answer.
        let section = if has_impression {
            section
        } else {
            commented(&section)
        };
        Ok(format!("\n{section}{asked}"))
    }

    fn record(&self) -> Result<String, NameNotText> {
        let line = self.line(Role::Record)?;
        Ok(if line.is_empty() {
            line
        } else {
            format!("\n[jaw_relation]\n{line}")
        })
    }

    /// Questions that are not of one jaw alone.
    fn other_questions(&self) -> Result<String, NameNotText> {
        let mut text = String::new();
        let of_no_jaw = |q: &&Question| !JAWS.iter().any(|arch| is_of(q, *arch));
        for question in self.proposal.questions.iter().filter(of_no_jaw) {
            text.push('\n');
            text += &self.question(question, "")?;
        }
        Ok(text)
    }

    fn left_out(&self) -> String {
        let mut text = String::new();
        for scan in 0..self.evidence.scans.len() {
            if self.proposal.settled(scan) == Some(Role::LeftOut) {
                let why = &self.proposal.placed[scan].why;
                let name = super::table::file_name(&self.evidence.scans[scan].file);
                let left_out = message!("comment-left-out", name = name, why = why.clone());
                text += &self.comment(&left_out);
            }
        }
        if text.is_empty() {
            text
        } else {
            format!("\n{text}")
        }
    }

    /// A question, and the lines that its answers stand for, as comments; those of
    /// another section than the one at hand with its head.
    fn question(&self, question: &Question, within: &str) -> Result<String, NameNotText> {
        let asked = message!("comment-question", question = question.text.clone());
        let mut text = self.comment(&asked) + &self.comment(&message!("comment-answers"));
        let mut written = Vec::new();
        let answers = question.choices.iter().flat_map(|choice| &choice.roles);
        for (scan, role) in answers.flat_map(|&(scan, role)| completed(scan, role)) {
            if written.contains(&(scan, role)) {
                continue;
            }
            written.push((scan, role));
            if let Some((section, key)) = key(role) {
                if section != within {
                    let _ = writeln!(text, "# [{section}]");
                }
                let _ = writeln!(text, "# {key} = {}", self.file(scan)?);
            }
        }
        Ok(text)
    }

    /// The line of a role; nothing where no scan is that.
    fn line(&self, role: Role) -> Result<String, NameNotText> {
        let scans = self.proposal.scans_of(role);
        let (Some(&first), Some((_, key))) = (scans.first(), key(role)) else {
            return Ok(String::new());
        };
        let files: Vec<String> = scans
            .iter()
            .map(|&one| self.file(one))
            .collect::<Result<_, _>>()?;
        let value = match &files[..] {
            [only] => only.clone(),
            parts => format!("[{}]", parts.join(", ")),
        };
        let placed = &self.proposal.placed[first];
        let surety = placed.surety.message().text(self.language);
        let why = on_one_line(&placed.why.text(self.language));
        Ok(format!("{key} = {value}  # {surety}: {why}\n"))
    }

    /// A comment on a line of its own.
    fn comment(&self, message: &Message) -> String {
        format!("# {}\n", on_one_line(&message.text(self.language)))
    }

    fn file(&self, scan: usize) -> Result<String, NameNotText> {
        let file = &self.evidence.scans[scan].file;
        let name = Path::new(file.file_name().unwrap_or_default());
        let name = name.to_str().ok_or_else(|| NameNotText(file.clone()))?;
        Ok(quoted(name))
    }
}

/// Whether a question is of this jaw and of no other.
fn is_of(question: &Question, arch: Arch) -> bool {
    let roles =
        || (question.choices.iter().flat_map(|choice| &choice.roles)).map(|(_, role)| *role);
    let jaw = |role| match role {
        Role::Impression { arch, .. } | Role::Tray { arch } | Role::RelievedTray { arch } => {
            Some(arch)
        }
        Role::Record | Role::LeftOut => None,
    };
    roles().any(|role| jaw(role) == Some(arch))
        && roles().all(|role| jaw(role).is_none_or(|own| own == arch))
}

/// The roles that an answer leaves possible: every stage where it names none.
fn completed(scan: usize, role: Role) -> Vec<(usize, Role)> {
    match role {
        Role::Impression { arch, stage: None } => [Stage::FirstPass, Stage::Wash, Stage::Single]
            .map(|stage| {
                (
                    scan,
                    Role::Impression {
                        arch,
                        stage: Some(stage),
                    },
                )
            })
            .to_vec(),
        role => vec![(scan, role)],
    }
}

/// Section and key of a role; `None` of what is left out.
fn key(role: Role) -> Option<(&'static str, &'static str)> {
    match role {
        Role::Impression { arch, stage } => Some((
            judge::words::arch(arch),
            match stage {
                Some(Stage::FirstPass) => "before_wash",
                Some(Stage::Wash) => "wash",
                Some(Stage::Single) | None => "one_step",
            },
        )),
        Role::Tray { arch } => Some((judge::words::arch(arch), "tray")),
        Role::RelievedTray { arch } => Some((judge::words::arch(arch), "tray_relieved")),
        Role::Record => Some(("jaw_relation", "scan")),
        Role::LeftOut => None,
    }
}

fn commented(text: &str) -> String {
    text.lines().map(|line| format!("# {line}\n")).collect()
}

/// A text that ends no comment early.
fn on_one_line(text: &str) -> String {
    text.replace(char::is_control, " ")
}

/// A text as a TOML string.
fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}
