//! The proposal as a table for people.

use super::concluded::Proposal;
use super::evidence::Evidence;
use std::fmt::Write;
use std::path::Path;

/// A file's name without its folder, safe to print.
#[must_use]
pub fn file_name(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default();
    mesh::read::shown_path(Path::new(name)).to_string()
}

/// One row for each scan: file, what it is, how surely, and why.
#[must_use]
pub fn table(evidence: &Evidence, proposal: &Proposal) -> String {
    let head = ["file", "is", "how sure", "why"].map(str::to_owned);
    let rows = evidence
        .scans
        .iter()
        .zip(&proposal.placed)
        .map(|(scan, placed)| {
            let role = placed
                .role
                .map_or_else(|| "?".to_owned(), |role| role.to_string());
            let file = file_name(&scan.file);
            let mut why = placed.why.clone();
            for remark in &placed.remarks {
                why += "; ";
                why += remark;
            }
            [file, role, placed.surety.to_string(), why]
        });
    let rows: Vec<[String; 4]> = std::iter::once(head).chain(rows).collect();
    let width = |column: usize| {
        let lengths = rows.iter().map(|row| row[column].chars().count());
        lengths.max().unwrap_or(0)
    };
    let [file, role, surety] = [0, 1, 2].map(width);
    let mut text = String::new();
    for row in &rows {
        // Writing to a String cannot fail.
        let _ = writeln!(
            text,
            "{:file$}  {:role$}  {:surety$}  {}",
            row[0], row[1], row[2], row[3]
        );
    }
    text
}
