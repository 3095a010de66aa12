//! A quadratic height over a plane, fitted so that a quarter of the points may
//! be something else.

use super::surface::Surface;
use nalgebra::{Matrix3, Matrix6, Point3, Vector3, Vector6};

/// Axes at a place: the third is the height.
#[derive(Debug, Clone, Copy)]
pub struct Frame {
    origin: Point3<f64>,
    axes: Matrix3<f64>,
}

impl Frame {
    /// A frame whose height runs along the mean normal of some vertices;
    /// `None` where they face every way.
    pub fn at(surface: &Surface<'_>, origin: Point3<f64>, over: &[u32]) -> Option<Self> {
        let sum: Vector3<f64> = over
            .iter()
            .map(|&v| surface.normals[v as usize] * surface.areas[v as usize])
            .sum();
        let up = sum.try_normalize(1e-12)?;
        let aside = if up.x.abs() < 0.7 {
            Vector3::x()
        } else {
            Vector3::y()
        };
        let u = up.cross(&aside).normalize();
        Some(Self {
            origin,
            axes: Matrix3::from_columns(&[u, up.cross(&u), up]),
        })
    }

    /// A point as (u, v, height).
    pub fn local(&self, p: &Point3<f64>) -> Vector3<f64> {
        self.axes.tr_mul(&(p - self.origin))
    }

    /// A place (u, v, height) as a point.
    pub fn point(&self, local: &Vector3<f64>) -> Point3<f64> {
        self.origin + self.axes * local
    }

    /// The direction of height.
    pub fn up(&self) -> Vector3<f64> {
        self.axes.column(2).into_owned()
    }
}

/// The terms of a quadratic polynomial.
pub fn terms(u: f64, v: f64) -> Vector6<f64> {
    Vector6::new(1.0, u, v, u * u, u * v, v * v)
}

/// A quadratic height.
#[derive(Debug, Clone, Copy)]
pub struct Quadric(pub Vector6<f64>);

impl Quadric {
    /// Height at (u, v).
    pub fn height(&self, u: f64, v: f64) -> f64 {
        self.0.dot(&terms(u, v))
    }

    /// The weighted least-squares fit; `None` where points do not determine it.
    pub fn fit(points: &[Vector3<f64>], weights: &[f64]) -> Option<Self> {
        let (mut normal, mut right) = (Matrix6::zeros(), Vector6::zeros());
        for (p, &weight) in points.iter().zip(weights) {
            if weight > 0.0 {
                let row = terms(p.x, p.y);
                normal.syger(weight, &row, &row, 1.0);
                right.axpy(weight * p.z, &row, 1.0);
            }
        }
        let solution = Self(normal.cholesky()?.solve(&right));
        solution.0.iter().all(|c| c.is_finite()).then_some(solution)
    }

    /// The fit by iterated Tukey biweights (Beaton and Tukey 1974), with the
    /// scale of its residuals: `floor_mm` at least.
    pub fn robust(points: &[Vector3<f64>], floor_mm: f64) -> Option<Robust> {
        const ROUNDS: usize = 4;
        const LEAST_POINTS: usize = 12;
        if points.len() < LEAST_POINTS {
            return None;
        }
        let mut weights = vec![1.0; points.len()];
        let mut quadric = Self::fit(points, &weights)?;
        let mut scale = floor_mm;
        let mut sizes = Vec::with_capacity(points.len());
        for _ in 0..ROUNDS {
            sizes.clear();
            sizes.extend(
                points
                    .iter()
                    .map(|p| (p.z - quadric.height(p.x, p.y)).abs()),
            );
            for (weight, size) in weights.iter_mut().zip(&sizes) {
                *weight = *size;
            }
            let middle = sizes.len() / 2;
            let median = *sizes.select_nth_unstable_by(middle, f64::total_cmp).1;
            scale = (1.4826 * median).max(floor_mm);
            for weight in &mut weights {
                *weight = biweight(*weight / (4.685 * scale));
            }
            quadric = Self::fit(points, &weights)?;
        }
        Some(Robust {
            quadric,
            scale_mm: scale,
        })
    }
}

/// A robust fit.
pub struct Robust {
    pub quadric: Quadric,
    /// Standard deviation of what belongs to the surface, mm.
    pub scale_mm: f64,
}

fn biweight(x: f64) -> f64 {
    let rest = (1.0 - x * x).max(0.0);
    rest * rest
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A fifth of the points lies 0.5 mm too low, all in one place.
    #[test]
    fn a_pit_does_not_pull_a_robust_quadric() {
        let truth = |u: f64, v: f64| 0.2 - 0.1 * u + 0.3 * v + 0.05 * u * u - 0.02 * u * v;
        let mut points = Vec::new();
        for i in -10..=10 {
            for j in -10..=10 {
                let (u, v) = (0.3 * f64::from(i), 0.3 * f64::from(j));
                let pit = if u.hypot(v) < 1.5 { 0.5 } else { 0.0 };
                points.push(Vector3::new(u, v, truth(u, v) - pit));
            }
        }
        let fit = Quadric::robust(&points, 0.01).expect("the points determine it");
        for (u, v) in [(0.0, 0.0), (2.0, -1.0), (-3.0, 3.0)] {
            assert!(
                (fit.quadric.height(u, v) - truth(u, v)).abs() < 1e-6,
                "{u} {v}"
            );
        }
    }
}
