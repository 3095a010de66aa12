//! The headline: what a verdict asks for, from what caused it.

use super::words::impression_name;
use crate::result::{Arch, CaseResult, Cause, Finding, ImpressionResult, Stage, Verdict};

/// What a verdict asks for, in one to three sentences, by its causes.
#[must_use]
pub fn what_to_do(result: &CaseResult) -> String {
    let of = |cause| of_cause(result, cause);
    let questions = of(Cause::Question);
    match result.verdict {
        Verdict::Accept => ready(result),
        Verdict::Retake => with_question(retake(result), result),
        Verdict::Rework => with_question(rework(result), result),
        Verdict::Undecided if !questions.is_empty() => {
            let [question, it] = match questions.len() {
                1 => ["the question", "it is answered"],
                _ => ["the questions", "they are answered"],
            };
            format!(
                "Answer {question} below, then check again. Do nothing to the impression until {it}."
            )
        }
        Verdict::Undecided => undecided(result),
    }
}

fn of_cause(result: &CaseResult, cause: Cause) -> Vec<&Finding> {
    let findings = result.findings.iter();
    findings.filter(|f| f.cause == cause).collect()
}

/// The impressions that are to be worked from: those that no wash has followed.
fn current(result: &CaseResult) -> Vec<&ImpressionResult> {
    let jaw = |i: &ImpressionResult| i.arch.declared;
    let has_wash = |of: &ImpressionResult| {
        let mut washes = result.impressions.iter().filter(|i| i.stage == Stage::Wash);
        jaw(of).is_some() && washes.any(|wash| jaw(wash) == jaw(of))
    };
    let impressions = result.impressions.iter();
    impressions
        .filter(|of| of.stage != Stage::FirstPass || !has_wash(of))
        .collect()
}

fn ready(result: &CaseResult) -> String {
    let before_the_wash = current(result).iter().all(|i| i.stage == Stage::FirstPass);
    let of_impressions = result.impressions.iter().flat_map(|i| &i.not_judged);
    let mut not_judged = of_impressions.chain(&result.not_judged);
    let left_out = not_judged.any(|entry| entry.asked);
    format!(
        "Ready for the {}{}.",
        if before_the_wash {
            "wash"
        } else {
            "laboratory"
        },
        if left_out {
            ", subject to the items listed as not judged"
        } else {
            ""
        }
    )
}

/// The impressions that a fault with this remedy lies on; `None` for the case itself.
fn at_fault<'a>(result: &'a CaseResult, faults: &[&Finding]) -> Vec<&'a ImpressionResult> {
    let mut numbers: Vec<u64> = faults.iter().filter_map(|f| f.impression).collect();
    numbers.sort_unstable();
    numbers.dedup();
    let impression = |number: u64| result.impressions.get(usize::try_from(number).ok()?);
    numbers.into_iter().filter_map(impression).collect()
}

fn retake(result: &CaseResult) -> String {
    let faults = of_cause(result, Cause::Fault);
    let retaken: Vec<&Finding> = faults.into_iter().filter(|f| f.asks_for_retake()).collect();
    match at_fault(result, &retaken).as_slice() {
        [one] if current(result).len() > 1 => match one.arch.declared.or(one.arch.detected) {
            Some(Arch::Maxillary) => "Take the upper impression again.".to_owned(),
            Some(Arch::Mandibular) => "Take the lower impression again.".to_owned(),
            None => "Take the impression again.".to_owned(),
        },
        [] | [_] => "Take the impression again.".to_owned(),
        _ => "Take both impressions again.".to_owned(),
    }
}

fn rework(result: &CaseResult) -> String {
    let faults = of_cause(result, Cause::Fault);
    let impressions = at_fault(result, &faults);
    if impressions.is_empty() {
        let ids = names(&faults);
        return format!("Correct {ids} before the set is used; the impressions themselves pass.");
    }
    let jaw = match impressions.as_slice() {
        [one] if current(result).len() > 1 => format!(" on the {}", impression_name(one)),
        _ => String::new(),
    };
    let next = if impressions.iter().all(|i| i.stage == Stage::Wash) {
        "repeat the wash"
    } else if impressions.iter().any(|i| i.stage == Stage::Wash) {
        "take the wash of each"
    } else {
        "take the wash impression"
    };
    format!("Correct the places marked FAIL{jaw}, then {next}.")
}

/// What is clear goes first; a question about another impression is named all the same.
fn with_question(sentence: String, result: &CaseResult) -> String {
    match at_fault(result, &of_cause(result, Cause::Question)).as_slice() {
        [] => sentence,
        [one, ..] => format!(
            "{sentence} Answer the question on the {} first.",
            impression_name(one)
        ),
    }
}

fn undecided(result: &CaseResult) -> String {
    let [missing, look, parcel] =
        [Cause::Missing, Cause::Look, Cause::Parcel].map(|cause| of_cause(result, cause));
    let mut sentences: Vec<String> = Vec::new();
    if !missing.is_empty() {
        sentences.push(format!(
            "No verdict is possible yet: {}. Supply what is listed below, then check again.",
            joined(
                missing
                    .iter()
                    .map(|finding| lack(result, finding))
                    .collect()
            )
        ));
    }
    if !look.is_empty() {
        let [places, need] = match look.len() {
            1 => ["One place".to_owned(), "needs".to_owned()],
            count => [format!("{count} places"), "need".to_owned()],
        };
        sentences.push(format!(
            "{places} {need} a look before this can be accepted: {}.",
            names(&look)
        ));
    }
    if !parcel.is_empty() {
        if missing.is_empty() && look.is_empty() {
            sentences.push(
                match current(result).len() {
                    1 => "The impression can be worked from.",
                    _ => "The impressions can be worked from.",
                }
                .to_owned(),
            );
        }
        let lacks = joined(parcel.iter().map(|finding| lack(result, finding)).collect());
        sentences.push(format!("Complete the parcel: {lacks}."));
    }
    if sentences.is_empty() {
        return "No verdict is possible yet: not every impression could be measured.".to_owned();
    }
    sentences.join(" ")
}

/// What a finding says is missing, in a few words.
fn lack(result: &CaseResult, finding: &Finding) -> &'static str {
    use judge::Check;
    let number = finding.impression.and_then(|n| usize::try_from(n).ok());
    let impression = number.and_then(|number| result.impressions.get(number));
    let is_known_in_part = impression.is_some_and(|one| one.cover.is_some());
    match finding.check.parse::<Check>() {
        Ok(Check::CoverNotJudged) if is_known_in_part => {
            "the material thickness is known in part only"
        }
        Ok(Check::CoverNotJudged) => "the material thickness could not be measured",
        Ok(Check::CoverUncertainty) => "the material thickness is too uncertain",
        Ok(Check::BorderNotJudged) => "the border could not be measured",
        Ok(Check::ScanEnds) => "the scan ends before the border does",
        Ok(Check::VoidUnseen | Check::ScanResolution | Check::ScanQuality) => {
            "the scan is too coarse"
        }
        Ok(Check::TissueArea) => "part of the tissue surface was not scanned",
        Ok(Check::Hole) => "the scan has a hole",
        Ok(Check::TissueStop) => "a tissue stop was not scanned",
        Ok(Check::JawRelationNotJudged) => "the jaw-relation record could not be measured",
        Ok(Check::WashMissing) => match finding.arch {
            Some(Arch::Maxillary) => "the upper wash is missing",
            Some(Arch::Mandibular) => "the lower wash is missing",
            None => "a wash is missing",
        },
        Ok(Check::PrescriptionMissing) => "prescription missing",
        Ok(Check::DisinfectionNotStated) => "disinfection not stated",
        Ok(Check::ParcelIncomplete) => "contents incomplete",
        _ => "something is missing",
    }
}

/// `F1, F2 and F4`.
fn names(findings: &[&Finding]) -> String {
    joined(findings.iter().map(|finding| finding.id.as_str()).collect())
}

/// Each once: `one, another and a third`.
fn joined(mut parts: Vec<&str>) -> String {
    let mut seen = std::collections::BTreeSet::new();
    parts.retain(|part| seen.insert(*part));
    match parts.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
        None => String::new(),
    }
}
