//! Where numbers lie and how far they are spread.

/// The mean; `None` of no numbers. The mean of what is left over is added, so
/// that large numbers with a small spread keep their digits.
#[must_use]
pub fn mean(values: &[f64]) -> Option<f64> {
    if values.is_empty() {
        return None;
    }
    let count = values.len() as f64;
    let rough = values.iter().sum::<f64>() / count;
    Some(rough + values.iter().map(|v| v - rough).sum::<f64>() / count)
}

/// Standard deviation of a sample (n - 1), by the corrected two-pass formula of
/// Chan, Golub and LeVeque 1983; `None` of fewer than two numbers.
#[must_use]
pub fn sd(values: &[f64]) -> Option<f64> {
    let mean = mean(values).filter(|_| values.len() > 1)?;
    let count = values.len() as f64;
    let squares: f64 = values.iter().map(|v| (v - mean).powi(2)).sum();
    let rest: f64 = values.iter().map(|v| v - mean).sum();
    Some(((squares - rest * rest / count).max(0.0) / (count - 1.0)).sqrt())
}

/// Standard deviations pooled, each weighted by its degrees of freedom, with
/// the degrees of freedom of the whole: (standard deviation, degrees of
/// freedom) of each group. `None` without any degree of freedom.
#[must_use]
pub fn pooled_sd(groups: &[(f64, f64)]) -> Option<(f64, f64)> {
    let freedom: f64 = groups.iter().map(|g| g.1).sum();
    let squares: f64 = groups.iter().map(|(sd, freedom)| freedom * sd * sd).sum();
    (freedom > 0.0).then(|| ((squares / freedom).sqrt(), freedom))
}

/// The value below which this part (0 to 1) of the numbers lies, between
/// neighbours in proportion (definition 7 of Hyndman and Fan 1996); the median
/// at 0.5. `None` of no numbers.
#[must_use]
pub fn quantile(values: &[f64], part: f64) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let last = sorted.len().checked_sub(1)?;
    let place = part.clamp(0.0, 1.0) * last as f64;
    let (low, high) = (
        sorted[place.floor() as usize],
        sorted[place.ceil() as usize],
    );
    Some(low + (high - low) * place.fract())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST StRD, univariate summary statistics: certified mean and standard
    /// deviation of data sets made to defeat careless sums. The data sets are
    /// known from memory; their standard deviations follow from how they are made.
    #[test]
    fn large_numbers_with_a_small_spread_keep_their_digits() {
        let acc1 = [10_000_001.0, 10_000_003.0, 10_000_002.0];
        assert_eq!(mean(&acc1), Some(10_000_002.0));
        assert_eq!(sd(&acc1), Some(1.0));
        for (base, digits) in [(1_000_000.0, 1e-9), (10_000_000.0, 1e-8)] {
            let mut values = vec![base + 0.2];
            for _ in 0..500 {
                values.extend([base + 0.1, base + 0.3]);
            }
            assert!((mean(&values).unwrap() - (base + 0.2)).abs() < 1e-8);
            assert!((sd(&values).unwrap() - 0.1).abs() < digits);
        }
    }

    /// NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4.1 (gauge study,
    /// probe 2362, sums of squares of five wafers of 60 degrees of freedom) and
    /// 2.4.4.3 (five check standards of one). Read on its pages.
    #[test]
    fn pooling_gives_the_standard_deviations_of_the_handbook() {
        let wafers = [0.481_15, 0.692_09, 0.484_83, 1.217_52, 0.300_76]
            .map(|squares: f64| ((squares / 60.0).sqrt(), 60.0));
        let (s1, freedom) = pooled_sd(&wafers).unwrap();
        assert!((s1 - 0.102_90).abs() < 5e-6 && freedom == 300.0, "{s1}");
        let standards = [0.0223, 0.0027, 0.0289, 0.0133, 0.0205].map(|sd| (sd, 1.0));
        let (s3, freedom) = pooled_sd(&standards).unwrap();
        assert!((s3 - 0.0197).abs() < 5e-5 && freedom == 5.0, "{s3}");
    }

    #[test]
    fn quantiles_lie_between_neighbours_in_proportion() {
        let values = [4.0, 1.0, 3.0, 2.0];
        assert_eq!(quantile(&values, 0.5), Some(2.5));
        assert_eq!(quantile(&values, 0.0), Some(1.0));
        assert_eq!(quantile(&values, 1.0), Some(4.0));
        assert_eq!(quantile(&[], 0.5), None);
        assert_eq!(sd(&[1.0]), None);
    }
}
