//! The numbers of a PLY body one after another, binary or text.

use super::error::{ParseError, Place};
use super::ply_header::{Element, Scalar};
use super::text::{Words, number};

/// Why there is no number.
#[derive(Debug)]
pub(super) enum Missing {
    /// The text has ended.
    End,
    /// The word is none.
    Wrong(ParseError),
}

impl Missing {
    /// The error, given what the end of the text means here.
    pub(super) fn or_end(self, at_end: impl FnOnce() -> ParseError) -> ParseError {
        match self {
            Self::End => at_end(),
            Self::Wrong(error) => error,
        }
    }
}

/// Numbers to be taken in the order in which they are stored.
pub(super) trait Values<'a>: Send {
    /// The next number, stored as `kind`.
    fn next(&mut self, kind: Scalar) -> Result<f64, Missing>;

    /// Passes over so many numbers.
    fn skip(&mut self, kind: Scalar, count: u64) -> Result<(), Missing>;

    /// The most numbers of this kind that what is left could hold.
    fn room(&self, kind: Scalar) -> u64;

    /// Where the number taken last stands.
    fn place(&self) -> Place;

    /// Marks the end of a record.
    fn end_record(&mut self) {}

    /// Whether there were numbers beyond those that the header declares.
    fn had_surplus(&self) -> bool {
        false
    }

    /// The place to name for the vertex whose coordinate was taken last.
    fn place_of_vertex(&self, index: u64) -> Place {
        Place::Vertex(index)
    }

    /// Bytes left, white space at the end of a text not counted.
    fn left(&self) -> u64;

    /// The next list as a triangle, where it is stored in the usual way (one
    /// byte, 3, and three 32-bit indices); otherwise nothing is taken. Most
    /// faces of most files are such, and this is several times as fast.
    fn plain_triangle(&mut self) -> Option<[u32; 3]> {
        None
    }

    /// As many of the next lists as are triangles stored in that way and have
    /// no index from `vertices` on, but no more than `most`.
    fn plain_triangles(&mut self, _most: usize, _vertices: u64, _to: &mut Vec<[u32; 3]>) {}

    /// The next so many records of so many bytes each, where all are there and
    /// lie side by side; otherwise nothing is taken.
    fn records(&mut self, _count: u64, _size: usize) -> Option<Records<'a>> {
        None
    }
}

/// Numbers of a binary body.
pub(super) struct Binary<'a, const BIG_ENDIAN: bool> {
    rest: &'a [u8],
    file_size: usize,
    last: usize,
}

impl<'a, const BIG_ENDIAN: bool> Binary<'a, BIG_ENDIAN> {
    /// Numbers from `start` on.
    pub(super) fn new(file: &'a [u8], start: usize) -> Self {
        Self {
            rest: file.get(start..).unwrap_or_default(),
            file_size: file.len(),
            last: start,
        }
    }

    fn take<const N: usize>(&mut self) -> Result<[u8; N], Missing> {
        let (taken, rest) = self.rest.split_first_chunk().ok_or(Missing::End)?;
        self.last = self.file_size - self.rest.len();
        self.rest = rest;
        Ok(*taken)
    }
}

/// Decodes bytes by the body's byte order.
macro_rules! decode {
    ($number:ty, $bytes:expr) => {
        if BIG_ENDIAN {
            <$number>::from_be_bytes($bytes)
        } else {
            <$number>::from_le_bytes($bytes)
        }
    };
}

impl<'a, const BIG_ENDIAN: bool> Values<'a> for Binary<'a, BIG_ENDIAN> {
    fn next(&mut self, kind: Scalar) -> Result<f64, Missing> {
        Ok(match kind {
            Scalar::I8 => f64::from(decode!(i8, self.take()?)),
            Scalar::U8 => f64::from(decode!(u8, self.take()?)),
            Scalar::I16 => f64::from(decode!(i16, self.take()?)),
            Scalar::U16 => f64::from(decode!(u16, self.take()?)),
            Scalar::I32 => f64::from(decode!(i32, self.take()?)),
            Scalar::U32 => f64::from(decode!(u32, self.take()?)),
            Scalar::F32 => f64::from(decode!(f32, self.take()?)),
            Scalar::F64 => decode!(f64, self.take()?),
        })
    }

    fn skip(&mut self, kind: Scalar, count: u64) -> Result<(), Missing> {
        let bytes = usize::try_from(count)
            .ok()
            .and_then(|n| n.checked_mul(kind.size()))
            .ok_or(Missing::End)?;
        self.last = self.file_size - self.rest.len();
        self.rest = self.rest.get(bytes..).ok_or(Missing::End)?;
        Ok(())
    }

    fn room(&self, kind: Scalar) -> u64 {
        (self.rest.len() / kind.size()) as u64
    }

    fn place(&self) -> Place {
        Place::Byte(self.last as u64)
    }

    fn left(&self) -> u64 {
        self.rest.len() as u64
    }

    fn plain_triangle(&mut self) -> Option<[u32; 3]> {
        let (record, rest) = self.rest.split_first_chunk::<13>()?;
        if record[0] != 3 {
            return None;
        }
        self.last = self.file_size - self.rest.len();
        self.rest = rest;
        let index = |n: usize| {
            let at = 1 + 4 * n;
            decode!(
                u32,
                [record[at], record[at + 1], record[at + 2], record[at + 3]]
            )
        };
        Some([index(0), index(1), index(2)])
    }

    fn plain_triangles(&mut self, most: usize, vertices: u64, to: &mut Vec<[u32; 3]>) {
        let (records, _) = self.rest.as_chunks::<13>();
        let records = &records[..records.len().min(most)];
        let before = to.len();
        to.extend(records.iter().map_while(|&[corners, b @ ..]| {
            let index = |at: usize| decode!(u32, [b[at], b[at + 1], b[at + 2], b[at + 3]]);
            let triangle = [index(0), index(4), index(8)];
            let greatest = triangle[0].max(triangle[1]).max(triangle[2]);
            ((corners == 3) & (u64::from(greatest) < vertices)).then_some(triangle)
        }));
        self.rest = &self.rest[13 * (to.len() - before)..];
    }

    fn records(&mut self, count: u64, size: usize) -> Option<Records<'a>> {
        let bytes = usize::try_from(count).ok()?.checked_mul(size)?;
        let (taken, rest) = self.rest.split_at_checked(bytes)?;
        self.rest = rest;
        (size > 0).then_some(Records {
            bytes: taken,
            size,
            big_endian: BIG_ENDIAN,
        })
    }
}

/// Binary records of one size, side by side.
pub(super) struct Records<'a> {
    bytes: &'a [u8],
    size: usize,
    big_endian: bool,
}

impl Records<'_> {
    /// The first so many.
    pub(super) fn first(&self, count: usize) -> Self {
        let bytes = self.bytes.len().min(self.size.saturating_mul(count));
        Self {
            bytes: &self.bytes[..bytes],
            ..*self
        }
    }

    /// Gives the number at a byte of each record, in their order.
    pub(super) fn each(&self, at: usize, kind: Scalar, give: impl FnMut(f64)) {
        match kind {
            Scalar::I8 => self.each_of(at, |b| f64::from(i8::from_le_bytes(b)), give),
            Scalar::U8 => self.each_of(at, |[b]| f64::from(b), give),
            Scalar::I16 => self.each_of(at, |b| f64::from(i16::from_le_bytes(b)), give),
            Scalar::U16 => self.each_of(at, |b| f64::from(u16::from_le_bytes(b)), give),
            Scalar::I32 => self.each_of(at, |b| f64::from(i32::from_le_bytes(b)), give),
            Scalar::U32 => self.each_of(at, |b| f64::from(u32::from_le_bytes(b)), give),
            Scalar::F32 => self.each_of(at, |b| f64::from(f32::from_le_bytes(b)), give),
            Scalar::F64 => self.each_of(at, f64::from_le_bytes, give),
        }
    }

    fn each_of<const N: usize>(
        &self,
        at: usize,
        number: impl Fn([u8; N]) -> f64,
        mut give: impl FnMut(f64),
    ) {
        for record in self.bytes.chunks_exact(self.size) {
            if let Some(&(mut bytes)) = record.get(at..).and_then(<[u8]>::first_chunk) {
                if self.big_endian {
                    bytes.reverse();
                }
                give(number(bytes));
            }
        }
    }
}

impl<'a> Values<'a> for Words<'a> {
    fn next(&mut self, kind: Scalar) -> Result<f64, Missing> {
        let word = Words::next(self).ok_or(Missing::End)?;
        value(word, kind, Words::place(self))
    }

    fn skip(&mut self, _: Scalar, count: u64) -> Result<(), Missing> {
        (0..count).try_for_each(|_| Words::next(self).map(|_| ()).ok_or(Missing::End))
    }

    fn room(&self, _: Scalar) -> u64 {
        // A digit and a space each; the last needs no space.
        self.rest().len().div_ceil(2) as u64
    }

    fn place(&self) -> Place {
        Words::place(self)
    }

    fn place_of_vertex(&self, _: u64) -> Place {
        Words::place(self)
    }

    fn left(&self) -> u64 {
        self.rest().trim_ascii().len() as u64
    }
}

/// Numbers of a text body of one record a line, whatever stands on the line
/// after the record's own numbers.
pub(super) struct LineByLine<'a> {
    words: Words<'a>,
    between_records: bool,
    surplus: bool,
}

impl<'a> LineByLine<'a> {
    /// Numbers of these words.
    pub(super) fn new(words: Words<'a>) -> Self {
        Self {
            words,
            between_records: true,
            surplus: false,
        }
    }

    fn word(&mut self) -> Result<&'a [u8], Missing> {
        let word = if self.between_records {
            self.words.next()
        } else {
            self.words.next_on_line()
        };
        self.between_records = false;
        word.ok_or(Missing::End)
    }
}

impl<'a> Values<'a> for LineByLine<'a> {
    fn next(&mut self, kind: Scalar) -> Result<f64, Missing> {
        let word = self.word()?;
        value(word, kind, self.words.place())
    }

    fn skip(&mut self, _: Scalar, count: u64) -> Result<(), Missing> {
        (0..count).try_for_each(|_| self.word().map(|_| ()))
    }

    fn room(&self, kind: Scalar) -> u64 {
        self.words.room(kind)
    }

    fn place(&self) -> Place {
        self.words.place()
    }

    fn end_record(&mut self) {
        self.surplus |= !self.between_records && self.words.skip_line();
        self.between_records = true;
    }

    fn had_surplus(&self) -> bool {
        self.surplus
    }

    fn place_of_vertex(&self, _: u64) -> Place {
        self.words.place()
    }

    fn left(&self) -> u64 {
        self.words.left()
    }
}

/// A word as a number stored as `kind`.
fn value(word: &[u8], kind: Scalar, place: Place) -> Result<f64, Missing> {
    let value = number(word, place).map_err(Missing::Wrong)?;
    if kind.is_whole() && value.fract() != 0.0 {
        return Err(Missing::Wrong(ParseError::BadNumber {
            place,
            problem: "a number that should be whole is not",
        }));
    }
    Ok(value)
}

/// The length of the next list, if the rest of the file could hold it.
pub(super) fn list_length<'a>(
    values: &mut impl Values<'a>,
    count: Scalar,
    of: Scalar,
    element: &Element,
    number: u64,
) -> Result<u64, ParseError> {
    /// No polygon has more corners; a longer list is no cut but a fault.
    const LONG: f64 = 255.0;
    let length = values
        .next(count)
        .map_err(|missing| missing.or_end(|| cut_short(element, number)))?;
    if length.is_nan() || length < 0.0 {
        return Err(ParseError::BadNumber {
            place: values.place(),
            problem: "the length of a list is negative",
        });
    }
    if length > values.room(of) as f64 {
        return Err(if length > LONG {
            ParseError::ListTooLong {
                place: values.place(),
                length: length as u64,
            }
        } else {
            cut_short(element, number)
        });
    }
    Ok(length as u64)
}

/// The error of an element whose records stop after so many.
pub(super) fn cut_short(element: &Element, held: u64) -> ParseError {
    ParseError::CutShort {
        items: element.items(),
        declared: element.count,
        held,
    }
}
