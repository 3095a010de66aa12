//! The few kinds of line, mark and lettering that drawings are made of.

use svg::node::element::{
    Circle, Definitions, Line, Path, Pattern, Polygon, Polyline, Rectangle, Text, Title,
};
use svg::{Document, Node};

/// A place on the sheet: to the right, down; px.
pub type SheetPoint = [f64; 2];

/// Nearly black.
pub const INK: &str = "#1a1a1a";
/// Grey of secondary things, dark enough to be read on white.
pub const GREY: &str = "#5c5c5c";
/// Light grey of bands and areas.
pub const PALE: &str = "#dcdcdc";
/// The dark end of cividis, for limits.
pub const LIMIT: &str = "#00417d";
/// Between the middle and the bright end of cividis, for the tray.
pub const TRAY: &str = "#a59c74";

const FONT: &str = "DejaVu Sans, Verdana, Arial, sans-serif";
/// Mean width of a letter of the font, as a share of its size.
const LETTER: f64 = 0.58;

/// How a line is drawn.
#[derive(Debug, Clone, Copy)]
pub struct Stroke {
    pub colour: &'static str,
    pub width: f64,
    /// Lengths of dash and gap, or nothing for a whole line.
    pub dashes: &'static str,
}

impl Stroke {
    pub const fn whole(colour: &'static str, width: f64) -> Self {
        Self {
            colour,
            width,
            dashes: "none",
        }
    }

    pub const fn dashed(colour: &'static str, width: f64, dashes: &'static str) -> Self {
        Self {
            colour,
            width,
            dashes,
        }
    }
}

/// Where lettering stands from its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// Width that a text takes, about, px.
pub fn text_width(text: &str, size: f64) -> f64 {
    text.chars().count() as f64 * size * LETTER
}

/// A sheet that is drawn on.
pub struct Sheet {
    document: Document,
}

impl Sheet {
    /// An empty white sheet; `title` is what a screen reader says.
    pub fn new(width: f64, height: f64, title: &str) -> Self {
        let hatch = Path::new()
            .set("d", "M-1,1 l2,-2 M0,6 l6,-6 M5,7 l2,-2")
            .set("stroke", "#8a8a8a")
            .set("stroke-width", 0.8);
        let pattern = Pattern::new()
            .set("id", "hatch")
            .set("patternUnits", "userSpaceOnUse")
            .set("width", 6)
            .set("height", 6)
            .add(hatch);
        let paper = Rectangle::new()
            .set("width", width)
            .set("height", height)
            .set("fill", "#ffffff");
        let document = Document::new()
            .set("viewBox", (0, 0, width, height))
            .set("width", width)
            .set("height", height)
            .set("font-family", FONT)
            .add(Title::new(title))
            .add(Definitions::new().add(pattern))
            .add(paper);
        Self { document }
    }

    /// The bytes of the SVG file.
    pub fn encoded(&self) -> Vec<u8> {
        format!("{}\n", self.document).into_bytes()
    }

    /// As a part of a page, on which a name may stand but once.
    pub fn in_page(&self) -> String {
        let svg = String::from_utf8_lossy(&self.encoded()).into_owned();
        svg.replace(" id=\"hatch\"", "")
    }

    pub fn line(&mut self, from: SheetPoint, to: SheetPoint, stroke: Stroke) {
        let line = Line::new()
            .set("x1", round(from[0]))
            .set("y1", round(from[1]))
            .set("x2", round(to[0]))
            .set("y2", round(to[1]));
        self.put(stroked(line, stroke));
    }

    pub fn polyline(&mut self, points: &[SheetPoint], stroke: Stroke) {
        let line = Polyline::new()
            .set("points", listed(points))
            .set("fill", "none")
            .set("stroke-linejoin", "round");
        self.put(stroked(line, stroke));
    }

    pub fn area(&mut self, points: &[SheetPoint], fill: &str) {
        let area = Polygon::new()
            .set("points", listed(points))
            .set("fill", fill);
        self.put(area);
    }

    pub fn hatched(&mut self, from: SheetPoint, to: SheetPoint) {
        let area = Rectangle::new()
            .set("x", round(from[0]))
            .set("y", round(from[1]))
            .set("width", round(to[0] - from[0]))
            .set("height", round(to[1] - from[1]))
            .set("fill", "url(#hatch)");
        self.put(area);
    }

    pub fn circle(&mut self, middle: SheetPoint, radius: f64, stroke: Stroke) {
        let circle = Circle::new()
            .set("cx", round(middle[0]))
            .set("cy", round(middle[1]))
            .set("r", round(radius))
            .set("fill", "none");
        self.put(stroked(circle, stroke));
    }

    pub fn dot(&mut self, middle: SheetPoint, radius: f64, fill: &str) {
        let dot = Circle::new()
            .set("cx", round(middle[0]))
            .set("cy", round(middle[1]))
            .set("r", round(radius))
            .set("fill", fill);
        self.put(dot);
    }

    /// A dot at the place of something with a name.
    pub fn place(&mut self, middle: SheetPoint, radius: f64, of: &str) {
        let dot = Circle::new()
            .set("cx", round(middle[0]))
            .set("cy", round(middle[1]))
            .set("r", round(radius))
            .set("fill", INK)
            .set("class", "place")
            .set("data-of", of);
        self.put(dot);
    }

    pub fn text(&mut self, at: SheetPoint, anchor: Anchor, size: f64, text: &str) {
        self.put(lettering(at, anchor, size, text));
    }

    pub fn bold(&mut self, at: SheetPoint, anchor: Anchor, size: f64, text: &str) {
        self.put(lettering(at, anchor, size, text).set("font-weight", "bold"));
    }

    /// Lettering with white around it, to be read over lines.
    pub fn label(&mut self, at: SheetPoint, anchor: Anchor, size: f64, text: &str) {
        let halo = lettering(at, anchor, size, text)
            .set("stroke", "#ffffff")
            .set("stroke-width", 3.5)
            .set("stroke-linejoin", "round");
        self.put(halo);
        self.put(lettering(at, anchor, size, text));
    }

    /// Lettering that runs upward from its place, with white around it.
    pub fn upright(&mut self, at: SheetPoint, size: f64, text: &str) {
        let turn = format!("rotate(-90 {} {})", round(at[0]), round(at[1]));
        let letters = lettering(at, Anchor::Start, size, text).set("transform", turn);
        let halo = letters
            .clone()
            .set("stroke", "#ffffff")
            .set("stroke-width", 3.5)
            .set("stroke-linejoin", "round");
        self.put(halo);
        self.put(letters);
    }

    /// A dimension line with an arrowhead at each end.
    pub fn dimension(&mut self, from: SheetPoint, to: SheetPoint) {
        const HEAD: f64 = 6.0;
        const STROKE: Stroke = Stroke::whole(INK, 1.0);
        self.line(from, to, STROKE);
        let run = [to[0] - from[0], to[1] - from[1]];
        let length = run[0].hypot(run[1]).max(1e-9);
        let unit = [run[0] / length, run[1] / length];
        for (tip, sense) in [(from, 1.0), (to, -1.0)] {
            let foot = [
                tip[0] + unit[0] * HEAD * sense,
                tip[1] + unit[1] * HEAD * sense,
            ];
            let aside = [-unit[1] * HEAD * 0.35, unit[0] * HEAD * 0.35];
            self.area(
                &[
                    tip,
                    [foot[0] + aside[0], foot[1] + aside[1]],
                    [foot[0] - aside[0], foot[1] - aside[1]],
                ],
                INK,
            );
        }
    }

    fn put(&mut self, node: impl Node) {
        self.document.append(node);
    }
}

fn stroked<N: Node>(mut node: N, stroke: Stroke) -> N {
    node.assign("stroke", stroke.colour);
    node.assign("stroke-width", stroke.width);
    node.assign("stroke-dasharray", stroke.dashes);
    node
}

fn lettering(at: SheetPoint, anchor: Anchor, size: f64, text: &str) -> Text {
    Text::new(text)
        .set("x", round(at[0]))
        .set("y", round(at[1]))
        .set("font-size", size)
        .set("fill", INK)
        .set(
            "text-anchor",
            match anchor {
                Anchor::Start => "start",
                Anchor::Middle => "middle",
                Anchor::End => "end",
            },
        )
}

fn listed(points: &[SheetPoint]) -> String {
    let each: Vec<String> = points
        .iter()
        .map(|p| format!("{},{}", round(p[0]), round(p[1])))
        .collect();
    each.join(" ")
}

/// Hundredths of a pixel are seen by nobody.
fn round(px: f64) -> f64 {
    (px * 100.0).round() / 100.0 + 0.0
}
