//! `landmark-cut-short`: border or scan end at a landmark or before it, or may.

use super::shared::landmarks::{findings, severity};
use super::shared::stations::{mould_again, then_wash};
use crate::check::Check;
use crate::decision::{Bound, Conformity};
use crate::finding::{Figure, Finding};
use crate::landmarks::{JudgedLandmark, LandmarkStatus, Spoiled, judged, least_covered_percent};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::subject::Subject;
use crate::words::the_landmark;
use measure::landmarks::{Landmark, LandmarkName};
use measure::{Frame, Zone};
use messages::{Message, message};

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    let landmarks = &subject.measurement().landmarks;
    let statuses = judged(subject);
    findings(
        subject,
        Check::LandmarkCutShort,
        |judged| judged.status == LandmarkStatus::CutShort || is_worth_a_word(subject, judged),
        |landmark, judged| {
            (
                gravity(subject, landmark, judged),
                instruction(subject, landmark, judged),
            )
        },
    )
    .into_iter()
    .map(|finding| {
        let number = finding.landmark;
        let figure = number
            .and_then(|number| landmarks.get(number).zip(statuses.get(number)))
            .and_then(|(landmark, judged)| figure(subject, landmark, judged));
        Finding { figure, ..finding }
    })
    .collect()
}

/// The landmark is reached, but perhaps too little of it, or less is beyond it than
/// is wished.
fn is_worth_a_word(subject: &Subject<'_>, judged: &JudgedLandmark) -> bool {
    let level = level(subject, judged);
    let is_certain = judged.conformity == Conformity::NotConforming;
    // A note says what is sure.
    judged.status == LandmarkStatus::Reached
        && judged.spoiled.is_some()
        && (is_certain || level != Level::Note)
}

/// Notches, tuberosities and pads carry and seal the denture: an impression that
/// ends before one beyond doubt fails. What is in doubt is a question.
fn gravity(subject: &Subject<'_>, landmark: &Landmark, judged: &JudgedLandmark) -> Severity {
    let bears = matches!(
        landmark.name,
        LandmarkName::HamularNotch | LandmarkName::Tuberosity | LandmarkName::RetromolarPad
    );
    if bears && judged.is_missed {
        return subject.limit(LimitKey::LandmarkReach).level.severity();
    }
    severity(landmark.name, level(subject, judged))
}

fn level(subject: &Subject<'_>, judged: &JudgedLandmark) -> Level {
    let key = match judged.spoiled {
        Some(Spoiled::Near) => LimitKey::LandmarkMargin,
        Some(Spoiled::Covered) => LimitKey::LandmarkCovered,
        Some(Spoiled::ScanEnds | Spoiled::ShortBorder) => LimitKey::LandmarkClearance,
        _ => return Level::Undecided,
    };
    subject.limit(key).level
}

fn instruction(subject: &Subject<'_>, landmark: &Landmark, judged: &JudgedLandmark) -> Message {
    let name = the_landmark(landmark);
    match judged.spoiled {
        Some(Spoiled::ScanEnds) => message!("cut-short-scan-ends", landmark = name),
        _ if judged.is_missed => message!("cut-short-missed", landmark = name),
        Some(Spoiled::TroughOpen) => message!("cut-short-trough-open", landmark = name),
        Some(Spoiled::Margin) => message!("cut-short-at-border", landmark = name),
        Some(Spoiled::Near) => message!("cut-short-near", landmark = name),
        Some(Spoiled::Covered) => message!("cut-short-covered", landmark = name),
        _ => {
            let zone = match landmark.name {
                LandmarkName::LingualFlange => Zone::LingualFlange,
                _ => landmark.zone.unwrap_or(Zone::ResidualRidge),
            };
            message!(
                "cut-short-border",
                landmark = name,
                mould = mould_again(subject.arch(), zone),
                then = then_wash(subject.input().stage)
            )
        }
    }
}

/// The figure that was judged: how far the impression goes on beyond the landmark,
/// or how much of it the impression holds.
fn figure(subject: &Subject<'_>, landmark: &Landmark, judged: &JudgedLandmark) -> Option<Figure> {
    match judged.spoiled? {
        Spoiled::Margin | Spoiled::TroughOpen => {
            margin_figure(subject, landmark, LimitKey::LandmarkReach)
        }
        Spoiled::Near => margin_figure(subject, landmark, LimitKey::LandmarkMargin),
        Spoiled::Covered => {
            let covered = landmark.extent.covered?;
            Some(Figure {
                measured: covered.percent,
                uncertainty: Some(covered.uncertainty_percent),
                bound: Bound::AtLeast(least_covered_percent(landmark.name, subject.protocol())),
                unit: subject.limit(LimitKey::LandmarkCovered).unit.clone(),
            })
        }
        _ => None,
    }
}

fn margin_figure(subject: &Subject<'_>, landmark: &Landmark, key: LimitKey) -> Option<Figure> {
    let margin = landmark.extent.margin?;
    Some(Figure::beside(
        subject.limit(key),
        Bound::AtLeast,
        margin.mm,
        Some(margin.uncertainty_mm),
    ))
}
