//! Parts of one surface that was cut apart, laid in one frame, joined again: the faces of
//! the cut are taken away, and a strip bridges what lay between them.

mod bridge;
mod cut_faces;
mod edges;
mod joint;

use crate::order;
use bridge::bridge;
use cut_faces::Beside;
use edges::{Edge, edges, facing};
use mesh::{Mesh, SpatialIndex};
use nalgebra::Point3;
use rayon::prelude::*;
use thiserror::Error;

pub use edges::SHORTEST_CUT_MM;
pub use joint::{Joint, joint};

/// So much of a part's area may be shown twice.
const MOST_SHOWN_TWICE: f64 = 0.1;

/// Parts joined to one surface.
#[derive(Debug, Clone)]
pub struct Joined {
    /// The parts with the strips between them, the parts' vertices in their order.
    pub mesh: Mesh,
    /// The strips alone: nothing was scanned there.
    pub strip: Mesh,
    /// Median length of the strips' rungs, mm: the width of the cuts, and up to a few tenths
    /// of an edge more.
    pub width_mm: f64,
    /// Median step of the surface over the cuts, mm.
    pub step_mm: f64,
}

/// Why parts do not join.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum NotJoined {
    /// They show the same surface.
    #[error(
        "parts {first} and {second} show the same surface, over {percent:.0} % of the smaller: give each part once"
    )]
    ShownTwice {
        /// Number of the one, from 1.
        first: usize,
        /// Number of the other.
        second: usize,
        /// Of the smaller one's area.
        percent: f64,
    },
    /// A part's edge meets no other's.
    #[error(
        "part {part} meets no other part along a cut of at least {SHORTEST_CUT_MM} mm: a part between them may be missing"
    )]
    Apart {
        /// Its number, from 1.
        part: usize,
    },
}

/// Joins parts that lie in one frame, mm, closer than 3 mm along their cuts.
///
/// # Errors
/// When two of them show the same surface, or one meets no other.
pub fn joined(parts: &[Mesh]) -> Result<Joined, NotJoined> {
    let indices: Vec<SpatialIndex> = parts.par_iter().map(SpatialIndex::new).collect();
    let beside: Vec<Beside> = (0..parts.len())
        .into_par_iter()
        .map(|part| Beside::of(part, parts, &indices))
        .collect();
    for (part, beside) in beside.iter().enumerate() {
        if let Some(&(other, share)) = beside
            .shown_twice
            .iter()
            .find(|(_, s)| *s > MOST_SHOWN_TWICE)
        {
            return Err(NotJoined::ShownTwice {
                first: part.min(other) + 1,
                second: part.max(other) + 1,
                percent: 100.0 * share,
            });
        }
    }
    let trimmed: Vec<Mesh> = (parts.iter().zip(&beside))
        .map(|(part, beside)| part.filtered(|t| !beside.is_cut[t]))
        .collect();
    let edges: Vec<Vec<Edge>> = trimmed.iter().map(edges).collect();
    let mut meets = vec![false; parts.len()];
    let first: Vec<u32> = (trimmed.iter())
        .scan(0, |next, part| {
            let own = *next;
            *next += part.vertices().len() as u32;
            Some(own)
        })
        .collect();
    let (mut strip, mut widths, mut steps) = (Vec::new(), Vec::new(), Vec::new());
    for one in 0..parts.len() {
        for other in one + 1..parts.len() {
            for (a, b) in facing(&edges[one], &edges[other]) {
                let Some(bridge) = bridge(&a, &b) else {
                    continue;
                };
                [meets[one], meets[other]] = [true, true];
                widths.extend(bridge.widths_mm);
                steps.extend(bridge.steps_mm);
                let start = [first[one], first[other]];
                strip.extend(
                    bridge
                        .triangles
                        .iter()
                        .map(|corners| corners.map(|(side, vertex)| start[side] + vertex)),
                );
            }
        }
    }
    if let Some(part) = meets.iter().position(|meets| !meets) {
        return Err(NotJoined::Apart { part: part + 1 });
    }
    let (mesh, strip) = assembled(&trimmed, &first, &strip);
    Ok(Joined {
        mesh,
        strip,
        width_mm: order::median(&mut widths).unwrap_or(0.0),
        step_mm: order::median(&mut steps).unwrap_or(0.0),
    })
}

/// The parts with the strips between them, and the strips alone.
fn assembled(parts: &[Mesh], first: &[u32], strip: &[[u32; 3]]) -> (Mesh, Mesh) {
    let vertices: Vec<Point3<f64>> = parts.iter().flat_map(Mesh::vertices).copied().collect();
    let of_parts = parts.iter().zip(first).flat_map(|(part, first)| {
        let numbered = part.triangles().iter();
        numbered.map(move |corners| corners.map(|v| v + first))
    });
    let colours: Option<Vec<&[[u8; 3]]>> = parts.iter().map(Mesh::colours).collect();
    let triangles: Vec<[u32; 3]> = of_parts.chain(strip.iter().copied()).collect();
    let bridging = triangles.len() - strip.len();
    // Every index is one of a part, moved by the vertices before it.
    let mesh = Mesh::new(vertices, triangles, colours.map(|all| all.concat())).unwrap_or_default();
    let strip = mesh.filtered(|t| t >= bridging);
    (mesh, strip)
}

#[cfg(test)]
mod tests {
    use super::*;
    use mesh::Topology;
    use std::f64::consts::TAU;

    const RADIUS_MM: f64 = 5.0;
    const AROUND: u32 = 60;

    /// A closed cylinder along x, with ends of triangles about their middles.
    fn cylinder(from: f64, to: f64) -> Mesh {
        let rings = 21;
        let ring = |i: u32| from + (to - from) * f64::from(i) / f64::from(rings - 1);
        let place = |i: u32, k: u32| {
            let angle = TAU * f64::from(k) / f64::from(AROUND);
            Point3::new(ring(i), RADIUS_MM * angle.cos(), RADIUS_MM * angle.sin())
        };
        let mut vertices: Vec<Point3<f64>> = (0..rings)
            .flat_map(|i| (0..AROUND).map(move |k| place(i, k)))
            .collect();
        let ends = vertices.len() as u32;
        vertices.extend([Point3::new(from, 0.0, 0.0), Point3::new(to, 0.0, 0.0)]);
        let mut triangles = Vec::new();
        for k in 0..AROUND {
            let next = (k + 1) % AROUND;
            for i in 0..rings - 1 {
                let [a, b] = [i, i + 1].map(|i| i * AROUND);
                triangles.extend([[a + k, b + next, b + k], [a + k, a + next, b + next]]);
            }
            let last = (rings - 1) * AROUND;
            triangles.extend([[ends, next, k], [ends + 1, last + k, last + next]]);
        }
        let made = Mesh::new(vertices, triangles, None).expect("indices are in range");
        if made.signed_volume() > 0.0 {
            made
        } else {
            made.turned_inside_out()
        }
    }

    #[test]
    fn two_ends_of_a_bar_become_the_bar() {
        const GAP_MM: f64 = 0.8;
        let parts = [cylinder(0.0, 20.0), cylinder(20.0 + GAP_MM, 30.0)];
        let found = joined(&parts).expect("they meet");
        let topology = Topology::of(&found.mesh);
        assert!(topology.is_closed());
        assert_eq!(topology.components(), 1);
        // Every other rung is a diagonal.
        assert!((GAP_MM..1.2 * GAP_MM).contains(&found.width_mm));
        assert!(found.step_mm < 1e-9);
        // The area of a regular polygon of as many sides, times the length.
        let section = f64::from(AROUND) / 2.0 * RADIUS_MM.powi(2) * (TAU / f64::from(AROUND)).sin();
        assert!((found.mesh.signed_volume() - 30.0 * section).abs() < 1e-6);
        assert_eq!(found.strip.triangles().len(), 2 * AROUND as usize);
    }

    #[test]
    fn parts_that_are_one_or_lie_apart_do_not_join() {
        let [one, far] = [cylinder(0.0, 20.0), cylinder(26.0, 40.0)];
        assert!(matches!(
            joined(&[one.clone(), one.clone()]),
            Err(NotJoined::ShownTwice {
                first: 1,
                second: 2,
                ..
            })
        ));
        assert_eq!(
            joined(&[one, far]).err(),
            Some(NotJoined::Apart { part: 1 })
        );
    }

    #[test]
    fn the_gap_and_the_step_of_a_joint_are_those_planted() {
        for (gap_mm, step_mm) in [(0.0, 0.0), (0.5, 0.0), (0.02, 0.4), (-0.03, 0.0)] {
            let [one, other] = [cylinder(0.0, 20.0), cylinder(20.0 + gap_mm, 40.0)];
            let aside = nalgebra::Translation3::new(0.0, step_mm, 0.0);
            let found = joint(&[one, other.moved(&aside.into())]).expect("they meet");
            assert!((found.gap_mm - gap_mm).abs() < 1e-6, "{gap_mm}: {found:?}");
            // Nine tenths of a circle step by less than this, in the direction of the shift.
            let expected = step_mm * (0.9 * TAU / 4.0).sin();
            assert!(
                (found.step_mm - expected).abs() < 0.05,
                "{step_mm}: {found:?}"
            );
        }
        assert_eq!(joint(&[cylinder(0.0, 20.0), cylinder(26.0, 40.0)]), None);
    }
}
