//! What is in a file is told by its contents, and what cannot be read is
//! refused with its own reason, on one line.
#![allow(clippy::unwrap_used, clippy::print_stderr)]

use crate::common::{ascii_ply, ascii_stl, bowl, obj};
use mesh::Format;
use mesh::read::{Foreign, OpenError, ParseError, ReadError, ReadWarning, parse, read_scan};
use mesh::write::{encode_ply, encode_stl};
use rstest::rstest;
use std::path::Path;

#[test]
fn every_format_is_told_by_its_contents() {
    let mesh = bowl(3);
    let cases = [
        (encode_stl(&mesh).unwrap(), Format::StlBinary),
        (ascii_stl(&mesh).into_bytes(), Format::StlAscii),
        (encode_ply(&mesh, &[]).unwrap(), Format::PlyBinaryLe),
        (ascii_ply(&mesh).into_bytes(), Format::PlyAscii),
        (obj(&mesh).into_bytes(), Format::Obj),
    ];
    for (bytes, format) in cases {
        let parsed = parse(&bytes).unwrap();
        assert_eq!(parsed.format, format);
        assert_eq!(parsed.mesh, mesh, "{}", format.name());
        assert_eq!(parsed.warnings, [], "{}", format.name());
    }
}

#[rstest]
#[case::zip(b"PK\x03\x04 scan.stl", Foreign::Zip)]
#[case::gzip(b"\x1F\x8B\x08\0scan", Foreign::Gzip)]
#[case::seven_zip(b"7z\xBC\xAF\x27\x1C\0\x04", Foreign::Archive)]
#[case::page(b"\n <!DOCTYPE html><html>404</html>", Foreign::Html)]
#[case::page_in_capitals(b"<HTML><BODY>Not found</BODY></HTML>", Foreign::Html)]
#[case::xml(b"<?xml version='1.0'?><amf/>", Foreign::Xml)]
#[case::json(b"{\"error\": \"expired\"}", Foreign::Json)]
#[case::pdf(b"%PDF-1.7", Foreign::Pdf)]
#[case::png(b"\x89PNG\r\n\x1A\n", Foreign::Picture)]
#[case::jpeg(b"\xFF\xD8\xFF\xE0", Foreign::Picture)]
#[case::utf16_with_mark(b"\xFF\xFEs\0o\0l\0i\0d\0", Foreign::Utf16)]
#[case::utf16(b"s\0o\0l\0i\0d\0 \0", Foreign::Utf16)]
#[case::off(b"OFF\n3 1 0\n", Foreign::Off)]
fn other_kinds_of_files_are_named(#[case] bytes: &[u8], #[case] what: Foreign) {
    let error = parse(bytes).unwrap_err();
    assert_eq!(error, ParseError::Foreign { what });
    assert!(!error.to_string().contains('\n'));
}

#[rstest]
#[case::empty(b"", ParseError::Empty)]
#[case::five_bytes(b"hello", ParseError::TooShort { bytes: 5 })]
#[case::three_bytes(b"\0\x01\x02", ParseError::TooShort { bytes: 3 })]
#[case::prose(&[b'a'; 200], ParseError::Unrecognised)]
#[case::binary(&[0xFF; 200], ParseError::Unrecognised)]
#[case::only_a_word(b"solid\nendsolid\n", ParseError::NoTriangles)]
fn nothing_of_use_is_refused(#[case] bytes: &[u8], #[case] expected: ParseError) {
    assert_eq!(parse(bytes).unwrap_err(), expected);
}

#[test]
fn a_wrong_extension_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("scan.PLY");
    std::fs::write(&path, encode_stl(&bowl(2)).unwrap()).unwrap();
    let scan = read_scan(&path).unwrap();
    assert_eq!(
        scan.warnings,
        [ReadWarning::WrongExtension {
            named: "ply",
            format: Format::StlBinary
        }]
    );
    assert_eq!(
        scan.warnings[0].to_string(),
        "is binary STL although its name ends in .ply; the contents were believed"
    );
}

#[test]
fn a_scan_carries_the_hash_and_size_of_its_bytes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("scan.obj");
    // The SHA-256 was computed by coreutils' sha256sum.
    std::fs::write(&path, "v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 3\n").unwrap();
    let scan = read_scan(&path).unwrap();
    assert_eq!(scan.file_bytes, 32);
    assert_eq!(
        scan.sha256,
        "697b00ab13410c52a542d2e9c63711fcc04e9cbf6c0d3439a9b43cc812e6e713"
    );
}

fn open_error(path: &Path) -> OpenError {
    match read_scan(path).unwrap_err() {
        ReadError::Open { reason, .. } => reason,
        other => panic!("{other}"),
    }
}

#[test]
fn a_missing_file_and_a_folder_have_reasons_of_their_own() {
    let folder = tempfile::tempdir().unwrap();
    assert!(matches!(
        open_error(&folder.path().join("none.stl")),
        OpenError::Missing
    ));
    assert!(matches!(
        open_error(&folder.path().join("none/none.stl")),
        OpenError::Missing
    ));
    assert!(matches!(open_error(folder.path()), OpenError::Directory));
}

#[test]
fn a_file_that_grows_while_it_is_read_is_refused() {
    use std::io::Write;
    use std::sync::atomic::{AtomicBool, Ordering};
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("copied.stl");
    std::fs::write(&path, encode_stl(&bowl(300)).unwrap()).unwrap();
    let enough = AtomicBool::new(false);
    let seen = std::thread::scope(|scope| {
        scope.spawn(|| {
            let mut file = std::fs::File::options().append(true).open(&path).unwrap();
            while !enough.load(Ordering::Relaxed) {
                file.write_all(&[1; 50]).unwrap();
            }
        });
        // A read may fall between two writes; not every time.
        let seen = (0..1000).any(|_| {
            matches!(
                read_scan(&path),
                Err(ReadError::Open {
                    reason: OpenError::Changed { .. },
                    ..
                })
            )
        });
        enough.store(true, Ordering::Relaxed);
        seen
    });
    assert!(seen);
}

#[cfg(unix)]
mod unix {
    use super::*;
    use std::os::unix::ffi::OsStrExt;
    use std::os::unix::fs::{PermissionsExt, symlink};

    #[test]
    fn links_and_special_files_have_reasons_of_their_own() {
        let folder = tempfile::tempdir().unwrap();
        let at = |name: &str| folder.path().join(name);
        symlink(at("nothing"), at("dangling")).unwrap();
        symlink(at("round"), at("round")).unwrap();
        assert!(matches!(
            open_error(&at("dangling")),
            OpenError::DanglingLink
        ));
        assert!(matches!(open_error(&at("round")), OpenError::LinkLoop));
        assert!(matches!(
            open_error(Path::new("/dev/null")),
            OpenError::Special
        ));
        // A link to a scan is as good as the scan.
        std::fs::write(at("scan.stl"), encode_stl(&bowl(2)).unwrap()).unwrap();
        symlink(at("scan.stl"), at("link.stl")).unwrap();
        assert!(read_scan(&at("link.stl")).is_ok());
    }

    #[test]
    fn a_file_that_may_not_be_read_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("private.stl");
        std::fs::write(&path, encode_stl(&bowl(2)).unwrap()).unwrap();
        std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o000)).unwrap();
        if std::fs::File::open(&path).is_ok() {
            eprintln!("skipped: this user may read everything");
            return;
        }
        assert!(matches!(open_error(&path), OpenError::PermissionDenied));
    }

    #[test]
    fn odd_names_are_read_and_shown_on_one_line() {
        let folder = tempfile::tempdir().unwrap();
        let names: [&[u8]; 4] = [
            b"a b'\"\n\r\x1B[31m.stl",
            b"-rf.stl",
            b"sch\xF6n.stl",
            &[b'x'; 255],
        ];
        for name in names {
            let path = folder.path().join(std::ffi::OsStr::from_bytes(name));
            std::fs::write(&path, encode_stl(&bowl(2)).unwrap()).unwrap();
            assert!(read_scan(&path).is_ok());
            std::fs::write(&path, "").unwrap();
            let message = read_scan(&path).unwrap_err().to_string();
            assert!(!message.chars().any(char::is_control), "{message}");
            assert!(message.ends_with("is empty; export the scan again"));
        }
    }

    #[test]
    fn a_file_over_the_limits_is_refused_before_it_is_read() {
        let folder = tempfile::tempdir().unwrap();
        // Files with holes, which take no room on the disk.
        let huge = folder.path().join("huge.stl");
        let file = std::fs::File::create(&huge).unwrap();
        file.set_len(5 << 30).unwrap();
        assert!(matches!(open_error(&huge), OpenError::TooLarge(n) if n == 5 << 30));

        let many = folder.path().join("many.stl");
        let mut bytes = vec![0; 84];
        bytes[80..].copy_from_slice(&20_000_001_u32.to_le_bytes());
        std::fs::write(&many, bytes).unwrap();
        let file = std::fs::File::options().write(true).open(&many).unwrap();
        file.set_len(84 + 50 * 20_000_001).unwrap();
        let start = std::time::Instant::now();
        let message = read_scan(&many).unwrap_err().to_string();
        assert!(
            message.contains("more than the 20000000 triangles"),
            "{message}"
        );
        assert!(start.elapsed().as_millis() < 200);
    }
}
