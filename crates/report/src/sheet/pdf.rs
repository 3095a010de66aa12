//! A page as a PDF file, with its fonts and pictures in it.

use super::font::Weight;
use super::paper::{A4, At, Item, Paper, Pen, Words};
use super::pdf_font::{COMPRESSION, UsedFont};
use miniz_oxide::deflate::compress_to_vec_zlib;
use pdf_writer::{Content, Filter, Finish, Name, Pdf, Rect, Ref, Str, TextStr};
use std::io;

/// Numbers of the file's objects; those of pictures follow.
const CATALOG: Ref = Ref::new(1);
const PAGES: Ref = Ref::new(2);
const PAGE: Ref = Ref::new(3);
const CONTENT: Ref = Ref::new(4);
const ABOUT: Ref = Ref::new(5);
const FONTS: [[Ref; 5]; 2] = [fonts(6), fonts(11)];
const FIRST_PICTURE: i32 = 16;

const fn fonts(first: i32) -> [Ref; 5] {
    [
        Ref::new(first),
        Ref::new(first + 1),
        Ref::new(first + 2),
        Ref::new(first + 3),
        Ref::new(first + 4),
    ]
}

/// The bytes of the PDF file.
///
/// # Errors
/// When a picture or a font cannot be read.
pub(super) fn encoded(paper: &Paper<'_>) -> Result<Vec<u8>, io::Error> {
    let mut page = Page {
        content: Content::new(),
        fonts: Weight::ALL.map(UsedFont::new),
        pictures: Vec::new(),
    };
    for item in &paper.items {
        page.put(item);
    }
    let mut pdf = Pdf::new();
    pdf.catalog(CATALOG)
        .pages(PAGES)
        .lang(TextStr(paper.language.code()));
    pdf.document_info(ABOUT).title(TextStr(&paper.title));
    pdf.pages(PAGES).kids([PAGE]).count(1);
    let [width, height] = A4.map(|side| side as f32);
    let mut one = pdf.page(PAGE);
    one.parent(PAGES)
        .media_box(Rect::new(0.0, 0.0, width, height))
        .contents(CONTENT);
    let mut resources = one.resources();
    let mut fonts = resources.fonts();
    for (weight, ids) in Weight::ALL.into_iter().zip(FONTS) {
        fonts.pair(UsedFont::name(weight), ids[0]);
    }
    fonts.finish();
    let mut images = resources.x_objects();
    for number in 0..page.pictures.len() {
        images.pair(Name(picture_name(number).as_bytes()), picture_id(number));
    }
    images.finish();
    resources.finish();
    one.finish();
    for (number, png) in page.pictures.iter().enumerate() {
        write_picture(&mut pdf, picture_id(number), png)?;
    }
    for (font, ids) in page.fonts.iter().zip(FONTS) {
        font.write(&mut pdf, ids)?;
    }
    let content = page.content.finish();
    pdf.stream(CONTENT, &compress_to_vec_zlib(&content, COMPRESSION))
        .filter(Filter::FlateDecode);
    Ok(pdf.finish())
}

fn picture_name(number: usize) -> String {
    format!("P{number}")
}

fn picture_id(number: usize) -> Ref {
    Ref::new(FIRST_PICTURE + number as i32)
}

/// What is drawn, with what it needs.
struct Page<'a> {
    content: Content,
    fonts: [UsedFont; 2],
    /// PNG files.
    pictures: Vec<&'a [u8]>,
}

impl<'a> Page<'a> {
    fn put(&mut self, item: &Item<'a>) {
        match item {
            Item::Words(words) => self.letter(words),
            Item::Lines {
                points,
                closed,
                pen,
                fill,
            } => self.lines(points, *closed, *pen, *fill),
            Item::Ring {
                middle,
                radius,
                pen,
            } => self.ring(*middle, *radius, *pen),
            Item::Image { at, size, png, .. } => self.image(*at, *size, png),
        }
    }

    fn letter(&mut self, words: &Words) {
        let text = self.fonts[words.weight as usize].encoded(&words.text);
        let [x, y] = place(words.at);
        self.content
            .begin_text()
            .set_fill_gray(words.shade as f32)
            .set_font(UsedFont::name(words.weight), words.size as f32)
            .next_line(x, y)
            .show(Str(&text))
            .end_text();
    }

    fn lines(&mut self, points: &[At], closed: bool, pen: Option<Pen>, fill: Option<f64>) {
        let Some((first, rest)) = points.split_first() else {
            return;
        };
        if let Some(shade) = fill {
            self.content.set_fill_gray(shade as f32);
        }
        if let Some(pen) = pen {
            self.take(pen);
        }
        let [x, y] = place(*first);
        self.content.move_to(x, y);
        for point in rest {
            let [x, y] = place(*point);
            self.content.line_to(x, y);
        }
        if closed {
            self.content.close_path();
        }
        match (pen, fill) {
            (Some(_), Some(_)) => self.content.fill_nonzero_and_stroke(),
            (None, Some(_)) => self.content.fill_nonzero(),
            (Some(_), None) => self.content.stroke(),
            (None, None) => self.content.end_path(),
        };
    }

    /// A circle of four curves.
    fn ring(&mut self, middle: At, radius: f64, pen: Pen) {
        /// Where the handles of a quarter lie, as a share of the radius.
        const HANDLE: f64 = 0.552_285;
        self.take(pen);
        let on = |x: f64, y: f64| place([middle[0] + x * radius, middle[1] + y * radius]);
        let [x, y] = on(1.0, 0.0);
        self.content.move_to(x, y);
        for [[ax, ay], [bx, by]] in [
            [[1.0, 0.0], [0.0, 1.0]],
            [[0.0, 1.0], [-1.0, 0.0]],
            [[-1.0, 0.0], [0.0, -1.0]],
            [[0.0, -1.0], [1.0, 0.0]],
        ] {
            let [x1, y1] = on(ax + bx * HANDLE, ay + by * HANDLE);
            let [x2, y2] = on(bx + ax * HANDLE, by + ay * HANDLE);
            let [x3, y3] = on(bx, by);
            self.content.cubic_to(x1, y1, x2, y2, x3, y3);
        }
        self.content.close_and_stroke();
    }

    fn image(&mut self, [x, y]: At, [width, height]: [f64; 2], png: &'a [u8]) {
        let name = picture_name(self.pictures.len());
        self.pictures.push(png);
        let [left, low] = place([x, y + height]);
        self.content
            .save_state()
            .transform([width as f32, 0.0, 0.0, height as f32, left, low])
            .x_object(Name(name.as_bytes()))
            .restore_state();
    }

    fn take(&mut self, pen: Pen) {
        self.content
            .set_line_width(pen.width.max(0.0) as f32)
            .set_stroke_gray(pen.shade as f32)
            .set_dash_pattern(pen.dashes.iter().map(|&length| length as f32), 0.0);
    }
}

/// A place of the page, counted from the lower left corner.
fn place([x, y]: At) -> [f32; 2] {
    [x as f32, (A4[1] - y) as f32]
}

/// A PNG file with a table of colours, as [`crate::picture`] makes them.
fn write_picture(pdf: &mut Pdf, id: Ref, png: &[u8]) -> Result<(), io::Error> {
    let mut reader = png::Decoder::new(io::Cursor::new(png)).read_info()?;
    let mut pixels = vec![0; reader.output_buffer_size().unwrap_or_default()];
    let frame = reader.next_frame(&mut pixels)?;
    let colours: &[u8] = reader.info().palette.as_deref().unwrap_or(&[]);
    let most = (colours.len() / 3).saturating_sub(1);
    let packed = compress_to_vec_zlib(&pixels[..frame.buffer_size()], COMPRESSION);
    let mut image = pdf.image_xobject(id, &packed);
    image.filter(Filter::FlateDecode);
    image.width(frame.width as i32);
    image.height(frame.height as i32);
    image
        .color_space()
        .indexed(Name(b"DeviceRGB"), most as i32, colours);
    image.bits_per_component(8);
    Ok(())
}
