//! A smooth height over a plane, fitted so that a quarter of the points may
//! be something else.

use super::surface::Surface;
use nalgebra::{Matrix2, Matrix3, Point3, SMatrix, SVector, Vector2, Vector3, Vector6};

/// Axes at a place: the third is the height.
#[derive(Debug, Clone, Copy)]
pub(super) struct Frame {
    origin: Point3<f64>,
    axes: Matrix3<f64>,
}

impl Frame {
    /// A frame whose height runs along the mean normal of some vertices;
    /// `None` where they face every way.
    pub(super) fn at(surface: &Surface<'_>, origin: Point3<f64>, over: &[u32]) -> Option<Self> {
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

    /// The same frame turned about its height, u along a direction in its plane.
    pub(super) fn turned(&self, u: &Vector2<f64>) -> Self {
        let across = self.axes * Vector3::new(u.x, u.y, 0.0);
        let up = self.up();
        Self {
            axes: Matrix3::from_columns(&[across, up.cross(&across), up]),
            ..*self
        }
    }

    /// A point as (u, v, height).
    pub(super) fn local(&self, p: &Point3<f64>) -> Vector3<f64> {
        self.axes.tr_mul(&(p - self.origin))
    }

    /// A place (u, v, height) as a point.
    pub(super) fn point(&self, local: &Vector3<f64>) -> Point3<f64> {
        self.origin + self.axes * local
    }

    /// The direction of height.
    pub(super) fn up(&self) -> Vector3<f64> {
        self.axes.column(2).into_owned()
    }
}

/// The terms of a quadratic polynomial.
#[inline]
pub(super) fn terms(u: f64, v: f64) -> Vector6<f64> {
    Vector6::new(1.0, u, v, u * u, u * v, v * v)
}

/// The terms of a polynomial that follows a ridge with a narrow crest: all of the
/// third degree, by which the crest may bend, widen and lean, and a fourth across it.
fn ridge_terms(u: f64, v: f64) -> SVector<f64, RIDGE> {
    let cubic = [u * u * u, u * u * v, u * v * v, v * v * v, u.powi(4)];
    SVector::from_iterator(terms(u, v).iter().copied().chain(cubic))
}

/// How many terms a ridge has.
const RIDGE: usize = 11;

/// A height: a sum of terms.
#[derive(Debug, Clone, Copy)]
pub(super) struct Height<const N: usize> {
    coefficients: SVector<f64, N>,
}

/// A height with so many terms.
trait Polynomial<const N: usize> {
    /// Its terms at (u, v).
    fn terms(u: f64, v: f64) -> SVector<f64, N>;
}

impl Polynomial<6> for Quadric {
    #[inline]
    fn terms(u: f64, v: f64) -> Vector6<f64> {
        terms(u, v)
    }
}

impl Polynomial<RIDGE> for Ridge {
    #[inline]
    fn terms(u: f64, v: f64) -> SVector<f64, RIDGE> {
        ridge_terms(u, v)
    }
}

#[expect(private_bounds, reason = "only this file names the terms of a height")]
impl<const N: usize> Height<N>
where
    Self: Polynomial<N>,
{
    /// Height at (u, v).
    pub(super) fn at(&self, u: f64, v: f64) -> f64 {
        self.coefficients.dot(&Self::terms(u, v))
    }

    /// The weighted least-squares fit; `None` where points do not determine it.
    fn fit(points: &[Vector3<f64>], weights: &[f64]) -> Option<Self> {
        let mut normal = SMatrix::<f64, N, N>::zeros();
        let mut right = SVector::<f64, N>::zeros();
        for (p, &weight) in points.iter().zip(weights) {
            if weight > 0.0 {
                let row = Self::terms(p.x, p.y);
                add_square(&mut normal, weight, &row);
                right.axpy(weight * p.z, &row, 1.0);
            }
        }
        let coefficients = normal.cholesky()?.solve(&right);
        (coefficients.iter().all(|c| c.is_finite())).then_some(Self { coefficients })
    }

    /// The fit by iterated Tukey biweights (Beaton and Tukey 1974), with the
    /// scale of its residuals: `floor_mm` at least.
    pub(super) fn robust_fit(points: &[Vector3<f64>], floor_mm: f64) -> Option<Robust<N>> {
        const ROUNDS: usize = 4;
        if points.len() < 2 * N {
            return None;
        }
        let mut weights = vec![1.0; points.len()];
        let mut height = Self::fit(points, &weights)?;
        let mut scale = floor_mm;
        let mut sizes = Vec::with_capacity(points.len());
        for _ in 0..ROUNDS {
            sizes.clear();
            sizes.extend(points.iter().map(|p| (p.z - height.at(p.x, p.y)).abs()));
            for (weight, size) in weights.iter_mut().zip(&sizes) {
                *weight = *size;
            }
            let middle = sizes.len() / 2;
            let median = *sizes.select_nth_unstable_by(middle, f64::total_cmp).1;
            scale = (1.4826 * median).max(floor_mm);
            for weight in &mut weights {
                *weight = biweight(*weight / (4.685 * scale));
            }
            height = Self::fit(points, &weights)?;
        }
        Some(Robust {
            height,
            scale_mm: scale,
        })
    }
}

/// A quadratic height.
pub(super) type Quadric = Height<6>;

impl Quadric {
    /// The direction in which it bends most: across a crest or a trough.
    pub(super) fn across(&self) -> Vector2<f64> {
        let c = &self.coefficients;
        let bends = Matrix2::new(2.0 * c[3], c[4], c[4], 2.0 * c[5]).symmetric_eigen();
        bends
            .eigenvectors
            .column(bends.eigenvalues.iamax())
            .into_owned()
    }
}

/// A height that follows a crest or a trough along v.
pub(super) type Ridge = Height<RIDGE>;

impl From<Quadric> for Ridge {
    fn from(quadric: Quadric) -> Self {
        Self {
            coefficients: quadric.coefficients.fixed_resize::<RIDGE, 1>(0.0),
        }
    }
}

/// A robust fit.
pub(super) struct Robust<const N: usize> {
    pub height: Height<N>,
    /// Standard deviation of what belongs to the surface, mm.
    pub scale_mm: f64,
}

/// Adds a row's square to the lower triangle of normal equations: loops of known length,
/// which are worked out several steps at once.
pub(super) fn add_square<const N: usize>(
    normal: &mut SMatrix<f64, N, N>,
    weight: f64,
    row: &SVector<f64, N>,
) {
    for column in 0..N {
        let weighted = weight * row[column];
        for k in column..N {
            normal[(k, column)] += weighted * row[k];
        }
    }
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
        let fit = Quadric::robust_fit(&points, 0.01).expect("the points determine it");
        for (u, v) in [(0.0, 0.0), (2.0, -1.0), (-3.0, 3.0)] {
            assert!((fit.height.at(u, v) - truth(u, v)).abs() < 1e-6, "{u} {v}");
        }
    }
}
