//! `border-asymmetry`: a flange is much lower than the other side's.

use super::Check;
use super::along_border::{StationCheck, Told, in_dip, in_notch, on_flange};
use super::under_extension;
use crate::decision::Bound;
use crate::finding::{Finding, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Border, Measured};

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Ok(border) = &subject.measurement().border else {
        return Vec::new();
    };
    let told_elsewhere = |number| {
        in_dip(border, number, |dip| {
            under_extension::severity(subject, border, dip).is_some()
        })
    };
    let reading = |number: usize| lower_by(border, number).filter(|_| !told_elsewhere(number));
    let check = StationCheck {
        check: Check::BorderAsymmetry,
        key: LimitKey::Asymmetry,
        bound: Bound::AtMost,
        reading: &reading,
        instruction: &instruction,
    };
    check.findings(subject, border)
}

/// By how much the flange at a station is lower than that opposite; frena need
/// not lie opposite each other.
fn lower_by(border: &Border, number: usize) -> Option<Measured> {
    let here = &border.stations[number];
    let opposite = here.opposite?;
    let there = border.stations.get(opposite)?;
    let compared = on_flange(here)
        && on_flange(there)
        && !(here.scan_ends || there.scan_ends)
        && !in_notch(border, number)
        && !in_notch(border, opposite);
    let (low, high) = (here.flange_height.ok()?, there.flange_height.ok()?);
    compared.then_some(Measured {
        mm: high.mm - low.mm,
        uncertainty_mm: low.uncertainty_mm.hypot(high.uncertainty_mm),
    })
}

fn instruction(_: Severity, told: &Told) -> String {
    let Told {
        range,
        movement,
        then,
    } = told;
    format!(
        "The flange is lower {range} than on the other side. Jaws are naturally asymmetric: \
         compare both vestibules in the mouth. If this one is deeper than the border reaches, add \
         border material and repeat the {movement}, {then}."
    )
}
