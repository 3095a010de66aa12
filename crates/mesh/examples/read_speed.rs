//! Prints how long it takes to read a scan, beside the time that the bytes
//! alone take: `cargo run --release -p archproof-mesh --example read_speed FILE`.
//!
//! `read_speed --turns` reads one file for each line of standard input, and
//! prints the seconds that took the mesh (bytes read, and made a mesh of), the
//! scan (with the SHA-256 of its bytes) and the bytes alone, for
//! `tests/outside/load_speed.py`.
#![allow(clippy::print_stdout, clippy::print_stderr)]

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
