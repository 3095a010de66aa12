//! What a check needs before it can judge.
//!
//! Each need carries the function that judges once the need is met. Where it is
//! not met, the check is not made, and the reason is the one that measuring gave.

use super::shared::stations;
use crate::case::{Consignment, JawRelation as JawRelationStated, Stage};
use crate::finding::Finding;
use crate::not_judged::Part;
use crate::protocol::LimitKey;
use crate::subject::{CaseSubject, ScanSubject, Subject};
use measure::pair::{NoBorderChange, NoTransit, Transit, Wash};
use measure::record::JawRelation;
use measure::tray_fit::Seating;
use measure::{
    Border, Cover, CoverMethod, Frame, Measured, StationFigure, TissueSurface, TrayColour,
    TrayJoint, TrayRegistration,
};
use messages::{Message, Value, message};

/// Judges an impression by what was measured of it.
type Judge<T> = fn(&Subject<'_>, &T) -> Vec<Finding>;
/// Judges a case by what was measured of it or stated with it.
type JudgeCase<T> = fn(&CaseSubject<'_>, &T) -> Vec<Finding>;

/// What a check needs, with the function that judges once it is there.
pub(super) enum Needs {
    /// A scan, whatever it shows.
    Scan(fn(&ScanSubject<'_>) -> Vec<Finding>),
    /// A scan that shows an impression.
    Impression(fn(&Subject<'_>) -> Vec<Finding>),
    /// The impression frame.
    Frame(Judge<Frame>),
    /// Cover, or else colours that tell tray from material.
    TrayShown(fn(&Subject<'_>, TrayShown<'_>) -> Vec<Finding>),
    /// Cover over the tissue surface.
    Cover(Judge<Cover>),
    /// Cover, where tissue stops were declared.
    Stops(Judge<Cover>),
    /// Area of the whole tissue surface that was scanned, mm².
    ScannedArea(fn(&Subject<'_>, f64) -> Vec<Finding>),
    /// Where the tray's scan lies in the impression.
    PlacedTray(Judge<TrayRegistration>),
    /// Where the pieces of the tray meet.
    Joints(fn(&Subject<'_>, &[TrayJoint]) -> Vec<Finding>),
    /// The scan of the impression as it was sent, whether it could be compared or not.
    Transit(Judge<Result<Transit, NoTransit>>),
    /// How the tray stood in the mouth.
    Seating(Judge<Seating>),
    /// What a wash added to its first pass.
    Wash(Judge<Wash>),
    /// The border of a wash and that of its first pass.
    BothBorders(Judge<Border>),
    /// The tissue surface.
    Tissue(Judge<TissueSurface>),
    /// The tissue surface, scanned finely enough to show what is small.
    FineTissue(Judge<TissueSurface>),
    /// The border.
    Border(Judge<Border>),
    /// One figure of the border's stations. Where it is missing over a stretch
    /// of flange, that stretch is not judged.
    Stations(StationFigure, Judge<Border>),
    /// A case, whatever it holds.
    Case(fn(&CaseSubject<'_>) -> Vec<Finding>),
    /// The relation of the jaws.
    Relation(JudgeCase<JawRelation>),
    /// The interocclusal distance.
    InterocclusalDistance(fn(&CaseSubject<'_>, Measured) -> Vec<Finding>),
    /// What is said of the parcel.
    Consignment(JudgeCase<Consignment>),
}

/// How it is known where the tray shows.
#[derive(Clone, Copy)]
pub(super) enum TrayShown<'a> {
    /// By cover.
    ByCover(&'a Cover),
    /// By the tray's colour alone.
    ByColour(&'a TrayColour),
}

/// Why a check is not made.
#[derive(Debug, PartialEq)]
pub(super) enum Absent {
    /// There is nothing of the kind that it judges.
    NothingToJudge,
    /// What it needs could not be obtained.
    Missing(Message),
    /// A part of the result that several checks need could not be obtained.
    WholePart(Part, Message),
    /// The case does not ask for it.
    NotAsked(Message),
    /// The case does not ask for a part that several checks need.
    PartNotAsked(Part, Message),
}

/// What came of one check.
pub(super) struct Outcome {
    /// What it found, or why it was not made.
    pub(super) findings: Result<Vec<Finding>, Absent>,
    /// Why it could not judge everywhere, where it was made.
    pub(super) gaps: Vec<Message>,
}

impl Needs {
    /// What comes of the check on an impression; `None` where it is one on the
    /// case as a whole.
    pub(super) fn on_impression(&self, scan: ScanSubject<'_>) -> Option<Outcome> {
        if self.is_on_case() {
            return None;
        }
        if let Self::Scan(judge) = self {
            return Some(Outcome::made(judge(&scan)));
        }
        Some(scan.impression().map_or_else(
            || Outcome::of(Err(self.without_impression(scan))),
            |subject| self.on_measured(&subject),
        ))
    }

    /// Why the check is not made on a scan that shows something else.
    fn without_impression(&self, scan: ScanSubject<'_>) -> Absent {
        let why = scan.something_else().map_or_else(Message::default, |what| {
            message!("reason-not-an-impression", what = what)
        });
        match self {
            Self::Stops(_) if scan.input.stops.is_empty() => Absent::NothingToJudge,
            Self::TrayShown(_)
            | Self::Cover(_)
            | Self::Stops(_)
            | Self::ScannedArea(_)
            | Self::PlacedTray(_)
            | Self::Seating(_)
            | Self::Tissue(_)
            | Self::FineTissue(_) => Absent::Missing(why),
            Self::Border(_) | Self::Stations(..) => Absent::WholePart(Part::Border, why),
            Self::Wash(_) | Self::BothBorders(_) => match scan.evidence.pair {
                Some(Err(why)) => missing(why),
                Some(Ok(_)) | None => Absent::NothingToJudge,
            },
            Self::Transit(_) => match scan.evidence.transit {
                Some(Err(why)) => missing(why),
                Some(Ok(_)) | None => Absent::NothingToJudge,
            },
            // The check `not-an-impression` says what the scan shows.
            Self::Joints(_)
            | Self::Impression(_)
            | Self::Frame(_)
            | Self::Scan(_)
            | Self::Case(_)
            | Self::Relation(_)
            | Self::InterocclusalDistance(_)
            | Self::Consignment(_) => Absent::NothingToJudge,
        }
    }

    fn is_on_case(&self) -> bool {
        matches!(
            self,
            Self::Case(_)
                | Self::Relation(_)
                | Self::InterocclusalDistance(_)
                | Self::Consignment(_)
        )
    }

    /// What comes of the check on what was measured of an impression.
    fn on_measured(&self, subject: &Subject<'_>) -> Outcome {
        match *self {
            Self::Impression(judge) => Outcome::made(judge(subject)),
            Self::Frame(judge) => Outcome::made(judge(subject, &subject.measurement().frame)),
            Self::TrayShown(judge) => where_met(subject, tray_shown(subject), judge),
            Self::Cover(judge) => where_met(subject, cover(subject), judge),
            Self::Stops(judge) => where_met(subject, stops(subject), judge),
            Self::ScannedArea(judge) => where_met(subject, scanned_mm2(subject), judge),
            Self::PlacedTray(judge) => where_met(subject, placed_tray(subject), judge),
            Self::Joints(judge) => where_met(subject, joints(subject), judge),
            Self::Transit(judge) => where_met(subject, transit(subject), judge),
            Self::Seating(judge) => where_met(subject, seating(subject), judge),
            Self::Wash(judge) => where_met(subject, wash(subject), judge),
            Self::BothBorders(judge) => where_met(subject, both_borders(subject), judge),
            Self::Tissue(judge) => where_met(subject, tissue(subject), judge),
            Self::FineTissue(judge) => Outcome {
                gaps: tissue(subject).map_or(Vec::new(), |of| too_small_to_see(subject, of)),
                ..where_met(subject, tissue(subject), judge)
            },
            Self::Border(judge) => where_met(subject, border(subject), judge),
            Self::Stations(figure, judge) => Outcome {
                gaps: border(subject).map_or(Vec::new(), |of| {
                    let least_mm = subject.limit(LimitKey::LeastStretch).value;
                    stations::reasons_missing(of, figure, least_mm)
                }),
                ..where_met(subject, border(subject), judge)
            },
            // These are made elsewhere: on the scan, or on the case.
            Self::Scan(_)
            | Self::Case(_)
            | Self::Relation(_)
            | Self::InterocclusalDistance(_)
            | Self::Consignment(_) => Outcome::of(Err(Absent::NothingToJudge)),
        }
    }

    /// What comes of the check on a case as a whole; `None` where it is one on
    /// an impression.
    pub(super) fn on_case(&self, subject: &CaseSubject<'_>) -> Option<Outcome> {
        Some(match *self {
            Self::Case(judge) => Outcome::made(judge(subject)),
            Self::Relation(judge) => Outcome::of(relation(subject).map(|of| judge(subject, of))),
            Self::InterocclusalDistance(judge) => {
                Outcome::of(interocclusal(subject).map(|distance| judge(subject, distance)))
            }
            Self::Consignment(judge) => {
                Outcome::of(consignment(subject).map(|of| judge(subject, of)))
            }
            _ => return None,
        })
    }
}

/// The outcome of a check where what it needs is there.
fn where_met<T>(
    subject: &Subject<'_>,
    need: Result<T, Absent>,
    judge: impl Fn(&Subject<'_>, T) -> Vec<Finding>,
) -> Outcome {
    Outcome::of(need.map(|need| judge(subject, need)))
}

impl Outcome {
    fn of(findings: Result<Vec<Finding>, Absent>) -> Self {
        Self {
            findings,
            gaps: Vec::new(),
        }
    }

    fn made(findings: Vec<Finding>) -> Self {
        Self::of(Ok(findings))
    }
}

fn missing(why: impl Into<Message>) -> Absent {
    Absent::Missing(why.into())
}

fn cover<'a>(subject: &Subject<'a>) -> Result<&'a Cover, Absent> {
    subject.measurement().cover.as_ref().map_err(missing)
}

fn stops<'a>(subject: &Subject<'a>) -> Result<&'a Cover, Absent> {
    let input = subject.input();
    if input.stops_relieved && input.stage == Stage::Wash && !input.stops.is_empty() {
        return Err(missing(message!("stops-relieved")));
    }
    cover(subject).map_err(|why| {
        if subject.input().stops.is_empty() {
            Absent::NothingToJudge
        } else {
            why
        }
    })
}

fn tray_shown<'a>(subject: &Subject<'a>) -> Result<TrayShown<'a>, Absent> {
    let measurement = subject.measurement();
    match (&measurement.cover, &measurement.colour) {
        (Ok(cover), _) => Ok(TrayShown::ByCover(cover)),
        (Err(_), Some(Ok(colour))) => Ok(TrayShown::ByColour(colour)),
        (Err(why), Some(Err(of_colour))) => Err(missing(message!(
            "no-cover-no-colour",
            cover = why,
            colour = of_colour
        ))),
        (Err(why), None) => Err(missing(why)),
    }
}

fn scanned_mm2(subject: &Subject<'_>) -> Result<f64, Absent> {
    match (tray_shown(subject)?, &subject.measurement().colour) {
        (TrayShown::ByCover(cover), _) if cover.method == CoverMethod::TrayScan => {
            Ok(cover.area_judged_mm2)
        }
        (_, Some(Ok(colour))) => Ok(colour.area_judged_mm2),
        _ => Err(missing(message!("tray-thickness-stated"))),
    }
}

fn seating<'a>(subject: &Subject<'a>) -> Result<&'a Seating, Absent> {
    let fit = subject.measurement().tray_fit.as_ref();
    fit.and_then(|fit| fit.seating.as_ref()).ok_or_else(|| {
        let no_cover = cover(subject).err();
        no_cover.unwrap_or_else(|| missing(message!("tray-not-aligned")))
    })
}

fn placed_tray<'a>(subject: &Subject<'a>) -> Result<&'a TrayRegistration, Absent> {
    let placed = cover(subject)?.registration.as_ref();
    placed.ok_or_else(|| missing(message!("tray-not-aligned")))
}

/// None of a tray in one piece, or of pieces that were not placed, which the check
/// `cover-not-judged` says.
fn joints<'a>(subject: &Subject<'a>) -> Result<&'a [TrayJoint], Absent> {
    match subject.joints() {
        [] => Err(Absent::NothingToJudge),
        joints => Ok(joints),
    }
}

/// A scan that is of something else is asked about by the check itself.
fn transit<'a>(subject: &Subject<'a>) -> Result<&'a Result<Transit, NoTransit>, Absent> {
    match subject.transit() {
        None => Err(Absent::NothingToJudge),
        Some(Err(why @ (NoTransit::ArrivedNotAnImpression(_) | NoTransit::NoCrestLine(_)))) => {
            Err(missing(why))
        }
        Some(transit) => Ok(transit),
    }
}

fn wash<'a>(subject: &Subject<'a>) -> Result<&'a Wash, Absent> {
    match subject.pair() {
        None => Err(Absent::NothingToJudge),
        Some(Err(why)) => Err(missing(why)),
        Some(Ok(pair)) => pair.wash.as_ref().map_err(missing),
    }
}

/// The wash's border, where it was compared with the first pass's. By tissue
/// sides alone two borders can be compared, and a wash cannot.
fn both_borders<'a>(subject: &Subject<'a>) -> Result<&'a Border, Absent> {
    match subject.pair() {
        None => Err(Absent::NothingToJudge),
        Some(Err(why)) => Err(missing(why)),
        Some(Ok(pair)) => match &pair.border_changes {
            Ok(_) | Err(NoBorderChange::Wash(_)) => border(subject),
            Err(why @ NoBorderChange::FirstPass(_)) => Err(missing(why)),
        },
    }
}

fn tissue<'a>(subject: &Subject<'a>) -> Result<&'a TissueSurface, Absent> {
    subject.measurement().tissue.as_ref().map_err(missing)
}

/// What voids and nodules the scan is too coarse to show, where these would be
/// judged.
fn too_small_to_see(subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Message> {
    let least = tissue.zones.iter().map(|zone| zone.least_across_mm);
    least
        .max_by(f64::total_cmp)
        .filter(|&least_mm| least_mm > subject.limit(LimitKey::CriticalVoid).value)
        .map(|least_mm| {
            message!(
                "too-small-to-see",
                least = Value::figure(format!("{least_mm:.1} mm"))
            )
        })
        .into_iter()
        .collect()
}

fn border<'a>(subject: &Subject<'a>) -> Result<&'a Border, Absent> {
    let border = subject.measurement().border.as_ref();
    border.map_err(|why| Absent::WholePart(Part::Border, why.into()))
}

fn relation<'a>(subject: &CaseSubject<'a>) -> Result<&'a JawRelation, Absent> {
    match subject.relation {
        None => Err(Absent::PartNotAsked(
            Part::JawRelation,
            message!("no-record-scan"),
        )),
        Some(relation) => {
            let relation = relation.as_ref();
            relation.map_err(|why| Absent::WholePart(Part::JawRelation, why.into()))
        }
    }
}

fn interocclusal(subject: &CaseSubject<'_>) -> Result<Measured, Absent> {
    let one_reading_mm = subject.protocol.value(LimitKey::ReadingUncertainty);
    let record = subject.case.jaw_relation.as_ref();
    let stated = record.and_then(|record| record.interocclusal_distance(one_reading_mm));
    stated.ok_or_else(|| {
        let why = message!("no-vertical-dimensions");
        let gives = |of: fn(&JawRelationStated) -> Option<f64>| record.and_then(of).is_some();
        if gives(JawRelationStated::vertical_mm) || gives(JawRelationStated::rest_mm) {
            missing(why)
        } else {
            Absent::NotAsked(why)
        }
    })
}

fn consignment<'a>(subject: &CaseSubject<'a>) -> Result<&'a Consignment, Absent> {
    subject
        .case
        .consignment
        .as_ref()
        .ok_or_else(|| Absent::PartNotAsked(Part::Parcel, message!("no-parcel")))
}
