//! Facets of an ASCII STL in the spelling of nearly every exporter, read in a
//! fraction of the time that words one by one take. Any other spelling is left
//! to the general reader, which also says what is wrong.

use super::surface::GREATEST_COORDINATE;
use super::text::Words;
use super::weld::Welder;

/// The normal and the corners of a facet.
pub(super) type Facet = [[f64; 3]; 4];

/// Bytes from which on a file is worth a second thread.
const LARGE: usize = 8 << 20;

/// Takes the next facet, if it is in the plain spelling and every coordinate
/// can be one; otherwise nothing is taken.
#[inline]
pub(super) fn next_facet(words: &mut Words<'_>) -> Option<Facet> {
    let mut text = Text {
        rest: words.rest(),
        lines: 0,
    };
    text.space();
    text.word(b"facet")?;
    text.word(b"normal")?;
    let normal = text.numbers()?;
    text.word(b"outer")?;
    text.word(b"loop")?;
    let mut corners = [[0.0; 3]; 3];
    for corner in &mut corners {
        text.word(b"vertex")?;
        *corner = text.numbers()?;
        if !corner.iter().all(|c| c.abs() <= GREATEST_COORDINATE) {
            return None;
        }
    }
    text.word(b"endloop")?;
    // White space after the last word is left, as the general reader leaves it.
    text.rest = text.rest.strip_prefix(b"endfacet")?;
    if !text.rest.first().is_none_or(u8::is_ascii_whitespace) {
        return None;
    }
    words.pass_to(text.rest, text.lines);
    let [a, b, c] = corners;
    Some([normal, a, b, c])
}

/// Text of which words and numbers are taken from the beginning.
struct Text<'a> {
    rest: &'a [u8],
    /// Line ends that were passed.
    lines: u64,
}

impl Text<'_> {
    /// Passes over white space; whether there was any. A lone CR, which ends a
    /// line as well, is left.
    #[inline]
    fn space(&mut self) -> bool {
        let mut length = 0;
        loop {
            match self.rest[length..] {
                [b' ' | b'\t', ..] => length += 1,
                [b'\n', ..] => {
                    length += 1;
                    self.lines += 1;
                }
                [b'\r', b'\n', ..] => {
                    length += 2;
                    self.lines += 1;
                }
                _ => break,
            }
        }
        self.rest = &self.rest[length..];
        length > 0
    }

    /// Takes this word and the white space after it.
    #[inline]
    fn word(&mut self, word: &[u8]) -> Option<()> {
        self.rest = self.rest.strip_prefix(word)?;
        self.space().then_some(())
    }

    /// Takes three numbers and the white space after each.
    #[inline]
    fn numbers(&mut self) -> Option<[f64; 3]> {
        let mut numbers = [0.0; 3];
        for number in &mut numbers {
            let (value, length) = fast_float2::parse_partial(self.rest).ok()?;
            self.rest = &self.rest[length..];
            self.space().then_some(())?;
            *number = value;
        }
        Some(numbers)
    }
}

/// Plain facets from the middle of a file on, read beside its beginning.
pub(super) struct Later<'a> {
    pub welder: Welder<[u64; 3]>,
    pub triangles: Vec<[u32; 3]>,
    /// What comes after them.
    pub rest: &'a [u8],
    /// Line ends among them.
    pub lines: u64,
}

impl<'a> Later<'a> {
    /// All facets up to the first that is not plain.
    pub(super) fn read(bytes: &'a [u8]) -> Self {
        let mut words = Words::new(bytes, 0);
        let mut welder = Welder::with_room_for(bytes.len() / 500);
        let mut triangles = Vec::new();
        while let Some([_, corners @ ..]) = next_facet(&mut words) {
            triangles.push(corners.map(|p| welder.add(p.map(f64::to_bits))));
        }
        Self {
            welder,
            triangles,
            rest: words.rest(),
            lines: words.line(),
        }
    }
}

/// What comes after the first facet to end in the second half of a large file.
pub(super) fn second_half(bytes: &[u8]) -> Option<&[u8]> {
    const END: &[u8] = b"endfacet";
    const NEAR: usize = 4096;
    if bytes.len() < LARGE {
        return None;
    }
    let half = &bytes[bytes.len() / 2..];
    let end = half
        .get(..NEAR)?
        .windows(END.len())
        .position(|w| w == END)?;
    Some(&half[end + END.len()..])
}
