//! Each impression: pictures, border, landmarks, figures, scan.

use super::material::Material;
use super::{border, cover, defects, landmarks, scan, tray_fit, views};
use crate::result::ImpressionResult;
use crate::text::format::capital;
use crate::text::words::{impression_name, verdict_word};
use maud::{Markup, html};

/// A part of an impression's account; `None` where there is nothing for it.
type Part = fn(&Material<'_>, usize, &ImpressionResult) -> Option<Markup>;

const PARTS: [Part; 7] = [
    views::part,
    border::part,
    landmarks::part,
    cover::part,
    tray_fit::part,
    defects::part,
    scan::part,
];

pub fn section(material: &Material<'_>) -> Option<Markup> {
    let impressions = material.result.impressions.iter().enumerate();
    Some(html! {
        @for (number, impression) in impressions {
            section.impression {
                h2 id={ "impression-" (number + 1) } {
                    (capital(&impression_name(impression))) ": " (verdict_word(impression.verdict))
                }
                @for part in PARTS {
                    @if let Some(markup) = part(material, number, impression) { (markup) }
                }
            }
        }
    })
}
