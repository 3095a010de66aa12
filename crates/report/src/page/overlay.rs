//! Marks, scales and words over a picture, as SVG, so that they print sharp.

use crate::picture::{Picture, View};
use crate::result::{CaseResult, CoverMap, Finding, ImpressionResult, Severity, Spot, Station};
use crate::text::words::{finding_place, impression_name};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, html};
use mesh::Unit;
use nalgebra::Point3;

/// Width of a sheet; lettering is sized so that it is read on a phone too.
const WIDTH: f64 = 800.0;
/// Room for numbers on either side of a picture.
const ASIDE: f64 = 84.0;
const TOP: f64 = 40.0;
const BOTTOM: f64 = 100.0;
const LETTERING: f64 = 24.0;
/// Findings that are marked on one picture: more could not be told apart.
const MOST_MARKS: usize = 40;
/// Bands that the colour scale is drawn of.
const BANDS: u32 = 48;

type Place = [f64; 2];

/// Something on a picture.
struct Mark<'a> {
    id: &'a str,
    kind: Kind,
    at: Place,
    radius: f64,
    /// The stretch of border that it is about, as far as it shows.
    lines: Vec<Vec<Place>>,
}

/// What a mark stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// A ring, and a line along a stretch.
    Finding(Severity),
    /// A saltire.
    Landmark,
}

/// What is marked on a whole view.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Marked {
    /// The findings, in a picture of their own.
    Findings,
    /// The findings once more, in the picture that stands elsewhere on the page.
    FindingsAgain,
    /// The landmarks, in the picture that stands elsewhere on the page.
    Landmarks,
}

/// Of several views the first that shows the most findings that are no notes.
pub fn telling<'a>(
    result: &CaseResult,
    number: usize,
    impression: &ImpressionResult,
    pictures: &'a [Picture],
) -> Option<&'a Picture> {
    let pressing = |picture: &&Picture| {
        let (_, marks) = finding_marks(result, number, impression, picture, &|p| p, 1.0);
        let is_note = |mark: &&Mark<'_>| mark.kind == Kind::Finding(Severity::Note);
        marks.iter().filter(|mark| !is_note(mark)).count()
    };
    // Of equals the last is taken, so the first must come last.
    pictures.iter().rev().max_by_key(pressing)
}

/// A whole view with everything that is to be seen on it.
pub fn whole(
    result: &CaseResult,
    number: usize,
    impression: &ImpressionResult,
    picture: &Picture,
    what: Marked,
) -> Markup {
    let view = picture.view.unwrap_or(View::Tissue);
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let height = TOP + high + BOTTOM;
    let sheet = |p: Place| [ASIDE + p[0] * px, TOP + p[1] * px];
    let (wanted, marks) = match what {
        Marked::Landmarks => landmark_marks(impression, picture, &sheet),
        _ => finding_marks(result, number, impression, picture, &sheet, px),
    };
    let hidden: Vec<&str> = wanted
        .into_iter()
        .filter(|id| marks.iter().all(|mark| mark.id != *id))
        .collect();
    let shown: Vec<&str> = marks.iter().map(|mark| mark.id).collect();
    let alt = format!(
        "{}, {}. {} marked: {}.",
        impression_name(impression),
        view.in_words(),
        if what == Marked::Landmarks {
            "Landmarks"
        } else {
            "Findings"
        },
        listed(&shown)
    );
    let map = impression
        .cover
        .as_ref()
        .and_then(|cover| cover.map.as_ref());
    let id = format!("picture-{}-{}", number + 1, view.code());
    html! {
        figure.view {
            svg viewBox={ "0 0 " (WIDTH) " " (round(height)) } role="img" aria-label=(alt) {
                title { (alt) }
                @if what == Marked::Findings {
                    g id=(id) { (embedded(picture, ASIDE, TOP, px)) }
                } @else {
                    use href={ "#" (id) } {}
                }
                (sides(picture, WIDTH, TOP - 12.0))
                (marked(&marks, high))
                (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
                @if let Some(map) = map { (colour_scale(map, "cover, mm", &cover_levels(result), TOP + high + 30.0)) }
            }
            figcaption {
                @if what == Marked::FindingsAgain {
                    a href={ "#impression-" (number + 1) } { (super::capital(&impression_name(impression))) } ", "
                } @else {
                    strong { (view.name()) } ", "
                }
                (view.in_words()) "."
                @if !hidden.is_empty() { " Not to be seen from here: " (hidden.join(", ")) "." }
            }
        }
    }
}

/// The tissue side of a wash, coloured by its thickness over the first pass.
pub fn wash(impression: &ImpressionResult, map: &CoverMap, picture: &Picture) -> Markup {
    let px = (WIDTH - 2.0 * ASIDE) / picture.camera.size[0] as f64;
    let high = picture.camera.size[1] as f64 * px;
    let alt = format!(
        "{}, tissue side, coloured by the thickness of the wash",
        impression_name(impression)
    );
    html! {
        figure.view {
            svg viewBox={ "0 0 " (WIDTH) " " (round(TOP + high + BOTTOM)) } role="img" aria-label=(alt) {
                title { (alt) }
                (embedded(picture, ASIDE, TOP, px))
                (sides(picture, WIDTH, TOP - 12.0))
                (scale_bar(picture.camera.px_per_mm * px, ASIDE, TOP + high + 44.0))
                (colour_scale(map, "thickness, mm", &[], TOP + high + 30.0))
            }
            figcaption {
                "Dark where the wash is thin or none, bright where it is thick; grey where its thickness is not known."
            }
        }
    }
}

/// What of cover is limited, for its scale.
fn cover_levels(result: &CaseResult) -> Vec<(f64, &'static str)> {
    [("show_through_mm", "shows"), ("thin_cover_mm", "thin")]
        .into_iter()
        .filter_map(|(key, word)| Some((result.protocol.limits.get(key)?.value, word)))
        .collect()
}

/// Findings with a place on an impression, and marks of those that show.
fn finding_marks<'a>(
    result: &'a CaseResult,
    number: usize,
    impression: &ImpressionResult,
    picture: &Picture,
    sheet: &dyn Fn(Place) -> Place,
    px: f64,
) -> (Vec<&'a str>, Vec<Mark<'a>>) {
    let mine: Vec<&Finding> = (result.findings.iter())
        .filter(|f| f.impression == Some(number as u64) && f.at.is_some())
        .collect();
    let marks = (mine.iter())
        .filter_map(|finding| mark(impression, finding, picture, sheet, px))
        .take(MOST_MARKS)
        .collect();
    (mine.iter().map(|f| f.id.as_str()).collect(), marks)
}

/// Landmarks whose place is known, and marks of those that show.
fn landmark_marks<'a>(
    impression: &'a ImpressionResult,
    picture: &Picture,
    sheet: &dyn Fn(Place) -> Place,
) -> (Vec<&'a str>, Vec<Mark<'a>>) {
    let known = || impression.landmarks.iter().filter(|l| l.point.is_some());
    let marks = known()
        .filter_map(|landmark| {
            let at = point_mm(impression, landmark.point.as_ref()?)?;
            Some(Mark {
                id: &landmark.id,
                kind: Kind::Landmark,
                at: picture.shown(&at).map(sheet)?,
                radius: 9.0,
                lines: Vec::new(),
            })
        })
        .collect();
    (known().map(|l| l.id.as_str()).collect(), marks)
}

/// The close picture of a finding.
pub fn close(result: &CaseResult, finding: &Finding, picture: &Picture) -> Markup {
    let [width, height] = picture.camera.size.map(|px| px as f64);
    let below = 40.0;
    let impression = finding
        .impression
        .and_then(|n| result.impressions.get(usize::try_from(n).ok()?));
    let mark = impression.and_then(|impression| mark(impression, finding, picture, &|p| p, 1.0));
    let alt = format!(
        "Close picture of {}: {}, {}",
        finding.id,
        finding_place(result, finding),
        picture.up
    );
    html! {
        svg viewBox={ "0 0 " (width) " " (height + below) } role="img" aria-label=(alt) {
            title { (alt) }
            (embedded(picture, 0.0, 0.0, 1.0))
            @if let Some(mark) = &mark { (outlined(mark)) (label(&mark.at, mark.radius, mark.id)) }
            rect x="0.5" y="0.5" width=(width - 1.0) height=(height - 1.0) fill="none" stroke="#5c5c5c" {}
            (scale_bar(picture.camera.px_per_mm, 6.0, height + 30.0))
            text x=(width) y=(height + 30.0) text-anchor="end" font-size="20" { (picture.up) }
        }
    }
}

/// How findings of a severity are marked, for the legend.
pub fn sample(severity: Severity) -> Markup {
    html! {
        svg.sample viewBox="0 0 30 30" aria-hidden="true" { (ring([15.0, 15.0], 11.0, stroke(severity))) }
    }
}

fn listed(names: &[&str]) -> String {
    if names.is_empty() {
        "none".to_owned()
    } else {
        names.join(", ")
    }
}

fn mark<'a>(
    impression: &ImpressionResult,
    finding: &'a Finding,
    picture: &Picture,
    sheet: &dyn Fn(Place) -> Place,
    px: f64,
) -> Option<Mark<'a>> {
    const LEAST_RADIUS: f64 = 14.0;
    let shown = |point: &[f64; 3]| picture.shown(&point_mm(impression, point)?).map(sheet);
    let at = shown(finding.at.as_ref()?)?;
    let area_mm2 = spot(impression, finding).map_or(0.0, |spot| spot.area_mm2);
    let radius_mm = (area_mm2 / std::f64::consts::PI).sqrt();
    let stretch = stretch(impression, finding);
    let stations: Vec<Option<Place>> = stretch.iter().map(|s| shown(&s.point)).collect();
    let lines = stations
        .split(Option::is_none)
        .map(|run| run.iter().flatten().copied().collect::<Vec<Place>>())
        .filter(|run| run.len() > 1)
        .collect();
    Some(Mark {
        id: &finding.id,
        kind: Kind::Finding(finding.severity),
        at,
        radius: (radius_mm * 1.3 * picture.camera.px_per_mm * px).max(LEAST_RADIUS),
        lines,
    })
}

/// A point of the result, mm.
fn point_mm(impression: &ImpressionResult, point: &[f64; 3]) -> Option<Point3<f64>> {
    let in_mm = impression.scan.unit.parse::<Unit>().ok()?.in_mm();
    Some(Point3::from(point.map(|c| c * in_mm)))
}

fn spot<'a>(impression: &'a ImpressionResult, finding: &Finding) -> Option<&'a Spot> {
    let spots = &impression.cover.as_ref()?.spots;
    spots
        .iter()
        .find(|spot| Some(&spot.id) == finding.refers_to.as_ref())
}

/// Stations of the stretch of border that a finding is about.
fn stretch<'a>(impression: &'a ImpressionResult, finding: &Finding) -> Vec<&'a Station> {
    let stations = impression.border.as_ref().map(|border| &border.stations);
    let ends = finding.from_station.zip(finding.to_station);
    let Some((stations, (from, to))) = stations.zip(ends) else {
        return Vec::new();
    };
    let (from, to) = (from as usize, to as usize);
    let runs = if from <= to {
        [from..to + 1, 0..0]
    } else {
        [from..stations.len(), 0..to + 1]
    };
    runs.into_iter()
        .flat_map(|run| stations.get(run).unwrap_or_default())
        .collect()
}

fn embedded(picture: &Picture, x: f64, y: f64, px: f64) -> Markup {
    let [width, height] = picture.camera.size.map(|size| size as f64 * px);
    html! {
        image x=(x) y=(y) width=(round(width)) height=(round(height))
            href={ "data:image/png;base64," (STANDARD.encode(&picture.png)) } {}
    }
}

/// Which side is the patient's right.
fn sides(picture: &Picture, width: f64, y: f64) -> Markup {
    let [left, right] = if picture.right_is_right {
        ["L", "R"]
    } else {
        ["R", "L"]
    };
    html! {
        text x="8" y=(y) font-size="30" font-weight="bold" { (left) }
        text x=(width - 8.0) y=(y) font-size="30" font-weight="bold" text-anchor="end" { (right) }
        @if picture.up == "front up" {
            text x=(width / 2.0) y=(y) font-size=(LETTERING) text-anchor="middle" { "front" }
        } @else {
            text x=(width / 2.0) y=(y) font-size=(LETTERING) text-anchor="middle" { (picture.up) }
        }
    }
}

/// All marks of a picture, their numbers beside it.
fn marked(marks: &[Mark<'_>], high: f64) -> Markup {
    let left: Vec<&Mark<'_>> = marks.iter().filter(|m| m.at[0] <= WIDTH / 2.0).collect();
    let right: Vec<&Mark<'_>> = marks.iter().filter(|m| m.at[0] > WIDTH / 2.0).collect();
    html! {
        @for mark in marks { (outlined(mark)) }
        (column(left, high, true))
        (column(right, high, false))
    }
}

/// Numbers down one side of a picture with a line from each to its mark.
fn column(mut marks: Vec<&Mark<'_>>, high: f64, is_left: bool) -> Markup {
    marks.sort_by(|a, b| a.at[1].total_cmp(&b.at[1]));
    let wanted: Vec<f64> = marks.iter().map(|mark| mark.at[1]).collect();
    let heights = apart(&wanted, TOP + LETTERING / 2.0, TOP + high, LETTERING + 2.0);
    let size = if marks.len() as f64 * (LETTERING + 2.0) > high {
        LETTERING * 0.7
    } else {
        LETTERING
    };
    let (x, anchor, foot) = if is_left {
        (ASIDE - 26.0, "end", ASIDE - 22.0)
    } else {
        (WIDTH - ASIDE + 26.0, "start", WIDTH - ASIDE + 22.0)
    };
    html! {
        @for (mark, y) in marks.iter().zip(heights) {
            @let tip = toward(mark.at, [foot, y], mark.radius);
            (leader([foot, y], tip))
            text x=(x) y=(round(y + size * 0.35)) font-size=(size) font-weight="bold" text-anchor=(anchor) { (mark.id) }
        }
    }
}

/// Heights close to those wanted (in rising order), between two bounds and with
/// a distance from each other; closer together where there is no room for it.
fn apart(wanted: &[f64], low: f64, high: f64, distance: f64) -> Vec<f64> {
    let distance = distance.min((high - low) / wanted.len().max(1) as f64);
    let mut heights: Vec<f64> = Vec::with_capacity(wanted.len());
    for &y in wanted {
        let above = heights.last().map_or(low, |last| last + distance);
        heights.push(y.max(above));
    }
    let mut floor = high;
    for y in heights.iter_mut().rev() {
        *y = y.min(floor);
        floor = *y - distance;
    }
    heights
}

/// The point of a ring round `middle` that lies toward `from`.
fn toward(middle: Place, from: Place, radius: f64) -> Place {
    let run = [from[0] - middle[0], from[1] - middle[1]];
    let length = run[0].hypot(run[1]).max(1e-9);
    [0, 1].map(|k| middle[k] + run[k] / length * radius)
}

fn leader(from: Place, to: Place) -> Markup {
    html! {
        @for (colour, width) in [("#ffffff", 4.5), ("#1a1a1a", 1.5)] {
            line x1=(round(from[0])) y1=(round(from[1])) x2=(round(to[0])) y2=(round(to[1]))
                stroke=(colour) stroke-width=(width) {}
        }
    }
}

/// Ring and stretch of a finding, or the saltire of a landmark.
fn outlined(mark: &Mark<'_>) -> Markup {
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

fn ring(at: Place, radius: f64, (width, dashes): (f64, &str)) -> Markup {
    html! {
        @for (colour, width, dashes) in [("#ffffff", width + 4.0, "none"), ("#1a1a1a", width, dashes)] {
            circle cx=(round(at[0])) cy=(round(at[1])) r=(round(radius)) fill="none"
                stroke=(colour) stroke-width=(width) stroke-dasharray=(dashes) {}
        }
    }
}

fn saltire(at: Place, arm: f64) -> Markup {
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

fn label(at: &Place, radius: f64, text: &str) -> Markup {
    let (x, y) = (round(at[0] + radius + 6.0), round(at[1] + 8.0));
    html! {
        text x=(x) y=(y) font-size="24" font-weight="bold" stroke="#ffffff" stroke-width="5" stroke-linejoin="round" { (text) }
        text x=(x) y=(y) font-size="24" font-weight="bold" { (text) }
    }
}

/// A bar of a round length.
fn scale_bar(px_per_mm: f64, x: f64, y: f64) -> Markup {
    let mm = if px_per_mm > 12.0 { 5.0 } else { 10.0 };
    let to = round(x + mm * px_per_mm);
    html! {
        path d={ "M" (x) " " (y - 6.0) " v12 M" (x) " " (y) " H" (to) " M" (to) " " (y - 6.0) " v12" }
            stroke="#1a1a1a" stroke-width="3" fill="none" {}
        text x=(to + 8.0) y=(y + 7.0) font-size="20" { (mm) " mm" }
    }
}

/// The colours of cover with their ends and the limits of cover.
fn colour_scale(map: &CoverMap, what: &str, levels: &[(f64, &str)], y: f64) -> Markup {
    let (left, right, high) = (340.0, WIDTH - 60.0, 22.0);
    let x = |mm: f64| left + (mm - map.from_mm) / (map.to_mm - map.from_mm) * (right - left);
    let band = (right - left) / f64::from(BANDS);
    let levels = (levels.iter()).filter(|(mm, _)| (map.from_mm..=map.to_mm).contains(mm));
    html! {
        @for number in 0..BANDS {
            @let share = (f64::from(number) + 0.5) / f64::from(BANDS);
            @let [r, g, b] = colorous::VIRIDIS.eval_continuous(share).as_array();
            rect x=(round(left + f64::from(number) * band)) y=(y) width=(round(band + 0.6)) height=(high)
                fill={ "rgb(" (r) "," (g) "," (b) ")" } {}
        }
        rect x=(left) y=(y) width=(right - left) height=(high) fill="none" stroke="#1a1a1a" {}
        text x=(left) y=(y - 6.0) font-size="20" { (what) }
        (tick(x(map.from_mm), y + high, map.from_mm, ("", "end")))
        @for &(mm, word) in levels { (tick(x(mm), y + high, mm, (word, "middle"))) }
        (tick(x(map.to_mm), y + high, map.to_mm, ("or more", "middle")))
    }
}

fn tick(x: f64, y: f64, mm: f64, (word, anchor): (&str, &str)) -> Markup {
    html! {
        path d={ "M" (round(x)) " " (y - 26.0) " V" (y + 5.0) } stroke="#1a1a1a" stroke-width="2" {}
        text x=(round(x)) y=(y + 24.0) font-size="20" text-anchor=(anchor) { tspan data-value=(mm) { (mm) } }
        @if !word.is_empty() {
            text x=(round(x)) y=(y + 43.0) font-size="17" text-anchor="middle" { (word) }
        }
    }
}

/// Tenths of a pixel are seen by nobody.
fn round(px: f64) -> f64 {
    (px * 10.0).round() / 10.0 + 0.0
}

#[cfg(test)]
mod tests {
    use super::apart;

    #[test]
    fn numbers_beside_a_picture_stay_apart_and_on_the_sheet() {
        assert_eq!(apart(&[10.0, 50.0], 0.0, 100.0, 20.0), [10.0, 50.0]);
        assert_eq!(
            apart(&[10.0, 11.0, 12.0], 0.0, 100.0, 20.0),
            [10.0, 30.0, 50.0]
        );
        assert_eq!(apart(&[95.0, 99.0], 0.0, 100.0, 20.0), [80.0, 100.0]);
        let many = apart(&[50.0; 30], 0.0, 100.0, 20.0);
        assert!(many.iter().all(|y| (-1e-9..=100.0).contains(y)));
        assert!(many.windows(2).all(|pair| pair[1] - pair[0] > 3.0));
    }
}
