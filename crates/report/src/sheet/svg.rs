//! A page as SVG.

use super::font::Weight;
use super::paper::{A4, At, Item, Paper, Pen, Words};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, html};

/// The page, with its title for screen readers.
pub(super) fn drawn(paper: &Paper<'_>) -> Markup {
    let [width, height] = A4;
    html! {
        svg.paper viewBox={ "0 0 " (width) " " (height) } xmlns="http://www.w3.org/2000/svg" {
            title { (paper.title) }
            rect width=(width) height=(height) fill="#ffffff" {}
            @for item in &paper.items { (one(item)) }
        }
    }
}

fn one(item: &Item<'_>) -> Markup {
    match item {
        Item::Words(words) => lettering(words),
        Item::Lines {
            points,
            closed,
            pen,
            fill,
        } => {
            let fill = fill.map_or_else(|| "none".to_owned(), grey);
            html! {
                path d=(path(points, *closed)) fill=(fill) stroke=[pen.map(|pen| grey(pen.shade))]
                    stroke-width=[pen.map(|pen| pen.width)] stroke-dasharray=[pen.as_ref().and_then(dashes)] {}
            }
        }
        Item::Ring {
            middle,
            radius,
            pen,
        } => html! {
            circle cx=(round(middle[0])) cy=(round(middle[1])) r=(round(*radius)) fill="none"
                stroke=(grey(pen.shade)) stroke-width=(pen.width) stroke-dasharray=[dashes(pen)] {}
        },
        Item::Image { at, size, png, alt } => html! {
            image x=(round(at[0])) y=(round(at[1])) width=(round(size[0])) height=(round(size[1]))
                role="img" aria-label=(alt) href={ "data:image/png;base64," (STANDARD.encode(png)) } {}
        },
    }
}

fn lettering(words: &Words) -> Markup {
    let weight = (words.weight == Weight::Bold).then_some("bold");
    let class = words.is_time.then_some("time");
    html! {
        text class=[class] x=(round(words.at[0])) y=(round(words.at[1])) font-size=(words.size)
            font-weight=[weight] fill=(grey(words.shade)) { (words.text) }
    }
}

fn path(points: &[At], closed: bool) -> String {
    let steps: Vec<String> = points
        .iter()
        .map(|point| format!("{} {}", round(point[0]), round(point[1])))
        .collect();
    format!("M{}{}", steps.join(" L"), if closed { " Z" } else { "" })
}

fn dashes(pen: &Pen) -> Option<String> {
    let lengths: Vec<String> = pen.dashes.iter().map(f64::to_string).collect();
    (!lengths.is_empty()).then(|| lengths.join(" "))
}

fn grey(shade: f64) -> String {
    let level = (shade.clamp(0.0, 1.0) * 255.0).round() as u8;
    format!("#{level:02x}{level:02x}{level:02x}")
}

/// Hundredths of a point are seen by nobody.
fn round(pt: f64) -> f64 {
    (pt * 100.0).round() / 100.0 + 0.0
}
