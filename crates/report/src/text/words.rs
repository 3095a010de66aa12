//! The words for what a result holds, the same in summary, report and window.

use super::format;
use crate::result::{
    Arch, CaseResult, Cause, Finding, ImpressionResult, JawRelation, Landmark, Severity, Side,
    Stage, TrayChosen, TrayTrial, Verdict,
};
use messages::{Language, Message, Value, message, text};

/// At how many stations the record shows both ridges, where it does not show all.
pub(crate) fn part_of_the_record(relation: &JawRelation, language: Language) -> Option<String> {
    let not_shown = relation.stations_not_shown;
    (not_shown > 0).then(|| {
        text!(
            language,
            "record-in-part",
            measured = relation.interarch_space_mm.len(),
            all = relation.stations.len(),
            not_shown = not_shown
        )
    })
}

/// A name of the result in a language; as it is where the catalogue does not know it.
pub(super) fn named(name: &Message, as_it_is: &str, language: Language) -> String {
    let text = name.text(language);
    if text == name.key() {
        as_it_is.to_owned()
    } else {
        text
    }
}

/// The name of a zone.
#[must_use]
pub fn zone_name(zone: &str, language: Language) -> String {
    named(&Message::name("zone", zone), zone, language)
}

/// The name of a check, or of a part of the result that several checks need.
pub(crate) fn check_name(code: &str, language: Language) -> String {
    named(&Message::name("check", code), code, language)
}

/// Several checks by their names; by their codes where these are the same.
#[must_use]
pub fn check_names(codes: &[&str], language: Language) -> String {
    let named = codes.iter().map(|code| {
        let name = check_name(code, language);
        if name.replace(' ', "-") == *code {
            (*code).to_owned()
        } else {
            name
        }
    });
    named.collect::<Vec<_>>().join(", ")
}

/// How a vertical dimension or centric relation was found: `by lip contact`.
pub(crate) fn found_by(words: &str, language: Language) -> String {
    named(&Message::name("found", words), words, language)
}

/// What a place of a scan is: `short border`.
pub(crate) fn place_kind(kind: &str, language: Language) -> String {
    named(&Message::name("place", kind), kind, language)
}

/// The name of a landmark without its side.
#[must_use]
pub fn landmark_word(name: &str, language: Language) -> String {
    named(&Message::name("landmark", name), name, language)
}

/// A landmark with its side.
pub(crate) fn landmark_name(landmark: &Landmark, language: Language) -> String {
    let name = landmark_word(&landmark.name, language);
    match landmark.side {
        Some(side) => format!("{name} ({})", side_word(side, language)),
        None => name,
    }
}

/// `maxillary wash`, or as much of it as is known.
#[must_use]
pub fn impression_name(impression: &ImpressionResult, language: Language) -> String {
    impression_message(impression).text(language)
}

/// [`impression_name`] within a sentence.
pub(super) fn impression_message(impression: &ImpressionResult) -> Message {
    let jaw = match impression.arch.declared.or(impression.arch.detected) {
        Some(Arch::Maxillary) => "maxillary",
        Some(Arch::Mandibular) => "mandibular",
        None => "unknown",
    };
    match impression.stage {
        Stage::FirstPass => message!("impression-before-wash", jaw = jaw),
        Stage::Wash => message!("impression-wash", jaw = jaw),
        Stage::Single => message!("impression-one-step", jaw = jaw),
    }
}

/// The words of a result for a jaw and a stage, as people say them: `maxillary first_pass` is
/// `maxillary, before the wash`.
pub(crate) fn group_words(words: &str, language: Language) -> String {
    let said = words
        .split(' ')
        .map(|word| named(&Message::name("group", word), word, language));
    said.collect::<Vec<_>>().join(", ")
}

/// The word for a side.
#[must_use]
pub fn side_word(side: Side, language: Language) -> String {
    match side {
        Side::Right => text!(language, "patient-side", side = "right"),
        Side::Left => text!(language, "patient-side", side = "left"),
    }
}

/// Where a finding lies, in words; empty where it is a matter of the whole.
#[must_use]
pub fn finding_place(result: &CaseResult, finding: &Finding, language: Language) -> String {
    let several = result.impressions.len() > 1;
    let impression = finding
        .impression
        .and_then(|number| result.impressions.get(usize::try_from(number).ok()?))
        .filter(|_| several)
        .map(|impression| impression_name(impression, language));
    let zone = finding.zone.as_deref();
    let zone = zone.map(|zone| zone_name(zone, language));
    let side = finding.side.map(|side| side_word(side, language));
    let parts: Vec<String> = [impression, zone, side].into_iter().flatten().collect();
    parts.join(", ")
}

/// Where a finding that asks for relief lies on the tray in the hand, in words; `None` of
/// others, and where that is not known.
#[must_use]
pub fn place_on_tray(result: &CaseResult, finding: &Finding, language: Language) -> Option<String> {
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
    Some(text!(
        language,
        "place-on-tray",
        rim = format!("{rim:.0}"),
        front = format!("{front:.0}")
    ))
}

/// Which tray of the shelf an impression was taken in, and how certain that is.
pub(crate) fn tray_found(chosen: &TrayChosen, language: Language) -> String {
    let lying = |trial: &TrayTrial| {
        message!(
            "tray-lies",
            share = Value::figure(format::percent(trial.fitting_share)),
            rms = Value::figure(format!("{:.3}", trial.rms_mm))
        )
    };
    let TrayChosen { trays, best, next } = chosen;
    let trays = trays.to_string();
    let found = match next {
        None => message!(
            "tray-found",
            trays = trays,
            best = best.name.as_str(),
            lies = lying(best)
        ),
        Some(next) => message!(
            "tray-found-before",
            trays = trays,
            best = best.name.as_str(),
            lies = lying(best),
            next = next.name.as_str(),
            next_lies = lying(next)
        ),
    };
    found.text(language)
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
pub fn verdict_word(verdict: Verdict, language: Language) -> String {
    match verdict {
        Verdict::Accept => text!(language, "verdict-accept"),
        Verdict::Rework => text!(language, "verdict-rework"),
        Verdict::Retake => text!(language, "verdict-retake"),
        Verdict::Undecided => text!(language, "verdict-undecided"),
    }
}

/// A verdict by the word of the result for it.
pub(crate) fn verdict_name(word: &str, language: Language) -> String {
    named(&Message::name("verdict", word), word, language)
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

/// The word for how a finding came out, and why: a question and a missing thing are no
/// figures that are too close to their limits.
#[must_use]
pub fn cause_word(finding: &Finding, language: Language) -> String {
    match finding.cause {
        Cause::Question => text!(language, "cause-question"),
        Cause::Fault => text!(language, "cause-fault"),
        Cause::Missing | Cause::Parcel => text!(language, "cause-missing"),
        Cause::Look => text!(language, "cause-look"),
        Cause::Note => text!(language, "cause-note"),
        Cause::HeldBack => text!(language, "cause-held-back"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use judge::words::{ZONES, zone};
    use judge::{Check, Part};
    use measure::landmarks::LandmarkName;

    #[test]
    fn every_way_to_find_a_relation_is_known_in_each_language() {
        use judge::{CentricRelationBy as Centric, VerticalDimensionBy as Vertical};
        let vertical = [
            Vertical::RestPosition,
            Vertical::LipContact,
            Vertical::ExistingDenture,
            Vertical::Speech,
            Vertical::Swallowing,
            Vertical::Other,
        ];
        let centric = [
            Centric::Guided,
            Centric::GothicArch,
            Centric::Swallowing,
            Centric::Other,
        ];
        let vertical = vertical.map(Vertical::in_words).into_iter();
        for words in vertical.chain(centric.map(Centric::in_words)) {
            assert_eq!(found_by(words, Language::English), words);
            for language in [Language::German, Language::Spanish] {
                assert_ne!(found_by(words, language), words);
            }
        }
    }

    #[test]
    fn every_name_of_a_result_is_known_in_each_language_and_the_same_in_english() {
        let checks = Check::ALL.map(Check::code).into_iter();
        let parts = Part::ALL.map(Part::name);
        let checks = checks.chain(parts).map(|code| ("check", code));
        let zones = ZONES.map(zone).into_iter().map(|name| ("zone", name));
        let landmarks = LandmarkName::ALL.map(LandmarkName::in_words);
        let landmarks = landmarks.into_iter().map(|name| ("landmark", name));
        for (kind, name) in checks.chain(zones).chain(landmarks) {
            let message = Message::name(kind, name);
            for language in Language::ALL {
                assert_ne!(message.text(language), message.key(), "{language}");
            }
            let english = message.text(Language::English);
            assert_eq!(english.replace('-', " "), name.replace('-', " "));
        }
    }
}
