//! The scan's own noise, estimated from the surface.

use crate::order::robust_sd;
use mesh::Mesh;
use nalgebra::Vector3;

/// Mean over each vertex's neighbours, triangle by triangle: in the inside of a
/// manifold every neighbour counts twice, so none is favoured.
pub fn neighbour_means(mesh: &Mesh, values: &[Vector3<f64>]) -> Vec<Vector3<f64>> {
    let mut sums = vec![(Vector3::zeros(), 0.0); values.len()];
    for corners in mesh.triangles() {
        let [a, b, c] = corners.map(|v| values[v as usize]);
        let others = [b + c, c + a, a + b];
        for (&v, other) in corners.iter().zip(others) {
            let sum = &mut sums[v as usize];
            sum.0 += other;
            sum.1 += 2.0;
        }
    }
    sums.into_iter()
        .zip(values)
        .map(|((sum, count), &own)| if count > 0.0 { sum / count } else { own })
        .collect()
}

/// Standard deviation of independent noise along the normal, mm, of a whole
/// scan; see [`Heights`]. `None` without vertices.
#[must_use]
pub fn noise_mm(mesh: &Mesh) -> Option<f64> {
    let heights = Heights::of(mesh);
    heights.noise_mm(0..mesh.vertices().len())
}

/// Height of each vertex over its surroundings, in which position, slope and
/// curvature cancel: the twice-applied umbrella operator along the normal.
pub struct Heights(Vec<f64>);

impl Heights {
    /// The heights of a mesh's vertices.
    pub fn of(mesh: &Mesh) -> Self {
        // On a regular triangular lattice the operator's coefficients are 7/6
        // for the vertex, -5/18 for six neighbours, 1/36 and 1/18 for six each
        // of the next: the root of their squares' sum.
        const GAIN: f64 = 1.359;
        let places: Vec<Vector3<f64>> = mesh.vertices().iter().map(|p| p.coords).collect();
        let subtract = |values: &[Vector3<f64>]| -> Vec<Vector3<f64>> {
            neighbour_means(mesh, values)
                .iter()
                .zip(values)
                .map(|(mean, own)| own - mean)
                .collect()
        };
        let residuals = subtract(&subtract(&places));
        let normals = mesh.vertex_normals();
        let along = residuals.iter().zip(&normals);
        Self(along.map(|(r, normal)| r.dot(normal) / GAIN).collect())
    }

    /// Standard deviation of independent noise over some vertices, mm: the
    /// median of absolute heights, so that edges count for nothing. Noise that
    /// is alike at neighbouring vertices is underestimated. `None` without
    /// vertices.
    pub fn noise_mm(&self, of: impl IntoIterator<Item = usize>) -> Option<f64> {
        robust_sd(of.into_iter().map(|v| self.0[v]))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;
    use rand::{RngExt, SeedableRng};

    /// A wavy sheet of regular triangles, 0.25 mm edges, with known noise.
    #[test]
    fn known_noise_is_found_again_on_a_wavy_sheet() {
        let mut random = rand_pcg::Pcg64Mcg::seed_from_u64(7);
        for planted in [0.01, 0.02, 0.05] {
            let side = 120_u32;
            let mut vertices = Vec::new();
            for i in 0..side {
                for j in 0..side {
                    let x = 0.25 * (f64::from(j) + 0.5 * f64::from(i % 2));
                    let y = 0.25 * 0.75f64.sqrt() * f64::from(i);
                    // Sum of twelve uniform numbers: normal enough.
                    let normal: f64 = (0..12).map(|_| random.random::<f64>()).sum::<f64>() - 6.0;
                    vertices.push(Point3::new(x, y, (x / 4.0).sin() * 2.0 + planted * normal));
                }
            }
            let mut triangles = Vec::new();
            for i in 0..side - 1 {
                for j in 0..side - 1 {
                    let (a, b) = (i * side + j, i * side + j + 1);
                    let (c, d) = (a + side, b + side);
                    if i % 2 == 0 {
                        triangles.extend([[a, b, c], [b, d, c]]);
                    } else {
                        triangles.extend([[a, b, d], [a, d, c]]);
                    }
                }
            }
            let mesh = Mesh::new(vertices, triangles, None).expect("grid indices are in range");
            // Along the normal the planted noise is less by the slope's cosine.
            let found = noise_mm(&mesh).expect("there are vertices");
            assert!((found / planted - 0.93).abs() < 0.1, "{planted}: {found}");
        }
    }
}
