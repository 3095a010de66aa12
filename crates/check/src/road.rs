//! The one way through the house: read the scans of a case, measure, judge.
//!
//! The command, the batch run and the viewer all go this way, so that one case
//! has one result wherever it is looked at. Nothing is decided here.

use crate::load::{LoadedScan, load_all};
use judge::{Case, Evidence, ImpressionInput, JudgedCase, Protocol, ScanFacts, judge_case};
use measure::jaw_relation::{self, Jaw, JawRelation};
use measure::landmarks::LandmarkMark;
use measure::passes::{compare, outward};
use measure::{Arch, ImpressionMeasurement, MeasureSettings, NotMeasured};
use mesh::{Mesh, ReadError, Unit};
use rayon::prelude::*;
use std::fmt;
use std::path::Path;
use std::sync::Arc;

/// How a case is to be checked.
#[derive(Debug, Clone)]
pub struct CheckOptions {
    /// Unit of every scan file, where the operator named it.
    pub unit: Option<Unit>,
    /// The limits to judge by.
    pub protocol: Protocol,
}

/// A case with everything that was found out about it.
#[derive(Debug, Clone)]
pub struct CheckedCase {
    /// What was given.
    pub case: Case,
    /// The limits it was judged by.
    pub protocol: Protocol,
    /// What was read and measured, for each impression of the case.
    pub impressions: Vec<CheckedImpression>,
    /// The scan of the jaw-relation record, where one was given.
    pub record: Option<Arc<LoadedScan>>,
    /// What it gave.
    pub jaw_relation: Option<Result<JawRelation, NotMeasured>>,
    /// Findings and verdicts.
    pub judged: JudgedCase,
}

/// One impression, read and measured.
#[derive(Debug, Clone)]
pub struct CheckedImpression {
    /// The impression scan.
    pub scan: Arc<LoadedScan>,
    /// The tray scan, where one was given.
    pub tray: Option<Arc<LoadedScan>>,
    /// What measuring gave.
    pub measurement: ImpressionMeasurement,
}

/// A step on the way, for showing progress.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// The scan files are being read.
    Reading,
    /// An impression is being measured.
    Measuring {
        /// Its number in the case, from 0.
        impression: usize,
        /// How many there are.
        of: usize,
        /// What is being measured.
        stage: measure::Stage,
    },
    /// The impressions are being laid on the scan of the jaw-relation record.
    Relating,
    /// The case is being judged.
    Judging,
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Reading => f.write_str("reading the scans"),
            Self::Measuring {
                impression,
                of,
                stage,
            } => {
                if *of > 1 {
                    write!(f, "impression {} of {of}: ", impression + 1)?;
                }
                stage.fmt(f)
            }
            Self::Relating => f.write_str("relating the jaws"),
            Self::Judging => f.write_str("judging"),
        }
    }
}

/// Reads, measures and judges a case.
///
/// # Errors
/// When one of its scans cannot be read.
pub fn check_case(
    case: Case,
    options: &CheckOptions,
    progress: &(dyn Fn(Step) + Sync),
) -> Result<CheckedCase, ReadError> {
    progress(Step::Reading);
    let scans = load_all(&case, options.unit)?;
    let of = case.impressions.len();
    let mut impressions: Vec<CheckedImpression> = case
        .impressions
        .par_iter()
        .enumerate()
        .map(|(impression, input)| {
            let scan = Arc::clone(&scans[input.scan.as_path()]);
            let tray = input
                .tray
                .as_ref()
                .map(|tray| Arc::clone(&scans[tray.as_path()]));
            let settings = settings(&options.protocol, input, &scan, tray.as_deref());
            let measurement = measure::measure(
                &scan.mesh,
                tray.as_ref().map(|tray| &tray.mesh),
                &settings,
                &|stage| {
                    progress(Step::Measuring {
                        impression,
                        of,
                        stage,
                    });
                },
            );
            CheckedImpression {
                scan,
                tray,
                measurement,
            }
        })
        .collect();
    compare_passes(&case, &mut impressions);
    let record = record_path(&case).map(|path| Arc::clone(&scans[path]));
    if record.is_some() {
        progress(Step::Relating);
    }
    let relation = record.map(|record| {
        let relation = related(&case, &impressions, &record);
        (record, relation)
    });
    progress(Step::Judging);
    Ok(judged(
        case,
        options.protocol.clone(),
        impressions,
        relation,
    ))
}

fn record_path(case: &Case) -> Option<&Path> {
    case.jaw_relation.as_ref()?.scan.as_deref()
}

/// The relation of the jaws by the impressions to be worked from.
fn related(
    case: &Case,
    impressions: &[CheckedImpression],
    record: &LoadedScan,
) -> Result<JawRelation, NotMeasured> {
    let number_of = |arch: Arch| {
        let is_worked_from = |number: &usize| {
            let found = impressions[*number].measurement.frame.as_ref().ok();
            let declared = case.impressions[*number].declared;
            !case.is_superseded(*number) && declared.or(found.map(|frame| frame.arch)) == Some(arch)
        };
        (0..impressions.len())
            .find(is_worked_from)
            .ok_or(NotMeasured::JawMissing { arch })
    };
    let one = &impressions[number_of(Arch::Maxillary)?];
    let other = &impressions[number_of(Arch::Mandibular)?];
    let [upper, lower] = [one, other].map(|one| outward(&one.scan.mesh, &one.measurement));
    jaw_relation::measure(jaw(&upper, one)?, jaw(&lower, other)?, &record.mesh)
}

fn jaw<'a>(mesh: &'a Mesh, one: &'a CheckedImpression) -> Result<Jaw<'a>, NotMeasured> {
    let (frame, border) = (&one.measurement.frame, &one.measurement.border);
    Ok(Jaw {
        mesh,
        frame: frame.as_ref().map_err(Clone::clone)?,
        crest_line: &border.as_ref().map_err(Clone::clone)?.crest_line,
    })
}

/// Adds to the measurement of each wash what it shows beside its first pass.
fn compare_passes(case: &Case, impressions: &mut [CheckedImpression]) {
    let of = |one: usize| {
        let one = &impressions[one];
        (&one.scan.mesh, &one.measurement)
    };
    let found: Vec<_> = (0..impressions.len())
        .into_par_iter()
        .filter_map(|wash| {
            let first_pass = case.first_pass_of(wash)?;
            Some((wash, compare(of(first_pass), of(wash))))
        })
        .collect();
    for (wash, found) in found {
        let measurement = &mut impressions[wash].measurement;
        match found {
            Ok(found) => {
                if let Ok(border) = &mut measurement.border {
                    for (station, change) in border.stations.iter_mut().zip(found.border) {
                        station.change = change;
                    }
                }
                measurement.wash = Some(found.wash);
            }
            Err(why) => measurement.wash = Some(Err(why)),
        }
    }
}

/// Judges what was measured.
#[must_use]
pub fn judged(
    case: Case,
    protocol: Protocol,
    impressions: Vec<CheckedImpression>,
    relation: Option<(Arc<LoadedScan>, Result<JawRelation, NotMeasured>)>,
) -> CheckedCase {
    let evidence: Vec<Evidence<'_>> = impressions
        .iter()
        .map(|impression| Evidence {
            measurement: &impression.measurement,
            scan: facts(&impression.scan),
            tray: impression.tray.as_deref().map(facts),
        })
        .collect();
    let (record, jaw_relation) = relation.unzip();
    let judged = judge_case(&case, &evidence, jaw_relation.as_ref(), &protocol);
    CheckedCase {
        judged,
        case,
        protocol,
        impressions,
        record,
        jaw_relation,
    }
}

fn facts(scan: &LoadedScan) -> ScanFacts {
    ScanFacts {
        sha256: scan.sha256.clone(),
        unit: scan.unit.clone(),
        questions: scan.questions.clone(),
    }
}

fn settings(
    protocol: &Protocol,
    input: &ImpressionInput,
    scan: &LoadedScan,
    tray: Option<&LoadedScan>,
) -> MeasureSettings {
    use judge::LimitKey::{FlangeDepth, LeastSpotArea, ShowThrough, StopSize, ThinCover};
    // Stops are written in the numbers of the tray scan's file.
    let in_mm = tray.map_or(1.0, |tray| tray.unit.unit().in_mm());
    MeasureSettings {
        show_through_mm: protocol.value(ShowThrough),
        thin_cover_mm: protocol.value(ThinCover),
        least_area_mm2: protocol.value(LeastSpotArea),
        stops: input.stops.iter().map(|stop| stop * in_mm).collect(),
        stop_radius_mm: protocol.value(StopSize) / 2.0,
        flange_depth_mm: protocol.value(FlangeDepth),
        tray_thickness: input.tray_thickness,
        tray_colour: input.tray_colour,
        marks: input
            .marks
            .iter()
            .map(|mark| LandmarkMark {
                point: mark.point * scan.unit.unit().in_mm(),
                ..mark.clone()
            })
            .collect(),
    }
}
