//! `archproof PATH`: what a scan, a case file or a folder asks for by itself, as
//! when it is dropped on the program.

use super::new::{self, How};
use super::{batch, check, view};
use crate::command_line::{
    BatchArguments, CheckArguments, DriftArguments, FolderArguments, OutcomeArguments,
};
use crate::failure::Failure;
use crate::terminal::{complain, is_asked_on_terminal, say};
use ::batch::{Shard, Source as CaseAt, find};
use ::check::proposal::{case_folders, is_scan};
use arguments::Source;
use bytesize::ByteSize;
use mesh::read::shown_path;
use messages::{Language, Message, message};
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::io::{self, IsTerminal};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Folder for the results of a folder of cases, in that folder.
const RESULTS: &str = "archproof-results";
/// Memory for the cases in hand.
const MEMORY_GIB: u64 = 4;

/// The path that was given instead of a command, if it was. What exists is one,
/// and what can be nothing but the name of a file; a mistyped command is not.
pub fn path_given(arguments: &[OsString]) -> Option<PathBuf> {
    let [only] = arguments else {
        return None;
    };
    let path = Path::new(only);
    let is_option = only.to_string_lossy().starts_with('-');
    let names_a_file = is_scan(path) || is_toml(path) || path.components().count() > 1;
    (!is_option && (path.exists() || names_a_file)).then(|| path.to_owned())
}

/// Whether the program was started without an argument and without a terminal, as
/// by a double click.
pub fn is_double_click(arguments: &[OsString]) -> bool {
    arguments.is_empty() && !is_attached()
}

/// Whether a terminal shows what is printed, or answers.
fn is_attached() -> bool {
    io::stdin().is_terminal() || io::stdout().is_terminal() || io::stderr().is_terminal()
}

/// Opens the desk, if the window's program lies beside this one.
pub fn desk() -> Option<Result<ExitCode, Failure>> {
    view::beside().map(|_| view::run(&[]))
}

/// Whether questions about scans are better asked on the desk.
fn asks_on_desk() -> bool {
    !is_attached() && view::beside().is_some()
}

/// Does what the path asks for.
pub fn run(path: &Path) -> Result<ExitCode, Failure> {
    if !path.is_dir() {
        tell(&if is_toml(path) {
            message!("start-case-file", path = shown_path(path))
        } else {
            message!("start-scan", path = shown_path(path))
        })?;
        return checked(path);
    }
    let mut files = case_files(path)?;
    if files.is_empty() {
        let folders = case_folders(path)?;
        if asks_on_desk() && folders.len() == 1 {
            return view::run(&[path.into()]);
        }
        tell(&message!(
            "start-scans",
            path = shown_path(path),
            folders = folders.len()
        ))?;
        let how = How {
            stage: None,
            unit: None,
            asks: is_asked_on_terminal(),
            replaces: false,
            language: Language::of_system(),
        };
        let written = new::over(&folders, &BTreeMap::new(), how)?;
        if written.iter().any(|one| !one.proposal.questions.is_empty()) {
            tell(&message!("start-open"))?;
            return Ok(new::OPEN.into());
        }
        files = written.into_iter().map(|one| one.file).collect();
    }
    match &files[..] {
        [only] => {
            tell(&message!("start-checked", path = shown_path(only)))?;
            checked(only)
        }
        _ => all(path, files.len()),
    }
}

/// Says one line in the language of the system.
fn tell(message: &Message) -> io::Result<()> {
    say(&format!("{}\n", message.text(Language::of_system())))
}

fn is_toml(path: &Path) -> bool {
    path.extension()
        .is_some_and(|ending| ending.eq_ignore_ascii_case("toml"))
}

/// The case files in a folder and below it.
fn case_files(folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    let file = |source| match source {
        CaseAt::CaseFile(path) => Some(path),
        CaseAt::Closed(_) | CaseAt::Scan { .. } => None,
    };
    let found = find(folder, None)?.into_iter();
    Ok(found.filter_map(|case| file(case.source)).collect())
}

/// Checks one case, with its results beside it, and opens the sheet.
fn checked(path: &Path) -> Result<ExitCode, Failure> {
    let arguments = CheckArguments {
        source: Source::of(path),
        json: false,
        no_report: false,
        open: false,
        return_note: false,
        verbose: false,
        times: false,
        threads: None,
    };
    let checked = check::run_in(&arguments, path.parent().unwrap_or(Path::new("")))?;
    // What was checked counts, whether or not there is a program that shows the sheet.
    if let Err(why) = check::open_sheet(&checked.folder) {
        complain(&why.message().text(Language::of_system()));
    }
    Ok(checked.code)
}

/// Checks every case of a folder.
fn all(folder: &Path, cases: usize) -> Result<ExitCode, Failure> {
    let out = folder.join(RESULTS);
    tell(&message!(
        "start-cases",
        path = shown_path(folder),
        cases = cases
    ))?;
    batch::run(&BatchArguments {
        of: FolderArguments {
            drift: DriftArguments::default(),
            folder: folder.to_owned(),
            out,
            scans: None,
            trays: None,
            ids_from_names: false,
            arch: None,
            stage: None,
            unit: None,
            protocol: None,
            no_report: false,
            language: None,
            memory: ByteSize::gib(MEMORY_GIB),
            threads: None,
        },
        resume: true,
        shard: Shard::WHOLE,
        outcome: OutcomeArguments::default(),
    })
}
