//! Where an impression lies: from the numbers of its scan file to the frame in
//! which it is shown, and back.

use nalgebra::{Isometry3, Matrix3, Point3, Rotation3, Translation3, UnitQuaternion, Vector3};
use report::result::{Frame, Point};

/// The way from a scan file's numbers to the shown frame and back.
///
/// The shown frame is in mm: y to the patient's front, z from tray toward
/// tissue (so toward the viewer), x = y × z.
#[derive(Debug, Clone)]
pub struct Placement {
    shown_from_scan: Isometry3<f64>,
    in_mm: f64,
    /// The patient's right in the shown frame; `None` where no frame was found.
    pub right: Option<Vector3<f64>>,
}

impl Placement {
    /// By an impression frame (points in the file's unit of `in_mm` mm).
    /// `None` where the axes are no axes.
    #[must_use]
    pub fn of_frame(frame: &Frame, in_mm: f64) -> Option<Self> {
        let unit = |axis: Point| Vector3::from(axis).try_normalize(1e-6);
        let seating = unit(frame.seating)?;
        let anterior = Vector3::from(frame.anterior);
        let anterior = (anterior - seating * seating.dot(&anterior)).try_normalize(1e-6)?;
        let rows = Matrix3::from_rows(&[
            anterior.cross(&seating).transpose(),
            anterior.transpose(),
            seating.transpose(),
        ]);
        let turn = UnitQuaternion::from_rotation_matrix(&Rotation3::from_matrix_unchecked(rows));
        let origin = Vector3::from(frame.origin) * in_mm;
        let right = turn * unit(frame.right)?;
        Some(Self {
            shown_from_scan: turn * Translation3::from(-origin),
            in_mm,
            right: Some(Vector3::x() * right.x.signum()),
        })
    }

    /// As the file has it, with the middle at `centre` (mm).
    #[must_use]
    pub fn unturned(centre: Point3<f64>, in_mm: f64) -> Self {
        Self {
            shown_from_scan: Translation3::from(-centre.coords).into(),
            in_mm,
            right: None,
        }
    }

    /// The motion from scan coordinates in mm to the shown frame.
    #[must_use]
    pub fn shown_from_scan(&self) -> &Isometry3<f64> {
        &self.shown_from_scan
    }

    /// Where a point of the file is shown.
    #[must_use]
    pub fn shown(&self, in_file: Point) -> Point3<f64> {
        self.shown_from_scan * Point3::from(Vector3::from(in_file) * self.in_mm)
    }

    /// The numbers of the file at a shown place.
    #[must_use]
    pub fn in_file(&self, shown: &Point3<f64>) -> Point {
        let scan = self.shown_from_scan.inverse_transform_point(shown);
        (scan.coords / self.in_mm).into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn frame() -> Frame {
        // A mandible lying on its side: right = -(anterior × seating).
        Frame {
            origin: [1.0, 2.0, 3.0],
            right: [0.0, -1.0, 0.0],
            anterior: [0.0, 0.0, 1.0],
            seating: [-1.0, 0.0, 0.0],
            confidence: 1.0,
        }
    }

    #[test]
    fn anterior_is_up_and_tissue_faces_the_viewer() {
        let place = Placement::of_frame(&frame(), 10.0).unwrap();
        let near = |p: Point3<f64>, q: [f64; 3]| assert!((p - Point3::from(q)).norm() < 1e-9);
        near(place.shown([1.0, 2.0, 3.0]), [0.0, 0.0, 0.0]);
        near(place.shown([1.0, 2.0, 4.0]), [0.0, 10.0, 0.0]);
        near(place.shown([0.0, 2.0, 3.0]), [0.0, 0.0, 10.0]);
        near(place.shown([1.0, 1.0, 3.0]), [10.0, 0.0, 0.0]);
        assert_eq!(place.right, Some(Vector3::x()));
        let there = [4.0, -5.0, 6.5];
        let back = place.in_file(&place.shown(there));
        assert!((Vector3::from(back) - Vector3::from(there)).norm() < 1e-9);
    }

    #[test]
    fn axes_without_length_are_refused() {
        let mut broken = frame();
        broken.seating = [0.0; 3];
        assert!(Placement::of_frame(&broken, 1.0).is_none());
    }
}
