//! What is written is read back the same, by this reader and by others.
#![allow(clippy::unwrap_used)]

use crate::common::{ascii_ply, ascii_stl, bowl, obj, soup};
use mesh::Mesh;
use mesh::read::{ReadWarning, parse};
use mesh::write::{
    EncodeError, WriteError, encode_exactly, encode_ply, encode_stl, write_atomically, write_ply,
};
use nalgebra::Point3;
use ply_rs::parser::Parser;
use ply_rs::ply::{DefaultElement, Encoding, Property};
use ply_rs::writer::Writer;
use proptest::prelude::*;
use std::collections::HashSet;
use std::path::Path;

/// Meshes that a reader has nothing to change in: different vertices, numbered
/// as triangles use them, no triangle twice.
fn clean_mesh(coordinate: impl Strategy<Value = f64> + Clone) -> impl Strategy<Value = Mesh> {
    let point = [coordinate.clone(), coordinate.clone(), coordinate];
    let corner = any::<[prop::sample::Index; 3]>();
    (
        prop::collection::vec(point, 4..40),
        prop::collection::vec(corner, 1..60),
        any::<bool>(),
    )
        .prop_filter_map("no triangle", |(points, corners, coloured)| {
            let (mut vertices, mut triangles) = (Vec::<Point3<f64>>::new(), Vec::new());
            let mut known = HashSet::new();
            for corners in corners {
                let corners = corners.map(|c| Point3::from(*c.get(&points)).map(|x| x + 0.0));
                let [a, b, c] = corners;
                let mut sorted = corners.map(|p| [p.x, p.y, p.z].map(f64::to_bits));
                sorted.sort_unstable();
                if a == b || b == c || c == a || !known.insert(sorted) {
                    continue;
                }
                triangles.push(corners.map(|corner| {
                    let number = vertices.iter().position(|v| *v == corner);
                    number.unwrap_or_else(|| {
                        vertices.push(corner);
                        vertices.len() - 1
                    }) as u32
                }));
            }
            let colours = coloured.then(|| {
                (0..vertices.len())
                    .map(|v| [v as u8, (v * 7) as u8, 255 - v as u8])
                    .collect()
            });
            (!triangles.is_empty()).then(|| Mesh::new(vertices, triangles, colours).unwrap())
        })
}

fn single() -> impl Strategy<Value = f64> + Clone {
    (-1e6_f32..1e6).prop_map(f64::from)
}

fn without_colour(mesh: &Mesh) -> Mesh {
    mesh.clone().with_colours(None).unwrap()
}

/// A PLY with another encoding, made by another library from ours.
fn encoded_by_another(ply: &[u8], encoding: Encoding) -> Vec<u8> {
    let mut parsed = Parser::<DefaultElement>::new()
        .read_ply(&mut &ply[..])
        .unwrap();
    parsed.header.encoding = encoding;
    let mut bytes = Vec::new();
    Writer::new().write_ply(&mut bytes, &mut parsed).unwrap();
    bytes
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn ply_keeps_every_bit(mesh in clean_mesh(-1e9..1e9)) {
        let parsed = parse(&encode_ply(&mesh, &[]).unwrap()).unwrap();
        prop_assert_eq!(&parsed.mesh, &mesh);
        prop_assert!(!parsed.carries_text);
    }

    #[test]
    fn ply_of_another_library_is_read_in_each_encoding(mesh in clean_mesh(single())) {
        let bytes = encode_ply(&mesh, &[]).unwrap();
        for encoding in [
            Encoding::Ascii,
            Encoding::BinaryLittleEndian,
            Encoding::BinaryBigEndian,
        ] {
            let parsed = parse(&encoded_by_another(&bytes, encoding)).unwrap();
            if encoding == Encoding::Ascii {
                // That library writes the shortest decimals that give the same
                // 32-bit number; as 64-bit numbers they are others.
                let near = |a: f64, b: f64| (a - b).abs() <= 1e-7 * b.abs();
                prop_assert_eq!(parsed.mesh.triangles(), mesh.triangles());
                for (a, b) in parsed.mesh.vertices().iter().zip(mesh.vertices()) {
                    prop_assert!(near(a.x, b.x) && near(a.y, b.y) && near(a.z, b.z));
                }
            } else {
                prop_assert_eq!(&parsed.mesh, &mesh);
            }
        }
    }

    #[test]
    fn stl_keeps_single_precision(mesh in clean_mesh(single())) {
        let parsed = parse(&encode_stl(&mesh).unwrap()).unwrap();
        prop_assert_eq!(&parsed.mesh, &without_colour(&mesh));
        prop_assert!(!parsed.carries_text && !parsed.stl_attributes);
    }

    #[test]
    fn texts_keep_every_bit(mesh in clean_mesh(-1e9..1e9)) {
        let mesh = without_colour(&mesh);
        for text in [ascii_stl(&mesh), ascii_ply(&mesh), obj(&mesh)] {
            // Loose triangles of nearly the same place may be joined.
            let parsed = parse(text.as_bytes()).unwrap();
            if !parsed.warnings.iter().any(|w| matches!(w, ReadWarning::JoinedNearCorners { .. })) {
                prop_assert_eq!(soup(&parsed.mesh), soup(&mesh));
            }
        }
    }

    /// Of any mesh, in each format by the ending of the name.
    #[test]
    fn what_is_written_exactly_is_read_back_the_same(mesh in clean_mesh(-1e9..1e9)) {
        let plain = without_colour(&mesh);
        for (name, mesh) in [("a.PLY", &mesh), ("a.stl", &plain), ("a.obj", &plain)] {
            let parsed = parse(&encode_exactly(Path::new(name), mesh).unwrap()).unwrap();
            prop_assert!(!parsed.carries_text);
            // Loose triangles of nearly the same place may be joined.
            if !parsed.warnings.iter().any(|w| matches!(w, ReadWarning::JoinedNearCorners { .. })) {
                prop_assert_eq!(soup(&parsed.mesh), soup(mesh));
                prop_assert_eq!(parsed.mesh.colours(), mesh.colours());
            }
        }
    }

    #[test]
    fn damage_is_an_error_or_a_sound_mesh(
        mesh in clean_mesh(single()),
        which in 0..5_usize,
        flips in prop::collection::vec((any::<prop::sample::Index>(), 0..8_u8), 0..6),
        cut in prop::option::of(any::<prop::sample::Index>()),
    ) {
        let mut bytes = [
            encode_ply(&mesh, &[]).unwrap(),
            encode_stl(&mesh).unwrap(),
            ascii_stl(&mesh).into_bytes(),
            ascii_ply(&mesh).into_bytes(),
            obj(&mesh).into_bytes(),
        ][which].clone();
        for (at, bit) in flips {
            let at = at.index(bytes.len());
            bytes[at] ^= 1 << bit;
        }
        if let Some(cut) = cut {
            bytes.truncate(cut.index(bytes.len()));
        }
        match parse(&bytes) {
            Ok(parsed) => {
                let count = parsed.mesh.vertices().len();
                prop_assert!(!parsed.mesh.triangles().is_empty());
                prop_assert!(parsed.mesh.triangles().iter().flatten().all(|&v| (v as usize) < count));
                prop_assert!(parsed.mesh.vertices().iter().all(|p| p.coords.iter().all(|c| c.is_finite())));
                for warning in parsed.warnings {
                    prop_assert!(!warning.to_string().contains('\n'));
                }
            }
            Err(error) => prop_assert!(!error.to_string().contains('\n')),
        }
    }

    #[test]
    fn noise_is_refused_or_read_without_a_panic(
        head in prop::sample::select(vec![&b""[..], b"solid", b"ply\n", b"ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\n", b"v 1 2 3\n"]),
        noise in prop::collection::vec(any::<u8>(), 0..400),
    ) {
        let _ = parse(&[head, &noise].concat());
    }
}

#[test]
fn a_name_must_end_in_a_format_that_holds_the_mesh() {
    let mesh = bowl(2);
    let grey = vec![[9, 9, 9]; mesh.vertices().len()];
    let coloured = mesh.clone().with_colours(Some(grey)).unwrap();
    for (name, mesh, expected) in [
        ("a.stl", &coloured, EncodeError::NoColour),
        ("a.obj", &coloured, EncodeError::NoColour),
        ("a.txt", &mesh, EncodeError::Ending),
        ("a", &mesh, EncodeError::Ending),
    ] {
        assert_eq!(encode_exactly(Path::new(name), mesh), Err(expected));
    }
}

#[test]
fn bytes_of_a_small_stl_are_those_of_the_format() {
    let corners = [[0.0, 0.0, 0.0], [2.0, 0.0, 0.0], [0.0, 4.0, 0.0]].map(Point3::from);
    let mesh = Mesh::new(corners.to_vec(), vec![[0, 1, 2]], None).unwrap();
    let mut expected = vec![0; 80];
    expected.extend(1_u32.to_le_bytes());
    for number in [
        0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 2.0, 0.0, 0.0, 0.0, 4.0, 0.0_f32,
    ] {
        expected.extend(number.to_le_bytes());
    }
    expected.extend([0, 0]);
    assert_eq!(encode_stl(&mesh).unwrap(), expected);
}

#[test]
fn figures_per_vertex_are_properties_that_another_library_reads() {
    let mesh = bowl(2);
    let cover: Vec<f32> = (0..mesh.vertices().len()).map(|v| v as f32 / 8.0).collect();
    let bytes = encode_ply(&mesh, &[("cover_mm", &cover)]).unwrap();
    let theirs = Parser::<DefaultElement>::new()
        .read_ply(&mut &bytes[..])
        .unwrap();
    for (element, expected) in theirs.payload["vertex"].iter().zip(&cover) {
        assert_eq!(element["cover_mm"], Property::Float(*expected));
    }
    assert_eq!(parse(&bytes).unwrap().mesh, mesh);
}

#[test]
fn a_figure_must_fit_the_mesh() {
    let mesh = bowl(1);
    assert_eq!(
        encode_ply(&mesh, &[("cover_mm", &[1.0])]).unwrap_err(),
        EncodeError::ScalarCount {
            name: "cover_mm".into(),
            values: 1,
            vertices: 4
        }
    );
    for name in ["", "two words", "x", "line\nbreak"] {
        let error = encode_ply(&mesh, &[(name, &[0.0; 4])]).unwrap_err();
        assert_eq!(error, EncodeError::ScalarName(name.into()));
        assert!(!error.to_string().contains('\n'));
    }
}

#[test]
fn a_write_that_fails_leaves_the_earlier_file_and_nothing_else() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("map.ply");
    write_ply(&path, &bowl(2)).unwrap();
    let before = std::fs::read(&path).unwrap();
    let error = write_atomically(&path, |out| {
        out.write_all(&[1; 100_000])?;
        Err(std::io::ErrorKind::StorageFull.into())
    })
    .unwrap_err();
    assert!(
        error
            .to_string()
            .ends_with("the disk is full; make room and try again")
    );
    assert_eq!(std::fs::read(&path).unwrap(), before);
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn a_folder_that_is_not_there_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let error = write_ply(&folder.path().join("none/map.ply"), &bowl(1)).unwrap_err();
    assert!(matches!(error, WriteError::Io { .. }));
    assert!(
        error
            .to_string()
            .ends_with("its folder does not exist; make it first")
    );
}

#[cfg(unix)]
#[test]
fn a_result_is_as_readable_as_any_other_file() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    let mode = |name: &str| {
        let metadata = std::fs::metadata(folder.path().join(name)).unwrap();
        metadata.permissions().mode()
    };
    std::fs::write(folder.path().join("other"), "").unwrap();
    write_ply(&folder.path().join("map.ply"), &bowl(1)).unwrap();
    assert_eq!(mode("map.ply"), mode("other"));
}
