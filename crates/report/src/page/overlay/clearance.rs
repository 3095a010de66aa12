//! A picture of a tray in the mouth: clearance, border, the tray's edge and where it touches.

use super::labels::marked;
use super::marks::{Kind, Mark, ring};
use super::scales::{colour_scale, scale_bar};
use super::sheet::{ASIDE, BOTTOM, SheetPoint, TOP, WIDTH, embedded, round, sides};
use super::views::seen;
use crate::picture::{CLEARANCE_ENDS_MM, Picture, View};
use crate::result::Severity;
use maud::{Markup, html};
use measure::tray::{Touch, WANTED_CLEARANCE_MM};
use messages::{Language, Value, text};
use nalgebra::Point3;

/// What is drawn over the picture of a tray in the mouth; lines and places in scan
/// coordinates, mm.
pub(in crate::page) struct InMouth<'a> {
    pub(in crate::page) tray: &'a str,
    pub(in crate::page) border: &'a [Point3<f64>],
    pub(in crate::page) edge: &'a [Point3<f64>],
    pub(in crate::page) touches: &'a [Touch],
}

/// The picture with its lines, marks and scale.
pub(in crate::page) fn in_mouth(of: &InMouth<'_>, picture: &Picture, language: Language) -> Markup {
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let sheet = |p: &Point3<f64>| -> SheetPoint {
        let [x, y, _] = picture.camera.place(p);
        [ASIDE + x * px, TOP + y * px]
    };
    let numbers: Vec<String> = (1..=of.touches.len()).map(|n| n.to_string()).collect();
    let marks: Vec<Mark<'_>> = (of.touches.iter().zip(&numbers))
        .map(|(touch, number)| {
            let radius_mm = (touch.area_mm2 / std::f64::consts::PI).sqrt();
            Mark {
                id: number,
                kind: Kind::Finding(Severity::Fail),
                at: sheet(&touch.at),
                radius: ring(radius_mm, picture, px),
                lines: Vec::new(),
            }
        })
        .collect();
    let view = seen(picture.view.unwrap_or(View::Tissue), language);
    let alt = text!(
        language,
        "fit-page-picture",
        tray = of.tray,
        view = view.as_str(),
        touches = of.touches.len()
    );
    let wanted = WANTED_CLEARANCE_MM;
    let [from, to] = [*wanted.start(), *wanted.end()];
    let what = text!(
        language,
        "fit-page-scale",
        from = Value::figure(from.to_string()),
        to = Value::figure(to.to_string())
    );
    let levels = [from, to].map(|mm| (mm, String::new()));
    html! {
        svg viewBox={ "0 0 " (WIDTH) " " (round(TOP + high + BOTTOM)) } role="img" aria-label=(alt) {
            title { (alt) }
            (embedded(picture, ASIDE, TOP, px))
            (closed(of.border, &sheet, "none"))
            (closed(of.edge, &sheet, "9 6"))
            (sides(picture, WIDTH, TOP - 12.0, language))
            (marked(&marks, high))
            (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
            (colour_scale(CLEARANCE_ENDS_MM, &what, &levels, TOP + high + 30.0, language))
        }
    }
}

/// A closed line that is seen on light and dark.
fn closed(
    line: &[Point3<f64>],
    sheet: &dyn Fn(&Point3<f64>) -> SheetPoint,
    dashes: &str,
) -> Markup {
    let points = line.iter().map(|p| {
        let [x, y] = sheet(p);
        format!("{},{}", round(x), round(y))
    });
    let points = points.collect::<Vec<_>>().join(" ");
    html! {
        @for (colour, width, dashes) in [("#ffffff", 5.0, "none"), ("#1a1a1a", 2.0, dashes)] {
            polygon points=(points) fill="none" stroke=(colour) stroke-width=(width)
                stroke-dasharray=(dashes) stroke-linejoin="round" {}
        }
    }
}
