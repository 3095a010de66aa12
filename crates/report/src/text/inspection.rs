//! A quick look at scan files as a table, one row a file.

use crate::studies::inspection::{InspectedScan, Inspection};

/// The row of a table, in columns of fixed width, the file's name and the
/// remarks last.
#[must_use]
pub fn inspection_row(of: &Inspection) -> String {
    let columns = match &of.scan {
        Some(scan) => columns(scan),
        None => format!("{:<WIDTH$}", "not read"),
    };
    let of_scan = of.scan.iter().flat_map(remarks);
    let remarks: Vec<String> = of.refused.iter().cloned().chain(of_scan).collect();
    if remarks.is_empty() {
        format!("{columns}  {}", of.file)
    } else {
        format!("{columns}  {}: {}", of.file, remarks.join("; "))
    }
}

/// Width of all columns of a row but the last.
const WIDTH: usize = 94;

/// The head of the table.
#[must_use]
pub fn inspection_head() -> String {
    format!(
        "{:<17} {:<4} {:<21} {:<7} {:>6} {:>6} {:>6}  {:>8}  {:>9}  file: remarks",
        "size, mm", "unit", "shows", "sides", "parts", "loops", "faults", "edge, mm", "noise, mm"
    )
}

fn columns(scan: &InspectedScan) -> String {
    let [x, y, z] = scan.size_mm.map(|side| format!("{side:.0}"));
    let sides = match scan.has_outer_surface {
        Some(true) => "both",
        Some(false) => "tissue",
        None => "?",
    };
    let shows = &scan.shows;
    let noise = scan
        .noise_mm
        .map_or_else(|| "?".to_owned(), |mm| format!("{mm:.3}"));
    format!(
        "{:<17} {:<4} {shows:<21} {sides:<7} {:>6} {:>6} {:>6}  {:>8.2}  {noise:>9}",
        format!("{x} x {y} x {z}"),
        format!("{}{}", scan.unit, if scan.unit_in_doubt { "?" } else { "" }),
        scan.components,
        scan.boundary_loops,
        scan.non_manifold_edges + scan.degenerate_triangles,
        scan.median_edge_mm,
    )
}

fn remarks(scan: &InspectedScan) -> Vec<String> {
    /// Share of doubled area that is worth a word.
    const NOTABLE: f64 = 0.001;
    let text = scan.carries_text.then(|| {
        "holds free text, which may name a person ('archproof clean' writes it without)".to_owned()
    });
    let doubled = (scan.double_layer_share > NOTABLE).then(|| {
        let percent = 100.0 * scan.double_layer_share;
        format!("{percent:.1} % of it lies in double layers")
    });
    let other = scan.not_an_impression.as_ref();
    other
        .map(|what| format!("not an impression: {what}"))
        .into_iter()
        .chain(scan.warnings.iter().cloned())
        .chain(doubled)
        .chain(text)
        .collect()
}
