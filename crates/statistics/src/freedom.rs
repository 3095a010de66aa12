//! Degrees of freedom of what is put together, and the factors they lead to.

use statrs::distribution::{ContinuousCDF, StudentsT};

/// Effective degrees of freedom of a sum of variances, each given with its own
/// (Satterthwaite 1946; the Welch-Satterthwaite formula of JCGM 100:2008, G.4).
/// A variance that is subtracted is given with its sign.
#[must_use]
pub fn of_sum(variances: &[(f64, f64)]) -> f64 {
    let sum: f64 = variances.iter().map(|v| v.0).sum();
    let doubt: f64 = variances.iter().map(|(v, freedom)| v * v / freedom).sum();
    sum * sum / doubt
}

/// How many standard uncertainties reach to either side for such a confidence,
/// by Student's distribution. `None` without a degree of freedom.
#[must_use]
pub fn coverage_factor(freedom: f64, confidence: f64) -> Option<f64> {
    let t = StudentsT::new(0.0, 1.0, freedom).ok()?;
    Some(t.inverse_cdf(0.5 + confidence / 2.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Calibration of an end gauge, JCGM 100:2008 (GUM), annex H.1: standard
    /// uncertainty 32 nm, 16 degrees of freedom, k = 2.92, U99 = 93 nm. The
    /// contributions and what is printed of them were read in public test code
    /// that quotes the guide.
    #[test]
    fn the_end_gauge_of_the_gum_comes_out_as_printed() {
        let contributions = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)];
        let variances = contributions.map(|(nm, freedom): (f64, f64)| (nm * nm, freedom));
        let combined = variances.iter().map(|v| v.0).sum::<f64>().sqrt();
        assert_eq!(combined.round(), 32.0);
        let freedom = of_sum(&variances).floor();
        assert_eq!(freedom, 16.0);
        let factor = coverage_factor(freedom, 0.99).unwrap();
        assert!((factor - 2.92).abs() < 5e-3, "{factor}");
        assert_eq!((factor * combined).round(), 93.0);
        assert_eq!(coverage_factor(0.0, 0.95), None);
    }
}
