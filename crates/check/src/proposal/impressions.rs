//! The stages of the impressions of one jaw.

use super::draft::Draft;
use super::evidence::Couple;
use super::names::{Hints, Kind};
use super::question::Choice;
use super::role::{Role, Surety};
use judge::Stage;
use measure::Arch;
use messages::{Message, Value, message};

/// An impression whose jaw is known.
#[derive(Debug, Clone)]
pub(super) struct Member {
    /// Its number.
    pub(super) scan: usize,
    /// Its jaw.
    pub(super) arch: Arch,
    /// Its stage, where a person stated it.
    pub(super) stage: Option<Stage>,
    /// How surely it is an impression of that jaw.
    pub(super) surety: Surety,
    /// Why.
    pub(super) why: Message,
}

const STAGES: [Stage; 3] = [Stage::FirstPass, Stage::Wash, Stage::Single];

/// Places the impressions of one jaw, and asks about stages that are not seen.
pub(super) fn place(draft: &mut Draft<'_>, arch: Arch, members: &[Member]) {
    for member in members {
        let stage = member.stage;
        let role = Role::Impression { arch, stage };
        draft.place(member.scan, role, member.surety, member.why.clone());
    }
    let open: Vec<&Member> = members.iter().filter(|m| m.stage.is_none()).collect();
    match (&open[..], members) {
        ([], _) => {}
        ([_], [only]) => place_only(draft, only),
        (_, [first, second]) => place_two(draft, [first, second]),
        _ => {
            for member in open {
                ask_stage(draft, member, members, message!("ask-stage-several"));
            }
        }
    }
}

/// A single impression: no surface shows whether a wash is to come.
fn place_only(draft: &mut Draft<'_>, only: &Member) {
    match draft.stated.stage {
        Some(stage) => set_stage(draft, only, stage, message!("placed-stage-stated")),
        None => ask_stage(draft, only, &[], message!("ask-stage-alone")),
    }
}

/// Two impressions: the wash lies over the first pass.
fn place_two(draft: &mut Draft<'_>, two: [&Member; 2]) {
    let couple = draft.evidence.couple(two.map(|member| member.scan));
    let over = couple.and_then(|couple| couple.outcome.as_ref().ok()?.upper_layer());
    let Some(over) = over else {
        return ask_order(draft, two, reason(couple));
    };
    let stage_of = |i: usize| {
        if i == over {
            Stage::Wash
        } else {
            Stage::FirstPass
        }
    };
    if (0..2).any(|i| two[i].stage.is_some_and(|stated| stated != stage_of(i))) {
        return ask_order(draft, two, message!("ask-order-stated-otherwise"));
    }
    let (wash, first) = (two[over], two[1 - over]);
    let by = couple
        .and_then(|couple| couple.outcome.as_ref().ok())
        .map_or(0.0, |l| l.median_mm.abs());
    let (wash_name, first_name) = (draft.name(wash.scan), draft.name(first.scan));
    let why = message!("placed-wash", first = first_name, by = Value::number(by, 2));
    set_stage(draft, wash, Stage::Wash, why);
    let why = message!("placed-first-pass", wash = wash_name);
    set_stage(draft, first, Stage::FirstPass, why);
    let time = |member: &Member| draft.evidence.scans[member.scan].modified;
    if matches!((time(wash), time(first)), (Some(wash), Some(first)) if wash < first) {
        draft.remark(wash.scan, message!("remark-older"));
    }
}

/// Why it is not seen which of two impressions lies over the other.
fn reason(couple: Option<&Couple>) -> Message {
    match couple.map(|couple| &couple.outcome) {
        None => message!("ask-order-not-compared"),
        Some(Err(why)) => message!("ask-order-not-comparable", why = why.clone()),
        Some(Ok(layers)) => {
            let (by, uncertainty) = (layers.median_mm.abs(), layers.uncertainty_mm);
            let by = Value::figure(format!("{by:.2} ± {uncertainty:.2}"));
            message!("ask-order-alike", by = by)
        }
    }
}

fn set_stage(draft: &mut Draft<'_>, member: &Member, stage: Stage, why: Message) {
    let role = Role::Impression {
        arch: member.arch,
        stage: Some(stage),
    };
    let why = message!("placed-and", what = member.why.clone(), more = why);
    draft.place(member.scan, role, member.surety, why);
}

/// Asks for the stage of one impression; places that others have taken are not offered.
fn ask_stage(draft: &mut Draft<'_>, member: &Member, others: &[Member], why: Message) {
    let taken = |stage: &Stage| others.iter().any(|other| other.stage == Some(*stage));
    let mut stages: Vec<Stage> = STAGES.into_iter().filter(|stage| !taken(stage)).collect();
    let hint = match Hints::of(&draft.evidence.scans[member.scan].file).kind {
        Some(Kind::Impression(Some(hinted))) => Some(hinted),
        _ => None,
    };
    stages.sort_by_key(|stage| Some(*stage) != hint);
    let arch = member.arch;
    let roles = stages.into_iter().map(|stage| Role::Impression {
        arch,
        stage: Some(stage),
    });
    let mut roles: Vec<Role> = roles.collect();
    if !others.is_empty() {
        roles.push(Role::Record);
    }
    roles.push(Role::LeftOut);
    let (name, jaw) = (draft.name(member.scan), judge::words::arch(arch));
    let text = message!("ask-stage", jaw = jaw, name = name).then(why);
    let choices = roles.into_iter().map(|role| Choice::of(member.scan, role));
    draft.ask(&[member.scan], text, choices.collect());
}

/// Asks which of two impressions came first, or whether both belong to the case.
fn ask_order(draft: &mut Draft<'_>, two: [&Member; 2], why: Message) {
    let [a, b] = two;
    let arch = a.arch;
    let impression = |stage| Role::Impression { arch, stage };
    let time = |member: &Member| draft.evidence.scans[member.scan].modified;
    let hint_is_later = |member: &Member| {
        let hints = Hints::of(&draft.evidence.scans[member.scan].file);
        hints.kind == Some(Kind::Impression(Some(Stage::Wash)))
    };
    let a_is_later = hint_is_later(a) || (!hint_is_later(b) && time(a) > time(b));
    let (first, later) = if a_is_later { (b, a) } else { (a, b) };
    let in_order = |first: &Member, wash: &Member| Choice {
        label: message!(
            "choice-order",
            first = draft.name(first.scan),
            wash = draft.name(wash.scan)
        ),
        roles: vec![
            (first.scan, impression(Some(Stage::FirstPass))),
            (wash.scan, impression(Some(Stage::Wash))),
        ],
    };
    let alone = |kept: &Member, other: &Member, role: Role| {
        let names = (draft.name(kept.scan), draft.name(other.scan));
        Choice {
            label: match role {
                Role::Record => message!("choice-record", kept = names.0, other = names.1),
                _ => message!("choice-leave-out", kept = names.0, other = names.1),
            },
            roles: vec![(kept.scan, impression(None)), (other.scan, role)],
        }
    };
    let parts = STAGES.map(|stage| {
        let role = impression(Some(stage));
        Choice {
            label: message!("choice-parts", impression = role.message()),
            roles: vec![(first.scan, role), (later.scan, role)],
        }
    });
    let alone = [
        alone(first, later, Role::LeftOut),
        alone(later, first, Role::LeftOut),
        alone(first, later, Role::Record),
        alone(later, first, Role::Record),
    ];
    let in_order = [in_order(first, later), in_order(later, first)];
    let choices = in_order.into_iter().chain(alone).chain(parts).collect();
    let jaw = judge::words::arch(arch);
    let (one, other) = (draft.name(a.scan), draft.name(b.scan));
    let text = message!("ask-order", jaw = jaw, one = one, other = other).then(why);
    draft.ask(&[a.scan, b.scan], text, choices);
}
