//! Components of variance, each estimated from mean squares.

use crate::repeatability::interval;
use crate::{freedom, upper_bound};

/// A line of the table of variance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Source {
    /// Sum of squares.
    pub squares: f64,
    /// Degrees of freedom.
    pub freedom: f64,
}

impl Source {
    /// Mean square.
    #[must_use]
    pub fn mean_square(&self) -> f64 {
        self.squares / self.freedom
    }

    pub(super) fn and(&self, other: &Self) -> Self {
        Self {
            squares: self.squares + other.squares,
            freedom: self.freedom + other.freedom,
        }
    }
}

/// A part of the variation, estimated from mean squares.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Component {
    /// Standard deviation; 0 where the estimate of the variance is negative.
    pub sd: f64,
    /// Effective degrees of freedom (Satterthwaite); `None` where the estimate
    /// is not above 0.
    pub freedom: Option<f64>,
    /// What the standard deviation may be, with a confidence of 95 %: from, to
    /// (see [`Component::of`]).
    pub between: Option<(f64, f64)>,
    /// What the standard deviation is at most, with a one-sided confidence of 95 %, also
    /// where it is estimated at 0 (modified large sample method). `None` where the estimate
    /// of the variance lies so far below 0 that the bound does, too.
    pub at_most: Option<f64>,
}

/// How often each mean square counts in a variance: that of parts, operators,
/// interaction, error.
pub(super) type Times = [f64; 4];

impl Component {
    /// The variance that is a sum of mean squares. Its interval is exact for
    /// one of them, near for several: by the modified large sample method of
    /// Graybill and Wang 1980 where none is subtracted, or else by Satterthwaite
    /// 1946.
    pub(super) fn of(mean_squares: &[Source; 4], times: Times) -> Self {
        let variances = variances(mean_squares, times);
        let at_most = upper_bound::of_sum(&variances).map(f64::sqrt);
        let variance: f64 = variances.iter().map(|v| v.0).sum();
        if variance <= 0.0 {
            return Self {
                sd: 0.0,
                freedom: None,
                between: None,
                at_most,
            };
        }
        let freedom = freedom::of_sum(&variances);
        let sd = variance.sqrt();
        let between = if variances.iter().all(|v| v.0 >= 0.0) {
            let off = |bound: fn((f64, f64)) -> f64| {
                let squares = variances.iter().map(|&(part, freedom)| {
                    Some((part * (bound(interval(1.0, freedom)?).powi(2) - 1.0)).powi(2))
                });
                Some(squares.sum::<Option<f64>>()?.sqrt())
            };
            off(|b| b.0).zip(off(|b| b.1)).map(|(below, above)| {
                let least = (variance - below).max(0.0);
                (least.sqrt(), (variance + above).sqrt())
            })
        } else {
            interval(sd, freedom)
        };
        Self {
            sd,
            freedom: Some(freedom),
            between,
            at_most,
        }
    }

    /// It with the upper bound of a variance that leaves nothing out.
    pub(super) fn at_most_of(self, mean_squares: &[Source; 4], times: Times) -> Self {
        let bound = upper_bound::of_sum(&variances(mean_squares, times));
        Self {
            at_most: bound.map(f64::sqrt),
            ..self
        }
    }
}

/// The mean squares of a variance, each as often as it counts, with their freedom.
fn variances(mean_squares: &[Source; 4], times: Times) -> Vec<(f64, f64)> {
    let counted = times.iter().zip(mean_squares);
    counted
        .filter(|(times, _)| **times != 0.0)
        .map(|(times, source)| (times * source.mean_square(), source.freedom))
        .collect()
}
