//! Notes in one table: those that ask for the same stand together, their words
//! once. Pictures and sections of each are folded below it.

use super::chapter::{Chapter, folded};
use super::findings::{articles, figure};
use super::material::Material;
use crate::result::{CaseResult, Finding, Severity};
use crate::text::format::capital;
use crate::text::words::{impression_name, side_word};
use judge::words::SAFETY;
use maud::{Markup, html};
use messages::Language;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let result = material.result;
    let notes: Vec<&Finding> = (result.findings.iter())
        .filter(|finding| finding.severity == Severity::Note && !is_superseded(result, finding))
        .collect();
    if notes.is_empty() {
        return Vec::new();
    }
    let body = html! {
        p { "Worth knowing; they change no verdict." }
        (table(result, "Notes", &notes))
        (folded("notes-in-full", &html! { h3 { "The notes with their pictures and sections" } }, &articles(material, &notes)))
    };
    vec![Chapter::first("notes", "Notes", body)]
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
    shared: Vec<&'a str>,
    findings: Vec<&'a Finding>,
}

fn groups<'a>(findings: &[&'a Finding]) -> Vec<Group<'a>> {
    let mut groups: Vec<Group<'a>> = Vec::new();
    for &finding in findings {
        let (_, shared) = sentences(finding);
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
fn sentences(finding: &Finding) -> (Vec<&str>, Vec<&str>) {
    let text = finding.instruction.trim_end_matches(SAFETY).trim_end();
    let has_number = |sentence: &&str| sentence.contains(|c: char| c.is_ascii_digit());
    text.split_inclusive(". ")
        .map(str::trim_end)
        .partition(has_number)
}

/// The table of notes.
pub fn table(result: &CaseResult, caption: &str, notes: &[&Finding]) -> Markup {
    let is_of_safety = notes.iter().any(|note| note.instruction.contains(SAFETY));
    html! {
        div.scroll role="group" aria-label=(caption) tabindex="0" {
            table.notes {
                caption { (caption) }
                thead { tr {
                    th scope="col" { "No." }
                    th scope="col" { "Where" }
                    th scope="col" { "Measured (k = 2), limit" }
                } }
                @for group in groups(notes) { (rows(result, &group)) }
            }
        }
        @if is_of_safety { p { (SAFETY) } }
    }
}

fn rows(result: &CaseResult, group: &Group<'_>) -> Markup {
    let first = group.findings[0];
    let of = impression(result, first).map(|one| impression_name(one, Language::English));
    html! {
        tbody {
            tr {
                th.group colspan="3" scope="rowgroup" {
                    strong {
                        (capital(&first.check.replace('-', " ")))
                        @if let Some(of) = of { ", " (of) }
                        ". "
                    }
                    (group.shared.join(" "))
                }
            }
            @for finding in &group.findings {
                tr {
                    th scope="row" { a href={ "#" (finding.id) } { (finding.id) } }
                    td { (place(finding)) }
                    td { @if let Some(figure) = figure(finding) { (figure) } }
                }
            }
        }
    }
}

/// Zone and side, and what is said of this place alone.
fn place(finding: &Finding) -> Markup {
    let side = finding
        .side
        .map(|side| side_word(side, Language::English).to_owned());
    let parts: Vec<String> = finding.zone.clone().into_iter().chain(side).collect();
    let (own, _) = sentences(finding);
    html! {
        @if !parts.is_empty() { (capital(&parts.join(", "))) ". " }
        (own.join(" "))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::checked_with_border;

    #[test]
    fn notes_that_say_the_same_stand_together_and_none_is_lost() {
        let mut result = CaseResult::of(&checked_with_border());
        let one = result.findings[0].clone();
        let said = [
            "Thick from 8 to 31 mm left. Look at it.",
            "Thick from 46 to 66 mm right. Look at it.",
            "Thick from 70 to 80 mm right. Reduce it.",
        ];
        result.findings = (said.iter().zip(1..))
            .map(|(said, number)| Finding {
                id: format!("F{number}"),
                severity: Severity::Note,
                instruction: format!("{said} {SAFETY}"),
                ..one.clone()
            })
            .collect();
        let notes: Vec<&Finding> = result.findings.iter().collect();
        let found: Vec<usize> = groups(&notes).iter().map(|g| g.findings.len()).collect();
        assert_eq!(found, [2, 1]);
        let table = table(&result, "Notes", &notes).into_string();
        for words in ["F1", "F2", "F3", "from 8 to 31 mm", "from 46 to 66 mm"] {
            assert!(table.contains(words), "{words}");
        }
        assert_eq!(table.matches("Look at it.").count(), 1);
        assert_eq!(table.matches(SAFETY).count(), 1);
    }
}
