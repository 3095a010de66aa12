//! A font in a PDF file: those letters of it that the page uses.

use super::font::Weight;
use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Filter, Finish, Name, Pdf, Rect, Ref, Str};
use std::collections::BTreeMap;
use std::io;
use subsetter::GlyphRemapper;

/// How much a stream is compressed, of 10.
pub(super) const COMPRESSION: u8 = 6;
const IDENTITY: SystemInfo<'_> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

/// The letters of one font that a page uses.
pub(super) struct UsedFont {
    weight: Weight,
    glyphs: GlyphRemapper,
    /// Each glyph of the smaller font, with a letter that it draws.
    letters: BTreeMap<u16, char>,
}

impl UsedFont {
    pub(super) fn new(weight: Weight) -> Self {
        Self {
            weight,
            glyphs: GlyphRemapper::new(),
            letters: BTreeMap::new(),
        }
    }

    /// A text as the numbers of its glyphs, two bytes each. What the font has
    /// no letter for becomes its sign for that.
    pub(super) fn encoded(&mut self, text: &str) -> Vec<u8> {
        let face = self.weight.face();
        let of = |letter| face.and_then(|face| face.glyph_index(letter));
        text.chars()
            .flat_map(|letter| {
                let glyph = self.glyphs.remap(of(letter).map_or(0, |glyph| glyph.0));
                self.letters.entry(glyph).or_insert(letter);
                glyph.to_be_bytes()
            })
            .collect()
    }

    /// Name of the font on the page.
    pub(super) fn name(weight: Weight) -> Name<'static> {
        match weight {
            Weight::Book => Name(b"Book"),
            Weight::Bold => Name(b"Bold"),
        }
    }

    fn full_name(&self) -> Name<'static> {
        match self.weight {
            Weight::Book => Name(b"SHEETA+DejaVuSansCondensed"),
            Weight::Bold => Name(b"SHEETB+DejaVuSansCondensed-Bold"),
        }
    }

    /// Writes the font under `ids`: font, descendant, descriptor, file, letters.
    pub(super) fn write(&self, pdf: &mut Pdf, ids: [Ref; 5]) -> Result<(), io::Error> {
        let [font, descendant, descriptor, file, letters] = ids;
        let name = self.full_name();
        let face = self.weight.face().ok_or_else(unreadable)?;
        let smaller =
            subsetter::subset(self.weight.file(), 0, &self.glyphs).map_err(|_| unreadable())?;
        // A PDF file counts in thousandths of the lettering's size.
        let scale = 1000.0 / f32::from(face.units_per_em());
        pdf.type0_font(font)
            .base_font(name)
            .encoding_predefined(Name(b"Identity-H"))
            .descendant_font(descendant)
            .to_unicode(letters);
        let advances = self.glyphs.remapped_gids().map(|glyph| {
            let advance = face.glyph_hor_advance(ttf_parser::GlyphId(glyph));
            f32::from(advance.unwrap_or_default()) * scale
        });
        let mut cid = pdf.cid_font(descendant);
        cid.subtype(CidFontType::Type2)
            .base_font(name)
            .system_info(IDENTITY)
            .font_descriptor(descriptor)
            .cid_to_gid_map_predefined(Name(b"Identity"));
        cid.widths().consecutive(0, advances);
        cid.finish();
        let bounds = face.global_bounding_box();
        let [left, low, right, high] =
            [bounds.x_min, bounds.y_min, bounds.x_max, bounds.y_max].map(|c| f32::from(c) * scale);
        pdf.font_descriptor(descriptor)
            .name(name)
            .flags(FontFlags::NON_SYMBOLIC)
            .bbox(Rect::new(left, low, right, high))
            .italic_angle(0.0)
            .ascent(f32::from(face.ascender()) * scale)
            .descent(f32::from(face.descender()) * scale)
            .cap_height(f32::from(face.capital_height().unwrap_or_default()) * scale)
            .stem_v(if self.weight == Weight::Bold {
                140.0
            } else {
                80.0
            })
            .font_file2(file);
        pdf.stream(file, &compress_to_vec_zlib(&smaller, COMPRESSION))
            .filter(Filter::FlateDecode);
        let mut map = UnicodeCmap::new(Name(b"Letters"), IDENTITY);
        for (&glyph, &letter) in &self.letters {
            map.pair(glyph, letter);
        }
        pdf.stream(letters, &map.finish());
        Ok(())
    }
}

fn unreadable() -> io::Error {
    io::Error::new(
        io::ErrorKind::InvalidData,
        "the sheet's font cannot be read",
    )
}
