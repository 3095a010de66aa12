//! How the impression is looked at: a parallel projection, so that lengths on
//! the screen are lengths, whatever their depth.

use nalgebra::{Point2, Point3, Unit, UnitQuaternion, Vector3};

/// Half of the height of the picture for a finding, mm.
const CLOSE_MM: f64 = 14.0;
/// The picture is never higher or lower than these halves, mm.
const HALF_HEIGHT_MM: [f64; 2] = [1.0, 200.0];
/// A place is shown from straight above or tilted toward its own surface, by
/// at most the first angle that leaves it in sight, degrees.
const TILTS: [f64; 5] = [60.0, 45.0, 30.0, 15.0, 0.0];

/// How the shown frame is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// From the shown frame to the viewer's: x right, y up, z to the viewer.
    pub turn: UnitQuaternion<f64>,
    /// The place in the middle of the picture, shown frame, mm.
    pub target: Point3<f64>,
    /// Half of what is seen from top to bottom, mm.
    pub half_height_mm: f64,
}

/// The part of the window in which the impression stands, pixels from the top left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Canvas {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

impl Canvas {
    /// Its middle.
    #[must_use]
    pub fn middle(&self) -> Point2<f64> {
        Point2::new(self.left + self.width / 2.0, self.top + self.height / 2.0)
    }

    /// Whether a pixel lies in it.
    #[must_use]
    pub fn holds(&self, pixel: &Point2<f64>) -> bool {
        let (x, y) = (pixel.x - self.left, pixel.y - self.top);
        (0.0..self.width).contains(&x) && (0.0..self.height).contains(&y)
    }
}

impl View {
    /// The whole of a box of these corners, tissue side to the viewer, front up.
    #[must_use]
    pub fn whole(low: &Point3<f64>, high: &Point3<f64>, canvas_ratio: f64) -> Self {
        const MARGIN: f64 = 1.12;
        let size = high - low;
        let half = (size.y / 2.0).max(size.x / 2.0 / canvas_ratio.max(0.1));
        Self {
            turn: UnitQuaternion::identity(),
            target: nalgebra::center(low, high),
            half_height_mm: bounded(half * MARGIN),
        }
    }

    /// Close to a place whose surface faces `normal`: from above, tilted toward
    /// the surface as far as the place stays in sight (`in_sight` says whether
    /// it is, from a direction in the shown frame).
    #[must_use]
    pub fn onto(
        place: Point3<f64>,
        normal: Option<Vector3<f64>>,
        in_sight: impl Fn(&Vector3<f64>) -> bool,
    ) -> Self {
        let facing = |degrees: f64| {
            let axis = normal.and_then(|n| Unit::try_new(Vector3::z().cross(&n), 1e-6));
            let (Some(axis), Some(normal)) = (axis, normal) else {
                return UnitQuaternion::identity();
            };
            let full = Vector3::z().angle(&normal);
            UnitQuaternion::from_axis_angle(&axis, -full.min(degrees.to_radians()))
        };
        let turn = TILTS
            .into_iter()
            .map(facing)
            .find(|turn| in_sight(&turn.inverse_transform_vector(&Vector3::z())))
            .unwrap_or_else(UnitQuaternion::identity);
        Self {
            turn,
            target: place,
            half_height_mm: CLOSE_MM,
        }
    }

    /// Part of the way from one view to another, 0 to 1.
    #[must_use]
    pub fn between(from: &Self, to: &Self, part: f64) -> Self {
        let eased = part * part * (3.0 - 2.0 * part);
        let turn = from
            .turn
            .try_slerp(&to.turn, eased, 1e-9)
            .unwrap_or(to.turn);
        let height = from.half_height_mm.ln() * (1.0 - eased) + to.half_height_mm.ln() * eased;
        Self {
            turn,
            target: from.target + (to.target - from.target) * eased,
            half_height_mm: height.exp(),
        }
    }

    /// A place in the viewer's frame: x right, y up, z to the viewer, from the target.
    #[must_use]
    pub fn seen(&self, place: &Point3<f64>) -> Vector3<f64> {
        self.turn * (place - self.target)
    }

    /// Length of a pixel, mm.
    #[must_use]
    pub fn mm_per_pixel(&self, canvas: &Canvas) -> f64 {
        2.0 * self.half_height_mm / canvas.height.max(1.0)
    }

    /// Where a place is on the screen.
    #[must_use]
    pub fn pixel(&self, canvas: &Canvas, place: &Point3<f64>) -> Point2<f64> {
        let (seen, mm) = (self.seen(place), self.mm_per_pixel(canvas));
        canvas.middle() + nalgebra::Vector2::new(seen.x, -seen.y) / mm
    }

    /// The ray through a pixel, from in front of everything: origin and unit
    /// direction, shown frame, mm.
    #[must_use]
    pub fn ray(&self, canvas: &Canvas, pixel: &Point2<f64>) -> (Point3<f64>, Vector3<f64>) {
        let off = (pixel - canvas.middle()) * self.mm_per_pixel(canvas);
        let seen = Vector3::new(off.x, -off.y, FRONT_MM);
        let from = self.target + self.turn.inverse_transform_vector(&seen);
        (from, self.turn.inverse_transform_vector(&-Vector3::z()))
    }

    /// Turned by a drag over so many pixels.
    #[must_use]
    pub fn turned(&self, right_px: f64, down_px: f64) -> Self {
        const PER_PIXEL: f64 = 0.008;
        let turn = UnitQuaternion::from_axis_angle(&Vector3::y_axis(), right_px * PER_PIXEL)
            * UnitQuaternion::from_axis_angle(&Vector3::x_axis(), down_px * PER_PIXEL);
        Self {
            turn: turn * self.turn,
            ..*self
        }
    }

    /// Turned about the line of sight, radians, anticlockwise.
    #[must_use]
    pub fn rolled(&self, angle: f64) -> Self {
        Self {
            turn: UnitQuaternion::from_axis_angle(&Vector3::z_axis(), angle) * self.turn,
            ..*self
        }
    }

    /// Moved by a drag over so many pixels.
    #[must_use]
    pub fn shifted(&self, canvas: &Canvas, right_px: f64, down_px: f64) -> Self {
        let mm = self.mm_per_pixel(canvas);
        let off = Vector3::new(-right_px * mm, down_px * mm, 0.0);
        Self {
            target: self.target + self.turn.inverse_transform_vector(&off),
            ..*self
        }
    }

    /// Magnified so many times.
    #[must_use]
    pub fn magnified(&self, times: f64) -> Self {
        Self {
            half_height_mm: bounded(self.half_height_mm / times),
            ..*self
        }
    }
}

/// Rays begin and depths end this far from the target, mm.
pub const FRONT_MM: f64 = 500.0;

fn bounded(half_mm: f64) -> f64 {
    half_mm.clamp(HALF_HEIGHT_MM[0], HALF_HEIGHT_MM[1])
}

#[cfg(test)]
mod tests {
    use super::*;

    const CANVAS: Canvas = Canvas {
        left: 300.0,
        top: 0.0,
        width: 900.0,
        height: 800.0,
    };

    #[test]
    fn front_is_up_and_the_viewer_looks_on_the_tissue() {
        let view = View::whole(
            &Point3::new(-30.0, -40.0, 0.0),
            &Point3::new(30.0, 40.0, 10.0),
            CANVAS.width / CANVAS.height,
        );
        let front = view.pixel(&CANVAS, &Point3::new(0.0, 30.0, 0.0));
        let middle = view.pixel(&CANVAS, &view.target);
        assert!((middle - CANVAS.middle()).norm() < 1e-9);
        assert!(front.y < middle.y && (front.x - middle.x).abs() < 1e-9);
        assert!(view.pixel(&CANVAS, &Point3::new(9.0, 0.0, 0.0)).x > middle.x);
        let (from, along) = view.ray(&CANVAS, &CANVAS.middle());
        assert!(from.z > 100.0 && (along + Vector3::z()).norm() < 1e-12);
    }

    #[test]
    fn a_ray_through_a_pixel_meets_what_is_drawn_there() {
        let view = View::whole(&Point3::origin(), &Point3::new(60.0, 60.0, 20.0), 1.0)
            .turned(130.0, -77.0)
            .rolled(0.4)
            .magnified(2.5)
            .shifted(&CANVAS, 31.0, -12.0);
        let place = Point3::new(12.0, 30.0, 7.0);
        let (from, along) = view.ray(&CANVAS, &view.pixel(&CANVAS, &place));
        let off = (place - from) - along * along.dot(&(place - from));
        assert!(off.norm() < 1e-9, "{off}");
    }

    #[test]
    fn a_slope_is_looked_at_from_its_own_side_while_it_is_in_sight() {
        let place = Point3::new(10.0, 0.0, 0.0);
        let normal = Vector3::new(1.0, 0.0, 1.0).normalize();
        let free = View::onto(place, Some(normal), |_| true);
        // Its own normal then points at the viewer, and front is still up.
        assert!((free.turn * normal - Vector3::z()).norm() < 1e-9);
        assert!((free.turn * Vector3::y() - Vector3::y()).norm() < 1e-9);
        let steep = View::onto(place, Some(Vector3::x()), |_| true);
        let tilt = (steep.turn * Vector3::z())
            .angle(&Vector3::z())
            .to_degrees();
        assert!((tilt - 60.0).abs() < 1e-9);
        let hidden = View::onto(place, Some(normal), |to_viewer| to_viewer.z > 0.99);
        assert!(
            (hidden.turn * Vector3::z())
                .angle(&Vector3::z())
                .to_degrees()
                < 15.1
        );
        assert_eq!(free.target, place);
    }

    #[test]
    fn a_flight_begins_and_ends_where_it_should() {
        let a = View::onto(Point3::origin(), None, |_| true);
        let b = View::onto(Point3::new(9.0, 1.0, 0.0), Some(Vector3::x()), |_| true).magnified(0.2);
        let near = |v: View, w: View| {
            assert!(v.turn.angle_to(&w.turn) < 1e-6);
            assert!((v.target - w.target).norm() < 1e-9);
            assert!((v.half_height_mm - w.half_height_mm).abs() < 1e-9);
        };
        near(View::between(&a, &b, 0.0), a);
        near(View::between(&a, &b, 1.0), b);
    }
}
