//! The page as markup, in the dress of the report.

use super::cases::list;
use super::charts::{heat_map, histogram, pareto, thumbnail};
use super::counts::{covers, not_judged, pass_rate, pass_rates, verdicts};
use super::drift::over_time;
use super::gathered::{OfArch, Page, Worst};
use crate::folder::conditions::Conditions;
use crate::folder::drift::{Drift, Series};
use crate::folder::overview::Overview;
use crate::folder::spread::Spread;
use crate::page::{cautions, table, whole};
use crate::text::format;
use maud::{Markup, PreEscaped, html};

/// What is shown.
pub(super) struct Shown {
    pub(super) overview: Overview,
    pub(super) page: Page,
    pub(super) drift: Drift,
}

/// A section of the page.
type Section = fn(&Shown) -> Markup;

const SECTIONS: [Section; 10] = [
    covers,
    verdicts,
    pass_rates,
    not_judged,
    what_fails,
    where_it_lies,
    spreads,
    over_time,
    worst,
    list,
];

impl Page {
    /// What the folder came to, and the page as text; `folder_sha256` is over what was
    /// given of each case.
    #[must_use]
    pub fn finish(mut self, how: Conditions, folder_sha256: String) -> (Overview, String) {
        self.settle();
        let tally = std::mem::take(&mut self.tally);
        let series = std::mem::replace(&mut self.series, Series::new(None, 0));
        let drift = Drift::of(series, &self.drift);
        let mut overview = tally.finish(how, folder_sha256);
        overview.drift.clone_from(&drift.signals);
        let shown = Shown {
            overview,
            page: self,
            drift,
        };
        let page = page(&shown);
        (shown.overview, page)
    }
}

fn page(shown: &Shown) -> String {
    let Overview {
        cases, impressions, ..
    } = shown.overview;
    let title = format!("{cases} cases - impressions checked");
    let body = html! {
        main {
            header {
                p.kicker { "Summary of a folder of cases" }
                h1 { (cases) " cases, " (impressions) " impressions" }
                p.lead { (pass_rate(&shown.overview)) }
            }
            @for section in SECTIONS { section { (section(shown)) } }
            @if shown.overview.verdicts.unreadable > 0 { section { (unreadable(shown)) } }
            (cautions())
        }
        footer {
            p { "Cases go by pseudonyms. Every row is in summary.csv and findings.csv." }
        }
    };
    whole(&title, &body)
}

pub(super) fn svg(drawing: String) -> Markup {
    PreEscaped(drawing)
}

/// The most frequent first; beyond `rows`, the rest together.
fn ordered(mut counts: Vec<(String, u64)>, rows: usize) -> Vec<(String, u64)> {
    counts.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
    if counts.len() > rows {
        let rest = counts.split_off(rows);
        counts.push(("all others".to_owned(), rest.iter().map(|c| c.1).sum()));
    }
    counts
}

fn what_fails(shown: &Shown) -> Markup {
    const ROWS: usize = 15;
    let page = &shown.page;
    let by_check = page.by_check.iter();
    let by_check = by_check.map(|(check, &count)| (check.replace('-', " "), count));
    let by_zone = page.by_zone.iter().map(|((check, zone), &count)| {
        let name = format!("{}, {zone}", check.replace('-', " "));
        (name, count)
    });
    html! {
        h2 { "Most frequent failures" }
        @if page.by_check.is_empty() {
            p { "Nothing failed." }
        } @else {
            p.aside { "Findings that fail, with their count and the share that they and those above make of all." }
            @for (title, counts) in [("By check", by_check.collect()), ("By check and zone", by_zone.collect())] {
                h3 { (title) }
                div.scroll.pareto { (svg(pareto(title, &ordered(counts, ROWS)))) }
            }
        }
    }
}

fn where_it_lies(shown: &Shown) -> Markup {
    html! {
        h2 { "Where on the arch" }
        p.aside {
            "Findings that fail, counted in squares of 4 mm, in the impression frame: tissue side toward "
            "you, front up. Grey lines: the borders of some of the impressions."
        }
        div.views {
            @for (name, arch) in &shown.page.arches {
                figure.view {
                    (svg(heat_map(name, &arch.faults, &arch.outlines)))
                    figcaption { (name) ": " (arch.faults.values().sum::<u64>()) " findings with a place" }
                }
            }
        }
    }
}

/// What is spread, of one jaw.
fn spreads_of(arch: &OfArch) -> [(&'static str, &Spread); 4] {
    [
        ("Median thickness, mm", &arch.cover_median),
        ("Least thickness, mm", &arch.cover_min),
        ("Median flange height, mm", &arch.flange_height),
        ("Median flange thickness, mm", &arch.flange_thickness),
    ]
}

fn spreads(shown: &Shown) -> Markup {
    html! {
        h2 { "Distributions" }
        p.aside {
            "One figure for each impression, counted to 0.01 mm; the dashed line is their median. Uncertainties are in summary.csv."
        }
        @for (name, arch) in &shown.page.arches {
            h3 { (name) }
            div.views {
                @for (title, values) in spreads_of(arch) {
                    figure.view {
                        (svg(histogram(title, values)))
                        figcaption { (title) }
                    }
                }
            }
            (spreads_table(name, arch))
        }
    }
}

fn spreads_table(name: &str, arch: &OfArch) -> Markup {
    const PARTS: [f64; 5] = [0.0, 0.05, 0.5, 0.95, 1.0];
    let columns = [
        "figure",
        "impressions",
        "least",
        "5th percentile",
        "median",
        "95th percentile",
        "most",
    ];
    let rows = spreads_of(arch).map(|(title, values)| {
        let parts = PARTS.map(|part| {
            let value = values.quantile(part).map(format::two_decimals);
            html! { (value.unwrap_or_default()) }
        });
        let head = [html! { (title) }, html! { (values.total()) }];
        head.into_iter().chain(parts).collect()
    });
    table(&format!("Distributions, {name}"), &columns, &rows)
}

fn worst(shown: &Shown) -> Markup {
    let page = &shown.page;
    html! {
        h2 { "Cases needing most attention" }
        @if page.worst.is_empty() {
            p { "Nothing failed." }
        } @else {
            p.aside {
                "Most failing findings first, then least thickness. View of the tissue side, front at the top, "
                "coloured by material thickness (dark is thin); rings where findings fail, dashed where "
                "other surface lies before them."
            }
            div.views {
                @for one in &page.worst { (card(one)) }
            }
        }
    }
}

fn card(one: &Worst) -> Markup {
    let row = &one.row;
    let case = row.case.as_deref().unwrap_or_default();
    let words = |text: &Option<String>| text.as_deref().unwrap_or_default().replace('_', " ");
    let arch = row.arch.as_deref().unwrap_or("jaw not known");
    let failed: Vec<String> = row
        .failed_checks
        .iter()
        .flat_map(|codes| codes.split(' '))
        .map(|code| code.replace('-', " "))
        .collect();
    html! {
        figure.view {
            @if let Some(picture) = &one.thumbnail {
                @if let Ok(png) = std::fs::read(one.folder.join(&picture.file)) {
                    (thumbnail(case, picture, &png))
                }
            } @else {
                p.aside { "No picture: which way the scan faces was not found." }
            }
            figcaption {
                a href={ (one.link) "/" (one.opens) } { strong { (case) } }
                ", " (arch) " " (words(&row.stage)) ": " strong { (words(&row.verdict)) }
                br;
                (one.fails) " failing: " (failed.join(", "))
                br;
                @match row.cover_min_mm {
                    Some(mm) => { "least thickness " (format::quantity(mm, row.cover_uncertainty_mm, "mm")) }
                    None => { "thickness not measured" }
                }
            }
        }
    }
}

fn unreadable(shown: &Shown) -> Markup {
    let all = shown.overview.verdicts.unreadable;
    let more = all - shown.page.unreadable.len() as u64;
    html! {
        h2 { "Not read: " (all) }
        table {
            thead { tr { th { "case" } th { "why" } } }
            tbody {
                @for (case, why) in &shown.page.unreadable { tr { th { (case) } td { (why) } } }
            }
        }
        @if more > 0 { p { "And " (more) " more, each a row of summary.csv." } }
    }
}
