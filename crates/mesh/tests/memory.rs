//! Reading holds no more than 20 times the file in memory, whatever the file.
//! One test alone in its program, since the count is of the whole program.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

#[path = "all/common.rs"]
mod common;

use common::{ascii_ply, ascii_stl, bowl, obj};
use mesh::read::parse;
use mesh::write::{encode_ply, encode_stl};
use peak_alloc::PeakAlloc;

#[global_allocator]
static HEAP: PeakAlloc = PeakAlloc;

const HEAP_PER_BYTE: f64 = 20.0;

/// A PLY of `vertices` tiny vertices and one element of lists.
fn ply(vertices: usize, element: &str, lists: usize, counted: &str, body: &[u8]) -> Vec<u8> {
    let mut bytes = format!(
        "ply\nformat binary_little_endian 1.0\nelement vertex {vertices}\nproperty short x\n\
         property short y\nproperty short z\n{element} {lists}\n\
         property list {counted} uchar vertex_indices\nend_header\n"
    )
    .into_bytes();
    bytes.extend(body);
    bytes
}

/// Vertices of whole numbers, no two the same.
fn short_vertices(count: u16) -> Vec<u8> {
    (0..count)
        .flat_map(|v| [v, v / 7, v.wrapping_mul(31)])
        .flat_map(u16::to_le_bytes)
        .collect()
}

/// Lists of one byte a corner, as long as they may be: many triangles a byte.
fn dense_lists(lists: usize) -> Vec<u8> {
    let mut state = 1_u32;
    (0..lists)
        .flat_map(|_| {
            let mut list = vec![255];
            for _ in 0..255 {
                state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                list.push((state >> 24) as u8);
            }
            list
        })
        .collect()
}

#[test]
fn no_file_takes_more_than_20_times_its_size() {
    let mesh = bowl(300);
    let dense = [short_vertices(256), dense_lists(4_300)].concat();
    let one_list = {
        let corners = dense_lists(4_300);
        let count = (corners.len() as u32).to_le_bytes();
        [&short_vertices(256), &count[..], &corners].concat()
    };
    let text_list = format!(
        "ply\nformat ascii 1.0\nelement vertex 10\nproperty int x\nproperty int y\n\
         property int z\nelement face 1\nproperty list int int vertex_indices\nend_header\n\
         {}1100000 {}\n",
        "1 2 3\n".repeat(10),
        "1 2 3 4 5 6 7 8 9 0 ".repeat(110_000),
    );
    let loose: String = (0..100_000)
        .map(|v| format!("v {} {} {}\n", v % 10, v / 10 % 100, v / 1000))
        .chain(["f 1 2 3\n".to_owned()])
        .collect();
    let fan = format!(
        "v 0 0 0\nv 0 0 1\nv 0 1 0\nf {}\n",
        "1 2 3 ".repeat(370_000)
    );
    let many_vertices: Vec<u8> = [short_vertices(65_535), vec![3, 0, 1, 2]].concat();
    for (name, bytes) in [
        ("binary STL", encode_stl(&mesh).unwrap()),
        ("binary PLY", encode_ply(&mesh, &[]).unwrap()),
        ("ASCII STL", ascii_stl(&mesh).into_bytes()),
        ("ASCII PLY", ascii_ply(&mesh).into_bytes()),
        ("OBJ", obj(&mesh).into_bytes()),
        (
            "PLY of long polygons",
            ply(256, "element face", 4_300, "uchar", &dense),
        ),
        (
            "PLY of long strips",
            ply(256, "element tristrips", 4_300, "uchar", &dense),
        ),
        (
            "PLY of one strip",
            ply(256, "element tristrips", 1, "uint", &one_list),
        ),
        (
            "PLY of one polygon",
            ply(256, "element face", 1, "uint", &one_list),
        ),
        (
            "ASCII PLY of one polygon, then something else",
            format!("{text_list} nonsense\n").into_bytes(),
        ),
        ("ASCII PLY of one polygon", text_list.into_bytes()),
        (
            "PLY of many small vertices",
            ply(65_535, "element face", 1, "uchar", &many_vertices),
        ),
        ("OBJ of vertices", loose.into_bytes()),
        ("OBJ of one polygon", fan.into_bytes()),
    ] {
        let before = HEAP.current_usage();
        HEAP.reset_peak_usage();
        let outcome = parse(&bytes);
        let times = (HEAP.peak_usage() - before) as f64 / bytes.len() as f64;
        let read = outcome.map(|parsed| parsed.mesh.triangles().len());
        eprintln!("{name}, {} bytes: {times:.1} times; {read:?}", bytes.len());
        assert!(times < HEAP_PER_BYTE, "{name}: {times:.1} times");
    }
}
