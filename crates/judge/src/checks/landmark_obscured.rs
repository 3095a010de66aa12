//! `landmark-obscured`: something lies over a landmark.

use super::shared::landmarks::{findings, severity};
use super::shared::relief::relieve;
use super::shared::stations::then_wash;
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::landmarks::{LandmarkStatus, Spoiled};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use crate::words::the_landmark;
use measure::{DefectKind, Frame};
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    let level = subject.limit(LimitKey::LandmarkClearance).level;
    let is_finished = subject.input().stage != Stage::FirstPass;
    findings(
        subject,
        Check::LandmarkObscured,
        |judged| judged.status == LandmarkStatus::Obscured,
        |landmark, judged| {
            let name = the_landmark(landmark);
            let kind = match judged.spoiled {
                Some(Spoiled::Defect(number)) => kind_of(subject, number),
                _ => None,
            };
            let instruction = match kind {
                Some(DefectKind::Hole) => message!("obscured-by-hole", landmark = name),
                Some(DefectKind::Nodule) if is_finished => {
                    message!("obscured-by-bump", landmark = name)
                }
                Some(_) if is_finished => message!("obscured-by-void", landmark = name),
                Some(DefectKind::Nodule) => {
                    message!("obscured-by-bump-before-wash", landmark = name)
                }
                Some(_) => message!("obscured-by-void-before-wash", landmark = name),
                None => message!("obscured-by-tray", landmark = name)
                    .then(relieve(then_wash(subject.input().stage))),
            };
            (severity(landmark.name, level), instruction)
        },
    )
}

fn kind_of(subject: &Subject<'_>, number: usize) -> Option<DefectKind> {
    let tissue = subject.measurement().tissue.as_ref().ok()?;
    tissue.defects.get(number).map(|defect| defect.kind)
}
