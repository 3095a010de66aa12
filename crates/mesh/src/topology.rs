//! How triangles hang together: a compact edge table, made for scans, which
//! are rarely manifold.

use crate::Mesh;

/// Marks the absence of a neighbour.
const NONE: u32 = u32::MAX;

/// Neighbours, boundary loops, connected parts and faults of a mesh.
#[derive(Debug, Clone)]
pub struct Topology {
    across_edge: Vec<[u32; 3]>,
    boundary_loops: Vec<Vec<u32>>,
    component_of_triangle: Vec<u32>,
    components: usize,
    non_manifold_edges: usize,
    misoriented_edges: usize,
    boundary_edges: usize,
}

impl Topology {
    /// The topology of a mesh.
    #[must_use]
    pub fn of(mesh: &Mesh) -> Self {
        let triangles = mesh.triangles();
        let half_edges = half_edges_by_edge(mesh);
        let mut across_edge = vec![[NONE; 3]; triangles.len()];
        let mut boundary = Vec::new();
        let (mut non_manifold_edges, mut misoriented_edges) = (0, 0);
        for edge in half_edges.chunk_by(|a, b| a.0 == b.0) {
            match edge {
                [(_, only)] => boundary.push(*only),
                [(_, one), (_, other)] => {
                    let [(t, k), (u, l)] = [*one, *other].map(|h| (h as usize / 3, h as usize % 3));
                    across_edge[t][k] = u as u32;
                    across_edge[u][l] = t as u32;
                    if triangles[t][k] == triangles[u][l] {
                        misoriented_edges += 1;
                    }
                }
                _ => non_manifold_edges += 1,
            }
        }
        let (component_of_triangle, components) = connected_parts(&across_edge, |_, _| true);
        Self {
            boundary_loops: loops(triangles, &boundary),
            boundary_edges: boundary.len(),
            across_edge,
            component_of_triangle,
            components,
            non_manifold_edges,
            misoriented_edges,
        }
    }

    /// The triangle across each of a triangle's edges (edge k runs from corner
    /// k to the next); `None` at a boundary or a non-manifold edge.
    pub fn neighbours(&self, triangle: usize) -> impl Iterator<Item = usize> + '_ {
        self.across_edge[triangle]
            .iter()
            .filter(|&&n| n != NONE)
            .map(|&n| n as usize)
    }

    /// Vertex numbers along each boundary, longest first.
    #[must_use]
    pub fn boundary_loops(&self) -> &[Vec<u32>] {
        &self.boundary_loops
    }

    /// Number of the connected part (through shared edges) of each triangle.
    #[must_use]
    pub fn component_of_triangle(&self) -> &[u32] {
        &self.component_of_triangle
    }

    /// Number of connected parts.
    #[must_use]
    pub fn components(&self) -> usize {
        self.components
    }

    /// Edges that three or more triangles share.
    #[must_use]
    pub fn non_manifold_edges(&self) -> usize {
        self.non_manifold_edges
    }

    /// Edges that two triangles run along in the same sense: one of the two is inside out.
    #[must_use]
    pub fn misoriented_edges(&self) -> usize {
        self.misoriented_edges
    }

    /// Whether every edge belongs to exactly two triangles.
    #[must_use]
    pub fn is_closed(&self) -> bool {
        self.boundary_edges == 0 && self.non_manifold_edges == 0
    }

    /// Labels triangles by connected part, crossing only edges between
    /// triangles that `joined` accepts. Gives a label per triangle, numbered in
    /// order of the lowest triangle of each part, and how many there are.
    #[must_use]
    pub fn parts(&self, joined: impl Fn(usize, usize) -> bool) -> (Vec<u32>, usize) {
        connected_parts(&self.across_edge, joined)
    }
}

/// One entry per half-edge, those of one edge together: the undirected edge as a key, then
/// which corner of which triangle it starts from. In ascending order, by counting how many
/// leave each vertex.
fn half_edges_by_edge(mesh: &Mesh) -> Vec<(u64, u32)> {
    let half_edges = || {
        mesh.triangles()
            .iter()
            .enumerate()
            .flat_map(|(t, corners)| {
                (0..3).filter_map(move |k| {
                    let (a, b) = (corners[k], corners[(k + 1) % 3]);
                    let edge = (u64::from(a.min(b)) << 32) | u64::from(a.max(b));
                    (a != b).then_some((edge, (t * 3 + k) as u32))
                })
            })
    };
    let lower_end = |edge: u64| (edge >> 32) as usize;
    let mut next = vec![0_u32; mesh.vertices().len() + 1];
    for (edge, _) in half_edges() {
        next[lower_end(edge) + 1] += 1;
    }
    for vertex in 1..next.len() {
        next[vertex] += next[vertex - 1];
    }
    let mut sorted = vec![(0, 0); next[next.len() - 1] as usize];
    for half_edge in half_edges() {
        let place = &mut next[lower_end(half_edge.0)];
        sorted[*place as usize] = half_edge;
        *place += 1;
    }
    for of_one_vertex in sorted.chunk_by_mut(|a, b| lower_end(a.0) == lower_end(b.0)) {
        of_one_vertex.sort_unstable();
    }
    sorted
}

fn connected_parts(
    across_edge: &[[u32; 3]],
    joined: impl Fn(usize, usize) -> bool,
) -> (Vec<u32>, usize) {
    let mut label = vec![NONE; across_edge.len()];
    let mut parts = 0;
    let mut open = Vec::new();
    for start in 0..across_edge.len() {
        if label[start] != NONE {
            continue;
        }
        label[start] = parts;
        open.push(start);
        while let Some(t) = open.pop() {
            for &n in &across_edge[t] {
                if n != NONE && label[n as usize] == NONE && joined(t, n as usize) {
                    label[n as usize] = parts;
                    open.push(n as usize);
                }
            }
        }
        parts += 1;
    }
    (label, parts as usize)
}

/// Strings boundary half-edges (coded as triangle * 3 + corner) into vertex
/// loops. Where a triangle is inside out, its edge is walked the other way.
fn loops(triangles: &[[u32; 3]], boundary: &[u32]) -> Vec<Vec<u32>> {
    let mut edges: Vec<(u32, u32)> = boundary
        .iter()
        .map(|&h| {
            let (t, k) = (h as usize / 3, h as usize % 3);
            (triangles[t][k], triangles[t][(k + 1) % 3])
        })
        .collect();
    edges.sort_unstable();
    // The edges at each vertex, those that leave it first.
    let mut ends: Vec<(u32, bool, usize)> = edges
        .iter()
        .enumerate()
        .flat_map(|(i, &(from, to))| [(from, false, i), (to, true, i)])
        .collect();
    ends.sort_unstable();
    let mut used = vec![false; edges.len()];
    let mut loops: Vec<Vec<u32>> = Vec::new();
    for first in 0..edges.len() {
        let mut chain = Vec::new();
        let mut vertex = edges[first].0;
        let mut next = Some(first).filter(|&i| !used[i]);
        while let Some(edge) = next {
            used[edge] = true;
            chain.push(vertex);
            let (from, to) = edges[edge];
            vertex = if vertex == from { to } else { from };
            let start = ends.partition_point(|end| end.0 < vertex);
            next = ends[start..]
                .iter()
                .take_while(|end| end.0 == vertex)
                .map(|end| end.2)
                .find(|&i| !used[i]);
        }
        if !chain.is_empty() {
            loops.push(chain);
        }
    }
    loops.sort_by_key(|chain| (std::cmp::Reverse(chain.len()), chain[0]));
    loops
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    fn tetrahedron() -> Mesh {
        let vertices = [[0., 0., 0.], [1., 0., 0.], [0., 1., 0.], [0., 0., 1.]];
        Mesh::new(
            vertices.map(Point3::from).to_vec(),
            vec![[0, 2, 1], [0, 1, 3], [1, 2, 3], [0, 3, 2]],
            None,
        )
        .expect("indices are in range")
    }

    #[test]
    fn a_tetrahedron_is_closed_and_has_the_volume_of_its_formula() {
        let mesh = tetrahedron();
        let topology = Topology::of(&mesh);
        assert!(topology.is_closed());
        assert_eq!(topology.components(), 1);
        assert_eq!(topology.boundary_loops().len(), 0);
        assert!((mesh.signed_volume() - 1.0 / 6.0).abs() < 1e-15);
        assert!((mesh.area() - (1.5 + 3f64.sqrt() / 2.0)).abs() < 1e-15);
    }

    #[test]
    fn a_missing_triangle_leaves_one_boundary_loop_of_three() {
        let topology = Topology::of(&tetrahedron().filtered(|t| t != 2));
        assert!(!topology.is_closed());
        assert_eq!(topology.boundary_loops().len(), 1);
        assert_eq!(topology.boundary_loops()[0].len(), 3);
    }

    #[test]
    fn a_triangle_inside_out_does_not_break_its_boundary_loop() {
        let square = [[0., 0., 0.], [1., 0., 0.], [1., 1., 0.], [0., 1., 0.]];
        let mesh = Mesh::new(
            square.map(Point3::from).to_vec(),
            vec![[0, 1, 2], [0, 3, 2]],
            None,
        )
        .expect("indices are in range");
        let topology = Topology::of(&mesh);
        assert_eq!(topology.misoriented_edges(), 1);
        assert_eq!(topology.boundary_loops().len(), 1);
        assert_eq!(topology.boundary_loops()[0].len(), 4);
    }

    #[test]
    fn three_triangles_on_one_edge_are_counted_and_not_joined() {
        let vertices = [
            [0., 0., 0.],
            [0., 0., 1.],
            [1., 0., 0.],
            [-1., 0., 0.],
            [0., 1., 0.],
        ];
        let mesh = Mesh::new(
            vertices.map(Point3::from).to_vec(),
            vec![[0, 1, 2], [0, 1, 3], [0, 1, 4]],
            None,
        )
        .expect("indices are in range");
        let topology = Topology::of(&mesh);
        assert_eq!(topology.non_manifold_edges(), 1);
        assert_eq!(topology.components(), 3);
    }
}
