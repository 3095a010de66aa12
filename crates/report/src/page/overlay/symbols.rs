//! The shapes that mark a place: rings, lines and saltires.

use super::marks::{Kind, Mark};
use super::sheet::{SheetPoint, round};
use crate::result::Severity;
use maud::{Markup, html};

/// How findings of a severity are marked, for the legend.
pub fn sample(severity: Severity) -> Markup {
    html! {
        svg.sample viewBox="0 0 30 30" aria-hidden="true" { (ring([15.0, 15.0], 11.0, stroke(severity))) }
    }
}

/// Ring and stretch of a finding, or the saltire of a landmark.
pub(super) fn outlined(mark: &Mark<'_>) -> Markup {
    let Kind::Finding(severity) = mark.kind else {
        return saltire(mark.at, mark.radius);
    };
    let (width, dashes) = stroke(severity);
    html! {
        @for line in &mark.lines {
            @let points = line.iter().map(|p| format!("{},{}", round(p[0]), round(p[1]))).collect::<Vec<_>>().join(" ");
            polyline points=(points) fill="none" stroke="#ffffff" stroke-width=(width + 5.0) stroke-linecap="round" {}
            polyline points=(points) fill="none" stroke="#1a1a1a" stroke-width=(width + 1.0) stroke-dasharray=(dashes) {}
        }
        (ring(mark.at, mark.radius, (width, dashes)))
    }
}

fn ring(at: SheetPoint, radius: f64, (width, dashes): (f64, &str)) -> Markup {
    html! {
        @for (colour, width, dashes) in [("#ffffff", width + 4.0, "none"), ("#1a1a1a", width, dashes)] {
            circle cx=(round(at[0])) cy=(round(at[1])) r=(round(radius)) fill="none"
                stroke=(colour) stroke-width=(width) stroke-dasharray=(dashes) {}
        }
    }
}

fn saltire(at: SheetPoint, arm: f64) -> Markup {
    let [left, right] = [-arm, arm].map(|d| round(at[0] + d));
    let [top, bottom] = [-arm, arm].map(|d| round(at[1] + d));
    let path = format!("M{left} {top} L{right} {bottom} M{left} {bottom} L{right} {top}");
    html! {
        @for (colour, width) in [("#ffffff", 7.0), ("#1a1a1a", 3.0)] {
            path d=(path) stroke=(colour) stroke-width=(width) {}
        }
    }
}

/// Width and dashes of a mark's line.
fn stroke(severity: Severity) -> (f64, &'static str) {
    match severity {
        Severity::Fail => (4.5, "none"),
        Severity::Borderline => (3.5, "9 4"),
        Severity::Note => (2.0, "2 3"),
    }
}
