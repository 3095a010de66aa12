//! How many nearest places a second the spatial index finds.
//!
//! `nearest_rate write DIR` writes a curved shell and a cloud of points near it
//! as raw little-endian numbers, for another library to read; `nearest_rate
//! time DIR THREADS` prints, as one line of JSON, the seconds that building the
//! index and answering all points took, and writes the distances.
//! `tests/outside/nearest_rate.py` runs it beside Open3D.

use mesh::{Mesh, SpatialIndex};
use nalgebra::{Point3, Vector3};
use std::error::Error;
use std::f64::consts::TAU;
use std::fs;
use std::io::Write;
use std::path::Path;
use std::time::Instant;

/// Cells along and across the shell: two triangles each, 100,352 in all.
const CELLS: [u32; 2] = [448, 112];
/// Points to ask for.
const POINTS: u32 = 120_000;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match arguments
        .iter()
        .map(String::as_str)
        .collect::<Vec<_>>()
        .as_slice()
    {
        ["write", folder] => write(Path::new(folder)),
        ["time", folder, threads] => time(Path::new(folder), threads.parse()?),
        _ => Err("usage: nearest_rate write DIR | nearest_rate time DIR THREADS".into()),
    }
}

/// A place on the middle of a trough bent into an arch, the two parameters
/// from 0 to 1: 25 to 30 mm from the middle of the arch to the trough's, about
/// 10 mm from the trough's middle line to its wall, mm.
fn shell(along: f64, across: f64) -> Point3<f64> {
    let turn = TAU * (0.6 * along - 0.05);
    let round = TAU * (0.55 * across + 0.475);
    let wave = 1.0 + 0.03 * (23.0 * turn).sin() * (9.0 * round).cos();
    let (out, up) = (8.0 * wave * round.cos(), 11.0 * wave * round.sin());
    Point3::new(
        (25.0 + out) * turn.cos(),
        (30.0 + out) * turn.sin(),
        up + 2.0 * (2.0 * turn).cos(),
    )
}

fn normal(along: f64, across: f64) -> Vector3<f64> {
    const STEP: f64 = 1e-5;
    let u = shell(along + STEP, across) - shell(along - STEP, across);
    let v = shell(along, across + STEP) - shell(along, across - STEP);
    u.cross(&v).normalize()
}

/// A surface and the points whose nearest places on it are asked for.
struct Scene {
    mesh: Mesh,
    points: Vec<Point3<f64>>,
}

/// The shell's mesh and points 1 to 4 mm off it on either side, scattered
/// evenly but in no order (Roberts' generalised golden ratio sequence).
/// All coordinates are exact in `f32`.
fn scene() -> Result<Scene, Box<dyn Error>> {
    let [m, n] = CELLS;
    let share = |i: u32, of: u32| f64::from(i) / f64::from(of);
    let vertices = (0..=m)
        .flat_map(|i| (0..=n).map(move |j| rounded(shell(share(i, m), share(j, n)))))
        .collect();
    let triangles = (0..m)
        .flat_map(|i| (0..n).map(move |j| i * (n + 1) + j))
        .flat_map(|a| [[a, a + n + 1, a + n + 2], [a, a + n + 2, a + 1]])
        .collect();
    const RATIO: f64 = 1.220_744_084_605_759_6;
    let points = (1..=POINTS)
        .map(|i| {
            let [u, v, w] = [1, 2, 3].map(|k| (f64::from(i) / RATIO.powi(k)).fract());
            let off = (1.0 + 3.0 * w) * if i % 2 == 0 { 1.0 } else { -1.0 };
            rounded(shell(u, v) + off * normal(u, v))
        })
        .collect();
    Ok(Scene {
        mesh: Mesh::new(vertices, triangles, None)?,
        points,
    })
}

fn rounded(p: Point3<f64>) -> Point3<f64> {
    p.map(|c| f64::from(c as f32))
}

fn write(folder: &Path) -> Result<(), Box<dyn Error>> {
    let Scene { mesh, points } = scene()?;
    let bytes = |points: &[Point3<f64>]| -> Vec<u8> {
        points
            .iter()
            .flat_map(|p| {
                p.iter()
                    .flat_map(|&c| (c as f32).to_le_bytes())
                    .collect::<Vec<_>>()
            })
            .collect()
    };
    fs::write(folder.join("vertices.f32"), bytes(mesh.vertices()))?;
    fs::write(folder.join("points.f32"), bytes(&points))?;
    let corners = mesh.triangles().as_flattened();
    fs::write(
        folder.join("triangles.u32"),
        corners
            .iter()
            .flat_map(|v| v.to_le_bytes())
            .collect::<Vec<_>>(),
    )?;
    Ok(())
}

fn time(folder: &Path, threads: usize) -> Result<(), Box<dyn Error>> {
    let Scene { mesh, points } = scene()?;
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()?;
    let (build, query, found) = pool.install(|| {
        let started = Instant::now();
        let index = SpatialIndex::new(&mesh);
        let build = started.elapsed().as_secs_f64();
        let started = Instant::now();
        let found = index.nearest_many(&points, f64::INFINITY);
        (build, started.elapsed().as_secs_f64(), found)
    });
    let distances: Option<Vec<u8>> = found
        .iter()
        .map(|nearest| nearest.map(|n| n.distance.to_le_bytes()))
        .collect::<Option<Vec<_>>>()
        .map(|all| all.concat());
    fs::write(
        folder.join("distances.f64"),
        distances.ok_or("a point found no triangle")?,
    )?;
    writeln!(
        std::io::stdout(),
        r#"{{"triangles": {}, "points": {}, "build_s": {build:.6}, "query_s": {query:.6}}}"#,
        mesh.triangles().len(),
        points.len()
    )?;
    Ok(())
}
