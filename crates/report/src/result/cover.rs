//! Cover in a result.

use super::common::{Point, Side};
use super::numbering::spot_id;
use super::on_tray::OnTray;
use super::tray_bend::LimbBend;
use crate::text::names;
use crate::text::rounding::{confidence, figure, point};
use check::CheckedCase;
use judge::{LimitKey, words};
use measure::{Measurement, TrayThickness, VertexPlace, Zone};
use mesh::Unit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// How cover was obtained.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum CoverMethod {
    /// Distance to the registered scan of the empty tray.
    TrayScan,
    /// Total thickness less a stated tray thickness.
    TwoSided,
    /// The colours of tray and material told apart.
    Colour,
}

/// Cover over the tissue surface.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Cover {
    /// How it was obtained.
    pub method: CoverMethod,
    /// Root mean square distance of the outer surface from the registered tray,
    /// mm; this and what else is of the tray's scan is `null` without one.
    pub registration_rms_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the tray's place at the tissue surface, mm.
    pub registration_uncertainty_mm: Option<f64>,
    /// Area of the impression's outer surface that lies on the tray, mm².
    pub tray_seen_mm2: Option<f64>,
    /// Share of the outer surface that lies on the tray, 0 to 1.
    pub fitting_share: Option<f64>,
    /// Share of the outer surface that lies inside the tray's wall, 0 to 1: next
    /// to nothing for the right tray, rigid and unaltered.
    pub behind_share: Option<f64>,
    /// Stated thickness of the tray that was taken off, mm; `null` where none was.
    pub tray_thickness_mm: Option<f64>,
    /// Its expanded uncertainty (k = 2), mm.
    pub tray_thickness_uncertainty_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of a cover value, mm; this and the values are
    /// `null` where colours alone told of the tray.
    pub uncertainty_mm: Option<f64>,
    /// Scanned tissue surface, flange slopes included, over which cover (or
    /// whether tray shows) is known, mm².
    pub area_judged_mm2: f64,
    /// Least cover, mm.
    pub min_mm: Option<f64>,
    /// 5th percentile by area, mm.
    pub p05_mm: Option<f64>,
    /// Median by area, mm.
    pub median_mm: Option<f64>,
    /// How far each limb of the tray bent between its scan and the impression;
    /// empty where no scan of it was placed.
    pub tray_bend: Vec<LimbBend>,
    /// Parts of the arch over which cover is not known although the tray was placed.
    pub gaps: Vec<CoverGap>,
    /// Connected patches of little cover.
    pub spots: Vec<Spot>,
    /// The coloured mesh that was written beside the result; `null` where none was.
    pub map: Option<CoverMap>,
}

/// A part of the arch over which cover is not known.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CoverGap {
    /// Why.
    pub why: String,
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Tissue surface without cover, mm².
    pub area_mm2: f64,
}

/// What a patch of little cover is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SpotKind {
    /// At or below the show-through level.
    ShowThrough,
    /// Above show-through and below the thin level.
    Thin,
}

/// A connected patch of tissue surface with little cover.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Spot {
    /// Name within the case: C1, C2, …
    pub id: String,
    /// What it is.
    pub kind: SpotKind,
    /// Its centre, on the surface.
    pub centre: Point,
    /// Area, mm².
    pub area_mm2: f64,
    /// Expanded uncertainty (k = 2) of the area, mm².
    pub area_uncertainty_mm2: f64,
    /// Least cover in it, mm; `null` of a patch told by its colour where cover is
    /// not known.
    pub min_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the least cover, mm.
    pub min_uncertainty_mm: Option<f64>,
    /// Of a patch told by its colour: how like the tray's that is, 0 to 1.
    pub confidence: Option<f64>,
    /// Part of the arch.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
    /// Of show-through along an edge of the tray: its extent; `null` of any other patch.
    pub edge: Option<EdgeExtent>,
    /// Number, from 0, of the declared tissue stop it belongs to: then it is as it should be.
    pub stop: Option<u64>,
    /// Name of the show-through that this thin patch borders: both are one place.
    pub around: Option<String>,
    /// Where it lies on the tray and how deep to relieve it; `null` where no tray scan was placed.
    pub on_tray: Option<OnTray>,
}

/// How long and wide a strip of bare tray edge is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct EdgeExtent {
    /// Length along the surface, of a closed ring half way round, mm.
    pub length_mm: f64,
    /// Expanded uncertainty (k = 2) of the length, mm.
    pub length_uncertainty_mm: f64,
    /// Mean width, mm.
    pub width_mm: f64,
    /// Expanded uncertainty (k = 2) of the width, mm.
    pub width_uncertainty_mm: f64,
}

impl From<measure::EdgeExtent> for EdgeExtent {
    fn from(found: measure::EdgeExtent) -> Self {
        Self {
            length_mm: figure(found.length_mm.value),
            length_uncertainty_mm: figure(found.length_mm.uncertainty),
            width_mm: figure(found.width_mm.value),
            width_uncertainty_mm: figure(found.width_mm.uncertainty),
        }
    }
}

/// The cover map: the impression mesh with a colour and `cover_mm` at each vertex.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CoverMap {
    /// Name of the file, beside the result.
    pub file: String,
    /// Name of the colour scale.
    pub colours: String,
    /// Cover at the dark end, mm; less is drawn the same.
    pub from_mm: f64,
    /// Cover at the bright end, mm; more is drawn the same.
    pub to_mm: f64,
}

/// The impression mesh with figures at each vertex, NaN where they are not
/// known: `cover_mm` where it was measured, `tray_share` where colours were told
/// apart (0 the material's, 1 the tray's), `part`, and on flanges `station`,
/// the number of the station of the border whose figures hold there.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct SurfaceFile {
    /// Name of the file, beside the result.
    pub file: String,
    /// The parts of the arch, by which `part` counts, from 0.
    pub parts: Vec<ArchPart>,
}

/// A part of the arch.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct ArchPart {
    /// Its zone.
    pub zone: String,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
}

impl Cover {
    /// Cover as it was measured; else what colours tell, without any cover value.
    pub(super) fn of(checked: &CheckedCase, number: usize, spots_before: usize) -> Option<Self> {
        let one = &checked.impressions[number];
        let unit = one.scan.unit.unit();
        let found = one.measured()?;
        let measured = found.cover.as_ref().ok();
        let colour = found.colour.as_ref().and_then(|c| c.as_ref().ok());
        let placed = measured.and_then(|cover| cover.registration.as_ref());
        let (method, tray) = method(measured.map(|cover| cover.method));
        let area_judged_mm2 = match (measured, colour) {
            (Some(cover), _) => cover.area_judged_mm2,
            (None, Some(colour)) => colour.area_judged_mm2,
            (None, None) => return None,
        };
        let spots = found.spots.iter().zip(spots_before..);
        Some(Self {
            method,
            registration_rms_mm: placed.map(|p| figure(p.rms_mm)),
            registration_uncertainty_mm: placed.map(|p| figure(p.uncertainty_mm)),
            tray_seen_mm2: placed.map(|p| figure(p.tray_seen_mm2)),
            fitting_share: placed.map(|p| figure(p.fitting_share)),
            behind_share: placed.map(|p| figure(p.behind_share)),
            tray_thickness_mm: tray.map(|tray| figure(tray.mm)),
            tray_thickness_uncertainty_mm: tray.map(|tray| figure(tray.uncertainty_mm)),
            uncertainty_mm: measured.map(|cover| figure(cover.uncertainty_mm)),
            area_judged_mm2: figure(area_judged_mm2),
            min_mm: measured.map(|cover| figure(cover.min_mm)),
            p05_mm: measured.map(|cover| figure(cover.p05_mm)),
            median_mm: measured.map(|cover| figure(cover.median_mm)),
            tray_bend: placed.map_or_else(Vec::new, |p| {
                p.limbs
                    .iter()
                    .map(|limb| LimbBend::of(limb, unit))
                    .collect()
            }),
            gaps: measured.map_or_else(Vec::new, |cover| {
                cover.gaps.iter().map(CoverGap::of).collect()
            }),
            spots: spots
                .map(|(spot, id)| {
                    let on_tray = OnTray::of(checked, number, id - spots_before);
                    Spot::of(spot, id, spots_before, unit, on_tray)
                })
                .collect(),
            map: measured.map(|_| CoverMap::of_cover(checked, number)),
        })
    }
}

impl CoverGap {
    fn of(found: &measure::CoverGap) -> Self {
        Self {
            why: found.why.to_string(),
            zone: words::zone(found.zone).to_owned(),
            side: found.side.map(Into::into),
            area_mm2: figure(found.area_mm2),
        }
    }
}

/// How cover was obtained, and the tray's thickness that was taken off.
fn method(measured: Option<measure::CoverMethod>) -> (CoverMethod, Option<TrayThickness>) {
    match measured {
        Some(measure::CoverMethod::TrayScan) => (CoverMethod::TrayScan, None),
        Some(measure::CoverMethod::TwoSided { tray }) => (CoverMethod::TwoSided, Some(tray)),
        None => (CoverMethod::Colour, None),
    }
}

impl From<measure::SpotKind> for SpotKind {
    fn from(kind: measure::SpotKind) -> Self {
        match kind {
            measure::SpotKind::ShowThrough => Self::ShowThrough,
            measure::SpotKind::Thin => Self::Thin,
        }
    }
}

impl Spot {
    /// A spot with this number in the case, from 0; those of the impressions
    /// before come first.
    fn of(
        spot: &measure::Spot,
        number: usize,
        spots_before: usize,
        unit: Unit,
        on_tray: Option<OnTray>,
    ) -> Self {
        Self {
            id: spot_id(number),
            kind: spot.kind.into(),
            centre: point(&spot.centre, unit),
            area_mm2: figure(spot.area_mm2),
            area_uncertainty_mm2: figure(spot.area_uncertainty_mm2),
            min_mm: spot.min_mm.map(figure),
            min_uncertainty_mm: spot.min_uncertainty_mm.map(figure),
            confidence: spot.confidence.map(confidence),
            zone: words::zone(spot.zone).to_owned(),
            side: spot.side.map(Into::into),
            edge: spot.edge.map(Into::into),
            stop: spot.stop.map(|stop| stop as u64),
            around: spot.around.map(|around| spot_id(spots_before + around)),
            on_tray,
        }
    }
}

impl CoverMap {
    /// Values at the dark and the bright end, mm.
    pub(crate) fn ends_mm(&self) -> [f64; 2] {
        [self.from_mm, self.to_mm]
    }

    /// How the cover map of an impression is called and coloured.
    pub(crate) fn of_cover(checked: &CheckedCase, impression: usize) -> Self {
        Self {
            file: format!("cover-{}.ply", names::impression(checked, impression)),
            colours: "viridis".to_owned(),
            from_mm: 0.0,
            to_mm: 3.0 * checked.protocol.value(LimitKey::ThinCover),
        }
    }

    /// How the wash map of a wash is called and coloured.
    pub(crate) fn of_wash(checked: &CheckedCase, impression: usize) -> Self {
        Self {
            file: names::wash_map(checked, impression),
            colours: "viridis".to_owned(),
            from_mm: 0.0,
            to_mm: checked.protocol.value(LimitKey::WashMost),
        }
    }
}

impl SurfaceFile {
    /// The surface file of an impression; `None` where its scan shows something else.
    pub(crate) fn of(checked: &CheckedCase, impression: usize) -> Option<Self> {
        let measurement = checked.impressions[impression].measured()?;
        let parts = parts(measurement).into_iter();
        Some(Self {
            file: match &measurement.cover {
                Ok(_) => CoverMap::of_cover(checked, impression).file,
                Err(_) => format!("surface-{}.ply", names::impression(checked, impression)),
            },
            parts: parts
                .map(|(zone, side)| ArchPart {
                    zone: words::zone(zone).to_owned(),
                    side: side.map(Into::into),
                })
                .collect(),
        })
    }
}

/// Every part of the arch that has a vertex, in the order in which they are
/// numbered.
pub(crate) fn parts(measurement: &Measurement) -> Vec<(Zone, Option<measure::Side>)> {
    let part = |place: &VertexPlace| (place.zone, place.side);
    let parts: BTreeSet<_> = measurement.places.iter().flatten().map(part).collect();
    parts.into_iter().collect()
}
