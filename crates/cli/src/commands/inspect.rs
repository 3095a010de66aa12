//! `archproof inspect`.

use crate::command_line::InspectArguments;
use crate::failure::{EXIT_CODE, Failure};
use crate::terminal::say;
use check::load;
use check::proposal::is_scan;
use measure::intake::first_look;
use report::{Inspection, inspection_head, inspection_row, json_text};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use walkdir::WalkDir;

pub fn run(arguments: &InspectArguments) -> Result<ExitCode, Failure> {
    let files = files(&arguments.scans)?;
    let language = arguments.spoken.language();
    if !arguments.json {
        say(&format!("{}\n", inspection_head(language)))?;
    }
    let mut rows = Vec::new();
    let mut all_read = true;
    for file in &files {
        let seen = load(file, arguments.unit).map(|scan| (first_look(&scan.mesh), scan));
        let row = Inspection::of(file, seen.as_ref().map(|(look, scan)| (scan, look)));
        all_read &= row.scan.is_some();
        if arguments.json {
            rows.push(row);
        } else {
            say(&format!("{}\n", inspection_row(&row, language)))?;
        }
    }
    if arguments.json {
        say(&json_text(&rows))?;
    }
    Ok(if all_read {
        ExitCode::SUCCESS
    } else {
        EXIT_CODE.into()
    })
}

/// Every file that was given, by its name or with its folder.
fn files(given: &[PathBuf]) -> Result<Vec<PathBuf>, Failure> {
    let mut files = Vec::new();
    for path in given {
        if path.is_dir() {
            let before = files.len();
            files.extend(scans_below(path));
            if files.len() == before {
                return Err(Failure::NoScans(path.clone()));
            }
        } else {
            files.push(path.clone());
        }
    }
    Ok(files)
}

/// Scan files in a folder and below it, in order; links to folders are not
/// followed. What may not be looked into holds nothing to look at.
fn scans_below(folder: &Path) -> impl Iterator<Item = PathBuf> {
    WalkDir::new(folder)
        .sort_by_file_name()
        .into_iter()
        .filter_map(Result::ok)
        .filter(|entry| !entry.file_type().is_dir())
        .map(walkdir::DirEntry::into_path)
        .filter(|path| is_scan(path))
}
