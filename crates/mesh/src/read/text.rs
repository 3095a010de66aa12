//! Words and lines of text formats, with the line that each stands on.

use super::error::{ParseError, Place};

/// Splits bytes into words at white space, counting lines. A line ends at
/// LF, CR LF or a lone CR; white space is the same in every format read here.
#[derive(Debug, Clone)]
pub(super) struct Words<'a> {
    bytes: &'a [u8],
    at: usize,
    line: u64,
}

impl<'a> Words<'a> {
    /// Words from `bytes`, whose first byte stands on line `line`.
    pub(super) fn new(bytes: &'a [u8], line: u64) -> Self {
        Self { bytes, at: 0, line }
    }

    /// The place of the word read last, or of the end.
    pub(super) fn place(&self) -> Place {
        Place::Line(self.line)
    }

    /// What has not been read yet.
    pub(super) fn rest(&self) -> &'a [u8] {
        &self.bytes[self.at..]
    }

    /// The line of the word read last, or of the end.
    pub(super) fn line(&self) -> u64 {
        self.line
    }

    /// Goes on at `rest`, a later part of what has not been read yet, before
    /// which so many lines end.
    pub(super) fn pass_to(&mut self, rest: &[u8], lines: u64) {
        self.at = self.bytes.len() - rest.len();
        self.line += lines;
    }

    /// The next word, on whichever line it stands.
    pub(super) fn next(&mut self) -> Option<&'a [u8]> {
        while let Some(&byte) = self.bytes.get(self.at) {
            if !is_space(byte) {
                return Some(self.word());
            }
            self.pass(byte);
        }
        None
    }

    /// The next word of this line; `None` at its end.
    pub(super) fn next_on_line(&mut self) -> Option<&'a [u8]> {
        while let Some(&byte) = self.bytes.get(self.at) {
            if !is_space(byte) {
                return Some(self.word());
            }
            if is_line_end(byte) {
                return None;
            }
            self.at += 1;
        }
        None
    }

    /// Passes over the rest of this line; whether there was any word in it.
    pub(super) fn skip_line(&mut self) -> bool {
        let rest = self.rest();
        let length = rest
            .iter()
            .position(|&b| is_line_end(b))
            .unwrap_or(rest.len());
        self.at += length;
        rest[..length].iter().any(|&b| !is_space(b))
    }

    fn word(&mut self) -> &'a [u8] {
        let rest = self.rest();
        let length = rest.iter().position(|&b| is_space(b)).unwrap_or(rest.len());
        self.at += length;
        &rest[..length]
    }

    fn pass(&mut self, space: u8) {
        let half_of_crlf = space == b'\r' && self.bytes.get(self.at + 1) == Some(&b'\n');
        if is_line_end(space) && !half_of_crlf {
            self.line += 1;
        }
        self.at += 1;
    }
}

/// A word as a number, which may be NaN or infinite.
pub(super) fn number(word: &[u8], place: Place) -> Result<f64, ParseError> {
    if let Ok(value) = fast_float2::parse(word) {
        return Ok(value);
    }
    let like_a_number = word
        .iter()
        .all(|b| b.is_ascii_digit() || b",.+-eE".contains(b));
    Err(if like_a_number && word.contains(&b',') {
        ParseError::DecimalComma { place }
    } else {
        ParseError::NotANumber { place }
    })
}

/// Bytes after a UTF-8 byte order mark, if there is one.
pub(super) fn without_byte_order_mark(bytes: &[u8]) -> &[u8] {
    bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes)
}

pub(super) fn is_space(byte: u8) -> bool {
    matches!(byte, b' ' | b'\t'..=b'\r')
}

pub(super) fn is_line_end(byte: u8) -> bool {
    matches!(byte, b'\n' | b'\r')
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn by_the_standard_library(word: &str) -> Option<f64> {
        word.parse().ok()
    }

    #[test]
    fn a_word_is_the_number_that_the_standard_library_reads() {
        let words = [
            "0",
            "-0",
            "+1",
            "1.",
            ".5",
            "-.5e-3",
            "1e400",
            "1e-400",
            "4.9e-324",
            "inf",
            "-INF",
            "Infinity",
            "nan",
            "NaN",
            "+nan",
            "",
            ".",
            "-",
            "+",
            "e5",
            "1e",
            "1e+",
            "1_0",
            "0x10",
            "1e5x",
            "--1",
            "+-1",
            " 1",
            "1 ",
            "1,5",
            "infin",
            "\u{661}",
            "9007199254740993",
            "1.00000000000000011102230246251565404236316680908203125",
            "123456789012345678901234567890e-20",
            "2.2250738585072011e-308",
        ];
        for word in words {
            let own = number(word.as_bytes(), Place::Line(1)).ok();
            let wanted = by_the_standard_library(word);
            assert_eq!(own.map(f64::to_bits), wanted.map(f64::to_bits), "{word}");
        }
    }

    proptest! {
        #[test]
        fn any_word_is_the_number_that_the_standard_library_reads(
            word in "[-+]?[0-9]{0,25}[.]?[0-9]{0,25}([eE][-+]?[0-9]{0,4})?",
            value in any::<u64>().prop_map(f64::from_bits),
        ) {
            for word in [word, format!("{value}"), format!("{value:e}"), format!("{:e}", value as f32)] {
                let own = number(word.as_bytes(), Place::Line(1)).ok();
                let wanted = by_the_standard_library(&word);
                prop_assert_eq!(own.map(f64::to_bits), wanted.map(f64::to_bits), "{}", word);
            }
        }
    }
}
