//! Every finding, most urgent first, with its close picture and its section.

use super::figure::{decided, limit};
use super::material::Material;
use super::overlay;
use crate::picture::MOST_CLOSE;
use crate::result::{Bound, Finding, Severity};
use crate::text::words::finding_place;
use maud::{Markup, html};

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let findings = &material.result.findings;
    Some(html! {
        section {
            h2 #findings { "Findings, most urgent first" }
            @if findings.is_empty() {
                p { "None." }
            } @else {
                p {
                    "The value after ± is the measuring uncertainty (95 % coverage, k = 2). A check fails only when "
                    "the value is beyond its limit even after allowing for that uncertainty, and passes only when "
                    "it is within the limit by the same margin. Anything between is reported as too close to call."
                }
            }
            @for (number, finding) in findings.iter().enumerate() { (article(material, number, finding)) }
            @if findings.len() > MOST_CLOSE {
                p { "Close pictures are made of the most urgent findings only." }
            }
        }
    })
}

/// How a finding came out, in words.
pub fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Fail => "fails",
        Severity::Borderline => "cannot be decided",
        Severity::Note => "note",
    }
}

fn article(material: &Material<'_>, number: usize, finding: &Finding) -> Markup {
    let class = match finding.severity {
        Severity::Fail => "finding fail",
        Severity::Borderline => "finding borderline",
        Severity::Note => "finding note",
    };
    let place = finding_place(material.result, finding);
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
                    @if let Some(figure) = figure(finding) { p.measured { (figure) } }
                    @if let Some(name) = &finding.refers_to { p.aside { "Listed as " (name) " in the tables below." } }
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
fn gist(code: &str) -> Option<&'static str> {
    code.parse::<judge::Check>().ok().map(judge::Check::gist)
}

/// The figure with uncertainty, unit and limit; `None` where it is no matter of
/// figures.
fn figure(finding: &Finding) -> Option<Markup> {
    let (measured, limiting) = finding.measured.zip(finding.limit)?;
    let unit = finding.unit.as_deref().unwrap_or("1");
    let bound = finding.bound.unwrap_or(Bound::AtLeast);
    Some(html! {
        "Measured " (decided(measured, finding.uncertainty, bound.of(limiting), unit))
        ", " (bound.in_words()) " " (limit(limiting, unit)) "."
    })
}
