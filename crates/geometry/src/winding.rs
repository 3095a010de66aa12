//! Which way triangles face: mended where a scan, or a part of it, is inside out.

use mesh::{Mesh, Topology};

/// Mean outward normal, as a share of the area, below which a scan is closed but
/// for holes: its volume then has a meaning, and with it its outside.
const NEARLY_CLOSED: f64 = 0.1;

/// What was turned so that a scan faces outward.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Turned {
    /// Triangles that faced the other way than their neighbours.
    pub against_neighbours: usize,
    /// Whether the whole scan was inside out. A scan that software mirrored
    /// without turning its triangles looks just so.
    pub whole: bool,
}

impl Turned {
    /// What was done, in words; `None` where nothing was.
    #[must_use]
    pub fn in_words(&self) -> Option<String> {
        let against = (self.against_neighbours > 0).then(|| {
            format!(
                "{} triangles faced the other way than their neighbours and were turned",
                self.against_neighbours
            )
        });
        let whole = self.whole.then(|| {
            "the scan was inside out and was turned; if software has mirrored it, right and left \
             are exchanged"
                .to_owned()
        });
        match (against, whole) {
            (Some(against), Some(whole)) => Some(format!("{against}; {whole}")),
            (against, whole) => against.or(whole),
        }
    }
}

/// A mesh whose triangles face as their neighbours do, and outward if it is
/// closed or nearly so; and what had to be turned. An open surface faces the
/// way that most of it did.
#[must_use]
pub fn righted(mesh: &Mesh, topology: &Topology) -> (Mesh, Turned) {
    let against = if topology.misoriented_edges() > 0 {
        against_neighbours(mesh, topology)
    } else {
        Vec::new()
    };
    let mut righted = if against.iter().any(|&turn| turn) {
        with_turned(mesh, &against)
    } else {
        mesh.clone()
    };
    let whole = is_inside_out(&righted, topology);
    if whole {
        righted = righted.turned_inside_out();
    }
    let turned = Turned {
        against_neighbours: against.iter().filter(|&&turn| turn).count(),
        whole,
    };
    (righted, turned)
}

fn is_inside_out(mesh: &Mesh, topology: &Topology) -> bool {
    let normal: nalgebra::Vector3<f64> = (0..mesh.triangles().len())
        .map(|t| mesh.area_vector(t))
        .sum();
    let closed = topology.is_closed() || normal.norm() < NEARLY_CLOSED * mesh.area();
    closed && mesh.signed_volume() < 0.0
}

/// For each triangle whether it must be turned to face as most of its connected
/// part does.
fn against_neighbours(mesh: &Mesh, topology: &Topology) -> Vec<bool> {
    let triangles = mesh.triangles();
    let mut turned: Vec<Option<bool>> = vec![None; triangles.len()];
    let mut part = Vec::new();
    for start in 0..triangles.len() {
        if turned[start].is_some() {
            continue;
        }
        turned[start] = Some(false);
        part.clear();
        part.push(start);
        let mut next = 0;
        while let Some(&here) = part.get(next) {
            next += 1;
            for there in topology.neighbours(here) {
                if turned[there].is_none() {
                    let against = face_against(triangles[here], triangles[there]);
                    turned[there] = turned[here].map(|own| own != against);
                    part.push(there);
                }
            }
        }
        // Of two ways to agree, the one that turns less surface.
        let area = |way: bool| -> f64 {
            part.iter()
                .filter(|&&t| turned[t] == Some(way))
                .map(|&t| mesh.area_vector(t).norm())
                .sum()
        };
        if area(true) > area(false) {
            for &t in &part {
                turned[t] = turned[t].map(|own| !own);
            }
        }
    }
    turned.into_iter().map(|own| own == Some(true)).collect()
}

/// Whether two triangles run along their common edge in the same sense, as
/// neighbours do that face opposite sides.
fn face_against(one: [u32; 3], other: [u32; 3]) -> bool {
    let edges = |[a, b, c]: [u32; 3]| [(a, b), (b, c), (c, a)];
    edges(one).iter().any(|edge| edges(other).contains(edge))
}

fn with_turned(mesh: &Mesh, turn: &[bool]) -> Mesh {
    let triangles = mesh
        .triangles()
        .iter()
        .zip(turn)
        .map(|(&[a, b, c], &turn)| if turn { [a, c, b] } else { [a, b, c] })
        .collect();
    Mesh::new(
        mesh.vertices().to_vec(),
        triangles,
        mesh.colours().map(<[_]>::to_vec),
    )
    .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    /// A box of 3 by 2 by 1, twelve triangles outward.
    fn cuboid() -> Mesh {
        let vertices = (0..8)
            .map(|k| {
                let bit = |axis: i32| f64::from((k >> axis) & 1);
                Point3::new(3.0 * bit(0), 2.0 * bit(1), bit(2))
            })
            .collect();
        let quads = [
            [0, 2, 3, 1],
            [4, 5, 7, 6],
            [0, 1, 5, 4],
            [2, 6, 7, 3],
            [0, 4, 6, 2],
            [1, 3, 7, 5],
        ];
        let triangles = quads
            .into_iter()
            .flat_map(|[a, b, c, d]| [[a, b, c], [a, c, d]])
            .collect();
        Mesh::new(vertices, triangles, None).expect("indices are in range")
    }

    fn righted(mesh: &Mesh) -> (Mesh, Turned) {
        super::righted(mesh, &Topology::of(mesh))
    }

    #[test]
    fn what_is_right_stays() {
        let (mesh, turned) = righted(&cuboid());
        assert_eq!((mesh.signed_volume(), turned), (6.0, Turned::default()));
    }

    #[test]
    fn inside_out_is_turned_closed_or_with_a_hole() {
        let (mesh, turned) = righted(&cuboid().turned_inside_out());
        assert!(turned.whole && turned.against_neighbours == 0);
        assert_eq!(mesh.signed_volume(), 6.0);
        let pierced = cuboid().turned_inside_out().filtered(|t| t != 4);
        assert!(righted(&pierced).1.whole);
    }

    #[test]
    fn triangles_against_their_neighbours_are_turned() {
        let turn: Vec<bool> = (0..12).map(|t| t % 4 == 1).collect();
        for mesh in [
            with_turned(&cuboid(), &turn),
            with_turned(&cuboid().turned_inside_out(), &turn),
        ] {
            let (mended, turned) = righted(&mesh);
            assert_eq!(turned.against_neighbours, 3);
            assert_eq!(mended.signed_volume(), 6.0);
            assert_eq!(Topology::of(&mended).misoriented_edges(), 0);
        }
    }
}
