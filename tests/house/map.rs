//! The house in words: what a change should not make worse.

use super::circles::ties_of;
use super::functions::{Function, Shape};
use super::plan::{permissions_of, wrong_arrows};
use super::whole::{Crate, House};
use std::fmt::Write;

/// Functions are shorter than this, lines.
pub const LONG_FUNCTION: usize = 80;
/// Files are no longer than this, lines.
pub const LONG_FILE: usize = 600;
/// So many imports of a circle are shown.
const TIES_SHOWN: usize = 8;

/// A long function and where it is.
#[derive(Debug, Clone)]
pub struct Long<'a> {
    /// Path of the file below the house's folder.
    pub file: String,
    /// The function.
    pub function: &'a Function,
}

/// The functions of [`LONG_FUNCTION`] lines and more, the longest first.
#[must_use]
pub fn long_functions(house: &House) -> Vec<Long<'_>> {
    let mut found: Vec<Long<'_>> = Vec::new();
    for room in &house.crates {
        for (number, file) in room.files.iter().enumerate() {
            let long = file.functions.iter().filter(|f| f.lines >= LONG_FUNCTION);
            found.extend(long.map(|function| Long {
                file: room.path(number).display().to_string(),
                function,
            }));
        }
    }
    found.sort_by_key(|long| usize::MAX - long.function.lines);
    found
}

/// The whole map as text.
#[must_use]
pub fn in_words(house: &House) -> String {
    let mut text = String::new();
    // Writing to a string does not fail.
    let _ = write(house, &mut text);
    text
}

fn write(house: &House, out: &mut String) -> std::fmt::Result {
    writeln!(out, "Crates (files, lines) and the crates they need:")?;
    for room in &house.crates {
        let lines: usize = room.files.iter().map(|file| file.lines).sum();
        let for_tests = permissions_of(&room.name).is_some_and(|row| row.is_for_tests);
        let note = if for_tests { " (never shipped)" } else { "" };
        let (name, files, needs) = (&room.name, room.files.len(), room.needs.join(", "));
        writeln!(out, "  {name:<11} {files:>4} {lines:>6}  {needs}{note}")?;
    }
    let wrong = wrong_arrows(house);
    writeln!(out, "\nArrows against the plan: {}", wrong.len())?;
    for arrow in wrong {
        let note = if arrow.is_for_tests { " (tests)" } else { "" };
        writeln!(out, "  {} -> {}{note}", arrow.from, arrow.to)?;
    }
    let circles: usize = house.crates.iter().map(|room| room.circles().len()).sum();
    writeln!(out, "\nCircles of files: {circles}")?;
    for room in &house.crates {
        write_circles(room, out)?;
    }
    write_long(house, out)?;
    let shipped = house.shipped.len();
    writeln!(
        out,
        "\nPackages of the command that users run, all systems: {shipped}"
    )
}

fn write_circles(room: &Crate, out: &mut String) -> std::fmt::Result {
    for circle in room.circles() {
        let path = |file: usize| room.files[file].path.display();
        writeln!(out, "  {}: {} files", room.name, circle.len())?;
        let ties: Vec<_> = ties_of(&circle, &room.imports).collect();
        for tie in ties.iter().take(TIES_SHOWN) {
            let names: Vec<&str> = tie.names.iter().map(String::as_str).collect();
            let names = names.join(", ");
            writeln!(out, "    {} -> {}: {names}", path(tie.from), path(tie.to))?;
        }
        if ties.len() > TIES_SHOWN {
            writeln!(out, "    and {} more", ties.len() - TIES_SHOWN)?;
        }
    }
    Ok(())
}

fn write_long(house: &House, out: &mut String) -> std::fmt::Result {
    let long = long_functions(house);
    let count = long.len();
    writeln!(
        out,
        "\nFunctions of {LONG_FUNCTION} lines and more: {count}"
    )?;
    for Long { file, function } in long {
        let note = match function.shape {
            Shape::Steps => "",
            Shape::OneMatch => " (one match)",
            Shape::Table => " (a table)",
        };
        let Function {
            name, line, lines, ..
        } = function;
        writeln!(out, "  {lines:>4} {name}{note}  {file}:{line}")?;
    }
    writeln!(out, "\nFiles over {LONG_FILE} lines:")?;
    for room in &house.crates {
        for (number, file) in room.files.iter().enumerate() {
            if file.lines > LONG_FILE {
                writeln!(out, "  {:>4} {}", file.lines, room.path(number).display())?;
            }
        }
    }
    Ok(())
}
