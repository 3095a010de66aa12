//! The faces of a cut: where the parts on either side of it look at each other.

use mesh::{Mesh, SpatialIndex, Topology};
use nalgebra::Point3;

/// A cut, with the play of both parts, is no wider than this, mm.
pub(super) const WIDEST_CUT_MM: f64 = 3.0;
/// Faces of a cut look at each other: greatest cosine between their normals.
pub(super) const OPPOSED: f64 = -0.8;
/// Surface of one part that lies on another's like this, mm, and faces the same way, is
/// shown twice.
const SAME_WITHIN_MM: f64 = 0.3;
const ALIKE: f64 = 0.9;

/// How a part lies beside the others.
pub(super) struct Beside {
    /// Which of its triangles are the face of a cut.
    pub is_cut: Vec<bool>,
    /// The others that show its surface again, with the share of the smaller one's area.
    pub shown_twice: Vec<(usize, f64)>,
}

impl Beside {
    pub(super) fn of(part: usize, parts: &[Mesh], indices: &[SpatialIndex]) -> Self {
        let own = &parts[part];
        let middles: Vec<Point3<f64>> = (0..own.triangles().len())
            .map(|t| {
                let [a, b, c] = own.corners(t).map(|p| p.coords);
                Point3::from((a + b + c) / 3.0)
            })
            .collect();
        let mut is_cut = vec![false; middles.len()];
        let mut shown_twice = Vec::new();
        for other in (0..parts.len()).filter(|&other| other != part) {
            let nearest = indices[other].nearest_many(&middles, WIDEST_CUT_MM);
            let mut twice_mm2 = 0.0;
            for (t, nearest) in nearest.iter().enumerate() {
                let Some(nearest) = nearest else { continue };
                let theirs = parts[other].area_vector(nearest.triangle as usize);
                let area = own.area_vector(t);
                let cosine = area.dot(&theirs) / (area.norm() * theirs.norm());
                let off = nearest.point - middles[t];
                if cosine > ALIKE && off.norm() < SAME_WITHIN_MM {
                    twice_mm2 += area.norm();
                }
                let ahead = off.dot(&area) / area.norm();
                is_cut[t] |=
                    cosine < OPPOSED && (ahead > 0.7 * off.norm() || off.norm() < SAME_WITHIN_MM);
            }
            let smaller_mm2 = own.area().min(parts[other].area());
            shown_twice.push((other, twice_mm2 / smaller_mm2));
        }
        Self {
            is_cut: tidied(own, is_cut),
            shown_twice,
        }
    }
}

/// The faces of a cut without the crumbs at their edges: what is nearly surrounded by them,
/// and what they cut off.
fn tidied(part: &Mesh, mut is_cut: Vec<bool>) -> Vec<bool> {
    const ROUNDS: usize = 4;
    /// A piece smaller than this share of the part's triangles is a crumb.
    const CRUMB: usize = 50;
    let topology = Topology::of(part);
    for _ in 0..ROUNDS {
        let more: Vec<usize> = (0..is_cut.len())
            .filter(|&t| !is_cut[t] && topology.neighbours(t).filter(|&n| is_cut[n]).count() >= 2)
            .collect();
        for t in more {
            is_cut[t] = true;
        }
    }
    let (label, count) = topology.parts(|a, b| is_cut[a] == is_cut[b]);
    let mut sizes = vec![0; count];
    let mut touches_cut = vec![false; count];
    for (t, &own) in label.iter().enumerate() {
        sizes[own as usize] += 1;
        touches_cut[own as usize] |= topology.neighbours(t).any(|n| is_cut[n]);
    }
    (0..is_cut.len())
        .map(|t| {
            let own = label[t] as usize;
            is_cut[t] || (touches_cut[own] && sizes[own] * CRUMB < is_cut.len())
        })
        .collect()
}
