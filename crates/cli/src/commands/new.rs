//! `archproof new`: a case file proposed from the scans of a folder.

use crate::command_line::NewArguments;
use crate::failure::Failure;
use crate::progress::Progress;
use crate::terminal::{answer, is_asked_on_terminal, say};
use check::proposal::ProposalError;
use check::proposal::{
    CASE_FILE, Evidence, Proposal, Question, Stated, case_folders, case_text, look, neutral_id,
    propose, scans_in, table, write_case,
};
use judge::Stage;
use judge::system_says;
use mesh::Unit;
use mesh::read::shown_path;
use messages::{Language, Message, message, text};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Exit code when something was left open.
pub const OPEN: u8 = 3;

/// How cases are proposed.
#[derive(Debug, Clone, Copy)]
pub struct How {
    /// Stage of impressions that are the only one of their jaw.
    pub stage: Option<Stage>,
    /// Unit of the scan files.
    pub unit: Option<Unit>,
    /// Whether a person can be asked.
    pub asks: bool,
    /// Whether a case file that is there already is replaced.
    pub replaces: bool,
    /// Language of the questions, the table and the comments.
    pub language: Language,
}

/// What came of a folder.
pub struct Written {
    /// The case file.
    pub file: PathBuf,
    /// The proposal in it.
    pub proposal: Proposal,
}

pub fn run(arguments: &NewArguments) -> Result<ExitCode, Failure> {
    let how = How {
        stage: arguments.stage.map(Into::into),
        unit: arguments.unit,
        asks: !arguments.yes && is_asked_on_terminal(),
        replaces: arguments.force,
        language: arguments.spoken.language(),
    };
    let folders = case_folders(&arguments.folder)?;
    let ids = match &arguments.ids {
        Some(file) => read_ids(file, &folders)?,
        None => BTreeMap::new(),
    };
    let written = over(&folders, &ids, how)?;
    let open = written.iter().any(|one| !one.proposal.questions.is_empty());
    Ok(if open { OPEN.into() } else { ExitCode::SUCCESS })
}

/// Proposes a case for each folder. One that has a case file already is refused
/// where it is the only one, and else left as it is.
pub fn over(
    folders: &[PathBuf],
    ids: &BTreeMap<PathBuf, String>,
    how: How,
) -> Result<Vec<Written>, Failure> {
    let mut written = Vec::new();
    for folder in folders {
        let file = folder.join(CASE_FILE);
        if !how.replaces && file.exists() {
            if let [_] = folders {
                return Err(ProposalError::InTheWay(file).into());
            }
            let left = text!(how.language, "proposal-left", path = shown_path(&file));
            say(&format!("{left}\n"))?;
            continue;
        }
        written.push(one(folder, ids.get(folder).map(String::as_str), how)?);
    }
    Ok(written)
}

fn one(folder: &Path, id: Option<&str>, how: How) -> Result<Written, Failure> {
    let files = scans_in(folder)?;
    let progress = Progress::start(how.language);
    let evidence = look(&files, how.unit, &|step| progress.name(&step.message()));
    drop(progress);
    say(&format!("{}:\n", shown_path(folder)))?;
    let proposal = asked(&evidence, how)?;
    say(&table(&evidence, &proposal, how.language))?;
    let id = id.map_or_else(|| neutral_id(&evidence), str::to_owned);
    let text = case_text(&evidence, &proposal, &id, how.language)?;
    let file = write_case(folder, &text, how.replaces)?;
    say(&ending(&file, &proposal, how.language))?;
    Ok(Written { file, proposal })
}

/// Says what was written and what is left open.
fn ending(file: &Path, proposal: &Proposal, language: Language) -> String {
    let mut text = String::new();
    for question in &proposal.questions {
        text += &text!(language, "proposal-open", question = question.text.clone());
        text.push('\n');
    }
    let file = shown_path(file);
    text += &if proposal.questions.is_empty() {
        text!(language, "proposal-written", path = file)
    } else {
        text!(language, "proposal-written-open", path = file)
    };
    text.push('\n');
    text
}

/// Asks what the surfaces leave open, as long as a person answers.
fn asked(evidence: &Evidence, how: How) -> Result<Proposal, Failure> {
    let mut stated = Stated {
        stage: how.stage,
        ..Stated::default()
    };
    let mut passed: Vec<Message> = Vec::new();
    loop {
        let proposal = propose(evidence, &stated);
        let is_new = |question: &&Question| !passed.contains(&question.text);
        let Some(question) = proposal.questions.iter().find(is_new).filter(|_| how.asks) else {
            return Ok(proposal);
        };
        if passed.is_empty() && stated.roles.is_empty() {
            say(&table(evidence, &proposal, how.language))?;
        }
        let labels: Vec<&Message> = question.choices.iter().map(|one| &one.label).collect();
        match answer(&question.text, &labels, how.language)? {
            Some(number) => stated
                .roles
                .extend(question.choices[number].roles.iter().copied()),
            None => passed.push(question.text.clone()),
        }
    }
}

/// The pseudonym of each folder, from a table with the columns folder and id.
fn read_ids(file: &Path, folders: &[PathBuf]) -> Result<BTreeMap<PathBuf, String>, Failure> {
    let failed = |why: Message| Failure::Ids {
        path: file.to_owned(),
        why,
    };
    let bytes = mesh::read::bounded(file, mesh::read::MAX_TABLE_BYTES)
        .map_err(|error| failed(system_says(&error)))?;
    let mut rows = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(bytes.as_slice());
    let head = rows
        .headers()
        .map_err(|error| failed(no_table(&error)))?
        .clone();
    let column = |name: &str| {
        head.iter()
            .position(|own| own.trim_start_matches('\u{feff}') == name)
    };
    let (Some(folder), Some(id)) = (column("folder"), column("id")) else {
        return Err(failed(message!("ids-columns")));
    };
    let mut ids = BTreeMap::new();
    for row in rows.records() {
        let row = row.map_err(|error| failed(no_table(&error)))?;
        let line = row.position().map_or(0, csv::Position::line);
        let (folder, id) = (
            row.get(folder).unwrap_or_default(),
            row.get(id).unwrap_or_default(),
        );
        if id.is_empty() || id.chars().any(char::is_control) {
            return Err(failed(message!("ids-no-id", line = line)));
        }
        let named = |path: &&PathBuf| {
            path.file_name().is_some_and(|name| name == folder)
                || path.as_path() == Path::new(folder)
        };
        let Some(path) = folders.iter().find(named) else {
            return Err(failed(message!("ids-no-scans", line = line)));
        };
        if ids.values().any(|other| other == id)
            || ids.insert(path.clone(), id.to_owned()).is_some()
        {
            return Err(failed(message!("ids-twice", line = line)));
        }
    }
    Ok(ids)
}

/// What the reader of tables says.
fn no_table(error: &csv::Error) -> Message {
    message!("ids-no-table", reason = error.to_string())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_table_of_ids_too_large_to_be_one_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("ids.csv");
        let file = std::fs::File::create(&path).unwrap();
        file.set_len(mesh::read::MAX_TABLE_BYTES + 1).unwrap();
        let why = read_ids(&path, &[]).err().map(|error| error.to_string());
        assert!(why.is_some_and(|why| why.contains("larger than 256 MiB")));
    }
}
