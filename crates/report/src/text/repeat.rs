//! Repeated scans of one impression as text.

use super::format::{area, percent, two_decimals, unit};
use crate::result::Side;
use crate::studies::repeat::{RepeatResult, SpreadResult};
use std::fmt::Write;

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
            "  scan {} aligned with the first: rms {rms:.3} mm over {} of it, placed to ± {doubt:.3} mm",
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
        "\nRepeatability (in the sense of ISO 5725), {} degrees of freedom\n{:<width$}  {:>4}  {:>18}  {:>8}  {:>20}  {:>8}  {:>8}  {:>8}",
        result.scans.len().saturating_sub(1),
        "figure",
        "unit",
        "mean ± (95 %)",
        "sd",
        "95 % confidence",
        "limit",
        "range",
        "critical"
    )?;
    for one in &result.figures {
        writeln!(
            out,
            "{:<width$}  {:>4}  {:>18}  {:>8.4}  {:>20}  {:>8.4}  {:>8.4}  {:>8.4}{}",
            one.figure,
            unit(one.unit).trim(),
            format!("{} ± {:.3}", two_decimals(one.mean), one.mean_uncertainty),
            one.standard_deviation,
            format!("{:.4} to {:.4}", one.from, one.to),
            one.repeatability_limit,
            one.range,
            one.critical_range,
            if one.is_beyond == Some(true) {
                "  BEYOND"
            } else {
                ""
            }
        )?;
    }
    for one in &result.not_judged {
        writeln!(out, "Not judged: {} ({})", one.figure, one.why)?;
    }
    writeln!(
        out,
        "limit: two scans differ by less in 95 of 100. critical: so many scans lie within it in 95 of 100 (ISO \
         5725-6, factor {:.1}){}. Map: viridis, dark 0 to bright {} mm; grey where \
         a scan shows no surface",
        result.critical_range_factor.unwrap_or(f64::NAN),
        known_words(result),
        result.spread.to_mm
    )
}

/// By whose standard deviation the critical range is.
fn known_words(result: &RepeatResult) -> &'static str {
    let is_known = result.figures.iter().any(|one| one.is_beyond.is_some());
    if result.figures.iter().any(|one| one.is_beyond == Some(true)) {
        ", by the standard deviation of the earlier study. Where the range is BEYOND it, scan again; until then take the median"
    } else if is_known {
        ", by the standard deviation of the earlier study: every range is within it"
    } else {
        ", by these scans' own standard deviation; --known judges the ranges by that of an earlier study"
    }
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
            "They differ nowhere by more than noise and alignment explain ({:.3} mm)",
            spread.detectable_mm
        );
    }
    writeln!(
        out,
        "They differ by more than noise and alignment explain ({:.3} mm) in {} place{}:",
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
