//! Repeatability in the sense of ISO 5725: how far readings of one thing differ
//! that were taken one after another in the same way.

use crate::freedom::coverage_factor;
use crate::{critical_range_factor, mean, sd};
use statrs::distribution::{ChiSquared, ContinuousCDF};

/// Two readings differ by less than this many repeatability standard
/// deviations with a probability of 95 % (ISO 5725-6: 1.96 √2, rounded).
pub const LIMIT_FACTOR: f64 = 2.8;

/// How far repeated readings of one thing lie apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Repeatability {
    /// Number of readings.
    pub readings: usize,
    /// Their mean.
    pub mean: f64,
    /// How far the mean of many may lie from it, with a confidence of 95 %.
    pub mean_uncertainty: f64,
    /// Repeatability standard deviation.
    pub sd: f64,
    /// What it may be, with a confidence of 95 %: from, to.
    pub sd_between: (f64, f64),
    /// Repeatability limit: two readings differ by less in 95 of 100.
    pub limit: f64,
    /// Most less least of these readings.
    pub range: f64,
    /// Critical range: so many readings lie within it in 95 of 100.
    pub critical_range: f64,
}

impl Repeatability {
    /// Of readings taken one after another; `None` of fewer than two.
    #[must_use]
    pub fn of(readings: &[f64]) -> Option<Self> {
        let sd = sd(readings)?;
        let freedom = readings.len() as f64 - 1.0;
        Some(Self {
            readings: readings.len(),
            mean: mean(readings)?,
            mean_uncertainty: coverage_factor(freedom, 0.95)? * sd / (freedom + 1.0).sqrt(),
            sd,
            sd_between: interval(sd, freedom)?,
            limit: LIMIT_FACTOR * sd,
            range: range(readings),
            critical_range: critical_range_factor(readings.len())? * sd,
        })
    }
}

fn range(readings: &[f64]) -> f64 {
    let most = readings.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    most - readings.iter().copied().fold(f64::INFINITY, f64::min)
}

/// What a standard deviation of so many degrees of freedom may be, with a
/// confidence of 95 %, for normal readings.
#[must_use]
pub fn interval(sd: f64, freedom: f64) -> Option<(f64, f64)> {
    let chi = ChiSquared::new(freedom).ok()?;
    let bound = |part| sd * (freedom / chi.inverse_cdf(part)).sqrt();
    Some((bound(0.975), bound(0.025)))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Chi-squared quantiles of 9 degrees of freedom as in any printed table:
    /// 2.700 and 19.023.
    #[test]
    fn the_interval_follows_from_the_tables_of_chi_squared() {
        let (from, to) = interval(1.0, 9.0).unwrap();
        assert!((from - (9.0_f64 / 19.023).sqrt()).abs() < 1e-4, "{from}");
        assert!((to - (9.0_f64 / 2.700).sqrt()).abs() < 2e-4, "{to}");
        assert_eq!(interval(1.0, 0.0), None);
    }

    #[test]
    fn readings_give_their_spread() {
        let found = Repeatability::of(&[1.0, 2.0, 3.0]).unwrap();
        assert_eq!((found.mean, found.sd, found.limit), (2.0, 1.0, 2.8));
        assert_eq!((found.range, found.critical_range), (2.0, 3.3));
        // 4.303 of Student's table for two degrees of freedom.
        assert!((found.mean_uncertainty - 4.303 / 3.0_f64.sqrt()).abs() < 3e-4);
        assert_eq!(Repeatability::of(&[1.0]), None);
    }
}
