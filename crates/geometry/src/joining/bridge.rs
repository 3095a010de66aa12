//! A strip of triangles between two edges.

use super::edges::{EdgePoint, Stretch};
use nalgebra::Vector3;

/// Pairs of points of two edges that are looked at, at most.
const MOST_PAIRS: usize = 1 << 26;

/// A strip of triangles between two stretches.
pub(super) struct Bridge {
    /// Corners, each the stretch, 0 or 1, and the number of the vertex.
    pub triangles: Vec<[(usize, u32); 3]>,
    /// Lengths of its rungs, mm.
    pub widths_mm: Vec<f64>,
    /// How far each of them leads off the surface, mm.
    pub steps_mm: Vec<f64>,
}

/// The strip with the shortest rungs. `None` where the stretches are too long to be
/// searched.
pub(super) fn bridge(one: &Stretch, other: &Stretch) -> Option<Bridge> {
    let first = closed_again(one.clone());
    let ways = along(&first[0], other);
    if first.len() * ways[0].len() > MOST_PAIRS {
        return None;
    }
    let found = ways.map(|second| shortest(&first, &second));
    let better = found.into_iter().min_by(|a, b| a.0.total_cmp(&b.0))?;
    Some(better.1)
}

/// The strip with the shortest rungs from the ends of two lines to their beginnings, with
/// the sum of their lengths: the search of Fuchs, Kedem and Uselton 1977 for triangles
/// between two contours, with lengths in place of areas.
fn shortest(a: &[EdgePoint], b: &[EdgePoint]) -> (f64, Bridge) {
    // Whether the step that leads to each rung is one along the first line.
    let mut along_first = vec![false; a.len() * b.len()];
    let mut before = vec![f64::INFINITY; b.len()];
    for i in 0..a.len() {
        let mut here = vec![f64::INFINITY; b.len()];
        for j in 0..b.len() {
            let rung = (a[i].at - b[j].at).norm();
            let over_other = if j > 0 { here[j - 1] } else { f64::INFINITY };
            along_first[i * b.len() + j] = before[j] <= over_other;
            let way = before[j].min(over_other);
            here[j] = rung + if way.is_finite() { way } else { 0.0 };
        }
        before = here;
    }
    let total = before.last().copied().unwrap_or(f64::INFINITY);
    let (mut i, mut j) = (a.len() - 1, b.len() - 1);
    let mut bridge = Bridge {
        triangles: Vec::new(),
        widths_mm: Vec::new(),
        steps_mm: Vec::new(),
    };
    while i > 0 || j > 0 {
        let rung = a[i].at - b[j].at;
        bridge.widths_mm.push(rung.norm());
        let normal = (a[i].normal + b[j].normal).try_normalize(0.0);
        bridge
            .steps_mm
            .extend(normal.map(|normal| rung.dot(&normal).abs()));
        let corners = if along_first[i * b.len() + j] {
            i -= 1;
            [(0, &a[i]), (0, &a[i + 1]), (1, &b[j])]
        } else {
            j -= 1;
            [(1, &b[j]), (1, &b[j + 1]), (0, &a[i])]
        };
        bridge.triangles.extend(outward(corners));
    }
    (total, bridge)
}

/// A triangle that faces as the surface at its corners does; none of two corners.
fn outward(corners: [(usize, &EdgePoint); 3]) -> Option<[(usize, u32); 3]> {
    let [a, b, c] = corners.map(|(_, point)| point.at);
    let normal: Vector3<f64> = corners.iter().map(|(_, point)| point.normal).sum();
    let [p, q, r] = corners.map(|(side, point)| (side, point.vertex));
    let area = (b - a).cross(&(c - a));
    let turned = area.dot(&normal) < 0.0;
    (p != q && area.norm() > 0.0).then_some(if turned { [p, r, q] } else { [p, q, r] })
}

fn closed_again(stretch: Stretch) -> Vec<EdgePoint> {
    let mut points = stretch.points;
    if stretch.is_closed {
        points.push(points[0]);
    }
    points
}

/// A stretch in both senses; a closed one from where it is nearest to a point.
fn along(start: &EdgePoint, stretch: &Stretch) -> [Vec<EdgePoint>; 2] {
    let mut points = stretch.points.clone();
    if stretch.is_closed {
        let off = |k: &usize| (points[*k].at - start.at).norm();
        let nearest = (0..points.len()).min_by(|i, j| off(i).total_cmp(&off(j)));
        points.rotate_left(nearest.unwrap_or(0));
    }
    let points = closed_again(Stretch {
        points,
        is_closed: stretch.is_closed,
    });
    [points.clone(), points.into_iter().rev().collect()]
}
