//! The border in the words and numbers of the contract.

use crate::names;
use crate::result::{Border, BorderPart, Dip, DipKind, MissingFigures, MissingReason, Station};
use crate::rounding::{figure, point, share};
use check::CheckedCase;
use judge::{LimitKey, words};
use mesh::Unit;

/// The border of an impression, where it was followed.
pub(super) fn border(checked: &CheckedCase, number: usize) -> Option<Border> {
    let one = &checked.impressions[number];
    let unit = one.scan.unit.unit();
    let border = one.measurement.border.as_ref().ok()?;
    let name = names::impression(checked, number);
    Some(Border {
        closed: border.closed,
        length_mm: figure(border.length_mm),
        flange_depth_mm: checked.protocol.value(LimitKey::FlangeDepth),
        table: format!("border-{name}.csv"),
        chart: format!("border-{name}.svg"),
        stations: border.stations.iter().map(|s| station(s, unit)).collect(),
        dips: border.dips.iter().map(dip).collect(),
        crest_line: border.crest_line.iter().map(|p| point(p, unit)).collect(),
    })
}

fn station(station: &measure::Station, unit: Unit) -> Station {
    let value = |reading: measure::Reading| reading.ok().map(|m| figure(m.mm));
    let doubt = |reading: measure::Reading| reading.ok().map(|m| figure(m.uncertainty_mm));
    let why = |reading: measure::Reading| reading.err().map(reason);
    Station {
        s: share(station.s),
        part: match station.part {
            measure::BorderPart::Outer => BorderPart::Outer,
            measure::BorderPart::Lingual => BorderPart::Lingual,
            measure::BorderPart::Posterior => BorderPart::Posterior,
        },
        zone: words::zone(station.zone).to_owned(),
        side: station.side.map(Into::into),
        point: point(&station.point, unit),
        scan_ends: station.scan_ends,
        flange_height_mm: value(station.flange_height),
        flange_height_uncertainty_mm: doubt(station.flange_height),
        flange_thickness_mm: value(station.flange_thickness),
        flange_thickness_uncertainty_mm: doubt(station.flange_thickness),
        border_radius_mm: value(station.border_radius),
        border_radius_uncertainty_mm: doubt(station.border_radius),
        overlap_mm: value(station.overlap),
        overlap_uncertainty_mm: doubt(station.overlap),
        change_mm: station.change.map(|change| figure(change.mm)),
        change_uncertainty_mm: station.change.map(|change| figure(change.uncertainty_mm)),
        uncertainty_mm: station.uncertainty_mm.map(figure),
        missing: MissingFigures {
            flange_height: why(station.flange_height),
            flange_thickness: why(station.flange_thickness),
            border_radius: why(station.border_radius),
            overlap: why(station.overlap),
        },
    }
}

fn reason(missing: measure::Missing) -> MissingReason {
    match missing {
        measure::Missing::TissueSideOnly => MissingReason::TissueSideOnly,
        measure::Missing::ScanEnds => MissingReason::ScanEnds,
        measure::Missing::NoSurface => MissingReason::NoSurface,
        measure::Missing::NoCrest => MissingReason::NoCrest,
        measure::Missing::FlangeTooLow => MissingReason::FlangeTooLow,
        measure::Missing::NoRoll => MissingReason::NoRoll,
        measure::Missing::NoTray => MissingReason::NoTray,
    }
}

fn dip(dip: &measure::Dip) -> Dip {
    Dip {
        kind: match dip.kind {
            measure::DipKind::Notch => DipKind::Notch,
            measure::DipKind::BroadNotch => DipKind::BroadNotch,
            measure::DipKind::Short => DipKind::Short,
        },
        from: dip.from as u64,
        to: dip.to as u64,
        bottom: dip.bottom as u64,
        depth_mm: figure(dip.depth.mm),
        uncertainty_mm: figure(dip.depth.uncertainty_mm),
        width_mm: figure(dip.width_mm),
    }
}
