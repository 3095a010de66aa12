//! Lines on a surface along which a figure has one value: outlines of what
//! misses a limit, so that colour is never the only sign.

use mesh::Mesh;
use nalgebra::Point3;

/// The pieces of the line along which the figure at the vertices is `level`.
/// Triangles with a corner whose figure is not known have none.
#[must_use]
pub fn level_line(mesh: &Mesh, figures: &[Option<f32>], level: f64) -> Vec<[Point3<f64>; 2]> {
    mesh.triangles()
        .iter()
        .filter_map(|corners| {
            let figure = |corner: u32| figures.get(corner as usize).copied().flatten();
            let mut ends = Vec::with_capacity(2);
            for (a, b) in [(0, 1), (1, 2), (2, 0)] {
                let (a, b) = (corners[a], corners[b]);
                let off_a = f64::from(figure(a)?) - level;
                let off_b = f64::from(figure(b)?) - level;
                if (off_a < 0.0) != (off_b < 0.0) {
                    let (p, q) = (mesh.vertices()[a as usize], mesh.vertices()[b as usize]);
                    ends.push(p + (q - p) * (off_a / (off_a - off_b)));
                }
            }
            ends.try_into().ok()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_line_lies_where_the_figure_is_the_limit() {
        let corner = |x: f64, y: f64| Point3::new(x, y, 0.0);
        let mesh = Mesh::new(
            vec![
                corner(0.0, 0.0),
                corner(4.0, 0.0),
                corner(4.0, 4.0),
                corner(0.0, 4.0),
            ],
            vec![[0, 1, 2], [0, 2, 3]],
            None,
        )
        .unwrap();
        // The figure is x / 4.
        let figures = [Some(0.0), Some(1.0), Some(1.0), Some(0.0)];
        let pieces = level_line(&mesh, &figures, 0.25);
        assert_eq!(pieces.len(), 2);
        let length: f64 = pieces.iter().map(|[p, q]| (q - p).norm()).sum();
        assert!((length - 4.0).abs() < 1e-9);
        assert!(pieces.iter().flatten().all(|p| (p.x - 1.0).abs() < 1e-9));
        let unknown = [Some(0.0), Some(1.0), None, Some(0.0)];
        assert!(level_line(&mesh, &unknown, 0.25).is_empty());
    }
}
