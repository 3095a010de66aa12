//! Is it getting worse: what the control charts say, and the charts.

use super::control::{control_chart, share_chart};
use super::html::{Shown, svg};
use crate::folder::drift::{Chart, Charted, DriftSignal, Limits, ShareChart, TooFew};
use crate::page::table;
use crate::result::Timed;
use crate::text::format;
use maud::{Markup, html};
use messages::{Language, Message, Value, message, text};
use statistics::control::{Ewma, Rule};

/// Charts that are drawn; beyond, those that speak.
const DRAWN: usize = 24;
/// Signals that are listed.
const LISTED: usize = 200;

pub(super) fn over_time(shown: &Shown) -> Markup {
    let (drift, language) = (&shown.drift, shown.language());
    let (charts, shares) = (drawn_figures(shown), drawn_shares(shown));
    let sources = shown.overview.times_by.in_words(Timed::Cases, language);
    html! {
        h2 #over-time { (text!(language, "drift-over-time")) }
        p.aside { (text!(language, "drift-lead", sources = sources)) }
        (where_limits_come_from(shown))
        (said(shown))
        @if drift.left_out > 0 {
            p { (text!(language, "drift-left-out", count = drift.left_out)) }
        }
        @if !drift.too_few.is_empty() {
            p { (text!(language, "drift-too-few", figures = too_few(&drift.too_few, language))) }
        }
        (numbers(&drift.charts, language))
        @for chart in charts { (one_figure(chart, language)) }
        @for chart in shares { (one_share(chart, language)) }
    }
}

fn too_few(figures: &[TooFew], language: Language) -> String {
    let each = figures.iter().map(|one| {
        let (group, figure) = (one.group.words(language), one.figure.title(language));
        format!("{group}: {figure} ({})", one.impressions)
    });
    each.collect::<Vec<_>>().join("; ")
}

fn where_limits_come_from(shown: &Shown) -> Markup {
    let (options, language) = (&shown.page.drift, shown.language());
    let rules = options.rules.iter();
    let rules: Vec<String> = rules.map(|rule| rule_words(*rule, language)).collect();
    html! {
        @match &options.baseline {
            Some(baseline) => {
                p {
                    strong { (text!(language, "drift-by-baseline")) } " "
                    (text!(
                        language,
                        "drift-baseline",
                        sha = baseline.results_sha256.as_str(),
                        version = baseline.program.as_str(),
                        limits = baseline.protocol.as_str()
                    ))
                }
                @for sentence in baseline.differs(&shown.overview.conditions) {
                    p { strong { (sentence.text(language)) } }
                }
            }
            None => {
                p {
                    strong { (text!(language, "drift-by-own-points")) } " "
                    (text!(language, "drift-freeze"))
                }
            }
        }
        p.aside { (text!(language, "drift-rules", rules = rules.join("; "))) }
    }
}

fn rule_words(rule: Rule, language: Language) -> String {
    match rule {
        Rule::BeyondLimits => text!(language, "rule-beyond-limits"),
        Rule::TwoOfThree => text!(language, "rule-two-of-three"),
        Rule::FourOfFive => text!(language, "rule-four-of-five"),
        Rule::EightInARow => text!(language, "rule-eight-in-a-row"),
        Rule::Ewma => text!(
            language,
            "rule-ewma",
            weight = Value::number(Ewma::DEFAULT.weight, 1),
            reach = Value::number(Ewma::DEFAULT.reach, 3)
        ),
    }
}

/// `2026-03-04 05:06`, or a day as it is.
fn time(at: &str) -> String {
    at.get(..16).unwrap_or(at).replace('T', " ")
}

/// A figure as it is called on its chart, without its unit.
fn figure_words(column: &str, language: Language) -> String {
    let mut figures = Charted::ALL.into_iter();
    let figure = figures.find(|figure| figure.column() == column);
    figure.map_or_else(
        || text!(language, "charted-share"),
        |figure| figure.name(language),
    )
}

/// The rule in few words, and on which side.
fn short(signal: &DriftSignal, language: Language) -> String {
    let side = if signal.is_above { "above" } else { "below" };
    match signal.rule.parse() {
        Ok(Rule::BeyondLimits) => text!(language, "broken-beyond-limits", side = side),
        Ok(Rule::TwoOfThree) => text!(language, "broken-two-of-three", side = side),
        Ok(Rule::FourOfFive) => text!(language, "broken-four-of-five", side = side),
        Ok(Rule::EightInARow) => text!(language, "broken-eight-in-a-row", side = side),
        Ok(Rule::Ewma) => text!(language, "broken-ewma", side = side),
        Err(_) => signal.rule.clone(),
    }
}

/// What the charts say, in a table.
fn said(shown: &Shown) -> Markup {
    let (drift, language) = (&shown.drift, shown.language());
    let listed = drift.signals.iter().take(LISTED);
    let rows: Vec<Vec<Markup>> = listed.map(|signal| signal_row(signal, language)).collect();
    let columns = [
        text!(language, "folder-head-case"),
        text!(language, "drift-head-when"),
        text!(language, "folder-head-figure"),
        text!(language, "drift-head-rule"),
        text!(language, "drift-head-since"),
        text!(language, "folder-head-impressions"),
        text!(language, "drift-head-limits"),
        text!(language, "drift-head-look-at"),
    ];
    let said = if drift.signals.is_empty() {
        message!("drift-no-signal")
    } else {
        message!("drift-signals", count = drift.signals.len())
    };
    let by_chance = Value::number(drift.by_chance, 1);
    let by_chance =
        (drift.by_chance >= 0.05).then(|| message!("drift-by-chance", signals = by_chance));
    html! {
        p { (said.then(by_chance).text(language)) }
        @if !rows.is_empty() {
            div.titled { (table(&text!(language, "drift-said"), &columns, &rows)) }
            @if drift.signals.len() > LISTED {
                p { (text!(language, "drift-some-listed", listed = LISTED)) }
            }
        }
    }
}

fn signal_row(signal: &DriftSignal, language: Language) -> Vec<Markup> {
    let since = match signal.since_case.as_str() {
        "" => time(&signal.since),
        _ if signal.since == signal.scanned => text!(language, "drift-this-one"),
        case => format!("{case}, {}", time(&signal.since)),
    };
    let figure = figure_words(&signal.figure, language);
    vec![
        html! {
            @if signal.case.is_empty() { (text!(language, "drift-days")) }
            @else if signal.link.is_empty() { (signal.case) }
            @else { a href=(signal.link) { (signal.case) } }
        },
        html! { (time(&signal.scanned)) },
        html! { (figure) ", " (signal.group.words(language)) },
        html! { (short(signal, language)) },
        html! { (since) },
        html! { (signal.impressions) },
        html! { (limits_words(signal.limits, language)) },
        html! { (signal.advice.text(language)) },
    ]
}

fn limits_words(limits: Limits, language: Language) -> String {
    match limits {
        Limits::Baseline => text!(language, "drift-baseline-limits"),
        Limits::Own => text!(language, "drift-own-limits"),
    }
}

fn limits_from(limits: Limits) -> Message {
    match limits {
        Limits::Baseline => message!("drift-limits-from-baseline"),
        Limits::Own => message!("drift-limits-from-points"),
    }
}

/// The numbers of all charts, beside them.
fn numbers(charts: &[Chart], language: Language) -> Markup {
    let rows: Vec<Vec<Markup>> = (charts.iter())
        .map(|chart| numbers_of(chart, language))
        .collect();
    let columns = [
        text!(language, "drift-head-chart"),
        text!(language, "folder-head-impressions"),
        text!(language, "chart-head-centre"),
        text!(language, "chart-head-deviation"),
        text!(language, "chart-head-lower"),
        text!(language, "chart-head-upper"),
        text!(language, "drift-head-outside"),
        text!(language, "drift-head-limits-from"),
    ];
    let caption = text!(language, "drift-numbers");
    html! { @if !rows.is_empty() { div.titled { (table(&caption, &columns, &rows)) } } }
}

fn numbers_of(chart: &Chart, language: Language) -> Vec<Markup> {
    let decimals = chart.figure.decimals();
    let number = |value: f64| html! { (Value::number(value, decimals).text(language)) };
    let of = &chart.individuals;
    let outside = chart.values.iter().filter(|value| of.is_out(**value));
    vec![
        html! { (chart.figure.title(language)) ", " (chart.group.words(language)) },
        html! { (chart.values.len()) },
        number(chart.process.centre),
        number(chart.process.sigma),
        number(of.lower),
        number(of.upper),
        html! { (outside.count()) },
        html! { (limits_words(chart.limits, language)) " (" (chart.count) ")" },
    ]
}

/// All charts, as far as they fit: those that speak first.
fn drawn_figures(shown: &Shown) -> Vec<&Chart> {
    let mut charts: Vec<&Chart> = shown.drift.charts.iter().collect();
    if charts.len() > DRAWN {
        charts.sort_by_key(|chart| chart.signals.is_empty());
        charts.truncate(DRAWN);
    }
    charts
}

fn drawn_shares(shown: &Shown) -> Vec<&ShareChart> {
    let mut charts: Vec<&ShareChart> = shown.drift.shares.iter().collect();
    if charts.len() > DRAWN {
        charts.sort_by_key(|chart| !chart.days.iter().any(|days| days.is_out()));
        charts.truncate(DRAWN);
    }
    charts
}

fn one_figure(chart: &Chart, language: Language) -> Markup {
    let limits = limits_from(chart.limits);
    let signals = match chart.signals.len() {
        0 => message!("drift-silent"),
        count => message!("drift-signals", count = count),
    };
    let span = message!(
        "drift-span",
        count = chart.values.len(),
        first = time(&chart.span[0]),
        last = time(&chart.span[1])
    );
    html! {
        h3 { (format::capital(&chart.figure.title(language))) ", " (chart.group.words(language)) }
        p { (span.then(limits).then(signals).text(language)) }
        div.scroll { (svg(control_chart(chart, language))) }
    }
}

fn one_share(chart: &ShareChart, language: Language) -> Markup {
    let outside = chart.days.iter().filter(|days| days.is_out()).count();
    let limits = limits_from(chart.limits);
    let days = message!("drift-days-counted", count = chart.days.len());
    let outside = message!("drift-outside", count = outside);
    html! {
        h3 { (text!(language, "drift-share-of", group = chart.group.words(language))) }
        p { (days.then(limits).then(outside).text(language)) }
        div.scroll { (svg(share_chart(chart, language))) }
    }
}
