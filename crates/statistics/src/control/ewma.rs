//! Exponentially weighted moving averages: a chart that finds small shifts and slow drift.

use super::Process;

/// How a chart of moving averages is made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ewma {
    /// Weight of the latest value, above 0 and at most 1.
    pub weight: f64,
    /// Distance of the limits from the centre, in standard deviations of the average.
    pub reach: f64,
}

impl Ewma {
    /// Weight 0.2 and limits at 2.962 standard deviations: one false alarm in about 500
    /// points, and a shift by one standard deviation found after about 10 (Lucas and
    /// Saccucci 1990; the pair as tabulated in Montgomery, Introduction to Statistical
    /// Quality Control, from memory).
    pub const DEFAULT: Self = Self {
        weight: 0.2,
        reach: 2.962,
    };
    /// Points between two false alarms of [`DEFAULT`](Self::DEFAULT), on average (the same
    /// sources).
    pub const FALSE_ALARM_EVERY: f64 = 500.0;

    /// How far the limits lie from the centre at a point, counted from 1, in standard
    /// deviations of the values: exact at every point, and not only after many (Roberts
    /// 1959; NIST/SEMATECH e-Handbook 6.3.2.4 for many points).
    #[must_use]
    pub fn reach_at(&self, point: usize) -> f64 {
        let left = (1.0 - self.weight).powf(2.0 * point as f64);
        self.reach * (self.weight / (2.0 - self.weight) * (1.0 - left)).sqrt()
    }
}

/// A chart of exponentially weighted moving averages.
#[derive(Debug, Clone, PartialEq)]
pub struct EwmaChart {
    /// The average at each point.
    pub averages: Vec<f64>,
    /// How far the limits lie from the centre at each point.
    pub reaches: Vec<f64>,
    /// The centre line.
    pub centre: f64,
}

impl EwmaChart {
    /// The chart of values in order of time; the average begins at the centre.
    #[must_use]
    pub fn of(values: &[f64], process: Process, how: Ewma) -> Self {
        let averages = values.iter().scan(process.centre, |average, value| {
            *average += how.weight * (value - *average);
            Some(*average)
        });
        let reaches = (1..=values.len()).map(|point| how.reach_at(point) * process.sigma);
        Self {
            averages: averages.collect(),
            reaches: reaches.collect(),
            centre: process.centre,
        }
    }

    /// Whether the average at a point, counted from 0, lies outside its limits.
    #[must_use]
    pub fn is_out(&self, point: usize) -> bool {
        (self.averages[point] - self.centre).abs() > self.reaches[point]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4: twenty values of a process
    /// of centre 50 and standard deviation 2.0539, weight 0.3, three standard deviations;
    /// averages and limits as printed there, from memory (the data belong together: the
    /// averages follow from them).
    #[test]
    fn averages_and_limits_equal_those_of_the_handbook() {
        let values = [
            52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3,
            47.8, 51.2, 52.6, 52.4, 53.6, 52.1,
        ];
        let printed = [
            50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36,
            49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99,
        ];
        let process = Process {
            centre: 50.0,
            sigma: 2.0539,
        };
        let how = Ewma {
            weight: 0.3,
            reach: 3.0,
        };
        let chart = EwmaChart::of(&values, process, how);
        for (found, printed) in chart.averages.iter().zip(printed) {
            assert!((found - printed).abs() < 6e-3, "{found} {printed}");
        }
        let upper = 50.0 + chart.reaches[19];
        assert!((upper - 52.5884).abs() < 2e-3, "{upper}");
        assert!((0..20).all(|point| !chart.is_out(point)));
    }

    /// The first average is the first value weighted: its limit is the weight times that of
    /// the value, by hand.
    #[test]
    fn limits_widen_from_the_first_point_to_those_of_many() {
        let how = Ewma::DEFAULT;
        assert!((how.reach_at(1) - 0.2 * 2.962).abs() < 1e-12);
        assert!((how.reach_at(200) - 2.962 / 3.0).abs() < 1e-12);
    }
}
