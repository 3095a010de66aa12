//! `flange-thickness`: a flange is thinner or thicker than it should be.

use super::Check;
use super::along_border::{StationCheck, Told, in_notch, on_flange};
use super::show_through::SAFELY;
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let reading = |number: usize| {
        let station = &border.stations[number];
        let thickness = station.flange_thickness.ok()?;
        // Below a frenum's notch the cut runs through the tray, not the border.
        (on_flange(station) && !in_notch(border, number)).then_some(thickness)
    };
    let thin = StationCheck {
        check: Check::FlangeThickness,
        key: LimitKey::FlangeThin,
        bound: Bound::AtLeast,
        reading: &reading,
        instruction: &when_thin,
    };
    let thick = StationCheck {
        key: LimitKey::FlangeThick,
        bound: Bound::AtMost,
        instruction: &when_thick,
        ..thin
    };
    let mut findings = thin.findings(subject, border);
    findings.extend(thick.findings(subject, border));
    findings
}

fn when_thin(severity: Severity, told: &Told) -> String {
    let Told {
        range,
        movement,
        then,
    } = told;
    let look = match severity {
        Severity::Fail => "Add border material there",
        Severity::Borderline | Severity::Note => {
            "If it bends under a finger, add border material there"
        }
    };
    format!("The flange is thin {range}. {look} and repeat the {movement}, {then}.")
}

fn when_thick(severity: Severity, told: &Told) -> String {
    let Told {
        range, movement, ..
    } = told;
    let look = match severity {
        Severity::Fail => "Reduce it from outside",
        Severity::Borderline | Severity::Note => {
            "If it is more than fills the vestibule, reduce it from outside"
        }
    };
    format!("The flange is thick {range}. {look} ({SAFELY}) and repeat the {movement}.")
}
