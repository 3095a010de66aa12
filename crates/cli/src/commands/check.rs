//! `archproof check`.

use crate::arguments::CheckArguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::progress::Progress;
use crate::terminal::say;
use judge::{Case, ImpressionInput, Protocol, Stage, Verdict};
use report::result::FileKind;
use report::{CheckOptions, check_case, result_json, summary, write_all};
use std::fmt::Write;
use std::path::Path;
use std::process::ExitCode;

pub fn run(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    let case = case(arguments)?;
    let protocol = match &arguments.protocol {
        Some(file) => Protocol::from_file(file)?,
        None => Protocol::default(),
    };
    if let Some(threads) = arguments.threads {
        rayon::ThreadPoolBuilder::new()
            .num_threads(threads.into())
            .build_global()?;
    }
    let options = CheckOptions {
        unit: arguments.unit,
        protocol,
    };
    let folder = match &arguments.out {
        Some(folder) => folder.clone(),
        None => report::default_folder(&case.id),
    };

    let progress = Progress::start();
    let checked = check_case(case, &options, &|step| progress.show(step))?;
    let mut result = report::result::assemble(&checked);
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

fn case(arguments: &CheckArguments) -> Result<Case, Failure> {
    let is_case_file = arguments
        .input
        .extension()
        .is_some_and(|extension| extension.eq_ignore_ascii_case("toml"));
    if is_case_file {
        let in_the_file = [
            ("--arch", arguments.arch.is_some()),
            ("--tray", arguments.tray.is_some()),
            ("--landmarks", arguments.landmarks.is_some()),
            ("--stage", arguments.stage.is_some()),
            ("--case", arguments.case.is_some()),
        ];
        return match in_the_file.iter().find(|(_, given)| *given) {
            Some((option, _)) => Err(Failure::InTheCaseFile(option)),
            None => Ok(Case::from_file(&arguments.input)?),
        };
    }
    // Never taken from the file's name, which may be the patient's.
    let id = arguments.case.as_deref().unwrap_or("unnamed").trim();
    if id.is_empty() || id.chars().any(char::is_control) {
        return Err(Failure::CaseName);
    }
    let declared = arguments.arch.map(Into::into);
    let marks = match &arguments.landmarks {
        Some(file) => judge::read_landmarks(file, declared)?,
        None => Vec::new(),
    };
    Ok(Case::of_one(
        id,
        ImpressionInput {
            declared,
            stage: arguments.stage.map_or(Stage::Single, Into::into),
            scan: arguments.input.clone(),
            tray: arguments.tray.clone(),
            stops: Vec::new(),
            marks,
        },
    ))
}

fn whereabouts(folder: &Path, files: &[String]) -> String {
    let mut text = format!("Results in {}:", mesh::read::shown_path(folder));
    for file in files {
        // Writing to a String cannot fail.
        let _ = write!(text, " {file}");
    }
    text.push('\n');
    text
}
