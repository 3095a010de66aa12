//! The crossed gauge study by averages and ranges: the older way, by hand, for
//! comparison with the analysis of variance.

use crate::gauge::{Reading, StudyError, cells};
use crate::mean;
use std::collections::BTreeMap;

/// Mean and standard deviation of the range of 2 to 10 values of a normal
/// distribution, in standard deviations (constants d2 and d3; ISO 7870-2, ASTM
/// E2587, and any book on control charts).
const D2_D3: [(f64, f64); 9] = [
    (std::f64::consts::FRAC_2_SQRT_PI, 0.852_50),
    (1.692_57, 0.888_37),
    (2.058_75, 0.879_81),
    (2.325_93, 0.864_08),
    (2.534_41, 0.848_04),
    (2.704_36, 0.833_21),
    (2.847_20, 0.819_83),
    (2.970_03, 0.807_83),
    (3.077_51, 0.797_05),
];

/// A gauge study by averages and ranges; standard deviations in the unit of
/// the readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RangeStudy {
    /// Repeats by one operator (equipment variation).
    pub repeatability: f64,
    /// Between operators (appraiser variation).
    pub reproducibility: f64,
    /// Both together: the gauge.
    pub gauge: f64,
    /// Between parts.
    pub parts: f64,
    /// All together.
    pub total: f64,
}

impl RangeStudy {
    /// Works out a study; `None` where there are more than 10 operators, parts
    /// or repeats, for which there are no constants here, or nothing varies.
    ///
    /// # Errors
    /// When it is too small or not every cell was read equally often.
    pub fn of(readings: &[Reading]) -> Result<Option<Self>, StudyError> {
        let cells = cells(readings)?;
        let mut by_operator: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
        let mut by_part: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
        let mut ranges = Vec::new();
        let mut repeats = 0;
        for ((operator, part), of_cell) in &cells {
            let values: Vec<f64> = of_cell.iter().map(|r| r.value).collect();
            repeats = values.len();
            ranges.push(range(&values));
            by_operator.entry(operator).or_default().extend(&values);
            by_part.entry(part).or_default().extend(&values);
        }
        let of_means = |groups: &BTreeMap<&str, Vec<f64>>| {
            let means: Vec<f64> = groups.values().filter_map(|v| mean(v)).collect();
            range(&means)
        };
        let worked_out = || {
            let repeatability = mean(&ranges)? * of_many(repeats)?;
            let between = of_means(&by_operator) * of_one(by_operator.len())?;
            let readings_each = (by_part.len() * repeats) as f64;
            let by_repeats = repeatability * repeatability / readings_each;
            let reproducibility = (between * between - by_repeats).max(0.0).sqrt();
            let parts = of_means(&by_part) * of_one(by_part.len())?;
            let gauge = repeatability.hypot(reproducibility);
            let total = gauge.hypot(parts);
            (total > 0.0).then_some(Self {
                repeatability,
                reproducibility,
                gauge,
                parts,
                total,
            })
        };
        Ok(worked_out())
    }

    /// The gauge's share of all variation, percent of standard deviations.
    #[must_use]
    pub fn gauge_percent(&self) -> f64 {
        100.0 * self.gauge / self.total
    }

    /// Distinct categories, as [`crate::gauge::Study::categories`].
    #[must_use]
    pub fn categories(&self) -> Option<f64> {
        let ratio = std::f64::consts::SQRT_2 * self.parts / self.gauge;
        ratio.is_finite().then(|| ratio.floor())
    }
}

fn range(values: &[f64]) -> f64 {
    let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let low = values.iter().copied().fold(f64::INFINITY, f64::min);
    high - low
}

fn constants(values: usize) -> Option<(f64, f64)> {
    D2_D3.get(values.checked_sub(2)?).copied()
}

/// Standard deviation over the mean range of many groups (1 / d2).
fn of_many(values: usize) -> Option<f64> {
    Some(as_printed(1.0 / constants(values)?.0))
}

/// Standard deviation over the range of one group (1 / d2*: over the root of
/// its mean square).
fn of_one(values: usize) -> Option<f64> {
    let (d2, d3) = constants(values)?;
    Some(as_printed(1.0 / d2.hypot(d3)))
}

/// To four decimals: the factors are worked with as they are printed in the
/// manual, and so its figures come out.
fn as_printed(factor: f64) -> f64 {
    (factor * 1e4).round() / 1e4
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gauge::tests::{manual, near};

    /// The worked example of the measurement systems analysis manual of the car
    /// makers, 4th edition, by its average and range method: printed are EV
    /// 0.2019, AV 0.2297, GRR 0.3058, PV 1.1046, TV 1.1461, 26.68 % and 5
    /// categories. The data are known from memory (see the analysis of variance);
    /// that they give what was published is how they are known to be right. The
    /// constants K1 = 0.5908, K2 = 0.5231, K3 = 0.3146 were read on a page that
    /// quotes the manual.
    #[test]
    fn the_example_of_the_manual_comes_out_as_printed() {
        assert_eq!(of_many(3), Some(0.5908));
        assert_eq!((of_one(3), of_one(10)), (Some(0.5231), Some(0.3146)));
        let study = RangeStudy::of(&manual()).unwrap().unwrap();
        near(study.repeatability, 0.2019, 5e-5);
        near(study.reproducibility, 0.2297, 5e-5);
        near(study.gauge, 0.3058, 5e-5);
        near(study.parts, 1.1046, 5e-5);
        near(study.total, 1.1461, 5e-5);
        near(study.gauge_percent(), 26.68, 5e-3);
        assert_eq!(study.categories(), Some(5.0));
    }

    #[test]
    fn without_constants_or_variation_there_is_none() {
        let many: Vec<Reading> = (0..44)
            .map(|k| Reading {
                operator: (k % 2).to_string(),
                part: (k / 2 % 11).to_string(),
                value: f64::from(k),
            })
            .collect();
        assert_eq!(RangeStudy::of(&many), Ok(None));
        let same = manual().into_iter().map(|r| Reading { value: 1.0, ..r });
        assert_eq!(RangeStudy::of(&same.collect::<Vec<_>>()), Ok(None));
        assert_eq!(RangeStudy::of(&[]), Err(StudyError::TooSmall));
    }
}
