//! Findings in a result.

use super::common::{Arch, Point, Side};
use super::numbering::{Before, defect_id, landmark_id, spot_id};
use crate::text::names;
use crate::text::rounding::{figure, point};
use check::CheckedCase;
use judge::words;
use messages::{Language, Message};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// How a check came out where it did not come out well.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// The limit is surely missed.
    Fail,
    /// It cannot be decided.
    Borderline,
    /// Worth knowing; changes no verdict.
    Note,
}

/// Which way a limit bounds a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Bound {
    /// The figure must not be less.
    AtLeast,
    /// The figure must not be more.
    AtMost,
}

impl Bound {
    /// `at least` or `at most`.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::AtLeast => "at least",
            Self::AtMost => "at most",
        }
    }

    /// The bound of a limiting value.
    pub(crate) fn of(self, limit: f64) -> judge::Bound {
        match self {
            Self::AtLeast => judge::Bound::AtLeast(limit),
            Self::AtMost => judge::Bound::AtMost(limit),
        }
    }
}

/// Why a finding bears on the verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// A question that stands before everything else on its impression.
    Question,
    /// A limit is clearly missed.
    Fault,
    /// Something is missing that a verdict needs.
    Missing,
    /// Too close to its limit to call, or for a person to see.
    Look,
    /// The parcel is not complete.
    Parcel,
    /// Worth knowing; changes no verdict.
    Note,
    /// Held back until a question on its impression is answered.
    HeldBack,
}

impl From<judge::Cause> for Cause {
    fn from(cause: judge::Cause) -> Self {
        match cause {
            judge::Cause::Question => Self::Question,
            judge::Cause::Fault => Self::Fault,
            judge::Cause::Missing => Self::Missing,
            judge::Cause::Look => Self::Look,
            judge::Cause::Parcel => Self::Parcel,
            judge::Cause::Note => Self::Note,
            judge::Cause::HeldBack => Self::HeldBack,
        }
    }
}

/// One thing that fails or cannot be judged.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Finding {
    /// Name within the case: F1, F2, … in order of urgency.
    pub id: String,
    /// How it came out.
    pub severity: Severity,
    /// Why it bears on the verdict.
    #[serde(default = "noted")]
    pub cause: Cause,
    /// Code of the check; `archproof explain CODE` prints its page.
    pub check: String,
    /// Number, from 0, of the impression in `impressions`; `null` for the case itself.
    pub impression: Option<u64>,
    /// The jaw.
    pub arch: Option<Arch>,
    /// Part of the arch; `null` where it is a matter of the whole.
    pub zone: Option<String>,
    /// The patient's side; `null` on the midline or where it is a matter of the whole.
    pub side: Option<Side>,
    /// The figure, in `unit`; `null` where it is no matter of figures or could not be had.
    pub measured: Option<f64>,
    /// Unit of `measured`, `limit` and `uncertainty`; `1` for a plain number.
    pub unit: Option<String>,
    /// The limit, in `unit`.
    pub limit: Option<f64>,
    /// Whether the figure must be at least the limit or at most.
    #[serde(default)]
    pub bound: Option<Bound>,
    /// Expanded uncertainty (k = 2) of `measured`, in `unit`; `null` where none is known.
    pub uncertainty: Option<f64>,
    /// Where, in the coordinates of the impression scan.
    pub at: Option<Point>,
    /// Name of the spot, the defect or the landmark that it speaks of.
    pub refers_to: Option<String>,
    /// Number, from 0, of the station where the stretch of border that it
    /// speaks of begins.
    pub from_station: Option<u64>,
    /// Number of the station where that stretch ends; less than `from_station`
    /// where it lies across the first station.
    pub to_station: Option<u64>,
    /// Name of the file with a drawing of the section at its worst place.
    pub drawing: Option<String>,
    /// Key of the instruction in the catalogue of messages.
    #[serde(default)]
    pub instruction_key: String,
    /// The messages that make the instruction, each with its key and its parameters.
    #[serde(default)]
    #[schemars(with = "Vec<MessageOfCatalogue>")]
    pub instruction_messages: Message,
    /// One plain instruction, in English.
    pub instruction: String,
}

impl Finding {
    /// The instruction in a language; in English where a result of an earlier version holds no
    /// messages.
    #[must_use]
    pub fn instruction_in(&self, language: Language) -> String {
        in_language(&self.instruction_messages, &self.instruction, language)
    }

    /// The instruction as a message.
    pub(crate) fn instruction_message(&self) -> Message {
        if self.instruction_messages.sentences().is_empty() {
            return Message::verbatim(self.instruction.as_str());
        }
        self.instruction_messages.clone()
    }
}

/// What messages say in a language, or else their English sentence.
pub(super) fn in_language(messages: &Message, english: &str, language: Language) -> String {
    if messages.sentences().is_empty() {
        return english.to_owned();
    }
    messages.text(language)
}

/// A message of the catalogue.
#[derive(JsonSchema)]
#[expect(dead_code, reason = "it describes the format alone")]
pub struct MessageOfCatalogue {
    /// Its key.
    key: String,
    /// Its parameters by name: a count, a word, `{"figure": "5.31 ± 0.08 mm"}`, further
    /// messages, or `{"all": […]}`, which is a list.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    parameters: BTreeMap<String, serde_json::Value>,
}

/// A check that was not made, and why.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct NotJudged {
    /// Code of the check, or name of the part of the result that stays empty;
    /// `archproof explain` knows both.
    pub check: String,
    /// The reason, in plain words.
    pub why: String,
    /// The messages that make the reason, each with its key and its parameters.
    #[serde(default)]
    #[schemars(with = "Vec<MessageOfCatalogue>")]
    pub why_messages: Message,
    /// Whether the case asked for it. A bare scan, for one, asks for nothing of the parcel.
    #[serde(default = "asked")]
    pub asked: bool,
}

impl NotJudged {
    pub(super) fn new(check: &str, why: Message, asked: bool) -> Self {
        Self {
            check: check.to_owned(),
            why: why.to_string(),
            why_messages: why,
            asked,
        }
    }

    /// The reason in a language; in English where a result of an earlier version holds no
    /// messages.
    #[must_use]
    pub fn why_in(&self, language: Language) -> String {
        in_language(&self.why_messages, &self.why, language)
    }
}

impl From<judge::Severity> for Severity {
    fn from(severity: judge::Severity) -> Self {
        match severity {
            judge::Severity::Fail => Self::Fail,
            judge::Severity::Borderline => Self::Borderline,
            judge::Severity::Note => Self::Note,
        }
    }
}

fn asked() -> bool {
    true
}

/// Results of an earlier version do not say why.
fn noted() -> Cause {
    Cause::Note
}

impl Finding {
    /// Whether the impression must be taken again.
    pub(crate) fn asks_for_retake(&self) -> bool {
        let check = self.check.parse::<judge::Check>();
        self.cause == Cause::Fault && check.is_ok_and(|c| c.remedy() == judge::Remedy::Retake)
    }

    /// A finding with this number in the case, from 0.
    pub(super) fn of(
        checked: &CheckedCase,
        number: usize,
        found: &judge::Finding,
        before: &[Before],
    ) -> Self {
        let unit = found
            .impression
            .map(|impression| checked.impressions[impression].scan.unit.unit());
        let place = found.place.as_ref();
        let value = found.figure.as_ref();
        Self {
            id: names::finding(number),
            severity: found.severity.into(),
            cause: found.cause().into(),
            check: found.check.code().to_owned(),
            impression: found.impression.map(|impression| impression as u64),
            arch: found.arch.map(Into::into),
            zone: place.map(|place| words::zone(place.zone).to_owned()),
            side: place.and_then(|place| place.side).map(Into::into),
            measured: value.map(|value| figure(value.measured)),
            unit: value.map(|value| value.unit.clone()),
            limit: value.map(|value| figure(value.limit())),
            bound: value.map(|value| match value.bound {
                judge::Bound::AtLeast(_) => Bound::AtLeast,
                judge::Bound::AtMost(_) => Bound::AtMost,
            }),
            uncertainty: value.and_then(|value| value.uncertainty).map(figure),
            at: place.zip(unit).map(|(place, unit)| point(&place.at, unit)),
            refers_to: refers_to(found, before),
            from_station: found.stretch.map(|stretch| stretch.from as u64),
            to_station: found.stretch.map(|stretch| stretch.to as u64),
            drawing: found.stretch.map(|_| names::section(number)),
            instruction_key: found.instruction.key().to_owned(),
            instruction: found.instruction.to_string(),
            instruction_messages: found.instruction.clone(),
        }
    }
}

/// Name of the spot, the defect or the landmark that a finding speaks of.
fn refers_to(found: &judge::Finding, before: &[Before]) -> Option<String> {
    let before = before[found.impression?];
    let spot = found.spot.map(|spot| spot_id(before.spots + spot));
    let defect = found
        .defect
        .map(|defect| defect_id(before.defects + defect));
    let landmark = (found.landmark).map(|landmark| landmark_id(before.landmarks + landmark));
    spot.or(defect).or(landmark)
}

/// What was not judged, in the words of the format.
pub(super) fn not_judged(entries: &[judge::NotJudged]) -> Vec<NotJudged> {
    entries
        .iter()
        .map(|entry| NotJudged::new(entry.what.name(), entry.why.clone(), entry.is_asked))
        .collect()
}
