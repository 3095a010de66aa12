//! Scans of a reference artefact as text.

use super::rounding::to_decimals;
use crate::studies::artefact::{ArtefactResult, Outcome, SizeResult};
use std::fmt::Write;

/// The scans of an artefact as text for people.
#[must_use]
pub fn artefact_text(result: &ArtefactResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

fn write_text(out: &mut String, result: &ArtefactResult) -> std::fmt::Result {
    let verdict = match result.outcome {
        Outcome::Conforming => "CONFORMING",
        Outcome::Borderline => "BORDERLINE",
        Outcome::NotConforming => "NOT CONFORMING",
        Outcome::NotJudged => "NOT JUDGED (the description states no limit)",
    };
    let scans = result.scans.len();
    let of = if scans == 1 { "scan" } else { "scans" };
    writeln!(out, "{verdict}: artefact {}, {scans} {of}", result.artefact)?;
    for (number, scan) in result.scans.iter().enumerate() {
        if let Some((scale, doubt)) = scan.scale.zip(scan.scale_uncertainty) {
            writeln!(
                out,
                "  scan {}: lengths {:+.4} ± {:.4} % of those certified",
                number + 1,
                100.0 * (scale - 1.0),
                100.0 * doubt
            )?;
        }
        if scan.spheres_interchangeable {
            writeln!(
                out,
                "  scan {}: the spheres stand so evenly that one may be taken for another",
                number + 1
            )?;
        }
    }
    writeln!(
        out,
        "\n{:<28}{:>5}{:>12}{:>12}{:>22}{:>10}  ",
        "size, mm", "scan", "certified", "found", "error ± U (k = 2)", "limit"
    )?;
    for size in &result.sizes {
        let name = format!("{} {}", size.quantity, size.of.join(" to "));
        for (number, reading) in size.readings.iter().enumerate() {
            let certified = size
                .certified_mm
                .map_or("-".to_owned(), |mm| format!("{mm:.4}"));
            let limit = size
                .limit_mm
                .map_or("-".to_owned(), |mm| format!("{mm:.4}"));
            let error = match size.certified_mm {
                Some(_) => format!(
                    "{:+.4} ± {:.4}",
                    to_decimals(reading.error_mm, 4),
                    reading.uncertainty_mm
                ),
                None => format!("{:.4} ± {:.4}", reading.error_mm, reading.uncertainty_mm),
            };
            let says = match reading.outcome {
                Outcome::Conforming => "conforming",
                Outcome::Borderline => "borderline",
                Outcome::NotConforming => "NOT CONFORMING",
                Outcome::NotJudged => "not judged",
            };
            writeln!(
                out,
                "{name:<28}{:>5}{certified:>12}{:>12.4}{error:>22}{limit:>10}  {says}",
                number + 1,
                reading.found_mm
            )?;
        }
        write_spread(out, size)?;
    }
    writeln!(
        out,
        "Uncertainty: of the certified size and of the fit, which takes the points to err independently. \
         Dispersion: the shell that holds 95 % of a sphere's points."
    )
}

/// Mean and spread of the errors over the scans, where there are several.
fn write_spread(out: &mut String, size: &SizeResult) -> std::fmt::Result {
    let (Some(mean), Some(sd)) = (size.mean_error_mm, size.standard_deviation_mm) else {
        return Ok(());
    };
    let mean = to_decimals(mean, 4);
    let mean = match size.certified_mm {
        Some(_) => format!("error {mean:+.4}"),
        None => format!("{mean:.4}"),
    };
    write!(out, "{:<28}mean {mean}, standard deviation {sd:.4}", "")?;
    let ends = size.standard_deviation_from_mm;
    if let Some((from, to)) = ends.zip(size.standard_deviation_to_mm) {
        write!(out, " ({from:.4} to {to:.4} with 95 % confidence)")?;
    }
    writeln!(out)
}
