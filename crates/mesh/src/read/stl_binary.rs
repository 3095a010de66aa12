//! Binary STL: 80 free bytes, a count, and 50 bytes for each triangle
//! (normal, three corners, two attribute bytes).
//!
//! The records are read here and not by a general reader because everything
//! that goes wrong with them in practice is a matter of the count against the
//! size, which has to be settled first. Stored normals are ignored: the
//! corners say which way a triangle faces.

use super::error::{ParseError, Place};
use super::surface::{Stored, Surface, checked};
use super::warning::ReadWarning;
use super::weld::Welder;
use super::{MAX_TRIANGLES, Parsed};
use crate::Format;

/// Bytes before the first triangle.
pub(super) const HEADER: usize = 84;
const RECORD: usize = 50;

/// Coordinates outside of this range, but for 0, are not those of a scan.
const PLAUSIBLE: std::ops::Range<f32> = 1e-20..1e10;

/// The declared number of triangles, if there are enough bytes to declare one.
pub(super) fn declared(bytes: &[u8]) -> Option<u64> {
    let count = bytes.get(80..HEADER)?;
    Some(u64::from(u32::from_le_bytes(count.try_into().ok()?)))
}

/// Size of a file of so many triangles.
pub(super) fn size_for(triangles: u64) -> u64 {
    HEADER as u64 + RECORD as u64 * triangles
}

/// Whether the declared count gives exactly the size.
pub(super) fn size_matches(bytes: &[u8]) -> bool {
    declared(bytes).is_some_and(|n| size_for(n) == bytes.len() as u64)
}

/// Whether the first records look like triangles although the size is wrong.
pub(super) fn is_plausible(bytes: &[u8]) -> bool {
    let first = records(bytes).take(16);
    first.len() > 0
        && first
            .flat_map(corners)
            .flatten()
            .all(|c| c == 0.0 || PLAUSIBLE.contains(&c.abs()))
}

/// Reads the triangles.
pub(super) fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    let mut warnings = Vec::new();
    let count = count(bytes, &mut warnings)?;
    if count == 0 {
        return Err(ParseError::NoTriangles);
    }
    if count > MAX_TRIANGLES {
        return Err(ParseError::TooManyTriangles);
    }
    let mut welder = Welder::with_room_for(count as usize / 2);
    let mut triangles = Vec::with_capacity(count as usize);
    let mut attributes = false;
    for (index, record) in records(bytes).take(count as usize).enumerate() {
        let corners = corners(record);
        for &coordinate in corners.as_flattened() {
            checked(f64::from(coordinate), || Place::Triangle {
                number: index as u64 + 1,
                byte: size_for(index as u64),
            })?;
        }
        triangles.push(corners.map(|c| welder.add(c)));
        attributes |= record[48..] != [0, 0];
    }
    let surface = Surface {
        vertices: welder.into_vertices(),
        triangles,
        colours: None,
        stored: Stored::Single,
    };
    let mut parsed = surface.finish(Format::StlBinary, warnings)?;
    parsed.carries_text = bytes[..80].iter().any(|&b| b != 0 && b != b' ');
    parsed.stl_attributes = attributes;
    Ok(parsed)
}

/// How many triangles to read: what the header declares, unless the size
/// leaves no doubt that it is wrong.
fn count(bytes: &[u8], warnings: &mut Vec<ReadWarning>) -> Result<u64, ParseError> {
    let declared = declared(bytes).ok_or(ParseError::TooShort { bytes: bytes.len() })?;
    let held = records(bytes).len() as u64;
    let spare = ((bytes.len() - HEADER) % RECORD) as u64;
    // 0 and 0xFFFFFFFF are what exporters leave that never fill in the count.
    let not_filled_in = declared == 0 || declared == u64::from(u32::MAX);
    if spare == 0
        && held > 0
        && (not_filled_in || declared < held)
        && more_triangles(bytes, declared)
    {
        warnings.push(ReadWarning::WrongCount { declared, held });
        return Ok(held);
    }
    if declared > held {
        return Err(ParseError::CutShort {
            items: "triangles",
            declared,
            held,
        });
    }
    if declared == 0 && held > 0 {
        return Err(ParseError::NotCounted {
            bytes: (bytes.len() - HEADER) as u64,
        });
    }
    let trailing = bytes.len() as u64 - size_for(declared);
    if trailing > 0 {
        let rest = &bytes[size_for(declared) as usize..];
        warnings.push(match self::declared(rest) {
            Some(triangles) if triangles > 0 && size_matches(rest) => {
                ReadWarning::SecondScan { triangles }
            }
            _ => ReadWarning::TrailingBytes { bytes: trailing },
        });
    }
    Ok(declared)
}

/// Whether what follows the declared triangles are triangles too.
fn more_triangles(bytes: &[u8], declared: u64) -> bool {
    let from = if declared == u64::from(u32::MAX) {
        0
    } else {
        declared as usize * RECORD
    };
    bytes.get(HEADER + from..).is_some_and(|rest| {
        rest.chunks_exact(RECORD)
            .take(16)
            .flat_map(corners)
            .flatten()
            .all(|c| c == 0.0 || PLAUSIBLE.contains(&c.abs()))
            && rest.iter().any(|&b| b != 0)
    })
}

fn records(bytes: &[u8]) -> std::slice::ChunksExact<'_, u8> {
    bytes.get(HEADER..).unwrap_or_default().chunks_exact(RECORD)
}

fn corners(record: &[u8]) -> [[f32; 3]; 3] {
    let at = |n: usize| {
        let at = 12 + 4 * n;
        f32::from_le_bytes([record[at], record[at + 1], record[at + 2], record[at + 3]])
    };
    [
        [at(0), at(1), at(2)],
        [at(3), at(4), at(5)],
        [at(6), at(7), at(8)],
    ]
}
