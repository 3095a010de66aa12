//! Very many errors, counted in steps of a hundred thousandth of a millimetre.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

const STEP_MM: f64 = 1e-5;

/// Sizes of errors, each rounded up to the next step.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub struct Errors(BTreeMap<u64, u64>);

impl Errors {
    /// Counts one error, mm.
    pub fn add(&mut self, error_mm: f64) {
        let step = (error_mm.abs() / STEP_MM).ceil() as u64;
        *self.0.entry(step).or_default() += 1;
    }

    /// All of them together.
    pub fn merged(parts: impl IntoIterator<Item = Self>) -> Self {
        let mut all = Self::default();
        for (step, count) in parts.into_iter().flat_map(|part| part.0) {
            *all.0.entry(step).or_default() += count;
        }
        all
    }

    /// How many there are.
    pub fn count(&self) -> u64 {
        self.0.values().sum()
    }

    /// The value below which a part of them lie, mm.
    pub fn quantile(&self, part: f64) -> f64 {
        let wanted = ((self.count() - 1) as f64 * part) as u64;
        let mut before = 0;
        let reached = self.0.iter().find(|(_, count)| {
            before += **count;
            before > wanted
        });
        *reached.expect("there are errors").0 as f64 * STEP_MM
    }
}

impl Extend<f64> for Errors {
    fn extend<Many: IntoIterator<Item = f64>>(&mut self, errors_mm: Many) {
        errors_mm.into_iter().for_each(|error| self.add(error));
    }
}

impl FromIterator<f64> for Errors {
    fn from_iter<Many: IntoIterator<Item = f64>>(errors_mm: Many) -> Self {
        let mut all = Self::default();
        all.extend(errors_mm);
        all
    }
}
