//! The study of each figure.

use crate::figure::FigureLimits;
use messages::Message;
use statistics::gauge::{Reading, Study, StudyError};
use statistics::ranges::RangeStudy;

/// What a gauge study came to.
#[derive(Debug, Clone, PartialEq)]
pub struct GaugeStudy {
    /// Each figure that was studied.
    pub studies: Vec<FigureStudy>,
    /// Figures that could not be studied.
    pub not_studied: Vec<NotStudied>,
}

/// The study of one figure, in its unit.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureStudy {
    /// What was read.
    pub figure: String,
    /// Its unit; `None` where the table does not say.
    pub unit: Option<&'static str>,
    /// Mean of all readings.
    pub mean: f64,
    /// The limits that the readings were judged by; none where they differ.
    pub limits: FigureLimits,
    /// By analysis of variance.
    pub by_variance: Study,
    /// By averages and ranges, for comparison; `None` with more than 10
    /// operators, parts or repeats.
    pub by_ranges: Option<RangeStudy>,
}

/// A figure that was not studied.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotStudied {
    /// Its name.
    pub figure: String,
    /// Why.
    pub why: Message,
}

impl FigureStudy {
    /// Works out the study of a figure.
    ///
    /// # Errors
    /// When the readings make no crossed study.
    pub fn of(
        figure: &str,
        unit: Option<&'static str>,
        readings: &[Reading],
    ) -> Result<Self, StudyError> {
        Ok(Self {
            figure: figure.to_owned(),
            unit,
            mean: readings.iter().map(|one| one.value).sum::<f64>() / readings.len() as f64,
            limits: FigureLimits::default(),
            by_variance: Study::of(readings, None)?,
            by_ranges: RangeStudy::of(readings)?,
        })
    }
}
