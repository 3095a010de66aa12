//! What the checks on defects of the tissue surface share.

use super::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Place, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::{Defect, DefectKind, Zone};

/// Zones whose surface bears the denture or seals it: AREA and LM rows of the
/// facts (primary support, seal, and what must be relieved).
const CRITICAL_ZONES: [Zone; 7] = [
    Zone::ResidualRidge,
    Zone::Tuberosity,
    Zone::PosteriorPalatalSeal,
    Zone::HamularNotch,
    Zone::IncisivePapilla,
    Zone::BuccalShelf,
    Zone::RetromolarPad,
];

/// How one kind of defect is judged.
pub(super) struct Rule {
    pub check: Check,
    pub kind: DefectKind,
    /// The figure that is judged, mm, and its expanded uncertainty.
    pub size: fn(&Defect) -> [f64; 2],
    /// Its limit outside critical zones.
    pub usual: LimitKey,
    /// Its limit in critical zones and beside the border.
    pub critical: LimitKey,
    /// What to do about it.
    pub instruction: fn(&Subject<'_>, &Defect) -> String,
}

impl Rule {
    /// A finding for each defect of the kind that misses its limit.
    pub fn judge(&self, subject: &Subject<'_>) -> Vec<Finding> {
        let Ok(tissue) = &subject.measurement().tissue else {
            return Vec::new();
        };
        (tissue.defects.iter().enumerate())
            .filter(|(_, defect)| defect.kind == self.kind)
            .filter_map(|(number, defect)| self.finding(subject, number, defect))
            .collect()
    }

    fn finding(&self, subject: &Subject<'_>, number: usize, defect: &Defect) -> Option<Finding> {
        let limit = subject.limit(if is_critical(subject, defect) {
            self.critical
        } else {
            self.usual
        });
        let [size, uncertainty] = (self.size)(defect);
        let conformity = decide(size, uncertainty, Bound::AtMost(limit.value));
        let severity = Severity::of(conformity, limit.level)?;
        let mut instruction = (self.instruction)(subject, defect);
        if conformity == Conformity::Borderline && severity == Severity::Borderline {
            instruction = format!("Too close to the limit to tell: look at it. {instruction}");
        }
        Some(Finding {
            place: Some(Place {
                at: defect.centre,
                zone: defect.zone,
                side: defect.side,
            }),
            figure: Some(figure(size, Some(uncertainty), limit)),
            defect: Some(number),
            ..subject.finding(self.check, severity, instruction)
        })
    }
}

/// Width at the surface.
pub(super) fn width(defect: &Defect) -> [f64; 2] {
    [defect.across_mm, defect.across_uncertainty_mm]
}

fn is_critical(subject: &Subject<'_>, defect: &Defect) -> bool {
    let beside_border = subject.limit(LimitKey::BorderMargin).value;
    CRITICAL_ZONES.contains(&defect.zone) || defect.from_edge_mm < beside_border
}
