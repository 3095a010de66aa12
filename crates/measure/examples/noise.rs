//! Prints the noise of mesh files, mm, for comparison with other libraries, as
//! one line of JSON a file: `noise FILE...`. `tests/outside/noise.py` runs it.

use mesh::read_scan;
use std::error::Error;
use std::io::{Write, stdout};
use std::path::Path;

fn main() -> Result<(), Box<dyn Error>> {
    let files: Vec<String> = std::env::args().skip(1).collect();
    if files.is_empty() {
        return Err("usage: noise FILE...".into());
    }
    for file in files {
        let scan = read_scan(Path::new(&file))?;
        let noise_mm = geometry::noise::noise_mm(&scan.mesh).ok_or("a mesh without vertices")?;
        writeln!(stdout(), "{{\"noise_mm\": {noise_mm:?}}}")?;
    }
    Ok(())
}
