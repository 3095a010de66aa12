//! The readings of a crossed gauge study, and what is asked of them.

use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// One reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Who read it.
    pub operator: String,
    /// What was read.
    pub part: String,
    /// What was found.
    pub value: f64,
}

/// A study that cannot be worked out.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum StudyError {
    /// Too little to compare.
    #[error("a gauge study needs two operators, two parts and two repeats at least")]
    TooSmall,
    /// A cell with more or fewer readings than the first.
    #[error(
        "operator {operator:?} read part {part:?} {readings} times, not {wanted} times as elsewhere; every operator reads every part equally often"
    )]
    Unequal {
        /// Who.
        operator: String,
        /// What.
        part: String,
        /// How often.
        readings: usize,
        /// How often it should have been.
        wanted: usize,
    },
    /// All readings are the same number.
    #[error("every reading is the same, which says nothing about the gauge")]
    NoVariation,
    /// A value that is no number.
    #[error("a reading of operator {operator:?} on part {part:?} is no finite number")]
    NotFinite {
        /// Who.
        operator: String,
        /// What.
        part: String,
    },
}

pub(crate) type Cells<'a> = BTreeMap<(&'a str, &'a str), Vec<&'a Reading>>;

/// The readings of each operator on each part, equally many.
pub(crate) fn cells(readings: &[Reading]) -> Result<Cells<'_>, StudyError> {
    let mut cells = Cells::new();
    for one in readings {
        if !one.value.is_finite() {
            return Err(StudyError::NotFinite {
                operator: one.operator.clone(),
                part: one.part.clone(),
            });
        }
        cells
            .entry((&one.operator, &one.part))
            .or_default()
            .push(one);
    }
    let operators: BTreeSet<&str> = cells.keys().map(|key| key.0).collect();
    let parts: BTreeSet<&str> = cells.keys().map(|key| key.1).collect();
    let wanted = cells.values().map(Vec::len).max().unwrap_or(0);
    if operators.len() < 2 || parts.len() < 2 || wanted < 2 {
        return Err(StudyError::TooSmall);
    }
    for &operator in &operators {
        for &part in &parts {
            let readings = cells.get(&(operator, part)).map_or(0, Vec::len);
            if readings != wanted {
                return Err(StudyError::Unequal {
                    operator: operator.to_owned(),
                    part: part.to_owned(),
                    readings,
                    wanted,
                });
            }
        }
    }
    Ok(cells)
}
