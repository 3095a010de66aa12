//! The words for what a result holds, the same in summary, report and window.

use super::format;
use crate::result::{
    Arch, CaseResult, Cause, Finding, ImpressionResult, JawRelation, Landmark, Severity, Side,
    Stage, TrayChosen, TrayTrial, Verdict,
};

/// At how many stations the record shows both ridges, where it does not show all.
pub(crate) fn part_of_the_record(relation: &JawRelation) -> Option<String> {
    let (not_shown, all) = (relation.stations_not_shown, relation.stations.len());
    (not_shown > 0).then(|| {
        format!(
            "The record shows a part of the arch: the space was measured at {} of {all} stations; at {not_shown} the record does not show both ridges.",
            relation.interarch_space_mm.len()
        )
    })
}

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
        Stage::FirstPass => format!("{jaw} impression before the wash"),
        Stage::Wash => format!("{jaw} wash"),
        Stage::Single => format!("{jaw} impression"),
    }
}

/// The words of a result for a jaw and a stage, as people say them: `maxillary first_pass` is
/// `maxillary, before the wash`.
pub(crate) fn stage_words(words: &str) -> String {
    let said = words.split(' ').map(|word| match word {
        "first_pass" => "before the wash",
        "single" => "one-step",
        "unknown" => "jaw not known",
        word => word,
    });
    said.collect::<Vec<_>>().join(", ")
}

/// The word for a side.
#[must_use]
pub fn side_word(side: Side) -> &'static str {
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

/// Where a finding that asks for relief lies on the tray in the hand, in words; `None` of
/// others, and where that is not known.
#[must_use]
pub fn place_on_tray(result: &CaseResult, finding: &Finding) -> Option<String> {
    if finding.severity == Severity::Note {
        return None;
    }
    let impression = result
        .impressions
        .get(usize::try_from(finding.impression?).ok()?)?;
    let mut spots = impression.cover.as_ref()?.spots.iter();
    let spot = spots.find(|spot| Some(&spot.id) == finding.refers_to.as_ref())?;
    let on_tray = spot.on_tray.as_ref()?;
    let (rim, front) = (on_tray.to_outer_rim_mm?, on_tray.to_front_mm?);
    Some(format!(
        "{rim:.0} mm from the rim on the lip and cheek side, {front:.0} mm from the middle of that rim at the \
         front"
    ))
}

/// Which tray of the shelf an impression was taken in, and how certain that is.
pub(crate) fn tray_found(chosen: &TrayChosen) -> String {
    let lying = |trial: &TrayTrial| {
        let (share, rms_mm) = (format::percent(trial.fitting_share), trial.rms_mm);
        format!("{share} of the outer surface within {rms_mm:.3} mm (root mean square)")
    };
    let TrayChosen { trays, best, next } = chosen;
    let beside = next.as_ref().map_or_else(String::new, |next| {
        format!("; next is {}, {}", next.name, lying(next))
    });
    format!(
        "tray found on the shelf of {trays}: {}, {}{beside}",
        best.name,
        lying(best)
    )
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

/// The exit status of `check` for a verdict; 2 is for wrong use and unreadable input.
#[must_use]
pub fn exit_status(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Accept => 0,
        Verdict::Rework | Verdict::Retake => 1,
        Verdict::Undecided => 3,
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

/// The word for how a finding came out, and why: a question and a missing thing are no
/// figures that are too close to their limits.
#[must_use]
pub fn cause_word(finding: &Finding) -> &'static str {
    match finding.cause {
        Cause::Question => "QUESTION",
        Cause::Fault => "FAIL",
        Cause::Missing | Cause::Parcel => "MISSING",
        Cause::Look => "LOOK",
        Cause::Note => "note",
        Cause::HeldBack => "held back",
    }
}
