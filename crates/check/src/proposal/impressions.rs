//! The stages of the impressions of one jaw.

use super::draft::Draft;
use super::evidence::Couple;
use super::names::{Hints, Kind};
use super::question::Choice;
use super::role::{Role, Surety};
use judge::Stage;
use measure::Arch;

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
    pub(super) why: String,
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
                ask_stage(
                    draft,
                    member,
                    members,
                    "several impressions of this jaw lie here",
                );
            }
        }
    }
}

/// A single impression: no surface shows whether a wash is to come.
fn place_only(draft: &mut Draft<'_>, only: &Member) {
    match draft.stated.stage {
        Some(stage) => set_stage(draft, only, stage, "stage as stated"),
        None => ask_stage(draft, only, &[], "one scan alone does not show it"),
    }
}

/// Two impressions: the wash lies over the first pass.
fn place_two(draft: &mut Draft<'_>, two: [&Member; 2]) {
    let couple = draft.evidence.couple(two.map(|member| member.scan));
    let over = couple.and_then(|couple| couple.outcome.as_ref().ok()?.upper_layer());
    let Some(over) = over else {
        let why = reason(couple);
        return ask_order(draft, two, &why);
    };
    let stage_of = |i: usize| {
        if i == over {
            Stage::Wash
        } else {
            Stage::FirstPass
        }
    };
    if (0..2).any(|i| two[i].stage.is_some_and(|stated| stated != stage_of(i))) {
        return ask_order(draft, two, "what was stated is not what the surfaces show");
    }
    let (wash, first) = (two[over], two[1 - over]);
    let by = couple
        .and_then(|couple| couple.outcome.as_ref().ok())
        .map_or(0.0, |l| l.median_mm.abs());
    let (wash_name, first_name) = (draft.name(wash.scan), draft.name(first.scan));
    let why = format!("in the tray of {first_name}, {by:.2} mm over it");
    set_stage(draft, wash, Stage::Wash, &why);
    let why = format!("in the tray of {wash_name}, under it");
    set_stage(draft, first, Stage::FirstPass, &why);
    let time = |member: &Member| draft.evidence.scans[member.scan].modified;
    if matches!((time(wash), time(first)), (Some(wash), Some(first)) if wash < first) {
        draft.remark(
            wash.scan,
            "its file is the older of the two, which is weak evidence",
        );
    }
}

fn reason(couple: Option<&Couple>) -> String {
    match couple.map(|couple| &couple.outcome) {
        None => "they were not compared".to_owned(),
        Some(Err(why)) => why.clone(),
        Some(Ok(layers)) => format!(
            "they differ by {:.2} ± {:.2} mm, and neither lies clearly over the other",
            layers.median_mm.abs(),
            layers.uncertainty_mm
        ),
    }
}

fn set_stage(draft: &mut Draft<'_>, member: &Member, stage: Stage, why: &str) {
    let role = Role::Impression {
        arch: member.arch,
        stage: Some(stage),
    };
    draft.place(
        member.scan,
        role,
        member.surety,
        format!("{}; {why}", member.why),
    );
}

/// Asks for the stage of one impression; places that others have taken are not offered.
fn ask_stage(draft: &mut Draft<'_>, member: &Member, others: &[Member], why: &str) {
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
    let text = format!(
        "At which stage is the {jaw} impression {name}? {}.",
        capital(why)
    );
    let choices = roles.into_iter().map(|role| Choice::of(member.scan, role));
    draft.ask(&[member.scan], text, choices.collect());
}

/// Asks which of two impressions came first, or whether both belong to the case.
fn ask_order(draft: &mut Draft<'_>, two: [&Member; 2], why: &str) {
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
        label: format!(
            "{} before the wash, {} the wash",
            draft.name(first.scan),
            draft.name(wash.scan)
        ),
        roles: vec![
            (first.scan, impression(Some(Stage::FirstPass))),
            (wash.scan, impression(Some(Stage::Wash))),
        ],
    };
    let alone = |kept: &Member, other: &Member, role: Role, what: &str| Choice {
        label: format!(
            "{}; {what} {}",
            draft.name(kept.scan),
            draft.name(other.scan)
        ),
        roles: vec![(kept.scan, impression(None)), (other.scan, role)],
    };
    let parts = STAGES.map(|stage| {
        let role = impression(Some(stage));
        Choice {
            label: format!("both: parts of one {role}, which was cut apart"),
            roles: vec![(first.scan, role), (later.scan, role)],
        }
    });
    let alone = [
        alone(first, later, Role::LeftOut, "leave out"),
        alone(later, first, Role::LeftOut, "leave out"),
        alone(first, later, Role::Record, "the jaw-relation record is"),
        alone(later, first, Role::Record, "the jaw-relation record is"),
    ];
    let in_order = [in_order(first, later), in_order(later, first)];
    let choices = in_order.into_iter().chain(alone).chain(parts).collect();
    let jaw = judge::words::arch(arch);
    let text = format!(
        "Which of the {jaw} impressions {} and {} is the wash? {}.",
        draft.name(a.scan),
        draft.name(b.scan),
        capital(why)
    );
    draft.ask(&[a.scan, b.scan], text, choices);
}

/// A reason as a sentence of its own.
fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string());
    first.unwrap_or_default() + letters.as_str()
}
