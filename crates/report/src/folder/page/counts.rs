//! What the page covers, and its counts with their intervals.

use super::html::Shown;
use crate::folder::overview::{GroupRate, Overview, Rate};
use crate::page::table;
use crate::result::{Timed, Verdict};
use crate::text::format;
use crate::text::words::{check_name, group_words, verdict_word};
use maud::{Markup, html};
use messages::{Language, message, text};

/// Verdicts with the word of the result.
const VERDICTS: [(&str, Verdict); 4] = [
    ("accept", Verdict::Accept),
    ("rework", Verdict::Rework),
    ("retake", Verdict::Retake),
    ("undecided", Verdict::Undecided),
];

/// What a verdict asks for.
fn meaning(verdict: Verdict, language: Language) -> String {
    match verdict {
        Verdict::Accept => text!(language, "folder-accept"),
        Verdict::Rework => text!(language, "folder-rework"),
        Verdict::Retake => text!(language, "folder-retake"),
        Verdict::Undecided => text!(language, "folder-undecided"),
    }
}

fn cell(text: impl std::fmt::Display) -> Markup {
    html! { (text) }
}

/// `99.5 %`, and its 95 % interval; empty of none.
fn rate_cells(rate: &Rate, language: Language) -> [Markup; 2] {
    let share = format::share_of(rate.part, rate.of, language);
    [cell(share), cell(interval(rate, language))]
}

fn interval(rate: &Rate, language: Language) -> String {
    match (rate.low, rate.high) {
        (Some(low), Some(high)) => format::share_interval([low, high], language),
        _ => String::new(),
    }
}

/// The first sentence of the page.
pub(super) fn pass_rate(overview: &Overview, language: Language) -> String {
    let [accepted, of] = [overview.verdicts.accept, overview.checked()];
    let said = if of == 0 {
        message!("folder-none-read")
    } else {
        message!(
            "folder-accepted",
            accepted = accepted,
            of = of,
            share = format::share_of(accepted, of, language),
            interval = interval(&Rate::of(accepted, of), language)
        )
    };
    let unread = overview.verdicts.unreadable;
    let unread = (unread > 0).then(|| message!("folder-unread", count = unread));
    said.then(unread).text(language)
}

/// What the page is of, so that nobody has to remember it.
pub(super) fn covers(shown: &Shown) -> Markup {
    let language = shown.language();
    let rows = covered(shown).map(|(name, value)| vec![cell(name), cell(value)]);
    let heading = text!(language, "folder-covers");
    let columns = [
        text!(language, "folder-head-what"),
        text!(language, "folder-head-value"),
    ];
    html! {
        h2 #covers { (heading) }
        div.titled.bare { (table(&heading, &columns, &rows)) }
        p.aside { (text!(language, "folder-covers-note")) }
    }
}

/// What the page is of: names and values.
fn covered(shown: &Shown) -> [(String, String); 8] {
    let (overview, language) = (&shown.overview, shown.language());
    let how = &overview.conditions;
    let shards = match (how.shard, how.shards) {
        (Some(number), of) => text!(language, "folder-one-shard", number = number, of = of),
        (None, 0 | 1) => text!(language, "folder-no-shards"),
        (None, of) => text!(language, "folder-all-shards", of = of),
    };
    let scans = match (&overview.first_scan, &overview.last_scan) {
        (Some(first), Some(last)) => {
            text!(
                language,
                "folder-span",
                first = first.as_str(),
                last = last.as_str()
            )
        }
        _ => text!(language, "time-not-known"),
    };
    let cases = text!(
        language,
        "folder-cases-counted",
        cases = overview.cases,
        unread = overview.verdicts.unreadable
    );
    let impressions = text!(
        language,
        "folder-impressions-counted",
        impressions = overview.impressions,
        current = overview.current(),
        superseded = overview.impressions - overview.current()
    );
    [
        (
            text!(language, "folder-sha"),
            overview.folder_sha256.clone(),
        ),
        (text!(language, "folder-cases"), cases),
        (text!(language, "folder-impressions"), impressions),
        (text!(language, "folder-scanned"), scans),
        (
            text!(language, "folder-time-source"),
            overview.times_by.in_words(Timed::Cases, language),
        ),
        (
            text!(language, "folder-limits"),
            format!("{}, {}", how.protocol, how.protocol_sha256),
        ),
        (
            text!(language, "folder-version"),
            format!("archproof {}", how.program),
        ),
        (text!(language, "folder-shards"), shards),
    ]
}

pub(super) fn verdicts(shown: &Shown) -> Markup {
    let (overview, language) = (&shown.overview, shown.language());
    let checked = overview.checked();
    let impressions = |word: &str| overview.impressions_by_verdict.get(word).copied();
    let cases = |word: &str| overview.rates.get(word).map_or(0, |rate| rate.part);
    let rows = VERDICTS.map(|(word, verdict)| {
        let rate = Rate::of(cases(word), checked);
        let [share, interval] = rate_cells(&rate, language);
        vec![
            html! { strong { (verdict_word(verdict, language)) } ": " (meaning(verdict, language)) },
            cell(rate.part),
            share,
            interval,
            cell(impressions(word).unwrap_or(0)),
        ]
    });
    let heading = text!(language, "folder-verdicts");
    let columns = [
        text!(language, "folder-head-verdict"),
        text!(language, "folder-head-cases"),
        text!(language, "folder-head-share-read"),
        text!(language, "folder-head-interval"),
        text!(language, "folder-head-current"),
    ];
    html! {
        h2 #verdicts { (heading) }
        div.titled { (table(&heading, &columns, &rows)) }
        p.aside { (text!(language, "folder-intervals")) }
        (undecided(overview, language))
        (superseded(overview, language))
    }
}

fn undecided(overview: &Overview, language: Language) -> Markup {
    let because = overview.undecided_because;
    let of = overview.verdicts.undecided;
    let rows = [
        (text!(language, "folder-because-question"), because.question),
        (text!(language, "folder-because-missing"), because.missing),
        (text!(language, "folder-because-look"), because.look),
        (text!(language, "folder-because-parcel"), because.parcel),
        (
            text!(language, "folder-because-not-measured"),
            because.not_measured,
        ),
    ];
    let rows = rows.map(|(why, count)| {
        let [share, interval] = rate_cells(&Rate::of(count, of), language);
        vec![cell(why), cell(count), share, interval]
    });
    let heading = text!(language, "folder-why-undecided");
    let columns = [
        text!(language, "folder-head-comes-first"),
        text!(language, "folder-head-cases"),
        text!(language, "folder-head-share-undecided"),
        text!(language, "folder-head-interval"),
    ];
    html! {
        @if of > 0 {
            h3 { (heading) }
            div.titled { (table(&heading, &columns, &rows)) }
        }
    }
}

/// Impressions that a wash followed: their faults are not counted above.
fn superseded(overview: &Overview, language: Language) -> Markup {
    let of: u64 = overview.superseded_by_verdict.values().sum();
    let rows: Vec<Vec<Markup>> = VERDICTS
        .iter()
        .map(|(word, verdict)| {
            let count = overview.superseded_by_verdict.get(*word).copied();
            let [share, interval] = rate_cells(&Rate::of(count.unwrap_or(0), of), language);
            let word = cell(verdict_word(*verdict, language));
            vec![word, cell(count.unwrap_or(0)), share, interval]
        })
        .collect();
    let columns = [
        text!(language, "folder-head-verdict-on-it"),
        text!(language, "folder-head-impressions"),
        text!(language, "folder-head-share"),
        text!(language, "folder-head-interval"),
    ];
    html! {
        @if of > 0 {
            h3 { (text!(language, "folder-superseded")) }
            p.aside { (text!(language, "folder-superseded-note")) }
            div.titled { (table(&text!(language, "folder-superseded-table"), &columns, &rows)) }
        }
    }
}

/// Share accepted by jaw, by stage, and by both.
pub(super) fn pass_rates(shown: &Shown) -> Markup {
    let language = shown.language();
    let rows: Vec<Vec<Markup>> = (shown.overview.pass_rates.iter())
        .map(|group| group_row(group, language))
        .collect();
    let heading = text!(language, "folder-by-group");
    let columns = [
        text!(language, "folder-head-group"),
        text!(language, "folder-head-accepted"),
        text!(language, "folder-head-of"),
        text!(language, "folder-head-share"),
        text!(language, "folder-head-interval"),
    ];
    html! {
        h2 #rates { (heading) }
        p.aside { (text!(language, "folder-by-group-note")) }
        div.titled { (table(&heading, &columns, &rows)) }
        @if shown.overview.groups_left_out > 0 {
            p { (text!(language, "folder-groups-left-out")) }
        }
    }
}

fn group_row(group: &GroupRate, language: Language) -> Vec<Markup> {
    let rate = &group.rate;
    let [share, interval] = rate_cells(rate, language);
    let name = match group.by.strip_prefix("label ") {
        Some(key) => format!("{key}: {}", group.group),
        None => group_words(&group.group, language),
    };
    vec![cell(name), cell(rate.part), cell(rate.of), share, interval]
}

/// A check by its name and the code that `archproof explain` wants; by the code alone where
/// that is the same.
fn name_and_code(code: &str, language: Language) -> String {
    let name = check_name(code, language);
    if name.replace(' ', "-") == code {
        code.to_owned()
    } else {
        format!("{name} ({code})")
    }
}

pub(super) fn not_judged(shown: &Shown) -> Markup {
    let language = shown.language();
    let rows = shown.overview.not_judged.iter().map(|check| {
        let [share, interval] = rate_cells(&check.rate, language);
        let name = cell(name_and_code(&check.group, language));
        vec![name, cell(check.rate.part), share, interval]
    });
    let rows: Vec<Vec<Markup>> = rows.collect();
    let heading = text!(language, "page-not-judged");
    let columns = [
        text!(language, "folder-head-check"),
        text!(language, "folder-head-impressions"),
        text!(language, "folder-head-share"),
        text!(language, "folder-head-interval"),
    ];
    html! {
        h2 #not-judged { (heading) }
        @if rows.is_empty() {
            p { (text!(language, "folder-all-judged")) }
        } @else {
            p.aside { (text!(language, "folder-not-judged-note")) }
            div.titled { (table(&heading, &columns, &rows)) }
        }
    }
}
