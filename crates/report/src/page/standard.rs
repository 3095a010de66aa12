//! The page of a check standard over time: a sentence, a table and its charts.

use super::cautions::cautions;
use super::document::in_language;
use super::table::table;
use crate::drawing::control::{Charts, control_charts};
use crate::studies::control::{ControlFigure, ControlResult};
use crate::text::compared::compared;
use crate::text::control::{by_chance, not_judged, scanned, sentence, signal_words};
use crate::text::format;
use maud::{Markup, PreEscaped, html};
use messages::{Language, Value, text};
use statistics::control::IndividualsChart;

/// A check standard over time as a page of its own.
#[must_use]
pub fn control_page(result: &ControlResult, language: Language) -> String {
    let standard = result.of.message();
    let heading = text!(
        language,
        "control-heading",
        standard = standard.clone(),
        count = result.measured.len()
    );
    let body = html! {
        main {
            header {
                p.kicker { (text!(language, "control-kicker")) }
                h1 { (heading) }
                p.lead { (sentence(result, language)) }
                @if let Some(scanned) = scanned(result, language) { p { (scanned) } }
            }
            section { (said(result, language)) }
            section {
                h2 { (text!(language, "control-figures")) }
                (numbers(result, language))
                @for figure in &result.figures { (chart(figure, language)) }
                @if !result.not_judged.is_empty() { p { (all_not_judged(result, language)) } }
            }
            (cautions(language))
        }
        footer { p { (text!(language, "control-written-by", version = result.program)) } }
    };
    let title = text!(language, "control-title", standard = standard);
    in_language(&title, &body, language)
}

fn said(result: &ControlResult, language: Language) -> Markup {
    html! {
        h2 { (text!(language, "drift-said")) }
        p { (by_chance(result, language)) }
        ul {
            @for figure in &result.figures {
                @for signal in &figure.signals {
                    li {
                        strong { (compared(&figure.figure, language)) } ": "
                        (signal_words(result, figure, signal, language))
                    }
                }
            }
        }
    }
}

fn numbers(result: &ControlResult, language: Language) -> Markup {
    let number = |value: f64| html! { (Value::number(value, 4).text(language)) };
    let rows: Vec<Vec<Markup>> = (result.figures.iter())
        .map(|figure| {
            let latest = figure.readings.last().copied().unwrap_or(f64::NAN);
            vec![
                html! { (compared(&figure.figure, language)) },
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
        text!(language, "control-head-figure"),
        text!(language, "control-head-unit"),
        text!(language, "chart-head-centre"),
        text!(language, "chart-head-deviation"),
        text!(language, "chart-head-lower"),
        text!(language, "chart-head-upper"),
        text!(language, "control-head-latest"),
        text!(language, "control-head-signals"),
    ];
    let caption = text!(language, "control-figures");
    html! { div.titled { (table(&caption, &columns, &rows)) } }
}

fn chart(figure: &ControlFigure, language: Language) -> Markup {
    let rule = |name: &str| name.parse().ok();
    let spoken = figure.signals.iter();
    let name = compared(&figure.figure, language);
    let sheet = control_charts(&Charts {
        title: &name,
        language,
        decimals: 4,
        values: &figure.readings,
        individuals: &IndividualsChart::by(figure.process(), &figure.readings),
        averages: &figure.averages(),
        spoken: spoken
            .filter_map(|signal| Some((rule(signal.rule)?, signal.since - 1, signal.last - 1)))
            .collect(),
    });
    html! {
        h3 { (format::capital(&name)) ", " (figure.unit) }
        div.scroll { (PreEscaped(sheet.in_page())) }
    }
}

fn all_not_judged(result: &ControlResult, language: Language) -> String {
    let each = result.not_judged.iter();
    let each: Vec<String> = each.map(|one| not_judged(one, language)).collect();
    let figures = each.join("; ");
    text!(language, "control-not-judged", figures = figures) + "."
}
