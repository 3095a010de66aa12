//! One impression of a result.

use super::as_sent::AsSent;
use super::border::Border;
use super::colour::TrayColour;
use super::common::{Arch, Point, Verdict};
use super::cover::{Cover, SurfaceFile};
use super::defects::{Defect, ZoneScan};
use super::findings::{MessageOfCatalogue, NotJudged, in_language, not_judged};
use super::landmarks::Landmark;
use super::numbering::{Before, defects};
use super::scan::{ScanResult, TrayJoint, TrayScan};
use super::tray_chosen::TrayChosen;
use super::tray_fit::TrayFit;
use super::trays_tried::TraysTried;
use crate::text::names;
use crate::text::rounding::{confidence, direction, point};
use check::CheckedCase;
use mesh::Unit;
use messages::{Language, Message};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One impression scan and what came of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ImpressionResult {
    /// Which jaw it is of.
    pub arch: ArchReading,
    /// How far the impression has come.
    pub stage: Stage,
    /// Impression material, as given; `null` where nothing was said.
    #[serde(default)]
    pub material: Option<String>,
    /// Hours since the impression was taken, as given.
    #[serde(default)]
    pub hours_since_taken: Option<f64>,
    /// Whether the tissue stops were relieved before the wash, as given.
    #[serde(default)]
    pub stops_relieved: bool,
    /// Whether a later stage of the same jaw is in the case, so that this is
    /// no longer the impression to be worked from.
    pub superseded: bool,
    /// Verdict on this impression alone.
    pub verdict: Verdict,
    /// The scan file.
    pub scan: ScanResult,
    /// The tray scan's file; `null` without one.
    pub tray: Option<TrayScan>,
    /// Which tray of the shelf it was taken in; `null` where none was looked for there, or found.
    #[serde(default)]
    pub tray_chosen: Option<TrayChosen>,
    /// Which tray of the shelf to take for the new impression, by the scan of this one; `null`
    /// where it is not to be taken again, or no shelf was given.
    #[serde(default)]
    pub next_tray: Option<TraysTried>,
    /// SHA-256 of the scans of the tray's pieces, where it came in pieces; then that of `tray`
    /// is of these in their order.
    #[serde(default)]
    pub tray_pieces: Vec<String>,
    /// Where these pieces meet.
    #[serde(default)]
    pub tray_joints: Vec<TrayJoint>,
    /// The file of the scan of the tray after relief, of an impression before the wash;
    /// `null` without one.
    pub tray_relieved: Option<TrayScan>,
    /// Why that scan tells nothing; `null` where it does, or there is none.
    pub tray_relieved_unused: Option<String>,
    /// The messages that make this reason, each with its key and its parameters.
    #[serde(default)]
    #[schemars(with = "Vec<MessageOfCatalogue>")]
    pub tray_relieved_unused_messages: Message,
    /// The scan of the same impression as it was sent, where this is as it arrived; `null` without
    /// one.
    #[serde(default)]
    pub as_sent: Option<AsSent>,
    /// Impression frame, axes and origin in scan coordinates; `null` where none was found.
    pub frame: Option<Frame>,
    /// Cover over the tissue surface; `null` where it could not be measured.
    pub cover: Option<Cover>,
    /// What the scan's colours tell of the tray; `null` where it has none, or they tell nothing.
    pub tray_colour: Option<TrayColour>,
    /// How the tray suits and how it stood; `null` without a registered tray.
    pub tray_fit: Option<TrayFit>,
    /// The border; `null` where it could not be followed.
    pub border: Option<Border>,
    /// The file of its surface; `null` where the scan shows no impression.
    pub surface: Option<SurfaceFile>,
    /// Landmarks of the jaw; empty where the scan shows no impression.
    pub landmarks: Vec<Landmark>,
    /// Surface defects; empty also where they could not be looked for, which
    /// `not_judged` says.
    pub defects: Vec<Defect>,
    /// How well each part of the arch was scanned.
    pub zones: Vec<ZoneScan>,
    /// What was not judged, and why.
    pub not_judged: Vec<NotJudged>,
}

/// The jaw, as declared and as found.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ArchReading {
    /// As declared; `null` where nothing was said.
    pub declared: Option<Arch>,
    /// As found from the shape; `null` where that was not possible.
    pub detected: Option<Arch>,
    /// Of the jaw found: 0 (a guess) to 1; `null` where none was found.
    pub confidence: Option<f64>,
}

/// How far an impression has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// The heavy or medium body, before the wash.
    FirstPass,
    /// With the wash over it.
    Wash,
    /// Taken in one go, or not said.
    Single,
}

/// The impression frame, in scan coordinates.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Frame {
    /// Centre of the crest line.
    pub origin: Point,
    /// Unit vector toward the patient's right.
    pub right: Point,
    /// Unit vector toward the patient's front.
    pub anterior: Point,
    /// Unit vector from tray toward tissue.
    pub seating: Point,
    /// 0 to 1, for the axes.
    pub confidence: f64,
}

impl From<judge::Stage> for Stage {
    fn from(stage: judge::Stage) -> Self {
        match stage {
            judge::Stage::FirstPass => Self::FirstPass,
            judge::Stage::Wash => Self::Wash,
            judge::Stage::Single => Self::Single,
        }
    }
}

impl Frame {
    fn of(frame: &measure::Frame, unit: Unit) -> Self {
        Self {
            origin: point(&frame.origin, unit),
            right: direction(&frame.right),
            anterior: direction(&frame.anterior),
            seating: direction(&frame.seating),
            confidence: confidence(frame.confidence),
        }
    }
}

impl ImpressionResult {
    /// The impression with this number, from 0.
    pub(super) fn of(checked: &CheckedCase, number: usize, before: Before) -> Self {
        let input = &checked.case.impressions[number];
        let one = &checked.impressions[number];
        let judged = &checked.judged.impressions[number];
        let measured = one.measured();
        let frame = measured.map(|found| &found.frame);
        let unit = one.scan.unit.unit();
        let landmarks = measured.iter().flat_map(|found| &found.landmarks);
        let tissue = measured.and_then(|found| found.tissue.as_ref().ok());
        let zones = tissue.iter().flat_map(|tissue| &tissue.zones);
        Self {
            arch: ArchReading {
                declared: input.declared.map(Into::into),
                detected: frame.map(|frame| frame.arch.into()),
                confidence: frame.map(|frame| confidence(frame.arch_confidence)),
            },
            stage: input.stage.into(),
            material: (input.material).map(|material| material.in_words().to_owned()),
            hours_since_taken: input.hours_since_taken,
            stops_relieved: input.stops_relieved,
            superseded: checked.case.is_superseded(number),
            verdict: judged.verdict.into(),
            scan: ScanResult::of(one, &names::scan(checked, number)),
            tray: one
                .tray
                .as_deref()
                .map(|tray| TrayScan::of(tray, &names::tray(checked, number))),
            tray_chosen: one.shelf.as_ref().and_then(TrayChosen::of),
            next_tray: (one.next_tray.as_ref())
                .map(|tried| TraysTried::of(tried, one.scan.unit.unit())),
            tray_pieces: (one.pieces.iter())
                .flat_map(|pieces| pieces.scans.iter().map(|piece| piece.sha256.clone()))
                .collect(),
            tray_joints: TrayJoint::all(one),
            tray_relieved: (one.relief.as_ref())
                .map(|relief| TrayScan::of(&relief.scan, &names::tray_relieved(checked, number))),
            tray_relieved_unused: (one.relief.as_ref())
                .and_then(|relief| Some(relief.places.as_ref().err()?.to_string())),
            tray_relieved_unused_messages: (one.relief.as_ref())
                .and_then(|relief| relief.places.as_ref().err())
                .map(Message::from)
                .unwrap_or_default(),
            as_sent: AsSent::of(checked, number),
            frame: frame.map(|frame| Frame::of(frame, unit)),
            cover: Cover::of(checked, number, before.spots),
            tray_colour: measured.and_then(TrayColour::of),
            tray_fit: measured.and_then(TrayFit::of),
            border: Border::of(checked, number),
            surface: SurfaceFile::of(checked, number),
            landmarks: landmarks
                .zip(&judged.landmarks)
                .zip(before.landmarks..)
                .map(|((found, judged), number)| Landmark::of(found, judged, number, unit))
                .collect(),
            defects: (defects(one).iter().zip(before.defects..))
                .map(|(found, number)| Defect::of(found, number, unit))
                .collect(),
            zones: zones.map(ZoneScan::of).collect(),
            not_judged: not_judged(&judged.not_judged),
        }
    }

    /// Why the scan of the relieved tray tells nothing, in a language; in English where a
    /// result of an earlier version holds no messages.
    #[must_use]
    pub fn tray_relieved_unused_in(&self, language: Language) -> Option<String> {
        let unused = self.tray_relieved_unused.as_ref()?;
        let messages = &self.tray_relieved_unused_messages;
        Some(in_language(messages, unused, language))
    }
}
