//! Files from the tests of other libraries: none makes the reader panic, and
//! what well-kept readers of one format read, we read the same.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

use crate::common;
use mesh::read::{ReadWarning, Scan};
use mesh::{Format, read_scan};
use ply_rs::parser::Parser;
use ply_rs::ply::{DefaultElement, Property};
use std::fs::File;
use std::io::BufReader;
use std::path::Path;

fn read(name: &str) -> Option<Scan> {
    Some(read_scan(&common::shared("robustness")?.join(name)).unwrap())
}

#[test]
fn every_file_is_read_or_refused_on_one_line_in_bounded_time() {
    let Some(folder) = common::shared("robustness") else {
        return;
    };
    let start = std::time::Instant::now();
    let files = common::files_below(&folder);
    let mut refused = Vec::new();
    for file in &files {
        match read_scan(file) {
            Ok(scan) => {
                assert!(!scan.mesh.triangles().is_empty());
                for warning in scan.warnings {
                    assert!(!warning.to_string().contains('\n'));
                    eprintln!("{}: {warning}", file.display());
                }
            }
            Err(error) => {
                let message = error.to_string();
                assert!(!message.contains('\n'), "{message}");
                eprintln!("{message}");
                refused.push(file.file_name().unwrap().to_str().unwrap().to_owned());
            }
        }
    }
    let seconds = start.elapsed().as_secs_f64();
    assert!(
        files.len() > 90 && seconds < 5.0,
        "{} files, {seconds} s",
        files.len()
    );
    // Whatever is refused is empty, a point cloud, broken by intent or no scan.
    for name in &refused {
        let known = [
            "empty",
            "points",
            "PLY_issue623",
            "PLY_pond",
            "invalid",
            "readme",
            "STL_formatDetection",
        ];
        assert!(known.iter().any(|k| name.contains(k)), "{name} was refused");
    }
}

#[test]
fn binary_stl_is_read_as_an_independent_reader_reads_it() {
    let Some(folder) = common::shared("robustness") else {
        return;
    };
    let mut compared = 0;
    for file in common::files_below(&folder) {
        let Ok(scan) = read_scan(&file) else { continue };
        let Ok(theirs) = stl_io::read_stl(&mut BufReader::new(File::open(&file).unwrap())) else {
            continue;
        };
        // Where triangles were left out the two cannot be the same.
        if scan.format != Format::StlBinary || !scan.warnings.is_empty() {
            continue;
        }
        assert_eq!(
            scan.mesh.triangles().len(),
            theirs.faces.len(),
            "{}",
            file.display()
        );
        for (ours, face) in common::soup(&scan.mesh).iter().zip(&theirs.faces) {
            let corners = face.vertices.map(|v| theirs.vertices[v].0.map(f64::from));
            assert_eq!(ours.map(|p| [p.x, p.y, p.z]), corners, "{}", file.display());
        }
        compared += 1;
    }
    assert!(compared > 10, "only {compared}");
}

#[test]
fn ply_is_read_as_an_independent_reader_reads_it() {
    let Some(folder) = common::shared("robustness") else {
        return;
    };
    let mut compared = 0;
    for file in common::files_below(&folder) {
        let Ok(scan) = read_scan(&file) else { continue };
        if scan.format.extension() != "ply" {
            continue;
        }
        let parser = Parser::<DefaultElement>::new();
        let Ok(theirs) = parser.read_ply(&mut BufReader::new(File::open(&file).unwrap())) else {
            continue;
        };
        assert_same_box(&scan, &theirs.payload["vertex"], &file);
        compared += 1;
    }
    assert!(compared > 10, "only {compared}");
}

/// The box around all vertices, which is the same whatever was welded.
fn assert_same_box(scan: &Scan, vertices: &[DefaultElement], file: &Path) {
    if scan
        .warnings
        .iter()
        .any(|w| matches!(w, ReadWarning::UnusedVertices { .. }))
    {
        return;
    }
    let (low, high) = scan.mesh.bounds().unwrap();
    for (axis, name) in ["x", "y", "z"].into_iter().enumerate() {
        let coordinates: Vec<f64> = vertices
            .iter()
            .map(|v| match v[name] {
                Property::Float(c) => f64::from(c),
                Property::Double(c) => c,
                ref other => panic!("{other:?}"),
            })
            .collect();
        let least = coordinates.iter().copied().fold(f64::INFINITY, f64::min);
        let greatest = coordinates
            .iter()
            .copied()
            .fold(f64::NEG_INFINITY, f64::max);
        // Text is read as 64-bit here and as 32-bit there.
        let close = |a: f64, b: f64| (a - b).abs() <= 1e-6 * b.abs().max(1e-6);
        assert!(
            close(low[axis], least) && close(high[axis], greatest),
            "{}: {name} {low} {high} {least} {greatest}",
            file.display()
        );
    }
}

#[test]
fn pairs_of_one_shape_in_two_encodings_agree() {
    for (ascii, binary) in [
        ("stl_io/bunny_99_ascii.stl", "stl_io/bunny_99.stl"),
        (
            "assimp/STL_Spider_ascii.stl",
            "assimp/STL_Spider_binary.stl",
        ),
        ("assimp/PLY_cube.ply", "assimp/PLY_cube_binary.ply"),
        ("trimesh/fuze_ascii.ply", "trimesh/fuze.ply"),
    ] {
        let (Some(a), Some(b)) = (read(ascii), read(binary)) else {
            return;
        };
        assert_ne!(a.format, b.format);
        assert_eq!(
            a.mesh.triangles().len(),
            b.mesh.triangles().len(),
            "{ascii}"
        );
        for (t, (p, q)) in common::soup(&a.mesh)
            .iter()
            .zip(common::soup(&b.mesh))
            .enumerate()
        {
            for (p, q) in p.iter().zip(q) {
                assert!(
                    (p - q).norm() <= 1e-5 * q.coords.norm().max(1.0),
                    "{ascii} {t}"
                );
            }
        }
    }
}

#[test]
fn known_oddities_are_read_as_their_makers_meant_them() {
    let Some(scan) = read("assimp/STL_triangle_with_two_solids.stl") else {
        return;
    };
    assert_eq!(scan.solids, 2);
    assert!(
        scan.warnings
            .contains(&ReadWarning::SeveralSolids { solids: 2 })
    );
    for (name, format, triangles) in [
        (
            "assimp/STL_triangle_with_empty_solid.stl",
            Format::StlAscii,
            1,
        ),
        (
            "assimp/PLY_cube_binary_header_with_RN_newline.ply",
            Format::PlyBinaryLe,
            12,
        ),
        (
            "assimp/PLY_cube_binary_starts_with_nl.ply",
            Format::PlyBinaryLe,
            12,
        ),
        (
            "numpy-stl/stl_binary_CubeInvalidUnicode.stl",
            Format::StlBinary,
            12,
        ),
        ("numpy-stl/stl_binary_Cube.stl", Format::StlBinary, 12),
        ("trimesh/unit_cube.STL", Format::StlBinary, 12),
    ] {
        let scan = read(name).unwrap();
        assert_eq!(
            (scan.format, scan.mesh.triangles().len()),
            (format, triangles),
            "{name}"
        );
    }
}

/// The committed table names every file with what became of it; its columns on
/// the other reader are `tests/outside/robustness_table.py`'s to keep.
#[test]
fn every_file_comes_out_as_the_table_says() {
    let Some(folder) = common::shared("robustness") else {
        return;
    };
    let table = include_str!("../robustness_outcomes.md");
    let told: Vec<[&str; 4]> = table
        .lines()
        .filter(|line| line.starts_with("| `"))
        .map(|line| {
            let mut cells = line
                .split(" | ")
                .map(|cell| cell.trim_matches(['|', ' ', '`']));
            std::array::from_fn(|_| cells.next().unwrap_or_default())
        })
        .collect();
    let found: Vec<[String; 4]> = common::files_below(&folder)
        .iter()
        .map(|file| {
            let name = file
                .strip_prefix(&folder)
                .unwrap()
                .to_str()
                .unwrap()
                .to_owned();
            let [outcome, triangles, vertices] = match read_scan(file) {
                Ok(scan) => [
                    match scan.warnings[..] {
                        [] => "read".to_owned(),
                        _ => "read, with a warning".to_owned(),
                    },
                    scan.mesh.triangles().len().to_string(),
                    scan.mesh.vertices().len().to_string(),
                ],
                Err(_) => ["refused".to_owned(), String::new(), String::new()],
            };
            [name, outcome, triangles, vertices]
        })
        .collect();
    assert_eq!(told.len(), found.len());
    for (told, found) in told.iter().zip(&found) {
        assert_eq!(told, found);
    }
}
