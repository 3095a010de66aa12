//! Rare but sound spellings of STL and OBJ are read; broken ones are refused
//! with the place.
#![allow(clippy::unwrap_used)]

use crate::common::{ascii_ply, ascii_stl, bowl, obj, read, refusal, soup};
use mesh::Mesh;
use mesh::read::{ReadWarning, parse};
use mesh::write::encode_stl;
use nalgebra::Point3;
use rstest::rstest;

#[test]
fn ascii_stl_is_read_in_every_spelling() {
    let mesh = bowl(2);
    let text = ascii_stl(&mesh);
    let one_line = text.replace('\n', " ");
    let spellings = [
        text.to_uppercase(),
        text.replace('\n', "\r\n"),
        text.replace('\n', "\r"),
        text.replace("  ", "\t"),
        format!("\n  {text}"),
        format!("\u{FEFF}{text}"),
        text.replace(" bowl", ""),
        text.replace(" bowl", " facet normal endsolid vertex"),
        text.replace(" bowl", " sch\u{F6}ner Abdruck"),
        text.replace("endloop", "end loop")
            .replace("endfacet", "end facet"),
        text.replace("endsolid", "end solid"),
        text.replace("e0", "E+000").replace("e1", "E+001"),
        text.replace("vertex 0e0", "vertex +.0"),
        text.replace("0 0 1", "nan -nan(ind) 1.#QNAN"),
        one_line.replace(" bowl", ""),
        one_line,
        text.replace(" bowl", &" x".repeat(50_000)),
        format!("{text}solid empty\nendsolid empty\n"),
    ];
    for spelling in spellings {
        assert_eq!(read(&spelling), mesh, "{}", &spelling[..60]);
    }
}

#[test]
fn names_and_comments_are_noticed_but_not_kept() {
    let mesh = bowl(1);
    let stl = ascii_stl(&mesh);
    assert!(parse(stl.as_bytes()).unwrap().carries_text);
    assert!(
        !parse(stl.replace(" bowl", "").as_bytes())
            .unwrap()
            .carries_text
    );
    let ply = ascii_ply(&mesh);
    assert!(!parse(ply.as_bytes()).unwrap().carries_text);
    let ply = ply.replace("element vertex", "comment someone\nelement vertex");
    assert!(parse(ply.as_bytes()).unwrap().carries_text);
    let mut binary = encode_stl(&mesh).unwrap();
    binary[4..11].copy_from_slice(b"someone");
    assert!(parse(&binary).unwrap().carries_text);
    assert!(parse(obj(&mesh).as_bytes()).unwrap().carries_text);
}

#[test]
fn binary_stl_needs_neither_normals_nor_attributes_nor_a_header() {
    let mesh = bowl(2);
    let mut bytes = encode_stl(&mesh).unwrap();
    bytes[..80].copy_from_slice(
        &[
            b"solid facet normal 0 0 1 vertex\n\xFF".as_slice(),
            &[b' '; 47],
        ]
        .concat(),
    );
    for record in bytes[84..].chunks_mut(50) {
        record[..12].fill(0xFF);
        record[48..].copy_from_slice(&[0xAB, 0xCD]);
    }
    let parsed = parse(&bytes).unwrap();
    assert_eq!((parsed.mesh, parsed.warnings), (mesh, vec![]));
    assert!(parsed.stl_attributes);
}

/// Large files are joined in two halves, which nobody can tell from the mesh.
#[test]
fn a_large_binary_stl_is_numbered_in_order_of_appearance() {
    let mesh = bowl(200);
    let mut bytes = encode_stl(&mesh).unwrap();
    let parsed = parse(&bytes).unwrap();
    assert_eq!((parsed.mesh, parsed.warnings), (mesh, vec![]));
    for triangle in [70_000, 10] {
        let at = 84 + 50 * (triangle - 1) + 12;
        bytes[at..at + 4].copy_from_slice(&f32::NAN.to_le_bytes());
        let said = format!("triangle {triangle} ");
        assert!(refusal(&bytes).contains(&said), "{}", refusal(&bytes));
    }
}

#[rstest]
#[case::decimal_comma("vertex 0e0", "vertex 0,5", "line 4: a number with a decimal comma")]
#[case::no_number("vertex 0e0", "vertex 1.2.3", "line 4: something that is not a number")]
#[case::not_a_number(
    "vertex 0e0",
    "vertex nan",
    "line 4: a coordinate is not a finite number"
)]
#[case::infinite(
    "vertex 0e0",
    "vertex -inf",
    "line 4: a coordinate is not a finite number"
)]
#[case::out_of_proportion("vertex 0e0", "vertex 1e30", "line 4: the coordinate 1e30")]
#[case::four_corners("endloop", "vertex 9 9 9\nendloop", "line 8: triangle 1 has 4 corners")]
#[case::two_corners("vertex 0e0 0e0 0e0\n", "", "line 6: triangle 1 has 2 corners")]
#[case::stray_word("endfacet", "endface", "line 8: 'endfacet' expected")]
fn broken_ascii_stl_is_refused_with_its_line(
    #[case] from: &str,
    #[case] to: &str,
    #[case] message: &str,
) {
    let text = ascii_stl(&bowl(2)).replacen(from, to, 1);
    let refusal = refusal(&text);
    assert!(refusal.starts_with(message), "{refusal}");
}

#[test]
fn corners_with_their_own_rounding_are_joined_and_said() {
    let mesh = bowl(4);
    let mut bytes = encode_stl(&mesh).unwrap();
    let mut noise = 0.0_f32;
    for at in (84..bytes.len())
        .step_by(50)
        .flat_map(|r| (r + 12..r + 48).step_by(4))
    {
        noise = (noise + 0.37).fract();
        let c = f32::from_le_bytes(bytes[at..at + 4].try_into().unwrap());
        bytes[at..at + 4].copy_from_slice(&(c + noise * 2e-4).to_le_bytes());
    }
    let parsed = parse(&bytes).unwrap();
    assert_eq!(parsed.mesh.triangles(), mesh.triangles());
    assert!(matches!(
        parsed.warnings[..],
        [ReadWarning::JoinedNearCorners { joined: 71, tolerance }] if tolerance < 0.03
    ));
    for (a, b) in soup(&parsed.mesh)
        .iter()
        .flatten()
        .zip(soup(&mesh).iter().flatten())
    {
        assert!((a - b).norm() < 5e-4);
    }
}

#[test]
fn loose_triangles_that_are_meant_to_be_loose_stay_so() {
    let corners = (0..60).flat_map(|t| {
        let x = f64::from(t) * 2.0;
        [[x, 0.0, 0.0], [x + 1.0, 0.0, 0.0], [x, 1.0, 0.0]].map(Point3::from)
    });
    let triangles = (0..60).map(|t| [3 * t, 3 * t + 1, 3 * t + 2]).collect();
    let mesh = Mesh::new(corners.collect(), triangles, None).unwrap();
    assert_eq!(read(encode_stl(&mesh).unwrap()), mesh);
}

#[test]
fn coordinates_far_from_the_origin_are_said_where_the_file_cannot_hold_them() {
    let far = |d: f64| bowl(4).moved(&nalgebra::Isometry3::translation(d, 0.0, 0.0));
    let warnings = |bytes: Vec<u8>| parse(&bytes).unwrap().warnings;
    assert!(matches!(
        warnings(encode_stl(&far(1e6)).unwrap())[..],
        [ReadWarning::CoarseCoordinates { step, .. }] if step == 0.0625
    ));
    assert_eq!(warnings(encode_stl(&far(100.0)).unwrap()), []);
    // Text holds as many digits as it has.
    assert_eq!(warnings(ascii_stl(&far(1e6)).into_bytes()), []);
}

#[test]
fn obj_is_read_in_every_spelling() {
    let square = [
        [0.0, 0.0, 0.0],
        [1.0, 0.0, 0.0],
        [1.0, 1.0, 0.0],
        [0.0, 1.0, 0.0],
    ]
    .map(Point3::from);
    let mesh = Mesh::new(square.to_vec(), vec![[0, 1, 2], [0, 2, 3]], None).unwrap();
    let vertices = "v 0 0 0\nv 1 0 0 0.5 0.5 0.5\nv 1 1 0 1.0\nv 0 1 0\nvt 0 0\nvn 0 0 1\n";
    for faces in [
        "f 1 2 3 4\n",
        "f 1/1 2/1 3/1 4/1\n",
        "f 1//1 2//1 3//1 4//1\n",
        "f 1/1/1 2/1/1 3/1/1 4/1/1 # the square\n",
        "f -4 -3 -2 -1\n",
        "f 1 2 \\\n 3 4\n",
        "s off\ng a b\nf 1 2 3\nf 1 3 4",
    ] {
        for text in [
            format!("# text\n\n{vertices}{faces}"),
            format!("{vertices}{faces}").replace('\n', "\r\n"),
        ] {
            assert_eq!(read(&text), mesh, "{text}");
        }
    }
    let faces_first = format!("o square\nf 1 2 3 4\n{vertices}");
    assert_eq!(read(&faces_first), mesh);
}

#[rstest]
#[case(
    "f 1 2 9\n",
    "line 4: face 1 refers to vertex 9, but the file has 3 vertices"
)]
#[case("f 0 1 2\n", "line 4: face 1 refers to vertex 0")]
#[case("f -9 1 2\n", "line 4: face 1 refers to vertex -9")]
#[case("f a b c\n", "line 4: something that is not a number")]
#[case("v 1 2\n", "line 4: three coordinates after 'v' expected")]
#[case("v 1 2,5 3\n", "line 4: a number with a decimal comma")]
#[case("v 1 inf 3\n", "line 4: a coordinate is not a finite number")]
#[case("l 1 2 3\n", "is a point cloud (3 points, no triangles)")]
fn broken_obj_is_refused_with_its_line(#[case] line: &str, #[case] message: &str) {
    let refusal = refusal(format!("v 0 0 0\nv 1 0 0\nv 0 1 0\n{line}"));
    assert!(refusal.starts_with(message), "{refusal}");
}

/// Turned or mirrored without its normals: nobody can see which.
#[test]
fn normals_that_all_face_the_other_way_are_asked_about() {
    let mesh = bowl(5);
    let turned = mesh.clone().turned_inside_out();
    let mut binary = encode_stl(&turned).unwrap();
    for record in binary[84..].chunks_exact_mut(50) {
        for number in record[..12].as_chunks_mut().0 {
            *number = (-f32::from_le_bytes(*number)).to_le_bytes();
        }
    }
    let ply: String = ascii_ply(&turned)
        .lines()
        .map(|line| match line.split(' ').collect::<Vec<_>>()[..] {
            ["property", _, "z"] => {
                format!("{line}\nproperty float nx\nproperty float ny\nproperty float nz\n")
            }
            [x, _, _] if x.parse::<f64>().is_ok() => format!("{line} 0 0 1\n"),
            _ => format!("{line}\n"),
        })
        .collect();
    // The normals of the ASCII STL here always face up, as the bowl does.
    for bytes in [binary, ascii_stl(&turned).into_bytes(), ply.into_bytes()] {
        let parsed = parse(&bytes).unwrap();
        assert_eq!(parsed.warnings, [ReadWarning::NormalsAgainstTriangles]);
        assert!(parsed.warnings[0].asks());
    }
    for bytes in [encode_stl(&mesh).unwrap(), ascii_stl(&mesh).into_bytes()] {
        assert_eq!(parse(&bytes).unwrap().warnings, []);
    }
}
