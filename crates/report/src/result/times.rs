//! When things were done: all that differs between two results of the same files.

use check::{CheckedCase, Timing};
use chrono::{DateTime, SecondsFormat, Utc};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fs;
use std::path::Path;
use std::time::SystemTime;

/// Times of a check. Two results of the same files differ in nothing else.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Times {
    /// When the case was checked (RFC 3339, UTC).
    pub checked_at: String,
    /// When the file of each impression scan was last changed, in the order of
    /// `impressions` (RFC 3339, UTC); `null` where the system does not say.
    pub scans_changed_at: Vec<Option<String>>,
    /// How long each step took.
    pub steps: Vec<StepTime>,
}

/// How long one step of a check took.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct StepTime {
    /// The step.
    pub step: String,
    /// Its duration, s.
    pub duration_s: f64,
}

impl Times {
    /// The times of a checked case.
    #[must_use]
    pub fn of(checked: &CheckedCase, timing: &Timing) -> Self {
        Self {
            checked_at: in_utc(timing.started),
            scans_changed_at: (checked.case.impressions.iter())
                .map(|input| changed_at(&input.scan))
                .collect(),
            steps: (timing.steps.iter())
                .map(|(step, duration)| StepTime {
                    step: step.to_string(),
                    duration_s: (duration.as_secs_f64() * 1000.0).round() / 1000.0,
                })
                .collect(),
        }
    }
}

fn changed_at(path: &Path) -> Option<String> {
    let changed = fs::metadata(path).ok()?.modified().ok()?;
    Some(in_utc(changed))
}

/// A time to the second (RFC 3339, UTC).
pub(crate) fn in_utc(time: SystemTime) -> String {
    DateTime::<Utc>::from(time).to_rfc3339_opts(SecondsFormat::Secs, true)
}
