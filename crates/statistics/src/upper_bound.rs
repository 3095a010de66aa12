//! The one-sided upper bound of a variance that is a sum of mean squares, some of them
//! subtracted.

use statrs::distribution::{ChiSquared, ContinuousCDF, FisherSnedecor};

/// Confidence of a bound.
const CONFIDENCE: f64 = 0.95;

/// What a sum of variances is at most, with a one-sided confidence of 95 %, for normal
/// readings. Each is given with its sign and its degrees of freedom; one at most is
/// subtracted. `None` where the sum lies so far below 0 that the bound does, too.
///
/// By the modified large sample method of Graybill and Wang 1980, with a subtracted
/// variance by its extension of Ting, Burdick, Graybill, Jeyaratnam and Lu 1990 (both from
/// memory). It is exact for one variance, and for two where the bound is 0 or the
/// subtracted one is known exactly.
pub(crate) fn of_sum(variances: &[(f64, f64)]) -> Option<f64> {
    let sum: f64 = variances.iter().map(|v| v.0).sum();
    let (added, subtracted): (Vec<_>, Vec<_>) = variances.iter().partition(|v| v.0 >= 0.0);
    let mut squares = 0.0;
    for &(variance, freedom) in &added {
        squares += (above(freedom)? * variance).powi(2);
    }
    for &(variance, freedom) in &subtracted {
        squares += (below(freedom)? * variance).powi(2);
        for &(from, of_from) in &added {
            squares += crossed(of_from, freedom)? * from * variance.abs();
        }
    }
    let bound = sum + squares.max(0.0).sqrt();
    (bound >= 0.0).then_some(bound)
}

/// How far a variance of so many degrees of freedom may lie above its estimate, as a part
/// of that.
fn above(freedom: f64) -> Option<f64> {
    let chi = ChiSquared::new(freedom).ok()?;
    Some(freedom / chi.inverse_cdf(1.0 - CONFIDENCE) - 1.0)
}

/// How far it may lie below.
fn below(freedom: f64) -> Option<f64> {
    let chi = ChiSquared::new(freedom).ok()?;
    Some(1.0 - freedom / chi.inverse_cdf(CONFIDENCE))
}

/// The share that a pair of variances, one less the other, has together.
fn crossed(added: f64, subtracted: f64) -> Option<f64> {
    let by_chance = FisherSnedecor::new(added, subtracted).ok()?;
    let f = by_chance.inverse_cdf(1.0 - CONFIDENCE);
    let apart = (above(added)? * f).powi(2) + below(subtracted)?.powi(2);
    Some(((1.0 - f).powi(2) - apart) / f)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, wanted: f64) {
        assert!(
            (value - wanted).abs() <= 1e-3 * wanted.abs().max(1e-3),
            "{value} instead of {wanted}"
        );
    }

    /// 5 % of chi squared of 10 degrees of freedom lie below 3.9403 (tables).
    #[test]
    fn of_one_variance_the_bound_is_exact() {
        near(of_sum(&[(2.0, 10.0)]).unwrap(), 2.0 * 10.0 / 3.9403);
    }

    /// 95 % of F of 18 and 9 degrees of freedom lie below 2.960 (tables), so that 5 % of F
    /// of 9 and 18 lie below 1 / 2.960; there the bound of the difference is 0.
    #[test]
    fn of_two_variances_the_bound_is_zero_where_their_ratio_is_as_rare() {
        let f = FisherSnedecor::new(9.0, 18.0).unwrap().inverse_cdf(0.05);
        near(f, 1.0 / 2.960);
        assert!(of_sum(&[(f * 1.001, 9.0), (-1.0, 18.0)]).unwrap() < 0.002);
        assert_eq!(of_sum(&[(f * 0.99, 9.0), (-1.0, 18.0)]), None);
    }

    #[test]
    fn a_subtracted_variance_that_is_known_exactly_is_no_more_than_subtracted() {
        let bound = of_sum(&[(2.0, 10.0), (-0.5, 1e6)]).unwrap();
        assert!(
            (bound - (2.0 * 10.0 / 3.9403 - 0.5)).abs() < 0.01,
            "{bound}"
        );
    }

    #[test]
    fn of_nothing_that_varies_the_bound_is_zero() {
        assert_eq!(of_sum(&[(0.0, 9.0), (0.0, 18.0)]), Some(0.0));
    }
}
