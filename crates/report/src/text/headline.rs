//! The headline: what a verdict asks for, from what caused it.

use super::words::impression_message;
use crate::result::{Arch, CaseResult, Cause, Finding, ImpressionResult, Stage, Verdict};
use messages::{Language, Message, Value, message};

/// What a verdict asks for, in one to three sentences, by its causes.
#[must_use]
pub fn what_to_do(result: &CaseResult, language: Language) -> String {
    asked_for(result).text(language)
}

/// [`what_to_do`] as a message of the catalogue.
pub(crate) fn asked_for(result: &CaseResult) -> Message {
    let questions = of_cause(result, Cause::Question);
    match result.verdict {
        Verdict::Accept => ready(result),
        Verdict::Retake => retake(result).then(question_first(result)),
        Verdict::Rework => rework(result).then(question_first(result)),
        Verdict::Undecided if !questions.is_empty() => {
            message!("headline-answer", count = questions.len())
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

fn ready(result: &CaseResult) -> Message {
    let before_the_wash = current(result).iter().all(|i| i.stage == Stage::FirstPass);
    let of_impressions = result.impressions.iter().flat_map(|i| &i.not_judged);
    let mut not_judged = of_impressions.chain(&result.not_judged);
    let next = if before_the_wash {
        "wash"
    } else {
        "laboratory"
    };
    if not_judged.any(|entry| entry.asked) {
        message!("headline-ready-in-part", next = next)
    } else {
        message!("headline-ready", next = next)
    }
}

/// The impressions that a fault with this remedy lies on; `None` for the case itself.
fn at_fault<'a>(result: &'a CaseResult, faults: &[&Finding]) -> Vec<&'a ImpressionResult> {
    let mut numbers: Vec<u64> = faults.iter().filter_map(|f| f.impression).collect();
    numbers.sort_unstable();
    numbers.dedup();
    let impression = |number: u64| result.impressions.get(usize::try_from(number).ok()?);
    numbers.into_iter().filter_map(impression).collect()
}

fn retake(result: &CaseResult) -> Message {
    let faults = of_cause(result, Cause::Fault);
    let retaken: Vec<&Finding> = faults.into_iter().filter(|f| f.asks_for_retake()).collect();
    let which = match at_fault(result, &retaken).as_slice() {
        [one] if current(result).len() > 1 => match one.arch.declared.or(one.arch.detected) {
            Some(Arch::Maxillary) => "upper",
            Some(Arch::Mandibular) => "lower",
            None => "one",
        },
        [] | [_] => "one",
        _ => "both",
    };
    message!("headline-retake", which = which)
}

fn rework(result: &CaseResult) -> Message {
    let faults = of_cause(result, Cause::Fault);
    let impressions = at_fault(result, &faults);
    if impressions.is_empty() {
        return message!("headline-correct", findings = ids(&faults));
    }
    let next = if impressions.iter().all(|i| i.stage == Stage::Wash) {
        "repeat"
    } else if impressions.iter().any(|i| i.stage == Stage::Wash) {
        "each"
    } else {
        "take"
    };
    match impressions.as_slice() {
        [one] if current(result).len() > 1 => message!(
            "headline-rework-one",
            impression = impression_message(one),
            next = next
        ),
        _ => message!("headline-rework", next = next),
    }
}

/// What is clear goes first; a question about another impression is named all the same.
fn question_first(result: &CaseResult) -> Option<Message> {
    let asked = at_fault(result, &of_cause(result, Cause::Question));
    let one = asked.first()?;
    Some(message!(
        "headline-question-first",
        impression = impression_message(one)
    ))
}

fn undecided(result: &CaseResult) -> Message {
    let [missing, look, parcel] =
        [Cause::Missing, Cause::Look, Cause::Parcel].map(|cause| of_cause(result, cause));
    let mut said = Message::default();
    if !missing.is_empty() {
        said = said.then(message!(
            "headline-missing",
            lacks = lacks(result, &missing)
        ));
    }
    if !look.is_empty() {
        said = said.then(message!(
            "headline-look",
            count = look.len(),
            findings = ids(&look)
        ));
    }
    if !parcel.is_empty() {
        if missing.is_empty() && look.is_empty() {
            said = said.then(message!(
                "headline-can-be-worked-from",
                count = current(result).len()
            ));
        }
        said = said.then(message!("headline-parcel", lacks = lacks(result, &parcel)));
    }
    if said.sentences().is_empty() {
        return message!("headline-not-measured");
    }
    said
}

/// What findings say is missing, each once.
fn lacks(result: &CaseResult, findings: &[&Finding]) -> Value {
    let mut all: Vec<Message> = Vec::new();
    for finding in findings {
        let lack = lack(result, finding);
        if !all.contains(&lack) {
            all.push(lack);
        }
    }
    Value::list(all)
}

/// What a finding says is missing, in a few words.
fn lack(result: &CaseResult, finding: &Finding) -> Message {
    use judge::Check;
    let number = finding.impression.and_then(|n| usize::try_from(n).ok());
    let impression = number.and_then(|number| result.impressions.get(number));
    let is_known_in_part = impression.is_some_and(|one| one.cover.is_some());
    match finding.check.parse::<Check>() {
        Ok(Check::CoverNotJudged) if is_known_in_part => message!("lack-thickness-in-part"),
        Ok(Check::CoverNotJudged) => message!("lack-thickness"),
        Ok(Check::CoverUncertainty) => message!("lack-thickness-uncertain"),
        Ok(Check::BorderNotJudged) => message!("lack-border"),
        Ok(Check::ScanEnds) => message!("lack-scan-ends"),
        Ok(Check::VoidUnseen | Check::ScanResolution | Check::ScanQuality) => {
            message!("lack-scan-coarse")
        }
        Ok(Check::TissueArea) => message!("lack-tissue-surface"),
        Ok(Check::Hole) => message!("lack-hole"),
        Ok(Check::TissueStop) => message!("lack-tissue-stop"),
        Ok(Check::JawRelationNotJudged) => message!("lack-record"),
        Ok(Check::WashMissing) => message!(
            "lack-wash",
            jaw = match finding.arch {
                Some(Arch::Maxillary) => "upper",
                Some(Arch::Mandibular) => "lower",
                None => "unknown",
            }
        ),
        Ok(Check::PrescriptionMissing) => message!("lack-prescription"),
        Ok(Check::DisinfectionNotStated) => message!("lack-disinfection"),
        Ok(Check::ParcelIncomplete) => message!("lack-contents"),
        _ => message!("lack-something"),
    }
}

/// `F1, F2 and F4`.
fn ids(findings: &[&Finding]) -> Value {
    let mut all: Vec<&str> = Vec::new();
    for finding in findings {
        if !all.contains(&finding.id.as_str()) {
            all.push(&finding.id);
        }
    }
    Value::list(all)
}
