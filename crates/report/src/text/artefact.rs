//! Scans of a reference artefact as text.

use super::columns::in_columns;
use super::compared::quantity_of;
use super::format::in_language;
use super::rounding::to_decimals;
use crate::studies::artefact::{ArtefactResult, ArtefactScan, Outcome, ReadingResult, SizeResult};
use messages::{Language, Message, Value, message, text};

/// The scans of an artefact as text for people.
#[must_use]
pub fn artefact_text(result: &ArtefactResult, language: Language) -> String {
    let head = text!(
        language,
        "artefact-head",
        verdict = verdict(result.outcome),
        artefact = result.artefact.as_str(),
        scans = result.scans.len()
    );
    let scans = (1..).zip(&result.scans);
    let scans: String = scans
        .flat_map(|(number, scan)| of_scan(number, scan))
        .map(|said| format!("  {}\n", said.text(language)))
        .collect();
    let legend = text!(language, "artefact-legend");
    format!("{head}\n{scans}\n{}{legend}\n", sizes(result, language))
}

fn verdict(outcome: Outcome) -> Message {
    match outcome {
        Outcome::Conforming => message!("artefact-conforming"),
        Outcome::Borderline => message!("artefact-borderline"),
        Outcome::NotConforming => message!("artefact-not-conforming"),
        Outcome::NotJudged => message!("artefact-not-judged"),
    }
}

/// What is said of a scan as a whole.
fn of_scan(number: u64, scan: &ArtefactScan) -> impl Iterator<Item = Message> {
    let scale = scan.scale.zip(scan.scale_uncertainty);
    let scale = scale.map(|(scale, doubt)| {
        let [off, doubt] = [100.0 * (scale - 1.0), 100.0 * doubt];
        message!(
            "artefact-scale",
            scan = number,
            off = Value::figure(format!("{off:+.4} ± {doubt:.4}"))
        )
    });
    let alike = scan.spheres_interchangeable;
    let alike = alike.then(|| message!("artefact-interchangeable", scan = number));
    scale.into_iter().chain(alike)
}

/// The table of sizes; mean and spread over the scans follow each size.
fn sizes(result: &ArtefactResult, language: Language) -> String {
    let head = vec![
        text!(language, "artefact-size-head"),
        text!(language, "artefact-scan-head"),
        text!(language, "artefact-certified"),
        text!(language, "artefact-found"),
        text!(language, "artefact-error"),
        text!(language, "artefact-limit-head"),
        String::new(),
    ];
    let rows = result.sizes.iter().flat_map(|size| {
        let readings = (1..).zip(&size.readings);
        let readings = readings.map(|(number, reading)| row(size, number, reading, language));
        let spread = spread(size, language).map(|said| vec![String::new(), said]);
        readings.chain(spread).collect::<Vec<_>>()
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0, 6])
}

fn row(size: &SizeResult, number: u64, reading: &ReadingResult, language: Language) -> Vec<String> {
    let mm = |mm: f64| in_language(format!("{mm:.4}"), language);
    let known = |known: Option<f64>| known.map_or("-".to_owned(), mm);
    let (error, doubt) = (reading.error_mm, reading.uncertainty_mm);
    let error = match size.certified_mm {
        Some(_) => format!("{:+.4} ± {doubt:.4}", to_decimals(error, 4)),
        None => format!("{error:.4} ± {doubt:.4}"),
    };
    let says = match reading.outcome {
        Outcome::Conforming => text!(language, "reading-conforming"),
        Outcome::Borderline => text!(language, "reading-borderline"),
        Outcome::NotConforming => text!(language, "reading-not-conforming"),
        Outcome::NotJudged => text!(language, "reading-not-judged"),
    };
    vec![
        quantity_of(size.quantity, &size.of, language),
        number.to_string(),
        known(size.certified_mm),
        mm(reading.found_mm),
        in_language(error, language),
        known(size.limit_mm),
        says,
    ]
}

/// Mean and spread of the errors over the scans, where there are several.
fn spread(size: &SizeResult, language: Language) -> Option<String> {
    let (mean, sd) = size.mean_error_mm.zip(size.standard_deviation_mm)?;
    let (mean, sd) = (to_decimals(mean, 4), Value::number(sd, 4));
    let said = match size.certified_mm {
        Some(_) => {
            let mean = Value::figure(format!("{mean:+.4}"));
            message!("artefact-mean-error", mean = mean, sd = sd)
        }
        None => message!("artefact-mean", mean = Value::number(mean, 4), sd = sd),
    };
    let ends = size.standard_deviation_from_mm;
    let ends = ends.zip(size.standard_deviation_to_mm).map(|(from, to)| {
        message!(
            "artefact-sd-between",
            from = Value::number(from, 4),
            to = Value::number(to, 4)
        )
    });
    Some(said.then(ends).text(language))
}
