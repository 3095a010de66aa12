//! A surface of fewer triangles, to be looked at: vertices of one cell of a grid become one of
//! them (vertex clustering; Rossignac and Borrel 1993, from memory).

use hashbrown::HashMap;
use mesh::Mesh;
use nalgebra::Point3;

/// How much wider cells become until few enough triangles are left.
const WIDER: f64 = 1.15;

/// A mesh of at most `most` triangles whose vertices are some of those of `mesh`, with the
/// number of each there.
pub fn thinned(mesh: &Mesh, most: usize) -> (Mesh, Vec<u32>) {
    // About as many triangles as equilateral ones of that edge would be.
    let mut cell_mm = (mesh.area() / most.max(1) as f64 * 2.3).sqrt();
    loop {
        let kept = kept(mesh.vertices(), cell_mm);
        let triangles = triangles(mesh, &kept);
        if triangles.len() <= most || !cell_mm.is_finite() || cell_mm <= 0.0 {
            return gathered(mesh, &triangles);
        }
        cell_mm *= WIDER;
    }
}

/// For each vertex the one of its cell that lies nearest to the cell's middle.
fn kept(vertices: &[Point3<f64>], cell_mm: f64) -> Vec<u32> {
    let cell = |p: &Point3<f64>| <[i32; 3]>::from(p.coords.map(|c| (c / cell_mm).floor() as i32));
    let off = |p: &Point3<f64>| {
        let within = p.coords.map(|c| (c / cell_mm).rem_euclid(1.0) - 0.5);
        within.norm_squared()
    };
    let mut best: HashMap<[i32; 3], (f64, u32)> = HashMap::new();
    for (number, p) in (0u32..).zip(vertices) {
        let off = off(p);
        let found = best.entry(cell(p)).or_insert((off, number));
        if off < found.0 {
            *found = (off, number);
        }
    }
    vertices.iter().map(|p| best[&cell(p)].1).collect()
}

/// Triangles whose corners lie in three cells, each once.
fn triangles(mesh: &Mesh, kept: &[u32]) -> Vec<[u32; 3]> {
    let corners = mesh.triangles().iter();
    let moved = corners.map(|corners| corners.map(|v| kept[v as usize]));
    let mut seen = hashbrown::HashSet::new();
    moved
        .filter(|[a, b, c]| a != b && b != c && c != a)
        .filter(|&corners| {
            let mut sorted = corners;
            sorted.sort_unstable();
            seen.insert(sorted)
        })
        .collect()
}

/// A mesh of these triangles alone, and the number of each vertex in the mesh that they are of.
fn gathered(mesh: &Mesh, triangles: &[[u32; 3]]) -> (Mesh, Vec<u32>) {
    let mut own: Vec<u32> = triangles.iter().flatten().copied().collect();
    own.sort_unstable();
    own.dedup();
    let vertices = own.iter().map(|&v| mesh.vertices()[v as usize]).collect();
    let number = |v: &u32| own.binary_search(v).unwrap_or_default() as u32;
    let triangles = (triangles.iter())
        .map(|corners| corners.each_ref().map(number))
        .collect();
    let thinned = Mesh::new(vertices, triangles, None).unwrap_or_default();
    (thinned, own)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_thinned_surface_lies_on_the_surface_and_keeps_its_extent() {
        let points = phantom_sheet();
        let (thin, own) = thinned(&points, 2000);
        let count = thin.triangles().len();
        assert!((1000..=2000).contains(&count), "{count}");
        for (vertex, &number) in thin.vertices().iter().zip(&own) {
            assert_eq!(*vertex, points.vertices()[number as usize]);
        }
        let share = thin.area() / points.area();
        assert!((0.93..=1.0).contains(&share), "{share}");
        // No triangle faces the other way.
        assert!((0..count).all(|t| thin.area_vector(t).z > 0.0));
    }

    /// A plane of 20 000 triangles.
    fn phantom_sheet() -> Mesh {
        const SIDE: u32 = 101;
        let vertices = (0..SIDE * SIDE)
            .map(|n| Point3::new(f64::from(n % SIDE) * 0.3, f64::from(n / SIDE) * 0.3, 0.0))
            .collect();
        let squares = (0..SIDE * SIDE).filter(|n| n % SIDE + 1 < SIDE && n / SIDE + 1 < SIDE);
        let triangles = squares
            .flat_map(|n| [[n, n + 1, n + SIDE + 1], [n, n + SIDE + 1, n + SIDE]])
            .collect();
        Mesh::new(vertices, triangles, None).unwrap()
    }
}
