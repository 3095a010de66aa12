//! A check standard over time as text.

use crate::studies::control::{ControlFigure, ControlResult, ControlSignal, InControl};
use statistics::control::Rule;
use std::fmt::Write;

/// A check standard over time as text for people.
#[must_use]
pub fn control_text(result: &ControlResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

/// All of it in one sentence, and what to do.
pub(crate) fn sentence(result: &ControlResult) -> String {
    let count = result.measured.len();
    let latest = result.measured.last().map_or("", String::as_str);
    let of = format!("{count} measurements of {}", result.standard);
    match result.outcome {
        InControl::InControl => {
            let earlier: usize = result.figures.iter().map(|one| one.signals.len()).sum();
            let before = match earlier {
                0 => String::new(),
                1 => " There is 1 earlier signal.".to_owned(),
                many => format!(" There are {many} earlier signals."),
            };
            let from = result.limits_from;
            format!(
                "IN CONTROL: {of}; the latest ({latest}) is within limits from the first {from}.{before}"
            )
        }
        InControl::TooFew => {
            format!(
                "NOT JUDGED: {of} are too few, or all alike. Measure the standard again next time."
            )
        }
        InControl::OutOfControl => {
            let is_latest = |signal: &ControlSignal| signal.last == count;
            let spoken = result.figures.iter();
            let spoken = spoken
                .filter(|one| one.signals.iter().any(is_latest))
                .count();
            format!(
                "OUT OF CONTROL: {of}; at the latest ({latest}), {spoken} of {} figures have changed. Measure the \
                 standard again. If that is out, too, clean and calibrate the scanner, and check no case with it until \
                 the standard is in control.",
                result.figures.len()
            )
        }
    }
}

/// `measurement 14 (2026-03-02T…): 0.0123, beyond the limits, above; since measurement 12`.
pub(crate) fn signal_words(
    result: &ControlResult,
    figure: &ControlFigure,
    signal: &ControlSignal,
) -> String {
    let at = |number: usize| result.measured.get(number - 1).map_or("", String::as_str);
    let value = figure
        .readings
        .get(signal.measurement - 1)
        .copied()
        .unwrap_or(f64::NAN);
    let side = if signal.is_above { "above" } else { "below" };
    let mut said = format!(
        "measurement {} ({}): {value:.4} {}, {} {side} the centre",
        signal.measurement,
        at(signal.measurement),
        figure.unit,
        rule_words(signal.rule),
    );
    if signal.since < signal.measurement {
        said += &format!(
            ", since measurement {} ({})",
            signal.since,
            at(signal.since)
        );
    }
    if signal.last > signal.measurement {
        said += &format!(", up to measurement {}", signal.last);
    }
    said
}

/// A rule in a few words, before "above the centre".
pub(crate) fn rule_words(rule: &str) -> &str {
    match rule.parse() {
        Ok(Rule::BeyondLimits) => "beyond three standard deviations,",
        Ok(Rule::TwoOfThree) => "two of three beyond two standard deviations,",
        Ok(Rule::FourOfFive) => "four of five beyond one standard deviation,",
        Ok(Rule::EightInARow) => "eight in a row",
        Ok(Rule::Ewma) => "moving average outside its limits,",
        Err(_) => rule,
    }
}

fn write_text(out: &mut String, result: &ControlResult) -> std::fmt::Result {
    writeln!(out, "{}", sentence(result))?;
    if let (Some(first), Some(last)) = (result.measured.first(), result.measured.last()) {
        writeln!(
            out,
            "Scanned {first} to {last} (UTC), by {}; limits from the first {} measurements",
            result.times_by.in_words(["measurement", "measurements"]),
            result.limits_from
        )?;
    }
    for figure in &result.figures {
        for signal in &figure.signals {
            writeln!(
                out,
                "  {}: {}",
                figure.figure,
                signal_words(result, figure, signal)
            )?;
        }
    }
    if result.figures.is_empty() {
        return not_judged(out, result);
    }
    let names = result.figures.iter().map(|f| f.figure.chars().count());
    let width = names.max().unwrap_or(0);
    writeln!(
        out,
        "\n{:<width$}  {:>4}  {:>10}  {:>10}  {:>10}  {:>10}  {:>10}",
        "figure", "unit", "centre", "sd", "lower", "upper", "latest"
    )?;
    for figure in &result.figures {
        let latest = figure.readings.last().copied().unwrap_or(f64::NAN);
        writeln!(
            out,
            "{:<width$}  {:>4}  {:>10.4}  {:>10.4}  {:>10.4}  {:>10.4}  {latest:>10.4}",
            figure.figure,
            figure.unit,
            figure.centre,
            figure.standard_deviation,
            figure.lower,
            figure.upper
        )?;
    }
    writeln!(
        out,
        "On so many points, about {:.1} signals are to be expected by chance alone",
        result.by_chance
    )?;
    not_judged(out, result)
}

fn not_judged(out: &mut String, result: &ControlResult) -> std::fmt::Result {
    for one in &result.not_judged {
        writeln!(out, "Not judged: {} ({})", one.figure, one.why)?;
    }
    Ok(())
}
