//! Values that vary smoothly along the arch.

use std::f64::consts::TAU;

use rand::{Rng, RngExt};

/// Values that can be mixed with weights.
pub trait Mix: Copy {
    /// The weighted sum.
    fn mix(values: [&Self; 4], weights: [f64; 4]) -> Self;
}

impl Mix for f64 {
    fn mix(v: [&Self; 4], w: [f64; 4]) -> Self {
        v[0] * w[0] + v[1] * w[1] + v[2] * w[2] + v[3] * w[3]
    }
}

/// Implements [`Mix`] field by field.
macro_rules! mix_fields {
    ($name:ident { $($field:ident),+ $(,)? }) => {
        impl $crate::stations::Mix for $name {
            fn mix(v: [&Self; 4], w: [f64; 4]) -> Self {
                Self { $($field: $crate::stations::Mix::mix(v.map(|s| &s.$field), w)),+ }
            }
        }
    };
}
pub(crate) use mix_fields;

/// Distance between neighbouring stations, mm.
pub(crate) const STEP_MM: f64 = 0.25;

/// Values at even steps of arc length, joined by a smooth (Catmull-Rom) curve.
#[derive(Debug, Clone)]
pub struct Stations<T> {
    reach: f64,
    values: Vec<T>,
}

impl<T: Mix> Stations<T> {
    /// Values from -`reach` to `reach` mm of arc length.
    pub fn new(reach: f64, mut value: impl FnMut(f64) -> T) -> Self {
        let half = (reach / STEP_MM).ceil();
        let values = (0..=2 * half as usize)
            .map(|i| value((i as f64 - half) * STEP_MM))
            .collect();
        Self {
            reach: half * STEP_MM,
            values,
        }
    }

    /// The value at an arc length; the first or last one beyond the ends.
    pub fn at(&self, along: f64) -> T {
        let last = self.values.len() - 1;
        let position = ((along + self.reach) / STEP_MM).clamp(0.0, last as f64);
        let i = (position as usize).min(last.saturating_sub(1));
        let u = position - i as f64;
        let v =
            [i.saturating_sub(1), i, (i + 1).min(last), (i + 2).min(last)].map(|k| &self.values[k]);
        let (u2, u3) = (u * u, u * u * u);
        T::mix(
            v,
            [
                -0.5 * u3 + u2 - 0.5 * u,
                1.5 * u3 - 2.5 * u2 + 1.0,
                -1.5 * u3 + 2.0 * u2 + 0.5 * u,
                0.5 * u3 - 0.5 * u2,
            ],
        )
    }

    /// Arc length of the last station, mm.
    pub fn reach(&self) -> f64 {
        self.reach
    }

    /// Arc lengths and values of all stations.
    pub fn iter(&self) -> impl Iterator<Item = (f64, &T)> {
        self.values
            .iter()
            .enumerate()
            .map(|(i, v)| (i as f64 * STEP_MM - self.reach, v))
    }
}

/// Arc lengths of the stations from -`reach` to `reach`.
pub(crate) fn arc_lengths(reach: f64) -> impl Iterator<Item = f64> {
    let half = (reach / STEP_MM).ceil();
    (0..=2 * half as usize).map(move |i| (i as f64 - half) * STEP_MM)
}

/// A slow random wave along the arch, of about unit size.
#[derive(Debug, Clone)]
pub(crate) struct Wave([(f64, f64, f64); 3]);

impl Wave {
    /// A wave whose longest part has the given period, mm.
    pub(crate) fn random(rng: &mut impl Rng, period: f64) -> Self {
        Self([0.6f64, 0.35, 0.2].map(|size| {
            let share: f64 = rng.random_range(0.8..1.2) * size / 0.6;
            (
                size,
                TAU / (period * share.max(0.2)),
                rng.random_range(0.0..TAU),
            )
        }))
    }

    /// The wave's height at an arc length.
    pub(crate) fn at(&self, along: f64) -> f64 {
        self.0
            .iter()
            .map(|(size, rate, phase)| size * (rate * along + phase).sin())
            .sum()
    }
}

/// Arc lengths and values where a smooth curve never exceeds `values` within
/// `reach` mm of a station: the least value near by, then an even mean, which
/// keeps below as long as it is no wider than the search for the least.
pub(crate) fn eroded(values: &Stations<f64>, reach: f64) -> Stations<f64> {
    let wide = (reach / STEP_MM).round() as usize;
    let half_mean = wide / 2;
    let all = &values.values;
    let window = |i: usize, w: usize| i.saturating_sub(w)..(i + w + 1).min(all.len());
    let least: Vec<f64> = (0..all.len())
        .map(|i| {
            all[window(i, wide)]
                .iter()
                .copied()
                .fold(f64::INFINITY, f64::min)
        })
        .collect();
    let mean = |of: &[f64], w: usize| -> Vec<f64> {
        (0..of.len())
            .map(|i| {
                let part = &of[window(i, w)];
                part.iter().sum::<f64>() / part.len() as f64
            })
            .collect()
    };
    let smooth = mean(&mean(&least, half_mean), half_mean);
    Stations {
        reach: values.reach,
        values: smooth,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_straight_line_is_kept_between_stations() {
        let line = Stations::new(20.0, |s| 3.0 * s - 1.0);
        for s in [-19.3, -4.01, 0.0, 0.111, 17.77] {
            assert!((line.at(s) - (3.0 * s - 1.0)).abs() < 1e-12);
        }
        assert!((line.at(50.0) - 59.0).abs() < 1e-12);
    }

    #[test]
    fn an_eroded_curve_keeps_below_and_is_level_on_a_level_stretch() {
        let dip = Stations::new(30.0, |s| 8.0 - 4.0 * (-s * s / 4.0f64).exp());
        let low = eroded(&dip, 3.0);
        assert!(dip.iter().all(|(s, v)| low.at(s) <= v + 1e-12));
        assert!((low.at(-20.0) - 8.0).abs() < 1e-9);
    }
}
