//! The analysis of variance of two crossed factors, operators and parts.

use super::component::{Component, Source, Times};
use super::readings::{Reading, StudyError, cells};
use statrs::distribution::{ContinuousCDF, FisherSnedecor};
use std::collections::BTreeSet;

/// The analysis of variance of two crossed factors.
pub(super) struct VarianceTable {
    pub(super) size: [usize; 3],
    pub(super) part: Source,
    pub(super) operator: Source,
    pub(super) interaction: Source,
    pub(super) error: Source,
}

/// The components of a study, by whether the interaction is pooled.
pub(super) struct Components {
    pub(super) repeatability: Component,
    pub(super) reproducibility: Component,
    pub(super) gauge: Component,
    pub(super) parts: Component,
    pub(super) total: Component,
}

impl VarianceTable {
    pub(super) fn of(readings: &[Reading]) -> Result<Self, StudyError> {
        let cells = cells(readings)?;
        let operators = count(readings, |r| &r.operator);
        let parts_read = count(readings, |r| &r.part);
        let repeats = readings.len() / (operators * parts_read);
        let (o, p, r) = (operators as f64, parts_read as f64, repeats as f64);
        let all = mean_of(readings.iter());
        let between = |key: fn(&Reading) -> &String, weight: f64| -> f64 {
            let keys: BTreeSet<&String> = readings.iter().map(key).collect();
            let square = |k| (mean_of(readings.iter().filter(|r| key(r) == k)) - all).powi(2);
            weight * keys.into_iter().map(square).sum::<f64>()
        };
        let part = Source {
            squares: between(|x| &x.part, o * r),
            freedom: p - 1.0,
        };
        let operator = Source {
            squares: between(|x| &x.operator, p * r),
            freedom: o - 1.0,
        };
        let cell_means = cells.values().map(|values| mean_of(values.iter().copied()));
        let in_cells: f64 = r * cell_means.map(|m| (m - all).powi(2)).sum::<f64>();
        let interaction = Source {
            squares: (in_cells - part.squares - operator.squares).max(0.0),
            freedom: (p - 1.0) * (o - 1.0),
        };
        let off = |values: &Vec<&Reading>| {
            let mean = mean_of(values.iter().copied());
            values.iter().map(|r| (r.value - mean).powi(2)).sum::<f64>()
        };
        let error = Source {
            squares: cells.values().map(off).sum(),
            freedom: o * p * (r - 1.0),
        };
        Ok(Self {
            size: [operators, parts_read, repeats],
            part,
            operator,
            interaction,
            error,
        })
    }

    /// F of the interaction against the error, and the probability of such an F
    /// by chance.
    pub(super) fn significance(&self) -> (Option<f64>, Option<f64>) {
        let ratio = self.interaction.mean_square() / self.error.mean_square();
        let f = ratio.is_finite().then_some(ratio);
        let p = f.and_then(|f| {
            let by_chance =
                FisherSnedecor::new(self.interaction.freedom, self.error.freedom).ok()?;
            Some(1.0 - by_chance.cdf(f))
        });
        (f, p)
    }

    pub(super) fn components(&self, is_pooled: bool) -> Components {
        let [o, p, r] = self.size.map(|n| n as f64);
        let noise = if is_pooled {
            self.error.and(&self.interaction)
        } else {
            self.error
        };
        let crossed = if is_pooled { noise } else { self.interaction };
        let mean_squares = [self.part, self.operator, crossed, noise];
        let one = |times: Times| Component::of(&mean_squares, times);
        let both = |a: Times, b: Times| [0, 1, 2, 3].map(|k| a[k] + b[k]);
        // Where the interaction is pooled, it and the noise are one source.
        let pooled = |[parts, operators, interaction, noise]: Times| {
            if is_pooled {
                [parts, operators, 0.0, interaction + noise]
            } else {
                [parts, operators, interaction, noise]
            }
        };
        // Operators (operator - crossed) / (p r), interaction (crossed - noise) / r.
        let (of_operators, of_parts) = (1.0 / (p * r), 1.0 / (o * r));
        let by_noise = [0.0, 0.0, 0.0, 1.0];
        let by_operators = pooled([0.0, of_operators, 1.0 / r - of_operators, -1.0 / r]);
        let by_parts = pooled([of_parts, 0.0, -of_parts, 0.0]);
        let (repeatability, reproducibility) = (one(by_noise), one(by_operators));
        let parts = one(by_parts);
        let by_gauge = if reproducibility.sd > 0.0 {
            both(by_noise, by_operators)
        } else {
            by_noise
        };
        // A component at 0 is left out of an estimate, but not of its bound.
        let whole_gauge = both(by_noise, by_operators);
        let gauge = one(by_gauge).at_most_of(&mean_squares, whole_gauge);
        let total = if parts.sd > 0.0 {
            one(both(by_gauge, by_parts))
        } else {
            gauge
        };
        let total = total.at_most_of(&mean_squares, both(whole_gauge, by_parts));
        Components {
            repeatability,
            reproducibility,
            gauge,
            parts,
            total,
        }
    }
}

fn mean_of<'a>(readings: impl Iterator<Item = &'a Reading>) -> f64 {
    let values: Vec<f64> = readings.map(|r| r.value).collect();
    crate::mean(&values).unwrap_or(0.0)
}

fn count(readings: &[Reading], key: fn(&Reading) -> &String) -> usize {
    readings.iter().map(key).collect::<BTreeSet<_>>().len()
}
