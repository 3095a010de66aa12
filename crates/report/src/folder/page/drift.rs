//! Is it getting worse: what the control charts say, and the charts.

use super::control::{control_chart, share_chart};
use super::html::{Shown, svg};
use crate::folder::drift::{Chart, Charted, DriftSignal, Limits, ShareChart};
use crate::page::table;
use crate::text::format;
use maud::{Markup, html};
use statistics::control::Rule;

/// Charts that are drawn; beyond, those that speak.
const DRAWN: usize = 24;
/// Signals that are listed.
const LISTED: usize = 200;

pub(super) fn over_time(shown: &Shown) -> Markup {
    let drift = &shown.drift;
    let (charts, shares) = (drawn_figures(shown), drawn_shares(shown));
    html! {
        h2 #over-time { "Over time" }
        p.aside {
            "The latest impressions of each group in the order in which they were scanned, by "
            (shown.overview.times_by.in_words(["case", "cases"])) "; where files without a stated time were "
            "copied, theirs may be the time of copying. Impressions before the wash and washes never share "
            "a chart. What lies outside is a reason to look at scanner, material or mix of cases, and no fault "
            "of an impression in itself."
        }
        (where_limits_come_from(shown))
        (said(shown))
        @if drift.left_out > 0 {
            p { (drift.left_out) " impressions belong to groups beyond the first 100 and are on no chart." }
        }
        @if !drift.too_few.is_empty() {
            p { "Too few impressions for limits, or all alike: " (drift.too_few.join("; ")) "." }
        }
        (numbers(&drift.charts))
        @for chart in charts { (one_figure(chart)) }
        @for chart in shares { (one_share(chart)) }
    }
}

fn where_limits_come_from(shown: &Shown) -> Markup {
    let options = &shown.page.drift;
    let rules = options.rules.iter().map(|rule| rule_words(*rule));
    let rules: Vec<&str> = rules.collect();
    html! {
        @match &options.baseline {
            Some(baseline) => {
                p {
                    strong { "Limits: frozen baseline" } " of results with SHA-256 " (baseline.results_sha256)
                    ", made with archproof " (baseline.program) " and the limits \"" (baseline.protocol) "\"."
                    " A group that it does not hold is judged by its own points, as its chart says."
                }
                @for sentence in baseline.differs(&shown.overview.conditions) { p { strong { (sentence) } } }
            }
            None => {
                p {
                    strong { "Limits: from the points themselves." }
                    " They follow the very drift that they are to find. Freeze them while all is well: "
                    "'archproof baseline DIR --write base.toml', then 'batch … --baseline base.toml'."
                }
            }
        }
        p.aside {
            "Rules: " (rules.join("; ")) ". Standard deviation: mean moving range over 1.128; limit of the "
            "ranges: their centre times 3.267. The share that fails is counted over as many days as are needed to "
            "expect five that fail; its limits are three standard deviations for that number (p chart)."
        }
    }
}

fn rule_words(rule: Rule) -> &'static str {
    match rule {
        Rule::BeyondLimits => "one value beyond three standard deviations (Western Electric 1956)",
        Rule::TwoOfThree => {
            "two of three values beyond two standard deviations on one side (Western Electric 1956)"
        }
        Rule::FourOfFive => {
            "four of five values beyond one standard deviation on one side (Western Electric 1956)"
        }
        Rule::EightInARow => {
            "eight values in a row on one side of the centre (Western Electric 1956)"
        }
        Rule::Ewma => {
            "moving average of weight 0.2 beyond 2.962 of its standard deviations (Lucas and Saccucci 1990)"
        }
    }
}

/// `2026-03-04 05:06`, or a day as it is.
fn time(at: &str) -> String {
    at.get(..16).unwrap_or(at).replace('T', " ")
}

/// A figure as it is called on its chart, without its unit.
fn figure_words(column: &str) -> &str {
    let figure = Charted::ALL
        .into_iter()
        .find(|figure| figure.column() == column);
    let title = figure.map_or(column, |figure| figure.title());
    title.trim_end_matches(", mm")
}

/// The rule in few words.
fn short(rule: &str) -> &str {
    match rule.parse() {
        Ok(Rule::BeyondLimits) => "beyond the limits",
        Ok(Rule::TwoOfThree) => "two of three far off",
        Ok(Rule::FourOfFive) => "four of five off",
        Ok(Rule::EightInARow) => "eight in a row on one side",
        Ok(Rule::Ewma) => "moving average outside its limits",
        Err(_) => rule,
    }
}

fn counted(signals: usize) -> String {
    match signals {
        1 => "1 signal".to_owned(),
        many => format!("{many} signals"),
    }
}

/// What the charts say, in a table.
fn said(shown: &Shown) -> Markup {
    let signals = &shown.drift.signals;
    let rows: Vec<Vec<Markup>> = signals.iter().take(LISTED).map(signal_row).collect();
    let columns = [
        "case",
        "when (UTC)",
        "figure",
        "rule",
        "since",
        "impressions",
        "limits",
        "what to look at",
    ];
    html! {
        p {
            @if signals.is_empty() { "No chart says that anything has changed." }
            @else { (counted(signals.len())) "." }
            @if shown.drift.by_chance >= 0.05 {
                " By chance alone, about " (format!("{:.1}", shown.drift.by_chance))
                " are to be expected on so many points, and more where limits are made from few."
            }
        }
        @if !rows.is_empty() {
            div.titled { (table("What the charts say", &columns, &rows)) }
            @if signals.len() > LISTED { p { "Listed are the latest " (LISTED) "; 'batch --json' prints all." } }
        }
    }
}

fn signal_row(signal: &DriftSignal) -> Vec<Markup> {
    let since = match signal.since_case.as_str() {
        "" => time(&signal.since),
        _ if signal.since == signal.scanned => "this one".to_owned(),
        case => format!("{case}, {}", time(&signal.since)),
    };
    vec![
        html! {
            @if signal.case.is_empty() { "(days)" }
            @else if signal.link.is_empty() { (signal.case) }
            @else { a href=(signal.link) { (signal.case) } }
        },
        html! { (time(&signal.scanned)) },
        html! { (figure_words(&signal.figure)) ", " (signal.group.words()) },
        html! { (short(&signal.rule)) ", " (if signal.is_above { "above" } else { "below" }) },
        html! { (since) },
        html! { (signal.impressions) },
        html! { (limits_words(signal.limits)) },
        html! { (signal.look_at) },
    ]
}

fn limits_words(limits: Limits) -> &'static str {
    match limits {
        Limits::Baseline => "baseline",
        Limits::Own => "own points",
    }
}

/// The numbers of all charts, beside them.
fn numbers(charts: &[Chart]) -> Markup {
    let rows: Vec<Vec<Markup>> = charts
        .iter()
        .map(|chart| {
            let decimals = chart.figure.decimals();
            let number = |value: f64| html! { (format!("{value:.decimals$}")) };
            let of = &chart.individuals;
            let outside = chart
                .values
                .iter()
                .filter(|value| of.is_out(**value))
                .count();
            vec![
                html! { (chart.figure.title()) ", " (chart.group.words()) },
                html! { (chart.values.len()) },
                number(chart.process.centre),
                number(chart.process.sigma),
                number(of.lower),
                number(of.upper),
                html! { (outside) },
                html! { (limits_words(chart.limits)) " (" (chart.count) ")" },
            ]
        })
        .collect();
    let columns = [
        "chart",
        "impressions",
        "centre",
        "standard deviation",
        "lower limit",
        "upper limit",
        "outside",
        "limits from (impressions)",
    ];
    html! { @if !rows.is_empty() { div.titled { (table("Numbers of the charts", &columns, &rows)) } } }
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

fn one_figure(chart: &Chart) -> Markup {
    html! {
        h3 { (format::capital(chart.figure.title())) ", " (chart.group.words()) }
        p {
            (chart.values.len()) " impressions, " (time(&chart.span[0])) " to " (time(&chart.span[1])) ", limits from "
            (match chart.limits { Limits::Baseline => "the baseline", Limits::Own => "these points" })
            ": " (counted(chart.signals.len())) "."
        }
        div.scroll { (svg(control_chart(chart))) }
    }
}

fn one_share(chart: &ShareChart) -> Markup {
    let outside = chart.days.iter().filter(|days| days.is_out()).count();
    html! {
        h3 { "Share that fails, " (chart.group.words()) }
        p {
            (chart.days.len()) " groups of days, limits from "
            (match chart.limits { Limits::Baseline => "the baseline", Limits::Own => "these points" })
            ": " (outside) " outside."
        }
        div.scroll { (svg(share_chart(chart))) }
    }
}
