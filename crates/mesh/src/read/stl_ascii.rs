//! ASCII STL, in every spelling that is met: any case, tabs, any line ends,
//! names with key words in them, several solids, `end loop` for `endloop`.

use super::error::ParseError;
use super::format::Format;
use super::limits::MAX_TRIANGLES;
use super::scan::Parsed;
use super::stl_plain::{self, Later};
use super::stored_normals::{self, Tally};
use super::surface::{Stored, Surface, checked};
use super::text::{Words, is_space, number, without_byte_order_mark};
use super::warning::ReadWarning;
use super::weld::{Welder, places};
use nalgebra::{Point3, Vector3};

/// Reads the triangles of every solid. The facets of the second half of a large
/// file are read beside the first, and taken where they are as they were read.
pub(super) fn parse(bytes: &[u8]) -> Result<Parsed, ParseError> {
    let text = without_byte_order_mark(bytes);
    let mut words = Words::new(text, 1);
    let mut solids = Solids::with_room_for(text.len());
    if let Some(half) = stl_plain::second_half(text) {
        let (first, later) =
            rayon::join(|| solids.read(&mut words, Some(half)), || Later::read(half));
        first?;
        if words.rest().len() == half.len() {
            solids.take(later, &mut words)?;
        }
    }
    solids.read(&mut words, None)?;
    solids.into_parsed()
}

/// What has been read so far.
struct Solids {
    welder: Welder<[u64; 3]>,
    triangles: Vec<[u32; 3]>,
    tally: Tally,
    warnings: Vec<ReadWarning>,
    carries_text: bool,
    solids: u64,
    empty_solids: u64,
    open: bool,
    triangles_before: usize,
}

impl Solids {
    fn with_room_for(bytes: usize) -> Self {
        Self {
            welder: Welder::with_room_for(bytes / 500),
            triangles: Vec::new(),
            tally: Tally::default(),
            warnings: Vec::new(),
            carries_text: false,
            solids: 0,
            empty_solids: 0,
            open: false,
            triangles_before: 0,
        }
    }

    /// Reads to the end, or until nothing but `half` is left.
    fn read(&mut self, words: &mut Words<'_>, half: Option<&[u8]>) -> Result<(), ParseError> {
        loop {
            if half.is_some_and(|half| words.rest().len() == half.len()) {
                return Ok(());
            }
            if (self.triangles.len() as u64) < MAX_TRIANGLES
                && let Some([normal, corners @ ..]) = stl_plain::next_facet(words)
            {
                self.add(Some(normal.into()), corners);
                continue;
            }
            match words.next() {
                Some(word) => self.read_part(word, words)?,
                None => return Ok(()),
            }
        }
    }

    /// Reads what begins with this word.
    fn read_part(&mut self, word: &[u8], words: &mut Words<'_>) -> Result<(), ParseError> {
        if is(word, b"facet") {
            if self.triangles.len() as u64 == MAX_TRIANGLES {
                return Err(ParseError::TooManyTriangles);
            }
            let number = self.triangles.len() as u64 + 1;
            let (normal, corners) = Facet { number, words }.read()?;
            self.add(normal, corners);
        } else if is(word, b"solid") {
            self.carries_text |= skip_name(words);
            self.triangles_before = self.triangles.len();
            self.solids += 1;
            self.open = true;
        } else if is_end_of(word, words, b"endsolid", b"solid") {
            self.carries_text |= skip_name(words);
            self.empty_solids +=
                u64::from(self.open && self.triangles.len() == self.triangles_before);
            self.open = false;
        } else if let Some(padding) = padding(word, words.rest()) {
            self.warnings
                .push(ReadWarning::TrailingBytes { bytes: padding });
            words.pass_to(&[], 0);
        } else {
            return Err(ParseError::Expected {
                place: words.place(),
                expected: "'facet' or 'endsolid'",
            });
        }
        Ok(())
    }

    fn add(&mut self, normal: Option<Vector3<f64>>, corners: Corners) {
        if self.triangles.len() < stored_normals::LOOKED_AT
            && let Some(normal) = normal
        {
            self.tally.add(normal, corners.map(Point3::from));
        }
        self.triangles
            .push(corners.map(|p| self.welder.add(p.map(f64::to_bits))));
    }

    /// Adds facets that were read beside these, which come next, unless the
    /// normals of some of them are still to be looked at.
    fn take(&mut self, later: Later<'_>, words: &mut Words<'_>) -> Result<(), ParseError> {
        if self.triangles.len() < stored_normals::LOOKED_AT {
            return Ok(());
        }
        if (self.triangles.len() + later.triangles.len()) as u64 > MAX_TRIANGLES {
            return Err(ParseError::TooManyTriangles);
        }
        words.pass_to(later.rest, later.lines);
        let numbers = self.welder.add_all(later.welder);
        let triangles = later.triangles.iter();
        self.triangles
            .extend(triangles.map(|t| t.map(|v| numbers[v as usize])));
        Ok(())
    }

    fn into_parsed(mut self) -> Result<Parsed, ParseError> {
        if self.triangles.is_empty() {
            return Err(ParseError::NoTriangles);
        }
        if self.open {
            self.warnings.push(ReadWarning::NoEndSolid);
        }
        if self.solids > self.empty_solids + 1 {
            self.warnings.push(ReadWarning::SeveralSolids {
                solids: self.solids - self.empty_solids,
            });
        }
        self.warnings.extend(self.tally.warning());
        let surface = Surface {
            vertices: places(self.welder.into_points()),
            triangles: self.triangles,
            colours: None,
            stored: Stored::Exact,
        };
        let mut parsed = surface.finish(Format::StlAscii, self.warnings)?;
        parsed.carries_text = self.carries_text;
        parsed.solids = self.solids.max(1);
        Ok(parsed)
    }
}

type Corners = [[f64; 3]; 3];

/// A facet whose first word has been read.
struct Facet<'w, 'a> {
    words: &'w mut Words<'a>,
    /// Its number in the file, from 1.
    number: u64,
}

impl<'a> Facet<'_, 'a> {
    /// The stored normal, if there is one, and the corners.
    fn read(mut self) -> Result<(Option<Vector3<f64>>, Corners), ParseError> {
        self.expect(b"normal", "'normal'")?;
        let normal = self.normal()?;
        self.expect(b"loop", "'loop'")?;
        let mut corners = [[0.0; 3]; 3];
        let mut found = 0;
        loop {
            let word = self.word()?;
            if is_end_of(word, self.words, b"endloop", b"loop") {
                break;
            }
            if !is(word, b"vertex") {
                return Err(self.unexpected("'vertex' or 'endloop'"));
            }
            let corner = self.vertex()?;
            if let Some(slot) = corners.get_mut(found) {
                *slot = corner;
            }
            found += 1;
        }
        if found != 3 {
            return Err(ParseError::Corners {
                place: self.words.place(),
                triangle: self.number,
                corners: found as u64,
            });
        }
        let word = self.word()?;
        if is_end_of(word, self.words, b"endfacet", b"facet") {
            Ok((normal, corners))
        } else {
            Err(self.unexpected("'endfacet'"))
        }
    }

    /// Reads the normal and `outer` after it; `None` where there are no three
    /// numbers, as some exporters have it.
    fn normal(&mut self) -> Result<Option<Vector3<f64>>, ParseError> {
        let mut normal = Vector3::zeros();
        let mut found = 0;
        loop {
            let word = self.word()?;
            if is(word, b"outer") {
                return Ok((found == 3).then_some(normal));
            }
            if is(word, b"vertex") || is(word, b"facet") {
                return Err(self.unexpected("'outer loop'"));
            }
            // Only the first few are held against their triangles.
            if word.contains(&b',') || self.number <= stored_normals::LOOKED_AT as u64 {
                match number(word, self.words.place()) {
                    Ok(value) if found < 3 => {
                        normal[found] = value;
                        found += 1;
                    }
                    Err(comma @ ParseError::DecimalComma { .. }) => return Err(comma),
                    Ok(_) | Err(_) => {}
                }
            }
        }
    }

    fn vertex(&mut self) -> Result<[f64; 3], ParseError> {
        let mut point = [0.0; 3];
        for coordinate in &mut point {
            let word = self.word()?;
            let place = self.words.place();
            let value = match number(word, place) {
                Err(_) if self.is_last_word() => return Err(self.ends()),
                value => value?,
            };
            *coordinate = checked(value, || place)?;
        }
        Ok(point)
    }

    fn word(&mut self) -> Result<&'a [u8], ParseError> {
        self.words.next().ok_or_else(|| self.ends())
    }

    fn expect(&mut self, wanted: &[u8], expected: &'static str) -> Result<(), ParseError> {
        if is(self.word()?, wanted) {
            Ok(())
        } else {
            Err(self.unexpected(expected))
        }
    }

    /// The error for the word read last: a half word at the very end is where
    /// a file was cut.
    fn unexpected(&self, expected: &'static str) -> ParseError {
        if self.is_last_word() {
            self.ends()
        } else {
            ParseError::Expected {
                place: self.words.place(),
                expected,
            }
        }
    }

    fn is_last_word(&self) -> bool {
        self.words.rest().trim_ascii().is_empty()
    }

    fn ends(&self) -> ParseError {
        ParseError::EndsInside {
            place: self.words.place(),
            item: "triangle",
            number: self.number,
        }
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
        .all(|&b| matches!(b, 0 | 0x1A) || is_space(b))
        .then(|| all.count() as u64)
}

fn is(word: &[u8], keyword: &[u8]) -> bool {
    word.eq_ignore_ascii_case(keyword)
}
