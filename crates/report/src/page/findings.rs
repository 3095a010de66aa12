//! What fails and what is a question, most urgent first, each with its close
//! picture and its section.

use super::chapter::{Chapter, folded};
use super::figure::{decided, limit};
use super::filled::{PART, filled};
use super::material::Material;
use super::{notes, overlay};
use crate::picture::MOST_CLOSE;
use crate::result::{Bound, Finding, Severity};
use crate::text::steps::pressing;
use crate::text::words::{check_name, finding_place, place_on_tray};
use maud::{Markup, html};
use messages::{Language, text};
use std::collections::BTreeMap;

/// Findings of one impression that stand in front with picture and section; the others
/// stand in a table, so that the print stays short.
const MOST_IN_FULL: usize = 4;

pub fn chapters(material: &Material<'_>) -> Vec<Chapter> {
    let language = material.language;
    let (in_full, further) = by_room(pressing(material.result));
    let body = html! {
        @if in_full.is_empty() {
            p { (text!(language, "page-no-findings")) }
        } @else {
            p { (text!(language, "page-decision")) }
        }
        (articles(material, &in_full))
        @if !further.is_empty() {
            (notes::table(material.result, &text!(language, "page-further-places"), &further, language))
            @let heading = html! { h3 { (text!(language, "page-further-places-in-full")) } };
            (folded("findings-in-full", &heading, &articles(material, &further)))
        }
    };
    let heading = text!(language, "page-findings");
    vec![Chapter::first("findings", &heading, body)]
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
            p { (text!(material.language, "page-close-pictures")) }
        }
    }
}

/// How a finding came out, in words.
pub fn severity(severity: Severity, language: Language) -> String {
    let severity = match severity {
        Severity::Fail => "fail",
        Severity::Borderline => "borderline",
        Severity::Note => "note",
    };
    text!(language, "page-severity", severity = severity)
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
    let (language, id) = (material.language, finding.id.as_str());
    let place = finding_place(material.result, finding, language);
    let number = place_in_order(material, finding);
    let picture = material.pictures.close.get(number).and_then(Option::as_ref);
    let drawing = finding
        .drawing
        .as_deref()
        .and_then(|file| material.drawing(file));
    html! {
        article id=(finding.id) class=(class) {
            h3 {
                (finding.id) " " (check_name(&finding.check, language))
                @if !place.is_empty() { ": " (place) }
                " " span.badge { (severity(finding.severity, language)) }
            }
            div.beside {
                div {
                    @if let Some(gist) = gist(&finding.check, language) { p.gist { (gist) } }
                    @if let Some(figure) = figure(finding, language) {
                        p.measured { (filled(&text!(language, "page-measured", figure = PART[0]), &[figure])) }
                    }
                    @if let Some(name) = finding.refers_to.as_deref() {
                        p.aside { (text!(language, "page-listed-as", name = name)) }
                    }
                    @if let Some(place) = place_on_tray(material.result, finding, language) {
                        p.aside { (text!(language, "summary-on-tray", place = place)) }
                    }
                    p.instruction {
                        strong { (text!(language, "page-do")) " " }
                        (finding.instruction_in(language))
                    }
                }
                @if let Some(picture) = picture {
                    figure.close { (overlay::close(material, finding, picture)) }
                }
            }
            @if let Some(drawing) = drawing {
                figure.section {
                    div.scroll role="region" tabindex="0" aria-label=(text!(language, "page-section", finding = id)) { (drawing) }
                    figcaption data-drag=(drag(language)) { (text!(language, "page-section-caption", finding = id)) }
                }
            }
        }
    }
}

/// What is said, on a phone, under a drawing that is wider than its screen.
pub fn drag(language: Language) -> String {
    text!(language, "page-drag")
}

/// What the check is, from its page.
fn gist(code: &str, language: Language) -> Option<String> {
    let check = code.parse::<judge::Check>().ok()?;
    Some(check.gist_in(language))
}

/// The figure with uncertainty, unit and limit; `None` where it is no matter of
/// figures.
pub fn figure(finding: &Finding, language: Language) -> Option<Markup> {
    let (measured, limiting) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    let bound = finding.bound.unwrap_or(Bound::AtLeast);
    let [what, limit_of] = [PART[0], PART[1]];
    let sentence = match bound {
        Bound::AtLeast => text!(language, "figure-at-least", what = what, limit = limit_of),
        Bound::AtMost => text!(language, "figure-at-most", what = what, limit = limit_of),
    };
    let measured = decided(
        language,
        measured,
        finding.uncertainty,
        bound.of(limiting),
        unit,
    );
    Some(filled(
        &sentence,
        &[measured, limit(language, limiting, unit)],
    ))
}
