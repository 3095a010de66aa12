//! The agreement of raters as text.

use super::columns::in_columns;
use super::format::in_language;
use crate::studies::agreement::{AgreementResult, KappaResult, ShareResult};
use messages::{Language, Value, text};

/// The agreement of raters as text for people.
#[must_use]
pub fn agreement_text(result: &AgreementResult, language: Language) -> String {
    let head = text!(
        language,
        "agreement-head",
        cases = result.cases,
        raters = result.raters.len(),
        verdicts = result.verdicts.join(", ")
    );
    let mut parts = vec![format!("{head}\n"), kappas(result, language)];
    if !result.beside.is_empty() {
        parts.push(beside(result, language));
    }
    parts.push(format!("{}\n", text!(language, "agreement-legend")));
    parts.join("\n")
}

/// Each pair of raters, then all of them.
fn kappas(result: &AgreementResult, language: Language) -> String {
    let head = vec![
        text!(language, "agreement-raters"),
        text!(language, "agreement-cases"),
        text!(language, "agreement-agreement"),
        text!(language, "agreement-kappa-head"),
    ];
    let pairs = result.pairs.iter();
    let pairs = pairs.map(|pair| (pair.raters.join(", "), pair.agreement.as_ref()));
    let all =
        (result.raters.len() > 2).then(|| (text!(language, "agreement-all"), result.all.as_ref()));
    let rows = pairs.chain(all).map(|(raters, found)| match found {
        Some(found) => kappa_row(raters, found, language),
        None => vec![raters, text!(language, "agreement-not-known")],
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0, 3])
}

fn kappa_row(raters: String, found: &KappaResult, language: Language) -> Vec<String> {
    let share = format!("{:.1} %", 100.0 * found.agreement);
    vec![
        raters,
        found.cases.to_string(),
        in_language(share, language),
        text!(
            language,
            "agreement-kappa",
            kappa = Value::number(found.kappa, 2),
            from = Value::number(found.kappa_from, 2),
            to = Value::number(found.kappa_to, 2)
        ),
    ]
}

/// Each rater beside the one that they are compared with.
fn beside(result: &AgreementResult, language: Language) -> String {
    let head = vec![
        text!(language, "agreement-rater"),
        text!(language, "agreement-missed"),
        text!(language, "agreement-false-alarms"),
    ];
    let rows = result.beside.iter().map(|beside| {
        let shares = [beside.missed, beside.false_alarms].map(|found| share(found, language));
        let [missed, alarms] = shares;
        vec![beside.rater.clone(), missed, alarms]
    });
    let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
    in_columns(&rows, &[0, 1, 2])
}

fn share(found: ShareResult, language: Language) -> String {
    match found.share_from.zip(found.share_to) {
        Some((from, to)) => text!(
            language,
            "agreement-share",
            count = found.count,
            of = found.of,
            from = Value::number(100.0 * from, 1),
            to = Value::number(100.0 * to, 1)
        ),
        None => text!(language, "agreement-no-case"),
    }
}
