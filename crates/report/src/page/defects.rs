//! Defects of the tissue surface.

use super::figure::{none, quantity};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{Defect, DefectKind, ImpressionResult};
use maud::{Markup, html};

pub fn part(
    _material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    if impression.defects.is_empty() {
        return None;
    }
    let rows: Vec<Vec<Markup>> = impression.defects.iter().map(row).collect();
    let columns = [
        "Defect",
        "What",
        "Where",
        "Width (k = 2)",
        "Depth or height (k = 2)",
        "Area of its opening",
    ];
    Some(html! {
        h3 { "Defects of the tissue surface" }
        p { "Those that miss a limit are findings; the limits of each kind stand in the table of limits." }
        (table("Defects of the tissue surface", &columns, &rows))
    })
}

fn row(defect: &Defect) -> Vec<Markup> {
    vec![
        words(&defect.id),
        words(match defect.kind {
            DefectKind::Void => "void",
            DefectKind::Nodule => "nodule",
            DefectKind::Fold => "fold",
            DefectKind::Hole => "hole in the scan",
        }),
        place(Some(&defect.zone), defect.side),
        quantity(defect.across_mm, Some(defect.across_uncertainty_mm), "mm"),
        match defect.depth_mm {
            Some(depth) => quantity(depth, defect.depth_uncertainty_mm, "mm"),
            None => none("a hole has no depth"),
        },
        quantity(defect.area_mm2, None, "mm2"),
    ]
}
