//! The proposal as a table for people.

use super::concluded::Proposal;
use super::evidence::Evidence;
use messages::{Language, text};
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
pub fn table(evidence: &Evidence, proposal: &Proposal, language: Language) -> String {
    let head = [
        text!(language, "desk-head-scan"),
        text!(language, "desk-head-is"),
        text!(language, "desk-head-surety"),
        text!(language, "desk-head-why"),
    ];
    let scans = evidence.scans.iter().zip(&proposal.placed);
    let rows = scans.map(|(scan, placed)| {
        let role =
            (placed.role).map_or_else(|| "?".to_owned(), |role| role.message().text(language));
        let surety = placed.surety.message().text(language);
        [
            file_name(&scan.file),
            role,
            surety,
            placed.reasons(language),
        ]
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
