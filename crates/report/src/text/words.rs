//! The words for what a result holds, the same in summary, report and window.

use super::format;
use crate::result::{
    Arch, CaseResult, Finding, ImpressionResult, Landmark, Severity, Side, Stage, Verdict,
};

/// A landmark with its side.
pub(crate) fn landmark_name(landmark: &Landmark) -> String {
    match landmark.side {
        Some(side) => format!("{} ({})", landmark.name, side_word(side)),
        None => landmark.name.clone(),
    }
}

/// `maxillary wash`, or as much of it as is known.
#[must_use]
pub fn impression_name(impression: &ImpressionResult) -> String {
    let jaw = match impression.arch.declared.or(impression.arch.detected) {
        Some(arch) => arch_word(arch),
        None => "unknown jaw",
    };
    match impression.stage {
        Stage::FirstPass => format!("{jaw} first pass"),
        Stage::Wash => format!("{jaw} wash"),
        Stage::Single => format!("{jaw} impression"),
    }
}

/// The word for a side.
pub(crate) fn side_word(side: Side) -> &'static str {
    match side {
        Side::Right => "patient's right",
        Side::Left => "patient's left",
    }
}

/// Where a finding lies, in words; empty where it is a matter of the whole.
#[must_use]
pub fn finding_place(result: &CaseResult, finding: &Finding) -> String {
    let several = result.impressions.len() > 1;
    let impression = finding
        .impression
        .and_then(|number| result.impressions.get(usize::try_from(number).ok()?))
        .filter(|_| several)
        .map(impression_name);
    let side = finding.side.map(|side| side_word(side).to_owned());
    let parts: Vec<String> = [impression, finding.zone.clone(), side]
        .into_iter()
        .flatten()
        .collect();
    parts.join(", ")
}

/// The figure of a finding with its uncertainty, its limit and their unit;
/// `None` where it is no matter of figures.
#[must_use]
pub fn finding_figure(finding: &Finding) -> Option<String> {
    let (measured, limit) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    Some(format!(
        "{}, limit {limit}{}",
        format::quantity(measured, finding.uncertainty, unit),
        format::unit(unit)
    ))
}

/// The word for a jaw.
pub(crate) fn arch_word(arch: Arch) -> &'static str {
    match arch {
        Arch::Maxillary => "maxillary",
        Arch::Mandibular => "mandibular",
    }
}

/// The word for a verdict.
#[must_use]
pub fn verdict_word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Accept => "accept",
        Verdict::Rework => "rework",
        Verdict::Retake => "retake",
        Verdict::Undecided => "undecided",
    }
}

/// What a verdict asks for, in one sentence.
#[must_use]
pub fn what_to_do(result: &CaseResult) -> &'static str {
    let only_first_passes = result
        .impressions
        .iter()
        .all(|impression| impression.stage == Stage::FirstPass);
    match result.verdict {
        Verdict::Accept if only_first_passes => "ready for the wash, as far as it was judged.",
        Verdict::Accept => "it can be worked from, as far as it was judged.",
        Verdict::Rework => "mend the places that fail, then take a wash.",
        Verdict::Retake => "take the impression again.",
        Verdict::Undecided => "it cannot be judged from what was given; do what is said below.",
    }
}

/// The word for how a check came out.
#[must_use]
pub fn severity_word(severity: Severity) -> &'static str {
    match severity {
        Severity::Fail => "FAIL",
        Severity::Borderline => "BORDERLINE",
        Severity::Note => "note",
    }
}
