//! Notes in one table: those that ask for the same stand together, their words
//! once. Pictures and sections of each are folded below it.

use super::chapter::{Chapter, folded};
use super::findings::{articles, figure};
use super::material::Material;
use crate::result::{CaseResult, Finding, Severity};
use crate::text::format::capital;
use crate::text::safety::{speaks_of_safety, without_safety};
use crate::text::words::{check_name, impression_name, side_word, zone_name};
use judge::words::safety;
use maud::{Markup, html};
use messages::{Language, text};

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let (result, language) = (material.result, material.language);
    let notes: Vec<&Finding> = (result.findings.iter())
        .filter(|finding| finding.severity == Severity::Note && !is_superseded(result, finding))
        .collect();
    if notes.is_empty() {
        return Vec::new();
    }
    let heading = text!(language, "page-notes");
    let in_full = html! { h3 { (text!(language, "page-notes-in-full")) } };
    let body = html! {
        p { (text!(language, "page-notes-lead")) }
        (table(result, &heading, &notes, language))
        (folded("notes-in-full", &in_full, &articles(material, &notes)))
    };
    vec![Chapter::first("notes", &heading, body)]
}

/// Whether a later stage of the same jaw followed the impression of a finding.
pub fn is_superseded(result: &CaseResult, finding: &Finding) -> bool {
    impression(result, finding).is_some_and(|one| one.superseded)
}

fn impression<'a>(
    result: &'a CaseResult,
    finding: &Finding,
) -> Option<&'a crate::result::ImpressionResult> {
    let number = usize::try_from(finding.impression?).ok()?;
    result.impressions.get(number)
}

/// Findings that say the same of one impression.
struct Group<'a> {
    /// The sentences that hold no number, which all of them share.
    shared: Vec<String>,
    findings: Vec<&'a Finding>,
}

fn groups<'a>(findings: &[&'a Finding], language: Language) -> Vec<Group<'a>> {
    let mut groups: Vec<Group<'a>> = Vec::new();
    for &finding in findings {
        let (_, shared) = sentences(finding, language);
        let same = |group: &&mut Group<'_>| {
            let first = group.findings[0];
            (first.impression, &first.check) == (finding.impression, &finding.check)
                && group.shared == shared
        };
        match groups.iter_mut().find(same) {
            Some(group) => group.findings.push(finding),
            None => groups.push(Group {
                shared,
                findings: vec![finding],
            }),
        }
    }
    groups
}

/// Sentences of an instruction: those with a number, which speak of one place, and the
/// others. What is said of safety follows the table.
fn sentences(finding: &Finding, language: Language) -> (Vec<String>, Vec<String>) {
    let text = without_safety(finding, language);
    let has_number = |sentence: &String| sentence.contains(|c: char| c.is_ascii_digit());
    text.split_inclusive(". ")
        .map(|sentence| sentence.trim_end().to_owned())
        .partition(has_number)
}

/// The table of notes.
pub fn table(result: &CaseResult, caption: &str, notes: &[&Finding], language: Language) -> Markup {
    let is_of_safety = notes.iter().any(|note| speaks_of_safety(note));
    html! {
        div.scroll role="group" aria-label=(caption) tabindex="0" {
            table.notes {
                caption { (caption) }
                thead { tr {
                    th scope="col" { (text!(language, "page-number")) }
                    th scope="col" { (text!(language, "page-where")) }
                    th scope="col" { (text!(language, "page-measured-and-limit")) }
                } }
                @for group in groups(notes, language) { (rows(result, &group, language)) }
            }
        }
        @if is_of_safety { p { (safety().text(language)) } }
    }
}

fn rows(result: &CaseResult, group: &Group<'_>, language: Language) -> Markup {
    let first = group.findings[0];
    let of = impression(result, first).map(|one| impression_name(one, language));
    html! {
        tbody {
            tr {
                th.group colspan="3" scope="rowgroup" {
                    strong {
                        (capital(&check_name(&first.check, language)))
                        @if let Some(of) = of { ", " (of) }
                        ". "
                    }
                    (group.shared.join(" "))
                }
            }
            @for finding in &group.findings {
                tr {
                    th scope="row" { a href={ "#" (finding.id) } { (finding.id) } }
                    td { (place(finding, language)) }
                    td { @if let Some(figure) = figure(finding, language) { (figure) } }
                }
            }
        }
    }
}

/// Zone and side, and what is said of this place alone.
fn place(finding: &Finding, language: Language) -> Markup {
    let zone = finding.zone.as_deref();
    let zone = zone.map(|zone| zone_name(zone, language));
    let side = finding.side.map(|side| side_word(side, language));
    let parts: Vec<String> = zone.into_iter().chain(side).collect();
    let (own, _) = sentences(finding, language);
    html! {
        @if !parts.is_empty() { (capital(&parts.join(", "))) ". " }
        (own.join(" "))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{checked_whole, checked_with_border, checked_with_spots};
    use messages::{Message, message};

    /// A thick flange, or a thin one, on a stretch of border.
    fn instruction(is_thick: bool, [near, far]: [&str; 2]) -> Message {
        let midline = message!("midline-labial");
        let range = message!(
            "stretch-on-side",
            near = near,
            far = far,
            side = "left",
            midline = midline
        );
        let (mould, then) = (message!("mould-again"), message!("then-take-wash"));
        if is_thick {
            message!("flange-thick", range = range, mould = mould, then = then).then(safety())
        } else {
            message!("flange-thin", range = range, mould = mould, then = then)
        }
    }

    #[test]
    fn notes_that_say_the_same_stand_together_and_none_is_lost() {
        let mut result = CaseResult::of(&checked_with_border());
        let one = result.findings[0].clone();
        let said = [
            instruction(true, ["8", "31"]),
            instruction(true, ["46", "66"]),
            instruction(false, ["70", "80"]),
        ];
        result.findings = (said.iter().zip(1..))
            .map(|(said, number)| Finding {
                id: format!("F{number}"),
                severity: Severity::Note,
                instruction: said.to_string(),
                instruction_messages: said.clone(),
                ..one.clone()
            })
            .collect();
        let notes: Vec<&Finding> = result.findings.iter().collect();
        for (language, once) in [
            (Language::English, "Reduce it from the outside"),
            (Language::German, "Von außen"),
            (Language::Spanish, "por fuera"),
        ] {
            let groups = groups(&notes, language);
            let found: Vec<usize> = groups.iter().map(|group| group.findings.len()).collect();
            assert_eq!(found, [2, 1], "{language}");
            let table = table(&result, "Notes", &notes, language).into_string();
            for words in ["F1", "F2", "F3", "8", "31", "46", "66", "70", "80"] {
                assert!(table.contains(words), "{words}");
            }
            for words in [once, &safety().text(language)] {
                assert_eq!(table.matches(words).count(), 1, "{words}");
            }
        }
    }

    #[test]
    fn notes_are_grouped_alike_in_each_language() {
        for checked in [checked_whole(), checked_with_border(), checked_with_spots()] {
            let result = CaseResult::of(&checked);
            let notes: Vec<&Finding> = result.findings.iter().collect();
            let ids = |language| -> Vec<Vec<String>> {
                (groups(&notes, language).iter())
                    .map(|group| group.findings.iter().map(|f| f.id.clone()).collect())
                    .collect()
            };
            for language in Language::ALL {
                assert_eq!(ids(language), ids(Language::English), "{language}");
            }
        }
    }
}
