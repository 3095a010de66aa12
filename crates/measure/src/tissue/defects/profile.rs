//! Profiles that a pit or a bump may have from its middle to its rim, and which
//! of them fits.

use super::quadric::terms;
use nalgebra::{Matrix2, Matrix6, Vector2, Vector3, Vector6};

/// Cosine of the angle at which a cap meets the surface.
const CAP_COSINE: f64 = 0.4;

/// How depth falls from the middle to the rim.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Profile {
    /// Half a ball: what a bubble leaves.
    Ball,
    /// Less than half a ball: it meets the surface at 66 degrees.
    Cap,
    /// A shallow part of a ball.
    Dish,
    /// A hollow that fades into its surroundings, as anatomy does.
    Smooth,
    /// The same with a wider brim.
    Bell,
}

impl Profile {
    /// All of them; those with a sharp rim first.
    pub const ALL: [Self; 5] = [Self::Ball, Self::Cap, Self::Dish, Self::Smooth, Self::Bell];

    /// Whether it ends in a sharp rim.
    pub fn has_rim(self) -> bool {
        matches!(self, Self::Ball | Self::Cap | Self::Dish)
    }

    /// Depth at a squared distance from the middle, the depth of the middle
    /// being 1.
    fn depth(self, squared: f64) -> f64 {
        let rest = (1.0 - squared).max(0.0);
        match self {
            Self::Ball => rest.sqrt(),
            Self::Cap if rest == 0.0 => 0.0,
            Self::Cap => {
                let sine_squared = 1.0 - CAP_COSINE * CAP_COSINE;
                ((1.0 - squared * sine_squared).sqrt() - CAP_COSINE) / (1.0 - CAP_COSINE)
            }
            Self::Dish => rest,
            Self::Smooth => rest * rest,
            Self::Bell => (-0.5 * squared).exp(),
        }
    }

    /// Distance from the middle at which half of the depth is left.
    fn half_depth_at(self) -> f64 {
        match self {
            Self::Ball => 0.75f64.sqrt(),
            Self::Cap => {
                let middle = (1.0 + CAP_COSINE) / 2.0;
                ((1.0 - middle * middle) / (1.0 - CAP_COSINE * CAP_COSINE)).sqrt()
            }
            Self::Dish => 0.5f64.sqrt(),
            Self::Smooth => (1.0 - 0.5f64.sqrt()).sqrt(),
            Self::Bell => (2.0 * 2f64.ln()).sqrt(),
        }
    }
}

/// The outline of a footprint at half its depth: an ellipse in the plane of a
/// frame.
#[derive(Debug, Clone, Copy)]
pub struct Outline {
    pub centre: Vector2<f64>,
    /// Squared half axes as a matrix: a place x lies on the outline where
    /// x' S^-1 x = 1.
    pub shape: Matrix2<f64>,
}

impl Outline {
    /// The ellipse with the second moments of weighted places; for a disc of
    /// radius a, they are a²/4.
    pub fn of(places: impl Iterator<Item = (Vector2<f64>, f64)> + Clone) -> Option<Self> {
        let total: f64 = places.clone().map(|p| p.1).sum();
        if total <= 0.0 {
            return None;
        }
        let centre = places.clone().map(|p| p.0 * p.1).sum::<Vector2<f64>>() / total;
        let spread = places
            .map(|(p, weight)| {
                let off = p - centre;
                off * off.transpose() * weight
            })
            .sum::<Matrix2<f64>>()
            / total;
        let shape = spread * 4.0;
        (shape.determinant() > 1e-12).then_some(Self { centre, shape })
    }

    /// Radius of the circle of the same area, mm.
    pub fn radius(&self) -> f64 {
        self.shape.determinant().max(0.0).powf(0.25)
    }

    /// Longer over shorter axis.
    pub fn elongation(&self) -> f64 {
        let values = self.shape.symmetric_eigenvalues();
        let (most, least) = (values.max(), values.min());
        (most / least.max(1e-12)).sqrt()
    }
}

/// Departures to be explained, with the surroundings left free.
pub struct Fitting<'a> {
    /// (u, v, departure), mm.
    points: &'a [Vector3<f64>],
    weights: &'a [f64],
    /// Inverse of the surroundings' normal matrix, and what it leaves.
    free: Matrix6<f64>,
    moments: Vector6<f64>,
    /// Sum of squares that the surroundings alone leave, mm².
    pub left_alone: f64,
    /// Sum of the weights.
    pub weight: f64,
}

/// How well one profile explains.
#[derive(Debug, Clone, Copy)]
pub struct Fitted {
    pub profile: Profile,
    /// Depth of the middle, mm.
    pub depth_mm: f64,
    /// Radius of the rim (of the bell: at a standard width), mm.
    pub radius_mm: f64,
    pub centre: Vector2<f64>,
    /// Weighted sum of squares left, mm².
    pub left: f64,
    /// Sum of squares of the profile that the surroundings cannot take over:
    /// the variance of the depth is that of the noise over this.
    pub leverage: f64,
}

impl<'a> Fitting<'a> {
    /// Departures over a place, each with a weight.
    pub fn new(points: &'a [Vector3<f64>], weights: &'a [f64]) -> Option<Self> {
        let (mut normal, mut moments, mut squares) = (Matrix6::zeros(), Vector6::zeros(), 0.0);
        for (p, &weight) in points.iter().zip(weights) {
            let row = terms(p.x, p.y);
            normal.syger(weight, &row, &row, 1.0);
            moments.axpy(weight * p.z, &row, 1.0);
            squares += weight * p.z * p.z;
        }
        normal.fill_upper_triangle_with_lower_triangle();
        let free = normal.cholesky()?.inverse();
        Some(Self {
            points,
            weights,
            left_alone: squares - moments.dot(&(free * moments)),
            free,
            moments,
            weight: weights.iter().sum(),
        })
    }

    /// The best size and place of a profile, starting from an outline.
    pub fn best(&self, profile: Profile, outline: &Outline) -> Option<Fitted> {
        const ROUNDS: usize = 5;
        let radius = outline.radius();
        let inverse = outline.shape.try_inverse()? * (radius * radius);
        let start = radius / profile.half_depth_at();
        let mut at = Vector3::new(outline.centre.x, outline.centre.y, start);
        let mut best = self.tried(profile, &inverse, &at)?;
        let mut step = 0.16 * radius;
        for _ in 0..ROUNDS {
            for k in 0..3 {
                for sign in [-1.0, 1.0] {
                    let mut tried = at;
                    tried[k] += sign * step;
                    if tried.z < 0.3 * start || tried.z > 2.5 * start {
                        continue;
                    }
                    if let Some(found) = self.tried(profile, &inverse, &tried)
                        && found.left < best.left
                    {
                        (best, at) = (found, tried);
                    }
                }
            }
            step *= 0.6;
        }
        Some(best)
    }

    fn tried(&self, profile: Profile, inverse: &Matrix2<f64>, at: &Vector3<f64>) -> Option<Fitted> {
        let centre = at.xy();
        let (mut row_sums, mut squares, mut product) = (Vector6::zeros(), 0.0, 0.0);
        let scale = 1.0 / (at.z * at.z);
        for (p, &weight) in self.points.iter().zip(self.weights) {
            let off = p.xy() - centre;
            let squared = off.dot(&(inverse * off)) * scale;
            let depth = profile.depth(squared);
            if depth > 0.0 {
                row_sums.axpy(weight * depth, &terms(p.x, p.y), 1.0);
                squares += weight * depth * depth;
                product += weight * depth * p.z;
            }
        }
        let taken = self.free * row_sums;
        let leverage = squares - row_sums.dot(&taken);
        if leverage < 1e-9 {
            return None;
        }
        let rest = product - self.moments.dot(&taken);
        Some(Fitted {
            profile,
            depth_mm: rest / leverage,
            radius_mm: at.z,
            centre,
            left: (self.left_alone - rest * rest / leverage).max(0.0),
            leverage,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_profile_is_one_in_the_middle_and_half_where_it_says() {
        for profile in Profile::ALL {
            assert!((profile.depth(0.0) - 1.0).abs() < 1e-12, "{profile:?}");
            let half = profile.half_depth_at();
            assert!(
                (profile.depth(half * half) - 0.5).abs() < 1e-12,
                "{profile:?}"
            );
            assert!(
                profile.depth(1.0) < 1e-12 || profile == Profile::Bell,
                "{profile:?}"
            );
        }
    }

    /// A dish of known depth and radius on a tilted, curved ground.
    #[test]
    fn a_dish_is_found_with_its_depth_and_radius() {
        let mut points = Vec::new();
        for i in -12..=12 {
            for j in -12..=12 {
                let (u, v) = (0.2 * f64::from(i), 0.2 * f64::from(j));
                let squared = ((u - 0.1).powi(2) + (v + 0.2).powi(2)) / 0.81;
                let ground = 0.3 + 0.1 * u - 0.05 * v + 0.02 * u * u - 0.04 * u * v;
                points.push(Vector3::new(u, v, ground + 0.4 * (1.0 - squared).max(0.0)));
            }
        }
        let weights = vec![1.0; points.len()];
        let fitting = Fitting::new(&points, &weights).expect("the points span a plane");
        let outline = Outline {
            centre: Vector2::new(0.0, -0.1),
            shape: Matrix2::identity() * 0.4,
        };
        let dish = fitting.best(Profile::Dish, &outline).expect("a dish");
        let bell = fitting.best(Profile::Bell, &outline).expect("a bell");
        assert!((dish.depth_mm - 0.4).abs() < 0.01, "{}", dish.depth_mm);
        assert!((dish.radius_mm - 0.9).abs() < 0.03, "{}", dish.radius_mm);
        assert!(dish.left < 0.1 * bell.left);
    }
}
