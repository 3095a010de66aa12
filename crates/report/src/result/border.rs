//! The border in a result.

use super::common::{Point, Side};
use super::findings::NotJudged;
use crate::text::names;
use crate::text::rounding::{figure, point, share};
use check::CheckedCase;
use judge::{LimitKey, Part, words};
use measure::{Measured, Reading, StationFigure};
use mesh::Unit;
use messages::message;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The border line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Border {
    /// Whether it is one closed line on scanned surface.
    pub closed: bool,
    /// Its length, mm.
    pub length_mm: f64,
    /// Depth below the border at which flange thickness was taken, mm.
    pub flange_depth_mm: f64,
    /// Name of the file with a row for each station.
    pub table: String,
    /// Name of the chart file.
    pub chart: String,
    /// Stations along it.
    pub stations: Vec<Station>,
    /// Where it stands lower than its neighbourhood.
    pub dips: Vec<Dip>,
    /// The crest line, from the patient's right to the left.
    pub crest_line: Vec<Point>,
    /// What no scan shows of a border, and why.
    #[serde(default)]
    pub not_judged: Vec<NotJudged>,
}

/// One station of the border.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Station {
    /// Arc-length fraction, 0 to 1, from the labial midline toward the patient's left.
    pub s: f64,
    /// Which stretch of the border.
    pub part: BorderPart,
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// The border point.
    pub point: Point,
    /// Whether the scan ends here before the border turns over.
    pub scan_ends: bool,
    /// Number, from 0, of the station that lies opposite, on the other side of the midline.
    #[serde(default)]
    pub opposite: Option<u64>,
    /// Crest to border along the seating axis, mm.
    pub flange_height_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub flange_height_uncertainty_mm: Option<f64>,
    /// Tissue face to outer face, mm.
    pub flange_thickness_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub flange_thickness_uncertainty_mm: Option<f64>,
    /// Radius of the border's roll, mm.
    pub border_radius_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub border_radius_uncertainty_mm: Option<f64>,
    /// Distance from the border point to the nearest point of the tray, mm.
    pub overlap_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub overlap_uncertainty_mm: Option<f64>,
    /// How much further along the seating axis the border reaches than on the
    /// first pass, mm, negative where it is lower; `null` where none is compared.
    pub change_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub change_uncertainty_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the border point along the seating axis,
    /// mm; `null` where no surface was scanned.
    pub uncertainty_mm: Option<f64>,
    /// Why figures are `null`.
    pub missing: MissingFigures,
}

/// Why a station lacks figures; `null` for each that it has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct MissingFigures {
    /// Why there is no flange height.
    pub flange_height: Option<MissingReason>,
    /// Why there is no flange thickness.
    pub flange_thickness: Option<MissingReason>,
    /// Why there is no border radius.
    pub border_radius: Option<MissingReason>,
    /// Why there is no overlap.
    pub overlap: Option<MissingReason>,
}

/// Why a station lacks a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum MissingReason {
    /// The scan shows the tissue side only.
    TissueSideOnly,
    /// The scan ends before the border turns over.
    ScanEnds,
    /// No surface was scanned.
    NoSurface,
    /// No crest line runs there.
    NoCrest,
    /// The flange is lower than the depth at which thickness is taken.
    FlangeTooLow,
    /// The border does not turn over as a roll.
    NoRoll,
    /// The line that was followed leaves the summit of the flange here.
    OffTheSummit,
    /// No tray scan is registered.
    NoTray,
    /// The impression was cut apart there.
    AtTheCut,
}

/// One figure of a station, or why it is missing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct StationReading {
    /// The figure, mm.
    pub mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub uncertainty_mm: Option<f64>,
    /// Why there is none.
    pub missing: Option<MissingReason>,
}

/// Which stretch of the closed border.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum BorderPart {
    /// Labial and buccal.
    Outer,
    /// Lingual.
    Lingual,
    /// Across the back.
    Posterior,
}

/// A place where the border stands lower than its neighbourhood.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Dip {
    /// What it is.
    pub kind: DipKind,
    /// Number, from 0, of the station where it begins.
    pub from: u64,
    /// Number of the station where it ends; less than `from` where it lies
    /// across the first station.
    pub to: u64,
    /// Number of its lowest station.
    pub bottom: u64,
    /// How far that lies below the neighbourhood, mm.
    pub depth_mm: f64,
    /// Its expanded uncertainty (k = 2), mm.
    pub uncertainty_mm: f64,
    /// Width at half depth, mm.
    pub width_mm: f64,
    /// Of a dip that may be a frenum's: it is steep and wide, and lies beside another
    /// notch that is more like a frenum's.
    pub is_rather_short: bool,
}

/// What a dip of the border is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum DipKind {
    /// Where a frenum may lie, and narrow or pointed, as a frenum leaves it.
    Notch,
    /// Where a frenum may lie and no wider than the broadest frenum, but blunt or
    /// very deep: a frenum or a short stretch.
    BroadNotch,
    /// A stretch that no frenum explains and that ends steeply.
    Short,
    /// Such a stretch that falls and rises gently.
    Wave,
}

impl Border {
    /// The border of an impression, where it was followed.
    pub(super) fn of(checked: &CheckedCase, number: usize) -> Option<Self> {
        let one = &checked.impressions[number];
        let changes = checked.border_changes_of(number).unwrap_or_default();
        let change = |station: usize| changes.get(station).copied().flatten();
        let unit = one.scan.unit.unit();
        let border = one.measured()?.border.as_ref().ok()?;
        let name = names::impression(checked, number);
        Some(Self {
            closed: border.closed,
            length_mm: figure(border.length_mm),
            flange_depth_mm: checked.protocol.value(LimitKey::FlangeDepth),
            table: format!("border-{name}.csv"),
            chart: format!("border-{name}.svg"),
            stations: border
                .stations
                .iter()
                .enumerate()
                .map(|(number, s)| Station::of(s, change(number), unit))
                .collect(),
            dips: border.dips.iter().map(Dip::of).collect(),
            crest_line: border.crest_line.iter().map(|p| point(p, unit)).collect(),
            not_judged: vec![NotJudged::new(
                Part::OverExtension.name(),
                message!("over-extension-not-shown"),
                true,
            )],
        })
    }
}

impl Station {
    fn of(station: &measure::Station, change: Option<Measured>, unit: Unit) -> Self {
        let [height, thickness, radius, overlap] =
            StationFigure::ALL.map(|figure| StationReading::of(station.figure(figure)));
        Self {
            s: share(station.s),
            part: station.part.into(),
            zone: words::zone(station.zone).to_owned(),
            side: station.side.map(Into::into),
            point: point(&station.point, unit),
            scan_ends: station.scan_ends,
            opposite: station.opposite.map(|number| number as u64),
            flange_height_mm: height.mm,
            flange_height_uncertainty_mm: height.uncertainty_mm,
            flange_thickness_mm: thickness.mm,
            flange_thickness_uncertainty_mm: thickness.uncertainty_mm,
            border_radius_mm: radius.mm,
            border_radius_uncertainty_mm: radius.uncertainty_mm,
            overlap_mm: overlap.mm,
            overlap_uncertainty_mm: overlap.uncertainty_mm,
            change_mm: change.map(|change| figure(change.mm)),
            change_uncertainty_mm: change.map(|change| figure(change.uncertainty_mm)),
            uncertainty_mm: station.uncertainty_mm.map(figure),
            missing: MissingFigures {
                flange_height: height.missing,
                flange_thickness: thickness.missing,
                border_radius: radius.missing,
                overlap: overlap.missing,
            },
        }
    }

    /// One of its figures.
    #[must_use]
    pub fn figure(&self, figure: StationFigure) -> StationReading {
        let (mm, uncertainty_mm, missing) = match figure {
            StationFigure::Height => (
                self.flange_height_mm,
                self.flange_height_uncertainty_mm,
                self.missing.flange_height,
            ),
            StationFigure::Thickness => (
                self.flange_thickness_mm,
                self.flange_thickness_uncertainty_mm,
                self.missing.flange_thickness,
            ),
            StationFigure::Radius => (
                self.border_radius_mm,
                self.border_radius_uncertainty_mm,
                self.missing.border_radius,
            ),
            StationFigure::Overlap => (
                self.overlap_mm,
                self.overlap_uncertainty_mm,
                self.missing.overlap,
            ),
        };
        StationReading {
            mm,
            uncertainty_mm,
            missing,
        }
    }
}

impl StationReading {
    fn of(reading: Reading) -> Self {
        Self {
            mm: reading.ok().map(|measured| figure(measured.mm)),
            uncertainty_mm: reading.ok().map(|measured| figure(measured.uncertainty_mm)),
            missing: reading.err().map(MissingReason::from),
        }
    }
}

impl From<measure::BorderPart> for BorderPart {
    fn from(part: measure::BorderPart) -> Self {
        match part {
            measure::BorderPart::Outer => Self::Outer,
            measure::BorderPart::Lingual => Self::Lingual,
            measure::BorderPart::Posterior => Self::Posterior,
        }
    }
}

impl From<measure::Missing> for MissingReason {
    fn from(missing: measure::Missing) -> Self {
        match missing {
            measure::Missing::TissueSideOnly => Self::TissueSideOnly,
            measure::Missing::ScanEnds => Self::ScanEnds,
            measure::Missing::NoSurface => Self::NoSurface,
            measure::Missing::NoCrest => Self::NoCrest,
            measure::Missing::FlangeTooLow => Self::FlangeTooLow,
            measure::Missing::NoRoll => Self::NoRoll,
            measure::Missing::OffTheSummit => Self::OffTheSummit,
            measure::Missing::NoTray => Self::NoTray,
            measure::Missing::AtTheCut => Self::AtTheCut,
        }
    }
}

impl Dip {
    fn of(dip: &measure::Dip) -> Self {
        Self {
            kind: match dip.kind {
                measure::DipKind::Notch => DipKind::Notch,
                measure::DipKind::BroadNotch => DipKind::BroadNotch,
                measure::DipKind::Short => DipKind::Short,
                measure::DipKind::Wave => DipKind::Wave,
            },
            from: dip.from as u64,
            to: dip.to as u64,
            bottom: dip.bottom as u64,
            depth_mm: figure(dip.depth.mm),
            uncertainty_mm: figure(dip.depth.uncertainty_mm),
            width_mm: figure(dip.width_mm),
            is_rather_short: dip.is_rather_short,
        }
    }
}
