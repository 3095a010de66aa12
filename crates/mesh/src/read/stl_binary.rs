//! Binary STL: 80 free bytes, a count, and 50 bytes for each triangle
//! (normal, three corners, two attribute bytes).
//!
//! The records are read here and not by a general reader because everything
//! that goes wrong with them in practice is a matter of the count against the
//! size, which has to be settled first. Stored normals are ignored: the
//! corners say which way a triangle faces.

use super::error::{ParseError, Place};
use super::format::Format;
use super::limits::MAX_TRIANGLES;
use super::scan::Parsed;
use super::stored_normals::{self, Tally};
use super::surface::{GREATEST_COORDINATE, Stored, Surface, checked};
use super::warning::ReadWarning;
use super::weld::{Bits, Single, Welder, places};

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
    let all = records(bytes);
    let first = &all[..all.len().min(16)];
    !first.is_empty()
        && first
            .iter()
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
    let records = &records(bytes)[..count as usize];
    let Welded {
        points,
        triangles,
        attributes,
    } = welded(records)?;
    warnings.extend(normals_against_triangles(records));
    let surface = Surface {
        vertices: places(points),
        triangles,
        colours: None,
        stored: Stored::Single,
    };
    let mut parsed = surface.finish(Format::StlBinary, warnings)?;
    parsed.carries_text = bytes[..80].iter().any(|&b| b != 0 && b != b' ');
    parsed.stl_attributes = attributes;
    Ok(parsed)
}

/// Triangles whose equal corners have been joined.
struct Welded {
    /// The different corners, by number.
    points: Vec<Single>,
    triangles: Vec<[u32; 3]>,
    /// Whether any has attribute bytes that are not zero.
    attributes: bool,
}

/// Joins equal corners, numbered in order of first appearance. Looking them up
/// is most of the time of reading, so two halves are done side by side, and
/// then only the points of the second are looked up in the first.
fn welded(records: &[[u8; RECORD]]) -> Result<Welded, ParseError> {
    /// Fewer triangles are not worth a second thread.
    const MANY: usize = 50_000;
    if records.len() < MANY {
        let all = welded_one_by_one(records, 0)?;
        return Ok(Welded {
            points: all.welder.into_points(),
            triangles: all.triangles,
            attributes: all.attributes,
        });
    }
    let middle = records.len() / 2;
    let (first, second) = rayon::join(
        || welded_one_by_one(&records[..middle], 0),
        || welded_one_by_one(&records[middle..], middle as u64),
    );
    let (first, second) = (first?, second?);
    let (points, numbers) = first.welder.joined_with(second.welder);
    let mut triangles = first.triangles;
    triangles.reserve_exact(second.triangles.len());
    let later = second.triangles.iter();
    triangles.extend(later.map(|t| t.map(|v| numbers[v as usize])));
    Ok(Welded {
        points,
        triangles,
        attributes: first.attributes | second.attributes,
    })
}

/// Triangles of a part of the file, as those of [`Welded`] are.
struct Part {
    welder: Welder<Single>,
    triangles: Vec<[u32; 3]>,
    attributes: bool,
}

/// `first` is the number of the first of these records in the file, from 0.
fn welded_one_by_one(records: &[[u8; RECORD]], first: u64) -> Result<Part, ParseError> {
    let mut welder = Welder::with_room_for(records.len() / 2);
    let mut triangles = Vec::with_capacity(records.len());
    let mut attributes = false;
    let mut before = Before::NONE;
    for (index, record) in (first..).zip(records) {
        let corners = corner_bits(record);
        if !corners.into_iter().all(is_within) {
            return Err(out_of_bounds(record, index));
        }
        let numbers = corners.map(|corner| {
            before
                .number_of(corner)
                .unwrap_or_else(|| welder.add(corner))
        });
        triangles.push(numbers);
        before = Before(corners, numbers);
        attributes |= record[48..] != [0, 0];
    }
    Ok(Part {
        welder,
        triangles,
        attributes,
    })
}

fn normals_against_triangles(records: &[[u8; RECORD]]) -> Option<ReadWarning> {
    let mut tally = Tally::default();
    for record in records.iter().take(stored_normals::LOOKED_AT) {
        let [normal, a, b, c] = vectors(record).map(Single::point);
        tally.add(normal.coords, [a, b, c]);
    }
    tally.warning()
}

/// The corners of the triangle before, and their numbers. Neighbours in the file
/// are mostly neighbours on the surface: two of three corners are found here,
/// and need not be looked up.
struct Before([Single; 3], [u32; 3]);

impl Before {
    const NONE: Self = Self([Single::NOWHERE; 3], [0; 3]);

    #[inline]
    fn number_of(&self, corner: Single) -> Option<u32> {
        let Self([a, b, c], numbers) = self;
        if corner == *a {
            Some(numbers[0])
        } else if corner == *b {
            Some(numbers[1])
        } else if corner == *c {
            Some(numbers[2])
        } else {
            None
        }
    }
}

/// The refusal of a triangle that has a corner out of bounds.
fn out_of_bounds(record: &[u8; RECORD], index: u64) -> ParseError {
    let place = Place::Triangle {
        number: index + 1,
        byte: size_for(index),
    };
    corners(record)
        .as_flattened()
        .iter()
        .find_map(|&c| checked(f64::from(c), || place).err())
        .unwrap_or(ParseError::NotFinite { place })
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
        let records: &[[u8; RECORD]] = rest.as_chunks().0;
        records
            .iter()
            .take(16)
            .flat_map(corners)
            .flatten()
            .all(|c| c == 0.0 || PLAUSIBLE.contains(&c.abs()))
            && rest.iter().any(|&b| b != 0)
    })
}

fn records(bytes: &[u8]) -> &[[u8; RECORD]] {
    bytes.get(HEADER..).unwrap_or_default().as_chunks().0
}

fn corners(record: &[u8; RECORD]) -> [[f32; 3]; 3] {
    corner_bits(record).map(|corner| corner.coordinates().map(f32::from_bits))
}

/// The corners as stored. Whole numbers are read and compared in half the time
/// of floating-point ones.
#[inline]
fn corner_bits(record: &[u8; RECORD]) -> [Single; 3] {
    let [_normal, a, b, c] = vectors(record);
    [a, b, c]
}

/// The normal and the three corners as stored.
#[inline]
fn vectors(record: &[u8; RECORD]) -> [Single; 4] {
    let (vectors, _attributes) = record.as_chunks();
    [0, 1, 2, 3].map(|at| Single::from_le_bytes(vectors[at]))
}

/// Whether every coordinate is no farther from 0 than [`GREATEST_COORDINATE`];
/// of two numbers of one sign the greater has the greater bits, NaN the greatest.
#[inline]
fn is_within(corner: Single) -> bool {
    const SIGN: u32 = 1 << 31;
    const GREATEST: u32 = (GREATEST_COORDINATE as f32).to_bits();
    let [x, y, z] = corner.coordinates().map(|bits| bits & !SIGN <= GREATEST);
    x & y & z
}
