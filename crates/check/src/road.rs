//! The one way through the house: read the scans of a case, measure, judge.
//!
//! The command, the batch run and the viewer all go this way, so that one case
//! has one result wherever it is looked at. Nothing is decided here.

use crate::load::{LoadedScan, load_all};
use crate::parts::CheckedParts;
use crate::pieces::CheckedPieces;
use crate::reader::refused;
use crate::shelf::{CheckedShelf, Shelf, ShelfError, Shelves};
use crate::shelf_fit::SuitedTrays;
use crate::trays::{CheckedRelief, Relief, shared_trays, stops};
use judge::{
    Case, Evidence, ImpressionInput, JudgedCase, Protocol, ScanFacts, Scanner, Stage, Verdict,
    judge_case,
};
use measure::landmarks::LandmarkMark;
use measure::pair::{NoPair, NoTransit, Transit, Wash, changed_in_transit, compare};
use measure::record::{self, Jaw, JawRelation, NoRelation};
use measure::{
    Arch, JoinedParts, MeasureSettings, Measured, Measurement, PassPair, PreparedTray, Scanned,
};
use mesh::{Mesh, ReadError, Unit};
use messages::{Message, message};
use nalgebra::Point3;
use rayon::prelude::*;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::fmt;
use std::path::Path;
use std::sync::Arc;
use thiserror::Error;

/// How a case is to be checked.
#[derive(Debug, Clone)]
pub struct CheckOptions {
    /// Unit of every scan file, where the operator named it.
    pub unit: Option<Unit>,
    /// The limits to judge by.
    pub protocol: Protocol,
    /// Shelves of empty trays that were opened before.
    pub shelves: Shelves,
}

/// Why a case cannot be checked: one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum CaseNotRead {
    /// A scan cannot be read.
    Scan(#[from] ReadError),
    /// The shelf cannot be used.
    Shelf(#[from] ShelfError),
}

impl CaseNotRead {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Scan(error) => refused(error),
            Self::Shelf(error) => error.message(),
        }
    }
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
    /// What each wash shows together with its first pass.
    pub pairs: Vec<CheckedPair>,
    /// The scan of the jaw-relation record, where one was given.
    pub record: Option<Arc<LoadedScan>>,
    /// What it gave.
    pub jaw_relation: Option<Result<JawRelation, NoRelation>>,
    /// Findings and verdicts.
    pub judged: JudgedCase,
}

/// One impression, read and measured.
#[derive(Debug, Clone)]
pub struct CheckedImpression {
    /// The impression scan; of an impression in parts, these joined.
    pub scan: Arc<LoadedScan>,
    /// The scans of its parts, where it came in parts.
    pub parts: Option<CheckedParts>,
    /// The scan of the tray as it was when the impression was taken, where one was given.
    pub tray: Option<Arc<LoadedScan>>,
    /// The scans of its tray's pieces, where it came in pieces.
    pub pieces: Option<CheckedPieces>,
    /// The same impression as it was sent, where a scan of that was given.
    pub as_sent: Option<CheckedAsSent>,
    /// What the shelf shows of its tray, where the tray was looked for there.
    pub shelf: Option<CheckedShelf>,
    /// The tray after relief, of an impression before the wash.
    pub relief: Option<CheckedRelief>,
    /// What measuring gave.
    pub scanned: Scanned,
    /// Which tray of the shelf suits the mouth, where the impression is to be taken again.
    pub next_tray: Option<SuitedTrays>,
}

/// An impression as it was sent, beside it as it arrived.
#[derive(Debug, Clone)]
pub struct CheckedAsSent {
    /// The scan.
    pub scan: Arc<LoadedScan>,
    /// What measuring it gave.
    pub scanned: Scanned,
    /// What changed on the way.
    pub transit: Result<Transit, NoTransit>,
}

/// A wash compared with its first pass.
#[derive(Debug, Clone)]
pub struct CheckedPair {
    /// Number of the first pass in the case, from 0.
    pub first_pass: usize,
    /// Number of the wash.
    pub wash: usize,
    /// What the two show together.
    pub found: Result<PassPair, NoPair>,
}

impl CheckedCase {
    /// What the impression of this number shows together with its first pass;
    /// `None` where it is no wash over one.
    #[must_use]
    pub fn pair_of(&self, wash: usize) -> Option<&Result<PassPair, NoPair>> {
        pair_of(&self.pairs, wash)
    }

    /// What the wash of this number added to its first pass, where it was measured.
    #[must_use]
    pub fn wash_of(&self, wash: usize) -> Option<&Wash> {
        self.pair_of(wash)?.as_ref().ok()?.wash.as_ref().ok()
    }

    /// How the border of the wash of this number moved from its first pass's at
    /// each station, where that was measured.
    #[must_use]
    pub fn border_changes_of(&self, wash: usize) -> Option<&[Option<Measured>]> {
        let pair = self.pair_of(wash)?.as_ref().ok()?;
        pair.border_changes.as_deref().ok()
    }
}

impl CheckedImpression {
    /// What was measured of it; `None` where the scan shows something else.
    #[must_use]
    pub fn measured(&self) -> Option<&Measurement> {
        self.scanned.impression()
    }
}

fn pair_of(pairs: &[CheckedPair], wash: usize) -> Option<&Result<PassPair, NoPair>> {
    let pair = pairs.iter().find(|pair| pair.wash == wash)?;
    Some(&pair.found)
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
    /// An impression is measured.
    Measured {
        /// Its number in the case, from 0.
        impression: usize,
    },
    /// Each wash is being laid on its first pass.
    Comparing,
    /// The impressions are being laid on the scan of the jaw-relation record.
    Relating,
    /// The case is being judged.
    Judging,
}

impl Step {
    /// What is being done, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Reading => message!("step-reading"),
            Self::Measuring {
                of: 0 | 1, stage, ..
            } => stage.message(),
            Self::Measuring {
                impression,
                of,
                stage,
            } => message!(
                "step-of-impression",
                number = impression + 1,
                of = *of,
                step = stage.message()
            ),
            Self::Measured { impression } => message!("step-measured", number = impression + 1),
            Self::Comparing => message!("step-comparing"),
            Self::Relating => message!("step-relating"),
            Self::Judging => message!("step-judging"),
        }
    }
}

/// In English.
impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

/// Whether the marked landmarks, if there are any, were marked on this scan.
fn are_marks_of(input: &ImpressionInput, scan: &LoadedScan) -> bool {
    let sum = input.marks_sha256.as_ref();
    input.marks.is_empty() || sum.is_none_or(|sum| *sum == scan.sha256)
}

/// Reads, measures and judges a case. `progress` is called as each step begins and
/// again and again while it goes on; it may unwind, as when nobody waits for the
/// outcome any more.
///
/// # Errors
/// When one of its scans cannot be read, or its shelf not be used.
pub fn check_case(
    case: Case,
    options: &CheckOptions,
    progress: &(dyn Fn(Step) + Sync),
) -> Result<CheckedCase, CaseNotRead> {
    progress(Step::Reading);
    let shelf = case.shelf(&options.protocol);
    let (scans, shelf) = rayon::join(
        || load_all(&case, options.unit, &|| progress(Step::Reading)),
        || shelf.map(|folder| options.shelves.open(folder)).transpose(),
    );
    let (scans, shelf) = (scans?, shelf?);
    if let Some(shelf) = &shelf {
        shelf.apart_from(scans.values().map(AsRef::as_ref))?;
    }
    let of = case.impressions.len();
    let trays = shared_trays(&case, &scans);
    let given = Given {
        scans: &scans,
        trays: &trays,
        shelf: shelf.as_deref(),
        protocol: &options.protocol,
        scanner: case.scanner(&options.protocol),
    };
    let impressions: Vec<CheckedImpression> = case
        .impressions
        .par_iter()
        .enumerate()
        .map(|(impression, input)| {
            let checked = given.measured(input, &|stage| {
                progress(Step::Measuring {
                    impression,
                    of,
                    stage,
                });
            });
            progress(Step::Measured { impression });
            checked
        })
        .collect();
    if (0..of).any(|number| case.first_pass_of(number).is_some()) {
        progress(Step::Comparing);
    }
    let pairs = pairs(&case, &impressions, &|| progress(Step::Comparing));
    let record = record_path(&case).map(|path| Arc::clone(&scans[path]));
    if record.is_some() {
        progress(Step::Relating);
    }
    let relation = record.map(|record| {
        let relation = related(&case, &impressions, &record, &|| progress(Step::Relating));
        (record, relation)
    });
    progress(Step::Judging);
    let checked = judged(case, options.protocol.clone(), impressions, pairs, relation);
    Ok(match &shelf {
        Some(shelf) => with_next_trays(checked, shelf),
        None => checked,
    })
}

/// With the trays of the shelf tried in where an impression is to be taken again.
fn with_next_trays(checked: CheckedCase, shelf: &Arc<Shelf>) -> CheckedCase {
    let scanner = checked.case.scanner(&checked.protocol);
    let next: Vec<Option<SuitedTrays>> = (checked.impressions.par_iter().enumerate())
        .map(|(number, one)| {
            let verdict = checked.judged.impressions[number].verdict;
            if verdict != Verdict::Retake || checked.case.is_superseded(number) {
                return None;
            }
            let settings = MeasureSettings {
                declared_jaw: checked.case.impressions[number].declared,
                scanner_uncertainty_mm: scanner.length_uncertainty_mm,
                ..MeasureSettings::default()
            };
            SuitedTrays::for_retake(&one.scan, shelf, &settings)
        })
        .collect();
    let impressions = checked.impressions.into_iter().zip(next);
    CheckedCase {
        impressions: impressions
            .map(|(one, next_tray)| CheckedImpression { next_tray, ..one })
            .collect(),
        ..checked
    }
}

/// What impressions are measured with.
struct Given<'a> {
    scans: &'a BTreeMap<&'a Path, Arc<LoadedScan>>,
    trays: &'a BTreeMap<&'a Path, PreparedTray>,
    shelf: Option<&'a Shelf>,
    protocol: &'a Protocol,
    scanner: &'a Scanner,
}

impl Given<'_> {
    /// An impression as it arrived, and as it was sent where a scan of that was given.
    fn measured(
        &self,
        input: &ImpressionInput,
        stage_begins: &(dyn Fn(measure::Stage) + Sync),
    ) -> CheckedImpression {
        let (arrived, sent) = rayon::join(
            || self.measured_alone(input, stage_begins),
            || {
                let sent = input.as_it_was_sent()?;
                Some(self.measured_alone(&sent, &|_| {}))
            },
        );
        CheckedImpression {
            as_sent: sent.map(|sent| CheckedAsSent {
                transit: if sent.scan.sha256 == arrived.scan.sha256 {
                    Err(NoTransit::SameFile)
                } else {
                    changed_in_transit(
                        (&sent.scan.mesh, &sent.scanned),
                        (&arrived.scan.mesh, &arrived.scanned),
                    )
                },
                scan: sent.scan,
                scanned: sent.scanned,
            }),
            ..arrived
        }
    }

    fn measured_alone(
        &self,
        input: &ImpressionInput,
        stage_begins: &(dyn Fn(measure::Stage) + Sync),
    ) -> CheckedImpression {
        let doubt_mm = self.scanner.length_uncertainty_mm;
        let parts = CheckedParts::of(input, self.scans, self.trays);
        let pieces = CheckedPieces::of(input, self.scans, doubt_mm);
        let tray = match &pieces {
            Some(pieces) => Some(Arc::new(pieces.as_one())),
            None => input.tray_then().map(|tray| Arc::clone(&self.scans[tray])),
        };
        let scan = match parts.as_ref().zip(tray.as_deref()) {
            Some((parts, tray)) => Arc::new(parts.as_one(tray)),
            None => Arc::clone(&self.scans[input.scan.as_path()]),
        };
        let scan = with_warning_of_marks(input, scan);
        let relief = Relief::of(input, self.scans, self.trays, doubt_mm);
        let stops = stops(input, self.scans, relief.as_ref());
        let settings = settings(self.protocol, self.scanner, input, &scan, stops);
        let settings = match parts.as_ref().and_then(|parts| parts.joined.as_ref().ok()) {
            Some(joined) => of_parts(settings, joined),
            None => settings,
        };
        let not_joined = parts.as_ref().and_then(CheckedParts::not_joined);
        let shared = input.tray_then().and_then(|tray| self.trays.get(tray));
        let not_placed = pieces
            .as_ref()
            .and_then(|pieces| pieces.assembled.as_ref().err());
        let mesh = &scan.mesh;
        let shelf = self.shelf.filter(|_| input.is_from_shelf());
        let (mut tray, mut on_shelf) = (tray, None);
        let scanned = match (not_joined, not_placed, shared) {
            (Some(not_joined), ..) => not_joined,
            (None, Some(why), _) => {
                measure::measure_without_tray(mesh, why.clone(), &settings, stage_begins)
            }
            (None, None, Some(tray)) => {
                measure::measure_in_tray(mesh, tray, &settings, stage_begins)
            }
            (None, None, None) => match shelf {
                Some(shelf) => {
                    let trays = shelf.trays();
                    let (scanned, chosen) =
                        measure::measure_from_shelf(mesh, trays, &settings, stage_begins);
                    tray = chosen.map(|chosen| Arc::clone(shelf.scan(chosen.best.tray)));
                    on_shelf = Some(CheckedShelf::of(shelf, chosen.as_ref()));
                    scanned
                }
                None => {
                    let tray = tray.as_ref().map(|tray| &tray.mesh);
                    measure::measure(mesh, tray, &settings, stage_begins)
                }
            },
        };
        let relief = relief.filter(|_| input.stage == Stage::FirstPass);
        CheckedImpression {
            relief: relief.and_then(|relief| relief.under(&scanned)),
            as_sent: None,
            scan,
            parts,
            pieces,
            tray,
            shelf: on_shelf,
            scanned,
            next_tray: None,
        }
    }
}

/// The scan, with a warning where its landmarks were marked on another.
fn with_warning_of_marks(input: &ImpressionInput, scan: Arc<LoadedScan>) -> Arc<LoadedScan> {
    if are_marks_of(input, &scan) {
        return scan;
    }
    // The mesh is copied, which is rare; the warning must not reach other cases.
    Arc::new(LoadedScan {
        warnings: [&scan.warnings[..], &[message!("read-other-landmarks")]].concat(),
        ..(*scan).clone()
    })
}

fn record_path(case: &Case) -> Option<&Path> {
    case.jaw_relation.as_ref()?.scan.as_deref()
}

/// The relation of the jaws by the impressions to be worked from.
fn related(
    case: &Case,
    impressions: &[CheckedImpression],
    record: &LoadedScan,
    look: &(dyn Fn() + Sync),
) -> Result<JawRelation, NoRelation> {
    let number_of = |arch: Arch| {
        let is_worked_from = |number: &usize| {
            let found = impressions[*number].scanned.impression();
            let declared = case.impressions[*number].declared;
            let own = declared.or(found.map(|found| found.frame.arch));
            !case.is_superseded(*number) && own == Some(arch)
        };
        (0..impressions.len())
            .find(is_worked_from)
            .ok_or(NoRelation::JawMissing { arch })
    };
    let of = |arch: Arch| -> Result<(Cow<'_, Mesh>, &Measurement), NoRelation> {
        let one = &impressions[number_of(arch)?];
        match &one.scanned {
            Scanned::Impression(found) => Ok((found.scan.outward(&one.scan.mesh), found)),
            Scanned::Else(what, _) => Err(NoRelation::NotAnImpression(what.clone())),
        }
    };
    let (upper, lower) = (of(Arch::Maxillary)?, of(Arch::Mandibular)?);
    record::measure(jaw(&upper)?, jaw(&lower)?, &record.mesh, look)
}

fn jaw<'a>((mesh, found): &'a (Cow<'_, Mesh>, &Measurement)) -> Result<Jaw<'a>, NoRelation> {
    Ok(Jaw {
        mesh,
        frame: &found.frame,
        crest_line: &found.border.as_ref().map_err(|why| *why)?.crest_line,
        scanner_uncertainty_mm: found.scan.scanner_uncertainty_mm,
    })
}

/// Each wash compared with its first pass.
fn pairs(
    case: &Case,
    impressions: &[CheckedImpression],
    look: &(dyn Fn() + Sync),
) -> Vec<CheckedPair> {
    let of = |one: usize| (&impressions[one].scan.mesh, &impressions[one].scanned);
    (0..impressions.len())
        .into_par_iter()
        .filter_map(|wash| {
            let first_pass = case.first_pass_of(wash)?;
            Some(CheckedPair {
                first_pass,
                wash,
                found: compare(of(first_pass), of(wash), look),
            })
        })
        .collect()
}

/// Judges what was measured.
#[must_use]
pub fn judged(
    case: Case,
    protocol: Protocol,
    impressions: Vec<CheckedImpression>,
    pairs: Vec<CheckedPair>,
    relation: Option<(Arc<LoadedScan>, Result<JawRelation, NoRelation>)>,
) -> CheckedCase {
    let evidence: Vec<Evidence<'_>> = impressions
        .iter()
        .enumerate()
        .map(|(number, impression)| Evidence {
            scanned: &impression.scanned,
            pair: pair_of(&pairs, number),
            scan: facts(&impression.scan),
            tray: impression.tray.as_deref().map(facts),
            relief: impression.relief.as_ref().map(|relief| &relief.places),
            transit: (impression.as_sent.as_ref()).map(|sent| &sent.transit),
            joints: (impression.pieces.as_ref()).map_or(&[], CheckedPieces::joints),
        })
        .collect();
    let (record, jaw_relation) = relation.unzip();
    let judged = judge_case(&case, &evidence, jaw_relation.as_ref(), &protocol);
    CheckedCase {
        judged,
        case,
        protocol,
        impressions,
        pairs,
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

/// What measuring needs to know of an impression in parts.
fn of_parts(settings: MeasureSettings, joined: &JoinedParts) -> MeasureSettings {
    MeasureSettings {
        cut: Some(joined.cut()),
        scanner_uncertainty_mm: (settings.scanner_uncertainty_mm).hypot(joined.uncertainty_mm()),
        ..settings
    }
}

fn settings(
    protocol: &Protocol,
    scanner: &Scanner,
    input: &ImpressionInput,
    scan: &LoadedScan,
    stops: Vec<Point3<f64>>,
) -> MeasureSettings {
    use judge::LimitKey::{FlangeDepth, LeastSpotArea, ShowThrough, StopSize, ThinCover};
    MeasureSettings {
        show_through_mm: protocol.value(ShowThrough),
        thin_cover_mm: protocol.value(ThinCover),
        least_area_mm2: protocol.value(LeastSpotArea),
        stops,
        stop_radius_mm: protocol.value(StopSize) / 2.0,
        flange_depth_mm: protocol.value(FlangeDepth),
        tray_thickness: input.tray_thickness,
        tray_colour: input.tray_colour,
        declared_jaw: input.declared,
        scanner_uncertainty_mm: scanner.length_uncertainty_mm,
        marks: input
            .marks
            .iter()
            .filter(|_| are_marks_of(input, scan))
            .map(|mark| LandmarkMark {
                point: mark.point * scan.unit.unit().in_mm(),
                ..mark.clone()
            })
            .collect(),
        cut: None,
    }
}
