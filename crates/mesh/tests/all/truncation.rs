//! A scan that was cut is never a smaller scan.
#![allow(clippy::unwrap_used)]

use crate::common::{ascii_ply, ascii_stl, bowl};
use mesh::read::{ReadWarning, parse};
use mesh::write::{encode_ply, encode_stl};

#[test]
fn every_beginning_of_a_binary_file_is_refused() {
    let mesh = bowl(3);
    let colours = vec![[3, 3, 3]; mesh.vertices().len()];
    let coloured = mesh.clone().with_colours(Some(colours)).unwrap();
    let mut named = encode_stl(&mesh).unwrap();
    named[..5].copy_from_slice(b"solid");
    for whole in [
        encode_stl(&mesh).unwrap(),
        named,
        encode_ply(&mesh, &[]).unwrap(),
        encode_ply(&coloured, &[]).unwrap(),
    ] {
        for length in 0..whole.len() {
            let message = parse(&whole[..length]).unwrap_err().to_string();
            assert!(!message.contains('\n'), "{message}");
        }
        assert_eq!(parse(&whole).unwrap().warnings, []);
    }
}

#[test]
fn every_beginning_of_a_text_is_refused_or_said_to_have_no_end() {
    let mesh = bowl(2);
    let text = ascii_stl(&mesh);
    let last_facet = text.rfind("endfacet").unwrap() + "endfacet".len();
    let (all, bytes) = (mesh.triangles().len(), text.as_bytes());
    for length in 0..text.find("endsolid").unwrap() {
        match parse(&bytes[..length]) {
            Err(error) => assert!(!error.to_string().contains('\n')),
            // Between two facets only the missing end tells.
            Ok(parsed) => {
                assert_eq!(parsed.warnings, [ReadWarning::NoEndSolid]);
                assert_eq!(parsed.mesh.triangles().len() == all, length >= last_facet);
            }
        }
    }
    let text = ascii_ply(&mesh);
    // Of the last number a digit might be missing, which nobody could see.
    for length in 0..text.trim_end().rfind(' ').unwrap() + 1 {
        assert!(parse(&text.as_bytes()[..length]).is_err(), "{length}");
    }
}

#[test]
fn bytes_after_the_end_are_said() {
    let mesh = bowl(3);
    for mut bytes in [encode_stl(&mesh).unwrap(), encode_ply(&mesh, &[]).unwrap()] {
        for more in 1..10 {
            bytes.push(b'\n');
            let parsed = parse(&bytes).unwrap();
            assert_eq!(parsed.mesh, mesh);
            assert_eq!(
                parsed.warnings,
                [ReadWarning::TrailingBytes { bytes: more }]
            );
            assert!(!parsed.warnings[0].asks());
        }
        bytes.extend([1; 5000]);
        let parsed = parse(&bytes).unwrap();
        assert!(parsed.warnings[0].asks(), "{:?}", parsed.warnings);
    }
}

#[test]
fn a_count_that_the_size_contradicts_is_said_or_refused() {
    let mesh = bowl(3);
    let whole = encode_stl(&mesh).unwrap();
    let counted = |count: u32| {
        let mut bytes = whole.clone();
        bytes[80..84].copy_from_slice(&count.to_le_bytes());
        bytes
    };
    for declared in [0, 1, 17, u32::MAX] {
        let parsed = parse(&counted(declared)).unwrap();
        assert_eq!(parsed.mesh, mesh);
        let declared = u64::from(declared);
        let warning = ReadWarning::WrongCount { declared, held: 18 };
        assert!(warning.asks());
        assert_eq!(parsed.warnings, [warning]);
    }
    assert_eq!(
        parse(&counted(19)).unwrap_err().to_string(),
        "declares 19 triangles but holds 18: the file is cut short; export or copy it again"
    );
    let mut odd = counted(0);
    odd.push(0);
    assert!(parse(&odd).is_err());
}

#[test]
fn a_second_scan_in_the_same_file_is_asked_about() {
    let mut bytes = encode_stl(&bowl(3)).unwrap();
    bytes.extend(encode_stl(&bowl(4)).unwrap());
    let parsed = parse(&bytes).unwrap();
    assert_eq!(parsed.mesh, bowl(3));
    assert_eq!(parsed.warnings, [ReadWarning::SecondScan { triangles: 32 }]);
    assert!(parsed.warnings[0].asks());
}
