//! Prints how long it takes to read a scan, beside the time that the bytes
//! alone take: `cargo run --release -p archproof-mesh --example read_speed FILE`.
//! Without a file it reads a bowl of 500,000 triangles in each of the usual
//! formats, and prints how many times the bytes alone each takes.
//!
//! `read_speed --turns` reads one file for each line of standard input, and
//! prints the seconds that took the mesh (bytes read, and made a mesh of), the
//! scan (with the SHA-256 of its bytes) and the bytes alone, for
//! `tests/outside/load_speed.py`.
#![allow(clippy::print_stdout, clippy::print_stderr)]

use mesh::write::{encode_ply, encode_stl};
use mesh::{Mesh, MeshError};
use std::error::Error;
use std::path::Path;
use std::process::ExitCode;
use std::time::{Duration, Instant};

/// The median of this many runs is printed.
const RUNS: usize = 9;

fn main() -> ExitCode {
    let files: Vec<_> = std::env::args_os().skip(1).collect();
    if files.first().is_some_and(|argument| argument == "--turns") {
        return take_turns();
    }
    if files.is_empty() {
        return match read_each_format() {
            Ok(()) => ExitCode::SUCCESS,
            Err(error) => {
                eprintln!("{error}");
                ExitCode::FAILURE
            }
        };
    }
    for file in &files {
        let path = Path::new(file);
        let scan = match mesh::read_scan(path) {
            Ok(scan) => scan,
            Err(error) => {
                eprintln!("{error}");
                return ExitCode::FAILURE;
            }
        };
        let bytes = std::fs::read(path).unwrap_or_default();
        let bytes_alone = median(|| std::fs::read(path).map(|b| b.len()));
        let hash = median(|| mesh::read::sha256_of(&bytes));
        let parse = median(|| mesh::read::parse(&bytes));
        let whole = median(|| mesh::read_scan(path));
        println!(
            "{}, {} triangles, {} vertices: bytes alone {:.1} ms, SHA-256 {:.1} ms, parsing {:.1} ms, whole {:.1} ms = {:.1} x the bytes alone",
            scan.format.name(),
            scan.mesh.triangles().len(),
            scan.mesh.vertices().len(),
            ms(bytes_alone),
            ms(hash),
            ms(parse),
            ms(whole),
            whole.as_secs_f64() / bytes_alone.as_secs_f64(),
        );
    }
    ExitCode::SUCCESS
}

/// A bowl of two triangles for each of 500 by 500 squares, with ripples.
fn bowl() -> Result<Mesh, MeshError> {
    const SQUARES: u32 = 500;
    let along = |i: u32| 70.0 * f64::from(i) / f64::from(SQUARES) - 35.0;
    let vertices = (0..=SQUARES)
        .flat_map(|i| (0..=SQUARES).map(move |j| (along(i), along(j))))
        .map(|(x, y)| {
            let z = 0.01 * (x * x + y * y) + 0.02 * (17.0 * x).sin() * (13.0 * y).cos();
            [x, y, z].map(|c| f64::from(c as f32)).into()
        });
    let number = |i: u32, j: u32| i * (SQUARES + 1) + j;
    let triangles = (0..SQUARES).flat_map(|i| {
        (0..SQUARES).flat_map(move |j| {
            let [a, b, c, d] = [(0, 0), (1, 0), (0, 1), (1, 1)].map(|(k, l)| number(i + k, j + l));
            [[a, b, d], [a, d, c]]
        })
    });
    Mesh::new(vertices.collect(), triangles.collect(), None)
}

fn ascii_stl(mesh: &Mesh) -> String {
    let mut text = String::from("solid\n");
    for t in 0..mesh.triangles().len() {
        let n = mesh.area_vector(t).normalize();
        text += &format!("facet normal {:e} {:e} {:e}\nouter loop\n", n.x, n.y, n.z);
        for p in mesh.corners(t) {
            text += &format!(
                "vertex {:e} {:e} {:e}\n",
                p.x as f32, p.y as f32, p.z as f32
            );
        }
        text += "endloop\nendfacet\n";
    }
    text + "endsolid\n"
}

/// Reads the bowl in each format, in turns with its bytes alone; the least time
/// of each counts, since whatever else the machine does only adds to it.
fn read_each_format() -> Result<(), Box<dyn Error>> {
    const TURNS: usize = 30;
    let mesh = bowl()?;
    let coloured = mesh
        .clone()
        .with_colours(Some(vec![[200, 150, 140]; mesh.vertices().len()]))?;
    let folder = tempfile::tempdir()?;
    for (name, file, bytes) in [
        ("binary STL", "b.stl", encode_stl(&mesh)?),
        ("binary PLY", "b.ply", encode_ply(&mesh, &[])?),
        ("binary PLY in colour", "c.ply", encode_ply(&coloured, &[])?),
        ("ASCII STL", "a.stl", ascii_stl(&mesh).into_bytes()),
    ] {
        let path = folder.path().join(file);
        std::fs::write(&path, &bytes)?;
        drop(bytes);
        let (mut alone, mut read, mut scan) = (f64::MAX, f64::MAX, f64::MAX);
        for _ in 0..TURNS {
            alone = alone.min(seconds(|| std::fs::read(&path)));
            read = read.min(seconds(|| {
                std::fs::read(&path).map(|bytes| mesh::read::parse(&bytes))
            }));
            scan = scan.min(seconds(|| mesh::read_scan(&path)));
        }
        println!(
            "{name}: bytes alone {:.1} ms; mesh {:.1} ms = {:.1} times; with SHA-256 {:.1} ms = {:.1} times",
            1e3 * alone,
            1e3 * read,
            read / alone,
            1e3 * scan,
            scan / alone,
        );
    }
    Ok(())
}

fn take_turns() -> ExitCode {
    for line in std::io::stdin().lines().map_while(Result::ok) {
        let path = Path::new(&line);
        let bytes_alone = seconds(|| std::fs::read(path));
        let scan = seconds(|| mesh::read_scan(path));
        let mesh = seconds(|| std::fs::read(path).map(|bytes| mesh::read::parse(&bytes)));
        println!("{mesh:.6} {scan:.6} {bytes_alone:.6}");
    }
    ExitCode::SUCCESS
}

fn seconds<T>(run: impl FnOnce() -> T) -> f64 {
    let start = Instant::now();
    std::hint::black_box(run());
    start.elapsed().as_secs_f64()
}

fn median<T>(run: impl Fn() -> T) -> Duration {
    let mut times: Vec<Duration> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            std::hint::black_box(run());
            start.elapsed()
        })
        .collect();
    times.sort_unstable();
    times[RUNS / 2]
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}
