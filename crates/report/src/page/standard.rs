//! The page of a check standard over time: a sentence, a table and its charts.

use super::cautions::cautions;
use super::document::whole;
use super::table::table;
use crate::drawing::control::{Charts, control_charts};
use crate::studies::control::{ControlFigure, ControlResult};
use crate::text::control::{sentence, signal_words};
use maud::{Markup, PreEscaped, html};
use statistics::control::IndividualsChart;

/// A check standard over time as a page of its own.
#[must_use]
pub fn control_page(result: &ControlResult) -> String {
    let (first, last) = (result.measured.first(), result.measured.last());
    let body = html! {
        main {
            header {
                p.kicker { "Check standard over time" }
                h1 { (result.standard) ", " (result.measured.len()) " measurements" }
                p.lead { (sentence(result)) }
                @if let (Some(first), Some(last)) = (first, last) {
                    p {
                        "Scanned " (first) " to " (last) " (UTC), by "
                        (result.times_by.in_words(["measurement", "measurements"])) ". Limits are from the first "
                        (result.limits_from) " measurements."
                    }
                }
            }
            section { (said(result)) }
            section {
                h2 { "Figures" }
                (numbers(result))
                @for figure in &result.figures { (chart(figure)) }
                @if !result.not_judged.is_empty() {
                    p { "Not judged: " (not_judged(result)) "." }
                }
            }
            (cautions())
        }
        footer { p { "Written by archproof " (result.program) "." } }
    };
    whole(&format!("{} over time", result.standard), &body)
}

fn said(result: &ControlResult) -> Markup {
    html! {
        h2 { "What the charts say" }
        p {
            "On so many points, about " (format!("{:.1}", result.by_chance))
            " signals are to be expected by chance alone."
        }
        ul {
            @for figure in &result.figures {
                @for signal in &figure.signals {
                    li { strong { (figure.figure) } ": " (signal_words(result, figure, signal)) }
                }
            }
        }
    }
}

fn numbers(result: &ControlResult) -> Markup {
    let number = |value: f64| html! { (format!("{value:.4}")) };
    let rows: Vec<Vec<Markup>> = (result.figures.iter())
        .map(|figure| {
            let latest = figure.readings.last().copied().unwrap_or(f64::NAN);
            vec![
                html! { (figure.figure) },
                html! { (figure.unit) },
                number(figure.centre),
                number(figure.standard_deviation),
                number(figure.lower),
                number(figure.upper),
                number(latest),
                html! { (figure.signals.len()) },
            ]
        })
        .collect();
    let columns = [
        "figure",
        "unit",
        "centre",
        "standard deviation",
        "lower limit",
        "upper limit",
        "latest",
        "signals",
    ];
    html! { div.titled { (table("Figures", &columns, &rows)) } }
}

fn chart(figure: &ControlFigure) -> Markup {
    let rule = |name: &str| name.parse().ok();
    let spoken = figure.signals.iter();
    let sheet = control_charts(&Charts {
        title: &figure.figure,
        decimals: 4,
        values: &figure.readings,
        individuals: &IndividualsChart::by(figure.process(), &figure.readings),
        averages: &figure.averages(),
        spoken: spoken
            .filter_map(|signal| Some((rule(signal.rule)?, signal.since - 1, signal.last - 1)))
            .collect(),
    });
    html! {
        h3 { (figure.figure) ", " (figure.unit) }
        div.scroll { (PreEscaped(sheet.in_page())) }
    }
}

fn not_judged(result: &ControlResult) -> String {
    let each = result.not_judged.iter();
    let each: Vec<String> = each
        .map(|one| format!("{} ({})", one.figure, one.why))
        .collect();
    each.join("; ")
}
