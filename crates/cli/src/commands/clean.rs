//! `archproof clean`.

use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use mesh::read::shown_path;
use mesh::read_scan;
use mesh::write::write_exactly;
use std::path::Path;

pub fn run(from: &Path, to: &Path) -> Result<(), Failure> {
    let scan = read_scan(from)?;
    if same_file::is_same_file(from, to).unwrap_or(false) {
        return Err(Failure::OverItself(to.to_owned()));
    }
    let format = uninterrupted(|| write_exactly(to, &scan.mesh))?;
    let colours = match scan.mesh.colours() {
        Some(_) => " with colours",
        None => "",
    };
    let mut said = format!(
        "{}: {} triangles, {} vertices{colours}, {}, without any text\n",
        shown_path(to),
        scan.mesh.triangles().len(),
        scan.mesh.vertices().len(),
        format.name(),
    );
    for warning in &scan.warnings {
        said.push_str(&format!("Reading: {warning}\n"));
    }
    if scan.stl_attributes {
        said.push_str("Reading: the attribute bytes of its triangles were left out\n");
    }
    say(&said)?;
    Ok(())
}
