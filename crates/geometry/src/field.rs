//! Values at the vertices of a mesh: what area each stands for, how they are
//! smoothed, and their quantiles by area.

use crate::order::median;
use mesh::Mesh;
use nalgebra::Vector3;

/// A third of the area of the triangles round each vertex, mm², of those that
/// `chosen` accepts: the surface that the vertex stands for.
#[must_use]
pub fn vertex_areas(mesh: &Mesh, chosen: impl Fn(usize) -> bool) -> Vec<f64> {
    let mut areas = vec![0.0; mesh.vertices().len()];
    for (t, corners) in mesh.triangles().iter().enumerate() {
        if chosen(t) {
            let third = mesh.area_vector(t).norm() / 3.0;
            for &v in corners {
                areas[v as usize] += third;
            }
        }
    }
    areas
}

/// Values at vertices averaged with their neighbours' so many times, so that a
/// patch's least cover is not its noisiest point. Vertices without a value
/// neither give nor get one.
#[must_use]
pub fn smoothed(mesh: &Mesh, values: &[Option<f64>], rounds: usize) -> Vec<Option<f64>> {
    let mut values = values.to_vec();
    for _ in 0..rounds {
        let mut sums = vec![(0.0, 0.0); values.len()];
        for corners in mesh.triangles() {
            if let [Some(a), Some(b), Some(c)] = corners.map(|v| values[v as usize]) {
                for &v in corners {
                    sums[v as usize].0 += a + b + c;
                    sums[v as usize].1 += 3.0;
                }
            }
        }
        for (value, (sum, weight)) in values.iter_mut().zip(sums) {
            if weight > 0.0 && value.is_some() {
                *value = Some(sum / weight);
            }
        }
    }
    values
}

/// The median of each vertex's value and its neighbours': a single vertex that stands out is
/// gone, a step stays. Vertices without a value neither give nor get one.
#[must_use]
pub fn neighbour_medians(mesh: &Mesh, values: &[Option<f64>]) -> Vec<Option<f64>> {
    // Each edge inside a surface is met from one side by each of its two vertices.
    let mut around: Vec<Vec<f64>> = values
        .iter()
        .map(|own| own.iter().copied().collect())
        .collect();
    for corners in mesh.triangles() {
        for k in 0..3 {
            let [own, next] = [corners[k], corners[(k + 1) % 3]].map(|v| v as usize);
            if values[own].is_some() {
                around[own].extend(values[next]);
            }
        }
    }
    around.iter_mut().map(|values| median(values)).collect()
}

/// How many times values at vertices are averaged with their neighbours' to
/// smooth over about half a millimetre.
#[must_use]
pub fn smoothing_rounds(edge_mm: f64) -> usize {
    const REACH_MM: f64 = 0.5;
    const MOST_ROUNDS: f64 = 4.0;
    (REACH_MM / edge_mm.max(f64::MIN_POSITIVE))
        .round()
        .min(MOST_ROUNDS) as usize
}

/// Unit vertex normals averaged with their neighbours' so many times.
#[must_use]
pub fn smoothed_normals(mesh: &Mesh, rounds: usize) -> Vec<Vector3<f64>> {
    let mut normals = mesh.vertex_normals();
    for _ in 0..rounds {
        let mut sums = vec![Vector3::zeros(); normals.len()];
        for corners in mesh.triangles() {
            let sum: Vector3<f64> = corners.iter().map(|&v| normals[v as usize]).sum();
            for &v in corners {
                sums[v as usize] += sum;
            }
        }
        for (normal, sum) in normals.iter_mut().zip(sums) {
            *normal = sum.try_normalize(0.0).unwrap_or_default();
        }
    }
    normals
}

/// Quantiles of values that each stand for an area; `None` without area.
#[must_use]
pub fn quantile(weighted: &mut [(f64, f64)], part: f64) -> Option<f64> {
    weighted.sort_by(|a, b| a.0.total_cmp(&b.0));
    let total: f64 = weighted.iter().map(|w| w.1).sum();
    let mut passed = 0.0;
    weighted.iter().find_map(|&(value, weight)| {
        passed += weight;
        (passed >= part * total).then_some(value)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    #[test]
    fn a_single_vertex_that_stands_out_is_gone_and_a_step_stays() {
        let at = |i: u32, j: u32| Point3::new(f64::from(i), f64::from(j), 0.0);
        let vertices = (0..9).flat_map(|i| (0..9).map(move |j| at(i, j)));
        let squares = (0..8).flat_map(|i| (0..8).map(move |j| 9 * i + j));
        let triangles = squares.flat_map(|a: u32| [[a, a + 9, a + 10], [a, a + 10, a + 1]]);
        let sheet = Mesh::new(vertices.collect(), triangles.collect(), None);
        let sheet = sheet.expect("indices are in range");
        let step: Vec<Option<f64>> = (0..81).map(|v| Some(f64::from(v / 9 / 5))).collect();
        let mut spiked = step.clone();
        spiked[20] = Some(7.0);
        spiked[80] = None;
        let even = neighbour_medians(&sheet, &spiked);
        assert_eq!(even[20], Some(0.0));
        assert_eq!(even[80], None);
        // At its edge the sheet is seen from one side alone.
        let inside = (0..81).filter(|v| (1..8).contains(&(v % 9)) && (1..8).contains(&(v / 9)));
        for v in inside {
            assert_eq!(even[v], step[v], "{v}");
        }
    }
}
