//! Puts a checked case into the words and numbers of the contract.

mod border;
mod consignment;
mod jaw_relation;
mod landmarks;
mod tray;
mod wash;

use super::{
    ArchReading, CaseResult, Contract, Cover, CoverMethod, Defect, DefectKind, FileKind, Finding,
    Frame, ImpressionResult, Level, LimitResult, NotJudged, OutputFile, ProtocolResult, ScanResult,
    Severity, Spot, SpotKind, Stage, TrayScan, Verdict, ZoneScan,
};
use crate::cover_map;
use crate::names;
use crate::rounding::{confidence, direction, figure, point};
use check::{CheckedCase, CheckedImpression, LoadedScan};
use judge::words;
use measure::ImpressionMeasurement;
use mesh::Unit;

/// The result of a checked case.
#[must_use]
pub fn assemble(checked: &CheckedCase) -> CaseResult {
    let before: Vec<Before> = checked
        .impressions
        .iter()
        .scan(Before::default(), |sum, impression| {
            let before = *sum;
            sum.spots += impression.measurement.spots.len();
            sum.defects += defects_of(&impression.measurement).len();
            sum.landmarks += impression.measurement.landmarks.len();
            Some(before)
        })
        .collect();
    let mut result = CaseResult {
        schema: Contract::V1,
        program: concat!("archproof ", env!("CARGO_PKG_VERSION")).to_owned(),
        case: checked.case.id.clone(),
        verdict: verdict(checked.judged.verdict),
        protocol: protocol(&checked.protocol),
        impressions: (0..checked.impressions.len())
            .map(|number| impression(checked, number, before[number]))
            .collect(),
        wash: wash::washes(checked, &before),
        jaw_relation: jaw_relation::jaw_relation(checked),
        consignment: consignment::consignment(&checked.case),
        findings: checked
            .judged
            .findings
            .iter()
            .enumerate()
            .map(|(number, found)| finding(checked, number, found, &before))
            .collect(),
        not_judged: not_judged(&checked.judged.not_judged),
        files: Vec::new(),
    };
    result.files = files(&result);
    result
}

/// The files that the parts of a result name.
fn files(result: &CaseResult) -> Vec<OutputFile> {
    let of_impressions = result
        .impressions
        .iter()
        .zip(0u64..)
        .flat_map(|(one, number)| {
            let surface_kind = match one.cover.as_ref().and_then(|cover| cover.map.as_ref()) {
                Some(_) => FileKind::CoverMap,
                None => FileKind::Surface,
            };
            let surface = one.surface.as_ref();
            let border = one.border.as_ref();
            [
                surface.map(|surface| (&surface.file, surface_kind)),
                border.map(|border| (&border.table, FileKind::BorderTable)),
                border.map(|border| (&border.chart, FileKind::BorderChart)),
            ]
            .into_iter()
            .flatten()
            .map(move |(file, kind)| OutputFile {
                file: file.clone(),
                kind,
                impression: Some(number),
                finding: None,
            })
        });
    let of_washes = result.wash.iter().filter_map(|wash| {
        Some(OutputFile {
            file: wash.map.as_ref()?.file.clone(),
            kind: FileKind::WashMap,
            impression: Some(wash.impression),
            finding: None,
        })
    });
    let of_findings = result.findings.iter().filter_map(|finding| {
        Some(OutputFile {
            file: finding.drawing.clone()?,
            kind: FileKind::SectionDrawing,
            impression: finding.impression,
            finding: Some(finding.id.clone()),
        })
    });
    let report = OutputFile {
        file: names::REPORT_FILE.to_owned(),
        kind: FileKind::Report,
        impression: None,
        finding: None,
    };
    of_impressions
        .chain(of_washes)
        .chain(of_findings)
        .chain([report])
        .collect()
}

/// How many spots, defects and landmarks the impressions before have: names run on through
/// a case.
#[derive(Debug, Clone, Copy, Default)]
struct Before {
    spots: usize,
    defects: usize,
    landmarks: usize,
}

fn defects_of(measurement: &ImpressionMeasurement) -> &[measure::Defect] {
    let tissue = measurement.tissue.as_ref();
    tissue.map_or(&[], |tissue| tissue.defects.as_slice())
}

fn impression(checked: &CheckedCase, number: usize, before: Before) -> ImpressionResult {
    let input = &checked.case.impressions[number];
    let one = &checked.impressions[number];
    let judged = &checked.judged.impressions[number];
    let found = one.measurement.frame.as_ref().ok();
    ImpressionResult {
        arch: ArchReading {
            declared: input.declared.map(Into::into),
            detected: found.map(|frame| frame.arch.into()),
            confidence: found.map(|frame| confidence(frame.arch_confidence)),
        },
        stage: stage(input.stage),
        verdict: verdict(judged.verdict),
        scan: scan(one, names::scan(checked, number)),
        tray: one
            .tray
            .as_deref()
            .map(|scan| tray(scan, names::tray(checked, number))),
        frame: found.map(|frame| Frame {
            origin: point(&frame.origin, one.scan.unit.unit()),
            right: direction(&frame.right),
            anterior: direction(&frame.anterior),
            seating: direction(&frame.seating),
            confidence: confidence(frame.confidence),
        }),
        cover: cover(checked, number, before.spots),
        tray_colour: tray::colour(&one.measurement),
        tray_fit: tray::fit(&one.measurement),
        border: border::border(checked, number),
        surface: cover_map::surface_file(checked, number),
        landmarks: (one.measurement.landmarks.iter())
            .zip(&judged.landmarks)
            .zip(before.landmarks..)
            .map(|((found, judged), number)| {
                landmarks::landmark(found, judged, number, one.scan.unit.unit())
            })
            .collect(),
        defects: defects_of(&one.measurement)
            .iter()
            .zip(before.defects..)
            .map(|(found, number)| defect(found, number, one.scan.unit.unit()))
            .collect(),
        zones: zones(&one.measurement),
        not_judged: not_judged(&judged.not_judged),
    }
}

fn scan(one: &CheckedImpression, name: String) -> ScanResult {
    let measurement = &one.measurement;
    let integrity = &measurement.integrity;
    ScanResult {
        file: format!("{name}.{}", one.scan.format.extension()),
        sha256: one.scan.sha256.clone(),
        format: one.scan.format.into(),
        unit: one.scan.unit.unit().symbol().to_owned(),
        unit_assumed: one.scan.unit.is_assumed(),
        vertices: integrity.vertices as u64,
        triangles: integrity.triangles as u64,
        components: integrity.components as u64,
        boundary_loops: integrity.boundary_loops as u64,
        non_manifold_edges: integrity.non_manifold_edges as u64,
        degenerate_triangles: integrity.degenerate_triangles as u64,
        median_edge_mm: figure(integrity.median_edge),
        area_mm2: figure(integrity.area),
        noise_mm: measurement.noise_mm.map(figure),
        has_colour: one.scan.mesh.colours().is_some(),
        has_outer_surface: measurement.has_outer_surface,
        carries_text: one.scan.carries_text,
        warnings: (one.scan.warnings.iter().cloned())
            .chain(measurement.turned.in_words())
            .collect(),
    }
}

fn tray(scan: &LoadedScan, name: String) -> TrayScan {
    TrayScan {
        file: format!("{name}.{}", scan.format.extension()),
        sha256: scan.sha256.clone(),
        format: scan.format.into(),
        unit: scan.unit.unit().symbol().to_owned(),
        unit_assumed: scan.unit.is_assumed(),
        vertices: scan.mesh.vertices().len() as u64,
        triangles: scan.mesh.triangles().len() as u64,
        carries_text: scan.carries_text,
        warnings: scan.warnings.clone(),
    }
}

/// Cover as it was measured; else what colours tell, without any cover value.
fn cover(checked: &CheckedCase, number: usize, spots_before: usize) -> Option<Cover> {
    let one = &checked.impressions[number];
    let unit = one.scan.unit.unit();
    let measured = one.measurement.cover.as_ref().ok();
    let colour = one
        .measurement
        .colour
        .as_ref()
        .and_then(|c| c.as_ref().ok());
    let placed = measured.and_then(|cover| cover.registration.as_ref());
    let (method, tray) = match measured.map(|cover| cover.method) {
        Some(measure::CoverMethod::TrayScan) => (CoverMethod::TrayScan, None),
        Some(measure::CoverMethod::TwoSided { tray }) => (CoverMethod::TwoSided, Some(tray)),
        None => (CoverMethod::Colour, None),
    };
    let area_judged_mm2 = match (measured, colour) {
        (Some(cover), _) => cover.area_judged_mm2,
        (None, Some(colour)) => colour.area_judged_mm2,
        (None, None) => return None,
    };
    let spots = one.measurement.spots.iter().zip(spots_before..);
    Some(Cover {
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
        spots: spots
            .map(|(spot, number)| Spot {
                id: spot_id(number),
                kind: spot_kind(spot.kind),
                centre: point(&spot.centre, unit),
                area_mm2: figure(spot.area_mm2),
                area_uncertainty_mm2: figure(spot.area_uncertainty_mm2),
                min_mm: spot.min_mm.map(figure),
                confidence: spot.confidence.map(confidence),
                zone: words::zone(spot.zone).to_owned(),
                side: spot.side.map(Into::into),
                stop: spot.stop.map(|stop| stop as u64),
                around: spot.around.map(|around| spot_id(spots_before + around)),
            })
            .collect(),
        map: measured.map(|_| cover_map::described(checked, number)),
    })
}

fn finding(
    checked: &CheckedCase,
    number: usize,
    found: &judge::Finding,
    before: &[Before],
) -> Finding {
    let unit = found
        .impression
        .map(|impression| checked.impressions[impression].scan.unit.unit());
    let place = found.place.as_ref();
    let value = found.figure.as_ref();
    Finding {
        id: names::finding(number),
        severity: match found.severity {
            judge::Severity::Fail => Severity::Fail,
            judge::Severity::Borderline => Severity::Borderline,
            judge::Severity::Note => Severity::Note,
        },
        check: found.check.code().to_owned(),
        impression: found.impression.map(|impression| impression as u64),
        arch: found.arch.map(Into::into),
        zone: place.map(|place| words::zone(place.zone).to_owned()),
        side: place.and_then(|place| place.side).map(Into::into),
        measured: value.map(|value| figure(value.measured)),
        unit: value.map(|value| value.unit.clone()),
        limit: value.map(|value| figure(value.limit)),
        uncertainty: value.and_then(|value| value.uncertainty).map(figure),
        at: place.zip(unit).map(|(place, unit)| point(&place.at, unit)),
        refers_to: found.impression.and_then(|impression| {
            let before = before[impression];
            let spot = found.spot.map(|spot| spot_id(before.spots + spot));
            let defect = found
                .defect
                .map(|defect| defect_id(before.defects + defect));
            let landmark = found
                .landmark
                .map(|landmark| landmarks::landmark_id(before.landmarks + landmark));
            spot.or(defect).or(landmark)
        }),
        from_station: found.stretch.map(|stretch| stretch.from as u64),
        to_station: found.stretch.map(|stretch| stretch.to as u64),
        drawing: found.stretch.map(|_| names::section(number)),
        instruction: found.instruction.clone(),
    }
}

fn not_judged(entries: &[judge::NotJudged]) -> Vec<NotJudged> {
    entries
        .iter()
        .map(|entry| NotJudged {
            check: entry.check.clone(),
            why: entry.why.clone(),
        })
        .collect()
}

fn defect(found: &measure::Defect, number: usize, unit: Unit) -> Defect {
    Defect {
        id: defect_id(number),
        kind: match found.kind {
            measure::DefectKind::Void => DefectKind::Void,
            measure::DefectKind::Nodule => DefectKind::Nodule,
            measure::DefectKind::Fold => DefectKind::Fold,
            measure::DefectKind::Hole => DefectKind::Hole,
        },
        centre: point(&found.centre, unit),
        area_mm2: figure(found.area_mm2),
        depth_mm: found.depth_mm.map(figure),
        depth_uncertainty_mm: found.depth_uncertainty_mm.map(figure),
        across_mm: figure(found.across_mm),
        across_uncertainty_mm: figure(found.across_uncertainty_mm),
        length_mm: found.length_mm.map(figure),
        outline: found.outline.iter().map(|p| point(p, unit)).collect(),
        from_edge_mm: Some(found.from_edge_mm)
            .filter(|mm| mm.is_finite())
            .map(figure),
        zone: words::zone(found.zone).to_owned(),
        side: found.side.map(Into::into),
    }
}

fn zones(measurement: &ImpressionMeasurement) -> Vec<ZoneScan> {
    let scanned = measurement.tissue.iter().flat_map(|tissue| &tissue.zones);
    scanned
        .map(|zone| ZoneScan {
            zone: words::zone(zone.zone).to_owned(),
            side: zone.side.map(Into::into),
            area_mm2: figure(zone.area_mm2),
            coverage: figure(zone.coverage()),
            doubled_mm2: figure(zone.doubled_mm2),
            median_edge_mm: figure(zone.median_edge_mm),
            noise_mm: figure(zone.noise_mm),
            least_void_across_mm: figure(zone.least_across_mm),
            least_void_depth_mm: figure(zone.least_depth_mm),
        })
        .collect()
}

fn spot_kind(kind: measure::SpotKind) -> SpotKind {
    match kind {
        measure::SpotKind::ShowThrough => SpotKind::ShowThrough,
        measure::SpotKind::Thin => SpotKind::Thin,
    }
}

/// Name of a defect, unique within its case; defects are counted from 0.
fn defect_id(number: usize) -> String {
    format!("D{}", number + 1)
}

/// Name of a spot, unique within its case; spots are counted from 0.
fn spot_id(number: usize) -> String {
    format!("C{}", number + 1)
}

fn protocol(protocol: &judge::Protocol) -> ProtocolResult {
    let limits = protocol.limits().map(|(key, limit)| {
        let result = LimitResult {
            value: limit.value,
            zones: limit
                .zones
                .iter()
                .map(|(&zone, &value)| (words::zone(zone).to_owned(), value))
                .collect(),
            unit: limit.unit.clone(),
            level: match limit.level {
                judge::Level::Fail => Level::Fail,
                judge::Level::Undecided => Level::Undecided,
                judge::Level::Note => Level::Note,
            },
            source: limit.source.clone(),
        };
        (key.name().to_owned(), result)
    });
    ProtocolResult {
        name: protocol.name().to_owned(),
        limits: limits.collect(),
    }
}

fn verdict(verdict: judge::Verdict) -> Verdict {
    match verdict {
        judge::Verdict::Accept => Verdict::Accept,
        judge::Verdict::Rework => Verdict::Rework,
        judge::Verdict::Retake => Verdict::Retake,
        judge::Verdict::Undecided => Verdict::Undecided,
    }
}

fn stage(stage: judge::Stage) -> Stage {
    match stage {
        judge::Stage::FirstPass => Stage::FirstPass,
        judge::Stage::Wash => Stage::Wash,
        judge::Stage::Single => Stage::Single,
    }
}
