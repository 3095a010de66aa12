//! Puts the figures that the tests of promises have gathered below `target`
//! into `crates/promises/FIGURES.md`; those not measured again stay.

use promises::figures::{gathered, of_table, put, table};
use std::path::Path;

fn main() -> std::io::Result<()> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("FIGURES.md");
    let (before, mut figures) = of_table(&std::fs::read_to_string(&path)?);
    for figure in gathered() {
        put(&mut figures, figure);
    }
    std::fs::write(path, before + &table(&figures))
}
