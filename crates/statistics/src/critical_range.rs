//! How far apart several readings of one thing may lie.

use statrs::distribution::{Continuous, ContinuousCDF, Normal};

/// The critical range of so many readings, in repeatability standard deviations: they lie
/// within it in 95 of 100 cases. It is the 95 % quantile of the range of a normal sample
/// (of the studentised range with infinite degrees of freedom), to one decimal as ISO
/// 5725-6:1994, table 1, prints it (f(n); 2.8 for two). `None` of fewer than two.
#[must_use]
pub fn critical_range_factor(readings: usize) -> Option<f64> {
    /// No range of a sample that a computer holds lies farther apart.
    const FARTHEST: f64 = 20.0;
    if readings < 2 {
        return None;
    }
    let (mut low, mut high) = (0.0, FARTHEST);
    for _ in 0..40 {
        let middle = (low + high) / 2.0;
        if range_probability(middle, readings) < 0.95 {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some((low * 10.0).round() / 10.0)
}

/// Probability that normal readings of standard deviation 1 lie within a range, by
/// Simpson's rule over the least of them.
fn range_probability(range: f64, readings: usize) -> f64 {
    const STEPS: u32 = 300;
    const FROM: f64 = -9.0;
    const TO: f64 = 9.0;
    let normal = Normal::standard();
    let step = (TO - FROM) / f64::from(STEPS);
    let others = readings as f64 - 1.0;
    let density = |least: f64| {
        let within = normal.cdf(least + range) - normal.cdf(least);
        normal.pdf(least) * within.powf(others)
    };
    let weighted = (0..=STEPS).map(|number| {
        let weight = match number {
            0 | STEPS => 1.0,
            odd if odd % 2 == 1 => 4.0,
            _ => 2.0,
        };
        weight * density(FROM + step * f64::from(number))
    });
    readings as f64 * step / 3.0 * weighted.sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO 5725-6:1994, table 1, from memory.
    #[test]
    fn factors_equal_those_of_the_standard() {
        let printed = [
            (2, 2.8),
            (3, 3.3),
            (4, 3.6),
            (5, 3.9),
            (6, 4.0),
            (7, 4.2),
            (8, 4.3),
            (9, 4.4),
            (10, 4.5),
            (11, 4.6),
            (12, 4.6),
            (13, 4.7),
            (14, 4.7),
            (15, 4.8),
            (16, 4.8),
            (17, 4.9),
            (18, 4.9),
            (19, 5.0),
            (20, 5.0),
            (25, 5.2),
            (30, 5.3),
            (40, 5.5),
            (50, 5.6),
            (60, 5.8),
            (70, 5.9),
            (80, 5.9),
            (90, 6.0),
            (100, 6.1),
        ];
        for (readings, factor) in printed {
            assert_eq!(critical_range_factor(readings), Some(factor), "{readings}");
        }
        assert_eq!(critical_range_factor(1), None);
    }

    /// Tables of the studentised range, 95 %, infinite degrees of freedom: 3.314 for three
    /// and 4.474 for ten.
    #[test]
    fn probabilities_are_those_of_the_studentised_range() {
        for (readings, quantile) in [(2, 2.772), (3, 3.314), (5, 3.858), (10, 4.474)] {
            let found = range_probability(quantile, readings);
            assert!((found - 0.95).abs() < 1e-4, "{readings}: {found}");
        }
    }
}
