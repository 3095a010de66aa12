//! Order statistics.

/// The median; the upper of the two in the middle for an even count. `None` for
/// no values. Reorders them.
#[must_use]
pub fn median(values: &mut [f64]) -> Option<f64> {
    let middle = values.len() / 2;
    (!values.is_empty()).then(|| *values.select_nth_unstable_by(middle, f64::total_cmp).1)
}

/// The value below which a share (0 to 1) of the values lies. `None` for no values.
/// Reorders them.
#[must_use]
pub fn at_share(values: &mut [f64], share: f64) -> Option<f64> {
    let last = values.len().checked_sub(1)?;
    let at = ((share * values.len() as f64) as usize).min(last);
    Some(*values.select_nth_unstable_by(at, f64::total_cmp).1)
}

/// Standard deviation of values about 0 by the median of their sizes, so that
/// outliers count for nothing (1.4826 is the ratio of the two for normal
/// values, Hampel 1974). `None` for no values.
#[must_use]
pub fn robust_sd(values: impl IntoIterator<Item = f64>) -> Option<f64> {
    const MEDIAN_TO_SD: f64 = 1.4826;
    let mut sizes: Vec<f64> = values.into_iter().map(f64::abs).collect();
    median(&mut sizes).map(|middle| MEDIAN_TO_SD * middle)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn medians_of_odd_even_and_no_values() {
        assert_eq!(median(&mut [3.0, 1.0, 2.0]), Some(2.0));
        assert_eq!(median(&mut [4.0, 1.0, 3.0, 2.0]), Some(3.0));
        assert_eq!(median(&mut []), None);
        let mut ten = [9.0, 1.0, 3.0, 7.0, 5.0, 0.0, 2.0, 8.0, 6.0, 4.0];
        assert_eq!(at_share(&mut ten, 0.1), Some(1.0));
        assert_eq!(at_share(&mut ten, 1.0), Some(9.0));
        assert_eq!(at_share(&mut [], 0.5), None);
    }

    #[test]
    fn an_outlier_leaves_the_robust_deviation_alone() {
        assert_eq!(robust_sd([-1.0, 1.0, -1.0, 1.0, 1e9]), Some(1.4826));
        assert_eq!(robust_sd([]), None);
    }
}
