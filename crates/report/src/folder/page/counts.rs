//! What the page covers, and its counts with their intervals.

use super::html::Shown;
use crate::folder::overview::{GroupRate, Overview, Rate};
use crate::page::table;
use crate::result::Verdict;
use crate::text::format;
use crate::text::words::{stage_words, verdict_word};
use maud::{Markup, html};
use messages::Language;

/// Verdicts with the word of the result and what each means.
const VERDICTS: [(&str, Verdict, &str); 4] = [
    (
        "accept",
        Verdict::Accept,
        "ready for the next step, subject to what was not judged",
    ),
    (
        "rework",
        Verdict::Rework,
        "correct the places that fail, then take the wash or repeat it",
    ),
    ("retake", Verdict::Retake, "take the impression again"),
    (
        "undecided",
        Verdict::Undecided,
        "something is missing, or too close to call",
    ),
];

fn cell(text: impl std::fmt::Display) -> Markup {
    html! { (text) }
}

/// `99.5 %`, and its 95 % interval; empty of none.
pub(super) fn rate_cells(rate: &Rate) -> [Markup; 2] {
    let share = format::share_of(rate.part, rate.of);
    [cell(share), cell(interval(rate))]
}

fn interval(rate: &Rate) -> String {
    match (rate.low, rate.high) {
        (Some(low), Some(high)) => format::share_interval([low, high]),
        _ => String::new(),
    }
}

/// The first sentence of the page.
pub(super) fn pass_rate(overview: &Overview) -> String {
    let [accepted, of] = [overview.verdicts.accept, overview.checked()];
    let rate = Rate::of(accepted, of);
    let mut said = format!("{accepted} of {of} cases that were read are accepted");
    if of > 0 {
        said += &format!(
            ": {}, 95 % interval {}",
            format::share_of(accepted, of),
            interval(&rate)
        );
    }
    said += ".";
    if overview.verdicts.unreadable > 0 {
        said += &format!(" {} could not be read.", overview.verdicts.unreadable);
    }
    said
}

/// What the page is of, so that nobody has to remember it.
pub(super) fn covers(shown: &Shown) -> Markup {
    let overview = &shown.overview;
    let how = &overview.conditions;
    let shards = match (how.shard, how.shards) {
        (Some(number), of) => format!("shard {number} of {of}: the other cases are not here"),
        (None, 0 | 1) => "all cases in one run".to_owned(),
        (None, of) => format!("all {of} shards, joined"),
    };
    let scans = match (&overview.first_scan, &overview.last_scan) {
        (Some(first), Some(last)) => format!("{first} to {last}"),
        _ => "not known".to_owned(),
    };
    let rows = [
        ("Folder, by SHA-256", overview.folder_sha256.clone()),
        (
            "Cases",
            format!(
                "{}, of which {} could not be read",
                overview.cases, overview.verdicts.unreadable
            ),
        ),
        (
            "Impressions",
            format!(
                "{}, of which {} are to be worked from and {} were superseded by a wash",
                overview.impressions,
                overview.current(),
                overview.impressions - overview.current()
            ),
        ),
        ("Scanned (UTC), first to last", scans),
        (
            "Time of scanning, by source",
            overview.times_by.in_words(["case", "cases"]),
        ),
        (
            "Limits, by name and SHA-256",
            format!("{}, {}", how.protocol, how.protocol_sha256),
        ),
        ("Version", format!("archproof {}", how.program)),
        ("Shards", shards),
    ];
    let rows = rows.map(|(name, value)| vec![cell(name), cell(value)]);
    html! {
        h2 #covers { "What this page covers" }
        div.titled.bare { (table("What this page covers", &["what", "value"], &rows)) }
        p.aside {
            "The time of scanning is what the case file states (scanned_at) or else the last change of the scan "
            "file, which copying may set anew. The SHA-256 of the folder is of what "
            "was given of each case and the name of its results, whatever limits were used."
        }
    }
}

pub(super) fn verdicts(shown: &Shown) -> Markup {
    let overview = &shown.overview;
    let checked = overview.checked();
    let impressions = |word: &str| overview.impressions_by_verdict.get(word).copied();
    let cases = |word: &str| overview.rates.get(word).map_or(0, |rate| rate.part);
    let rows = VERDICTS.map(|(word, verdict, meaning)| {
        let rate = Rate::of(cases(word), checked);
        let [share, interval] = rate_cells(&rate);
        vec![
            html! { strong { (verdict_word(verdict, Language::English)) } ": " (meaning) },
            cell(rate.part),
            share,
            interval,
            cell(impressions(word).unwrap_or(0)),
        ]
    });
    let columns = [
        "verdict",
        "cases",
        "share of the cases that were read",
        "95 % interval",
        "impressions to be worked from",
    ];
    html! {
        h2 #verdicts { "Verdicts" }
        div.titled { (table("Verdicts", &columns, &rows)) }
        p.aside {
            "Intervals are score intervals (Wilson 1927). For cases like these, such an interval contains the true "
            "share 95 times in 100."
        }
        (undecided(overview))
        (superseded(overview))
    }
}

fn undecided(overview: &Overview) -> Markup {
    let because = overview.undecided_because;
    let of = overview.verdicts.undecided;
    let rows = [
        (
            "a question comes first (which jaw, which way, which unit)",
            because.question,
        ),
        ("something is missing that a verdict needs", because.missing),
        (
            "too close to its limit to call, or for a person to see",
            because.look,
        ),
        ("the parcel is not complete", because.parcel),
        (
            "not every impression could be measured",
            because.not_measured,
        ),
    ];
    let rows = rows.map(|(why, count)| {
        let [share, interval] = rate_cells(&Rate::of(count, of));
        vec![cell(why), cell(count), share, interval]
    });
    html! {
        @if of > 0 {
            h3 { "Why cases are undecided" }
            div.titled { (table("Why cases are undecided", &["what comes first", "cases", "share of the undecided", "95 % interval"], &rows)) }
        }
    }
}

/// Impressions that a wash followed: their faults are not counted above.
fn superseded(overview: &Overview) -> Markup {
    let of: u64 = overview.superseded_by_verdict.values().sum();
    let rows: Vec<Vec<Markup>> = VERDICTS
        .iter()
        .map(|(word, verdict, _)| {
            let count = overview.superseded_by_verdict.get(*word).copied();
            let [share, interval] = rate_cells(&Rate::of(count.unwrap_or(0), of));
            let word = html! { (verdict_word(*verdict, Language::English)) };
            vec![word, cell(count.unwrap_or(0)), share, interval]
        })
        .collect();
    html! {
        @if of > 0 {
            h3 { "Impressions that a wash has superseded" }
            p.aside { "The wash decides: these are counted here alone." }
            div.titled { (table("Superseded impressions", &["verdict on it", "impressions", "share", "95 % interval"], &rows)) }
        }
    }
}

/// Share accepted by jaw, by stage, and by both.
pub(super) fn pass_rates(shown: &Shown) -> Markup {
    let rows: Vec<Vec<Markup>> = shown.overview.pass_rates.iter().map(group_row).collect();
    let columns = ["group", "accepted", "of", "share", "95 % interval"];
    html! {
        h2 #rates { "Accepted, by group" }
        p.aside { "Impressions to be worked from. An interval is wide where a group is small." }
        div.titled { (table("Accepted, by group", &columns, &rows)) }
        @if shown.overview.groups_left_out > 0 {
            p { "Labels with too many values are not listed: they are in summary.csv." }
        }
    }
}

fn group_row(group: &GroupRate) -> Vec<Markup> {
    let rate = &group.rate;
    let [share, interval] = rate_cells(rate);
    let name = match group.by.strip_prefix("label ") {
        Some(key) => format!("{key}: {}", group.group),
        None => stage_words(&group.group),
    };
    vec![cell(name), cell(rate.part), cell(rate.of), share, interval]
}

pub(super) fn not_judged(shown: &Shown) -> Markup {
    let rows = shown.overview.not_judged.iter().map(|check| {
        let [share, interval] = rate_cells(&check.rate);
        vec![cell(&check.group), cell(check.rate.part), share, interval]
    });
    let rows: Vec<Vec<Markup>> = rows.collect();
    html! {
        h2 #not-judged { "Not judged" }
        @if rows.is_empty() {
            p { "Every check was made everywhere." }
        } @else {
            p.aside {
                "Impressions to be worked from on which a check was not made, or not along the whole border or "
                "surface. No verdict covers these. 'archproof explain CODE' says what each is."
            }
            div.titled { (table("Not judged", &["check", "impressions", "share", "95 % interval"], &rows)) }
        }
    }
}
