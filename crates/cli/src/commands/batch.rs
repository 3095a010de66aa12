//! `archproof batch`, `collect` and `watch`: many cases.

use crate::command_line::{BatchArguments, CollectArguments, FolderArguments, WatchArguments};
use crate::failure::Failure;
use crate::progress::CasesProgress;
use crate::terminal::say;
use batch::{BatchError, Counts, Job, Pattern, Progress, Settings, Shard, find};
use check::CheckOptions;
use judge::{Protocol, Stage};
use mesh::read::shown_path;
use std::path::Path;
use std::process::ExitCode;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

/// Exit code when cases could not be read.
const SOME_UNREADABLE: u8 = 1;

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
    let progress = CasesProgress::start();
    let counts = batch::run(&found, &job, &|step| {
        if step == Progress::Skipped {
            skipped.fetch_add(1, Ordering::Relaxed);
        }
        progress.show(step);
    })?;
    drop(progress);
    let skipped = skipped.into_inner();
    let seconds = started.elapsed().as_secs_f64();
    let rate = (counts.cases - skipped) as f64 / seconds.max(1e-9);
    let mut said = counted(counts);
    if skipped > 0 {
        said.push_str(&format!("; {skipped} of them done before"));
    }
    said.push_str(&format!("; {seconds:.1} s, {rate:.1} cases a second\n"));
    said.push_str(&whereabouts(&job.out));
    say(&said)?;
    Ok(exit_code(counts.unreadable))
}

pub fn collect(arguments: &CollectArguments) -> Result<ExitCode, Failure> {
    let joined = batch::collect(&arguments.folders, &arguments.out)?;
    let said = counted(Counts {
        cases: joined.cases,
        unreadable: joined.unreadable,
    });
    let of = format!(" of {} shards\n", joined.shards);
    say(&(said + &of + &whereabouts(&arguments.out)))?;
    Ok(exit_code(joined.unreadable))
}

pub fn watch(arguments: &WatchArguments) -> Result<ExitCode, Failure> {
    let job = Job {
        resume: true,
        ..job(&arguments.of)?
    };
    let settle = Duration::from_secs(arguments.settle);
    // Often enough to see a file grow, seldom enough to cost nothing.
    let pause = (settle / 4).clamp(Duration::from_millis(200), Duration::from_secs(5));
    let after_round = |counts| {
        let _ = say(&format!("{}\n", counted(counts)));
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
            },
            arch: arguments.arch.map(Into::into),
            stage: arguments.stage.map_or(Stage::Single, Into::into),
            ids_from_names: arguments.ids_from_names,
            no_report: arguments.no_report,
        },
        threads: arguments.threads.map_or_else(cores, usize::from),
        memory: arguments.memory.as_u64(),
        resume: false,
        shard: Shard::WHOLE,
    })
}

fn counted(counts: Counts) -> String {
    match counts.unreadable {
        0 => format!("{} cases checked", counts.cases),
        some => format!(
            "{} cases, {some} of which could not be checked",
            counts.cases
        ),
    }
}

fn whereabouts(folder: &Path) -> String {
    format!(
        "Results in {}: summary.html, summary.csv, findings.csv; cases/ holds those of each case\n",
        shown_path(folder)
    )
}

fn exit_code(unreadable: u64) -> ExitCode {
    match unreadable {
        0 => ExitCode::SUCCESS,
        _ => SOME_UNREADABLE.into(),
    }
}
