//! Works through the cases of a folder, side by side.

use crate::budget::{self, Budget};
use crate::error::BatchError;
use crate::find::Found;
use crate::given::Given;
use crate::one;
use crate::output::{Input, Manifest, Output};
use crate::settings::Settings;
use crate::shard::Shard;
use messages::message;
use report::folder::{CaseRecord, DriftOptions, Overview, Provenance};
use report::result::ProtocolResult;
use std::panic::resume_unwind;
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, PoisonError};

/// What is to be done.
#[derive(Debug, Clone)]
pub struct Job {
    /// Where the results go.
    pub out: PathBuf,
    /// How cases are checked.
    pub settings: Settings,
    /// Cases checked at a time, each on one thread.
    pub threads: usize,
    /// Memory for all of them, bytes.
    pub memory: u64,
    /// Whether to go on with results that are there.
    pub resume: bool,
    /// Which share of the cases.
    pub shard: Shard,
    /// How drift is looked for on the page over all of them.
    pub drift: DriftOptions,
}

/// How it goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Progress {
    /// So many cases are to be done.
    Begins(u64),
    /// A case was checked.
    Checked,
    /// A case could not be checked.
    Unreadable,
    /// A case was done already.
    Skipped,
}

/// Checks the cases that were found and writes the tables over them. The
/// results do not depend on the number of threads.
///
/// # Errors
/// When the result folder cannot be used or written to. A case that cannot be
/// read is a row, and no error.
pub fn run(
    found: &[Found],
    job: &Job,
    progress: &(dyn Fn(Progress) + Sync),
) -> Result<Overview, BatchError> {
    let output = Output::open(&job.out, job.resume)?;
    work(found, job, &output, &|_| false, progress)
}

/// Checks cases as [`run`] does; those that are known to be done are not even
/// looked at, but stand in the tables.
pub(crate) fn work(
    found: &[Found],
    job: &Job,
    output: &Output,
    is_done: &(dyn Fn(&Found) -> bool + Sync),
    progress: &(dyn Fn(Progress) + Sync),
) -> Result<Overview, BatchError> {
    let own: Vec<&Found> = found
        .iter()
        .filter(|case| job.shard.holds(crate::digest::number(&case.digest)))
        .collect();
    output.begin()?;
    progress(Progress::Begins(own.len() as u64));
    let provenance = Provenance {
        inputs_sha256: String::new(),
        settings_sha256: job.settings.digest(),
        program: env!("CARGO_PKG_VERSION").to_owned(),
    };
    let line = Line {
        budget: Budget::new(job.memory),
        next: Mutex::new(own.into_iter()),
        inputs: Mutex::new(Vec::new()),
        has_failed: AtomicBool::new(false),
        provenance,
        job,
        output,
        is_done,
        progress,
    };
    let pools: Vec<rayon::ThreadPool> = (0..job.threads.max(1))
        .map(|_| rayon::ThreadPoolBuilder::new().num_threads(1).build())
        .collect::<Result<_, _>>()?;
    let outcomes: Vec<Result<(), BatchError>> = std::thread::scope(|scope| {
        let workers: Vec<_> = pools
            .iter()
            .map(|pool| scope.spawn(|| line.work(pool)))
            .collect();
        workers
            .into_iter()
            .map(|worker| worker.join().unwrap_or_else(|fault| resume_unwind(fault)))
            .collect()
    });
    outcomes.into_iter().collect::<Result<(), _>>()?;
    let inputs = line
        .inputs
        .into_inner()
        .unwrap_or_else(PoisonError::into_inner);
    let protocol = ProtocolResult::from(&job.settings.options.protocol);
    let about = Manifest {
        program: line.provenance.program,
        settings_sha256: line.provenance.settings_sha256,
        protocol: protocol.name,
        protocol_sha256: protocol.sha256,
        shard: job.shard.number,
        shards: job.shard.of,
        cases: 0,
        unreadable: 0,
    };
    output.finish(inputs, about, (&job.drift, job.settings.language))
}

/// The cases in line, and what the workers share.
struct Line<'a, I> {
    budget: Budget,
    next: Mutex<I>,
    inputs: Mutex<Vec<Input>>,
    has_failed: AtomicBool,
    provenance: Provenance,
    job: &'a Job,
    output: &'a Output,
    is_done: &'a (dyn Fn(&Found) -> bool + Sync),
    progress: &'a (dyn Fn(Progress) + Sync),
}

impl<'a, I: Iterator<Item = &'a Found> + Send> Line<'a, I> {
    /// Takes one case after another, until there are no more or one of the
    /// workers cannot go on.
    fn work(&self, pool: &rayon::ThreadPool) -> Result<(), BatchError> {
        while !self.has_failed.load(Ordering::Relaxed) {
            // The next in line waits for room before anyone else is let past,
            // so that no large case waits for ever.
            let mut next = self.next.lock().unwrap_or_else(PoisonError::into_inner);
            let Some(found) = next.next() else { break };
            let mut given = Given::of(found, &self.job.settings);
            let done = if (self.is_done)(found) {
                drop(next);
                Ok(Progress::Skipped)
            } else {
                let need = self.need(&mut given);
                let _room = self.budget.take(need);
                drop(next);
                pool.install(|| self.done(&given))
            };
            match done {
                Ok(progress) => (self.progress)(progress),
                Err(error) => {
                    self.has_failed.store(true, Ordering::Relaxed);
                    return Err(error);
                }
            }
            self.inputs
                .lock()
                .unwrap_or_else(PoisonError::into_inner)
                .push(Input {
                    folder: given.folder,
                    place: found.place.clone(),
                });
        }
        Ok(())
    }

    /// What a case needs of the budget. One that needs more than the whole is
    /// not checked, which is its problem.
    fn need(&self, given: &mut Given) -> u64 {
        let looks = given.looks();
        let sizes = looks.iter().map(|look| look.map_or(0, |(size, _)| size));
        let files = given.files.iter().map(PathBuf::as_path).zip(sizes);
        let need = budget::need(files);
        if need > self.job.memory {
            const MIB: u64 = 1 << 20;
            given.case = Err(message!(
                "unread-memory",
                need = need.div_ceil(MIB),
                allowed = self.job.memory / MIB
            ));
            return 0;
        }
        need
    }

    fn done(&self, given: &Given) -> Result<Progress, BatchError> {
        let provenance = Provenance {
            inputs_sha256: given.inputs_sha256(),
            ..self.provenance.clone()
        };
        if let Some(record) = self.output.record(&given.folder)
            && record.provenance == provenance
            && is_final(&record, given)
        {
            return Ok(Progress::Skipped);
        }
        let record = one::check(given, provenance, &self.job.settings, self.output)?;
        Ok(if record.is_unreadable() {
            Progress::Unreadable
        } else {
            Progress::Checked
        })
    }
}

/// A case that could not be checked for want of memory may have more now, and a disk that
/// could not be read may be read now; one that was checked is done, even if there is less.
fn is_final(record: &CaseRecord, given: &Given) -> bool {
    let problem = record.impressions.iter().find_map(|r| r.problem.as_ref());
    match (problem, &given.case) {
        (None, _) => true,
        (Some(was), Err(is)) => *was == is.to_string(),
        (Some(was), Ok(_)) => !(record.may_pass || was.contains("--memory")),
    }
}
