//! What fails and what is a question, most urgent first, each with its close
//! picture and its section.

use super::chapter::{Chapter, folded};
use super::figure::{decided, limit};
use super::material::Material;
use super::{notes, overlay};
use crate::picture::MOST_CLOSE;
use crate::result::{Bound, Finding, Severity};
use crate::text::steps::pressing;
use crate::text::words::{finding_place, place_on_tray};
use maud::{Markup, html};
use messages::Language;
use std::collections::BTreeMap;

/// Findings of one impression that stand in front with picture and section; the others
/// stand in a table, so that the print stays short.
const MOST_IN_FULL: usize = 4;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let (in_full, further) = by_room(pressing(material.result));
    let body = html! {
        @if in_full.is_empty() {
            p { "Nothing fails, and nothing is left open in the checks that were made." }
        } @else {
            p {
                "The value after ± is the measuring uncertainty (95 % coverage, k = 2). A check fails only when "
                "the value is beyond its limit even after allowing for that uncertainty, and passes only when "
                "it is within the limit by the same margin. Anything between is reported as too close to call."
            }
        }
        (articles(material, &in_full))
        @if !further.is_empty() {
            (notes::table(material.result, "Further places that fail or are open", &further))
            (folded("findings-in-full", &html! { h3 { "These further places with their pictures and sections" } }, &articles(material, &further)))
        }
    };
    let heading = "What fails and what is open, most urgent first";
    vec![Chapter::first("findings", heading, body)]
}

/// The most urgent findings of each impression, to be shown in full, and the others.
fn by_room<'a>(
    findings: impl Iterator<Item = &'a Finding>,
) -> (Vec<&'a Finding>, Vec<&'a Finding>) {
    let mut shown: BTreeMap<Option<u64>, usize> = BTreeMap::new();
    findings.partition(|finding| {
        let count = shown.entry(finding.impression).or_default();
        *count += 1;
        *count <= MOST_IN_FULL
    })
}

/// Findings one after the other, each in full.
pub fn articles(material: &Material<'_>, findings: &[&Finding]) -> Markup {
    html! {
        @for finding in findings { (article(material, finding)) }
        @if findings.iter().any(|finding| place_in_order(material, finding) >= MOST_CLOSE) {
            p { "Close pictures are made of the most urgent findings only." }
        }
    }
}

/// How a finding came out, in words.
pub fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Fail => "fails",
        Severity::Borderline => "cannot be decided",
        Severity::Note => "note",
    }
}

/// The place of a finding among those of the case, from 0.
fn place_in_order(material: &Material<'_>, finding: &Finding) -> usize {
    let findings = &material.result.findings;
    let place = findings.iter().position(|one| one.id == finding.id);
    place.unwrap_or(findings.len())
}

fn article(material: &Material<'_>, finding: &Finding) -> Markup {
    let class = match finding.severity {
        Severity::Fail => "finding fail",
        Severity::Borderline => "finding borderline",
        Severity::Note => "finding note",
    };
    let place = finding_place(material.result, finding, Language::English);
    let number = place_in_order(material, finding);
    let picture = material.pictures.close.get(number).and_then(Option::as_ref);
    let drawing = finding
        .drawing
        .as_deref()
        .and_then(|file| material.drawing(file));
    html! {
        article id=(finding.id) class=(class) {
            h3 {
                (finding.id) " " (finding.check.replace('-', " "))
                @if !place.is_empty() { ": " (place) }
                " " span.badge { (severity(finding.severity)) }
            }
            div.beside {
                div {
                    @if let Some(gist) = gist(&finding.check) { p.gist { (gist) } }
                    @if let Some(figure) = figure(finding) { p.measured { "Measured " (figure) "." } }
                    @if let Some(name) = &finding.refers_to { p.aside { "Listed as " (name) " in the tables below." } }
                    @if let Some(place) = place_on_tray(material.result, finding, Language::English) { p.aside { "On the tray: " (place) "." } }
                    p.instruction { strong { "Do: " } (finding.instruction) }
                }
                @if let Some(picture) = picture {
                    figure.close { (overlay::close(material.result, finding, picture)) }
                }
            }
            @if let Some(drawing) = drawing {
                figure.section {
                    div.scroll role="region" tabindex="0" aria-label={ "Section of " (finding.id) } { (drawing) }
                    figcaption { "Section at the worst place of " (finding.id) ", with its dimensions." }
                }
            }
        }
    }
}

/// What the check is, from its page.
fn gist(code: &str) -> Option<String> {
    let check = code.parse::<judge::Check>().ok()?;
    Some(check.gist_in(Language::English))
}

/// The figure with uncertainty, unit and limit; `None` where it is no matter of
/// figures.
pub fn figure(finding: &Finding) -> Option<Markup> {
    let (measured, limiting) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    let bound = finding.bound.unwrap_or(Bound::AtLeast);
    Some(html! {
        (decided(Language::English, measured, finding.uncertainty, bound.of(limiting), unit))
        ", " (bound.in_words()) " " (limit(Language::English, limiting, unit))
    })
}
