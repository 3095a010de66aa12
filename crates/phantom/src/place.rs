//! Named places found on the formula surface.

use crate::impression::Impression;
use crate::jaw::Arch;
use crate::mesher::Solid;
use crate::options::{Across, Place};
use nalgebra::{Point3, Vector3};

/// Higher than anything, mm.
const ABOVE_MM: f64 = 18.0;

impl Impression {
    /// The first point of the surface on a ray that starts outside.
    #[must_use]
    pub fn hit(
        &self,
        from: &Point3<f64>,
        direction: &Vector3<f64>,
        reach: f64,
    ) -> Option<Point3<f64>> {
        let gone = crossing(|gone| self.at(&(from + direction * gone)), reach)?;
        Some(from + direction * gone)
    }

    /// The first point of the surface on a ray that starts inside.
    #[must_use]
    pub fn exit(
        &self,
        from: &Point3<f64>,
        direction: &Vector3<f64>,
        reach: f64,
    ) -> Option<Point3<f64>> {
        let gone = crossing(|gone| -self.at(&(from + direction * gone)), reach)?;
        (gone > 0.0).then(|| from + direction * gone)
    }

    /// The highest point of the surface above a point of the plan.
    #[must_use]
    pub fn top(&self, x: f64, y: f64) -> Option<Point3<f64>> {
        let column = self.column(x, y);
        let gone = crossing(|gone| self.value(&column, ABOVE_MM - gone), 2.0 * ABOVE_MM)?;
        Some(Point3::new(x, y, ABOVE_MM - gone))
    }

    /// The highest point of the surface at a place of the arch.
    #[must_use]
    pub fn top_at(&self, along: f64, out: f64) -> Option<Point3<f64>> {
        let plan = self.mouth.plan(along, out);
        self.top(plan.x, plan.y)
    }

    /// Arc length of a station that is told from -1 (right) to 1 (left).
    #[must_use]
    pub fn along(&self, station: f64) -> f64 {
        -self.mouth.kind.right_sign() * station * self.tray.reach()
    }

    /// The bottom of the trough in a section.
    #[must_use]
    pub fn crest(&self, along: f64) -> Option<Point3<f64>> {
        let middle = self.mouth.sections.at(along).crest_out;
        let height = |out: f64| self.top_at(along, out).map_or(f64::INFINITY, |p| p.z);
        let out = least_at(height, middle - 3.0, middle + 3.0, 6);
        self.top_at(along, out)
    }

    /// The tissue surface and the tray under a place: the foot on the tray and
    /// the direction from the tray to the tissue there.
    #[must_use]
    pub fn foot(&self, place: Place) -> (Point3<f64>, Vector3<f64>) {
        let mut p = self.rough(place);
        for _ in 0..3 {
            let away = self.tray.away(&p);
            p -= away * (self.tray.exact_distance(&p) - 1e-3);
        }
        let axis = self.tray.away(&p);
        (p - axis * self.tray.exact_distance(&p), axis)
    }

    /// A point over the tray near a place of the tissue surface.
    fn rough(&self, place: Place) -> Point3<f64> {
        let at = |along: f64, out: f64, z: f64| {
            let plan = self.mouth.plan(along, out);
            Point3::new(plan.x, plan.y, z)
        };
        match place {
            Place::Palate {
                right_mm,
                anterior_mm,
            } => {
                let x = right_mm * self.mouth.kind.right_sign();
                let z = self.mouth.palate.map_or(0.0, |p| p.height(x, anterior_mm));
                Point3::new(x, anterior_mm, z)
            }
            Place::Arch { station, across } => {
                let along = self.along(station);
                let section = self.mouth.sections.at(along);
                match (across, self.mouth.kind) {
                    (Across::Crest, _) => at(along, section.crest_out, section.crest_z),
                    (Across::OuterSlope, _) => at(along, section.outer.base_out - 2.0, 1.8),
                    (Across::InnerSlope, Arch::Mandibular) => {
                        at(along, section.inner.base_out + 2.0, 1.8)
                    }
                    (Across::InnerSlope, Arch::Maxillary) => {
                        let up = 0.45 * self.mouth.palate.map_or(0.0, |p| p.vault - p.fall_aside);
                        at(
                            along,
                            -section.slope_out - up / section.slope_angle.tan(),
                            up,
                        )
                    }
                }
            }
        }
    }
}

/// Where a function first falls below 0 on the way from 0 to `reach`, taking
/// its values for distances.
fn crossing(f: impl Fn(f64) -> f64, reach: f64) -> Option<f64> {
    let (mut last, mut gone) = (None, 0.0);
    while gone <= reach {
        let value = f(gone);
        if value < 0.0 {
            return Some(last.map_or(gone, |before| root(f, before, (gone, value))));
        }
        last = Some((gone, value));
        // Border notches steepen the function to about twice a distance.
        gone += (0.55 * value).max(0.03);
    }
    None
}

/// The zero of a function between two places of opposite sign, by the Illinois
/// variant of false position, to about 1e-9 mm.
fn root(f: impl Fn(f64) -> f64, mut a: (f64, f64), mut b: (f64, f64)) -> f64 {
    for _ in 0..40 {
        let at = (a.0 * b.1 - b.0 * a.1) / (b.1 - a.1);
        let value = f(at);
        if value.abs() < 1e-9 {
            return at;
        }
        if (value < 0.0) == (b.1 < 0.0) {
            a.1 *= 0.5;
        } else {
            a = b;
        }
        b = (at, value);
    }
    b.0
}

/// Where a function with one lowest place between two bounds is lowest: by
/// trying `count` places, then golden section around the best.
pub(crate) fn least_at(f: impl Fn(f64) -> f64, low: f64, high: f64, count: usize) -> f64 {
    let step = (high - low) / count as f64;
    let best = (0..=count)
        .map(|i| low + step * i as f64)
        .min_by(|&a, &b| f(a).total_cmp(&f(b)))
        .unwrap_or(low);
    let (mut a, mut b) = ((best - step).max(low), (best + step).min(high));
    let golden = 0.5 * (5f64.sqrt() - 1.0);
    for _ in 0..14 {
        let (c, d) = (b - golden * (b - a), a + golden * (b - a));
        if f(c) < f(d) {
            b = d;
        } else {
            a = c;
        }
    }
    0.5 * (a + b)
}
