//! The joint of two pieces: how far its faces stand apart, and how far the surface steps.

use super::cut_faces::{Beside, OPPOSED, WIDEST_CUT_MM};
use super::edges::edges;
use crate::order::at_share;
use crate::sampling::spread_over;
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Point3, Vector3};

/// Points that stand for a piece.
const POINTS: usize = 20_000;
/// Fewer of them on its faces, and there is no joint.
const LEAST_ON_FACES: usize = 12;
/// The share of a joint that is no farther apart than what is said of it: single places
/// where an edge is worn do not count.
const SHARE: f64 = 0.9;

/// The joint of two pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Joint {
    /// Distance between its faces, mm, over nine tenths of them at most; less than 0 where
    /// they reach into one another.
    pub gap_mm: f64,
    /// Step of the surface over it, mm, over nine tenths of its outline at most.
    pub step_mm: f64,
}

/// The joint of two pieces that lie in one frame, mm; `None` where no faces of them look at
/// each other within 3 mm.
#[must_use]
pub fn joint(pieces: &[Mesh; 2]) -> Option<Joint> {
    let [one, other] = pieces;
    let points = spread_over(one, POINTS, |_| true);
    let places: Vec<Point3<f64>> = points.iter().map(|s| s.point).collect();
    let nearest = SpatialIndex::new(other).nearest_many(&places, WIDEST_CUT_MM);
    let mut gaps: Vec<f64> = (points.iter().zip(nearest))
        .filter_map(|(s, nearest)| {
            let nearest = nearest?;
            let theirs = other
                .area_vector(nearest.triangle as usize)
                .try_normalize(0.0)?;
            let off = nearest.point - s.point;
            let gap = s.normal.dot(&off);
            // Straight across, and not past an edge.
            let aside = (off - s.normal.into_inner() * gap).norm();
            (s.normal.dot(&theirs) < OPPOSED && aside < 0.3 * off.norm().max(0.1)).then_some(gap)
        })
        .collect();
    if gaps.len() < LEAST_ON_FACES {
        return None;
    }
    Some(Joint {
        gap_mm: at_share(&mut gaps, SHARE)?,
        step_mm: at_share(&mut steps(pieces), SHARE).unwrap_or(0.0),
    })
}

/// How far the surface of one piece, at the edges of the joint, lies off the other's.
fn steps(pieces: &[Mesh; 2]) -> Vec<f64> {
    let indices = pieces.each_ref().map(SpatialIndex::new);
    let [one, beside] = [0, 1].map(|piece| {
        let faces = Beside::of(piece, pieces, &indices);
        pieces[piece].filtered(|t| !faces.is_cut[t])
    });
    let edges = edges(&one);
    let ends: Vec<_> = edges.iter().flatten().collect();
    let places: Vec<Point3<f64>> = ends.iter().map(|end| end.at).collect();
    let normals = beside.vertex_normals();
    let nearest = SpatialIndex::new(&beside).nearest_many(&places, WIDEST_CUT_MM);
    (ends.iter().zip(nearest))
        .filter_map(|(end, nearest)| {
            let nearest = nearest?;
            let corners = beside.triangles()[nearest.triangle as usize];
            let theirs: Vector3<f64> = (0..3)
                .map(|k| normals[corners[k] as usize] * nearest.weights[k])
                .sum();
            let normal = (theirs.try_normalize(0.0)? + end.normal).try_normalize(0.5)?;
            Some(normal.dot(&(nearest.point - end.at)).abs())
        })
        .collect()
}
