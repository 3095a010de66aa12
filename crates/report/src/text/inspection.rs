//! A quick look at scan files as a table, one row a file.

use super::format::in_language;
use crate::studies::inspection::{InspectedScan, Inspection};
use messages::{Language, Value, text};

/// A column before the file's name.
struct Column {
    /// Its width, where its head is not wider.
    least: usize,
    is_left: bool,
    /// Blanks before it.
    gap: usize,
}

const fn column(least: usize, is_left: bool, gap: usize) -> Column {
    Column {
        least,
        is_left,
        gap,
    }
}

const COLUMNS: [Column; 9] = [
    column(17, true, 0),
    column(4, true, 1),
    column(21, true, 1),
    column(7, true, 1),
    column(6, false, 1),
    column(6, false, 1),
    column(6, false, 1),
    column(8, false, 2),
    column(9, false, 2),
];

/// The row of a table, in columns of fixed width, the file's name and the
/// remarks last.
#[must_use]
pub fn inspection_row(of: &Inspection, language: Language) -> String {
    let columns = match &of.scan {
        Some(scan) => in_columns(&cells(scan, language), language),
        None => {
            let width = in_columns(&[const { String::new() }; 9], language).len();
            format!("{:<width$}", text!(language, "inspect-not-read"))
        }
    };
    let refused = of.refused.iter().map(|why| why.text(language));
    let of_scan = of.scan.iter().flat_map(|scan| remarks(scan, language));
    let remarks: Vec<String> = refused.chain(of_scan).collect();
    if remarks.is_empty() {
        format!("{columns}  {}", of.file)
    } else {
        format!("{columns}  {}: {}", of.file, remarks.join("; "))
    }
}

/// The head of the table.
#[must_use]
pub fn inspection_head(language: Language) -> String {
    let last = text!(language, "inspect-head-file");
    format!("{}  {last}", in_columns(&heads(language), language))
}

fn heads(language: Language) -> [String; 9] {
    [
        text!(language, "inspect-head-size"),
        text!(language, "inspect-head-unit"),
        text!(language, "inspect-head-shows"),
        text!(language, "inspect-head-sides"),
        text!(language, "inspect-head-parts"),
        text!(language, "inspect-head-loops"),
        text!(language, "inspect-head-faults"),
        text!(language, "inspect-head-edge"),
        text!(language, "inspect-head-noise"),
    ]
}

/// Cells in columns that are as wide for every row: a row is printed before the next is known.
fn in_columns(cells: &[String; 9], language: Language) -> String {
    let heads = heads(language);
    let columns = COLUMNS.iter().zip(&heads).zip(cells);
    let placed = columns.map(|((column, head), cell)| {
        let width = column.least.max(head.chars().count());
        let gap = " ".repeat(column.gap);
        if column.is_left {
            format!("{gap}{cell:<width$}")
        } else {
            format!("{gap}{cell:>width$}")
        }
    });
    placed.collect()
}

fn cells(scan: &InspectedScan, language: Language) -> [String; 9] {
    let [x, y, z] = scan.size_mm.map(|side| format!("{side:.0}"));
    let sides = match scan.has_outer_surface {
        Some(true) => text!(language, "inspect-both-sides"),
        Some(false) => text!(language, "inspect-tissue-side"),
        None => "?".to_owned(),
    };
    let noise = scan.noise_mm.map(|mm| format!("{mm:.3}"));
    [
        format!("{x} x {y} x {z}"),
        format!("{}{}", scan.unit, if scan.unit_in_doubt { "?" } else { "" }),
        scan.shows.text(language),
        sides,
        scan.components.to_string(),
        scan.boundary_loops.to_string(),
        (scan.non_manifold_edges + scan.degenerate_triangles).to_string(),
        in_language(format!("{:.2}", scan.median_edge_mm), language),
        noise.map_or_else(|| "?".to_owned(), |mm| in_language(mm, language)),
    ]
}

fn remarks(scan: &InspectedScan, language: Language) -> Vec<String> {
    /// Share of doubled area that is worth a word.
    const NOTABLE: f64 = 0.001;
    let text = scan.carries_text;
    let text = text.then(|| text!(language, "inspect-free-text"));
    let doubled = (scan.double_layer_share > NOTABLE).then(|| {
        let percent = Value::number(100.0 * scan.double_layer_share, 1);
        text!(language, "inspect-double-layers", percent = percent)
    });
    let other = scan.not_an_impression.as_ref().map(|what| {
        let what = what.text(language);
        text!(language, "inspect-not-an-impression", what = what)
    });
    let warnings = scan.warnings.iter().map(|said| said.text(language));
    other
        .into_iter()
        .chain(warnings)
        .chain(doubled)
        .chain(text)
        .collect()
}
