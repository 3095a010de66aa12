//! The course of the light over a scan.

use geometry::order::median;
use nalgebra::{Point3, SMatrix, SVector};

/// Number of terms of the light's course: of second order in x, y and z.
const TERMS: usize = 10;

/// How strong the light is over the scan, 1 on the mean: the logarithm of
/// L* + 16 as a polynomial of second order, which a patch of tray cannot bend.
pub(super) struct Light {
    low: Point3<f64>,
    high: Point3<f64>,
    course: SVector<f64, TERMS>,
    mean: f64,
}

impl Light {
    /// Fitted with Tukey's biweight, reweighted; `None` of too few points.
    pub(super) fn over(points: impl Iterator<Item = (Point3<f64>, f64)>) -> Option<Self> {
        const ROUNDS: usize = 8;
        /// In units of a normal standard deviation: 95 % efficient (Huber 1981).
        const BIWEIGHT: f64 = 4.685;
        const LEAST_POINTS: usize = 100;
        let points: Vec<(Point3<f64>, f64)> = points.map(|(p, l)| (p, l.max(1.0).ln())).collect();
        if points.len() < LEAST_POINTS {
            return None;
        }
        let corner = |least: fn(f64, f64) -> f64, start: f64| {
            points
                .iter()
                .fold(Point3::from([start; 3]), |corner, (p, _)| {
                    Point3::from(corner.coords.zip_map(&p.coords, least))
                })
        };
        let mut light = Self {
            low: corner(f64::min, f64::INFINITY),
            high: corner(f64::max, f64::NEG_INFINITY),
            course: SVector::zeros(),
            mean: 0.0,
        };
        light.course[0] = middle(points.iter().map(|(_, l)| *l));
        let terms: Vec<SVector<f64, TERMS>> = points.iter().map(|(p, _)| light.terms(p)).collect();
        for _ in 0..ROUNDS {
            let off: Vec<f64> = (points.iter().zip(&terms))
                .map(|((_, l), terms)| l - terms.dot(&light.course))
                .collect();
            let spread = 1.4826 * middle(off.iter().map(|off| off.abs()));
            let reach = BIWEIGHT * spread.max(1e-6);
            let mut normal = SMatrix::<f64, TERMS, TERMS>::identity() * 1e-9;
            let mut right = SVector::<f64, TERMS>::zeros();
            for (((_, l), terms), off) in points.iter().zip(&terms).zip(&off) {
                let weight = (1.0 - (off / reach).powi(2)).max(0.0).powi(2);
                normal.ger(weight, terms, terms, 1.0);
                right.axpy(weight * l, terms, 1.0);
            }
            light.course = normal.cholesky()?.solve(&right);
        }
        let sum: f64 = terms.iter().map(|terms| terms.dot(&light.course)).sum();
        light.mean = sum / points.len() as f64;
        Some(light)
    }

    fn terms(&self, p: &Point3<f64>) -> SVector<f64, TERMS> {
        // Beyond the tissue surface the course is not known: as at its end.
        let [x, y, z] = [0, 1, 2].map(|k| {
            let half = ((self.high[k] - self.low[k]) / 2.0).max(1e-9);
            ((p[k] - self.low[k]) / half - 1.0).clamp(-1.0, 1.0)
        });
        SVector::from([1.0, x, y, z, x * x, y * y, z * z, x * y, y * z, z * x])
    }

    pub(super) fn at(&self, p: &Point3<f64>) -> f64 {
        (self.terms(p).dot(&self.course) - self.mean).exp()
    }
}

fn middle(values: impl Iterator<Item = f64>) -> f64 {
    median(&mut values.collect::<Vec<f64>>()).unwrap_or(f64::NAN)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_course_of_light_is_found_through_a_patch_of_another_colour() {
        let points = (0..4000).map(|i| {
            let p = Point3::new(
                f64::from(i % 40) - 20.0,
                f64::from(i / 40 % 40) - 20.0,
                f64::from(i % 7),
            );
            let truth = 60.0 * (0.01 * p.x - 0.004 * p.y).exp();
            let light = if p.x > 12.0 && p.y > 8.0 {
                100.0
            } else {
                truth
            };
            (p, light)
        });
        let light = Light::over(points).expect("there are enough points");
        let [a, b] = [-18.0, 18.0].map(|x| light.at(&Point3::new(x, 2.0, 3.0)));
        assert!((b / a / 0.36f64.exp() - 1.0).abs() < 0.01, "{}", b / a);
    }
}
