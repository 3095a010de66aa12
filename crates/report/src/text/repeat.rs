//! Repeated scans of one impression as text.

use super::columns::in_columns;
use super::compared::compared;
use super::format::{area, in_language, percent, two_decimals, unit};
use super::words::{side_word, zone_name};
use crate::studies::repeat::{
    FigureRepeatability, PlaceApart, RepeatResult, RepeatScan, SpreadResult,
};
use messages::{Language, Message, Value, message, text};

/// Repeated scans as text for people.
#[must_use]
pub fn repeat_text(result: &RepeatResult, language: Language) -> String {
    let head = message!("repeat-head", count = result.scans.len());
    let scans = (1..).zip(&result.scans);
    let aligned = scans.filter_map(|(number, scan)| aligned(number, scan));
    let freedom = result.scans.len().saturating_sub(1);
    let title = message!("repeat-title", freedom = freedom);
    let not_judged = result.not_judged.iter().map(|one| {
        let (figure, why) = (compared(&one.figure, language), one.reason.text(language));
        message!("control-not-judged", figures = format!("{figure} ({why})"))
    });
    [
        lines([head], "", language),
        lines(aligned, "  ", language),
        spread(&result.spread, language),
        "\n".to_owned(),
        lines([title], "", language),
        figures(result, language),
        lines(not_judged.chain([legend(result)]), "", language),
    ]
    .concat()
}

fn lines(said: impl IntoIterator<Item = Message>, before: &str, language: Language) -> String {
    let lines = said.into_iter();
    lines
        .map(|line| format!("{before}{}\n", line.text(language)))
        .collect()
}

/// How a scan lies on the first; `None` of the first.
fn aligned(number: u64, scan: &RepeatScan) -> Option<Message> {
    Some(message!(
        "repeat-aligned",
        scan = number,
        rms = Value::number(scan.rms_mm?, 3),
        share = percent(scan.fitting_share?),
        uncertainty = Value::number(scan.placing_uncertainty_mm?, 3)
    ))
}

/// The table of figures.
fn figures(result: &RepeatResult, language: Language) -> String {
    let head = vec![
        text!(language, "control-head-figure"),
        text!(language, "control-head-unit"),
        text!(language, "repeat-mean"),
        text!(language, "repeat-sd"),
        text!(language, "gauge-confidence"),
        text!(language, "repeat-limit"),
        text!(language, "repeat-range"),
        text!(language, "repeat-critical"),
        String::new(),
    ];
    let rows = result.figures.iter().map(|one| row(one, language));
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0, 8])
}

fn row(one: &FigureRepeatability, language: Language) -> Vec<String> {
    let number = |value: f64| in_language(format!("{value:.4}"), language);
    let mean = format!("{} ± {:.3}", two_decimals(one.mean), one.mean_uncertainty);
    let beyond = if one.is_beyond == Some(true) {
        text!(language, "repeat-beyond")
    } else {
        String::new()
    };
    vec![
        compared(&one.figure, language),
        unit(one.unit).trim().to_owned(),
        in_language(mean, language),
        number(one.standard_deviation),
        text!(
            language,
            "share-interval",
            low = number(one.from),
            high = number(one.to)
        ),
        number(one.repeatability_limit),
        number(one.range),
        number(one.critical_range),
        beyond,
    ]
}

fn legend(result: &RepeatResult) -> Message {
    let factor = result.critical_range_factor.unwrap_or(f64::NAN);
    message!(
        "repeat-legend",
        factor = Value::number(factor, 1),
        by = known_words(result),
        most = Value::figure(result.spread.to_mm.to_string())
    )
}

/// By whose standard deviation the critical range is.
fn known_words(result: &RepeatResult) -> Message {
    let is_known = result.figures.iter().any(|one| one.is_beyond.is_some());
    if result.figures.iter().any(|one| one.is_beyond == Some(true)) {
        message!("repeat-known-beyond")
    } else if is_known {
        message!("repeat-known-within")
    } else {
        message!("repeat-own")
    }
}

/// How far the scans lie apart.
fn spread(spread: &SpreadResult, language: Language) -> String {
    const MOST: usize = 8;
    let known = (spread.pooled_sd_mm.zip(spread.median_sd_mm)).zip(spread.p95_sd_mm);
    let known = known.map_or_else(
        || message!("repeat-no-spread"),
        |((pooled, median), p95)| {
            message!(
                "repeat-spread",
                pooled = Value::number(pooled, 3),
                median = Value::number(median, 3),
                p95 = Value::number(p95, 3),
                area = Value::figure(area(spread.area_judged_mm2))
            )
        },
    );
    let times = spread.sd_from_times.zip(spread.sd_to_times);
    let of_one_place = times.map(|(from, to)| {
        message!(
            "repeat-one-place",
            from = Value::figure(two_decimals(from)),
            to = Value::figure(two_decimals(to))
        )
    });
    let detectable = Value::number(spread.detectable_mm, 3);
    let differ = match spread.places.len() {
        0 => message!("repeat-nowhere", detectable = detectable),
        count => message!("repeat-places", detectable = detectable, count = count),
    };
    let places = spread.places.iter().take(MOST);
    let more = spread.places.len().saturating_sub(MOST);
    let more = (more > 0).then(|| message!("repeat-more", count = more));
    [
        lines([known], "", language),
        lines(of_one_place, "  ", language),
        lines([differ], "", language),
        lines(
            places.map(|place| place_line(place, language)),
            "  ",
            language,
        ),
        lines(more, "  ", language),
    ]
    .concat()
}

fn place_line(place: &PlaceApart, language: Language) -> Message {
    let zone = place.zone.as_deref().map_or_else(
        || text!(language, "repeat-off"),
        |zone| zone_name(zone, language),
    );
    let side = place.side.map(|side| side_word(side, language));
    let lies: Vec<String> = std::iter::once(zone).chain(side).collect();
    let line = message!(
        "repeat-place",
        id = place.id.as_str(),
        place = lies.join(", "),
        apart = Value::figure(two_decimals(place.apart_mm)),
        area = Value::figure(two_decimals(place.area_mm2))
    );
    match place.scan {
        Some(scan) => message!("repeat-stands-out", line = line, scan = scan),
        None => line,
    }
}
