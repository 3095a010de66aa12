//! An impression cut apart with its tray, as a saw cuts it: each part closed by the faces of
//! the cuts.

use earcut::Earcut;
use mesh::Mesh;
use nalgebra::{Point2, Point3, Unit, UnitVector3, Vector3};
use std::collections::BTreeMap;

/// The side of a plane to which its normal points: where `normal · place` is at least
/// `offset_mm`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfSpace {
    /// Away from what is cut off.
    pub normal: UnitVector3<f64>,
    /// Distance of the plane from the origin along its normal, mm.
    pub offset_mm: f64,
}

impl HalfSpace {
    /// Where a coordinate is at least a value: `axis` is 0, 1, 2 for x, y, z.
    #[must_use]
    pub fn above(axis: usize, least_mm: f64) -> Self {
        Self {
            normal: Unit::new_unchecked(Vector3::ith(axis, 1.0)),
            offset_mm: least_mm,
        }
    }

    /// Where a coordinate is at most a value.
    #[must_use]
    pub fn below(axis: usize, most_mm: f64) -> Self {
        Self {
            normal: Unit::new_unchecked(Vector3::ith(axis, -1.0)),
            offset_mm: -most_mm,
        }
    }

    fn height(&self, place: &Point3<f64>) -> f64 {
        self.normal.dot(&place.coords) - self.offset_mm
    }
}

/// What lies in all of the half spaces, of a closed mesh without colours.
#[must_use]
pub fn part(mesh: &Mesh, within: &[HalfSpace]) -> Mesh {
    within
        .iter()
        .fold(mesh.clone(), |mesh, half| cut(&mesh, half))
}

fn cut(mesh: &Mesh, half: &HalfSpace) -> Mesh {
    let heights: Vec<f64> = mesh.vertices().iter().map(|p| half.height(p)).collect();
    let mut vertices = mesh.vertices().to_vec();
    let mut on_edge: BTreeMap<(u32, u32), u32> = BTreeMap::new();
    let mut triangles = Vec::new();
    // From the vertex at which the plane is entered to that at which it is left.
    let mut onward: BTreeMap<u32, u32> = BTreeMap::new();
    for corners in mesh.triangles() {
        let mut kept: Vec<u32> = Vec::with_capacity(4);
        let mut crossings = Vec::with_capacity(2);
        for k in 0..3 {
            let (a, b) = (corners[k], corners[(k + 1) % 3]);
            let (from, to) = (heights[a as usize], heights[b as usize]);
            if from >= 0.0 {
                kept.push(a);
            }
            if (from >= 0.0) != (to >= 0.0) {
                let key = (a.min(b), a.max(b));
                let vertex = *on_edge.entry(key).or_insert_with(|| {
                    let [low, high] = [key.0, key.1].map(|v| mesh.vertices()[v as usize]);
                    let [h, g] = [key.0, key.1].map(|v| heights[v as usize]);
                    vertices.push(low + (high - low) * (h / (h - g)));
                    vertices.len() as u32 - 1
                });
                kept.push(vertex);
                crossings.push((from >= 0.0, vertex));
            }
        }
        if let [(leaves, first), (_, second)] = crossings[..] {
            let (from, to) = if leaves {
                (first, second)
            } else {
                (second, first)
            };
            onward.insert(from, to);
        }
        triangles.extend((2..kept.len()).map(|k| [kept[0], kept[k - 1], kept[k]]));
    }
    triangles.extend(face(&vertices, onward, half));
    // Every index is one of a vertex of the mesh or of its cut edges.
    let whole = Mesh::new(vertices, triangles, None).unwrap_or_default();
    whole.filtered(|_| true)
}

/// The face that closes a cut: its outlines, some of them holes in others, in triangles.
fn face(
    vertices: &[Point3<f64>],
    mut onward: BTreeMap<u32, u32>,
    half: &HalfSpace,
) -> Vec<[u32; 3]> {
    let away = -half.normal.into_inner();
    let across = away.cross(&Vector3::new(0.37, 0.61, 0.7)).normalize();
    let up = away.cross(&across);
    let flat = |v: u32| {
        let place = vertices[v as usize].coords;
        Point2::new(place.dot(&across), place.dot(&up))
    };
    let mut outlines: Vec<Vec<u32>> = Vec::new();
    while let Some((&start, _)) = onward.iter().next() {
        let mut outline = Vec::new();
        let mut at = start;
        while let Some(next) = onward.remove(&at) {
            outline.push(at);
            at = next;
        }
        // The edge of the face runs against that of the surface.
        outline.reverse();
        outlines.push(outline);
    }
    let area = |outline: &[u32]| -> f64 {
        (0..outline.len())
            .map(|i| {
                let (p, q) = (flat(outline[i]), flat(outline[(i + 1) % outline.len()]));
                p.x * q.y - p.y * q.x
            })
            .sum()
    };
    let (around, holes): (Vec<_>, Vec<_>) = outlines.iter().partition(|o| area(o) > 0.0);
    let inside = |hole: &[u32], around: &[u32]| {
        let p = flat(hole[0]);
        let crosses = |i: usize| {
            let (a, b) = (flat(around[i]), flat(around[(i + 1) % around.len()]));
            (a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)
        };
        (0..around.len()).filter(|&i| crosses(i)).count() % 2 == 1
    };
    let mut triangles = Vec::new();
    for outer in around {
        let mut ring = outer.clone();
        let mut hole_starts: Vec<u32> = Vec::new();
        for hole in holes.iter().filter(|hole| inside(hole, outer)) {
            hole_starts.push(ring.len() as u32);
            ring.extend(hole.iter());
        }
        let mut found: Vec<u32> = Vec::new();
        let places = ring.iter().map(|&v| <[f64; 2]>::from(flat(v)));
        Earcut::new().earcut(places, &hole_starts, &mut found);
        triangles.extend(found.chunks_exact(3).map(|t| {
            let corners = [t[0], t[1], t[2]].map(|i| ring[i as usize]);
            let [a, b, c] = corners.map(|v| vertices[v as usize]);
            let faces_away = (b - a).cross(&(c - a)).dot(&away) > 0.0;
            if faces_away {
                corners
            } else {
                [corners[0], corners[2], corners[1]]
            }
        }));
    }
    triangles
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Options, Phantom, Pose};
    use mesh::Topology;

    #[test]
    fn the_parts_of_a_cut_are_closed_and_hold_what_the_whole_holds() {
        let made = Phantom::new(&Options {
            edge_mm: 1.2,
            pose: Pose::AsMade,
            ..Options::default()
        });
        let whole = &made.impression;
        let cut = [HalfSpace::above(1, 12.0), HalfSpace::below(1, 12.0)];
        let parts = cut.map(|half| part(whole, &[half]));
        let volume: f64 = parts.iter().map(Mesh::signed_volume).sum();
        assert!((volume / whole.signed_volume() - 1.0).abs() < 1e-9);
        for part in &parts {
            assert!(Topology::of(part).is_closed());
            assert!(part.signed_volume() > 0.1 * whole.signed_volume());
        }
    }
}
