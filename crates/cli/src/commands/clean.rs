//! `archproof clean`.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use check::reader::{format_name, warned};
use mesh::read::shown_path;
use mesh::read_scan;
use mesh::write::write_exactly;
use messages::{Language, message, text};
use std::path::Path;

pub fn run(from: &Path, to: &Path, language: Language) -> Result<(), Failure> {
    let scan = read_scan(from)?;
    if same_file::is_same_file(from, to).unwrap_or(false) {
        return Err(Failure::OverItself(to.to_owned()));
    }
    let format = uninterrupted(|| write_exactly(to, &scan.mesh))?;
    let written = message!(
        "clean-written",
        path = shown_path(to),
        triangles = scan.mesh.triangles().len(),
        vertices = scan.mesh.vertices().len(),
        colours = if scan.mesh.colours().is_some() {
            "some"
        } else {
            "none"
        },
        format = format_name(format)
    );
    let attributes = scan.stl_attributes;
    let attributes = attributes.then(|| message!("clean-attribute-bytes"));
    let mut said = written.text(language) + "\n";
    for odd in scan.warnings.iter().map(warned).chain(attributes) {
        said += &(text!(language, "clean-reading", warning = odd) + "\n");
    }
    say(&said)?;
    Ok(())
}
