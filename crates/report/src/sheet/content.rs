//! What the sheet says of a case, as plain data.

use crate::result::{CaseResult, Finding, ImpressionResult, Severity};
use crate::text::format::capital;
use crate::text::headline::what_to_do;
use crate::text::steps::steps;
use crate::text::times;
use crate::text::words::{finding_place, impression_name, verdict_word};
use judge::Check;
use std::collections::BTreeSet;

/// What the sheet says.
pub(super) struct Content<'a> {
    pub(super) case: &'a str,
    /// What the page is for.
    pub(super) purpose: &'static str,
    /// The word in the frame.
    pub(super) word: &'static str,
    pub(super) fixed: Fixed,
    pub(super) lead: String,
    /// When the case was checked and its scans were made.
    pub(super) times: Option<String>,
    pub(super) impressions: Vec<Shown<'a>>,
    /// What is to be done, in order.
    pub(super) tasks: Vec<Task>,
    pub(super) parcel: Parcel,
    /// Names of the checks that were not made, each once; `None` where that is not said.
    pub(super) not_judged: Option<Vec<String>>,
    /// Number of findings that are notes.
    pub(super) notes: usize,
    /// Program and limits.
    pub(super) source: String,
}

/// Words that are the same on every page of one kind.
#[derive(Clone, Copy)]
pub(super) struct Fixed {
    pub(super) tasks: &'static str,
    pub(super) no_tasks: &'static str,
    pub(super) missing: &'static str,
    /// What rings and colours of the pictures are.
    pub(super) legend: &'static str,
    /// Where what does not fit is to be found.
    pub(super) elsewhere: &'static str,
    /// What the lines to write on are for.
    pub(super) lines: [&'static str; 3],
}

/// An impression to be worked from.
pub(super) struct Shown<'a> {
    /// Its number in the case, from 0.
    pub(super) number: usize,
    pub(super) impression: &'a ImpressionResult,
    pub(super) name: String,
    pub(super) verdict: &'static str,
}

/// One thing to do.
pub(super) struct Task {
    pub(super) text: String,
    /// Numbers of the findings that ask for it, each with its place.
    pub(super) places: Vec<String>,
}

/// What is said of the parcel.
pub(super) enum Parcel {
    /// Nothing is to be said of it.
    Unsaid,
    /// The case says nothing of it.
    NotStated,
    /// What is missing from it; nothing where it is complete.
    Missing(Vec<String>),
}

const FOR_THE_PARCEL: Fixed = Fixed {
    tasks: "What to do, in this order",
    no_tasks: "Nothing fails and nothing is in question in the checks that were made.",
    missing: "Missing from the parcel",
    legend: "R, L: the patient's right and left. Numbered ring: a place that fails; dashed: a question. Dark: thin \
             material over the tray; bright: 3 mm or more; grey: not measured.",
    elsewhere: "in the report",
    lines: ["Checked by", "Date", "Returned because"],
};

impl<'a> Content<'a> {
    pub(super) fn of(result: &'a CaseResult) -> Self {
        let (parcel, work): (Vec<_>, Vec<_>) =
            (steps(result).into_iter()).partition(|step| step.findings.iter().all(of_parcel));
        Self {
            case: &result.case,
            purpose: "Impression check: goes with the parcel",
            word: verdict_word(result.verdict),
            fixed: FOR_THE_PARCEL,
            lead: capital(&what_to_do(result)),
            times: result.times.as_ref().map(times::in_words),
            impressions: shown(result),
            tasks: (work.into_iter())
                .map(|step| Task {
                    text: step.instruction.to_owned(),
                    places: (step.findings.iter())
                        .map(|finding| place(result, finding))
                        .collect(),
                })
                .collect(),
            parcel: match result.consignment {
                None => Parcel::NotStated,
                Some(_) => Parcel::Missing(
                    (parcel.iter())
                        .map(|step| step.instruction.to_owned())
                        .collect(),
                ),
            },
            not_judged: Some(not_judged(result)),
            notes: (result.findings.iter())
                .filter(|finding| finding.severity == Severity::Note)
                .count(),
            source: format!(
                "{} · limits: {} (SHA-256 {}…)",
                program(result),
                result.protocol.name,
                result.protocol.sha256.get(..12).unwrap_or_default()
            ),
        }
    }
}

/// The program, with the commit that it was built from.
pub(super) fn program(result: &CaseResult) -> String {
    let commit = result.commit.as_deref().and_then(|commit| commit.get(..12));
    match commit {
        Some(commit) => format!("{} ({commit})", result.program),
        None => result.program.clone(),
    }
}

/// The impressions that no later stage of the same jaw follows.
pub(super) fn shown(result: &CaseResult) -> Vec<Shown<'_>> {
    let impressions = result.impressions.iter().enumerate();
    impressions
        .filter(|(_, impression)| !impression.superseded)
        .map(|(number, impression)| Shown {
            number,
            impression,
            name: capital(&impression_name(impression)),
            verdict: verdict_word(impression.verdict),
        })
        .collect()
}

/// Whether a finding is a matter of the parcel.
pub(super) fn of_parcel(finding: &&Finding) -> bool {
    let check: Option<Check> = finding.check.parse().ok();
    check.is_some_and(|check| {
        matches!(
            check,
            Check::ParcelIncomplete | Check::PrescriptionMissing | Check::DisinfectionNotStated
        )
    })
}

/// `F2 thin cover, labial flange, patient's left`.
fn place(result: &CaseResult, finding: &Finding) -> String {
    let place = finding_place(result, finding);
    let name = format!("{} {}", finding.id, finding.check.replace('-', " "));
    if place.is_empty() {
        name
    } else {
        format!("{name}, {place}")
    }
}

fn not_judged(result: &CaseResult) -> Vec<String> {
    let of_impressions = (result.impressions.iter())
        .filter(|impression| !impression.superseded)
        .flat_map(|impression| &impression.not_judged);
    let mut seen = BTreeSet::new();
    of_impressions
        .chain(&result.not_judged)
        .filter(|entry| entry.asked && seen.insert(entry.check.as_str()))
        .map(|entry| entry.check.replace(['-', '_'], " "))
        .collect()
}
