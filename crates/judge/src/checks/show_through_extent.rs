//! `show-through-extent`: tray shows through over too much of the surface for
//! relief and a wash.

use super::needs::TrayShown;
use super::shared::spots::area_conformity;
use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::Subject;
use measure::Spot;
use messages::message;

pub(super) fn judge(subject: &Subject<'_>, shown: TrayShown<'_>) -> Vec<Finding> {
    about(subject, shown).into_iter().collect()
}

fn about(subject: &Subject<'_>, shown: TrayShown<'_>) -> Option<Finding> {
    let least = Bound::AtLeast(subject.limit(LimitKey::ShowThrough).value);
    let conformity = |spot: &Spot| match (shown, spot.min_mm) {
        // The cover map may contradict a colour: then it is not sure.
        (TrayShown::ByCover(cover), Some(min_mm)) => decide(min_mm, cover.uncertainty_mm, least),
        _ => area_conformity(subject, spot),
    };
    let surely: Vec<_> = subject
        .measurement()
        .spots
        .iter()
        .filter(|spot| spot.stop.is_none())
        .filter(|spot| conformity(spot) == Conformity::NotConforming)
        .collect();
    if surely.is_empty() {
        return None;
    }
    let area_judged_mm2 = match shown {
        TrayShown::ByCover(cover) => cover.area_judged_mm2,
        TrayShown::ByColour(colour) => colour.area_judged_mm2,
    };
    let percent = |area: f64| 100.0 * area / area_judged_mm2;
    let share = percent(surely.iter().map(|spot| spot.area_mm2).sum());
    // The areas err together, through the place of the tray: their
    // uncertainties add up plainly.
    let uncertainty = percent(surely.iter().map(|spot| spot.area_uncertainty_mm2).sum());
    let limit = subject.limit(LimitKey::ShowThroughShare);
    let conformity = decide(share, uncertainty, Bound::AtMost(limit.value));
    let severity = Severity::of(conformity, limit.level)?;
    let instruction = match conformity {
        Conformity::NotConforming => message!("show-through-too-much"),
        Conformity::Borderline | Conformity::Conforming => {
            message!("show-through-perhaps-too-much")
        }
    };
    let figure = Figure::beside(limit, Bound::AtMost, share, Some(uncertainty));
    Some(
        subject
            .finding(Check::ShowThroughExtent, severity, instruction)
            .with(figure),
    )
}
