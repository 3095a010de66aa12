//! `archproof batch`, `collect` and `watch`: many cases.

use crate::command_line::{
    BaselineArguments, BatchArguments, CollectArguments, DriftArguments, FailOn, FolderArguments,
    OutcomeArguments, WatchArguments,
};
use crate::failure::Failure;
use crate::new_file::write_new;
use crate::progress::CasesProgress;
use crate::terminal::say;
use batch::{BatchError, Job, Pattern, Progress, Settings, Shard, find};
use check::{CheckOptions, Shelves};
use judge::{Protocol, Stage};
use mesh::read::shown_path;
use messages::{Language, Message, Value, message, text};
use report::folder::{Baseline, DriftOptions, Overview, Verdicts};
use report::json_text;
use report::result::{TimeSources, Timed};
use std::collections::BTreeSet;
use std::path::Path;
use std::process::ExitCode;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

/// Exit code when cases could not be read, or came to a verdict of `--fail-on`.
const FAILED: u8 = 1;

pub fn run(arguments: &BatchArguments) -> Result<ExitCode, Failure> {
    let job = Job {
        resume: arguments.resume,
        shard: arguments.shard,
        ..job(&arguments.of)?
    };
    let folder = &arguments.of.folder;
    let found = find(folder, pattern(&arguments.of).as_ref())?;
    if found.is_empty() {
        return Err(BatchError::NoCases(folder.clone()).into());
    }
    let (started, skipped) = (Instant::now(), AtomicU64::new(0));
    let language = job.settings.language;
    let progress = CasesProgress::start(language);
    let overview = batch::run(&found, &job, &|step| {
        if step == Progress::Skipped {
            skipped.fetch_add(1, Ordering::Relaxed);
        }
        progress.show(step);
    })?;
    drop(progress);
    let skipped = skipped.into_inner();
    let seconds = started.elapsed().as_secs_f64();
    let rate = (overview.cases - skipped) as f64 / seconds.max(1e-9);
    let mut head = vec![counted(&overview)];
    if skipped > 0 {
        head.push(message!("batch-skipped", count = skipped));
    }
    head.push(message!(
        "batch-rate",
        seconds = Value::number(seconds, 1),
        rate = Value::number(rate, 1)
    ));
    let head: Vec<String> = head.iter().map(|part| part.text(language)).collect();
    tell(
        &head.join("; "),
        &overview,
        &job.out,
        &arguments.outcome,
        language,
    )
}

pub fn collect(arguments: &CollectArguments) -> Result<ExitCode, Failure> {
    let language = arguments.spoken.language();
    let overview = batch::collect(
        &arguments.folders,
        &arguments.out,
        &drift(&arguments.drift)?,
        language,
    )?;
    let (of, counted) = (overview.conditions.shards, counted(&overview));
    let head = text!(language, "batch-of-shards", counted = counted, shards = of);
    tell(
        &head,
        &overview,
        &arguments.out,
        &arguments.outcome,
        language,
    )
}

/// `archproof baseline`.
pub fn baseline(arguments: &BaselineArguments) -> Result<(), Failure> {
    let frozen = batch::baseline(&arguments.dir, arguments.by.clone())?;
    write_new(&arguments.write, frozen.to_toml().as_bytes())?;
    let groups: BTreeSet<_> = (frozen.figures.iter())
        .map(|one| (&one.arch, &one.stage, &one.label))
        .collect();
    let language = arguments.spoken.language();
    let said = text!(
        language,
        "baseline-written",
        figures = frozen.figures.len(),
        groups = groups.len(),
        path = shown_path(&arguments.write)
    );
    let sources = order_in_time(&frozen.times_by, language);
    let used = text!(
        language,
        "baseline-use",
        path = shown_path(&arguments.write)
    );
    say(&format!("{said}\n{sources}\n{used}\n"))?;
    Ok(())
}

/// By what the cases are put in order of time.
fn order_in_time(times_by: &TimeSources, language: Language) -> String {
    let sources = times_by.in_words(Timed::Cases, language);
    text!(language, "batch-order-in-time", sources = sources)
}

/// Says what came of it, for people or for a machine; gives the exit code.
fn tell(
    head: &str,
    overview: &Overview,
    out: &Path,
    how: &OutcomeArguments,
    language: Language,
) -> Result<ExitCode, Failure> {
    if how.json {
        say(&json_text(overview))?;
    } else {
        let folder = text!(language, "batch-whereabouts", path = shown_path(out));
        let times = order_in_time(&overview.times_by, language);
        let verdicts = verdict_line(overview.verdicts).text(language);
        say(&format!("{head}\n{folder}\n{times}\n{verdicts}\n"))?;
    }
    Ok(exit_code(overview.verdicts, &how.fail_on))
}

pub fn watch(arguments: &WatchArguments) -> Result<ExitCode, Failure> {
    let job = Job {
        resume: true,
        ..job(&arguments.of)?
    };
    let settle = Duration::from_secs(arguments.settle);
    // Often enough to see a file grow, seldom enough to cost nothing.
    let pause = (settle / 4).clamp(Duration::from_millis(200), Duration::from_secs(5));
    let language = job.settings.language;
    let after_round = |overview: Overview| {
        let counted = counted(&overview).text(language);
        let verdicts = verdict_line(overview.verdicts).text(language);
        let _ = say(&format!("{counted}: {verdicts}\n"));
    };
    batch::watch(
        &arguments.of.folder,
        pattern(&arguments.of).as_ref(),
        &job,
        (pause, settle),
        &after_round,
        &|| true,
    )?;
    Ok(ExitCode::SUCCESS)
}

fn pattern(arguments: &FolderArguments) -> Option<Pattern> {
    arguments.scans.clone().map(|scans| Pattern {
        scans,
        trays: arguments.trays.clone(),
    })
}

fn job(arguments: &FolderArguments) -> Result<Job, Failure> {
    let protocol = match &arguments.protocol {
        Some(file) => Protocol::from_file(file)?,
        None => Protocol::default(),
    };
    if same_file::is_same_file(&arguments.folder, &arguments.out).unwrap_or(false) {
        return Err(BatchError::IntoItself(arguments.out.clone()).into());
    }
    let cores = || std::thread::available_parallelism().map_or(1, usize::from);
    Ok(Job {
        out: arguments.out.clone(),
        settings: Settings {
            options: CheckOptions {
                unit: arguments.unit,
                protocol,
                shelves: Shelves::default(),
            },
            arch: arguments.arch.map(Into::into),
            stage: arguments.stage.map_or(Stage::Single, Into::into),
            ids_from_names: arguments.ids_from_names,
            no_report: arguments.no_report,
            language: arguments.language.unwrap_or_else(Language::of_system),
        },
        threads: arguments.threads.map_or_else(cores, usize::from),
        memory: arguments.memory.as_u64(),
        resume: false,
        shard: Shard::WHOLE,
        drift: drift(&arguments.drift)?,
    })
}

fn drift(arguments: &DriftArguments) -> Result<DriftOptions, Failure> {
    let file = arguments.baseline.as_deref();
    let mut options = DriftOptions {
        baseline: file.map(Baseline::from_file).transpose()?,
        by: arguments.by.clone(),
        ..DriftOptions::default()
    };
    if !arguments.rules.is_empty() {
        options.rules.clone_from(&arguments.rules);
        options.rules.sort();
        options.rules.dedup();
    }
    Ok(options)
}

fn counted(overview: &Overview) -> Message {
    let cases = overview.cases;
    match overview.verdicts.unreadable {
        0 => message!("batch-checked", cases = cases),
        some => message!("batch-checked-but", cases = cases, unread = some),
    }
}

/// All verdicts in one line.
fn verdict_line(verdicts: Verdicts) -> Message {
    let Verdicts {
        accept,
        rework,
        retake,
        undecided,
        unreadable,
    } = verdicts;
    message!(
        "batch-verdicts",
        accept = accept,
        rework = rework,
        retake = retake,
        undecided = undecided,
        unread = unreadable
    )
}

fn exit_code(verdicts: Verdicts, fail_on: &[FailOn]) -> ExitCode {
    let count = |verdict: &FailOn| match verdict {
        FailOn::Rework => verdicts.rework,
        FailOn::Retake => verdicts.retake,
        FailOn::Undecided => verdicts.undecided,
    };
    let failed = verdicts.unreadable + fail_on.iter().map(count).sum::<u64>();
    match failed {
        0 => ExitCode::SUCCESS,
        _ => FAILED.into(),
    }
}
