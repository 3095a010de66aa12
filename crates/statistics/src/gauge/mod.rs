//! The crossed gauge study: every operator reads every part several times. By
//! analysis of variance of two crossed random factors (as in any textbook; the
//! measurement systems analysis of the car makers is one user of it).

mod component;
mod readings;
mod variance_table;

pub use component::{Component, Source};
pub(crate) use readings::cells;
pub use readings::{Reading, StudyError};

use variance_table::VarianceTable;

/// Where the interaction's F is less significant than this, it is taken as none
/// and pooled with the error (common practice, no source).
pub const POOLING_P: f64 = 0.25;

/// What a crossed gauge study comes to. Standard deviations are in the unit of
/// the readings.
#[derive(Debug, Clone, PartialEq)]
pub struct Study {
    /// Operators, parts, repeats.
    pub size: [usize; 3],
    /// Between parts.
    pub part: Source,
    /// Between operators.
    pub operator: Source,
    /// Operators that read different parts differently.
    pub interaction: Source,
    /// Between repeats.
    pub error: Source,
    /// F of the interaction against the error; `None` where repeats never differ.
    pub interaction_f: Option<f64>,
    /// Probability of such an F by chance.
    pub interaction_p: Option<f64>,
    /// Whether the interaction was pooled with the error.
    pub is_pooled: bool,
    /// Repeats by one operator (equipment variation).
    pub repeatability: Component,
    /// Between operators, interaction included (appraiser variation).
    pub reproducibility: Component,
    /// Both together: the gauge.
    pub gauge: Component,
    /// Between parts.
    pub parts: Component,
    /// All together.
    pub total: Component,
}

impl Study {
    /// Works out a study; `pool` says whether the interaction is pooled with
    /// the error, or leaves it to [`POOLING_P`].
    ///
    /// # Errors
    /// When it is too small or not every cell was read equally often.
    pub fn of(readings: &[Reading], pool: Option<bool>) -> Result<Self, StudyError> {
        let table = VarianceTable::of(readings)?;
        let (interaction_f, interaction_p) = table.significance();
        let is_pooled = pool.unwrap_or(interaction_p.is_some_and(|p| p > POOLING_P));
        let components = table.components(is_pooled);
        if components.total.sd <= 0.0 {
            return Err(StudyError::NoVariation);
        }
        Ok(Self {
            size: table.size,
            part: table.part,
            operator: table.operator,
            interaction: table.interaction,
            error: table.error,
            interaction_f,
            interaction_p,
            is_pooled,
            repeatability: components.repeatability,
            reproducibility: components.reproducibility,
            gauge: components.gauge,
            parts: components.parts,
            total: components.total,
        })
    }

    /// A component's share of all variation, percent of standard deviations.
    #[must_use]
    pub fn percent(&self, of: &Component) -> f64 {
        100.0 * of.sd / self.total.sd
    }

    /// Distinct categories: how many classes of parts the gauge can tell apart
    /// (1.41 times parts over gauge, cut to a whole number). `None` for a gauge
    /// whose readings never differ.
    #[must_use]
    pub fn categories(&self) -> Option<f64> {
        let ratio = std::f64::consts::SQRT_2 * self.parts.sd / self.gauge.sd;
        ratio.is_finite().then(|| ratio.floor())
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;

    pub(crate) fn near(value: f64, wanted: f64, by: f64) {
        assert!((value - wanted).abs() <= by, "{value} instead of {wanted}");
    }

    pub(crate) fn manual() -> Vec<Reading> {
        let rows = fixtures::gauge::STUDY
            .iter()
            .flat_map(|(operator, values)| {
                values.iter().enumerate().map(|(part, &value)| Reading {
                    operator: (*operator).to_owned(),
                    part: part.to_string(),
                    value,
                })
            });
        rows.collect()
    }

    #[test]
    fn the_example_of_the_manual_comes_out_as_printed() {
        let study = Study::of(&manual(), None).unwrap();
        assert_eq!(study.size, [3, 10, 3]);
        near(study.part.squares, 88.361_934, 5e-7);
        near(study.operator.squares, 3.167_262, 5e-7);
        near(study.interaction.squares, 0.358_982, 5e-7);
        near(study.error.squares, 2.758_933, 5e-7);
        near(study.interaction_f.unwrap(), 0.434, 5e-4);
        assert!(study.is_pooled);
        near(study.repeatability.sd, 0.199_93, 5e-6);
        near(study.reproducibility.sd, 0.226_84, 5e-6);
        near(study.gauge.sd, 0.302_37, 5e-6);
        near(study.parts.sd, 1.042_33, 5e-6);
        near(study.total.sd, 1.085_30, 5e-6);
        near(study.percent(&study.gauge), 27.86, 5e-3);
        assert_eq!(study.categories(), Some(4.0));
        // Repeatability has the freedom of error and interaction together.
        assert_eq!(study.repeatability.freedom.map(f64::round), Some(78.0));
    }

    /// Five operators, two parts, three repeats: S. B. Vardeman and
    /// E. S. VanValkenburg, Technometrics 41 (1999). The data stand in an example
    /// of a public statistics package; mean squares and standard deviations were
    /// worked out from them by the formulas of the paper. The estimate of the
    /// interaction is negative.
    #[test]
    fn a_negative_component_lessens_reproducibility() {
        let rows = [
            [
                3.481, 3.448, 3.485, 3.475, 3.472, 3.258, 3.254, 3.256, 3.249, 3.241,
            ],
            [
                3.477, 3.472, 3.464, 3.472, 3.470, 3.254, 3.247, 3.257, 3.238, 3.250,
            ],
            [
                3.470, 3.470, 3.477, 3.473, 3.474, 3.258, 3.239, 3.245, 3.240, 3.254,
            ],
        ];
        let readings: Vec<Reading> = rows
            .iter()
            .flat_map(|row| row.iter().enumerate())
            .map(|(place, &value)| Reading {
                operator: (place % 5).to_string(),
                part: (place / 5).to_string(),
                value,
            })
            .collect();
        let study = Study::of(&readings, Some(false)).unwrap();
        near(study.part.mean_square(), 0.371_853, 5e-7);
        near(study.operator.mean_square(), 1.254_17e-4, 5e-10);
        near(study.interaction.mean_square(), 4.408e-5, 5e-9);
        near(study.error.mean_square(), 5.117e-5, 5e-9);
        near(study.repeatability.sd, 0.007_15, 5e-6);
        near(study.reproducibility.sd, 0.003_35, 5e-6);
    }

    /// Readings drawn from known components: the interval of each must hold the
    /// truth in about 95 of 100 studies (that of what is subtracted in more).
    #[test]
    fn intervals_hold_the_truth_as_often_as_they_say() {
        const STUDIES: usize = 1000;
        let (operator_sd, part_sd, repeat_sd) = (0.5, 2.0, 0.4);
        let mut random = Random(20);
        let mut held = [0; 4];
        for _ in 0..STUDIES {
            let readings = drawn(&mut random, [6, 8, 3], [operator_sd, part_sd, repeat_sd]);
            let study = Study::of(&readings, None).unwrap();
            let gauge_sd = operator_sd.hypot(repeat_sd);
            for (k, (component, truth)) in [
                (study.repeatability, repeat_sd),
                (study.reproducibility, operator_sd),
                (study.gauge, gauge_sd),
                (study.parts, part_sd),
            ]
            .into_iter()
            .enumerate()
            {
                let between = component.between;
                held[k] += usize::from(between.is_some_and(|(a, b)| a <= truth && truth <= b));
            }
        }
        for count in held {
            let share = count as f64 / STUDIES as f64;
            assert!((0.93..0.99).contains(&share), "{held:?} of {STUDIES}");
        }
    }

    /// Of operators who hardly differ, or do not at all, reproducibility is often estimated at
    /// 0: its upper bound, and the others, must hold the truth in about 95 of 100 studies or
    /// more.
    #[test]
    fn upper_bounds_hold_the_truth_as_often_as_they_say() {
        const STUDIES: usize = 1000;
        let (part_sd, repeat_sd) = (0.3, 0.4);
        for (operator_sd, pool) in [(0.1, false), (0.1, true), (0.0, false), (0.3, true)] {
            let mut random = Random(21);
            let (mut held, mut at_zero) = ([0; 5], 0);
            for _ in 0..STUDIES {
                let sds = [operator_sd, part_sd, repeat_sd];
                let readings = drawn(&mut random, [3, 10, 3], sds);
                let study = Study::of(&readings, Some(pool)).unwrap();
                at_zero += usize::from(study.reproducibility.sd <= 0.0);
                let gauge_sd = operator_sd.hypot(repeat_sd);
                for (k, (component, truth)) in [
                    (study.repeatability, repeat_sd),
                    (study.reproducibility, operator_sd),
                    (study.gauge, gauge_sd),
                    (study.parts, part_sd),
                    (study.total, gauge_sd.hypot(part_sd)),
                ]
                .into_iter()
                .enumerate()
                {
                    held[k] += usize::from(component.at_most.is_some_and(|most| truth <= most));
                }
            }
            let least = STUDIES * 93 / 100;
            let said = format!("{operator_sd} {pool}: {held:?} of {STUDIES}, {at_zero} at 0");
            assert!(held.iter().all(|count| *count >= least), "{said}");
            assert!(operator_sd > 0.2 || at_zero > STUDIES / 10, "{said}");
        }
    }

    /// Readings of so many operators, parts and repeats, drawn with these standard
    /// deviations.
    fn drawn(random: &mut Random, size: [usize; 3], sds: [f64; 3]) -> Vec<Reading> {
        let each = |random: &mut Random, count, sd| -> Vec<f64> {
            (0..count).map(|_| sd * random.normal()).collect()
        };
        let operators = each(random, size[0], sds[0]);
        let parts = each(random, size[1], sds[1]);
        let mut readings = Vec::new();
        for (o, by) in operators.iter().enumerate() {
            for (p, of) in parts.iter().enumerate() {
                for _ in 0..size[2] {
                    readings.push(Reading {
                        operator: o.to_string(),
                        part: p.to_string(),
                        value: by + of + sds[2] * random.normal(),
                    });
                }
            }
        }
        readings
    }

    /// Numbers by chance, the same on every run (a linear congruential
    /// generator, Knuth's MMIX constants).
    struct Random(u64);

    impl Random {
        fn uniform(&mut self) -> f64 {
            self.0 = (self.0.wrapping_mul(6_364_136_223_846_793_005))
                .wrapping_add(1_442_695_040_888_963_407);
            (self.0 >> 11) as f64 / (1_u64 << 53) as f64
        }

        /// Twelve uniform numbers less six: normal enough.
        fn normal(&mut self) -> f64 {
            (0..12).map(|_| self.uniform()).sum::<f64>() - 6.0
        }
    }

    #[test]
    fn readings_that_never_differ_tell_nothing() {
        let same = manual().into_iter().map(|r| Reading { value: 1.0, ..r });
        let same: Vec<Reading> = same.collect();
        assert_eq!(Study::of(&same, None), Err(StudyError::NoVariation));
        // A gauge that repeats itself exactly has no F and no categories.
        let exact = manual().into_iter().map(|r| Reading {
            value: r.part.len() as f64 + f64::from(r.part.as_bytes()[0]),
            ..r
        });
        let study = Study::of(&exact.collect::<Vec<_>>(), None).unwrap();
        assert_eq!(study.gauge.sd, 0.0);
        assert_eq!((study.interaction_f, study.categories()), (None, None));
    }

    #[test]
    fn what_is_no_study_is_said() {
        let mut readings = manual();
        readings.pop();
        let error = Study::of(&readings, None).unwrap_err().to_string();
        assert!(
            error.contains("\"C\"") && error.contains("2 times, not 3"),
            "{error}"
        );
        assert_eq!(Study::of(&readings[..10], None), Err(StudyError::TooSmall));
        let mut readings = manual();
        readings[3].value = f64::NAN;
        assert!(matches!(
            Study::of(&readings, None),
            Err(StudyError::NotFinite { .. })
        ));
    }
}
