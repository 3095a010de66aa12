//! The PLY header, checked against the size of the file before anything is
//! made room for.

use super::error::{ParseError, Place};
use super::format::Format;
use super::text::is_space;

/// Longest header that is read, bytes.
const LONGEST_HEADER: usize = 1 << 20;

/// Type of a stored number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Scalar {
    I8,
    U8,
    I16,
    U16,
    I32,
    U32,
    F32,
    F64,
}

impl Scalar {
    fn named(name: &[u8]) -> Option<Self> {
        Some(match name {
            b"char" | b"int8" => Self::I8,
            b"uchar" | b"uint8" => Self::U8,
            b"short" | b"int16" => Self::I16,
            b"ushort" | b"uint16" => Self::U16,
            b"int" | b"int32" => Self::I32,
            b"uint" | b"uint32" => Self::U32,
            b"float" | b"float32" => Self::F32,
            b"double" | b"float64" => Self::F64,
            _ => return None,
        })
    }

    /// Bytes in a binary file.
    pub(super) fn size(self) -> usize {
        match self {
            Self::I8 | Self::U8 => 1,
            Self::I16 | Self::U16 => 2,
            Self::I32 | Self::U32 | Self::F32 => 4,
            Self::F64 => 8,
        }
    }

    /// Whether it stores whole numbers only.
    pub(super) fn is_whole(self) -> bool {
        !matches!(self, Self::F32 | Self::F64)
    }
}

/// What a property holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shape {
    /// One number.
    One(Scalar),
    /// A number of numbers.
    List { count: Scalar, of: Scalar },
}

/// A property of an element.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Property {
    pub name: String,
    pub shape: Shape,
}

/// An element: so many records of the same properties.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Element {
    pub name: String,
    pub count: u64,
    pub properties: Vec<Property>,
}

impl Element {
    /// The position of the first property that has one of these names.
    pub(super) fn position(&self, names: &[&str]) -> Option<usize> {
        self.properties
            .iter()
            .position(|p| names.contains(&p.name.as_str()))
    }

    /// Bytes of a record, lists taken as empty.
    pub(super) fn least_bytes(&self, format: Format) -> u64 {
        self.properties
            .iter()
            .map(|p| match (p.shape, format) {
                // A digit and a space.
                (_, Format::PlyAscii) => 2,
                (Shape::One(of), _) => of.size() as u64,
                (Shape::List { count, .. }, _) => count.size() as u64,
            })
            .sum()
    }

    /// The type of each property and the byte of a binary record at which it
    /// begins, and the size of a record; `None` where there are lists.
    pub(super) fn layout(&self) -> Option<(Vec<(Scalar, usize)>, usize)> {
        let mut size = 0;
        let mut layout = Vec::with_capacity(self.properties.len());
        for property in &self.properties {
            let Shape::One(kind) = property.shape else {
                return None;
            };
            layout.push((kind, size));
            size += kind.size();
        }
        Some((layout, size))
    }

    /// Plural name of the records, for messages.
    pub(super) fn items(&self) -> &'static str {
        match self.name.as_str() {
            "vertex" => "vertices",
            "face" => "faces",
            "tristrips" => "triangle strips",
            _ => "records of another element",
        }
    }
}

/// A header.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Header {
    pub format: Format,
    pub elements: Vec<Element>,
    /// Length in bytes.
    pub length: usize,
    /// Length in lines.
    pub lines: u64,
    /// Whether there are comments.
    pub carries_text: bool,
    /// Whether a comment names a picture.
    pub names_picture: bool,
}

impl Header {
    /// The element of this name.
    pub(super) fn element(&self, name: &str) -> Option<&Element> {
        self.elements.iter().find(|e| e.name == name)
    }
}

/// Whether these bytes begin like a PLY file.
pub(super) fn begins(bytes: &[u8]) -> bool {
    bytes.starts_with(b"ply") && bytes.get(3).is_none_or(|&b| is_space(b))
}

/// Reads the header of a whole file and holds its counts against the size.
pub(super) fn parse(bytes: &[u8]) -> Result<Header, ParseError> {
    parse_within(bytes, bytes.len() as u64)
}

/// Reads a header from the beginning of a file of so many bytes and holds its
/// counts against that size.
pub(super) fn parse_within(bytes: &[u8], size: u64) -> Result<Header, ParseError> {
    let mut lines = Lines::of(bytes);
    let mut format = None;
    let mut header = Header {
        format: Format::PlyAscii,
        elements: Vec::new(),
        length: 0,
        lines: 0,
        carries_text: false,
        names_picture: false,
    };
    lines.next();
    loop {
        let line = lines.next();
        let place = Place::Line(lines.number);
        let wrong = |problem| ParseError::Header { place, problem };
        let line = line.ok_or_else(|| wrong("there is no 'end_header' line"))?;
        let mut words = line.split(|&b| is_space(b)).filter(|w| !w.is_empty());
        match words.next() {
            None => {}
            Some(b"comment" | b"obj_info") => {
                if let Some(first) = words.next() {
                    header.carries_text = true;
                    header.names_picture |= first.eq_ignore_ascii_case(b"TextureFile");
                }
            }
            Some(b"format") => {
                format = Some(match words.next() {
                    Some(b"ascii") => Format::PlyAscii,
                    Some(b"binary_little_endian") => Format::PlyBinaryLe,
                    Some(b"binary_big_endian") => Format::PlyBinaryBe,
                    _ => {
                        return Err(wrong(
                            "the format is not one of ascii, binary_little_endian and binary_big_endian",
                        ));
                    }
                });
            }
            Some(b"element") => header.elements.push(element(words).map_err(wrong)?),
            Some(b"property") => {
                let owner = header
                    .elements
                    .last_mut()
                    .ok_or_else(|| wrong("a property comes before the first element"))?;
                owner.properties.push(property(words).map_err(wrong)?);
            }
            Some(b"end_header") => break,
            // Some old exporters forgot the word `comment` before the first one.
            Some(_) if header.elements.is_empty() => header.carries_text = true,
            Some(_) if !lines.holds(b"end_header") => {
                return Err(wrong("there is no 'end_header' line"));
            }
            Some(_) => return Err(wrong("a line begins with no known word")),
        }
    }
    header.format = format.ok_or(ParseError::Header {
        place: Place::Line(lines.number),
        problem: "there is no 'format' line",
    })?;
    header.length = lines.at;
    header.lines = lines.number;
    check_counts(&header, size.saturating_sub(header.length as u64))?;
    Ok(header)
}

fn element<'a>(mut words: impl Iterator<Item = &'a [u8]>) -> Result<Element, &'static str> {
    let name = words.next().ok_or("an element has no name")?;
    let count = words
        .next()
        .and_then(|w| std::str::from_utf8(w).ok())
        .and_then(|w| w.parse().ok())
        .ok_or("an element's count is not a whole number from 0 up")?;
    Ok(Element {
        name: String::from_utf8_lossy(name).into_owned(),
        count,
        properties: Vec::new(),
    })
}

fn property<'a>(mut words: impl Iterator<Item = &'a [u8]>) -> Result<Property, &'static str> {
    const UNKNOWN: &str = "a property has an unknown type";
    let kind = words.next().ok_or("a property has no type")?;
    let mut scalar = || words.next().and_then(Scalar::named).ok_or(UNKNOWN);
    let shape = if kind == b"list" {
        let (count, of) = (scalar()?, scalar()?);
        if !count.is_whole() {
            return Err("a list's length is not of a whole-number type");
        }
        Shape::List { count, of }
    } else {
        Shape::One(Scalar::named(kind).ok_or(UNKNOWN)?)
    };
    let name = words.next().ok_or("a property has no name")?;
    Ok(Property {
        name: String::from_utf8_lossy(name).into_owned(),
        shape,
    })
}

/// Refuses counts that the bytes after the header cannot hold.
fn check_counts(header: &Header, body: u64) -> Result<(), ParseError> {
    let mut room = body;
    // The last number of a text needs no space after it.
    if header.format == Format::PlyAscii {
        room += 1;
    }
    for element in &header.elements {
        let each = element.least_bytes(header.format);
        let needed = each.checked_mul(element.count).filter(|&n| n <= room);
        let Some(needed) = needed else {
            return Err(ParseError::NoRoom {
                items: element.items(),
                declared: element.count,
                room: room / each,
            });
        };
        room -= needed;
    }
    Ok(())
}

/// Lines of a header. The first line's end decides what ends a line, because
/// the first byte of a binary body can look like the second half of CR LF.
struct Lines<'a> {
    bytes: &'a [u8],
    at: usize,
    number: u64,
    end: u8,
}

impl<'a> Lines<'a> {
    fn of(bytes: &'a [u8]) -> Self {
        let first_end = bytes.iter().position(|&b| matches!(b, b'\n' | b'\r'));
        let lone_cr =
            first_end.is_some_and(|at| bytes[at] == b'\r' && bytes.get(at + 1) != Some(&b'\n'));
        Self {
            bytes: &bytes[..bytes.len().min(LONGEST_HEADER)],
            at: 0,
            number: 0,
            end: if lone_cr { b'\r' } else { b'\n' },
        }
    }

    /// Whether these bytes are in what has not been read yet.
    fn holds(&self, wanted: &[u8]) -> bool {
        let rest = &self.bytes[self.at..];
        rest.windows(wanted.len()).any(|window| window == wanted)
    }

    fn next(&mut self) -> Option<&'a [u8]> {
        let rest = &self.bytes[self.at..];
        if rest.is_empty() {
            return None;
        }
        self.number += 1;
        let length = rest
            .iter()
            .position(|&b| b == self.end)
            .unwrap_or(rest.len());
        self.at = (self.at + length + 1).min(self.bytes.len());
        Some(&rest[..length])
    }
}
