//! What the checks on defects of the tissue surface share.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::{Defect, DefectKind, TissueSurface, Zone};
use messages::{Message, message};

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
pub(crate) struct DefectCheck {
    pub(crate) check: Check,
    pub(crate) kind: DefectKind,
    /// The figure that is judged, mm, and its expanded uncertainty.
    pub(crate) size: fn(&Defect) -> [f64; 2],
    /// Its limit outside critical zones.
    pub(crate) usual: LimitKey,
    /// Its limit in critical zones and beside the border.
    pub(crate) critical: LimitKey,
    /// A wider limit there, which weighs more.
    pub(crate) redo: Option<LimitKey>,
    /// What to do about it.
    pub(crate) instruction: fn(&Subject<'_>, &Defect) -> Message,
}

impl DefectCheck {
    /// A finding for each defect of the kind that misses its limit.
    pub(crate) fn findings(&self, subject: &Subject<'_>, tissue: &TissueSurface) -> Vec<Finding> {
        (tissue.defects.iter().enumerate())
            .filter(|(_, defect)| defect.kind == self.kind)
            .filter_map(|(number, defect)| self.finding(subject, number, defect))
            .collect()
    }

    fn finding(&self, subject: &Subject<'_>, number: usize, defect: &Defect) -> Option<Finding> {
        let [size, uncertainty] = (self.size)(defect);
        let against = |key| {
            let limit = subject.limit(key);
            let conformity = decide(size, uncertainty, Bound::AtMost(limit.value));
            let severity = Severity::of(conformity, limit.level)?;
            Some((limit, conformity, severity))
        };
        let (limit, conformity, severity) = if is_critical(subject, defect) {
            self.redo
                .and_then(against)
                .or_else(|| against(self.critical))
        } else {
            against(self.usual)
        }?;
        let mut instruction = (self.instruction)(subject, defect);
        if conformity == Conformity::Borderline && severity == Severity::Borderline {
            instruction = message!("too-close-to-tell").then(instruction);
        }
        Some(Finding {
            place: Some(Place {
                at: defect.centre,
                zone: defect.zone,
                side: defect.side,
            }),
            figure: Some(Figure::beside(
                limit,
                Bound::AtMost,
                size,
                Some(uncertainty),
            )),
            defect: Some(number),
            ..subject.finding(self.check, severity, instruction)
        })
    }
}

/// Width at the surface.
pub(crate) fn width(defect: &Defect) -> [f64; 2] {
    [defect.across_mm, defect.across_uncertainty_mm]
}

fn is_critical(subject: &Subject<'_>, defect: &Defect) -> bool {
    is_critical_zone(defect.zone) || is_beside_border(subject, defect)
}

fn is_beside_border(subject: &Subject<'_>, defect: &Defect) -> bool {
    defect.from_edge_mm < subject.limit(LimitKey::BorderMargin).value
}

/// Whether a defect lies where the denture seals: at the border, or at the back.
pub(crate) fn is_at_seal(subject: &Subject<'_>, defect: &Defect) -> bool {
    let back = [Zone::PosteriorPalatalSeal, Zone::HamularNotch];
    back.contains(&defect.zone) || is_beside_border(subject, defect)
}

/// Whether the surface of a zone bears the denture or seals it.
pub(crate) fn is_critical_zone(zone: Zone) -> bool {
    CRITICAL_ZONES.contains(&zone)
}
