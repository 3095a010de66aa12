//! `archproof manual`: the manual pages, for whoever makes a package.

use crate::command_line::Arguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use clap::CommandFactory;
use clap_mangen::Man;
use mesh::write::write_atomically;
use report::WriteError;
use std::fs;
use std::io;
use std::path::Path;

/// Foot of each page.
const SOURCE: &str = concat!("archproof ", env!("CARGO_PKG_VERSION"));
/// One program gives the same pages on any day; quoted, or the next word would take the
/// date's place.
const NO_DATE: &str = "\"\"";

/// A page to be: the name of its file and its text.
type Page = (String, Vec<u8>);

/// Writes a page for the program and one for each of its commands.
pub fn run(dir: &Path) -> Result<(), Failure> {
    fs::create_dir_all(dir).map_err(|source| WriteError::Io {
        path: dir.to_owned(),
        source,
    })?;
    for (name, text) in pages()? {
        uninterrupted(|| write_atomically(&dir.join(name), |out| out.write_all(&text)))?;
    }
    Ok(())
}

fn pages() -> io::Result<Vec<Page>> {
    let mut program = Arguments::command();
    program.build();
    let mut pages = Vec::new();
    add(&program, &mut pages)?;
    Ok(pages)
}

/// Adds the page of a command and those of the commands below it.
fn add(command: &clap::Command, pages: &mut Vec<Page>) -> io::Result<()> {
    let page = Man::new(command.clone()).date(NO_DATE).source(SOURCE);
    let mut text = Vec::new();
    page.render(&mut text)?;
    pages.push((page.get_filename(), text));
    let shown = command
        .get_subcommands()
        .filter(|below| !below.is_hide_set());
    for below in shown {
        add(below, pages)?;
    }
    Ok(())
}
