//! A gauge study as text.

use super::format::unit;
use crate::studies::gauge::{FigureStudy, GaugeResult, VariationRow};
use std::fmt::{Result, Write};

/// A gauge study as text for people: in full for one figure, a row each for
/// several.
#[must_use]
pub fn gauge_text(result: &GaugeResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = match &result.studies[..] {
        [one] => in_full(&mut text, one),
        several => in_rows(&mut text, several),
    };
    let _ = write_end(&mut text, result);
    text
}

fn in_full(out: &mut String, study: &FigureStudy) -> Result {
    write_head(out, study)?;
    writeln!(
        out,
        "\n{:<20}{:>8}{:>16}{:>16}",
        "source", "freedom", "sum of squares", "mean square"
    )?;
    for row in &study.analysis {
        writeln!(
            out,
            "{:<20}{:>8}{:>16.6}{:>16.6}",
            row.source, row.freedom, row.sum_of_squares, row.mean_square
        )?;
    }
    match study.interaction_f.zip(study.interaction_p) {
        Some((f, p)) => writeln!(
            out,
            "operators by parts: F {f:.3}, p {p:.3}; {}",
            if study.interaction_pooled {
                "pooled with the repeats"
            } else {
                "kept apart"
            }
        )?,
        None => writeln!(out, "operators by parts: no F, since repeats never differ")?,
    }
    writeln!(
        out,
        "\n{:<20}{:>12}{:>26}{:>20}{:>16}",
        "variation", "sd", "95 % confidence", "% study variation", "% of variance"
    )?;
    for row in &study.variation {
        writeln!(
            out,
            "{:<20}{:>12.5}{:>26}{:>20.2}{:>16.2}",
            row.component,
            row.standard_deviation,
            confidence(row),
            row.percent_of_study_variation,
            row.percent_of_variance
        )?;
    }
    writeln!(
        out,
        "\nDistinct categories: {}",
        categories(study.distinct_categories)
    )?;
    if let Some(sentence) = against_limits(study) {
        writeln!(out, "{sentence}")?;
    }
    let Some(ranges) = &study.by_ranges else {
        return Ok(());
    };
    writeln!(
        out,
        "By averages and ranges instead: repeatability {:.5}, reproducibility {:.5}, gauge {:.5}, \
         parts {:.5}; gauge {:.2} % of the study variation, {} categories",
        ranges.repeatability,
        ranges.reproducibility,
        ranges.gauge,
        ranges.parts,
        ranges.gauge_percent,
        categories(ranges.distinct_categories)
    )
}

fn in_rows(out: &mut String, studies: &[FigureStudy]) -> Result {
    let Some(first) = studies.first() else {
        return writeln!(out, "No figure could be studied.");
    };
    write_head(out, first)?;
    let width = (studies.iter().map(|s| s.figure.chars().count()).max()).unwrap_or(0);
    writeln!(
        out,
        "\n{:<width$}  {:>4}  {:>10}  {:>10}  {:>10}  {:>10}  {:>7}  {:>10}",
        "figure", "unit", "repeat sd", "operators", "gauge sd", "parts sd", "gauge %", "categories"
    )?;
    for study in studies {
        let sd = |name| sd_cell(study.component(name));
        let gauge = study.component("gauge");
        writeln!(
            out,
            "{:<width$}  {:>4}  {:>10}  {:>10}  {:>10}  {:>10}  {:>7.1}  {:>10}",
            study.figure,
            study
                .unit
                .map_or(String::new(), |u| unit(u).trim().to_owned()),
            sd("repeatability"),
            sd("reproducibility"),
            sd("gauge"),
            sd("parts"),
            gauge.map_or(f64::NAN, |row| row.percent_of_study_variation),
            categories(study.distinct_categories)
        )?;
    }
    for study in studies {
        if let Some(sentence) = against_limits(study) {
            writeln!(out, "{}: {sentence}", study.figure)?;
        }
    }
    Ok(())
}

fn write_head(out: &mut String, study: &FigureStudy) -> Result {
    writeln!(
        out,
        "Crossed gauge study: {} operators, {} parts, {} repeats",
        study.operators, study.parts, study.repeats
    )
}

fn write_end(out: &mut String, result: &GaugeResult) -> Result {
    for one in &result.not_studied {
        writeln!(out, "Not studied: {} ({})", one.figure, one.why)?;
    }
    writeln!(
        out,
        "In the car makers' measurement systems analysis a gauge below 10 % of the study variation \
         is good, from 10 to 30 % it may do, above it does not; it should tell 5 categories apart. \
         The same shares are asked of tolerance and distance. Where a variance is estimated at 0, the \
         standard deviation is at most as given, with a one-sided confidence of 95 %."
    )
}

fn confidence(row: &VariationRow) -> String {
    match (row.from.zip(row.to), row.at_most) {
        (Some((from, to)), _) => format!("{from:.5} to {to:.5}"),
        (None, Some(most)) => format!("at most {most:.5}"),
        (None, None) => "none: far below 0".to_owned(),
    }
}

/// A standard deviation, or what it is at most where it is estimated at 0.
fn sd_cell(row: Option<&VariationRow>) -> String {
    match row.map(|row| (row.standard_deviation, row.at_most)) {
        Some((sd, Some(most))) if sd <= 0.0 => format!("<={most:.4}"),
        Some((sd, _)) => format!("{sd:.4}"),
        None => "-".to_owned(),
    }
}

/// The gauge against the limits of the figure, in a sentence; `None` where it has none.
fn against_limits(study: &FigureStudy) -> Option<String> {
    let against = study.against_limits.as_ref()?;
    let limits = match (against.least, against.most) {
        (Some(least), Some(most)) => format!("least {least}, most {most}"),
        (Some(least), None) => format!("least {least}"),
        (None, Some(most)) => format!("most {most}"),
        (None, None) => return None,
    };
    let tolerance = against.percent_of_tolerance;
    let tolerance = tolerance.map(|p| format!("6 sd are {p:.1} % of the tolerance"));
    let distance = against.percent_of_distance.map_or_else(
        || "the mean of the readings lies on the limit".to_owned(),
        |p| format!("3 sd are {p:.1} % of the distance of the mean from the nearest limit"),
    );
    let said: Vec<String> = tolerance.into_iter().chain([distance]).collect();
    Some(format!(
        "Gauge against limits ({limits}): {}",
        said.join("; ")
    ))
}

fn categories(count: Option<f64>) -> String {
    count.map_or("-".to_owned(), |count| count.to_string())
}
