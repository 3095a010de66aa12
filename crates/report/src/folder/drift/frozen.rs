//! What a baseline holds of each group, and what can be wrong with it.

use super::charted::Charted;
use judge::{TomlFault, TomlProblem};
use messages::{Message, message};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use thiserror::Error;

/// A figure of a group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BaselineFigure {
    /// The jaw.
    pub arch: String,
    /// The stage.
    pub stage: String,
    /// The label as `key=value`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// The figure, as the tables name it.
    pub figure: Charted,
    /// Mean, mm.
    pub centre: f64,
    /// Standard deviation by the mean moving range, mm.
    pub sigma: f64,
    /// Impressions.
    pub count: u64,
    /// When the first of them was scanned, UTC.
    pub first: String,
    /// When the last was.
    pub last: String,
}

/// The share of a group that fails.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BaselineShare {
    /// The jaw.
    pub arch: String,
    /// The stage.
    pub stage: String,
    /// The label as `key=value`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Impressions that fail: to be reworked or taken again.
    pub fails: u64,
    /// Of how many.
    pub of: u64,
}

/// What is wrong in a baseline file.
#[derive(Debug, Error)]
pub enum BaselineFault {
    /// It is no such file.
    #[error("{0}; write it again with 'archproof baseline DIR --write FILE'")]
    Toml(TomlProblem),
    /// A number cannot be one.
    #[error(
        "[[{table}]] number {number}: {key} must be {must}; write the file again with 'archproof baseline DIR --write FILE'"
    )]
    Number {
        /// The table.
        table: &'static str,
        /// Which of them, from 1.
        number: usize,
        /// The key.
        key: &'static str,
        /// What it must be.
        must: &'static str,
    },
    /// A group is given twice.
    #[error("[[{table}]] number {number} repeats an earlier one; keep one of them")]
    Twice {
        /// The table.
        table: &'static str,
        /// Which of them, from 1.
        number: usize,
    },
}

impl TomlFault for BaselineFault {
    fn wanted() -> Message {
        message!("wanted-baseline")
    }

    fn message(&self) -> Message {
        Message::verbatim(self.to_string())
    }
}

/// The first figure that cannot be one.
pub(super) fn figure_fault(figures: &[BaselineFigure]) -> Option<BaselineFault> {
    let mut seen = BTreeSet::new();
    (1..).zip(figures).find_map(|(number, one)| {
        let fault = |key, must| BaselineFault::Number {
            table: "figure",
            number,
            key,
            must,
        };
        if !one.centre.is_finite() {
            Some(fault("centre", "a number"))
        } else if !(one.sigma.is_finite() && one.sigma > 0.0) {
            Some(fault("sigma", "a number above 0"))
        } else if one.count < 2 {
            Some(fault("count", "2 or more"))
        } else if !seen.insert((&one.arch, &one.stage, &one.label, one.figure)) {
            Some(BaselineFault::Twice {
                table: "figure",
                number,
            })
        } else {
            None
        }
    })
}

/// The first share that cannot be one.
pub(super) fn share_fault(shares: &[BaselineShare]) -> Option<BaselineFault> {
    let mut seen = BTreeSet::new();
    (1..).zip(shares).find_map(|(number, one)| {
        let fault = |key, must| BaselineFault::Number {
            table: "share",
            number,
            key,
            must,
        };
        if one.of == 0 {
            Some(fault("of", "1 or more"))
        } else if one.fails > one.of {
            Some(fault("fails", "no more than of"))
        } else if !seen.insert((&one.arch, &one.stage, &one.label)) {
            Some(BaselineFault::Twice {
                table: "share",
                number,
            })
        } else {
            None
        }
    })
}
