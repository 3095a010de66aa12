//! Rare but sound spellings of PLY are read; broken ones are refused with the
//! place.
#![allow(clippy::unwrap_used)]

use crate::common::{ascii_ply, bowl, read, refusal};
use mesh::read::{ReadWarning, parse};
use mesh::write::encode_ply;
use rstest::rstest;

#[test]
fn ascii_ply_is_read_in_every_spelling() {
    let mesh = bowl(2);
    let text = ascii_ply(&mesh);
    let (header, body) = text.split_once("end_header\n").unwrap();
    let with_body = |body: String| format!("{header}end_header\n{body}");
    let spellings = [
        text.replace('\n', "\r\n"),
        text.replace('\n', "\r"),
        text.replace("vertex_indices", "vertex_index"),
        text.replace("double", "float64")
            .replace("list uchar int", "list uint8 int32"),
        text.replace("list uchar int", "list int uint"),
        text.replace("property double x", "property  double\tx  "),
        text.replace(
            "element vertex",
            "comment\nobj_info made by hand\nelement vertex",
        ),
        text.replace(
            "element face",
            "element camera 0\nproperty float view\nelement face",
        ),
        with_body(body.replace('\n', "\n\n")),
        with_body(body.replace(' ', "\n")),
        with_body(body.replace('\n', " ")),
        with_body(body.replace(' ', "\t")),
    ];
    for spelling in spellings {
        assert_eq!(read(&spelling), mesh, "{}", &spelling[..60]);
    }
    // A byte of Latin-1 in a comment.
    let latin = text
        .replace("element vertex", "comment \u{1}\nelement vertex")
        .into_bytes();
    let latin: Vec<u8> = latin
        .iter()
        .map(|&b| if b == 1 { 0xE9 } else { b })
        .collect();
    assert_eq!(read(latin), mesh);
}

#[test]
fn numbers_beyond_those_declared_are_left_out_line_by_line() {
    let mesh = bowl(2);
    let text = ascii_ply(&mesh);
    let (header, body) = text.split_once("end_header\n").unwrap();
    let wide = format!("{header}end_header\n{}", body.replace('\n', " 0.5 0.25\n"));
    let parsed = parse(wide.as_bytes()).unwrap();
    assert_eq!(parsed.mesh, mesh);
    assert_eq!(parsed.warnings, [ReadWarning::SurplusValues]);
}

#[rstest]
#[case::index_too_large(
    "\n3 0 ",
    "\n3 99 ",
    "line 19: face 1 refers to vertex 99, but the file has 9 vertices"
)]
#[case::index_negative("\n3 0 ", "\n3 -1 ", "line 19: face 1 refers to vertex -1")]
#[case::no_number("0 0 0\n", "0 x 0\n", "line 10: something that is not a number")]
#[case::comma("0 0 0\n", "0 0,5 0\n", "line 10: a number with a decimal comma")]
#[case::not_a_number("0 0 0\n", "0 nan 0\n", "line 10: a coordinate is not a finite number")]
#[case::count_too_large("element face 8", "element face 80", "declares 80 faces")]
#[case::count_absurd(
    "element face 8",
    "element face 4000000000",
    "declares 4000000000 faces"
)]
#[case::count_no_number(
    "element vertex 9",
    "element vertex nine",
    "line 3: in the PLY header, an element's count"
)]
#[case::count_negative(
    "element vertex 9",
    "element vertex -9",
    "line 3: in the PLY header, an element's count"
)]
#[case::format(
    "format ascii",
    "format morse",
    "line 2: in the PLY header, the format"
)]
#[case::no_format(
    "format ascii 1.0\n",
    "",
    "line 8: in the PLY header, there is no 'format' line"
)]
#[case::no_z(
    "property double z\n",
    "",
    "line 8: in the PLY header, the vertices do not have"
)]
#[case::no_end(
    "end_header\n",
    "",
    "line 9: in the PLY header, there is no 'end_header' line"
)]
#[case::no_faces("element face 8", "element edge 8", "is a point cloud (9 points")]
#[case::list_of_nothing("\n3 0 ", "\n4000000000 0 ", "line 19: a list of 4000000000 values")]
#[case::list_negative("\n3 0 ", "\n-3 0 ", "line 19: the length of a list is negative")]
fn broken_ply_is_refused_with_its_place(
    #[case] from: &str,
    #[case] to: &str,
    #[case] message: &str,
) {
    let text = ascii_ply(&bowl(2));
    assert!(text.contains(from));
    let refusal = refusal(text.replacen(from, to, 1));
    assert!(refusal.starts_with(message), "{refusal}");
}

#[test]
fn a_binary_vertex_count_that_is_one_too_large_is_refused() {
    let bytes = encode_ply(&bowl(2), &[]).unwrap();
    let text = b"element vertex 9";
    let at = bytes.windows(text.len()).position(|w| w == text).unwrap() + text.len() - 1;
    for count in [&b"8"[..], b"10", b"11"] {
        let wrong = [&bytes[..at], count, &bytes[at + 1..]].concat();
        assert!(
            parse(&wrong).is_err(),
            "{:?}",
            parse(&wrong).map(|p| p.warnings)
        );
    }
}

#[test]
fn a_body_may_begin_with_a_line_feed_after_any_header() {
    // 1.25 with its lowest byte made a line feed: the first byte of the body.
    let first = f32::from_le_bytes([b'\n', 0, 0xA0, 0x3F]);
    let mut body = Vec::new();
    for c in [first, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0, 0.0] {
        body.extend(c.to_le_bytes());
    }
    body.extend([3, 0, 0, 0, 0, 1, 0, 0, 0, 2, 0, 0, 0]);
    let header = "ply\nformat binary_little_endian 1.0\nelement vertex 3\nproperty float x\n\
                  property float y\nproperty float z\nelement face 1\n\
                  property list uchar int vertex_indices\nend_header\n";
    for end in ["\n", "\r\n", "\r"] {
        let bytes = [header.replace('\n', end).as_bytes(), &body].concat();
        assert_eq!(read(bytes).vertices()[0].x, f64::from(first), "{end:?}");
    }
}

#[rstest]
#[case::bytes("uchar", "red green blue", [255.0, 128.0, 0.0])]
#[case::words("ushort", "red green blue", [65535.0, 32896.0, 0.0])]
#[case::unit("float", "red green blue", [1.0, 0.502, 0.0])]
#[case::bytes_as_float("float", "red green blue", [255.0, 128.0, 0.0])]
#[case::diffuse("uchar", "diffuse_red diffuse_green diffuse_blue", [255.0, 128.0, 0.0])]
#[case::short("uint8", "r g b", [255.0, 128.0, 0.0])]
fn colour_is_read_in_every_type(#[case] kind: &str, #[case] names: &str, #[case] stored: [f64; 3]) {
    let channels: String = names
        .split(' ')
        .map(|name| format!("property {kind} {name}\n"))
        .collect();
    let [r, g, b] = stored;
    let text = format!(
        "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\n{channels}property float y\n\
         property float z\nelement face 1\nproperty list uchar int vertex_indices\nend_header\n\
         0 {r} {g} {b} 0 0\n1 {r} {g} {b} 0 0\n0 {r} {g} {b} 1 0\n3 0 1 2\n"
    );
    assert_eq!(read(text).colours().unwrap(), [[255, 128, 0]; 3]);
}

#[test]
fn colour_that_is_not_per_vertex_is_said() {
    let text = ascii_ply(&bowl(1));
    let per_face = text
        .replace(
            "vertex_indices\n",
            "vertex_indices\nproperty uchar red\nproperty uchar green\nproperty uchar blue\n",
        )
        .replace("3 0 1 2\n", "3 0 1 2 9 9 9\n")
        .replace("3 2 1 3\n", "3 2 1 3 9 9 9\n");
    assert_eq!(
        parse(per_face.as_bytes()).unwrap().warnings,
        [ReadWarning::FaceColours]
    );
    let picture = text.replace(
        "element vertex",
        "comment TextureFile a b.png\nelement vertex",
    );
    let warnings = parse(picture.as_bytes()).unwrap().warnings;
    assert_eq!(warnings, [ReadWarning::TexturePicture]);
    assert!(!warnings[0].to_string().contains("png"));
}

/// The unit square's corners.
const SQUARE: &str = "ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\n\
                      property float z\n";

#[test]
fn polygons_and_strips_are_split_all_facing_the_same_way() {
    let corners = "end_header\n0 0 0\n1 0 0\n1 1 0\n0 1 0\n";
    let quad = format!(
        "{SQUARE}element face 1\nproperty list uchar int vertex_indices\n{corners}4 0 1 2 3\n"
    );
    let strip = format!(
        "{SQUARE}element tristrips 1\nproperty list int int vertex_indices\n{corners}8 0 1 3 2 -1 0 1 3\n"
    );
    for text in [&quad, &strip] {
        let parsed = parse(text.as_bytes()).unwrap();
        let mesh = parsed.mesh;
        assert_eq!(mesh.triangles().len(), 2);
        for t in 0..2 {
            assert_eq!(mesh.area_vector(t).z, 0.5);
        }
    }
}

#[test]
fn what_has_no_area_is_left_out_and_counted() {
    let text = format!(
        "{SQUARE}element face 6\nproperty list uchar int vertex_indices\nend_header\n\
         0 0 0\n1 0 0\n1 1 0\n0 -0.0 0\n3 0 1 2\n3 0 1 1\n2 0 1\n3 3 1 2\n3 2 1 3\n3 0 3 1\n"
    );
    let parsed = parse(text.as_bytes()).unwrap();
    assert_eq!(parsed.mesh.triangles(), [[0, 1, 2]]);
    assert_eq!(parsed.mesh.vertices().len(), 3);
    assert_eq!(
        parsed.warnings,
        [
            ReadWarning::FacesWithoutArea { count: 1 },
            ReadWarning::RepeatedCorners { count: 2 },
            ReadWarning::DuplicateTriangles {
                count: 2,
                turned: 1
            },
        ]
    );
    let nothing = text
        .replace("3 0 1 2\n", "3 0 0 0\n")
        .replace("3 3 1 2\n3 2 1 3\n", "3 0 0 0\n3 0 0 0\n");
    assert!(refusal(nothing).starts_with("holds 5 triangles, none with three different corners"));
}

#[test]
fn joining_keeps_the_colour_of_the_first() {
    let text = "ply\nformat ascii 1.0\nelement vertex 5\nproperty float x\nproperty float y\n\
                property float z\nproperty uchar red\nproperty uchar green\nproperty uchar blue\n\
                element face 1\nproperty list uchar int vertex_indices\nend_header\n\
                9 9 9 5 5 5\n0 0 0 1 1 1\n0 0 -0 2 2 2\n1 0 0 3 3 3\n0 1 0 4 4 4\n3 2 3 4\n";
    let mesh = parse(text.as_bytes()).unwrap().mesh;
    assert_eq!(mesh.colours().unwrap(), [[1; 3], [3; 3], [4; 3]]);
}

#[test]
fn a_header_without_end_takes_bounded_time() {
    let start = std::time::Instant::now();
    let long_line = [b"ply\ncomment ".as_slice(), &vec![b'x'; 8 << 20]].concat();
    let many_properties = format!(
        "ply\nformat ascii 1.0\nelement vertex 1\n{}",
        "property float x\n".repeat(10_000)
    );
    let no_properties = format!(
        "{SQUARE}element nothing 4000000000\nelement face 1\nproperty list uchar int vertex_indices\nend_header\n0 0 0\n1 0 0\n0 1 0\n0 0 1\n3 0 1 2\n"
    );
    assert!(parse(&long_line).is_err());
    assert!(parse(many_properties.as_bytes()).is_err());
    assert_eq!(
        parse(no_properties.as_bytes())
            .unwrap()
            .mesh
            .triangles()
            .len(),
        1
    );
    assert!(start.elapsed().as_secs_f64() < 1.0);
}
