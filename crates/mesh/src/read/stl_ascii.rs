//! ASCII STL, in every spelling that is met: any case, tabs, any line ends,
//! names with key words in them, several solids, `end loop` for `endloop`.

use super::error::{ParseError, Place, ReadWarning};
use super::surface::{Stored, Surface, checked};
use super::text::{Words, number, without_byte_order_mark};
use super::weld::Welder;
use super::{MAX_TRIANGLES, Parsed};
use crate::Format;
use nalgebra::Point3;

/// Reads the triangles of every solid.
pub(super) fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    let mut words = Words::new(without_byte_order_mark(bytes), 1);
    let mut welder = Welder::with_room_for(bytes.len() / 500);
    let mut triangles = Vec::new();
    let mut warnings = Vec::new();
    let mut carries_text = false;
    let (mut solids, mut empty_solids, mut open) = (0, 0, false);
    let mut triangles_before = 0;
    while let Some(word) = words.next() {
        if is(word, b"facet") {
            if triangles.len() as u64 == MAX_TRIANGLES {
                return Err(ParseError::TooManyTriangles);
            }
            let corners = facet(&mut words, triangles.len() as u64 + 1)?;
            triangles.push(corners.map(|p| welder.add(p)));
        } else if is(word, b"solid") {
            carries_text |= skip_name(&mut words);
            triangles_before = triangles.len();
            solids += 1;
            open = true;
        } else if is_end_of(word, &mut words, b"endsolid", b"solid") {
            carries_text |= skip_name(&mut words);
            empty_solids += u64::from(open && triangles.len() == triangles_before);
            open = false;
        } else if let Some(padding) = padding(word, words.rest()) {
            warnings.push(ReadWarning::TrailingBytes { bytes: padding });
            break;
        } else {
            return Err(ParseError::Expected {
                place: words.place(),
                expected: "'facet' or 'endsolid'",
            });
        }
    }
    if triangles.is_empty() {
        return Err(ParseError::NoTriangles);
    }
    if open {
        warnings.push(ReadWarning::NoEndSolid);
    }
    if solids > empty_solids + 1 {
        warnings.push(ReadWarning::SeveralSolids {
            solids: solids - empty_solids,
        });
    }
    let surface = Surface {
        vertices: welder.into_vertices(),
        triangles,
        colours: None,
        stored: Stored::Exact,
    };
    let mut parsed = surface.finish(Format::StlAscii, warnings)?;
    parsed.carries_text = carries_text;
    parsed.solids = solids.max(1);
    Ok(parsed)
}

/// The corners of a facet, whose first word has been read.
fn facet(words: &mut Words<'_>, triangle: u64) -> Result<[Point3<f64>; 3], ParseError> {
    let mut corners = [Point3::origin(); 3];
    let mut found = 0;
    let ends = |place: Place| ParseError::EndsInside {
        place,
        item: "triangle",
        number: triangle,
    };
    expect(words, b"normal", "'normal'", ends)?;
    // The normal is not used, and some exporters write no numbers there.
    let mut word = words.next();
    while let Some(part) = word
        && !is(part, b"outer")
    {
        if let Err(error @ ParseError::DecimalComma { .. }) = number(part, words.place()) {
            return Err(error);
        }
        if is(part, b"vertex") || is(part, b"facet") {
            return Err(ParseError::Expected {
                place: words.place(),
                expected: "'outer loop'",
            });
        }
        word = words.next();
    }
    if word.is_none() {
        return Err(ends(words.place()));
    }
    expect(words, b"loop", "'loop'", ends)?;
    loop {
        let word = words.next().ok_or_else(|| ends(words.place()))?;
        if is_end_of(word, words, b"endloop", b"loop") {
            break;
        }
        if !is(word, b"vertex") {
            return Err(ParseError::Expected {
                place: words.place(),
                expected: "'vertex' or 'endloop'",
            });
        }
        let corner = vertex(words, ends)?;
        if let Some(slot) = corners.get_mut(found as usize) {
            *slot = corner;
        }
        found += 1;
    }
    if found != 3 {
        return Err(ParseError::Corners {
            place: words.place(),
            triangle,
            corners: found,
        });
    }
    let word = words.next().ok_or_else(|| ends(words.place()))?;
    if is_end_of(word, words, b"endfacet", b"facet") {
        Ok(corners)
    } else {
        Err(ParseError::Expected {
            place: words.place(),
            expected: "'endfacet'",
        })
    }
}

fn vertex(
    words: &mut Words<'_>,
    ends: impl Fn(Place) -> ParseError,
) -> Result<Point3<f64>, ParseError> {
    let mut point = Point3::origin();
    for axis in 0..3 {
        let value = words
            .number()
            .map_err(|e| e.or_end(|| ends(words.place())))?;
        point[axis] = checked(value, || words.place())?;
    }
    Ok(point)
}

fn expect(
    words: &mut Words<'_>,
    wanted: &[u8],
    expected: &'static str,
    ends: impl Fn(Place) -> ParseError,
) -> Result<(), ParseError> {
    match words.next() {
        Some(word) if is(word, wanted) => Ok(()),
        Some(_) => Err(ParseError::Expected {
            place: words.place(),
            expected,
        }),
        None => Err(ends(words.place())),
    }
}

/// Passes over a solid's name, which is the rest of its line; whether there
/// was one. Where the whole file is on one line the name ends before the
/// first facet, known by the number that follows `facet normal`.
fn skip_name(words: &mut Words<'_>) -> bool {
    let mut named = false;
    loop {
        let before = words.clone();
        let Some(word) = words.next_on_line() else {
            return named;
        };
        if is(word, b"facet")
            && words.next_on_line().is_some_and(|w| is(w, b"normal"))
            && words
                .next_on_line()
                .is_some_and(|w| number(w, words.place()).is_ok())
        {
            *words = before;
            return named;
        }
        *words = before;
        words.next_on_line();
        named = true;
    }
}

/// Whether this is the word `whole`, or `end` followed by the word `part`.
fn is_end_of(word: &[u8], words: &mut Words<'_>, whole: &[u8], part: &[u8]) -> bool {
    if is(word, whole) {
        return true;
    }
    let before = words.clone();
    if is(word, b"end") && words.next().is_some_and(|w| is(w, part)) {
        return true;
    }
    *words = before;
    false
}

/// Number of bytes, if nothing but padding is left: zeros, or the end-of-file
/// mark of old systems.
fn padding(word: &[u8], rest: &[u8]) -> Option<u64> {
    let all = word.iter().chain(rest);
    all.clone()
        .all(|&b| matches!(b, 0 | 0x1A) || super::text::is_space(b))
        .then(|| all.count() as u64)
}

fn is(word: &[u8], keyword: &[u8]) -> bool {
    word.eq_ignore_ascii_case(keyword)
}
