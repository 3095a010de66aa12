//! Scales below a picture: of length, and of colours.

use super::sheet::{WIDTH, round};
use maud::{Markup, html};
use messages::{Language, Value, text};

/// Bands that the colour scale is drawn of.
const BANDS: u32 = 48;

/// A bar of a round length.
pub(super) fn scale_bar(px_per_mm: f64, x: f64, y: f64) -> Markup {
    let mm = if px_per_mm > 12.0 { 5.0 } else { 10.0 };
    let to = round(x + mm * px_per_mm);
    html! {
        path d={ "M" (x) " " (y - 6.0) " v12 M" (x) " " (y) " H" (to) " M" (to) " " (y - 6.0) " v12" }
            stroke="#1a1a1a" stroke-width="3" fill="none" {}
        text x=(to + 8.0) y=(y + 7.0) font-size="20" { (mm) " mm" }
    }
}

/// The colours of a map between its ends, mm, with the levels that are marked on it.
pub(in crate::page) fn colour_scale(
    [from_mm, to_mm]: [f64; 2],
    what: &str,
    levels: &[(f64, String)],
    y: f64,
    language: Language,
) -> Markup {
    let (left, right, high) = (340.0, WIDTH - 60.0, 22.0);
    let x = |mm: f64| left + (mm - from_mm) / (to_mm - from_mm) * (right - left);
    let band = (right - left) / f64::from(BANDS);
    let levels = (levels.iter()).filter(|(mm, _)| (from_mm..=to_mm).contains(mm));
    html! {
        @for number in 0..BANDS {
            @let share = (f64::from(number) + 0.5) / f64::from(BANDS);
            @let [r, g, b] = colorous::VIRIDIS.eval_continuous(share).as_array();
            rect x=(round(left + f64::from(number) * band)) y=(y) width=(round(band + 0.6)) height=(high)
                fill={ "rgb(" (r) "," (g) "," (b) ")" } {}
        }
        rect x=(left) y=(y) width=(right - left) height=(high) fill="none" stroke="#1a1a1a" {}
        text x=(left) y=(y - 6.0) font-size="20" { (what) }
        (tick(x(from_mm), y + high, from_mm, ("", "end"), language))
        @for (mm, word) in levels { (tick(x(*mm), y + high, *mm, (word, "middle"), language)) }
        @let end = text!(language, "page-scale-end");
        (tick(x(to_mm), y + high, to_mm, (&end, "middle"), language))
    }
}

fn tick(x: f64, y: f64, mm: f64, (word, anchor): (&str, &str), language: Language) -> Markup {
    let figure = Value::figure(mm.to_string()).text(language);
    html! {
        path d={ "M" (round(x)) " " (y - 26.0) " V" (y + 5.0) } stroke="#1a1a1a" stroke-width="2" {}
        text x=(round(x)) y=(y + 24.0) font-size="20" text-anchor=(anchor) { tspan data-value=(mm) { (figure) } }
        @if !word.is_empty() {
            text x=(round(x)) y=(y + 43.0) font-size="17" text-anchor="middle" { (word) }
        }
    }
}
