//! The open edges that a cut leaves, and which of them run along each other.

use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector3};
use rayon::prelude::*;

/// Edges left by a cut lie within this of each other, mm: the cut, and a triangle's length
/// of both parts.
const EDGES_WITHIN_MM: f64 = 4.5;
/// Shorter stretches of an edge are no cut, mm.
pub const SHORTEST_CUT_MM: f64 = 5.0;

/// A point of an open edge.
#[derive(Clone, Copy)]
pub(super) struct EdgePoint {
    pub vertex: u32,
    pub at: Point3<f64>,
    pub normal: Vector3<f64>,
}

/// An open edge of a mesh, closed in itself.
pub(super) type Edge = Vec<EdgePoint>;

/// The open edges of a mesh.
pub(super) fn edges(mesh: &Mesh) -> Vec<Edge> {
    let normals = mesh.vertex_normals();
    let loops = Topology::of(mesh);
    let point = |&vertex: &u32| EdgePoint {
        vertex,
        at: mesh.vertices()[vertex as usize],
        normal: normals[vertex as usize],
    };
    (loops.boundary_loops().iter())
        .map(|chain| chain.iter().map(point).collect())
        .collect()
}

/// A stretch of an edge.
#[derive(Clone)]
pub(super) struct Stretch {
    pub points: Vec<EdgePoint>,
    pub is_closed: bool,
}

impl Stretch {
    fn length_mm(&self) -> f64 {
        let steps = self.points.windows(2).map(|p| (p[1].at - p[0].at).norm());
        steps.sum()
    }
}

/// Stretches of the edges of one part, each with that of another that runs along it.
pub(super) fn facing(one: &[Edge], other: &[Edge]) -> Vec<(Stretch, Stretch)> {
    let [own, theirs] = [(one, other), (other, one)].map(|(edges, beside)| {
        let stretches = edges.iter().flat_map(|edge| near(edge, beside));
        let long = stretches.filter(|stretch| stretch.length_mm() >= SHORTEST_CUT_MM);
        long.collect::<Vec<Stretch>>()
    });
    let mut pairs: Vec<(f64, usize, usize)> = (0..own.len())
        .flat_map(|a| (0..theirs.len()).map(move |b| (a, b)))
        .map(|(a, b)| (apart_mm(&own[a], &theirs[b]), a, b))
        .filter(|(off_mm, ..)| *off_mm <= EDGES_WITHIN_MM)
        .collect();
    pairs.sort_by(|one, other| one.0.total_cmp(&other.0));
    // Each stretch belongs to one cut: to the nearest that is left.
    let mut taken = [vec![false; own.len()], vec![false; theirs.len()]];
    let mut facing = Vec::new();
    for (_, a, b) in pairs {
        if !taken[0][a] && !taken[1][b] {
            [taken[0][a], taken[1][b]] = [true, true];
            facing.push((own[a].clone(), theirs[b].clone()));
        }
    }
    facing
}

fn off_mm(at: &Point3<f64>, points: &[EdgePoint]) -> f64 {
    let squares = points.iter().map(|p| (p.at - at).norm_squared());
    squares.fold(f64::INFINITY, f64::min).sqrt()
}

/// How far two stretches run from each other, mm, by that of the two whose points lie
/// farther from the other: a crumb's edge lies near a cut's, but not the cut's near it.
fn apart_mm(one: &Stretch, other: &Stretch) -> f64 {
    mean_off_mm(one, other).max(mean_off_mm(other, one))
}

fn mean_off_mm(one: &Stretch, other: &Stretch) -> f64 {
    let every = (one.points.len() / 50).max(1);
    let sampled = one.points.iter().step_by(every);
    let off: Vec<f64> = sampled.map(|p| off_mm(&p.at, &other.points)).collect();
    off.iter().sum::<f64>() / off.len().max(1) as f64
}

/// The stretches of a closed edge that lie near others.
fn near(edge: &Edge, others: &[Edge]) -> Vec<Stretch> {
    let is_near: Vec<bool> = (edge.par_iter())
        .map(|p| {
            others
                .iter()
                .any(|other| off_mm(&p.at, other) <= EDGES_WITHIN_MM)
        })
        .collect();
    let Some(start) = is_near.iter().position(|near| !near) else {
        return vec![Stretch {
            points: edge.clone(),
            is_closed: true,
        }];
    };
    // From a point that is far on, so that no stretch is broken at the end.
    let around: Vec<usize> = (0..edge.len()).map(|k| (start + k) % edge.len()).collect();
    (around.chunk_by(|&a, &b| is_near[a] == is_near[b]))
        .filter(|run| is_near[run[0]])
        .map(|run| Stretch {
            points: run.iter().map(|&k| edge[k]).collect(),
            is_closed: false,
        })
        .collect()
}
