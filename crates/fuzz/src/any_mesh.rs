//! A mesh as a fuzzer makes it: the shape of a scan with anything wrong in it.

use arbitrary::Arbitrary;
use measure::{MeasureSettings, measure};
use mesh::Mesh;
use nalgebra::Point3;
use std::hint::black_box;

/// Most points of a grid along and across: measuring takes a second for a scan.
const MOST: u8 = 24;

/// A curved sheet, bent up at its sides, with a few vertices moved and a few
/// triangles left out or put in.
#[derive(Debug, Clone, Arbitrary)]
pub struct AnyMesh {
    along: u8,
    across: u8,
    step_mm: f32,
    curved: [i8; 4],
    moved: Vec<(u16, [f32; 3])>,
    left_out: Vec<u16>,
    put_in: Vec<[u16; 3]>,
    colours: Option<[u8; 3]>,
    with_tray: bool,
}

impl AnyMesh {
    /// Measures it; whatever comes of it, it may not panic.
    pub fn measure(&self) {
        let Some(mesh) = self.mesh() else { return };
        let tray = self
            .with_tray
            .then(|| mesh.mapped(|p| Point3::new(p.x, p.y, p.z - 2.0)));
        black_box(measure(
            &mesh,
            tray.as_ref(),
            &MeasureSettings::default(),
            &|_| (),
        ));
    }

    fn mesh(&self) -> Option<Mesh> {
        let (along, across) = (2 + self.along % MOST, 2 + self.across % MOST);
        let step = if self.step_mm.is_normal() {
            f64::from(self.step_mm)
        } else {
            2.0
        };
        let [a, b, c, d] = self.curved.map(|k| f64::from(k) / 128.0);
        let mut vertices: Vec<Point3<f64>> = Vec::new();
        for i in 0..along {
            for j in 0..across {
                let x = step * (f64::from(i) - f64::from(along) / 2.0);
                let y = step * (f64::from(j) - f64::from(across) / 2.0);
                let z = a * x + b * x * x / 16.0 + c * y * y / 16.0 + 4.0 * d * (x + y).sin();
                vertices.push(Point3::new(x, y, z));
            }
        }
        let count = vertices.len();
        for (vertex, place) in &self.moved {
            let place = place.map(f64::from);
            // What the readers refuse never comes as far as this.
            if place.iter().all(|c| c.abs() <= 1e10) {
                vertices[usize::from(*vertex) % count] = Point3::from(place);
            }
        }
        if !vertices.iter().all(|p| p.iter().all(|c| c.abs() <= 1e10)) {
            return None;
        }
        let number = |i: u8, j: u8| u32::from(i) * u32::from(across) + u32::from(j);
        let mut triangles = Vec::new();
        for i in 1..along {
            for j in 1..across {
                let [a, b, c, d] =
                    [(i - 1, j - 1), (i, j - 1), (i - 1, j), (i, j)].map(|(i, j)| number(i, j));
                triangles.extend([[a, b, d], [a, d, c]]);
            }
        }
        for &left_out in &self.left_out {
            if !triangles.is_empty() {
                triangles.swap_remove(usize::from(left_out) % triangles.len());
            }
        }
        let corner = |v: u16| u32::from(v) % count as u32;
        triangles.extend(self.put_in.iter().map(|t| t.map(corner)));
        let colours = self.colours.map(|colour| vec![colour; count]);
        Mesh::new(vertices, triangles, colours).ok()
    }
}
