//! `archproof check`.

use crate::command_line::CheckArguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::progress::Progress;
use crate::terminal::{note, say};
use check::{Clock, Timing};
use messages::{Language, Value, message, text};
use report::result::{CaseResult, Times};
use report::{
    REPORT_FILE, RESULT_FILE, RETURN_FILE, RETURN_TEXT_FILE, SHEET_FILE, add_return_note,
    default_folder, folder_without_case, result_json, summary, words, write_all,
};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::{Duration, Instant, SystemTime};

pub fn run(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    let checked = run_in(arguments, Path::new(""))?;
    if arguments.open {
        open_sheet(&checked.folder)?;
    }
    Ok(checked.code)
}

/// What a check came to.
pub struct Checked {
    /// The folder with the results.
    pub folder: PathBuf,
    /// The exit code.
    pub code: ExitCode,
}

/// Opens the sheet in a folder of results.
pub fn open_sheet(folder: &Path) -> Result<(), Failure> {
    open::that_detached(folder.join(SHEET_FILE)).map_err(Failure::Opening)
}

/// Checks a case; results without a folder of their own go into one in `base`.
pub fn run_in(arguments: &CheckArguments, base: &Path) -> Result<Checked, Failure> {
    if let Some(threads) = arguments.threads {
        rayon::ThreadPoolBuilder::new()
            .num_threads(threads.into())
            .build_global()?;
    }
    let source = &arguments.source;
    let language = source.language();
    let case = source.case()?;
    let is_named = source.case.is_some() || source.is_case_file();
    let of_case = is_named.then(|| base.join(default_folder(&case.id)));
    let progress = Progress::start(language);
    let clock = Clock::start();
    let checked = source.check(case, &|step| {
        if clock.begin(step) {
            progress.show(step);
        }
    })?;
    let folder = (source.out.clone()).or(of_case).unwrap_or_else(|| {
        let sum = checked
            .impressions
            .first()
            .map(|one| one.scan.sha256.as_str());
        base.join(folder_without_case(
            SystemTime::now(),
            sum.unwrap_or_default(),
        ))
    });
    let mut result = CaseResult::of(&checked);
    let timing = clock.stop();
    result.times = Some(Times::of(&checked, &timing));
    let is_returned = arguments.return_note && add_return_note(&mut result);
    let writing = Instant::now();
    if arguments.no_report {
        result.files.retain(|file| !file.kind.is_page());
    }
    let files = uninterrupted(|| write_all(&checked, &result, &folder, language))?;
    drop(progress);
    if arguments.times {
        note(&table(&timing, writing.elapsed(), language));
    }

    if arguments.json {
        say(&result_json(&result))?;
    } else {
        let mut text = summary(&result, language) + &to_read(&folder, &files, language);
        if arguments.return_note && !is_returned {
            text += &text!(language, "summary-no-return-note");
            text.push('\n');
        }
        if arguments.verbose {
            text += &whereabouts(&folder, &files, language);
        }
        say(&text)?;
    }
    Ok(Checked {
        folder,
        code: ExitCode::from(words::exit_status(result.verdict)),
    })
}

/// The steps with their seconds, one a line. Impressions are measured side by
/// side: their steps overlap.
fn table(timing: &Timing, writing: Duration, language: Language) -> String {
    let steps = (timing.steps.iter()).map(|(step, lasted)| (*lasted, step.message()));
    let all = steps.chain([(writing, message!("step-writing"))]);
    all.map(|(lasted, step)| {
        let seconds = Value::figure(format!("{:8.3} s", lasted.as_secs_f64()));
        format!("{}  {}\n", seconds.text(language), step.text(language))
    })
    .collect()
}

/// Says where the pages for people lie; where there are none, the result.
fn to_read(folder: &Path, files: &[String], language: Language) -> String {
    let pages = [SHEET_FILE, REPORT_FILE, RETURN_FILE, RETURN_TEXT_FILE];
    let is_written = |file: &&str| files.iter().any(|name| name == file);
    let mut written: Vec<&str> = pages.into_iter().filter(is_written).collect();
    if written.is_empty() {
        written.push(RESULT_FILE);
    }
    let line = |file: &str| {
        let path = mesh::read::shown_path(&folder.join(file)).to_string();
        let said = match file {
            SHEET_FILE => message!("summary-sheet", path = path),
            REPORT_FILE => message!("summary-report", path = path),
            RETURN_FILE => message!("summary-return-note", path = path),
            RETURN_TEXT_FILE => message!("summary-return-text", path = path),
            _ => message!("summary-result", path = path),
        };
        said.text(language) + "\n"
    };
    written.into_iter().map(line).collect()
}

/// Says which files lie where.
pub fn whereabouts(folder: &Path, files: &[String], language: Language) -> String {
    let folder = mesh::read::shown_path(folder).to_string();
    let files = files.join(" ");
    text!(language, "summary-files", folder = folder, files = files) + "\n"
}
