//! The limits in a result.

use crate::files::json::json_text;
use check::CheckedCase;
use judge::{Protocol, words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;

/// The limits that a case was judged by.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ProtocolResult {
    /// What the protocol calls itself.
    pub name: String,
    /// SHA-256 of name and limits as they stand here, lower-case hexadecimal.
    pub sha256: String,
    /// The limits that differ from the program's own in value, zones or level.
    pub changed: Vec<String>,
    /// Every limit by its name; the name ends with the unit.
    pub limits: BTreeMap<String, LimitResult>,
}

/// What the scanner itself adds to the lengths in its scans.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ScannerResult {
    /// Expanded uncertainty (k = 2) of a length in one scan, mm; it is part of every
    /// uncertainty of this result.
    pub length_uncertainty_mm: f64,
    /// Where that comes from.
    pub source: String,
    /// Whether the case states it, or else the protocol.
    pub by_case: bool,
}

impl ScannerResult {
    pub(super) fn of(checked: &CheckedCase) -> Self {
        let scanner = checked.case.scanner(&checked.protocol);
        Self {
            length_uncertainty_mm: scanner.length_uncertainty_mm,
            source: scanner.source.clone(),
            by_case: checked.case.scanner.is_some(),
        }
    }
}

/// One limit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct LimitResult {
    /// The limiting value; where it differs by zone, in the zones not named.
    pub value: f64,
    /// Values of their own for some zones.
    pub zones: BTreeMap<String, f64>,
    /// Its unit; `1` for a plain number.
    pub unit: String,
    /// What missing it means: `fail`, `undecided` or `note`.
    pub level: Level,
    /// Where what is asked for comes from, with how that is known; `null` where the number
    /// stands alone.
    #[serde(default)]
    pub criterion: Option<String>,
    /// Where the number comes from, with how that is known.
    pub source: String,
}

/// What missing a limit means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// The impression fails.
    Fail,
    /// The impression is not accepted on this measurement.
    Undecided,
    /// It is said, and changes no verdict.
    Note,
}

impl From<judge::Level> for Level {
    fn from(level: judge::Level) -> Self {
        match level {
            judge::Level::Fail => Self::Fail,
            judge::Level::Undecided => Self::Undecided,
            judge::Level::Note => Self::Note,
        }
    }
}

impl From<&judge::Limit> for LimitResult {
    fn from(limit: &judge::Limit) -> Self {
        let zones = limit.zones.iter();
        Self {
            value: limit.value,
            zones: zones
                .map(|(&zone, &value)| (words::zone(zone).to_owned(), value))
                .collect(),
            unit: limit.unit.clone(),
            level: limit.level.into(),
            criterion: limit.criterion.clone(),
            source: limit.source.clone(),
        }
    }
}

impl From<&Protocol> for ProtocolResult {
    fn from(protocol: &Protocol) -> Self {
        let name = protocol.name().to_owned();
        let limits: BTreeMap<String, LimitResult> = (protocol.limits())
            .map(|(key, limit)| (key.name().to_owned(), limit.into()))
            .collect();
        Self {
            sha256: sha256(json_text(&(&name, &limits)).as_bytes()),
            changed: changed(protocol),
            name,
            limits,
        }
    }
}

fn sha256(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    digest.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Names of the limits that differ from the program's own.
fn changed(protocol: &Protocol) -> Vec<String> {
    let own = Protocol::default();
    let differs = |limit: &judge::Limit, own: &judge::Limit| {
        (limit.value, limit.level) != (own.value, own.level) || limit.zones != own.zones
    };
    (protocol.limits().zip(own.limits()))
        .filter(|((_, limit), (_, own))| differs(limit, own))
        .map(|((key, _), _)| key.name().to_owned())
        .collect()
}
