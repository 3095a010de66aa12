//! Points that keep a distance from each other, with smooth normals.

use crate::sampling::SurfacePoint;
use nalgebra::{Point3, Unit, Vector3};
use std::collections::BTreeMap;

/// Points in cubes as wide as the distance that is asked about.
struct Grid {
    cell: f64,
    cells: BTreeMap<[i64; 3], Vec<SurfacePoint>>,
}

impl Grid {
    fn new(cell: f64) -> Self {
        Self {
            cell,
            cells: BTreeMap::new(),
        }
    }

    fn add(&mut self, added: SurfacePoint) {
        let cell = self.cell_of(&added.point);
        self.cells.entry(cell).or_default().push(added);
    }

    /// The points within a cell's width of one, on the same face of a shell.
    fn around<'a>(&'a self, at: &'a SurfacePoint) -> impl Iterator<Item = &'a SurfacePoint> {
        let [x, y, z] = self.cell_of(&at.point);
        // Cells that differ in z alone stand next to each other in the map.
        (x - 1..=x + 1)
            .flat_map(move |x| (y - 1..=y + 1).map(move |y| (x, y)))
            .flat_map(move |(x, y)| self.cells.range([x, y, z - 1]..=[x, y, z + 1]))
            .flat_map(|(_, points)| points)
            .filter(|other| {
                (other.point - at.point).norm_squared() < self.cell * self.cell
                    && other.normal.dot(&at.normal) > 0.0
            })
    }

    fn cell_of(&self, p: &Point3<f64>) -> [i64; 3] {
        /// Cells are counted so far, so that the next one can be named too.
        const FARTHEST: f64 = 1e18;
        [p.x, p.y, p.z].map(|c| (c / self.cell).floor().clamp(-FARTHEST, FARTHEST) as i64)
    }
}

/// As many of the points as keep `spacing` (mm) from each other, those on
/// opposite faces of a shell apart. Their normals are means over the same
/// distance, so that scanner noise, which tilts a fine triangle by many
/// degrees, tilts them by few.
pub fn evenly_apart(points: &[SurfacePoint], spacing: f64) -> Vec<SurfacePoint> {
    let (mut all, mut chosen) = (Grid::new(spacing), Grid::new(spacing));
    let mut apart = Vec::new();
    for &point in points {
        all.add(point);
        if chosen.around(&point).next().is_none() {
            chosen.add(point);
            apart.push(point);
        }
    }
    for point in &mut apart {
        let sum: Vector3<f64> = all.around(point).map(|p| p.normal.into_inner()).sum();
        point.normal = Unit::try_new(sum, 0.0).unwrap_or(point.normal);
    }
    apart
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A level square of 40 x 40 mm in points 0.4 mm apart, normals tilted by
    /// 20 degrees in turn to all four sides.
    fn rough_square(z: f64, up: f64) -> impl Iterator<Item = SurfacePoint> {
        (0..100 * 100).map(move |i| {
            let tilt = 20f64.to_radians().tan();
            let (x, y) = (i % 100, i / 100);
            let lean = [(tilt, 0.0), (0.0, tilt), (-tilt, 0.0), (0.0, -tilt)][(x + 2 * y) % 4];
            SurfacePoint {
                point: Point3::new(0.4 * x as f64, 0.4 * y as f64, z),
                normal: Unit::new_normalize(Vector3::new(lean.0, lean.1, up)),
            }
        })
    }

    #[test]
    fn points_keep_their_distance_and_leave_no_gap() {
        let all: Vec<SurfacePoint> = rough_square(0.0, 1.0).collect();
        let apart = evenly_apart(&all, 3.0);
        let nearest = |from: &SurfacePoint, others: &mut dyn Iterator<Item = &SurfacePoint>| {
            others
                .map(|other| (other.point - from.point).norm())
                .fold(f64::INFINITY, f64::min)
        };
        for (i, point) in apart.iter().enumerate() {
            let mut others = apart[..i].iter().chain(&apart[i + 1..]);
            assert!(nearest(point, &mut others) >= 3.0);
        }
        for point in &all {
            assert!(nearest(point, &mut apart.iter()) < 3.0);
        }
    }

    #[test]
    fn rough_normals_are_smoothed_to_the_surfaces_own() {
        let all: Vec<SurfacePoint> = rough_square(0.0, 1.0).collect();
        for point in evenly_apart(&all, 3.0) {
            assert!(point.normal.angle(&Vector3::z()) < 3f64.to_radians());
        }
    }

    #[test]
    fn the_two_faces_of_a_thin_shell_are_told_apart() {
        let all: Vec<SurfacePoint> = rough_square(0.0, 1.0)
            .chain(rough_square(-1.0, -1.0))
            .collect();
        let apart = evenly_apart(&all, 3.0);
        let above = apart.iter().filter(|p| p.normal.z > 0.99).count();
        let below = apart.iter().filter(|p| p.normal.z < -0.99).count();
        assert_eq!(above + below, apart.len());
        assert_eq!(above, below);
    }

    #[test]
    fn no_distance_at_all_is_no_panic() {
        let all: Vec<SurfacePoint> = rough_square(0.0, 1.0).take(5).collect();
        assert_eq!(evenly_apart(&all, 0.0).len(), 5);
    }
}
