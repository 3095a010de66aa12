//! `landmark-obscured`: something lies over a landmark.

use super::shared::landmarks::{findings, named, severity};
use super::shared::relief::relieve;
use super::shared::stations::then_wash;
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::landmarks::{LandmarkStatus, Spoiled};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{DefectKind, Frame};

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    let level = subject.limit(LimitKey::LandmarkClearance).level;
    let is_finished = subject.input().stage != Stage::FirstPass;
    findings(
        subject,
        Check::LandmarkObscured,
        |judged| judged.status == LandmarkStatus::Obscured,
        |landmark, judged| {
            let name = named(landmark);
            let kind = match judged.spoiled {
                Some(Spoiled::Defect(number)) => kind_of(subject, number),
                _ => None,
            };
            let instruction = match kind {
                Some(DefectKind::Hole) => format!(
                    "Nothing was scanned at {name}: scan it again. If material is missing there, \
                     the wash must fill it."
                ),
                Some(DefectKind::Nodule) if is_finished => format!(
                    "A bump lies over {name}. Look at it; trim what does not belong to the tissue \
                     before pouring."
                ),
                Some(_) if is_finished => format!(
                    "A void or fold lies over {name}. What it leaves on the cast must be trimmed; \
                     if the true surface cannot be seen around it, repeat the wash."
                ),
                Some(DefectKind::Nodule) => format!(
                    "A bump lies over {name}. Look at it; trim what does not belong to the tissue \
                     and take the wash over it."
                ),
                Some(_) => {
                    format!("A void or fold lies over {name}. Dry it, so that the wash fills it.")
                }
                None => format!(
                    "Tray shows at {name}. {}",
                    relieve(then_wash(subject.input().stage))
                ),
            };
            (severity(landmark.name, level), instruction)
        },
    )
}

fn kind_of(subject: &Subject<'_>, number: usize) -> Option<DefectKind> {
    let tissue = subject.measurement().tissue.as_ref().ok()?;
    tissue.defects.get(number).map(|defect| defect.kind)
}
