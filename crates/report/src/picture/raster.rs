//! Which triangle shows at each pixel: a depth buffer, without perspective.

use super::camera::Camera;
use super::runs::Run;
use mesh::Mesh;
use nalgebra::Point3;
use std::ops::Range;

/// A picture's pixels, each with the triangle nearest to whoever looks.
pub struct Raster {
    width: usize,
    height: usize,
    /// Toward whoever looks, mm; minus infinity where nothing is.
    depth: Vec<f32>,
    triangle: Vec<u32>,
    /// Vertices of the mesh: to the right and down, px; toward, mm. No numbers
    /// where none of a vertex's triangles may show.
    places: Vec<[f32; 3]>,
}

/// What a pixel shows: the corners of a triangle, and the weight of each.
pub struct Seen {
    pub corners: [usize; 3],
    pub weights: [f32; 3],
}

impl Raster {
    /// Draws the triangles of all runs of a mesh, each from both its sides. Of
    /// triangles at one depth the first in the mesh shows.
    pub fn of(mesh: &Mesh, runs: &[Run], camera: &Camera) -> Self {
        let [width, height] = camera.size;
        let mut raster = Self {
            width,
            height,
            depth: vec![f32::NEG_INFINITY; width * height],
            triangle: vec![u32::MAX; width * height],
            places: vec![[f32::NAN; 3]; mesh.vertices().len()],
        };
        for run in runs.iter().filter(|run| run.may_show(camera)) {
            for number in run.triangles.clone() {
                let corners = &mesh.triangles()[number];
                for &v in corners {
                    let place = &mut raster.places[v as usize];
                    if place[0].is_nan() {
                        *place = camera.place(&mesh.vertices()[v as usize]).map(|c| c as f32);
                    }
                }
                raster.put(number as u32, corners);
            }
        }
        raster
    }

    fn put(&mut self, number: u32, corners: &[u32; 3]) {
        let at = corners.map(|v| self.places[v as usize]);
        let [a, b, c] = at;
        let rows = pixels([a[1], b[1], c[1]], self.height);
        let columns = pixels([a[0], b[0], c[0]], self.width);
        if columns.is_empty() {
            return;
        }
        let nearest = a[2].max(b[2]).max(c[2]);
        for y in rows {
            let row = y * self.width;
            for x in columns.clone() {
                let pixel = row + x;
                // Most of what is behind need not be looked at.
                if nearest <= self.depth[pixel] {
                    continue;
                }
                let Some([u, v, w]) = weights(&at, x, y) else {
                    continue;
                };
                let depth = u * a[2] + v * b[2] + w * c[2];
                if depth > self.depth[pixel] {
                    self.depth[pixel] = depth;
                    self.triangle[pixel] = number;
                }
            }
        }
    }

    /// What shows at a pixel; `None` where nothing is.
    #[inline]
    pub fn seen(&self, mesh: &Mesh, [x, y]: [usize; 2]) -> Option<Seen> {
        let triangle = self.triangle[y * self.width + x] as usize;
        let corners = mesh.triangles().get(triangle)?.map(|v| v as usize);
        Some(Seen {
            corners,
            weights: weights(&corners.map(|v| self.places[v]), x, y)?,
        })
    }

    /// All pixels, row by row.
    pub fn pixels(&self) -> impl Iterator<Item = [usize; 2]> + use<> {
        let (width, height) = (self.width, self.height);
        (0..height).flat_map(move |y| (0..width).map(move |x| [x, y]))
    }

    /// What is kept of it to tell what shows.
    pub fn into_depths(self) -> Depths {
        Depths {
            width: self.width,
            height: self.height,
            depth: self.depth,
        }
    }
}

/// How far toward whoever looks each pixel's surface lies.
pub struct Depths {
    width: usize,
    height: usize,
    depth: Vec<f32>,
}

impl Depths {
    /// Whether a point of the surface shows, or lies behind other surface.
    pub fn shows(&self, camera: &Camera, point: &Point3<f64>) -> bool {
        /// How far a place may lie behind what is drawn beside it, mm.
        const SLACK_MM: f32 = 0.6;
        let [x, y, toward] = camera.place(point);
        if x < 0.0 || y < 0.0 || x >= self.width as f64 || y >= self.height as f64 {
            return false;
        }
        let (x, y) = (x as usize, y as usize);
        // At an outline the very pixel may be of what lies before it.
        let near = |c: usize, size: usize| c.saturating_sub(1)..=(c + 1).min(size - 1);
        near(y, self.height)
            .flat_map(|y| near(x, self.width).map(move |x| (x, y)))
            .any(|(x, y)| self.depth[y * self.width + x] <= toward as f32 + SLACK_MM)
    }
}

/// Pixels of a side of the picture whose centres, which lie at halves, three corners enclose.
fn pixels([a, b, c]: [f32; 3], size: usize) -> Range<usize> {
    let (low, high) = (a.min(b).min(c) - 0.5, a.max(b).max(c) - 0.5);
    if high < 0.0 {
        return 0..0;
    }
    // Conversion cuts off, and saturates, which clips.
    let (from, to) = (low as usize, high as usize);
    from + usize::from((from as f32) < low)..to.saturating_add(1).min(size)
}

/// Weights of the corners at the centre of a pixel; `None` outside the triangle
/// and where it is seen from its edge.
#[inline]
fn weights([a, b, c]: &[[f32; 3]; 3], x: usize, y: usize) -> Option<[f32; 3]> {
    let (x, y) = (x as f32 + 0.5, y as f32 + 0.5);
    let (ax, bx, cx) = (a[0] - x, b[0] - x, c[0] - x);
    let (ay, by, cy) = (a[1] - y, b[1] - y, c[1] - y);
    let (u, v, w) = (bx * cy - by * cx, cx * ay - cy * ax, ax * by - ay * bx);
    let is_inside = (u >= 0.0 && v >= 0.0 && w >= 0.0) || (u <= 0.0 && v <= 0.0 && w <= 0.0);
    let whole = u + v + w;
    (is_inside && whole != 0.0).then(|| [u / whole, v / whole, w / whole])
}

#[cfg(test)]
mod tests {
    use super::*;
    use measure::{Arch, Frame};
    use nalgebra::Vector3;

    fn frame() -> Frame {
        Frame {
            origin: Point3::origin(),
            right: Vector3::x(),
            anterior: Vector3::y(),
            seating: Vector3::z(),
            arch: Arch::Maxillary,
            arch_confidence: 1.0,
            confidence: 1.0,
        }
    }

    /// Two squares, one before the other.
    fn squares() -> Mesh {
        let square = |half: f64, z: f64| {
            [[-half, -half], [half, -half], [half, half], [-half, half]]
                .map(|[x, y]| Point3::new(x, y, z))
        };
        let vertices = [square(10.0, 0.0), square(5.0, 2.0)].concat();
        let triangles = vec![[0, 1, 2], [0, 2, 3], [4, 5, 6], [4, 6, 7]];
        Mesh::new(vertices, triangles, None).unwrap()
    }

    #[test]
    fn the_nearer_surface_shows_and_hides_what_is_behind() {
        let mesh = squares();
        let cameras = Camera::of_views(mesh.vertices(), &frame(), [124, 124]).unwrap();
        let tissue = &cameras[0];
        assert!((tissue.px_per_mm - 5.0).abs() < 1e-12);
        let raster = Raster::of(&mesh, &Run::all_of(&mesh), tissue);
        let pixels_of = |which: Range<usize>| {
            (raster.pixels())
                .filter_map(|pixel| raster.seen(&mesh, pixel))
                .filter(|seen| which.contains(&seen.corners[0]))
                .count()
        };
        // 5 px a millimetre: every pixel once, none between two triangles missed.
        assert_eq!(pixels_of(4..8), 50 * 50);
        assert_eq!(pixels_of(0..4), 100 * 100 - 50 * 50);
        let raster = raster.into_depths();
        let (near, far, hidden) = (
            Point3::new(1.0, 1.0, 2.0),
            Point3::new(8.0, 0.0, 0.0),
            Point3::new(1.0, 1.0, 0.0),
        );
        assert!(raster.shows(tissue, &near) && raster.shows(tissue, &far));
        assert!(!raster.shows(tissue, &hidden));
        let outer = Raster::of(&mesh, &Run::all_of(&mesh), &cameras[1]).into_depths();
        assert!(outer.shows(&cameras[1], &hidden));
    }

    #[test]
    fn the_patients_sides_are_where_they_are_seen() {
        let mesh = squares();
        let maxilla = frame();
        let mandible = Frame {
            right: -Vector3::x(),
            arch: Arch::Mandibular,
            ..frame()
        };
        // Onto a maxillary impression, front up, as onto the floor that one
        // stands on: right is right. Turned over, or mandibular: it is left.
        for (frame, expected) in [
            (maxilla, [true, false, true]),
            (mandible, [false, true, false]),
        ] {
            let cameras = Camera::of_views(mesh.vertices(), &frame, [100, 100]).unwrap();
            let seen: Vec<bool> = cameras
                .iter()
                .map(|camera| camera.is_to_the_right(&frame.right))
                .collect();
            assert_eq!(seen, expected);
        }
    }

    #[test]
    fn front_is_up_from_the_tissue_side() {
        let mesh = squares();
        let cameras = Camera::of_views(mesh.vertices(), &frame(), [124, 124]).unwrap();
        let [x, y, toward] = cameras[0].place(&Point3::new(2.0, 4.0, 1.0));
        assert!((x - (62.0 + 10.0)).abs() < 1e-9 && (y - (62.0 - 20.0)).abs() < 1e-9);
        assert!((toward - 1.0).abs() < 1e-12);
    }
}
