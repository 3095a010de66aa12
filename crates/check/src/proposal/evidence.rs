//! What was found out about the scans of a folder: plain data.

use measure::{Arch, NotAnImpression};
use messages::Message;
use std::path::PathBuf;
use std::time::SystemTime;

/// What was found out about the scans of a folder.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Evidence {
    /// The scans, in the order of their names.
    pub scans: Vec<SeenScan>,
    /// Each impression with each possible tray.
    pub trays: Vec<TrayTrial>,
    /// Impressions that may be of one jaw, two by two.
    pub couples: Vec<Couple>,
    /// Scans in which impressions of both jaws were looked for.
    pub records: Vec<RecordTrial>,
}

/// A scan by itself.
#[derive(Debug, Clone, PartialEq)]
pub struct SeenScan {
    /// Its file.
    pub file: PathBuf,
    /// SHA-256 of the file, lower-case hexadecimal; empty of an unreadable one.
    pub sha256: String,
    /// What it shows.
    pub shows: Shows,
    /// When the file was last written.
    pub modified: Option<SystemTime>,
}

/// What a scan shows, looked at by itself.
#[derive(Debug, Clone, PartialEq)]
pub enum Shows {
    /// An impression.
    Impression {
        /// Of which jaw.
        arch: Arch,
        /// 0 (a guess) to 1 (no other jaw comes near).
        confidence: f64,
    },
    /// A wall too thin for an impression: an empty tray or a denture base.
    TrayOrBase {
        /// Its wall, mm.
        wall_mm: f64,
    },
    /// Something else.
    Else(NotAnImpression),
    /// The same bytes as an earlier scan, by its number.
    SameAs(usize),
    /// The file cannot be read, and why.
    Unreadable(Message),
}

/// A tray laid on the outer surface of an impression.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayTrial {
    /// Number of the impression.
    pub impression: usize,
    /// Number of the tray.
    pub tray: usize,
    /// Share of the impression's outer surface that lies on it, 0 to 1, or why it
    /// does not fit.
    pub outcome: Result<f64, Message>,
}

impl TrayTrial {
    /// A tray of another mouth can be laid on part of an outer surface, too.
    const WELL: f64 = 0.35;

    /// Whether so much of the outer surface lies on the tray that it is the
    /// impression's own, or of the same make.
    #[must_use]
    pub fn fits_well(&self) -> bool {
        self.outcome
            .as_ref()
            .is_ok_and(|share| *share >= Self::WELL)
    }
}

/// Two impressions laid on one another by their outer surfaces.
#[derive(Debug, Clone, PartialEq)]
pub struct Couple {
    /// Numbers of the two, ascending.
    pub pair: [usize; 2],
    /// What lies over what, or why they cannot be compared.
    pub outcome: Result<Layers, Message>,
}

/// How the second of two impressions differs from the first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layers {
    /// Median of how much higher the second lies, mm; negative where it lies lower.
    pub median_mm: f64,
    /// Expanded uncertainty (k = 2) of that, mm.
    pub uncertainty_mm: f64,
    /// Share of the area over which the second lies higher beyond that, 0 to 1.
    pub added_share: f64,
    /// Share of the area over which it lies lower beyond that, 0 to 1.
    pub lowered_share: f64,
}

impl Layers {
    /// How much of the surface must have risen, and how little fallen, in a wash.
    const MOST: f64 = 0.6;
    const LITTLE: f64 = 0.15;

    /// Which of the two lies over the other, 0 or 1; `None` where neither clearly does.
    #[must_use]
    pub fn upper_layer(&self) -> Option<usize> {
        let covers = |over: f64, under: f64| over >= Self::MOST && under <= Self::LITTLE;
        if self.median_mm > self.uncertainty_mm && covers(self.added_share, self.lowered_share) {
            Some(1)
        } else if -self.median_mm > self.uncertainty_mm
            && covers(self.lowered_share, self.added_share)
        {
            Some(0)
        } else {
            None
        }
    }
}

/// A scan in which an impression of each jaw was looked for.
#[derive(Debug, Clone, PartialEq)]
pub struct RecordTrial {
    /// Number of the scan.
    pub scan: usize,
    /// The impressions found in it, upper and lower, opposite each other, or why not.
    pub outcome: Result<[usize; 2], NoRecord>,
}

/// Why a scan is not seen to be a record.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NoRecord {
    /// No impression of the other jaw lies in it.
    OneJaw,
    /// This impression of the other jaw does, yet not both jaws as they stand in a record.
    InDoubt(usize),
}

impl Evidence {
    /// Numbers of the impressions whose outer surface lies well on a tray.
    pub fn fits_of(&self, tray: usize) -> impl Iterator<Item = usize> + '_ {
        let of_tray = move |trial: &&TrayTrial| trial.tray == tray && trial.fits_well();
        self.trays
            .iter()
            .filter(of_tray)
            .map(|trial| trial.impression)
    }

    /// What two impressions show together.
    #[must_use]
    pub fn couple(&self, pair: [usize; 2]) -> Option<&Couple> {
        self.couples.iter().find(|couple| couple.pair == pair)
    }

    /// The impression of the other jaw that lies in what may be a record.
    #[must_use]
    pub fn doubtful_record(&self, scan: usize) -> Option<usize> {
        let trial = self.records.iter().find(|trial| trial.scan == scan)?;
        match trial.outcome {
            Err(NoRecord::InDoubt(other)) => Some(other),
            _ => None,
        }
    }

    /// Whether impressions of both jaws lie in a scan.
    #[must_use]
    pub fn is_record(&self, scan: usize) -> bool {
        let found = |trial: &RecordTrial| trial.scan == scan && trial.outcome.is_ok();
        self.records.iter().any(found)
    }
}
