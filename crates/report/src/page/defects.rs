//! Defects of the tissue surface.

use super::figure::{none, quantity};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{Defect, DefectKind, ImpressionResult};
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    if impression.defects.is_empty() {
        return None;
    }
    let language = material.language;
    let defects = impression.defects.iter();
    let rows: Vec<Vec<Markup>> = defects.map(|defect| row(language, defect)).collect();
    let columns = [
        text!(language, "head-defect"),
        text!(language, "head-what"),
        text!(language, "head-where"),
        text!(language, "head-width"),
        text!(language, "head-depth-or-height"),
        text!(language, "head-opening"),
    ];
    let heading = text!(language, "defects");
    Some(html! {
        h3 { (heading) }
        p { (text!(language, "defects-limits")) }
        (table(&heading, &columns, &rows))
    })
}

fn row(language: Language, defect: &Defect) -> Vec<Markup> {
    vec![
        words(&defect.id),
        words(kind(language, defect.kind)),
        place(language, Some(&defect.zone), defect.side),
        quantity(
            language,
            defect.across_mm,
            Some(defect.across_uncertainty_mm),
            "mm",
        ),
        match defect.depth_mm {
            Some(depth) => quantity(language, depth, defect.depth_uncertainty_mm, "mm"),
            None => none(language, &text!(language, "defect-no-depth")),
        },
        quantity(language, defect.area_mm2, None, "mm2"),
    ]
}

fn kind(language: Language, kind: DefectKind) -> String {
    match kind {
        DefectKind::Void => text!(language, "defect-void"),
        DefectKind::Nodule => text!(language, "defect-nodule"),
        DefectKind::Fold => text!(language, "defect-fold"),
        DefectKind::Hole => text!(language, "defect-hole"),
    }
}
