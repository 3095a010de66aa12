//! `archproof check`.

use crate::command_line::CheckArguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::progress::Progress;
use crate::terminal::say;
use judge::Verdict;
use report::result::{CaseResult, FileKind};
use report::{default_folder, result_json, summary, write_all};
use std::fmt::Write;
use std::path::Path;
use std::process::ExitCode;

pub fn run(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    if let Some(threads) = arguments.threads {
        rayon::ThreadPoolBuilder::new()
            .num_threads(threads.into())
            .build_global()?;
    }
    let source = &arguments.source;
    let case = source.case()?;
    let named = source.out.clone();
    let folder = named.unwrap_or_else(|| default_folder(&case.id));

    let progress = Progress::start();
    let checked = source.check(case, &|step| progress.show(step))?;
    let mut result = CaseResult::of(&checked);
    if arguments.no_report {
        result.files.retain(|file| file.kind != FileKind::Report);
    }
    let files = uninterrupted(|| write_all(&checked, &result, &folder))?;
    drop(progress);

    if arguments.json {
        say(&result_json(&result))?;
    } else {
        say(&(summary(&result) + &whereabouts(&folder, &files)))?;
    }
    Ok(exit_code(checked.judged.verdict))
}

fn exit_code(verdict: Verdict) -> ExitCode {
    ExitCode::from(match verdict {
        Verdict::Accept => 0,
        Verdict::Rework | Verdict::Retake => 1,
        Verdict::Undecided => 3,
    })
}

/// Says which files lie where.
pub fn whereabouts(folder: &Path, files: &[String]) -> String {
    let mut text = format!("Results in {}:", mesh::read::shown_path(folder));
    for file in files {
        // Writing to a String cannot fail.
        let _ = write!(text, " {file}");
    }
    text.push('\n');
    text
}
