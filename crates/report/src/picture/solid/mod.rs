//! The surface of an impression as the page turns it: the same mesh and thickness as in the
//! pictures, in few bytes.

mod packed;
mod thinned;

pub use packed::Packed;

use crate::result::parts;
use check::CheckedCase;
use measure::{Frame, Measurement};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use packed::{Numbers, packed};
use rayon::prelude::*;

/// A surface of more triangles is thinned for the page.
const MOST_TRIANGLES: usize = 250_000;
/// A coordinate in steps.
const STEPS: f64 = 65_535.0;
/// Thickness, mm, that the number 1 stands for; 0 stands for an unknown one.
pub const THICKNESS_FROM_MM: f64 = -5.0;
/// Thickness from one number to the next, mm.
pub const THICKNESS_STEP_MM: f64 = 0.01;

/// The surface of an impression in few bytes, with what turns its numbers into mm.
pub struct Solid {
    pub surface: Packed,
    /// Least corner of the box around it, in scan coordinates, mm.
    pub low_mm: Point3<f64>,
    /// A step of a coordinate, mm.
    pub step_mm: f64,
    /// Whether it has fewer triangles than the scan.
    pub is_thinned: bool,
    /// Where the letters of the patient's right and left and the word for the front lie, mm.
    pub around_mm: [Point3<f64>; 3],
}

impl Solid {
    /// `None` where the scan shows no impression.
    pub fn of(checked: &CheckedCase, number: usize) -> Option<Self> {
        let one = &checked.impressions[number];
        Self::with_at_most(MOST_TRIANGLES, &one.scan.mesh, one.measured()?)
    }

    fn with_at_most(most: usize, mesh: &Mesh, measurement: &Measurement) -> Option<Self> {
        let (low_mm, high_mm) = mesh.bounds()?;
        let step_mm = (high_mm - low_mm).max() / STEPS;
        let step_mm = if step_mm > 0.0 { step_mm } else { 1.0 };
        let numbers = numbers(mesh, measurement, &low_mm, step_mm);
        let is_thinned = mesh.triangles().len() > most;
        let surface = if is_thinned {
            let (thin, own) = thinned::thinned(mesh, most);
            let numbers: Vec<Numbers> = own.iter().map(|&v| numbers[v as usize]).collect();
            packed(&thin, &numbers)
        } else {
            packed(mesh, &numbers)
        };
        Some(Self {
            surface,
            low_mm,
            step_mm,
            is_thinned,
            around_mm: around(mesh, &measurement.frame),
        })
    }
}

/// The numbers of each vertex.
fn numbers(
    mesh: &Mesh,
    measurement: &Measurement,
    low_mm: &Point3<f64>,
    step_mm: f64,
) -> Vec<Numbers> {
    let cover = measurement.cover.as_ref().ok();
    let parts = parts(measurement);
    // Conversion saturates at the ends of the range.
    let of_thickness =
        |mm: f64| (1.0 + ((mm - THICKNESS_FROM_MM) / THICKNESS_STEP_MM).round()).max(1.0) as u16;
    let of_vertex = |(vertex, p): (usize, &Point3<f64>)| {
        let [x, y, z] = <[f64; 3]>::from(p - low_mm).map(|c| (c / step_mm).round() as u16);
        let thickness = cover.and_then(|cover| *cover.at_vertex_mm.get(vertex)?);
        let place = measurement.places.get(vertex).and_then(Option::as_ref);
        let part = place.and_then(|place| parts.binary_search(&(place.zone, place.side)).ok());
        let part = part.map_or(0, |part| part as u16 + 1);
        [x, y, z, thickness.map_or(0, of_thickness), part]
    };
    let vertices = mesh.vertices().par_iter().enumerate();
    vertices.map(of_vertex).collect()
}

/// Places a little beyond the patient's right end, the left and the front.
fn around(mesh: &Mesh, frame: &Frame) -> [Point3<f64>; 3] {
    const BEYOND_MM: f64 = 5.0;
    let span = |axis: &Vector3<f64>| {
        let along = mesh.vertices().iter().map(|p| p.coords.dot(axis));
        along.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), x| {
            (low.min(x), high.max(x))
        })
    };
    let [across, forward, up] = [&frame.right, &frame.anterior, &frame.seating].map(span);
    let at = |right: f64, anterior: f64| {
        let seating = f64::midpoint(up.0, up.1);
        Point3::from(frame.right * right + frame.anterior * anterior + frame.seating * seating)
    };
    let middle = |(low, high): (f64, f64)| f64::midpoint(low, high);
    [
        at(across.1 + BEYOND_MM, middle(forward)),
        at(across.0 - BEYOND_MM, middle(forward)),
        at(middle(across), forward.1 + BEYOND_MM),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::checked_with_spots;

    #[test]
    fn numbers_are_the_measured_figures_to_the_nearest_step() {
        let checked = checked_with_spots();
        let one = &checked.impressions[0];
        let (mesh, measurement) = (&one.scan.mesh, one.measured().unwrap());
        let solid = Solid::of(&checked, 0).unwrap();
        let numbers = numbers(mesh, measurement, &solid.low_mm, solid.step_mm);
        assert_eq!(numbers.len(), mesh.vertices().len());
        let cover = measurement.cover.as_ref().unwrap();
        for (vertex, [x, y, z, thickness, _]) in numbers.iter().enumerate() {
            let steps = Vector3::new(*x, *y, *z).cast::<f64>();
            let off = solid.low_mm + steps * solid.step_mm - mesh.vertices()[vertex];
            assert!(off.amax() <= solid.step_mm * 0.5001, "{off}");
            match cover.at_vertex_mm[vertex] {
                None => assert_eq!(*thickness, 0),
                Some(mm) => {
                    let shown = THICKNESS_FROM_MM + f64::from(thickness - 1) * THICKNESS_STEP_MM;
                    assert!((shown - mm).abs() <= THICKNESS_STEP_MM * 0.5001);
                }
            }
        }
        // As in the surface file: its parts are numbered from 0.
        let parts: Vec<u16> = numbers.iter().map(|numbers| numbers[4]).collect();
        assert_eq!(parts, [2, 1, 0]);
        assert!(!solid.is_thinned);
    }
}
