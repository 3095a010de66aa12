//! How values are spread, counted in steps, so that of a million no more is held than of
//! a thousand.

use std::collections::BTreeMap;

/// Steps of a millimetre: as fine as the figures are printed.
const PER_MM: f64 = 100.0;

/// Lengths, counted in hundredths of a millimetre.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Spread {
    counts: BTreeMap<i64, u64>,
    total: u64,
}

impl Spread {
    pub(super) fn add(&mut self, value_mm: f64) {
        if value_mm.is_finite() {
            let step = (value_mm * PER_MM).round() as i64;
            *self.counts.entry(step).or_default() += 1;
            self.total += 1;
        }
    }

    /// How many there are.
    pub(super) fn total(&self) -> u64 {
        self.total
    }

    /// The value below which this part of all lies, mm, to a hundredth: the least that has
    /// at least this part at or below it. `None` of none.
    pub(super) fn quantile(&self, part: f64) -> Option<f64> {
        let rank = ((part * self.total as f64).ceil() as u64).max(1);
        let mut so_far = 0;
        let reached = self.counts.iter().find(|(_, count)| {
            so_far += *count;
            so_far >= rank
        });
        reached.map(|(&step, _)| step as f64 / PER_MM)
    }

    /// Each value, mm, with its count, from the least.
    pub(super) fn counts(&self) -> impl Iterator<Item = (f64, u64)> {
        let counts = self.counts.iter();
        counts.map(|(&step, &count)| (step as f64 / PER_MM, count))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_are_those_of_the_values_to_a_hundredth() {
        let mut spread = Spread::default();
        assert_eq!(spread.quantile(0.5), None);
        for value in 1..=1001 {
            spread.add(f64::from(value) * 0.004);
        }
        spread.add(f64::NAN);
        assert_eq!(spread.total(), 1001);
        for part in [0.0, 0.05, 0.5, 0.95, 1.0] {
            let exact = 0.004 + part * 4.0;
            let found = spread.quantile(part).unwrap();
            assert!((found - exact).abs() < 0.01, "{part}: {found} {exact}");
        }
    }
}
