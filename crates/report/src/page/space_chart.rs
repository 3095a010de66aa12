//! The space between the ridges as a chart, with a small arch that shows where it is
//! least.

use crate::drawing::SIDE_LETTER;
use crate::result::{JawRelation, ProtocolResult, Side, SpaceStation};
use maud::{Markup, html};
use messages::{Language, text};
use nalgebra::Vector3;
use std::cmp::Ordering;

/// Width and height of the small arch beside the chart.
const ARCH: [f64; 2] = [260.0, 240.0];

/// The space along the upper crest line, seen as the upper impression is.
pub(super) fn chart(
    relation: &JawRelation,
    protocol: &ProtocolResult,
    language: Language,
) -> Markup {
    const SIZE: [f64; 2] = [800.0, 300.0];
    const LEFT: f64 = 70.0;
    const BOTTOM: f64 = 60.0;
    let along = |station: &SpaceStation| match station.side {
        Some(Side::Left) => -station.from_front_mm,
        _ => station.from_front_mm,
    };
    let known: Vec<[f64; 2]> = (relation.stations.iter())
        .filter_map(|station| Some([along(station), station.space_mm?]))
        .collect();
    let reach = known.iter().map(|p| p[0].abs()).fold(1.0, f64::max);
    let top = known.iter().map(|p| p[1]).fold(1.0, f64::max) * 1.1;
    let x = |mm: f64| LEFT + (mm / reach + 1.0) / 2.0 * (SIZE[0] - LEFT - 20.0);
    let y = |mm: f64| (SIZE[1] - BOTTOM) - mm / top * (SIZE[1] - BOTTOM - 20.0);
    let line: Vec<String> = known
        .iter()
        .map(|p| format!("{:.1},{:.1}", x(p[0]), y(p[1])))
        .collect();
    let limiting = protocol.limits.get("least_interarch_space_mm");
    let step = if top > 25.0 { 10.0 } else { 5.0 };
    let ticks: Vec<f64> = (0..)
        .map(|n| f64::from(n) * step)
        .take_while(|mm| *mm <= top)
        .collect();
    let word = text!(language, "page-space-chart");
    let ends = [
        (-reach, text!(language, "side-letter", side = "left")),
        (0.0, text!(language, "view-front")),
        (reach, text!(language, "side-letter", side = "right")),
    ];
    html! {
        figure {
            svg.space viewBox=(format!("0 0 {} {}", SIZE[0] + ARCH[0], SIZE[1])) role="img" aria-label=(word) {
                @for mm in &ticks {
                    line x1=(LEFT) x2=(SIZE[0] - 20.0) y1=(y(*mm)) y2=(y(*mm)) stroke="#ccc" {}
                    text.tick x=(LEFT - 8.0) y=(y(*mm) + 7.0) text-anchor="end" font-size="20" { (mm) }
                }
                @if let Some(found) = limiting {
                    line x1=(LEFT) x2=(SIZE[0] - 20.0) y1=(y(found.value)) y2=(y(found.value)) stroke="#444" stroke-dasharray="8 6" {}
                    text x=(SIZE[0] - 24.0) y=(y(found.value) - 6.0) text-anchor="end" font-size="20" { (text!(language, "page-space-limit")) }
                }
                polyline points=(line.join(" ")) fill="none" stroke="#21918c" stroke-width="4" {}
                @for (mm, word) in &ends {
                    text x=(x(*mm)) y=(SIZE[1] - BOTTOM + 28.0) text-anchor="middle" font-size="20" { (word) }
                }
                text x=(LEFT) y=(SIZE[1] - 8.0) font-size="20" { (text!(language, "page-space")) }
                @if let Some(least) = least(relation) { (small_arch(relation, least, [SIZE[0], 0.0], language)) }
            }
            figcaption { (word) "." }
        }
    }
}

/// The station with the least space.
fn least(relation: &JawRelation) -> Option<&SpaceStation> {
    let known = relation.stations.iter().filter(|s| s.space_mm.is_some());
    known.min_by(|a, b| {
        a.space_mm
            .partial_cmp(&b.space_mm)
            .unwrap_or(Ordering::Equal)
    })
}

/// The crest line seen as the upper impression is, with a dot at a station.
fn small_arch(
    relation: &JawRelation,
    at: &SpaceStation,
    [left, top]: [f64; 2],
    language: Language,
) -> Markup {
    let stations = &relation.stations;
    let Some([right, front]) = axes(stations) else {
        return html! {};
    };
    let seen = |station: &SpaceStation| {
        let point = Vector3::from(station.point);
        [point.dot(&right), point.dot(&front)]
    };
    let reach = |k: usize| {
        let values = stations.iter().map(|station| seen(station)[k]);
        let least = values.clone().fold(f64::INFINITY, f64::min);
        (least, values.fold(f64::NEG_INFINITY, f64::max))
    };
    let (across, along) = (reach(0), reach(1));
    let room = [ARCH[0] - 80.0, ARCH[1] - 60.0];
    let scale =
        (room[0] / (across.1 - across.0).max(1e-9)).min(room[1] / (along.1 - along.0).max(1e-9));
    let px = |station: &SpaceStation| {
        let place = seen(station);
        [
            left + ARCH[0] / 2.0 + (place[0] - f64::midpoint(across.0, across.1)) * scale,
            top + 40.0 + (along.1 - place[1]) * scale,
        ]
    };
    let line: Vec<String> = (stations.iter().map(px))
        .map(|[x, y]| format!("{x:.1},{y:.1}"))
        .collect();
    let dot = px(at);
    html! {
        polyline points=(line.join(" ")) fill="none" stroke="#5c5c5c" stroke-width="3" {}
        circle.place data-of="least" cx=(format!("{:.1}", dot[0])) cy=(format!("{:.1}", dot[1])) r="7" fill="#1a1a1a" {}
        text x=(left + 20.0) y=(top + 30.0) font-size=(SIDE_LETTER) font-weight="bold" { (text!(language, "side-letter", side = "left")) }
        text x=(left + ARCH[0] - 20.0) y=(top + 30.0) font-size=(SIDE_LETTER) font-weight="bold" text-anchor="end" { (text!(language, "side-letter", side = "right")) }
        text x=(left + ARCH[0] / 2.0) y=(top + 24.0) font-size="20" text-anchor="middle" { (text!(language, "view-front")) }
    }
}

/// The patient's right and front, from which stations lie on which side; `None` where
/// the line is too short to show them.
fn axes(stations: &[SpaceStation]) -> Option<[Vector3<f64>; 2]> {
    let mean = |wanted: &dyn Fn(&SpaceStation) -> bool| {
        let points = stations.iter().filter(|station| wanted(station));
        let points: Vec<Vector3<f64>> = points.map(|s| Vector3::from(s.point)).collect();
        let sum: Vector3<f64> = points.iter().sum();
        (!points.is_empty()).then(|| sum / points.len() as f64)
    };
    let of_side = |side| mean(&move |station: &SpaceStation| station.side == Some(side));
    let right = (of_side(Side::Right)? - of_side(Side::Left)?).try_normalize(1e-9)?;
    let foremost = mean(&|station: &SpaceStation| station.side.is_none())?;
    let forward = foremost - mean(&|_: &SpaceStation| true)?;
    let front = (forward - right * forward.dot(&right)).try_normalize(1e-9)?;
    Some([right, front])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn station(point: [f64; 3], side: Option<Side>) -> SpaceStation {
        SpaceStation {
            point,
            from_front_mm: 0.0,
            side,
            space_mm: Some(20.0),
            why_not: None,
        }
    }

    #[test]
    fn the_axes_of_a_crest_line_are_the_patients_right_and_front() {
        // Right along z, front along -y, however the record lies.
        let stations = [
            station([0.0, 30.0, 20.0], Some(Side::Right)),
            station([0.0, 10.0, 15.0], Some(Side::Right)),
            station([0.0, 0.0, 0.0], None),
            station([0.0, 10.0, -15.0], Some(Side::Left)),
            station([0.0, 30.0, -20.0], Some(Side::Left)),
        ];
        let [right, front] = axes(&stations).unwrap();
        assert!((right - Vector3::z()).norm() < 1e-9);
        assert!((front + Vector3::y()).norm() < 1e-9);
        assert!(axes(&stations[..1]).is_none());
    }
}
