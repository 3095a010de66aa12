//! `changed-in-transit`: the impression changed between the scan in which it was sent and the one
//! in which it arrived.

use crate::check::Check;
use crate::decision::{Bound, Conformity, decide};
use crate::finding::{Figure, Finding, Place};
use crate::protocol::{Limit, LimitKey};
use crate::severity::Severity;
use crate::subject::Subject;
use crate::words;
use measure::pair::{Damage, DamageKind, NoTransit, Transit};
use measure::{Amount, LimbBend, Zone};
use messages::{Message, Value, message};

pub(super) fn judge(subject: &Subject<'_>, transit: &Result<Transit, NoTransit>) -> Vec<Finding> {
    match transit {
        Ok(transit) => {
            let places = transit.damage.iter();
            let places = places.filter_map(|damage| of_place(subject, damage));
            of_arch(subject, transit)
                .into_iter()
                .chain(places)
                .collect()
        }
        Err(NoTransit::SameFile) => vec![subject.finding(
            Check::ChangedInTransit,
            Severity::Borderline,
            message!("sent-same-file"),
        )],
        Err(why) => vec![subject.finding(
            Check::ChangedInTransit,
            Severity::Borderline,
            message!("sent-other-scan", why = why),
        )],
    }
}

/// One change of the arch as a whole.
struct ArchChange<'a> {
    moved: Amount,
    what: Message,
    heel: Option<&'a LimbBend>,
}

/// The one change of the arch as a whole that is farthest beyond its limit.
fn of_arch(subject: &Subject<'_>, transit: &Transit) -> Option<Finding> {
    let limit = subject.limit(LimitKey::ArchChange);
    let heels = transit.bends.iter().map(|limb| ArchChange {
        moved: limb.end_moved(),
        what: message!(
            "changed-heel",
            side = words::side(limb.side),
            moved = words::moved(limb.end_toward_tissue_mm.value, limb.end_outward_mm.value)
        ),
        heel: Some(limb),
    });
    let apart = transit.heels_apart_mm;
    let apart = ArchChange {
        what: message!(
            "changed-heels",
            apart = if apart.value < 0.0 {
                "nearer"
            } else {
                "farther"
            }
        ),
        moved: Amount {
            value: apart.value.abs(),
            ..apart
        },
        heel: None,
    };
    let surely = |change: &ArchChange<'_>| change.moved.value - change.moved.uncertainty;
    let most = heels
        .chain([apart])
        .max_by(|a, b| surely(a).total_cmp(&surely(b)))?;
    let severity = severity(most.moved, limit, false)?;
    let percent = transit.larger_percent;
    let [size, uncertainty] = [percent.value.abs(), percent.uncertainty];
    let instruction = most.what.then(message!(
        "changed-size",
        percent = Value::figure(format!("{size:.2} % ± {uncertainty:.2} %")),
        size = if percent.value < 0.0 {
            "smaller"
        } else {
            "larger"
        }
    ));
    Some(Finding {
        place: most.heel.map(|limb| Place {
            at: limb.end,
            zone: limb.zone,
            side: Some(limb.side),
        }),
        ..finding(subject, limit, severity, most.moved, instruction)
    })
}

fn of_place(subject: &Subject<'_>, damage: &Damage) -> Option<Finding> {
    let limit = subject.limit(LimitKey::LocalChange);
    let moved = Amount {
        value: damage.depth.mm.abs(),
        uncertainty: damage.depth.uncertainty_mm,
    };
    let is_at_seal = damage.kind == DamageKind::Torn || damage.zone == Zone::PosteriorPalatalSeal;
    let severity = severity(moved, limit, is_at_seal)?;
    let what = match damage.kind {
        DamageKind::Torn => message!("changed-torn"),
        DamageKind::PressedIn => message!("changed-pressed-in"),
        DamageKind::StuckOn => message!("changed-stuck-on"),
    };
    let area = Value::figure(format!("{:.0} mm²", damage.area_mm2));
    let instruction = what.then(message!("changed-area", area = area));
    Some(Finding {
        place: Some(Place {
            at: damage.at,
            zone: damage.zone,
            side: damage.side,
        }),
        ..finding(subject, limit, severity, moved, instruction)
    })
}

/// Beyond the limit and its uncertainty it is as severe as the limit says; beyond the limit
/// alone, a note, or where the seal hangs on it as severe.
fn severity(moved: Amount, limit: &Limit, is_at_seal: bool) -> Option<Severity> {
    match decide(moved.value, moved.uncertainty, Bound::AtMost(limit.value)) {
        Conformity::Borderline if moved.value <= limit.value => None,
        Conformity::Borderline if !is_at_seal => Some(Severity::Note),
        conformity => Severity::of(conformity, limit.level),
    }
}

fn finding(
    subject: &Subject<'_>,
    limit: &Limit,
    severity: Severity,
    moved: Amount,
    instruction: Message,
) -> Finding {
    let figure = Figure::beside(limit, Bound::AtMost, moved.value, Some(moved.uncertainty));
    let finding = subject.finding(Check::ChangedInTransit, severity, instruction);
    finding.with(figure)
}
