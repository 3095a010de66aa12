//! The control charts of the page.

use crate::drawing::canvas::{Anchor, Sheet};
use crate::drawing::control::{Charts, LEFT, Pane, RIGHT, WIDTH, control_charts, points};
use crate::folder::drift::{Chart, ShareChart};
use crate::text::format;
use messages::{Language, Value, text};

/// Individuals, moving ranges and moving averages of a figure, in order of time.
pub(super) fn control_chart(chart: &Chart, language: Language) -> String {
    let spoken = chart.signals.iter();
    let (figure, group) = (chart.figure.title(language), chart.group.words(language));
    control_charts(&Charts {
        title: &format!("{figure}, {group}"),
        language,
        decimals: chart.figure.decimals(),
        values: &chart.values,
        individuals: &chart.individuals,
        averages: &chart.averages,
        spoken: spoken
            .map(|signal| (signal.rule, signal.from, signal.last))
            .collect(),
    })
    .in_page()
}

/// The share that fails, by groups of days, each with limits of its own size.
pub(super) fn share_chart(chart: &ShareChart, language: Language) -> String {
    let group = chart.group.words(language);
    let title = text!(language, "drift-share-of", group = group);
    let mut sheet = Sheet::new(WIDTH, 190.0, &title);
    let shares: Vec<f64> = chart.days.iter().map(|days| days.share()).collect();
    let limits: Vec<[f64; 2]> = chart
        .days
        .iter()
        .map(|d| [d.limits.lower, d.limits.upper])
        .collect();
    let [lower, upper] = limits.last().copied().unwrap_or_default();
    let percent = |share: f64| Value::figure(format::percent(share));
    Pane {
        name: text!(language, "charted-share"),
        top: 24.0,
        height: 140.0,
        points: points(&shares),
        ringed: chart.days.iter().map(|days| days.is_out()).collect(),
        centre: chart.share,
        limits,
        labels: [
            text!(language, "chart-upper", value = percent(upper)),
            text!(language, "chart-share", value = percent(chart.share)),
            text!(language, "chart-lower", value = percent(lower)),
        ],
    }
    .draw(&mut sheet);
    let ends = chart.days.first().zip(chart.days.last());
    if let Some((first, last)) = ends {
        sheet.text([LEFT, 184.0], Anchor::Start, 11.0, &first.from);
        sheet.text([RIGHT, 184.0], Anchor::End, 11.0, &last.to);
    }
    sheet.in_page()
}
