//! Tells by its contents what a file is. Names are not believed.

use super::error::ParseError;
use super::foreign::Foreign;
use super::ply_header;
use super::stl_binary;
use super::text::{Words, is_space, without_byte_order_mark};

/// A reader.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    StlBinary,
    StlAscii,
    Ply,
    Obj,
}

/// First bytes by which other kinds of files are known.
const MAGIC: &[(&[u8], Foreign)] = &[
    (b"PK\x03\x04", Foreign::Zip),
    (b"PK\x05\x06", Foreign::Zip),
    (b"\x1F\x8B", Foreign::Gzip),
    (b"7z\xBC\xAF\x27\x1C", Foreign::Archive),
    (b"Rar!\x1A\x07", Foreign::Archive),
    (b"BZh", Foreign::Archive),
    (b"\xFD7zXZ\0", Foreign::Archive),
    (b"\x28\xB5\x2F\xFD", Foreign::Archive),
    (b"%PDF", Foreign::Pdf),
    (b"\x89PNG", Foreign::Picture),
    (b"\xFF\xD8\xFF", Foreign::Picture),
    (b"GIF8", Foreign::Picture),
    (b"II*\0", Foreign::Picture),
    (b"MM\0*", Foreign::Picture),
    (b"\xFF\xFE", Foreign::Utf16),
    (b"\xFE\xFF", Foreign::Utf16),
    (b"glTF", Foreign::Gltf),
];

/// How far the beginning of a file is searched for bytes that text never has.
const LOOK: usize = 1024;

/// The reader for a file by its contents.
///
/// The size comes first, words second: a binary STL is one whose declared
/// count gives its size, whatever its header says ("solid" is common).
///
/// # Errors
/// When the bytes are another kind of file, none at all, or nothing known.
pub(super) fn kind_of(bytes: &[u8]) -> Result<Kind, ParseError> {
    if bytes.is_empty() {
        return Err(ParseError::Empty);
    }
    if stl_binary::size_matches(bytes) {
        return Ok(Kind::StlBinary);
    }
    let text = without_byte_order_mark(bytes);
    if ply_header::begins(text) {
        return Ok(Kind::Ply);
    }
    if let Some(what) = foreign(bytes) {
        return Err(ParseError::Foreign { what });
    }
    if looks_like_text(text) {
        return text_format(text);
    }
    if stl_binary::is_plausible(bytes) {
        return Ok(Kind::StlBinary);
    }
    Err(if bytes.len() < stl_binary::HEADER {
        ParseError::TooShort { bytes: bytes.len() }
    } else {
        ParseError::Unrecognised
    })
}

fn foreign(bytes: &[u8]) -> Option<Foreign> {
    if let Some(&(_, what)) = MAGIC.iter().find(|(magic, _)| bytes.starts_with(magic)) {
        return Some(what);
    }
    if bytes.get(128..132) == Some(b"DICM") {
        return Some(Foreign::Dicom);
    }
    let start = without_byte_order_mark(bytes);
    let start = &start[start.iter().position(|&b| !is_space(b))?..];
    let begins = |word: &[u8]| {
        start
            .get(..word.len())
            .is_some_and(|s| s.eq_ignore_ascii_case(word))
    };
    if begins(b"<!doctype html") || begins(b"<html") || begins(b"<head") || begins(b"<body") {
        Some(Foreign::Html)
    } else if begins(b"<?xml") || begins(b"<!") {
        Some(Foreign::Xml)
    } else if matches!(start, [b'{' | b'[', ..]) && looks_like_text(start) {
        Some(Foreign::Json)
    } else if start.starts_with(b"OFF") && looks_like_text(start) {
        Some(Foreign::Off)
    } else if start.starts_with(b"s\0o\0l\0i\0d\0") || start.starts_with(b"p\0l\0y\0") {
        Some(Foreign::Utf16)
    } else {
        None
    }
}

/// Whether the beginning holds no byte that only binary data has. The count
/// of a binary STL always begins or ends in such a byte.
fn looks_like_text(bytes: &[u8]) -> bool {
    let beginning = &bytes[..bytes.len().min(LOOK)];
    !beginning.iter().any(|&b| b < 0x20 && !is_space(b))
}

fn text_format(text: &[u8]) -> Result<Kind, ParseError> {
    let mut words = Words::new(text, 1);
    while let Some(word) = words.next() {
        return match word {
            _ if word.eq_ignore_ascii_case(b"solid") => Ok(Kind::StlAscii),
            _ if word.starts_with(b"#") => {
                words.skip_line();
                continue;
            }
            b"v" | b"vn" | b"vt" | b"vp" | b"f" | b"o" | b"g" | b"s" | b"mtllib" | b"usemtl" => {
                Ok(Kind::Obj)
            }
            _ if text.len() < stl_binary::HEADER => Err(ParseError::TooShort { bytes: text.len() }),
            _ => Err(ParseError::Unrecognised),
        };
    }
    Err(ParseError::Unrecognised)
}
