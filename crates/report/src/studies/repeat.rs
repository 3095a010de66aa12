//! Repeated scans of one impression in the JSON `repeat.json`.

use crate::result::{Point, Side};
use crate::text::rounding::{figure, point, to_decimals};
use check::CheckedImpression;
use judge::{system_says, words};
use mesh::read::shown_path;
use messages::{Message, message};
use nalgebra::Point3;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statistics::critical_range_factor;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use study::repeats::Repeats;
use study::repeats::{ApartPlace, Spread};
use thiserror::Error;

/// Name of the map of the spread.
pub(crate) const SPREAD_FILE: &str = "spread.ply";

/// What repeated scans of one impression came to: the whole of `repeat.json`.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct RepeatResult {
    /// Name and version of this format: `archproof-repeat/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// Each scan, in the order in which they were given.
    pub scans: Vec<RepeatScan>,
    /// The spread between them at each place.
    pub spread: SpreadResult,
    /// Repeatability of each figure of the result.
    pub figures: Vec<FigureRepeatability>,
    /// Factor of the critical range for so many scans (ISO 5725-6).
    pub critical_range_factor: Option<f64>,
    /// Figures that some scan lacks.
    pub not_judged: Vec<NotRepeated>,
}

/// One of the scans.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct RepeatScan {
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// Unit in which its numbers were read.
    pub unit: String,
    /// Standard deviation of its noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Root mean square distance from the first of what fits, mm; `null` of the first.
    pub rms_mm: Option<f64>,
    /// Share of it that lies on the first, 0 to 1; `null` of the first.
    pub fitting_share: Option<f64>,
    /// Expanded uncertainty (k = 2) of its place on the first, mm; `null` of the first.
    pub placing_uncertainty_mm: Option<f64>,
}

/// How far the scans lie apart. Independent noise of single vertices reads as
/// 0.7 to 1 times its standard deviation.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct SpreadResult {
    /// Area over which it is known, mm².
    pub area_judged_mm2: f64,
    /// Root of the mean square of the standard deviations over the area, mm;
    /// `null` where nothing could be compared.
    pub pooled_sd_mm: Option<f64>,
    /// Their median over the area, mm.
    pub median_sd_mm: Option<f64>,
    /// Their 95th percentile, mm.
    pub p95_sd_mm: Option<f64>,
    /// By how much the standard deviation of one place may be too large: it is
    /// multiplied by this at the lower end of its interval of 95 % confidence.
    pub sd_from_times: Option<f64>,
    /// The same at the upper end.
    pub sd_to_times: Option<f64>,
    /// Difference beyond what noise and placing explain (k = 2), mm.
    pub detectable_mm: f64,
    /// Where the scans differ by more, largest first.
    pub places: Vec<PlaceApart>,
    /// Name of the coloured mesh: the first scan with `sd_mm` at each vertex and,
    /// by which it is coloured, `local_sd_mm`, pooled with the vertices round it.
    pub map: String,
    /// Name of its colour scale.
    pub colours: String,
    /// Standard deviation at the bright end, mm (0 at the dark one).
    pub to_mm: f64,
}

/// A place where the scans differ.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct PlaceApart {
    /// Name: R1, R2, …
    pub id: String,
    /// Its centre, in the numbers of the first scan.
    pub centre: Point,
    /// Area, mm².
    pub area_mm2: f64,
    /// How far the scans lie apart at most, mm.
    pub apart_mm: f64,
    /// Number, from 1, of the scan that lies farthest from their median; `null`
    /// of two scans.
    pub scan: Option<usize>,
    /// Part of the arch; `null` off the tissue surface.
    pub zone: Option<String>,
    /// The patient's side; `null` on the midline.
    pub side: Option<Side>,
}

/// Repeatability of a figure, in the sense of ISO 5725.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct FigureRepeatability {
    /// The figure.
    pub figure: String,
    /// Its unit.
    pub unit: &'static str,
    /// In each scan.
    pub readings: Vec<f64>,
    /// Their mean.
    pub mean: f64,
    /// Half the interval of 95 % confidence of the mean.
    pub mean_uncertainty: f64,
    /// Repeatability standard deviation.
    pub standard_deviation: f64,
    /// Its degrees of freedom.
    pub freedom: usize,
    /// Lower end of its interval of 95 % confidence.
    pub from: f64,
    /// Upper end.
    pub to: f64,
    /// Repeatability limit: two readings differ by less in 95 of 100.
    pub repeatability_limit: f64,
    /// Most less least of the readings.
    pub range: f64,
    /// Standard deviation known from an earlier study; `null` without one.
    pub known_standard_deviation: Option<f64>,
    /// Critical range (ISO 5725-6): so many readings lie within it in 95 of 100, by the known
    /// standard deviation or, without one, by their own.
    pub critical_range: f64,
    /// Whether the readings lie farther apart than the critical range; `null` where no
    /// earlier study says how far they may.
    pub is_beyond: Option<bool>,
}

/// A figure whose repeatability could not be worked out.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct NotRepeated {
    /// The figure.
    pub figure: String,
    /// Why.
    pub why: String,
    /// The same as a message of the catalogue.
    #[serde(skip)]
    pub(crate) reason: Message,
}

impl RepeatResult {
    /// What repeated scans came to, in the words of the format.
    #[must_use]
    pub fn of(found: &Repeats<'_>) -> Self {
        let not_judged = found.not_judged.iter().map(|one| NotRepeated {
            figure: one.figure.clone(),
            why: one.why.to_string(),
            reason: one.why.clone(),
        });
        Self {
            schema: "archproof-repeat/1",
            program: env!("CARGO_PKG_VERSION"),
            scans: scans(found),
            spread: SpreadResult::of(found),
            figures: found.figures.iter().map(FigureRepeatability::of).collect(),
            critical_range_factor: critical_range_factor(found.scans.len()),
            not_judged: not_judged.collect(),
        }
    }
}

/// Standard deviations that an earlier `repeat.json` holds, by figure.
#[derive(Debug, Clone, PartialEq)]
pub struct KnownRepeatability(BTreeMap<String, f64>);

/// An earlier study cannot be used.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub struct NotKnown {
    path: PathBuf,
    reason: std::io::Error,
}

impl NotKnown {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!(
            "repeat-not-known",
            path = shown_path(&self.path),
            reason = system_says(&self.reason)
        )
    }
}

impl KnownRepeatability {
    /// Reads the `repeat.json` of an earlier study.
    ///
    /// # Errors
    /// When it is none.
    pub fn from_file(path: &Path) -> Result<Self, NotKnown> {
        #[derive(Deserialize)]
        struct Kept {
            figures: Vec<KeptFigure>,
        }
        #[derive(Deserialize)]
        struct KeptFigure {
            figure: String,
            standard_deviation: f64,
        }
        let read = mesh::read::bounded(path, mesh::read::MAX_TABLE_BYTES);
        let read = read.and_then(|bytes| Ok(serde_json::from_slice::<Kept>(&bytes)?));
        let kept = read.map_err(|reason| NotKnown {
            path: path.to_owned(),
            reason,
        })?;
        let figures = kept.figures.into_iter();
        Ok(Self(
            figures.map(|f| (f.figure, f.standard_deviation)).collect(),
        ))
    }
}

impl RepeatResult {
    /// Judges the ranges by standard deviations that were known before: the critical range
    /// of ISO 5725-6 for the number of scans.
    #[must_use]
    pub fn beside(mut self, known: &KnownRepeatability) -> Self {
        let Some(factor) = self.critical_range_factor else {
            return self;
        };
        for one in &mut self.figures {
            if let Some(&sd) = known.0.get(&one.figure) {
                one.known_standard_deviation = Some(sd);
                one.critical_range = figure(factor * sd);
                one.is_beyond = Some(one.range > factor * sd);
            }
        }
        self
    }
}

fn scans(found: &Repeats<'_>) -> Vec<RepeatScan> {
    let laid = std::iter::once(None).chain(found.spread.laid.iter().map(Some));
    let each = found.scans.iter().zip(laid);
    each.map(|(one, laid)| RepeatScan {
        sha256: one.scan.sha256.clone(),
        unit: one.scan.unit.unit().symbol().to_owned(),
        noise_mm: (one.measured())
            .and_then(|found| found.noise_mm)
            .map(figure),
        rms_mm: laid.map(|l| figure(l.rms_mm)),
        fitting_share: laid.map(|l| figure(l.fitting_share)),
        placing_uncertainty_mm: laid.map(|l| figure(l.uncertainty_mm)),
    })
    .collect()
}

impl SpreadResult {
    fn of(found: &Repeats<'_>) -> Self {
        let spread: &Spread = &found.spread;
        let known = |mm: f64| mm.is_finite().then(|| figure(mm));
        let freedom = found.scans.len() as f64 - 1.0;
        let times = statistics::repeatability::interval(1.0, freedom);
        let places = spread.places.iter().enumerate();
        Self {
            area_judged_mm2: figure(spread.area_judged_mm2),
            pooled_sd_mm: known(spread.pooled_sd_mm),
            median_sd_mm: known(spread.median_sd_mm),
            p95_sd_mm: known(spread.p95_sd_mm),
            sd_from_times: times.map(|t| figure(t.0)),
            sd_to_times: times.map(|t| figure(t.1)),
            detectable_mm: figure(spread.detectable_mm),
            places: places
                .map(|(number, place)| PlaceApart::of(found.first, number, place))
                .collect(),
            map: SPREAD_FILE.to_owned(),
            colours: "viridis".to_owned(),
            to_mm: round_number(spread.p95_sd_mm),
        }
    }
}

impl PlaceApart {
    fn of(first: &CheckedImpression, number: usize, found: &ApartPlace) -> Self {
        let at: &Point3<f64> = &found.centre;
        Self {
            id: format!("R{}", number + 1),
            centre: point(at, first.scan.unit.unit()),
            area_mm2: figure(found.area_mm2),
            apart_mm: figure(found.apart_mm),
            scan: found.scan.map(|scan| scan + 1),
            zone: found.place.map(|place| words::zone(place.zone).to_owned()),
            side: found.place.and_then(|place| place.side).map(Into::into),
        }
    }
}

impl FigureRepeatability {
    fn of(found: &study::repeats::FigureRepeatability) -> Self {
        let spread = found.repeatability;
        Self {
            figure: found.figure.clone(),
            unit: found.unit,
            readings: found.readings.clone(),
            mean: figure(spread.mean),
            mean_uncertainty: figure(spread.mean_uncertainty),
            standard_deviation: figure(spread.sd),
            freedom: found.readings.len().saturating_sub(1),
            from: figure(spread.sd_between.0),
            to: figure(spread.sd_between.1),
            repeatability_limit: figure(spread.limit),
            range: figure(spread.range),
            known_standard_deviation: None,
            critical_range: figure(spread.critical_range),
            is_beyond: None,
        }
    }
}

/// The next of 1, 2, 5, 10, … hundredths of a millimetre and so on, either way.
fn round_number(mm: f64) -> f64 {
    const LEAST_MM: f64 = 0.001;
    if !mm.is_finite() || mm <= LEAST_MM {
        return LEAST_MM;
    }
    let decade = 10_f64.powf(mm.log10().floor());
    let steps = [1.0, 2.0, 5.0, 10.0].map(|step| step * decade);
    let next = steps.into_iter().find(|step| *step >= mm);
    to_decimals(next.unwrap_or(10.0 * decade), 4)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_earlier_study_too_large_to_be_one_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("repeat.json");
        let file = std::fs::File::create(&path).unwrap();
        file.set_len(mesh::read::MAX_TABLE_BYTES + 1).unwrap();
        let why = KnownRepeatability::from_file(&path).unwrap_err();
        assert!(why.to_string().contains("larger than 256 MiB"), "{why}");
    }

    #[test]
    fn the_scale_ends_on_a_round_number() {
        for (mm, to) in [
            (0.013, 0.02),
            (0.02, 0.02),
            (0.021, 0.05),
            (0.7, 1.0),
            (f64::NAN, 0.001),
        ] {
            assert_eq!(round_number(mm), to, "{mm}");
        }
    }
}
