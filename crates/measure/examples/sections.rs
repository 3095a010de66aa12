//! Prints how long the cuts of a mesh file by planes that hold its z axis are,
//! for comparison with other libraries: `sections FILE COUNT` gives, as JSON,
//! each plane (a point, its normal) with the length of its cut in the file's
//! unit, and the seconds for all. `tests/outside/sections.py` runs it.

use geometry::section::{CutLine, Cutter, SectionPlane};
use mesh::read_scan;
use nalgebra::{Vector2, center};
use std::error::Error;
use std::f64::consts::PI;
use std::io::{Write, stdout};
use std::path::Path;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let (Some(file), Some(count)) = (arguments.next(), arguments.next()) else {
        return Err("usage: sections FILE COUNT".into());
    };
    let count: u32 = count.parse()?;
    let mesh = read_scan(Path::new(&file))?.mesh;
    let (low, high) = mesh.bounds().ok_or("a mesh without vertices")?;
    let planes: Vec<SectionPlane> = (0..count)
        .map(|i| {
            let share = (f64::from(i) + 0.5) / f64::from(count);
            let (sin, cos) = (PI * share).sin_cos();
            let mut origin = center(&low, &high);
            origin.x += (high.x - low.x) * 0.4 * (share - 0.5);
            SectionPlane {
                origin,
                across: Vector2::new(cos, sin),
            }
        })
        .collect();
    let start = Instant::now();
    let cutter = Cutter::new(&mesh, |_| true);
    let everything = f64::NEG_INFINITY..=f64::INFINITY;
    let cuts: Vec<Vec<CutLine>> = planes
        .iter()
        .map(|plane| cutter.cut(plane, everything.clone()))
        .collect();
    let seconds = start.elapsed().as_secs_f64();
    let rows: Vec<String> = planes
        .iter()
        .zip(&cuts)
        .map(|(plane, lines)| {
            let [x, y, z]: [f64; 3] = plane.origin.coords.into();
            let (across, length) = (plane.across, lines.iter().map(length).sum::<f64>());
            format!(
                "{{\"point\": [{x:?}, {y:?}, {z:?}], \"normal\": [{:?}, {:?}, 0.0], \
                 \"length\": {length:?}, \"closed\": {}}}",
                -across.y,
                across.x,
                lines.iter().all(CutLine::is_closed)
            )
        })
        .collect();
    writeln!(
        stdout(),
        "{{\"seconds\": {seconds:?}, \"planes\": [{}]}}",
        rows.join(", ")
    )?;
    Ok(())
}

fn length(line: &CutLine) -> f64 {
    line.points
        .windows(2)
        .map(|pair| (pair[1][0] - pair[0][0]).hypot(pair[1][1] - pair[0][1]))
        .sum()
}
