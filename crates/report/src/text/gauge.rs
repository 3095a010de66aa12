//! A gauge study as text.

use super::columns::in_columns;
use super::compared::compared;
use super::format::{in_language, unit};
use super::words::named;
use crate::studies::gauge::{ByRanges, FigureStudy, GaugeResult, VariationRow};
use messages::{Language, Message, Value, message, text};

/// A gauge study as text for people: in full for one figure, a row each for
/// several.
#[must_use]
pub fn gauge_text(result: &GaugeResult, language: Language) -> String {
    let study = match &result.studies[..] {
        [one] => in_full(one, language),
        several => in_rows(several, language),
    };
    let not_studied = result.not_studied.iter().map(|one| {
        message!(
            "gauge-not-studied",
            figure = compared(&one.figure, language),
            why = one.reason.clone()
        )
    });
    let end = not_studied.chain([message!("gauge-legend")]);
    study + &lines(end, language)
}

fn lines(said: impl IntoIterator<Item = Message>, language: Language) -> String {
    let lines = said.into_iter();
    lines
        .map(|line| format!("{}\n", line.text(language)))
        .collect()
}

fn in_full(study: &FigureStudy, language: Language) -> String {
    let by_ranges = study.by_ranges.as_ref().map(by_ranges);
    let end = [categories_line(study)]
        .into_iter()
        .chain(against_limits(study))
        .chain(by_ranges);
    [
        lines([head(study)], language),
        analysis(study, language) + &lines([interaction(study)], language),
        variation(study, language),
        lines(end, language),
    ]
    .join("\n")
}

/// The table of the analysis of variance.
fn analysis(study: &FigureStudy, language: Language) -> String {
    let head = vec![
        text!(language, "gauge-source"),
        text!(language, "gauge-freedom"),
        text!(language, "gauge-sum-of-squares"),
        text!(language, "gauge-mean-square"),
    ];
    let number = |value: f64| in_language(format!("{value:.6}"), language);
    let rows = study.analysis.iter().map(|row| {
        vec![
            part_name(row.source, language),
            row.freedom.to_string(),
            number(row.sum_of_squares),
            number(row.mean_square),
        ]
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0])
}

fn part_name(name: &str, language: Language) -> String {
    named(&Message::name("gauge-part", name), name, language)
}

fn interaction(study: &FigureStudy) -> Message {
    match study.interaction_f.zip(study.interaction_p) {
        Some((f, p)) => {
            let (f, p) = (Value::number(f, 3), Value::number(p, 3));
            if study.interaction_pooled {
                message!("gauge-interaction-pooled", f = f, p = p)
            } else {
                message!("gauge-interaction-apart", f = f, p = p)
            }
        }
        None => message!("gauge-no-interaction"),
    }
}

/// The components of the variation.
fn variation(study: &FigureStudy, language: Language) -> String {
    let head = vec![
        text!(language, "gauge-variation"),
        text!(language, "gauge-sd"),
        text!(language, "gauge-confidence"),
        text!(language, "gauge-of-study"),
        text!(language, "gauge-of-variance"),
    ];
    let number = |value: f64, decimals| Value::number(value, decimals).text(language);
    let rows = study.variation.iter().map(|row| {
        vec![
            part_name(row.component, language),
            number(row.standard_deviation, 5),
            confidence(row).text(language),
            number(row.percent_of_study_variation, 2),
            number(row.percent_of_variance, 2),
        ]
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0])
}

fn categories_line(study: &FigureStudy) -> Message {
    let count = categories(study.distinct_categories);
    message!("gauge-categories", count = count)
}

fn by_ranges(ranges: &ByRanges) -> Message {
    let number = |value: f64| Value::number(value, 5);
    message!(
        "gauge-by-ranges",
        repeatability = number(ranges.repeatability),
        reproducibility = number(ranges.reproducibility),
        gauge = number(ranges.gauge),
        parts = number(ranges.parts),
        percent = Value::number(ranges.gauge_percent, 2),
        categories = categories(ranges.distinct_categories)
    )
}

fn in_rows(studies: &[FigureStudy], language: Language) -> String {
    let Some(first) = studies.first() else {
        return lines([message!("gauge-nothing")], language);
    };
    let heads = vec![
        text!(language, "control-head-figure"),
        text!(language, "control-head-unit"),
        text!(language, "gauge-repeat-sd"),
        text!(language, "gauge-operators-sd"),
        text!(language, "gauge-gauge-sd"),
        text!(language, "gauge-parts-sd"),
        text!(language, "gauge-gauge-percent"),
        text!(language, "gauge-categories-head"),
    ];
    let rows = studies.iter().map(|study| row(study, language));
    let rows: Vec<Vec<String>> = std::iter::once(heads).chain(rows).collect();
    let against = studies.iter().filter_map(|study| {
        let figure = compared(&study.figure, language);
        Some(message!(
            "gauge-of-figure",
            figure = figure,
            said = against_limits(study)?
        ))
    });
    let head = lines([head(first)], language);
    let table = in_columns(&rows, &[0]);
    format!("{head}\n{table}{}", lines(against, language))
}

fn row(study: &FigureStudy, language: Language) -> Vec<String> {
    let sd = |name| in_language(sd_cell(study.component(name)), language);
    let gauge = study.component("gauge");
    let percent = gauge.map_or(f64::NAN, |row| row.percent_of_study_variation);
    vec![
        compared(&study.figure, language),
        study
            .unit
            .map_or(String::new(), |u| unit(u).trim().to_owned()),
        sd("repeatability"),
        sd("reproducibility"),
        sd("gauge"),
        sd("parts"),
        Value::number(percent, 1).text(language),
        categories(study.distinct_categories),
    ]
}

fn head(study: &FigureStudy) -> Message {
    message!(
        "gauge-head",
        operators = study.operators,
        parts = study.parts,
        repeats = study.repeats
    )
}

fn confidence(row: &VariationRow) -> Message {
    let number = |value: f64| Value::number(value, 5);
    match (row.from.zip(row.to), row.at_most) {
        (Some((from, to)), _) => {
            message!("share-interval", low = number(from), high = number(to))
        }
        (None, Some(most)) => message!("gauge-at-most", most = number(most)),
        (None, None) => message!("gauge-below-zero"),
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
fn against_limits(study: &FigureStudy) -> Option<Message> {
    let against = study.against_limits.as_ref()?;
    let limit = |value: f64| Value::figure(value.to_string());
    let limits = match (against.least, against.most) {
        (Some(least), Some(most)) => {
            message!(
                "gauge-least-and-most",
                least = limit(least),
                most = limit(most)
            )
        }
        (Some(least), None) => message!("gauge-least", least = limit(least)),
        (None, Some(most)) => message!("gauge-most", most = limit(most)),
        (None, None) => return None,
    };
    let percent = |value: f64| Value::number(value, 1);
    let distance = against.percent_of_distance.map_or_else(
        || message!("gauge-mean-on-limit"),
        |share| message!("gauge-of-distance", percent = percent(share)),
    );
    Some(match against.percent_of_tolerance {
        Some(share) => message!(
            "gauge-against-both",
            limits = limits,
            percent = percent(share),
            distance = distance
        ),
        None => message!("gauge-against-one", limits = limits, distance = distance),
    })
}

fn categories(count: Option<f64>) -> String {
    count.map_or("-".to_owned(), |count| count.to_string())
}
