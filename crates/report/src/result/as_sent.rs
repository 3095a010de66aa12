//! An impression as it was sent, beside it as it arrived, in a result.

use super::common::{Point, Side};
use super::findings::{MessageOfCatalogue, in_language};
use super::scan::TrayScan;
use super::tray_bend::LimbBend;
use crate::text::names;
use crate::text::rounding::{figure, point, share};
use check::CheckedCase;
use judge::words;
use measure::pair::{self, DamageKind, PlaceKind, Transit};
use measure::{DefectKind, SpotKind};
use mesh::Unit;
use messages::{Language, Message};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The scan of an impression as it was sent, and what changed until it arrived.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AsSent {
    /// The file.
    pub scan: TrayScan,
    /// What changed; `null` where the two could not be compared.
    pub change: Option<ChangeInTransit>,
    /// Why they could not; `null` where they could.
    pub unused: Option<String>,
    /// The messages that make this reason, each with its key and its parameters.
    #[serde(default)]
    #[schemars(with = "Vec<MessageOfCatalogue>")]
    pub unused_messages: Message,
}

/// How an impression changed from the scan in which it was sent to the scan in which it arrived;
/// uncertainties are expanded (k = 2).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ChangeInTransit {
    /// How much larger all of it is, percent; negative where it is smaller.
    pub larger_percent: f64,
    /// Its uncertainty, percent.
    pub larger_uncertainty_percent: f64,
    /// How much farther apart its heels lie in all, mm; negative where they are nearer.
    pub heels_apart_mm: f64,
    /// Its uncertainty, mm.
    pub heels_apart_uncertainty_mm: f64,
    /// Distance between the heels, mm.
    pub between_heels_mm: f64,
    /// How far each half bent beside the front, but for the even change of size: the patient's
    /// right, then the left.
    pub bends: Vec<LimbBend>,
    /// Share of the tissue surface that lies on the scan as sent, bend and size taken off, 0 to 1.
    pub unchanged_share: f64,
    /// Median uncertainty of a depth, mm; a smaller change is not seen.
    pub uncertainty_mm: f64,
    /// Places that changed by themselves, deepest first.
    pub damage: Vec<Damage>,
    /// What became of each place that the scan as sent shows.
    pub places: Vec<PlaceThen>,
}

/// A place that changed by itself.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Damage {
    /// What happened.
    pub kind: DamageWord,
    /// Part of the arch.
    pub zone: String,
    /// Patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Where it is most, coordinates of the scan as it arrived.
    pub at: Point,
    /// How far the surface moved there, mm; negative where material is missing or pressed in.
    pub depth_mm: f64,
    /// Its uncertainty, mm.
    pub depth_uncertainty_mm: f64,
    /// Area over which it surely moved, mm².
    pub area_mm2: f64,
}

/// What happened to a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum DamageWord {
    /// Material is missing at the border.
    MissingAtBorder,
    /// The surface is pressed in, or material is missing away from the border.
    PressedIn,
    /// Something sticks to the surface.
    StuckOn,
}

/// A place that the scan as sent shows, looked for in the scan as it arrived.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct PlaceThen {
    /// What it was: show-through, thin, void, nodule, fold, hole or short border.
    pub kind: String,
    /// Part of the arch.
    pub zone: String,
    /// Patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Where it would lie now, coordinates of the scan as it arrived.
    pub at: Point,
    /// Whether the scan as it arrived shows it again; `null` where that was not measured.
    pub found_again: Option<bool>,
}

impl AsSent {
    pub(super) fn of(checked: &CheckedCase, number: usize) -> Option<Self> {
        let one = &checked.impressions[number];
        let sent = one.as_sent.as_ref()?;
        let unit = one.scan.unit.unit();
        Some(Self {
            scan: TrayScan::of(&sent.scan, &names::as_sent(checked, number)),
            change: (sent.transit.as_ref().ok()).map(|found| ChangeInTransit::of(found, unit)),
            unused: sent.transit.as_ref().err().map(ToString::to_string),
            unused_messages: sent
                .transit
                .as_ref()
                .err()
                .map(Message::from)
                .unwrap_or_default(),
        })
    }

    /// Why the two scans could not be compared, in a language; in English where a result of an
    /// earlier version holds no messages.
    #[must_use]
    pub fn unused_in(&self, language: Language) -> Option<String> {
        let unused = self.unused.as_ref()?;
        Some(in_language(&self.unused_messages, unused, language))
    }
}

impl ChangeInTransit {
    fn of(found: &Transit, unit: Unit) -> Self {
        Self {
            larger_percent: figure(found.larger_percent.value),
            larger_uncertainty_percent: figure(found.larger_percent.uncertainty),
            heels_apart_mm: figure(found.heels_apart_mm.value),
            heels_apart_uncertainty_mm: figure(found.heels_apart_mm.uncertainty),
            between_heels_mm: figure(found.between_heels_mm),
            bends: (found.bends.iter())
                .map(|bend| LimbBend::of(bend, unit))
                .collect(),
            unchanged_share: share(found.unchanged_share),
            uncertainty_mm: figure(found.uncertainty_mm),
            damage: found.damage.iter().map(|d| Damage::of(d, unit)).collect(),
            places: found
                .places
                .iter()
                .map(|p| PlaceThen::of(p, unit))
                .collect(),
        }
    }
}

impl Damage {
    fn of(found: &pair::Damage, unit: Unit) -> Self {
        Self {
            kind: match found.kind {
                DamageKind::Torn => DamageWord::MissingAtBorder,
                DamageKind::PressedIn => DamageWord::PressedIn,
                DamageKind::StuckOn => DamageWord::StuckOn,
            },
            zone: words::zone(found.zone).to_owned(),
            side: found.side.map(Into::into),
            at: point(&found.at, unit),
            depth_mm: figure(found.depth.mm),
            depth_uncertainty_mm: figure(found.depth.uncertainty_mm),
            area_mm2: figure(found.area_mm2),
        }
    }
}

impl PlaceThen {
    fn of(found: &pair::PlaceThen, unit: Unit) -> Self {
        let kind = match found.kind {
            PlaceKind::Spot(SpotKind::ShowThrough) => "show-through",
            PlaceKind::Spot(SpotKind::Thin) => "thin",
            PlaceKind::Defect(DefectKind::Void) => "void",
            PlaceKind::Defect(DefectKind::Nodule) => "nodule",
            PlaceKind::Defect(DefectKind::Fold) => "fold",
            PlaceKind::Defect(DefectKind::Hole) => "hole",
            PlaceKind::ShortBorder => "short border",
        };
        Self {
            kind: kind.to_owned(),
            zone: words::zone(found.zone).to_owned(),
            side: found.side.map(Into::into),
            at: point(&found.at, unit),
            found_again: found.is_there,
        }
    }
}
