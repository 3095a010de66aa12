//! An A4 page as plain data: what lies where on it. Lengths are in points
//! (1/72 inch), to the right and down from the upper left corner. There are no
//! colours but those of pictures; everything else is a shade of grey.

use super::font::Weight;
use messages::Language;

/// A place on the page, pt.
pub(super) type At = [f64; 2];

/// Width and height of A4, pt.
pub(super) const A4: [f64; 2] = [595.28, 841.89];

/// Left edge of what stands on the page, pt.
pub(super) const LEFT: f64 = 36.0;
/// Right edge, pt.
pub(super) const RIGHT: f64 = A4[0] - 36.0;
/// Width between the two, pt.
pub(super) const WIDE: f64 = RIGHT - LEFT;
/// Upper edge, pt.
pub(super) const TOP: f64 = 34.0;
/// Base line of the last line, pt.
pub(super) const BOTTOM: f64 = A4[1] - 30.0;
/// Size of small lettering, pt.
pub(super) const SMALL: f64 = 8.5;

/// Nearly black.
pub(super) const INK: f64 = 0.1;
/// Paper.
pub(super) const WHITE: f64 = 1.0;
/// Grey of secondary lines.
pub(super) const GREY: f64 = 0.45;

/// A line between parts of the page.
pub(super) const THIN: Pen = Pen::whole(0.6, GREY);

/// How a line is drawn.
#[derive(Debug, Clone, Copy)]
pub(super) struct Pen {
    pub(super) width: f64,
    /// 0 is black, 1 is white.
    pub(super) shade: f64,
    /// Lengths of dash and gap, pt; none for a whole line.
    pub(super) dashes: &'static [f64],
}

impl Pen {
    pub(super) const fn whole(width: f64, shade: f64) -> Self {
        Self {
            width,
            shade,
            dashes: &[],
        }
    }
}

/// Lettering.
#[derive(Debug, Clone)]
pub(super) struct Words {
    /// Left end of the base line.
    pub(super) at: At,
    pub(super) size: f64,
    pub(super) weight: Weight,
    pub(super) shade: f64,
    pub(super) text: String,
    /// Whether it says when something was done, which differs from run to run.
    pub(super) is_time: bool,
}

/// Something on a page; what comes later lies over what came before.
#[derive(Debug, Clone)]
pub(super) enum Item<'a> {
    Words(Words),
    /// Straight lines from point to point.
    Lines {
        points: Vec<At>,
        closed: bool,
        pen: Option<Pen>,
        /// Shade inside.
        fill: Option<f64>,
    },
    Ring {
        middle: At,
        radius: f64,
        pen: Pen,
    },
    /// A PNG file with a table of colours.
    Image {
        at: At,
        size: [f64; 2],
        png: &'a [u8],
        /// What a screen reader says.
        alt: String,
    },
}

/// A page.
#[derive(Debug, Clone)]
pub(crate) struct Paper<'a> {
    /// The language of what stands on it.
    pub(super) language: Language,
    /// Its title.
    pub(super) title: String,
    pub(super) items: Vec<Item<'a>>,
}

impl<'a> Paper<'a> {
    pub(super) fn new(title: String, language: Language) -> Self {
        Self {
            language,
            title,
            items: Vec::new(),
        }
    }

    pub(super) fn words(&mut self, at: At, weight: Weight, size: f64, text: impl Into<String>) {
        self.items.push(Item::Words(Words {
            at,
            size,
            weight,
            shade: INK,
            text: text.into(),
            is_time: false,
        }));
    }

    pub(super) fn time(&mut self, at: At, size: f64, text: String) {
        self.items.push(Item::Words(Words {
            at,
            size,
            weight: Weight::Book,
            shade: INK,
            text,
            is_time: true,
        }));
    }

    pub(super) fn line(&mut self, from: At, to: At, pen: Pen) {
        self.lines(vec![from, to], pen);
    }

    pub(super) fn lines(&mut self, points: Vec<At>, pen: Pen) {
        self.items.push(Item::Lines {
            points,
            closed: false,
            pen: Some(pen),
            fill: None,
        });
    }

    /// A rectangle by its upper left corner, width and height.
    pub(super) fn area(
        &mut self,
        [x, y]: At,
        [w, h]: [f64; 2],
        pen: Option<Pen>,
        fill: Option<f64>,
    ) {
        self.items.push(Item::Lines {
            points: vec![[x, y], [x + w, y], [x + w, y + h], [x, y + h]],
            closed: true,
            pen,
            fill,
        });
    }

    pub(super) fn ring(&mut self, middle: At, radius: f64, pen: Pen) {
        self.items.push(Item::Ring {
            middle,
            radius,
            pen,
        });
    }

    pub(super) fn image(&mut self, at: At, size: [f64; 2], png: &'a [u8], alt: String) {
        self.items.push(Item::Image { at, size, png, alt });
    }
}
