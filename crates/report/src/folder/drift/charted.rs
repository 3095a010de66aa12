//! What the charts are of, and what to look at when they speak.

use crate::folder::rows::ImpressionRow;
use crate::text::words::group_words;
use messages::{Language, Message, message, text};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A figure of an impression that is charted.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema,
)]
pub enum Charted {
    /// Noise of the scan, mm.
    #[serde(rename = "noise_mm")]
    Noise,
    /// Root mean square distance of impression and tray where they fit, mm.
    #[serde(rename = "registration_rms_mm")]
    TrayFit,
    /// Median material thickness, mm.
    #[serde(rename = "cover_median_mm")]
    Thickness,
}

impl Charted {
    /// All of them, in the order of the page.
    pub const ALL: [Self; 3] = [Self::Noise, Self::TrayFit, Self::Thickness];

    /// Name of its column in the tables.
    pub(crate) const fn column(self) -> &'static str {
        match self {
            Self::Noise => "noise_mm",
            Self::TrayFit => "registration_rms_mm",
            Self::Thickness => "cover_median_mm",
        }
    }

    /// What it is called on the page, without its unit.
    pub(crate) fn name(self, language: Language) -> String {
        let name = match self {
            Self::Noise => message!("charted-noise"),
            Self::TrayFit => message!("charted-tray-fit"),
            Self::Thickness => message!("charted-thickness"),
        };
        name.text(language)
    }

    /// What it is called on the page, with its unit.
    pub(crate) fn title(self, language: Language) -> String {
        format!("{}, mm", self.name(language))
    }

    /// Decimals that it is printed with.
    pub(crate) const fn decimals(self) -> usize {
        match self {
            Self::Noise | Self::TrayFit => 4,
            Self::Thickness => 3,
        }
    }

    /// The figures of an impression, in the order of [`ALL`](Self::ALL).
    pub(super) fn of(row: &ImpressionRow) -> [Option<f64>; 3] {
        [row.noise_mm, row.registration_rms_mm, row.cover_median_mm]
    }

    /// What to look at when it rises or falls.
    pub(super) fn look_at(self, is_above: bool) -> Message {
        match (self, is_above) {
            (Self::Noise, true) => message!("look-noise-above"),
            (Self::Noise, false) => message!("look-noise-below"),
            (Self::TrayFit, true) => message!("look-tray-fit-above"),
            (Self::TrayFit, false) => message!("look-tray-fit-below"),
            (Self::Thickness, true) => message!("look-thickness-above"),
            (Self::Thickness, false) => message!("look-thickness-below"),
        }
    }
}

/// The value of a label that an impression does not have.
const NO_VALUE: &str = "(none)";

/// Where the limits of a chart come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Limits {
    /// The frozen baseline.
    Baseline,
    /// The points that they judge.
    Own,
}

/// Impressions that share a chart.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
pub struct Group {
    /// The jaw.
    pub arch: String,
    /// The stage.
    pub stage: String,
    /// The label as `key=value`, where charts are kept apart by one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
}

impl Group {
    /// That of an impression, by a label where one is named; `None` where the jaw is not
    /// known.
    pub(super) fn of(row: &ImpressionRow, by: Option<&str>) -> Option<Self> {
        let labels = row.labels.as_deref().unwrap_or_default();
        let label = by.map(|key| {
            let mut labels = labels.split(' ').filter_map(|label| label.split_once('='));
            let value = labels.find(|(other, _)| *other == key).map(|found| found.1);
            format!("{key}={}", value.unwrap_or(NO_VALUE))
        });
        Some(Self {
            arch: row.arch.clone()?,
            stage: row.stage.clone().unwrap_or_else(|| "single".to_owned()),
            label,
        })
    }

    /// `maxillary, before the wash, scanner=S1`.
    pub(crate) fn words(&self, language: Language) -> String {
        let own = group_words(&format!("{} {}", self.arch, self.stage), language);
        match self.label.as_deref().map(|label| label.split_once('=')) {
            Some(Some((key, NO_VALUE))) => {
                format!(
                    "{own}, {}",
                    text!(language, "group-without-label", key = key)
                )
            }
            Some(Some((key, value))) => format!("{own}, {key}={value}"),
            _ => own,
        }
    }
}
