//! Watches a folder: cases are checked once they have stopped growing.

use crate::error::BatchError;
use crate::find::{Found, find};
use crate::given::{Given, Look};
use crate::output::Output;
use crate::pattern::Pattern;
use crate::run::{Job, Progress, work};
use report::folder::Overview;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::time::{Duration, Instant};

/// A case as it was seen: its files, and since when they have looked so.
struct Seen {
    looks: Vec<Look>,
    since: Instant,
}

/// Looks at a folder every `pause` and checks every case whose files are all
/// there and have not changed for `settle`, those that changed since they were
/// checked again. Goes on until `go_on` says no, which is asked after each
/// look; what came of a round in which there was something to do is given to
/// `after_round`. What was done before it was stopped is not done again.
///
/// # Errors
/// As for [`run`](crate::run()).
pub fn watch(
    folder: &Path,
    pattern: Option<&Pattern>,
    job: &Job,
    (pause, settle): (Duration, Duration),
    after_round: &dyn Fn(Overview),
    go_on: &dyn Fn() -> bool,
) -> Result<(), BatchError> {
    let output = Output::open(&job.out, true)?;
    let mut seen: BTreeMap<String, Seen> = BTreeMap::new();
    let mut done: BTreeSet<String> = BTreeSet::new();
    loop {
        let now = Instant::now();
        let found = find(folder, pattern)?;
        let places: BTreeSet<&str> = found.iter().map(|case| case.place.as_str()).collect();
        seen.retain(|place, _| places.contains(place.as_str()));
        done.retain(|place| places.contains(place.as_str()));
        let mut whole: Vec<Found> = Vec::new();
        for case in found.iter().cloned() {
            let looks = Given::of(&case, &job.settings).looks();
            let is_there = looks.iter().all(Option::is_some);
            let now_seen = Seen { looks, since: now };
            match seen.get(&case.place) {
                Some(before) if before.looks == now_seen.looks => {
                    if is_there && now.duration_since(before.since) >= settle {
                        whole.push(case);
                    }
                }
                _ => {
                    done.remove(&case.place);
                    seen.insert(case.place.clone(), now_seen);
                }
            }
        }
        if whole.iter().any(|case| !done.contains(&case.place)) {
            let is_done = |case: &Found| done.contains(&case.place);
            after_round(work(&whole, job, &output, &is_done, &|_: Progress| {})?);
            done.extend(whole.into_iter().map(|case| case.place));
        }
        if !go_on() {
            return Ok(());
        }
        std::thread::sleep(pause);
    }
}
