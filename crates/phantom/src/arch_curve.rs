//! The plan of the arch: a half ellipse, squared or tapered a little, whose
//! limbs run on straight to the back.

use nalgebra::{Point2, Vector2};
use std::f64::consts::FRAC_PI_2;

const SAMPLES: usize = 256;
/// Every so many samples one is tried as the start of the nearest-point search.
const COARSE: usize = 8;

/// A plan curve, symmetric about the y axis, that runs from one limb (x < 0)
/// round the front (y > 0) to the other. Lengths in mm.
#[derive(Debug, Clone)]
pub struct ArchCurve {
    half_width: f64,
    depth: f64,
    squareness: f64,
    /// Points of the right half of the curved part, from the front to the limb.
    points: Vec<Point2<f64>>,
    /// Arc length from the front at those points.
    lengths: Vec<f64>,
}

/// A place in the plan told by the curve: how far along, how far to the side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArchPlace {
    /// Arc length from the front along the curve, mm; positive where x is.
    pub along: f64,
    /// Signed distance from the curve, mm; positive outside the arch.
    pub out: f64,
}

impl ArchCurve {
    /// The curve through (0, `depth`) and (±`half_width`, 0). `squareness`
    /// widens (above 0) or narrows (below 0) the part between, as a fraction
    /// of the half width.
    #[must_use]
    pub fn new(half_width: f64, depth: f64, squareness: f64) -> Self {
        let mut curve = Self {
            half_width,
            depth,
            squareness,
            points: Vec::new(),
            lengths: Vec::new(),
        };
        let mut length = 0.0;
        for i in 0..=SAMPLES {
            let angle = angle_of(i as f64);
            if i > 0 {
                length += curve.arc_between(angle_of(i as f64 - 1.0), angle);
            }
            curve.points.push(curve.at_angle(angle));
            curve.lengths.push(length);
        }
        curve
    }

    /// Half the distance between the limbs, mm.
    #[must_use]
    pub fn half_width(&self) -> f64 {
        self.half_width
    }

    /// How far the front lies before the start of the straight limbs, mm.
    #[must_use]
    pub fn depth(&self) -> f64 {
        self.depth
    }

    /// Arc length from the front to the start of a straight limb, mm.
    #[must_use]
    pub fn curved_length(&self) -> f64 {
        self.lengths[SAMPLES]
    }

    /// The nearest place on the curve, whose limbs are taken to run on for ever.
    #[must_use]
    pub fn place(&self, x: f64, y: f64) -> ArchPlace {
        let side = if x < 0.0 { -1.0 } else { 1.0 };
        let x = x.abs();
        if y <= 0.0 {
            return ArchPlace {
                along: side * (self.curved_length() - y),
                out: x - self.half_width,
            };
        }
        let angle = self.nearest_angle(Point2::new(x, y));
        let sin_cos = angle.sin_cos();
        let (outward, offset) = (
            self.outward(sin_cos),
            Point2::new(x, y) - self.place_of(sin_cos),
        );
        ArchPlace {
            along: side * self.length_at(angle),
            out: offset.norm().copysign(offset.dot(&outward)),
        }
    }

    /// The plan point at a place.
    #[must_use]
    pub fn point(&self, place: ArchPlace) -> Point2<f64> {
        let side = if place.along < 0.0 { -1.0 } else { 1.0 };
        let along = place.along.abs();
        let right = if along >= self.curved_length() {
            Point2::new(self.half_width + place.out, self.curved_length() - along)
        } else {
            let sin_cos = self.angle_at(along).sin_cos();
            self.place_of(sin_cos) + self.outward(sin_cos) * place.out
        };
        Point2::new(side * right.x, right.y)
    }

    fn at_angle(&self, angle: f64) -> Point2<f64> {
        self.place_of(angle.sin_cos())
    }

    fn place_of(&self, (sin, cos): (f64, f64)) -> Point2<f64> {
        Point2::new(
            self.half_width * sin * (1.0 + self.squareness * cos * cos),
            self.depth * cos,
        )
    }

    /// First derivative by the angle, of which sine and cosine are given.
    fn first_derivative(&self, (sin, cos): (f64, f64)) -> Vector2<f64> {
        let (a, b, q) = (self.half_width, self.depth, self.squareness);
        Vector2::new(
            a * cos * (1.0 + q * (cos * cos - 2.0 * sin * sin)),
            -b * sin,
        )
    }

    /// Second derivative by the angle, of which sine and cosine are given.
    fn second_derivative(&self, (sin, cos): (f64, f64)) -> Vector2<f64> {
        let (a, b, q) = (self.half_width, self.depth, self.squareness);
        Vector2::new(
            -a * sin * (1.0 + q * (7.0 * cos * cos - 2.0 * sin * sin)),
            -b * cos,
        )
    }

    fn outward(&self, sin_cos: (f64, f64)) -> Vector2<f64> {
        let along = self.first_derivative(sin_cos).normalize();
        Vector2::new(-along.y, along.x)
    }

    fn speed(&self, angle: f64) -> f64 {
        self.first_derivative(angle.sin_cos()).norm()
    }

    fn nearest_angle(&self, to: Point2<f64>) -> f64 {
        let nearest = (0..=SAMPLES)
            .step_by(COARSE)
            .map(|i| (i, (self.points[i] - to).norm_squared()))
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .map_or(0, |(i, _)| i);
        let (low, high) = (
            angle_of(nearest.saturating_sub(COARSE) as f64),
            angle_of((nearest + COARSE).min(SAMPLES) as f64),
        );
        let mut angle = angle_of(nearest as f64);
        for _ in 0..6 {
            let sin_cos = angle.sin_cos();
            let offset = self.place_of(sin_cos) - to;
            let (first, second) = (
                self.first_derivative(sin_cos),
                self.second_derivative(sin_cos),
            );
            // Away from the convex side Newton's curvature may turn negative;
            // then the slope alone still points the right way.
            let speed = first.norm_squared();
            let bend = (speed + offset.dot(&second)).max(0.05 * speed);
            let step = offset.dot(&first) / bend;
            angle = (angle - step).clamp(low, high);
            if step.abs() < 1e-10 {
                break;
            }
        }
        angle
    }

    fn length_at(&self, angle: f64) -> f64 {
        let position = angle / FRAC_PI_2 * SAMPLES as f64;
        let i = (position.floor() as usize).min(SAMPLES);
        self.lengths[i] + self.arc_between(angle_of(i as f64), angle)
    }

    fn angle_at(&self, length: f64) -> f64 {
        let i = self
            .lengths
            .partition_point(|&l| l <= length)
            .saturating_sub(1);
        let mut angle = angle_of(i as f64);
        for _ in 0..3 {
            angle += (length - self.length_at(angle)) / self.speed(angle);
        }
        angle
    }

    /// Arc length over a short stretch: three-point Gauss quadrature.
    fn arc_between(&self, from: f64, to: f64) -> f64 {
        let (middle, half) = ((from + to) / 2.0, (to - from) / 2.0);
        let node = 0.6f64.sqrt() * half;
        let [before, at, behind] = [middle - node, middle, middle + node].map(|a| self.speed(a));
        half * (5.0 * before + 8.0 * at + 5.0 * behind) / 9.0
    }
}

fn angle_of(sample: f64) -> f64 {
    FRAC_PI_2 * sample / SAMPLES as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_circle_has_its_closed_forms() {
        let circle = ArchCurve::new(25.0, 25.0, 0.0);
        assert!((circle.curved_length() - 25.0 * FRAC_PI_2).abs() < 1e-9);
        let at = circle.place(-12.0, 20.0);
        assert!((at.out - (12f64.hypot(20.0) - 25.0)).abs() < 1e-9);
        assert!((at.along + 25.0 * (12.0f64).atan2(20.0)).abs() < 1e-8);
    }

    #[test]
    fn places_and_points_are_each_other_s_inverse() {
        let curve = ArchCurve::new(23.0, 32.0, 0.08);
        for along in [-60.0, -41.5, -20.0, -0.3, 0.0, 7.0, 33.3, 55.0] {
            for out in [-9.0, -2.0, 0.0, 5.0, 14.0] {
                let p = curve.point(ArchPlace { along, out });
                let back = curve.place(p.x, p.y);
                assert!((back.along - along).abs() < 1e-6, "{along} {out}: {back:?}");
                assert!((back.out - out).abs() < 1e-8, "{along} {out}: {back:?}");
            }
        }
    }
}
