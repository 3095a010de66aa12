//! A movable plane that holds the seating axis, and its cut through the surface.

use crate::opened::Shown;
use geometry::section::{Cutter, SectionPlane};
use nalgebra::{Point2, Point3, Vector2};

/// A cut in the plane's own coordinates, mm: along the plane in plan, then
/// along the seating axis, both from the plane's place.
pub type CutLine = Vec<Point2<f64>>;

/// Where the plane stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// A place on it, shown frame, mm.
    pub place: Point3<f64>,
    /// Its direction in plan, radians from x.
    pub angle: f64,
}

impl Plane {
    /// Through a place, along the line from the middle of the arch to it: so
    /// it crosses ridge and border nearly at right angles.
    #[must_use]
    pub fn through(place: Point3<f64>) -> Self {
        let out = place.coords.xy();
        Self {
            place,
            angle: if out.norm() > 1.0 {
                out.y.atan2(out.x)
            } else {
                0.0
            },
        }
    }

    /// Turned about the seating axis.
    #[must_use]
    pub fn turned(self, by: f64) -> Self {
        Self {
            angle: self.angle + by,
            ..self
        }
    }

    /// Moved across itself.
    #[must_use]
    pub fn moved(self, mm: f64) -> Self {
        let [x, y] = [-self.angle.sin() * mm, self.angle.cos() * mm];
        Self {
            place: self.place + nalgebra::Vector3::new(x, y, 0.0),
            ..self
        }
    }

    fn section_plane(&self) -> SectionPlane {
        SectionPlane {
            origin: self.place,
            across: Vector2::new(self.angle.cos(), self.angle.sin()),
        }
    }

    /// A point of the cut in the shown frame.
    #[must_use]
    pub fn shown(&self, point: &Point2<f64>) -> Point3<f64> {
        self.section_plane().place([point.x, point.y])
    }

    /// The whole cut through an impression.
    #[must_use]
    pub fn cut(&self, shown: &Shown) -> Vec<CutLine> {
        const REACH_MM: f64 = 150.0;
        Cutter::new(&shown.surface, |_| true)
            .cut(&self.section_plane(), -REACH_MM..=REACH_MM)
            .into_iter()
            .map(|line| line.points.into_iter().map(Point2::from).collect())
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_plane_moves_across_itself_and_turns_about_its_place() {
        let plane = Plane::through(Point3::new(0.0, 20.0, 5.0));
        assert!((plane.angle - std::f64::consts::FRAC_PI_2).abs() < 1e-12);
        let moved = plane.moved(2.0);
        assert!((moved.place - Point3::new(-2.0, 20.0, 5.0)).norm() < 1e-12);
        let turned = plane.turned(0.3);
        assert_eq!(turned.place, plane.place);
        let there = turned.shown(&Point2::new(3.0, 1.0));
        assert!(((there - turned.place).xy().norm() - 3.0).abs() < 1e-12);
        assert!((there.z - 6.0).abs() < 1e-12);
    }
}
