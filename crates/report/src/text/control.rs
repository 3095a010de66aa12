//! A check standard over time as text.

use super::columns::in_columns;
use super::compared::compared;
use super::format::in_language;
use crate::result::Timed;
use crate::studies::control::{ControlFigure, ControlResult, ControlSignal, InControl, NotCharted};
use messages::{Language, Message, Value, message, text};
use statistics::control::Rule;
use std::fmt::Write;

/// A check standard over time as text for people.
#[must_use]
pub fn control_text(result: &ControlResult, language: Language) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result, language);
    text
}

/// All of it in one sentence, and what to do.
pub(crate) fn sentence(result: &ControlResult, language: Language) -> String {
    let count = result.measured.len();
    let latest = result.measured.last().map_or("", String::as_str);
    let standard = result.of.message();
    let said = match result.outcome {
        InControl::InControl => {
            let earlier: usize = result.figures.iter().map(|one| one.signals.len()).sum();
            let earlier = (earlier > 0).then(|| message!("control-earlier", count = earlier));
            let within = message!(
                "control-in",
                count = count,
                standard = standard,
                latest = latest,
                from = result.limits_from
            );
            within.then(earlier)
        }
        InControl::TooFew => message!("control-too-few", count = count, standard = standard),
        InControl::OutOfControl => {
            let is_latest = |signal: &ControlSignal| signal.last == count;
            let spoken = result.figures.iter();
            let spoken = spoken
                .filter(|one| one.signals.iter().any(is_latest))
                .count();
            message!(
                "control-out",
                count = count,
                standard = standard,
                latest = latest,
                spoken = spoken,
                figures = result.figures.len()
            )
        }
    };
    said.text(language)
}

/// When the standard was scanned, and what the limits are made from; `None` of no measurement.
pub(crate) fn scanned(result: &ControlResult, language: Language) -> Option<String> {
    let (first, last) = (result.measured.first()?, result.measured.last()?);
    Some(text!(
        language,
        "control-scanned",
        first = first.as_str(),
        last = last.as_str(),
        sources = result.times_by.in_words(Timed::Measurements, language),
        from = result.limits_from
    ))
}

/// `measurement 14 (2026-03-02T…): 0.0123 mm, beyond three standard deviations, above the
/// centre, since measurement 12 (2026-02-28T…)`.
pub(crate) fn signal_words(
    result: &ControlResult,
    figure: &ControlFigure,
    signal: &ControlSignal,
    language: Language,
) -> String {
    let at = |number: usize| result.measured.get(number - 1).map_or("", String::as_str);
    let value = figure.readings.get(signal.measurement - 1).copied();
    let value = format!("{:.4} {}", value.unwrap_or(f64::NAN), figure.unit);
    let mut said = message!(
        "control-signal",
        number = signal.measurement,
        at = at(signal.measurement),
        value = Value::figure(value),
        rule = rule_words(signal)
    );
    if signal.since < signal.measurement {
        said = message!(
            "control-since",
            said = said,
            number = signal.since,
            at = at(signal.since)
        );
    }
    if signal.last > signal.measurement {
        said = message!("control-up-to", said = said, number = signal.last);
    }
    said.text(language)
}

/// The rule that was broken, and on which side of the centre.
fn rule_words(signal: &ControlSignal) -> Message {
    let side = if signal.is_above { "above" } else { "below" };
    match signal.rule.parse() {
        Ok(Rule::BeyondLimits) => message!("control-beyond-limits", side = side),
        Ok(Rule::TwoOfThree) => message!("control-two-of-three", side = side),
        Ok(Rule::FourOfFive) => message!("control-four-of-five", side = side),
        Ok(Rule::EightInARow) => message!("control-eight-in-a-row", side = side),
        Ok(Rule::Ewma) => message!("control-ewma", side = side),
        Err(_) => Message::verbatim(signal.rule),
    }
}

/// About how many signals are to be expected by chance.
pub(crate) fn by_chance(result: &ControlResult, language: Language) -> String {
    let signals = Value::number(result.by_chance, 1);
    text!(language, "control-by-chance", signals = signals)
}

/// A figure that was not judged, and why.
pub(crate) fn not_judged(one: &NotCharted, language: Language) -> String {
    let figure = compared(&one.figure, language);
    format!("{figure} ({})", one.reason.text(language))
}

fn write_text(out: &mut String, result: &ControlResult, language: Language) -> std::fmt::Result {
    writeln!(out, "{}", sentence(result, language))?;
    if let Some(scanned) = scanned(result, language) {
        writeln!(out, "{scanned}")?;
    }
    for figure in &result.figures {
        for signal in &figure.signals {
            let name = compared(&figure.figure, language);
            let said = signal_words(result, figure, signal, language);
            writeln!(out, "  {name}: {said}")?;
        }
    }
    if !result.figures.is_empty() {
        write_table(out, result, language)?;
        writeln!(out, "{}", by_chance(result, language))?;
    }
    for one in &result.not_judged {
        let one = not_judged(one, language);
        writeln!(
            out,
            "{}",
            text!(language, "control-not-judged", figures = one)
        )?;
    }
    Ok(())
}

fn write_table(out: &mut String, result: &ControlResult, language: Language) -> std::fmt::Result {
    let head = [
        text!(language, "control-head-figure"),
        text!(language, "control-head-unit"),
        text!(language, "chart-head-centre"),
        text!(language, "control-head-deviation"),
        text!(language, "control-head-lower"),
        text!(language, "control-head-upper"),
        text!(language, "control-head-latest"),
    ];
    let rows = result.figures.iter().map(|figure| {
        let latest = figure.readings.last().copied().unwrap_or(f64::NAN);
        let number = |value: f64| in_language(format!("{value:.4}"), language);
        [
            compared(&figure.figure, language),
            figure.unit.clone(),
            number(figure.centre),
            number(figure.standard_deviation),
            number(figure.lower),
            number(figure.upper),
            number(latest),
        ]
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).map(Vec::from).collect();
    write!(out, "\n{}", in_columns(&rows, &[0]))
}
