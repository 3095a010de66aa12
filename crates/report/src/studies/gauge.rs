//! The gauge study in its JSON.

use messages::Message;
use schemars::JsonSchema;
use serde::Serialize;
use statistics::gauge::{Component, Source, Study};
use study::FigureLimits;
use study::gauge::GaugeStudy;

/// What a gauge study came to.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct GaugeResult {
    /// Name and version of this format: `archproof-gauge/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// Each figure that was studied.
    pub studies: Vec<FigureStudy>,
    /// Figures that some reading lacks.
    pub not_studied: Vec<NotStudied>,
}

/// The study of one figure. Standard deviations and means are in its unit.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct FigureStudy {
    /// What was read.
    pub figure: String,
    /// Its unit; `null` where the table does not say.
    pub unit: Option<&'static str>,
    /// Number of operators.
    pub operators: usize,
    /// Number of parts.
    pub parts: usize,
    /// Number of times each operator read each part.
    pub repeats: usize,
    /// The table of the analysis of variance.
    pub analysis: Vec<AnalysisRow>,
    /// F of the interaction against the repeats; `null` where repeats never differ.
    pub interaction_f: Option<f64>,
    /// Probability of such an F by chance.
    pub interaction_p: Option<f64>,
    /// Whether the interaction was pooled with the repeats.
    pub interaction_pooled: bool,
    /// The components of the variation.
    pub variation: Vec<VariationRow>,
    /// Number of distinct categories; `null` for a gauge that never differs.
    pub distinct_categories: Option<f64>,
    /// Mean of all readings.
    pub mean: f64,
    /// The gauge against the limits of the figure; `null` where it has none, or the readings
    /// were judged by different limits.
    pub against_limits: Option<AgainstLimits>,
    /// The same study by averages and ranges, for comparison; `null` with more
    /// than 10 operators, parts or repeats.
    pub by_ranges: Option<ByRanges>,
}

/// The spread of the gauge against the limits of a figure, as in the car makers' measurement
/// systems analysis (4th edition, from memory).
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct AgainstLimits {
    /// The least that is let pass.
    pub least: Option<f64>,
    /// The most that is let pass.
    pub most: Option<f64>,
    /// Six standard deviations of the gauge, percent of the tolerance between both limits.
    pub percent_of_tolerance: Option<f64>,
    /// Three standard deviations of the gauge, percent of the distance of the mean of all
    /// readings from the nearest limit; `null` where the mean lies on it.
    pub percent_of_distance: Option<f64>,
}

/// A study by averages and ranges: standard deviations.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct ByRanges {
    /// Repeats by one operator.
    pub repeatability: f64,
    /// Between operators.
    pub reproducibility: f64,
    /// Both together.
    pub gauge: f64,
    /// Between parts.
    pub parts: f64,
    /// All together.
    pub total: f64,
    /// The gauge's percent of the study variation.
    pub gauge_percent: f64,
    /// Number of distinct categories; `null` for a gauge that never differs.
    pub distinct_categories: Option<f64>,
}

/// A row of the analysis of variance.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct AnalysisRow {
    /// Source of the variation.
    pub source: &'static str,
    /// Degrees of freedom.
    pub freedom: f64,
    /// Sum of squares.
    pub sum_of_squares: f64,
    /// Mean square.
    pub mean_square: f64,
}

/// A component of the variation.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct VariationRow {
    /// What varies.
    pub component: &'static str,
    /// Standard deviation; 0 where the estimate of the variance is negative.
    pub standard_deviation: f64,
    /// Lower end of its interval of 95 % confidence; `null` where it has none.
    pub from: Option<f64>,
    /// Upper end.
    pub to: Option<f64>,
    /// What the standard deviation is at most, with a one-sided confidence of 95 %, also where
    /// it is estimated at 0; `null` where the estimate of the variance is too far below 0.
    pub at_most: Option<f64>,
    /// Effective degrees of freedom.
    pub freedom: Option<f64>,
    /// Percent of the study variation (of standard deviations).
    pub percent_of_study_variation: f64,
    /// Percent of the variance.
    pub percent_of_variance: f64,
}

/// A figure that was not studied.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct NotStudied {
    /// Its name.
    pub figure: String,
    /// Why.
    pub why: String,
    /// The same as a message of the catalogue.
    #[serde(skip)]
    pub(crate) reason: Message,
}

impl GaugeResult {
    /// What a study came to, in the words of the format.
    #[must_use]
    pub fn of(found: &GaugeStudy) -> Self {
        let not_studied = found.not_studied.iter().map(|one| NotStudied {
            figure: one.figure.clone(),
            why: one.why.to_string(),
            reason: one.why.clone(),
        });
        Self {
            schema: "archproof-gauge/1",
            program: env!("CARGO_PKG_VERSION"),
            studies: found.studies.iter().map(FigureStudy::of).collect(),
            not_studied: not_studied.collect(),
        }
    }
}

impl FigureStudy {
    fn of(found: &study::gauge::FigureStudy) -> Self {
        let study = &found.by_variance;
        let [operators, parts, repeats] = study.size;
        let analysis = [
            ("parts", study.part),
            ("operators", study.operator),
            ("operators by parts", study.interaction),
            ("repeats", study.error),
        ];
        let variation = [
            ("repeatability", study.repeatability),
            ("reproducibility", study.reproducibility),
            ("gauge", study.gauge),
            ("parts", study.parts),
            ("total", study.total),
        ];
        Self {
            figure: found.figure.clone(),
            unit: found.unit,
            operators,
            parts,
            repeats,
            analysis: analysis.map(|(name, source)| row(name, source)).into(),
            interaction_f: study.interaction_f,
            interaction_p: study.interaction_p,
            interaction_pooled: study.is_pooled,
            variation: variation.map(|(name, c)| varies(name, study, &c)).into(),
            distinct_categories: study.categories(),
            mean: found.mean,
            against_limits: AgainstLimits::of(found),
            by_ranges: found.by_ranges.map(|study| ByRanges {
                repeatability: study.repeatability,
                reproducibility: study.reproducibility,
                gauge: study.gauge,
                parts: study.parts,
                total: study.total,
                gauge_percent: study.gauge_percent(),
                distinct_categories: study.categories(),
            }),
        }
    }

    /// A component by its name.
    pub(crate) fn component(&self, name: &str) -> Option<&VariationRow> {
        self.variation.iter().find(|row| row.component == name)
    }
}

impl AgainstLimits {
    fn of(found: &study::gauge::FigureStudy) -> Option<Self> {
        let FigureLimits { least, most } = found.limits;
        let sd = found.by_variance.gauge.sd;
        let distances = [least, most].into_iter().flatten();
        let distance = distances.map(|limit| (found.mean - limit).abs());
        let distance = distance.reduce(f64::min)?;
        let percent = |spread: f64, of: f64| (of > 0.0).then(|| 100.0 * spread / of);
        Some(Self {
            least,
            most,
            percent_of_tolerance: least
                .zip(most)
                .and_then(|(least, most)| percent(6.0 * sd, most - least)),
            percent_of_distance: percent(3.0 * sd, distance),
        })
    }
}

fn row(name: &'static str, source: Source) -> AnalysisRow {
    AnalysisRow {
        source: name,
        freedom: source.freedom,
        sum_of_squares: source.squares,
        mean_square: source.mean_square(),
    }
}

fn varies(name: &'static str, study: &Study, component: &Component) -> VariationRow {
    let percent = study.percent(component);
    VariationRow {
        component: name,
        standard_deviation: component.sd,
        from: component.between.map(|b| b.0),
        to: component.between.map(|b| b.1),
        at_most: component.at_most,
        freedom: component.freedom,
        percent_of_study_variation: percent,
        percent_of_variance: percent * percent / 100.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use statistics::gauge::Reading;

    fn study(limits: FigureLimits) -> FigureStudy {
        let rows = fixtures::gauge::STUDY.iter();
        let readings = rows.flat_map(|(operator, values)| {
            let values = values.iter().enumerate();
            values.map(|(part, value)| Reading {
                operator: (*operator).to_owned(),
                part: part.to_string(),
                value: *value,
            })
        });
        let readings: Vec<Reading> = readings.collect();
        let found = study::gauge::FigureStudy::of("value", None, &readings).unwrap();
        FigureStudy::of(&study::gauge::FigureStudy { limits, ..found })
    }

    /// The published example has a gauge of 0.30237; its readings have a mean of 0.00144.
    #[test]
    fn the_gauge_is_compared_with_tolerance_and_distance() {
        assert_eq!(study(FigureLimits::default()).against_limits, None);
        let least = Some(-4.0);
        let one_sided = study(FigureLimits { least, most: None });
        let against = one_sided.against_limits.unwrap();
        let near = |value: Option<f64>, wanted: f64| (value.unwrap() - wanted).abs() < 0.01;
        assert_eq!(against.percent_of_tolerance, None);
        assert!(near(
            against.percent_of_distance,
            90.71 / (one_sided.mean + 4.0)
        ));
        assert!(one_sided.mean.abs() < 0.01, "{}", one_sided.mean);
        let most = Some(2.0);
        let against = study(FigureLimits { least, most }).against_limits.unwrap();
        assert!(near(
            against.percent_of_tolerance,
            100.0 * 6.0 * 0.302_37 / 6.0
        ));
        assert!(near(
            against.percent_of_distance,
            90.71 / (2.0 - one_sided.mean)
        ));
    }
}
