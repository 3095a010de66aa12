//! Individuals and moving ranges (Shewhart).

use super::Process;
use crate::mean;

/// Mean range of two values of a normal distribution, in standard deviations
/// (constant d2 for two; ISO 7870-2, ASTM E2587).
pub const D2: f64 = 1.128;
/// Upper control limit of a range of two, as a multiple of the mean range
/// (constant D4 for two; the same sources).
pub const D4: f64 = 3.267;

/// A chart of individuals and moving ranges (Shewhart).
#[derive(Debug, Clone, PartialEq)]
pub struct IndividualsChart {
    /// Mean of the values: centre line of the chart of individuals.
    pub mean: f64,
    /// Lower control limit of the values: three standard deviations below.
    pub lower: f64,
    /// Upper control limit of the values.
    pub upper: f64,
    /// Differences of neighbours, without sign; one fewer than the values.
    pub ranges: Vec<f64>,
    /// Their mean: centre line of the chart of moving ranges.
    pub mean_range: f64,
    /// Upper control limit of the moving ranges; the lower one is 0.
    pub upper_range: f64,
}

impl Process {
    /// The process that values in order of time show; `None` of fewer than two. The
    /// standard deviation is the mean moving range over [`D2`], which a shift of the mean
    /// hardly widens.
    #[must_use]
    pub fn of(values: &[f64]) -> Option<Self> {
        Some(Self {
            centre: mean(values)?,
            sigma: mean(&moving_ranges(values))? / D2,
        })
    }
}

fn moving_ranges(values: &[f64]) -> Vec<f64> {
    values.windows(2).map(|w| (w[1] - w[0]).abs()).collect()
}

impl IndividualsChart {
    /// The chart of values in order of time by limits of their own; `None` of fewer than
    /// two.
    #[must_use]
    pub fn of(values: &[f64]) -> Option<Self> {
        Some(Self::by(Process::of(values)?, values))
    }

    /// The chart of values in order of time by the limits of a known process.
    #[must_use]
    pub fn by(process: Process, values: &[f64]) -> Self {
        let reach = 3.0 * process.sigma;
        let mean_range = D2 * process.sigma;
        Self {
            mean: process.centre,
            lower: process.centre - reach,
            upper: process.centre + reach,
            ranges: moving_ranges(values),
            mean_range,
            upper_range: D4 * mean_range,
        }
    }

    /// Whether a value lies outside the control limits.
    #[must_use]
    pub fn is_out(&self, value: f64) -> bool {
        value < self.lower || value > self.upper
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: flow rates of
    /// ten batches; mean, mean moving range and limits as printed there (quoted
    /// alike in several public test suites).
    #[test]
    fn limits_equal_those_of_the_handbook() {
        let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
        let chart = IndividualsChart::of(&rates).unwrap();
        let printed = [
            (chart.mean, 50.81),
            (chart.mean_range, 1.8778),
            (chart.upper, 55.8041),
            (chart.lower, 45.8159),
        ];
        for (value, wanted) in printed {
            assert!((value - wanted).abs() < 5e-5, "{value} {wanted}");
        }
        assert!(rates.iter().all(|&rate| !chart.is_out(rate)));
        assert!(chart.is_out(55.81) && chart.is_out(45.81));
    }

    #[test]
    fn one_value_has_no_chart() {
        assert_eq!(IndividualsChart::of(&[1.0]), None);
    }

    #[test]
    fn a_process_that_does_not_vary_has_every_other_value_outside() {
        let same = Process::of(&[2.0, 2.0, 2.0]).unwrap();
        assert_eq!(same.standardised(2.0), 0.0);
        assert_eq!(same.standardised(2.1), f64::INFINITY);
    }
}
