//! A frozen baseline: what a process did while it was in order, in a file of its own.

use super::charted::{Charted, Group};
use super::frozen::{BaselineFault, BaselineFigure, BaselineShare, figure_fault, share_fault};
use super::series::Series;
use crate::folder::conditions::Conditions;
use crate::folder::rows::ImpressionRow;
use crate::result::TimeSources;
use judge::{Located, TomlFileError, located, system_says};
use mesh::read::shown_path;
use messages::{Message, message};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use statistics::control::Process;
use std::fs::File;
use std::io::{self, BufRead, BufReader, Read};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Impressions of a group that its limits are made from: the latest.
const MOST: usize = 10_000;
/// Fewer impressions than that say too little of a standard deviation to freeze it.
const LEAST: usize = 20;

/// Name and version of the file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
enum Contract {
    #[serde(rename = "archproof-baseline/1")]
    V1,
}

/// What a process did while it was in order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Baseline {
    schema: Contract,
    /// Version of the program that measured it.
    pub program: String,
    /// What the limits called themselves.
    pub protocol: String,
    /// SHA-256 of name and limits, as in each `result.json`.
    pub protocol_sha256: String,
    /// SHA-256 of the table of results that it was made from.
    pub results_sha256: String,
    /// A label by which charts are kept apart, beside jaw and stage.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub by: Option<String>,
    /// Cases by where the times of their scans are taken from.
    #[serde(default)]
    pub times_by: TimeSources,
    /// Figures, by group.
    #[serde(default, rename = "figure")]
    pub figures: Vec<BaselineFigure>,
    /// Shares that fail, by group.
    #[serde(default, rename = "share")]
    pub shares: Vec<BaselineShare>,
}

/// Why there is no baseline.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum BaselineError {
    /// Its file cannot be used.
    File(#[from] TomlFileError<BaselineFault>),
    /// The results cannot be read.
    Results {
        /// Their table.
        path: PathBuf,
        /// What the system says, or why a row is none.
        source: io::Error,
    },
    /// There are too few results.
    TooFew(PathBuf),
}

impl BaselineError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::File(error) => error.message(),
            Self::Results { path, source } => message!(
                "baseline-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::TooFew(path) => {
                message!("baseline-too-few", path = shown_path(path), least = LEAST)
            }
        }
    }
}

fn hexadecimal(digest: Sha256) -> String {
    let bytes = digest.finalize();
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

impl Baseline {
    /// Reads a baseline file.
    ///
    /// # Errors
    /// When it cannot be read or makes no sense.
    pub fn from_file(path: &Path) -> Result<Self, BaselineError> {
        Ok(located::read(path, Self::parsed)?)
    }

    fn parsed(text: &str) -> Result<Self, Located<BaselineFault>> {
        let read: Self = located::from_toml(text, BaselineFault::Toml)?;
        let found = figure_fault(&read.figures).or_else(|| share_fault(&read.shares));
        found.map_or(Ok(read), |fault| Err(Located { line: None, fault }))
    }

    /// The text of its file.
    #[must_use]
    pub fn to_toml(&self) -> String {
        // Plain numbers and texts always have a TOML form.
        let rows = toml::to_string(self).unwrap_or_default();
        format!(
            "# What was measured while all was in order: limits of control charts.\n\
             # Use it with 'archproof batch DIR --out OUT --baseline FILE'.\n{rows}"
        )
    }

    /// What the results of a batch say of the process, by jaw, stage and one label.
    ///
    /// # Errors
    /// When they cannot be read, or are too few.
    pub fn of_results(
        folder: &Path,
        how: &Conditions,
        by: Option<String>,
    ) -> Result<Self, BaselineError> {
        let path = folder.join(crate::folder::TableFiles::NAMES[0]);
        let unread = |source| BaselineError::Results {
            path: path.clone(),
            source,
        };
        let mut series = Series::new(by, MOST);
        let mut reader = BufReader::new(File::open(&path).map_err(unread)?);
        let mut line = String::new();
        let mut digest = Sha256::new();
        let (mut times_by, mut case) = (TimeSources::default(), None);
        // A line too long to be one of ours is cut, and then is none.
        let mut next = |line: &mut String| {
            let most = mesh::read::MAX_TABLE_BYTES;
            reader.by_ref().take(most).read_line(line)
        };
        while next(&mut line).map_err(unread)? > 0 {
            digest.update(line.as_bytes());
            let row: ImpressionRow = serde_json::from_str(&line).map_err(|e| unread(e.into()))?;
            series.add(&row, "");
            // A case's rows lie together.
            if row.problem.is_none() && case.as_ref() != Some(&row.folder) {
                times_by.add(row.time_source());
                case = Some(row.folder);
            }
            line.clear();
        }
        let found = Self {
            times_by,
            ..Self::of_series(series, how, hexadecimal(digest))
        };
        if found.figures.is_empty() {
            return Err(BaselineError::TooFew(folder.to_owned()));
        }
        Ok(found)
    }

    pub(super) fn of_series(mut series: Series, how: &Conditions, results_sha256: String) -> Self {
        series.settle();
        let (mut figures, mut shares) = (Vec::new(), Vec::new());
        for (group, of_group) in &series.groups {
            let Group { arch, stage, label } = group.clone();
            figures.extend(Charted::ALL.into_iter().filter_map(|figure| {
                let (points, values) = of_group.with(figure);
                let process = Process::of(&values).filter(|found| found.sigma > 0.0)?;
                (values.len() >= LEAST).then(|| BaselineFigure {
                    arch: arch.clone(),
                    stage: stage.clone(),
                    label: label.clone(),
                    figure,
                    centre: process.centre,
                    sigma: process.sigma,
                    count: values.len() as u64,
                    first: points
                        .first()
                        .map(|p| p.scanned.clone())
                        .unwrap_or_default(),
                    last: points.last().map(|p| p.scanned.clone()).unwrap_or_default(),
                })
            }));
            let [fails, of] = of_group.counted();
            if of >= LEAST as u64 {
                shares.push(BaselineShare {
                    arch,
                    stage,
                    label,
                    fails,
                    of,
                });
            }
        }
        Self {
            schema: Contract::V1,
            program: how.program.clone(),
            protocol: how.protocol.clone(),
            protocol_sha256: how.protocol_sha256.clone(),
            results_sha256,
            by: series.by,
            times_by: TimeSources::default(),
            figures,
            shares,
        }
    }

    /// The process of a figure of a group, and of how many impressions it is.
    pub(super) fn process_of(&self, group: &Group, figure: Charted) -> Option<(Process, u64)> {
        let is_it = |one: &&BaselineFigure| {
            one.figure == figure
                && (&one.arch, &one.stage, &one.label) == (&group.arch, &group.stage, &group.label)
        };
        let found = self.figures.iter().find(is_it)?;
        let process = Process {
            centre: found.centre,
            sigma: found.sigma,
        };
        Some((process, found.count))
    }

    pub(super) fn share_of(&self, group: &Group) -> Option<[u64; 2]> {
        let is_it = |one: &&BaselineShare| {
            (&one.arch, &one.stage, &one.label) == (&group.arch, &group.stage, &group.label)
        };
        self.shares
            .iter()
            .find(is_it)
            .map(|found| [found.fails, found.of])
    }

    /// In what it was made otherwise than what is judged by it, in whole sentences.
    pub(in crate::folder) fn differs(&self, how: &Conditions) -> Vec<Message> {
        let mut said = Vec::new();
        if self.protocol_sha256 != how.protocol_sha256 {
            let limits = self.protocol.as_str();
            said.push(message!("baseline-other-limits", limits = limits));
        }
        if self.program != how.program {
            let version = self.program.as_str();
            said.push(message!("baseline-other-version", version = version));
        }
        said
    }
}
