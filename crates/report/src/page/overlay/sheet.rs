//! The sheet that a picture lies on, and what stands round the picture.

use crate::drawing::SIDE_LETTER;
use crate::picture::Picture;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, html};
use messages::{Language, text};

/// A point of a sheet: to the right and down.
pub(crate) type SheetPoint = [f64; 2];

/// Width of a sheet; lettering is sized so that it is read on a phone too.
pub(super) const WIDTH: f64 = 800.0;
/// Room for numbers on either side of a picture.
pub(super) const ASIDE: f64 = 84.0;
pub(super) const TOP: f64 = 40.0;
pub(super) const BOTTOM: f64 = 100.0;
pub(super) const LETTERING: f64 = 24.0;
pub(super) fn embedded(picture: &Picture, x: f64, y: f64, px: f64) -> Markup {
    let [width, height] = picture.camera.size.map(|size| size as f64 * px);
    html! {
        image x=(x) y=(y) width=(round(width)) height=(round(height))
            href={ "data:image/png;base64," (STANDARD.encode(&picture.png)) } {}
    }
}

/// Which side is the patient's right.
pub(super) fn sides(picture: &Picture, width: f64, y: f64, language: Language) -> Markup {
    let [left, right] = picture.sides().map(|side| match side {
        "R" => text!(language, "side-letter", side = "right"),
        _ => text!(language, "side-letter", side = "left"),
    });
    let up = match picture.up {
        "front up" => text!(language, "view-front"),
        _ => up(picture, language),
    };
    html! {
        text x="8" y=(y) font-size=(SIDE_LETTER) font-weight="bold" { (left) }
        text x=(width - 8.0) y=(y) font-size=(SIDE_LETTER) font-weight="bold" text-anchor="end" { (right) }
        text x=(width / 2.0) y=(y) font-size=(LETTERING) text-anchor="middle" { (up) }
    }
}

/// What of the impression is up on a picture.
pub(super) fn up(picture: &Picture, language: Language) -> String {
    match picture.up {
        "front up" => text!(language, "view-front-up"),
        _ => text!(language, "view-tissue-side-up"),
    }
}

/// Tenths of a pixel are seen by nobody.
pub(super) fn round(px: f64) -> f64 {
    (px * 10.0).round() / 10.0 + 0.0
}
