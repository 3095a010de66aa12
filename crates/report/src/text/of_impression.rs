//! What the summary says of each impression.

use super::format;
use super::next_tray::next_tray;
use super::words::{
    impression_name, landmark_name, place_kind, side_word, tray_found, verdict_word, zone_name,
};
use crate::result::{ChangeInTransit, Cover, ImpressionResult, LandmarkStatus, PlaceThen, Stage};
use messages::{Language, Message, Value, message, text};
use std::fmt::{self, Write};

pub(super) fn write_impression(
    out: &mut String,
    impression: &ImpressionResult,
    has_question: bool,
    language: Language,
) -> fmt::Result {
    writeln!(
        out,
        "  {}: {}",
        impression_name(impression, language),
        verdict_word(impression.verdict, language)
    )?;
    if let Some(mm) = impression.scan.cut_width_mm {
        let line = text!(
            language,
            "summary-joined",
            parts = impression.scan.parts.len().to_string(),
            width = Value::figure(format!("{mm:.1} mm"))
        );
        writeln!(out, "    {line}")?;
    }
    if let Some(chosen) = &impression.tray_chosen {
        writeln!(out, "    {}", tray_found(chosen, language))?;
    }
    if let Some(next) = next_tray(impression, language) {
        writeln!(out, "    {next}")?;
    }
    if let Some(cover) = impression.cover.as_ref().filter(|_| !has_question) {
        write_cover(out, cover, language)?;
    }
    if impression.stops_relieved && impression.stage == Stage::Wash {
        writeln!(out, "    {}", text!(language, "summary-stops-relieved"))?;
    }
    if has_question {
        return Ok(());
    }
    write_colour(out, impression, language)?;
    write_landmarks(out, impression, language)?;
    write_change_in_transit(out, impression, language)
}

/// Material thickness, and the declared tissue stops that show.
fn write_cover(out: &mut String, cover: &Cover, language: Language) -> fmt::Result {
    let values = cover.min_mm.zip(cover.median_mm).zip(cover.uncertainty_mm);
    if let Some(((least, median), doubt)) = values {
        let [median, doubt] = format::parts(median, Some(doubt), 0);
        let least: Value = if least <= 0.0 {
            message!("summary-no-material").into()
        } else {
            let [least, _] = format::parts(least, cover.uncertainty_mm, 0);
            Value::figure(format!("{least} mm"))
        };
        let line = text!(
            language,
            "summary-thickness",
            least = least,
            median = Value::figure(format!("{median} mm")),
            doubt = Value::figure(format!("{doubt} mm")),
            area = Value::figure(format::area(cover.area_judged_mm2))
        );
        writeln!(out, "    {line}")?;
    }
    let stops = cover
        .spots
        .iter()
        .filter(|spot| spot.stop.is_some())
        .count();
    if stops > 0 {
        let line = text!(language, "summary-stops-show", stops = stops);
        writeln!(out, "    {line}")?;
    }
    Ok(())
}

/// What changed since the impression was sent, and what became of the places seen then.
fn write_change_in_transit(
    out: &mut String,
    impression: &ImpressionResult,
    language: Language,
) -> fmt::Result {
    let sent = impression.as_sent.as_ref();
    let Some(change) = sent.and_then(|sent| sent.change.as_ref()) else {
        return Ok(());
    };
    let within = |value: f64, doubt: f64| {
        let [value, doubt] = format::parts(value, Some(doubt), 0);
        Value::figure(format!("{value} ± {doubt}"))
    };
    let (larger, apart) = (change.larger_percent, change.heels_apart_mm);
    let line = text!(
        language,
        "summary-since-sent",
        by = within(larger.abs(), change.larger_uncertainty_percent),
        size = if larger < 0.0 { "smaller" } else { "larger" },
        heels = within(apart.abs(), change.heels_apart_uncertainty_mm),
        way = if apart < 0.0 { "nearer" } else { "farther" },
        places = change.damage.len()
    );
    writeln!(out, "    {line}")?;
    if change.places.is_empty() {
        return Ok(());
    }
    write_places_then(out, change, language)
}

fn write_places_then(
    out: &mut String,
    change: &ChangeInTransit,
    language: Language,
) -> fmt::Result {
    let of = |state| {
        change
            .places
            .iter()
            .filter(move |then| then.found_again == state)
    };
    let line = text!(
        language,
        "summary-places-sent",
        all = change.places.len(),
        again = of(Some(true)).count()
    );
    write!(out, "    {line}")?;
    for (state, words) in [
        (Some(false), message!("summary-places-gone")),
        (None, message!("summary-places-not-measured")),
    ] {
        let names: Vec<String> = of(state).map(|then| place_then(then, language)).collect();
        write_named(out, &words, &names, language)?;
    }
    writeln!(out)
}

/// `; gone: one, another`, where there are any.
pub(super) fn write_named(
    out: &mut String,
    words: &Message,
    names: &[String],
    language: Language,
) -> fmt::Result {
    if names.is_empty() {
        return Ok(());
    }
    write!(out, "; {}: {}", words.text(language), names.join(", "))
}

/// A place of the scan as sent, in words.
fn place_then(then: &PlaceThen, language: Language) -> String {
    let (kind, zone) = (
        place_kind(&then.kind, language),
        zone_name(&then.zone, language),
    );
    match then.side {
        Some(side) => format!("{kind} ({zone}, {})", side_word(side, language)),
        None => format!("{kind} ({zone})"),
    }
}

/// How much tray the colours show, and what they were taken for.
fn write_colour(
    out: &mut String,
    impression: &ImpressionResult,
    language: Language,
) -> fmt::Result {
    let Some(colour) = &impression.tray_colour else {
        return Ok(());
    };
    let line = text!(
        language,
        "summary-colour",
        tray = colour.tray.as_str(),
        source = if colour.inferred { "found" } else { "given" },
        shown = Value::figure(format::quantity(colour.tray_seen_mm2, None, "mm2")),
        all = Value::figure(format::area(colour.area_judged_mm2)),
        material = colour.material.as_str()
    );
    writeln!(out, "    {line}")
}

/// How many landmarks were recorded, and which were not.
fn write_landmarks(
    out: &mut String,
    impression: &ImpressionResult,
    language: Language,
) -> fmt::Result {
    let landmarks = &impression.landmarks;
    if landmarks.is_empty() {
        return Ok(());
    }
    let of = |status| landmarks.iter().filter(move |l| l.status == status);
    let recorded = of(LandmarkStatus::Recorded).count();
    let verifiable = landmarks.len() - of(LandmarkStatus::Reached).count();
    let line = text!(
        language,
        "summary-landmarks",
        recorded = recorded.to_string(),
        all = verifiable.to_string()
    );
    write!(out, "    {line}")?;
    for (status, words) in [
        (LandmarkStatus::Reached, message!("landmarks-reached")),
        (LandmarkStatus::CutShort, message!("landmarks-cut-short")),
        (LandmarkStatus::Obscured, message!("landmarks-obscured")),
        (LandmarkStatus::NotFound, message!("landmarks-not-found")),
    ] {
        let names: Vec<String> = of(status).map(|l| landmark_name(l, language)).collect();
        write_named(out, &words, &names, language)?;
    }
    writeln!(out)
}
