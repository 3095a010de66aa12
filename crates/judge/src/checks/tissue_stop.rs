//! `tissue-stop`: a declared tissue stop that does not show.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Cover;

pub(super) fn judge(subject: &Subject<'_>, cover: &Cover) -> Vec<Finding> {
    let limit = subject.limit(LimitKey::StopCover);
    subject
        .measurement()
        .stops
        .iter()
        .filter_map(|stop| {
            let place = Some(Place {
                at: stop.at,
                zone: stop.zone,
                side: stop.side,
            });
            let Some(measured) = stop.min_mm else {
                return Some(Finding {
                    place,
                    ..subject.finding(
                        Check::TissueStop,
                        Severity::Borderline,
                        "No surface was scanned at this tissue stop. Scan this place again.",
                    )
                });
            };
            let conformity = decide(measured, cover.uncertainty_mm, Bound::AtMost(limit.value));
            let severity = Severity::of(conformity, limit.level)?;
            let instruction = match conformity {
                Conformity::NotConforming => {
                    "Tray not fully seated here: material covers the tissue stop. Take the \
                     impression again and seat the tray until this stop touches."
                }
                Conformity::Borderline | Conformity::Conforming => {
                    "Look at this tissue stop: the tray should show. If material covers it, the \
                     tray was not fully seated here and the impression must be taken again."
                }
            };
            Some(Finding {
                place,
                figure: Some(Figure::beside(limit, measured, Some(cover.uncertainty_mm))),
                ..subject.finding(Check::TissueStop, severity, instruction)
            })
        })
        .collect()
}
