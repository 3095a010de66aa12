//! What a result holds of an impression, as measuring gave it: as much of it as the checks of
//! [`judge::again::JUDGED_AGAIN`] look at. What they do not look at stays empty.

use crate::result::{self, CaseResult, ImpressionResult, MissingReason};
use judge::{Case, ImpressionInput, Stage, words};
use measure::pair::{NoBorderChange, NoPair, NoWash, PassPair};
use measure::{
    Border, BorderPart, Cover, CoverMethod, Defect, DefectKind, Dip, DipKind, Frame, Measured,
    Measurement, Missing, NoBorder, NoTissue, Scanned, Section, Station, StationFigure,
    TissueSurface, TrayNotPlaced, Zone, ZoneScan,
};
use mesh::Integrity;
use nalgebra::{Point3, Vector3};
use std::path::PathBuf;

/// What measuring gave of one impression.
pub(super) struct Rebuilt {
    pub(super) scanned: Scanned,
    pub(super) pair: Option<Result<PassPair, NoPair>>,
}

/// The case as far as judging again asks after it.
pub(super) fn case(result: &CaseResult) -> Case {
    let bare = |declared, stage| ImpressionInput::bare(declared, stage, PathBuf::new());
    let mut case = Case::of_one(result.case.clone(), bare(None, Stage::Single));
    case.impressions = (result.impressions.iter())
        .map(|one| {
            let stage = match one.stage {
                result::Stage::FirstPass => Stage::FirstPass,
                result::Stage::Wash => Stage::Wash,
                result::Stage::Single => Stage::Single,
            };
            bare(one.arch.declared.map(Into::into), stage)
        })
        .collect();
    case
}

/// `None` where the result holds no impression, or a word that this version does not know.
pub(super) fn rebuilt(result: &CaseResult, number: usize, case: &Case) -> Option<Rebuilt> {
    let one = result.impressions.get(number)?;
    let arch = one.arch.detected?.into();
    one.frame.as_ref()?;
    let border = match &one.border {
        Some(border) => Ok(of_border(border)?),
        None => Err(NoBorder::NoLine),
    };
    let measurement = Measurement {
        scan: measure::ScanFigures {
            integrity: Integrity {
                vertices: 0,
                triangles: 0,
                components: 0,
                boundary_loops: 0,
                non_manifold_edges: 0,
                degenerate_triangles: 0,
                median_edge: one.scan.median_edge_mm,
                area: 0.0,
            },
            turned: Default::default(),
            scanner_uncertainty_mm: result.scanner.length_uncertainty_mm,
            cut_width_mm: one.scan.cut_width_mm,
        },
        frame: Frame {
            origin: Point3::origin(),
            right: Vector3::x(),
            anterior: Vector3::y(),
            seating: Vector3::z(),
            arch,
            arch_confidence: 1.0,
            confidence: 1.0,
        },
        has_outer_surface: one.scan.has_outer_surface.unwrap_or(false),
        noise_mm: None,
        cover: cover(one).ok_or_else(|| TrayNotPlaced::NoTray.into()),
        tray_fit: None,
        outer_excess: None,
        spots: Vec::new(),
        on_tray: Vec::new(),
        stops: Vec::new(),
        border,
        tissue: tissue(one)?,
        colour: None,
        contrasts: Vec::new(),
        landmarks: Vec::new(),
        places: Vec::new(),
    };
    let pair = case.first_pass_of(number).map(|_| Ok(pair(result, number)));
    Some(Rebuilt {
        scanned: Scanned::Impression(Box::new(measurement)),
        pair,
    })
}

fn zone(name: &str) -> Option<Zone> {
    words::ZONES
        .into_iter()
        .find(|&zone| words::zone(zone) == name)
}

/// Cover by the scan of the tray: no other is judged again.
fn cover(one: &ImpressionResult) -> Option<Cover> {
    let cover = one.cover.as_ref()?;
    (cover.method == result::CoverMethod::TrayScan).then_some(())?;
    Some(Cover {
        method: CoverMethod::TrayScan,
        registration: None,
        at_vertex_mm: Vec::new(),
        uncertainty_at_vertex_mm: Vec::new(),
        uncertainty_mm: cover.uncertainty_mm?,
        gaps: Vec::new(),
        bare_edges: Vec::new(),
        area_judged_mm2: cover.area_judged_mm2,
        min_mm: cover.min_mm?,
        p05_mm: cover.p05_mm?,
        median_mm: cover.median_mm?,
        p95_mm: f64::NAN,
    })
}

/// `None` for a zone that is not known; where no zone was looked at, the scan was too coarse.
fn tissue(one: &ImpressionResult) -> Option<Result<TissueSurface, NoTissue>> {
    if one.zones.is_empty() {
        let median_edge_mm = one.scan.median_edge_mm;
        return Some(Err(NoTissue::TooCoarse { median_edge_mm }));
    }
    let defects: Option<Vec<Defect>> = one.defects.iter().map(defect).collect();
    let zones: Option<Vec<ZoneScan>> = one.zones.iter().map(zone_scan).collect();
    Some(Ok(TissueSurface {
        defects: defects?,
        zones: zones?,
        loose_pieces: 0,
    }))
}

fn defect(found: &result::Defect) -> Option<Defect> {
    Some(Defect {
        kind: match found.kind {
            result::DefectKind::Void => DefectKind::Void,
            result::DefectKind::Nodule => DefectKind::Nodule,
            result::DefectKind::Fold => DefectKind::Fold,
            result::DefectKind::Hole => DefectKind::Hole,
        },
        centre: Point3::from(found.centre),
        area_mm2: found.area_mm2,
        depth_mm: found.depth_mm,
        depth_uncertainty_mm: found.depth_uncertainty_mm,
        across_mm: found.across_mm,
        across_uncertainty_mm: found.across_uncertainty_mm,
        length_mm: found.length_mm,
        outline: Vec::new(),
        from_edge_mm: found.from_edge_mm.unwrap_or(f64::INFINITY),
        zone: zone(&found.zone)?,
        side: found.side.map(side),
    })
}

fn zone_scan(found: &result::ZoneScan) -> Option<ZoneScan> {
    Some(ZoneScan {
        zone: zone(&found.zone)?,
        side: found.side.map(side),
        area_mm2: found.area_mm2,
        missing_mm2: 0.0,
        doubled_mm2: found.doubled_mm2,
        median_edge_mm: found.median_edge_mm,
        noise_mm: found.noise_mm,
        least_across_mm: found.least_void_across_mm,
        least_depth_mm: found.least_void_depth_mm,
    })
}

fn side(side: result::Side) -> measure::Side {
    match side {
        result::Side::Right => measure::Side::Right,
        result::Side::Left => measure::Side::Left,
    }
}

fn of_border(border: &result::Border) -> Option<Border> {
    let stations: Option<Vec<Station>> = border.stations.iter().map(station).collect();
    let stations = stations?;
    let dips: Option<Vec<Dip>> = border.dips.iter().map(dip).collect();
    let dips = dips?;
    // A file that was changed by hand may name stations that are not there.
    let mut named = dips
        .iter()
        .flat_map(|dip| [dip.from, dip.to, dip.bottom])
        .chain(stations.iter().filter_map(|station| station.opposite));
    if named.any(|number| number >= stations.len()) {
        return None;
    }
    Some(Border {
        closed: border.closed,
        length_mm: border.length_mm,
        stations,
        dips,
        crest_line: Vec::new(),
    })
}

fn station(found: &result::Station) -> Option<Station> {
    let reading = |figure| reading(found.figure(figure));
    Some(Station {
        s: found.s,
        part: match found.part {
            result::BorderPart::Outer => BorderPart::Outer,
            result::BorderPart::Lingual => BorderPart::Lingual,
            result::BorderPart::Posterior => BorderPart::Posterior,
        },
        zone: zone(&found.zone)?,
        side: found.side.map(side),
        point: Point3::from(found.point),
        uncertainty_mm: found.uncertainty_mm,
        scan_ends: found.scan_ends,
        flange_height: reading(StationFigure::Height)?,
        flange_thickness: reading(StationFigure::Thickness)?,
        border_radius: reading(StationFigure::Radius)?,
        overlap: reading(StationFigure::Overlap)?,
        opposite: index(found.opposite),
        section: Section::default(),
    })
}

fn index(number: Option<u64>) -> Option<usize> {
    usize::try_from(number?).ok()
}

/// `None` where the result holds neither a figure nor why there is none.
fn reading(found: result::StationReading) -> Option<Result<Measured, Missing>> {
    if let (Some(mm), Some(uncertainty_mm)) = (found.mm, found.uncertainty_mm) {
        return Some(Ok(Measured { mm, uncertainty_mm }));
    }
    Some(Err(match found.missing? {
        MissingReason::TissueSideOnly => Missing::TissueSideOnly,
        MissingReason::ScanEnds => Missing::ScanEnds,
        MissingReason::NoSurface => Missing::NoSurface,
        MissingReason::NoCrest => Missing::NoCrest,
        MissingReason::FlangeTooLow => Missing::FlangeTooLow,
        MissingReason::NoRoll => Missing::NoRoll,
        MissingReason::OffTheSummit => Missing::OffTheSummit,
        MissingReason::NoTray => Missing::NoTray,
        MissingReason::AtTheCut => Missing::AtTheCut,
    }))
}

fn dip(found: &result::Dip) -> Option<Dip> {
    Some(Dip {
        kind: match found.kind {
            result::DipKind::Notch => DipKind::Notch,
            result::DipKind::BroadNotch => DipKind::BroadNotch,
            result::DipKind::Short => DipKind::Short,
            result::DipKind::Wave => DipKind::Wave,
        },
        from: index(Some(found.from))?,
        to: index(Some(found.to))?,
        bottom: index(Some(found.bottom))?,
        depth: Measured {
            mm: found.depth_mm,
            uncertainty_mm: found.uncertainty_mm,
        },
        width_mm: found.width_mm,
        is_rather_short: found.is_rather_short,
    })
}

/// What a wash shows together with its first pass.
fn pair(result: &CaseResult, number: usize) -> PassPair {
    let stations = result.impressions[number].border.iter();
    let changes: Vec<Option<Measured>> = stations
        .flat_map(|border| &border.stations)
        .map(|station| {
            Some(Measured {
                mm: station.change_mm?,
                uncertainty_mm: station.change_uncertainty_mm?,
            })
        })
        .collect();
    let is_compared = changes.iter().any(Option::is_some);
    let wash = result.wash.iter().find(|w| w.impression == number as u64);
    PassPair {
        border_changes: if is_compared {
            Ok(changes)
        } else {
            Err(NoBorderChange::FirstPass(NoBorder::NoLine))
        },
        wash: wash.map(of_wash).ok_or(NoWash::NothingOver),
    }
}

fn of_wash(wash: &result::Wash) -> measure::pair::Wash {
    measure::pair::Wash {
        at_vertex_mm: Vec::new(),
        uncertainty_mm: wash.uncertainty_mm,
        area_judged_mm2: wash.area_judged_mm2,
        p05_mm: wash.p05_mm,
        median_mm: wash.median_mm,
        p95_mm: wash.p95_mm,
        added_share: wash.added_share,
        lowered_share: wash.lowered_share,
        places: Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::checked_with_border;

    #[test]
    fn a_border_that_names_stations_that_are_not_there_is_no_evidence() {
        let result = CaseResult::of(&checked_with_border());
        let border = result.impressions[0].border.as_ref().unwrap();
        assert!(of_border(border).is_some());
        let beyond = border.stations.len() as u64;
        let mut opposite = border.clone();
        opposite.stations[0].opposite = Some(beyond);
        assert!(of_border(&opposite).is_none());
        let mut dipped = border.clone();
        dipped.dips.push(result::Dip {
            kind: result::DipKind::Short,
            from: 0,
            to: 1,
            bottom: beyond,
            depth_mm: 2.0,
            uncertainty_mm: 0.1,
            width_mm: 9.0,
            is_rather_short: false,
        });
        assert!(of_border(&dipped).is_none());
    }
}
