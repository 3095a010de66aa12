//! `landmark-cut-short`: border or scan end at a landmark or before it, or may.

use super::shared::landmarks::{findings, named, severity};
use super::shared::stations::{mould_again, then_wash};
use crate::check::Check;
use crate::decision::{Bound, Conformity};
use crate::finding::{Figure, Finding};
use crate::landmarks::{JudgedLandmark, LandmarkStatus, Spoiled, judged, least_covered_percent};
use crate::protocol::LimitKey;
use crate::severity::{Level, Severity};
use crate::subject::Subject;
use measure::landmarks::{Landmark, LandmarkName};
use measure::{Frame, Zone};

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

fn instruction(subject: &Subject<'_>, landmark: &Landmark, judged: &JudgedLandmark) -> String {
    const LONGER: &str = "take the impression again in a longer tray, or with the border built up";
    let name = named(landmark);
    match judged.spoiled {
        Some(Spoiled::ScanEnds) => format!(
            "The scan ends at {name}: scan this place again, well beyond it. Whether the \
             impression itself reaches it was not judged."
        ),
        _ if judged.is_missed => format!("The impression ends before {name}: {LONGER}."),
        Some(Spoiled::TroughOpen) => format!(
            "The impression may end before {name}, which should close the trough there: see \
             whether the scan or the impression is cut off. If the impression is, {LONGER}."
        ),
        Some(Spoiled::Margin) => format!(
            "The border passes at {name}: see whether the impression goes on beyond it. If it \
             does not, {LONGER}."
        ),
        Some(Spoiled::Near) => format!(
            "The border passes close behind {name}: see whether enough of the impression lies \
             beyond it."
        ),
        Some(Spoiled::Covered) => format!(
            "The impression may hold too little of {name}: see how much of it is there. If it is \
             cut off, {LONGER}."
        ),
        _ => {
            let zone = match landmark.name {
                LandmarkName::LingualFlange => Zone::LingualFlange,
                _ => landmark.zone.unwrap_or(Zone::ResidualRidge),
            };
            format!(
                "The border is short at {name}: add border material there and {}, {}.",
                mould_again(subject.arch(), zone),
                then_wash(subject.input().stage)
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
