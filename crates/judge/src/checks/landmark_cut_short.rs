//! `landmark-cut-short`: border or scan end at a landmark or before it.

use super::shared::landmarks::{findings, guides_only, named};
use crate::check::Check;
use crate::decision::Conformity;
use crate::finding::{Figure, Finding};
use crate::landmarks::{LandmarkStatus, Spoiled};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Frame;
use measure::landmarks::LandmarkName;

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    let limit = subject.limit(LimitKey::LandmarkMargin);
    let landmarks = &subject.measurement().landmarks;
    findings(
        subject,
        Check::LandmarkCutShort,
        LandmarkStatus::CutShort,
        |landmark, judged| {
            let severity = if guides_only(landmark.name) {
                Severity::Note
            } else {
                Severity::of(Conformity::NotConforming, limit.level).unwrap_or(Severity::Note)
            };
            let name = named(landmark);
            let instruction = match judged.spoiled {
                Some(Spoiled::ScanEnds) => format!(
                    "The scan ends at {name}: scan this place again, well beyond it. Whether the \
                     impression itself reaches it was not judged."
                ),
                Some(Spoiled::TroughOpen) => format!(
                    "The impression ends before {name}, which should close the trough there: see \
                     whether the scan or the impression is cut off; if the impression, extend the \
                     tray, add border material and take this part again."
                ),
                Some(Spoiled::Margin) => format!(
                    "The border passes too near to {name}: add border material beyond it and take \
                     this part again."
                ),
                _ if landmark.name == LandmarkName::LingualFlange => format!(
                    "The border is short at {name}: add border material there, repeat the \
                     movements of the tongue."
                ),
                _ => format!(
                    "The border is short at {name}: add border material there, repeat the \
                     movements that mould it."
                ),
            };
            (severity, instruction)
        },
    )
    .into_iter()
    .map(|finding| {
        let landmark = finding.landmark.and_then(|number| landmarks.get(number));
        let measured = landmark.and_then(|l| Some((l.margin_mm?, l.seen.as_ref().ok()?)));
        Finding {
            figure: measured
                .map(|(margin, seen)| Figure::beside(limit, margin, Some(seen.uncertainty_mm))),
            ..finding
        }
    })
    .collect()
}
