//! The page as markup, in the dress of the report.

use super::cases::{list, with_table};
use super::charts::{heat_map, histogram, pareto, thumbnail};
use super::counts::{covers, not_judged, pass_rate, pass_rates, verdicts};
use super::drift::over_time;
use super::gathered::{OfArch, Page, Worst};
use crate::folder::conditions::Conditions;
use crate::folder::drift::{Drift, Series};
use crate::folder::overview::Overview;
use crate::folder::spread::Spread;
use crate::page::{PART, cautions, in_language, table};
use crate::text::format;
use crate::text::words::{check_name, group_words, verdict_name, zone_name};
use maud::{Markup, PreEscaped, html};
use messages::{Language, Value, text};

/// What is shown.
pub(super) struct Shown {
    pub(super) overview: Overview,
    pub(super) page: Page,
    pub(super) drift: Drift,
}

impl Shown {
    pub(super) fn language(&self) -> Language {
        self.page.language
    }
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
    let language = shown.language();
    let Overview {
        cases, impressions, ..
    } = shown.overview;
    let title = text!(language, "folder-title", cases = cases);
    let heading = text!(
        language,
        "folder-heading",
        cases = cases,
        impressions = impressions
    );
    let body = html! {
        main {
            header {
                p.kicker { (text!(language, "folder-kicker")) }
                h1 { (heading) }
                p.lead { (pass_rate(&shown.overview, language)) }
            }
            @for section in SECTIONS { section { (section(shown)) } }
            @if shown.overview.verdicts.unreadable > 0 { section { (unreadable(shown)) } }
            (cautions(language))
        }
        footer { p { (text!(language, "folder-footer")) } }
    };
    in_language(&title, &body, language)
}

pub(super) fn svg(drawing: String) -> Markup {
    PreEscaped(drawing)
}

/// The most frequent first; beyond `rows`, the rest together.
fn ordered(mut counts: Vec<(String, u64)>, rows: usize, language: Language) -> Vec<(String, u64)> {
    counts.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
    if counts.len() > rows {
        let rest = counts.split_off(rows);
        let others = text!(language, "folder-all-others");
        counts.push((others, rest.iter().map(|c| c.1).sum()));
    }
    counts
}

fn what_fails(shown: &Shown) -> Markup {
    const ROWS: usize = 15;
    let (page, language) = (&shown.page, shown.language());
    let by_check = page.by_check.iter();
    let by_check = by_check.map(|(check, &count)| (check_name(check, language), count));
    let by_zone = page.by_zone.iter().map(|((check, zone), &count)| {
        let zone = zone.as_ref().map_or_else(
            || text!(language, "folder-the-whole"),
            |zone| zone_name(zone, language),
        );
        (format!("{}, {zone}", check_name(check, language)), count)
    });
    let charts = [
        (text!(language, "folder-by-check"), by_check.collect()),
        (
            text!(language, "folder-by-check-and-zone"),
            by_zone.collect(),
        ),
    ];
    html! {
        h2 { (text!(language, "folder-failures")) }
        @if page.by_check.is_empty() {
            p { (text!(language, "folder-nothing-failed")) }
        } @else {
            p.aside { (text!(language, "folder-failures-note")) }
            @for (title, counts) in charts {
                h3 { (title) }
                div.scroll.pareto { (svg(pareto(&title, &ordered(counts, ROWS, language), language))) }
            }
        }
    }
}

fn where_it_lies(shown: &Shown) -> Markup {
    let language = shown.language();
    let placed = |name: &str, arch: &OfArch| {
        text!(
            language,
            "folder-placed",
            jaw = group_words(name, language),
            count = arch.faults.values().sum::<u64>()
        )
    };
    html! {
        h2 { (text!(language, "folder-where")) }
        p.aside { (text!(language, "folder-where-note")) }
        div.views {
            @for (name, arch) in &shown.page.arches {
                figure.view {
                    (svg(heat_map(name, &arch.faults, &arch.outlines, language)))
                    figcaption { (placed(name, arch)) }
                }
            }
        }
    }
}

/// What is spread, of one jaw, mm.
fn spreads_of(arch: &OfArch, language: Language) -> [(String, &Spread); 4] {
    [
        (text!(language, "spread-thickness"), &arch.cover_median),
        (text!(language, "spread-least-thickness"), &arch.cover_min),
        (text!(language, "spread-flange-height"), &arch.flange_height),
        (
            text!(language, "spread-flange-thickness"),
            &arch.flange_thickness,
        ),
    ]
}

fn spreads(shown: &Shown) -> Markup {
    let language = shown.language();
    html! {
        h2 { (text!(language, "folder-spreads")) }
        p.aside { (text!(language, "folder-spreads-note")) }
        @for (name, arch) in &shown.page.arches {
            h3 { (format::capital(&group_words(name, language))) }
            div.views {
                @for (title, values) in spreads_of(arch, language) {
                    figure.view {
                        (svg(histogram(&title, values, language)))
                        figcaption { (title) }
                    }
                }
            }
            (spreads_table(name, arch, language))
        }
    }
}

fn spreads_table(name: &str, arch: &OfArch, language: Language) -> Markup {
    const PARTS: [f64; 5] = [0.0, 0.05, 0.5, 0.95, 1.0];
    let columns = [
        text!(language, "folder-head-figure"),
        text!(language, "folder-head-impressions"),
        text!(language, "folder-head-least"),
        text!(language, "folder-head-percentile", percent = 5),
        text!(language, "folder-head-median"),
        text!(language, "folder-head-percentile", percent = 95),
        text!(language, "folder-head-most"),
    ];
    let rows = spreads_of(arch, language).map(|(title, values)| {
        let parts = PARTS.map(|part| {
            let value = values.quantile(part).map(format::two_decimals);
            html! { (format::in_language(value.unwrap_or_default(), language)) }
        });
        let head = [html! { (title) }, html! { (values.total()) }];
        head.into_iter().chain(parts).collect()
    });
    let caption = text!(
        language,
        "folder-spreads-of",
        jaw = group_words(name, language)
    );
    table(&caption, &columns, &rows)
}

fn worst(shown: &Shown) -> Markup {
    let (page, language) = (&shown.page, shown.language());
    html! {
        h2 { (text!(language, "folder-worst")) }
        @if page.worst.is_empty() {
            p { (text!(language, "folder-nothing-failed")) }
        } @else {
            p.aside { (text!(language, "folder-worst-note")) }
            div.views {
                @for one in &page.worst { (card(one, language)) }
            }
        }
    }
}

fn card(one: &Worst, language: Language) -> Markup {
    let row = &one.row;
    let case = row.case.as_deref().unwrap_or_default();
    let arch = row.arch.as_deref().unwrap_or("unknown");
    let stage = row.stage.as_deref().unwrap_or("single");
    let group = group_words(&format!("{arch} {stage}"), language);
    let verdict = verdict_name(row.verdict.as_deref().unwrap_or_default(), language);
    let failed: Vec<String> = (row.failed_checks.iter())
        .flat_map(|codes| codes.split(' '))
        .map(|code| check_name(code, language))
        .collect();
    let failing = text!(
        language,
        "folder-failing",
        count = one.fails,
        checks = failed.join(", ")
    );
    let thickness = match row.cover_min_mm {
        Some(mm) => {
            let least = Value::figure(format::quantity(mm, row.cover_uncertainty_mm, "mm"));
            text!(language, "page-least-thickness", thickness = least)
        }
        None => text!(language, "folder-thickness-not-measured"),
    };
    html! {
        figure.view {
            @if let Some(picture) = &one.thumbnail {
                @if let Ok(png) = std::fs::read(one.folder.join(&picture.file)) {
                    (thumbnail(case, picture, &png, language))
                }
            } @else {
                p.aside { (text!(language, "folder-no-picture")) }
            }
            figcaption {
                a href={ (one.link) "/" (one.opens) } { strong { (case) } }
                ", " (group) ": " strong { (verdict) }
                br;
                (failing)
                br;
                (thickness)
            }
        }
    }
}

fn unreadable(shown: &Shown) -> Markup {
    let language = shown.language();
    let all = shown.overview.verdicts.unreadable;
    let more = all - shown.page.unreadable.len() as u64;
    html! {
        h2 { (text!(language, "folder-not-read", count = all)) }
        table {
            thead { tr { th { (text!(language, "folder-head-case")) } th { (text!(language, "folder-head-why")) } } }
            tbody {
                @for (case, why) in &shown.page.unreadable { tr { th { (case) } td { (why) } } }
            }
        }
        @if more > 0 {
            p { (with_table(&text!(language, "folder-more-not-read", count = more, table = PART[0]))) }
        }
    }
}
