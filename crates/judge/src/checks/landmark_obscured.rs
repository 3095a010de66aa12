//! `landmark-obscured`: something lies over a landmark.

use super::shared::landmarks::{findings, named, severity};
use crate::check::Check;
use crate::finding::Finding;
use crate::landmarks::{LandmarkStatus, Spoiled};
use crate::protocol::LimitKey;
use crate::subject::Subject;
use measure::{DefectKind, Frame};

pub(super) fn judge(subject: &Subject<'_>, _: &Frame) -> Vec<Finding> {
    let level = subject.limit(LimitKey::LandmarkClearance).level;
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
                    "Nothing was scanned at {name}: scan it again; if the impression lacks \
                     material there, mend it with the wash."
                ),
                Some(DefectKind::Nodule) => format!(
                    "A bump lies over {name}: see what it is; trim what is not tissue and take \
                     the wash over it."
                ),
                Some(_) => {
                    format!("A void or fold lies over {name}: dry it and fill it with wash.")
                }
                None => format!(
                    "Tray shows at {name}: relieve the tray there, out of the mouth, and take the \
                     wash over it."
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
