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
#[error("{}", self.message())]
pub enum BaselineFault {
    /// It is no such file.
    Toml(TomlProblem),
    /// A number cannot be one.
    Number {
        /// The table.
        table: &'static str,
        /// Which of them, from 1.
        number: usize,
        /// The key.
        key: &'static str,
        /// What it must be.
        must: MustBe,
    },
    /// A group is given twice.
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
        match self {
            Self::Toml(problem) => message!("baseline-toml", problem = problem),
            Self::Number {
                table,
                number,
                key,
                must,
            } => message!(
                "baseline-number",
                table = *table,
                number = *number,
                key = *key,
                must = must.message()
            ),
            Self::Twice { table, number } => {
                message!("baseline-twice", table = *table, number = *number)
            }
        }
    }
}

/// What a number of a baseline must be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MustBe {
    /// A number, neither infinite nor undefined.
    Number,
    /// A number above 0.
    Positive,
    /// At least so many.
    AtLeast(u64),
    /// No more than the number of impressions.
    AtMostOf,
}

impl MustBe {
    fn message(self) -> Message {
        match self {
            Self::Number => message!("must-be-number"),
            Self::Positive => message!("must-be-positive"),
            Self::AtLeast(least) => message!("must-be-at-least", least = least),
            Self::AtMostOf => message!("must-be-at-most-of"),
        }
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
            Some(fault("centre", MustBe::Number))
        } else if !(one.sigma.is_finite() && one.sigma > 0.0) {
            Some(fault("sigma", MustBe::Positive))
        } else if one.count < 2 {
            Some(fault("count", MustBe::AtLeast(2)))
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
            Some(fault("of", MustBe::AtLeast(1)))
        } else if one.fails > one.of {
            Some(fault("fails", MustBe::AtMostOf))
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
