//! The page as markup, in the dress of the report.

use super::charts::{control_chart, heat_map, histogram, pareto, thumbnail};
use super::gathered::{CHARTED, Counts, Page, Worst};
use crate::page::{cautions, whole};
use crate::result::Verdict;
use crate::text::format;
use crate::text::words::verdict_word;
use maud::{Markup, PreEscaped, html};

/// A section of the page.
type Section = fn(&Page) -> Markup;

const SECTIONS: [Section; 6] = [
    verdicts,
    what_fails,
    where_it_lies,
    spreads,
    over_time,
    worst,
];

impl Page {
    /// The page as text.
    #[must_use]
    pub fn html(mut self) -> String {
        self.keep_latest();
        self.keep_worst();
        page(&self)
    }
}

fn page(page: &Page) -> String {
    let title = format!("{} cases - impressions checked", page.cases);
    let body = html! {
        main {
            header {
                p.kicker { "Summary of a folder of cases" }
                h1 { (page.cases) " cases, " (page.impressions) " impressions" }
                p.lead { (pass_rate(page)) }
            }
            @for section in SECTIONS { section { (section(page)) } }
            @if page.unreadable_count > 0 { section { (unreadable(page)) } }
            (cautions())
        }
        footer {
            p { "Cases go by pseudonyms. Every row is in summary.csv and findings.csv." }
        }
    };
    whole(&title, &body)
}

fn svg(drawing: String) -> Markup {
    PreEscaped(drawing)
}

fn share(part: u64, of: u64) -> f64 {
    part as f64 / of.max(1) as f64
}

fn pass_rate(page: &Page) -> String {
    let checked = page.cases - page.unreadable_count;
    let accepted = page.cases_by_verdict.get("accept").copied().unwrap_or(0);
    let rate = format::percent(share(accepted, checked));
    let mut said = format!("{accepted} of {checked} cases checked are accepted: pass rate {rate}.");
    if page.unreadable_count > 0 {
        said += &format!(" {} could not be checked.", page.unreadable_count);
    }
    said
}

fn verdicts(page: &Page) -> Markup {
    let checked = page.cases - page.unreadable_count;
    let count = |of: &Counts<String>, word: &str| of.get(word).copied().unwrap_or(0);
    html! {
        h2 { "Verdicts" }
        table {
            thead { tr { th { "verdict" } th { "cases" } th { "share of cases" } th { "impressions" } } }
            tbody {
                @for (word, verdict, meaning) in [
                    ("accept", Verdict::Accept, "ready for the next step, subject to what was not judged"),
                    ("rework", Verdict::Rework, "correct the places that fail, then take the wash or repeat it"),
                    ("retake", Verdict::Retake, "take the impression again"),
                    ("undecided", Verdict::Undecided, "something is missing, or too close to call"),
                ] {
                    @let cases = count(&page.cases_by_verdict, word);
                    tr {
                        th { strong { (verdict_word(verdict)) } ": " (meaning) }
                        td { (cases) }
                        td { (format::percent(share(cases, checked))) }
                        td { (count(&page.impressions_by_verdict, word)) }
                    }
                }
            }
        }
    }
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

fn what_fails(page: &Page) -> Markup {
    const ROWS: usize = 15;
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

fn where_it_lies(page: &Page) -> Markup {
    html! {
        h2 { "Where on the arch" }
        p.aside {
            "Findings that fail, counted in squares of 4 mm, in the impression frame: tissue side toward "
            "you, front up. Grey lines: the borders of some of the impressions."
        }
        div.views {
            @for (name, arch) in &page.arches {
                figure.view {
                    (svg(heat_map(name, &arch.faults, &arch.outlines)))
                    figcaption { (name) ": " (arch.faults.len()) " findings with a place" }
                }
            }
        }
    }
}

fn spreads(page: &Page) -> Markup {
    html! {
        h2 { "Distributions" }
        p.aside { "One figure for each impression; the dashed line is their median. Uncertainties are in summary.csv." }
        @for (name, arch) in &page.arches {
            h3 { (name) }
            div.views {
                @for (title, values) in [
                    ("Median cover, mm", &arch.cover_median),
                    ("Least cover, mm", &arch.cover_min),
                    ("Median flange height, mm", &arch.flange_height),
                    ("Median flange thickness, mm", &arch.flange_thickness),
                ] {
                    figure.view {
                        (svg(histogram(title, values)))
                        figcaption { (title) }
                    }
                }
            }
        }
    }
}

fn over_time(page: &Page) -> Markup {
    html! {
        h2 { "Over time" }
        p.aside {
            "Individuals and moving ranges of the latest impressions of each jaw, in the order in which their "
            "scan files were last changed. Limits lie three standard deviations from the mean; the standard "
            "deviation is the mean moving range over 1.128, the limit of the ranges their mean times "
            "3.267. What lies outside is ringed: a reason to look at scanner, material or mix of cases, "
            "and no fault of an impression in itself."
        }
        @for (name, which) in page.arches.keys().flat_map(|name| (0..CHARTED.len()).map(move |w| (name, w))) {
            @let of_arch = page.latest.iter().filter(|one| one.arch == *name);
            @let values: Vec<f64> = of_arch.filter_map(|one| one.figures[which]).collect();
            h3 { (CHARTED[which].0) ", " (name) }
            @match control_chart(which, &values) {
                Some((chart, outside)) => {
                    p { (values.len()) " impressions, " (outside) " outside the limits of individuals." }
                    div.scroll { (svg(chart)) }
                }
                None => { p { "Fewer than two impressions have this figure." } }
            }
        }
    }
}

fn worst(page: &Page) -> Markup {
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

fn unreadable(page: &Page) -> Markup {
    let more = page.unreadable_count - page.unreadable.len() as u64;
    html! {
        h2 { "Not checked: " (page.unreadable_count) }
        table {
            thead { tr { th { "case" } th { "why" } } }
            tbody {
                @for (case, why) in &page.unreadable { tr { th { (case) } td { (why) } } }
            }
        }
        @if more > 0 { p { "And " (more) " more, each a row of summary.csv." } }
    }
}
