//! How fast scans are read and nearest places are found. Each bench asserts its
//! answer before it is timed.

#![allow(missing_docs, reason = "made by a macro")]

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use mesh::read::parse;
use mesh::write::{encode_ply, encode_stl};
use mesh::{Mesh, SpatialIndex};
use phantom::{Arch, Options, Phantom};
use std::hint::black_box;

/// How far off the surface nearest places are asked for, mm.
const OFF_MM: f64 = 1.5;

fn scan() -> Mesh {
    let made = Phantom::new(&Options {
        arch: Arch::Mandibular,
        seed: 1,
        edge_mm: 0.5,
        ..Options::default()
    });
    made.impression
}

fn reading(criterion: &mut Criterion) {
    let mesh = scan();
    let mut group = criterion.benchmark_group("reading");
    let files = [
        ("binary STL", encode_stl(&mesh)),
        ("binary PLY", encode_ply(&mesh, &[])),
    ];
    for (name, file) in files {
        let bytes = file.expect("a phantom fits every format");
        let read = parse(&bytes).expect("what was written can be read").mesh;
        assert!((read.area() - mesh.area()).abs() < 1e-3 * mesh.area());
        group.throughput(Throughput::Bytes(bytes.len() as u64));
        group.bench_function(name, |bencher| bencher.iter(|| parse(black_box(&bytes))));
    }
}

fn nearest(criterion: &mut Criterion) {
    let mesh = scan();
    let index = SpatialIndex::new(&mesh);
    let normals = mesh.vertex_normals();
    let points: Vec<_> = mesh
        .vertices()
        .iter()
        .zip(normals)
        .map(|(place, normal)| place + normal * OFF_MM)
        .collect();
    let found = index.nearest_many(&points, f64::INFINITY);
    // A vertex lies at that distance; another place may be nearer.
    assert!(
        found
            .iter()
            .all(|n| n.is_some_and(|n| n.distance <= OFF_MM + 1e-9))
    );

    let mut group = criterion.benchmark_group("nearest");
    group.bench_function("index", |bencher| bencher.iter(|| SpatialIndex::new(&mesh)));
    group.throughput(Throughput::Elements(points.len() as u64));
    group.bench_function("places", |bencher| {
        bencher.iter(|| index.nearest_many(black_box(&points), f64::INFINITY))
    });
}

criterion_group!(benches, reading, nearest);
criterion_main!(benches);
