//! Repeated scans of one impression: how well each figure of the result
//! repeats, and a map of where the scans differ.

use crate::cover_map::{MapError, NEUTRAL, colour};
use crate::figures::figures;
use crate::json::json_text;
use crate::outputs::{WriteError, write_aside_then_move};
use crate::result::{Point, Side, assemble};
use crate::rounding::{figure, point, to_decimals};
use crate::told::{area, percent, two_decimals, unit};
use check::{CheckedCase, CheckedImpression};
use judge::words;
use measure::passes::outward;
use measure::repeats::{ApartPlace, NotComparable, Spread, spread};
use nalgebra::Point3;
use schemars::JsonSchema;
use serde::Serialize;
use statistics::repeatability::Repeatability;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Name of the result of repeated scans.
pub const REPEAT_FILE: &str = "repeat.json";
/// Name of the map of their spread.
pub const SPREAD_FILE: &str = "spread.ply";

/// Why repeated scans cannot be compared; its text is one line for people.
#[derive(Debug, Error)]
pub enum RepeatError {
    /// One scan repeats nothing.
    #[error("one scan alone says nothing of repeatability; give two or more of one impression")]
    TooFew,
    /// A scan does not lie on the first.
    #[error("{}: {why}", mesh::read::shown_path(.path))]
    NotComparable {
        /// The scan.
        path: PathBuf,
        /// Why.
        why: measure::NotMeasured,
    },
    /// The results cannot be written.
    #[error(transparent)]
    Write(#[from] WriteError),
}

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
}

/// A figure of which repeatability could not be had.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct NotRepeated {
    /// The figure.
    pub figure: String,
    /// Why.
    pub why: String,
}

/// Repeated scans with what came of them.
#[derive(Debug)]
pub struct Repeats<'a> {
    /// What is to be told.
    pub result: RepeatResult,
    first: &'a CheckedImpression,
    spread: Spread,
}

/// Compares repeated scans of one impression, each checked as a case of its own.
///
/// # Errors
/// When one does not lie on the first.
pub fn compare_repeats(checked: &[CheckedCase]) -> Result<Repeats<'_>, RepeatError> {
    let impressions: Vec<&CheckedImpression> =
        checked.iter().flat_map(|case| &case.impressions).collect();
    let [first, _, ..] = impressions[..] else {
        return Err(RepeatError::TooFew);
    };
    let meshes: Vec<_> = impressions
        .iter()
        .map(|one| outward(&one.scan.mesh, &one.measurement))
        .collect();
    let scans: Vec<_> = (meshes.iter().zip(&impressions))
        .map(|(mesh, one)| (mesh.as_ref(), &one.measurement))
        .collect();
    let spread = spread(&scans).map_err(|NotComparable { scan, why }| {
        let input = checked
            .iter()
            .flat_map(|case| &case.case.impressions)
            .nth(scan);
        RepeatError::NotComparable {
            path: input.map(|input| input.scan.clone()).unwrap_or_default(),
            why,
        }
    })?;
    let (figures, not_judged) = repeatability(checked);
    let result = RepeatResult {
        schema: "archproof-repeat/1",
        program: env!("CARGO_PKG_VERSION"),
        scans: told_scans(&impressions, &spread),
        spread: told_spread(first, &spread, impressions.len()),
        figures,
        not_judged,
    };
    Ok(Repeats {
        result,
        first,
        spread,
    })
}

fn told_scans(impressions: &[&CheckedImpression], spread: &Spread) -> Vec<RepeatScan> {
    let laid = std::iter::once(None).chain(spread.laid.iter().map(Some));
    let each = impressions.iter().zip(laid);
    each.map(|(one, laid)| RepeatScan {
        sha256: one.scan.sha256.clone(),
        unit: one.scan.unit.unit().symbol().to_owned(),
        noise_mm: one.measurement.noise_mm.map(figure),
        rms_mm: laid.map(|l| figure(l.rms_mm)),
        fitting_share: laid.map(|l| figure(l.fitting_share)),
        placing_uncertainty_mm: laid.map(|l| figure(l.uncertainty_mm)),
    })
    .collect()
}

fn told_spread(first: &CheckedImpression, spread: &Spread, scans: usize) -> SpreadResult {
    let known = |mm: f64| mm.is_finite().then(|| figure(mm));
    let times = statistics::repeatability::interval(1.0, scans as f64 - 1.0);
    let places = spread.places.iter().enumerate();
    SpreadResult {
        area_judged_mm2: figure(spread.area_judged_mm2),
        pooled_sd_mm: known(spread.pooled_sd_mm),
        median_sd_mm: known(spread.median_sd_mm),
        p95_sd_mm: known(spread.p95_sd_mm),
        sd_from_times: times.map(|t| figure(t.0)),
        sd_to_times: times.map(|t| figure(t.1)),
        detectable_mm: figure(spread.detectable_mm),
        places: places
            .map(|(k, place)| told_place(first, k, place))
            .collect(),
        map: SPREAD_FILE.to_owned(),
        colours: "viridis".to_owned(),
        to_mm: round_number(spread.p95_sd_mm),
    }
}

fn told_place(first: &CheckedImpression, number: usize, found: &ApartPlace) -> PlaceApart {
    let at: &Point3<f64> = &found.centre;
    PlaceApart {
        id: format!("R{}", number + 1),
        centre: point(at, first.scan.unit.unit()),
        area_mm2: figure(found.area_mm2),
        apart_mm: figure(found.apart_mm),
        scan: found.scan.map(|scan| scan + 1),
        zone: found.place.map(|place| words::zone(place.zone).to_owned()),
        side: found.place.and_then(|place| place.side).map(Into::into),
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

/// Figures that every scan has, with their repeatability, and the others.
fn repeatability(checked: &[CheckedCase]) -> (Vec<FigureRepeatability>, Vec<NotRepeated>) {
    let mut order: Vec<String> = Vec::new();
    let mut all: BTreeMap<String, (&'static str, Vec<f64>)> = BTreeMap::new();
    for case in checked {
        for one in figures(&assemble(case)) {
            let (_, readings) = all.entry(one.name.clone()).or_insert_with(|| {
                order.push(one.name.clone());
                (one.unit, Vec::new())
            });
            readings.push(one.value);
        }
    }
    let (mut found, mut lacking) = (Vec::new(), Vec::new());
    for name in order {
        let (unit, readings) = &all[&name];
        match Repeatability::of(readings).filter(|_| readings.len() == checked.len()) {
            Some(spread) => found.push(FigureRepeatability {
                figure: name,
                unit,
                mean: figure(spread.mean),
                mean_uncertainty: figure(spread.mean_uncertainty),
                standard_deviation: figure(spread.sd),
                freedom: readings.len() - 1,
                from: figure(spread.sd_between.0),
                to: figure(spread.sd_between.1),
                repeatability_limit: figure(spread.limit),
                readings: readings.clone(),
            }),
            None => lacking.push(NotRepeated {
                figure: name,
                why: format!("{} of {} scans have it", readings.len(), checked.len()),
            }),
        }
    }
    (found, lacking)
}

impl Repeats<'_> {
    /// Writes `repeat.json` and the map into a folder, which is made if it is not
    /// there. Gives the names of the files.
    ///
    /// # Errors
    /// When they cannot be written; earlier ones then stay as they were.
    pub fn write(&self, folder: &Path) -> Result<Vec<String>, RepeatError> {
        let outputs = vec![
            (SPREAD_FILE.to_owned(), self.map().map_err(WriteError::Map)?),
            (REPEAT_FILE.to_owned(), json_text(&self.result).into_bytes()),
        ];
        write_aside_then_move(&outputs, folder)?;
        Ok(outputs.into_iter().map(|(name, _)| name).collect())
    }

    /// The map as the bytes of a PLY file: the first scan, in the numbers of its
    /// file, with figures at each vertex that are NaN where they are not known.
    fn map(&self) -> Result<Vec<u8>, MapError> {
        let to_mm = self.result.spread.to_mm;
        let (own, local) = (
            &self.spread.sd_at_vertex_mm,
            &self.spread.local_sd_at_vertex_mm,
        );
        let paint = |mm: &Option<f64>| mm.map_or(NEUTRAL, |mm| colour(mm, 0.0, to_mm));
        let column = |values: &[Option<f64>]| -> Vec<f32> {
            let numbers = values.iter();
            numbers
                .map(|value| value.map_or(f32::NAN, |mm| mm as f32))
                .collect()
        };
        let (sd_mm, local_sd_mm) = (column(own), column(local));
        let scan = &self.first.scan;
        let mesh = scan.mesh.scaled(1.0 / scan.unit.unit().in_mm());
        let mesh = mesh.with_colours(Some(local.iter().map(paint).collect()))?;
        let figures: [(&str, &[f32]); 2] = [("sd_mm", &sd_mm), ("local_sd_mm", &local_sd_mm)];
        Ok(mesh::write::encode_ply(&mesh, &figures)?)
    }
}

/// Repeated scans as text for people.
#[must_use]
pub fn repeat_text(result: &RepeatResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

fn write_text(out: &mut String, result: &RepeatResult) -> std::fmt::Result {
    writeln!(out, "{} scans of one impression", result.scans.len())?;
    for (number, scan) in result.scans.iter().enumerate() {
        let (Some(rms), Some(share), Some(doubt)) =
            (scan.rms_mm, scan.fitting_share, scan.placing_uncertainty_mm)
        else {
            continue;
        };
        writeln!(
            out,
            "  scan {} laid on the first: rms {rms:.3} mm over {} of it, placed to ± {doubt:.3} mm",
            number + 1,
            percent(share)
        )?;
    }
    write_spread(out, &result.spread)?;
    let width = (result
        .figures
        .iter()
        .map(|f| f.figure.chars().count())
        .max())
    .unwrap_or(0);
    writeln!(
        out,
        "\nRepeatability (in the sense of ISO 5725), {} degrees of freedom\n{:<width$}  {:>4}  {:>18}  {:>8}  {:>20}  {:>8}",
        result.scans.len().saturating_sub(1),
        "figure",
        "unit",
        "mean ± (95 %)",
        "sd",
        "95 % confidence",
        "limit"
    )?;
    for one in &result.figures {
        writeln!(
            out,
            "{:<width$}  {:>4}  {:>18}  {:>8.4}  {:>20}  {:>8.4}",
            one.figure,
            unit(one.unit).trim(),
            format!("{} ± {:.3}", two_decimals(one.mean), one.mean_uncertainty),
            one.standard_deviation,
            format!("{:.4} to {:.4}", one.from, one.to),
            one.repeatability_limit
        )?;
    }
    for one in &result.not_judged {
        writeln!(out, "Not judged: {} ({})", one.figure, one.why)?;
    }
    writeln!(
        out,
        "limit: two scans differ by less in 95 of 100. Map: viridis, dark 0 to bright {} mm; grey where \
         a scan shows no surface",
        result.spread.to_mm
    )
}

fn write_spread(out: &mut String, spread: &SpreadResult) -> std::fmt::Result {
    match (spread.pooled_sd_mm, spread.median_sd_mm, spread.p95_sd_mm) {
        (Some(pooled), Some(median), Some(p95)) => writeln!(
            out,
            "Standard deviation at a place: pooled {pooled:.3}, median {median:.3}, 95th percentile {p95:.3} mm, over {}",
            area(spread.area_judged_mm2)
        )?,
        _ => writeln!(out, "Not judged: spread (nothing could be compared)")?,
    }
    if let Some((from, to)) = spread.sd_from_times.zip(spread.sd_to_times) {
        writeln!(
            out,
            "  (of one place alone it lies between {} and {} times that, with 95 % confidence)",
            two_decimals(from),
            two_decimals(to)
        )?;
    }
    if spread.places.is_empty() {
        return writeln!(
            out,
            "Nowhere do they differ by more than noise and placing explain ({:.3} mm)",
            spread.detectable_mm
        );
    }
    writeln!(
        out,
        "They differ by more than noise and placing explain ({:.3} mm) in {} place{}:",
        spread.detectable_mm,
        spread.places.len(),
        if spread.places.len() == 1 { "" } else { "s" }
    )?;
    const MOST: usize = 8;
    for place in spread.places.iter().take(MOST) {
        let zone = place.zone.as_deref().unwrap_or("off the tissue surface");
        let side = match place.side {
            Some(Side::Right) => ", patient's right",
            Some(Side::Left) => ", patient's left",
            None => "",
        };
        let scan = (place.scan).map_or(String::new(), |scan| format!(", scan {scan} stands out"));
        writeln!(
            out,
            "  {} {zone}{side}: {} mm apart over {} mm²{scan}",
            place.id,
            two_decimals(place.apart_mm),
            two_decimals(place.area_mm2)
        )?;
    }
    match spread.places.len().saturating_sub(MOST) {
        0 => Ok(()),
        more => writeln!(out, "  (and {more} smaller)"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::checked_with_border;

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

    #[test]
    fn figures_that_not_every_scan_has_are_named() {
        let mut bare = checked_with_border();
        bare.impressions[0].measurement.border = Err(measure::NotMeasured::NoBorder);
        let whole = checked_with_border();
        let (found, lacking) = repeatability(&[whole.clone(), whole, bare]);
        assert!(
            found
                .iter()
                .any(|f| f.figure == "cover, median" && f.freedom == 2)
        );
        let border = lacking
            .iter()
            .find(|f| f.figure == "border length")
            .unwrap();
        assert_eq!(border.why, "2 of 3 scans have it");
    }
}
