//! The lettering of the sheet. Its fonts are part of the program, so that a
//! sheet looks the same on every machine.

use std::sync::LazyLock;
use ttf_parser::Face;

/// How heavy letters are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Weight {
    /// For text.
    Book,
    /// For headings and numbers.
    Bold,
}

impl Weight {
    /// Both, in the order of their numbers.
    pub(super) const ALL: [Self; 2] = [Self::Book, Self::Bold];

    /// The font file (TrueType).
    pub(super) fn file(self) -> &'static [u8] {
        match self {
            Self::Book => include_bytes!("fonts/DejaVuSansCondensed.ttf"),
            Self::Bold => include_bytes!("fonts/DejaVuSansCondensed-Bold.ttf"),
        }
    }

    /// The font, read.
    pub(super) fn face(self) -> Option<&'static Face<'static>> {
        static FACES: LazyLock<[Option<Face<'static>>; 2]> =
            LazyLock::new(|| Weight::ALL.map(|weight| Face::parse(weight.file(), 0).ok()));
        FACES[self as usize].as_ref()
    }

    /// Width of a letter, as a share of the size of the lettering.
    fn advance(self, letter: char) -> f64 {
        /// Width where the font has no such letter.
        const UNKNOWN: f64 = 0.6;
        let known = self.face().and_then(|face| {
            let advance = face.glyph_hor_advance(face.glyph_index(letter)?)?;
            Some(f64::from(advance) / f64::from(face.units_per_em()))
        });
        known.unwrap_or(UNKNOWN)
    }

    /// Width of a text in lettering of this size, in the unit of `size`.
    pub(super) fn width(self, text: &str, size: f64) -> f64 {
        text.chars().map(|letter| self.advance(letter)).sum::<f64>() * size
    }
}

/// A text in lines that are no wider than `most`. A word that is wider than
/// that is broken.
pub(super) fn wrapped(text: &str, weight: Weight, size: f64, most: f64) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        for piece in pieces(word, weight, size, most) {
            let Some(line) = lines.last_mut() else {
                continue;
            };
            if line.is_empty() {
                *line = piece;
            } else if weight.width(&format!("{line} {piece}"), size) <= most {
                line.push(' ');
                line.push_str(&piece);
            } else {
                lines.push(piece);
            }
        }
    }
    lines
}

/// A word, or its pieces where it is wider than a line.
fn pieces(word: &str, weight: Weight, size: f64, most: f64) -> Vec<String> {
    let mut pieces = vec![String::new()];
    let mut width = 0.0;
    for letter in word.chars() {
        let advance = weight.advance(letter) * size;
        if width + advance > most && width > 0.0 {
            pieces.push(String::new());
            width = 0.0;
        }
        width += advance;
        if let Some(piece) = pieces.last_mut() {
            piece.push(letter);
        }
    }
    pieces
}

/// A text cut to a width, with an ellipsis where something was left out.
pub(super) fn clipped(text: &str, weight: Weight, size: f64, most: f64) -> String {
    if weight.width(text, size) <= most {
        return text.to_owned();
    }
    let mut kept: String = text.to_owned();
    while kept.pop().is_some() {
        let with_mark = format!("{}…", kept.trim_end());
        if weight.width(&with_mark, size) <= most {
            return with_mark;
        }
    }
    String::new()
}

#[cfg(test)]
mod tests {
    use super::*;
    use messages::Language;

    #[test]
    fn both_fonts_hold_every_letter_that_the_sheet_needs() {
        let letters = "AZaz09 ±×²³µ°–—…ÄÖÜäöüßéèçñøåłřΩλЖя☐≤≥";
        for weight in Weight::ALL {
            let face = weight.face().unwrap();
            for letter in letters.chars() {
                assert!(face.glyph_index(letter).is_some(), "{letter}");
            }
        }
    }

    #[test]
    fn both_fonts_hold_every_letter_of_the_catalogue() {
        for language in Language::ALL {
            // Pages and drawings are read in a browser, which has letters of its own.
            let is_of_a_page = |subject: &str| {
                ["page", "drawing", "turning"]
                    .iter()
                    .any(|of| subject.starts_with(of))
            };
            let texts: String = (messages::texts_of(language).iter())
                .filter(|(subject, _)| !is_of_a_page(subject))
                .map(|(_, text)| *text)
                .collect();
            assert!(texts.len() > 10_000);
            for weight in Weight::ALL {
                let face = weight.face().unwrap();
                for letter in texts.chars().filter(|letter| !letter.is_control()) {
                    assert!(face.glyph_index(letter).is_some(), "{language}: {letter}");
                }
            }
        }
    }

    #[test]
    fn lines_are_no_wider_than_they_may_be_and_lose_nothing() {
        let text = "Relieve the tray here, then takeawashoveritallinoneword and look.";
        let lines = wrapped(text, Weight::Book, 10.0, 80.0);
        assert!(lines.len() > 3);
        for line in &lines {
            assert!(Weight::Book.width(line, 10.0) <= 80.0, "{line}");
        }
        let bare = |text: &str| text.replace(' ', "");
        assert_eq!(bare(&lines.concat()), bare(text));
        assert_eq!(wrapped("", Weight::Bold, 10.0, 80.0), [""]);
    }

    #[test]
    fn what_is_cut_short_says_so() {
        assert_eq!(clipped("short", Weight::Book, 10.0, 80.0), "short");
        let cut = clipped("a text that is much too long", Weight::Book, 10.0, 80.0);
        assert!(cut.ends_with('…') && Weight::Book.width(&cut, 10.0) <= 80.0);
    }
}
