//! `show-through-extent`: tray shows through over too much of the surface for
//! relief and a wash.

use super::Check;
use super::show_through::area_conformity;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Finding, Severity};
use crate::judging::{Subject, figure};
use crate::protocol::LimitKey;
use measure::Spot;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let measurement = subject.measurement();
    let area_judged_mm2 = match (&measurement.cover, &measurement.colour) {
        (Ok(cover), _) => cover.area_judged_mm2,
        (Err(_), Some(Ok(colour))) => colour.area_judged_mm2,
        _ => return Vec::new(),
    };
    let least = Bound::AtLeast(subject.limit(LimitKey::ShowThrough).value);
    let conformity = |spot: &Spot| match (&measurement.cover, spot.min_mm) {
        // The cover map may contradict a colour: then it is not sure.
        (Ok(cover), Some(min_mm)) => decide(min_mm, cover.uncertainty_mm, least),
        _ => area_conformity(subject, spot),
    };
    let surely: Vec<_> = measurement
        .spots
        .iter()
        .filter(|spot| spot.stop.is_none())
        .filter(|spot| conformity(spot) == Conformity::NotConforming)
        .collect();
    if surely.is_empty() {
        return Vec::new();
    }
    let percent = |area: f64| 100.0 * area / area_judged_mm2;
    let share = percent(surely.iter().map(|spot| spot.area_mm2).sum());
    // The areas err together, through the place of the tray: their
    // uncertainties add up plainly.
    let uncertainty = percent(surely.iter().map(|spot| spot.area_uncertainty_mm2).sum());
    let limit = subject.limit(LimitKey::ShowThroughShare);
    let conformity = decide(share, uncertainty, Bound::AtMost(limit.value));
    let Some(severity) = Severity::of(conformity, limit.level) else {
        return Vec::new();
    };
    let instruction = match conformity {
        Conformity::NotConforming => {
            "Too much tray shows for relief and a wash to mend. Choose a tray that fits with room \
             all round, or add material evenly, and take the impression again."
        }
        Conformity::Borderline | Conformity::Conforming => {
            "So much tray shows that relief and a wash may not mend it. Consider taking the \
             impression again in a tray with more room."
        }
    };
    vec![Finding {
        figure: Some(figure(share, Some(uncertainty), limit)),
        ..subject.finding(Check::ShowThroughExtent, severity, instruction)
    }]
}
