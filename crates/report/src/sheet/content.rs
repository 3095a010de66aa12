//! What the sheet says of a case, as plain data.

use crate::result::{CaseResult, Finding, ImpressionResult, Severity};
use crate::text::format::capital;
use crate::text::headline::what_to_do;
use crate::text::material_added::adds_material;
use crate::text::next_tray::next_tray;
use crate::text::steps::{pressing, steps};
use crate::text::times;
use crate::text::words::{check_name, finding_place, impression_name, verdict_word};
use judge::Check;
use messages::{Language, text};
use std::collections::BTreeSet;

/// What the sheet says.
pub(super) struct Content<'a> {
    pub(super) language: Language,
    pub(super) case: &'a str,
    /// What the page is for.
    pub(super) purpose: String,
    /// The word in the frame.
    pub(super) word: String,
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
    /// Whether material is to be added, so that the adhesive is spoken of.
    pub(super) adds_material: bool,
    /// Program and limits.
    pub(super) source: String,
}

/// Words that are the same on every page of one kind.
pub(super) struct Fixed {
    pub(super) tasks: String,
    pub(super) no_tasks: String,
    pub(super) missing: String,
    /// What rings and colours of the pictures are.
    pub(super) legend: String,
    /// Where what does not fit is to be found.
    pub(super) elsewhere: String,
    /// What the lines to write on are for.
    pub(super) lines: [String; 3],
}

/// An impression to be worked from.
pub(super) struct Shown<'a> {
    /// Its number in the case, from 0.
    pub(super) number: usize,
    pub(super) impression: &'a ImpressionResult,
    pub(super) name: String,
    pub(super) verdict: String,
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

fn for_the_parcel(language: Language) -> Fixed {
    Fixed {
        tasks: text!(language, "sheet-tasks"),
        no_tasks: text!(language, "sheet-no-tasks"),
        missing: text!(language, "sheet-parcel-missing"),
        legend: text!(language, "sheet-legend"),
        elsewhere: text!(language, "sheet-in-the-report"),
        lines: [
            text!(language, "sheet-checked-by"),
            text!(language, "sheet-date"),
            text!(language, "sheet-returned-because"),
        ],
    }
}

impl<'a> Content<'a> {
    pub(super) fn of(result: &'a CaseResult, language: Language) -> Self {
        let (parcel, work): (Vec<_>, Vec<_>) =
            (steps(result).into_iter()).partition(|step| step.findings.iter().all(of_parcel));
        Self {
            language,
            case: &result.case,
            purpose: text!(language, "sheet-purpose"),
            word: verdict_word(result.verdict, language),
            fixed: for_the_parcel(language),
            lead: capital(&what_to_do(result, language)),
            times: (result.times.as_ref()).map(|times| times::in_words(times, language)),
            impressions: shown(result, language),
            tasks: (work.into_iter())
                .map(|step| Task {
                    text: step.instruction_in(language),
                    places: (step.findings.iter())
                        .map(|finding| place(result, finding, language))
                        .collect(),
                })
                .chain(next_trays(result, language))
                .collect(),
            parcel: match result.consignment {
                None => Parcel::NotStated,
                Some(_) => Parcel::Missing(
                    (parcel.iter())
                        .map(|step| step.instruction_in(language))
                        .collect(),
                ),
            },
            not_judged: Some(not_judged(result, language)),
            notes: (result.findings.iter())
                .filter(|finding| finding.severity == Severity::Note)
                .count(),
            adds_material: is_material_added(result),
            source: text!(
                language,
                "sheet-source",
                program = program(result),
                limits = result.protocol.name.as_str(),
                sum = result.protocol.sha256.get(..12).unwrap_or_default()
            ),
        }
    }
}

/// Whether something that is to be done adds material.
pub(super) fn is_material_added(result: &CaseResult) -> bool {
    pressing(result).any(|finding| adds_material(result, finding))
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
pub(super) fn shown(result: &CaseResult, language: Language) -> Vec<Shown<'_>> {
    let impressions = result.impressions.iter().enumerate();
    impressions
        .filter(|(_, impression)| !impression.superseded)
        .map(|(number, impression)| Shown {
            number,
            impression,
            name: capital(&impression_name(impression, language)),
            verdict: verdict_word(impression.verdict, language),
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

/// Which tray of the shelf to take for each impression that is to be taken again.
fn next_trays(result: &CaseResult, language: Language) -> impl Iterator<Item = Task> {
    let several = result.impressions.len() > 1;
    result.impressions.iter().filter_map(move |impression| {
        let name = several.then(|| impression_name(impression, language));
        Some(Task {
            text: next_tray(impression, language)?,
            places: name.into_iter().collect(),
        })
    })
}

/// `F2 thin cover, labial flange, patient's left`.
fn place(result: &CaseResult, finding: &Finding, language: Language) -> String {
    let place = finding_place(result, finding, language);
    let name = format!("{} {}", finding.id, check_name(&finding.check, language));
    if place.is_empty() {
        name
    } else {
        format!("{name}, {place}")
    }
}

fn not_judged(result: &CaseResult, language: Language) -> Vec<String> {
    let of_impressions = (result.impressions.iter())
        .filter(|impression| !impression.superseded)
        .flat_map(|impression| &impression.not_judged);
    let mut seen = BTreeSet::new();
    of_impressions
        .chain(&result.not_judged)
        .filter(|entry| entry.asked && seen.insert(entry.check.as_str()))
        .map(|entry| check_name(&entry.check, language))
        .collect()
}
