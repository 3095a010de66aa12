//! The mouths that a promise is asked of, and what they answered.

use crate::figures::{Figure, record};
use crate::rows::Kept;
use fixtures::ARCHES;
use phantom::Arch;
use rayon::prelude::*;
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::fmt::Debug;
use std::sync::atomic::{AtomicUsize, Ordering};

/// Which of the seeds is the one mouth. Bars hold for many mouths together: of a
/// single one the thickness of the flange may be a little off (seed 0, upper).
const THE_ONE: u64 = 2;

/// The mouths that a promise is asked of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Population {
    /// One mouth of each jaw; nothing is kept.
    OneMouth,
    /// As many mouths of each jaw as `ARCHPROOF_SEEDS` says, or the usual few.
    /// Rows and figures are kept below `target`.
    Many,
}

impl Population {
    /// How many seeds of each jaw.
    fn count(self, usual: u64) -> u64 {
        match self {
            Self::OneMouth => 1,
            Self::Many => std::env::var("ARCHPROOF_SEEDS")
                .ok()
                .and_then(|count| count.parse().ok())
                .unwrap_or(usual),
        }
    }

    /// The seeds from the first one on.
    pub fn seeds(self, first: u64, usual: u64) -> Vec<u64> {
        let first = match self {
            Self::OneMouth => first + THE_ONE,
            Self::Many => first,
        };
        (first..first + self.count(usual)).collect()
    }

    /// Each jaw with each seed.
    pub fn both_jaws(self, first: u64, usual: u64) -> Vec<(Arch, u64)> {
        let seeds = self.seeds(first, usual);
        let of = |arch| seeds.iter().map(move |&seed| (arch, seed));
        ARCHES.into_iter().flat_map(of).collect()
    }

    /// The two jaws in turn, a seed for each: an even one for the upper.
    pub fn jaws_in_turn(self, usual: u64) -> Vec<(Arch, u64)> {
        let first = match self {
            Self::OneMouth => 3 * THE_ONE,
            Self::Many => 0,
        };
        (first..first + 2 * self.count(usual))
            .map(|seed| (ARCHES[(seed % 2) as usize], seed))
            .collect()
    }

    /// Begins to ask for a promise of each jaw by itself.
    pub fn asked_of_each_jaw(self, promise: &str) -> [(Arch, Asked); 2] {
        [
            (Arch::Maxillary, "maxillary"),
            (Arch::Mandibular, "mandibular"),
        ]
        .map(|(arch, jaw)| (arch, self.asked(format!("{promise}-{jaw}"))))
    }

    /// Begins to ask for a promise, by its name in words joined by hyphens.
    pub fn asked(self, promise: impl Into<String>) -> Asked {
        Asked {
            population: self,
            promise: promise.into().to_lowercase(),
            trials: AtomicUsize::new(0),
        }
    }
}

/// A promise that is asked for.
#[derive(Debug)]
pub struct Asked {
    population: Population,
    promise: String,
    trials: AtomicUsize,
}

impl Asked {
    /// What came out of each trial, in their order. Those that this build has
    /// done before are taken from its rows.
    pub fn rows<Trial, Row>(
        &self,
        trials: Vec<Trial>,
        one: impl Fn(&Trial) -> Row + Sync + Send,
    ) -> Vec<Row>
    where
        Trial: Debug + Sync,
        Row: Serialize + DeserializeOwned + Send,
    {
        self.trials.fetch_add(trials.len(), Ordering::Relaxed);
        if self.population == Population::OneMouth {
            return trials.par_iter().map(one).collect();
        }
        let kept = Kept::open(&self.promise);
        trials
            .par_iter()
            .map(|trial| kept.row(&format!("{trial:?}"), || one(trial)))
            .collect()
    }

    /// Says a figure beside its bar and keeps it for the table of figures.
    pub fn figure(&self, figure: &str, bar: &str, value: impl Into<String>) {
        let trials = self.trials.load(Ordering::Relaxed);
        let value = value.into();
        println!(
            "{}: {figure}: {value} (bar: {bar}; {trials} trials)",
            self.promise
        );
        if self.population == Population::Many {
            record(&Figure {
                promise: self.promise.clone(),
                figure: figure.to_owned(),
                bar: bar.to_owned(),
                value,
                trials: trials.to_string(),
                command: crate::figures::command(),
            });
        }
    }
}
