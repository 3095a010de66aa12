//! The agreement of raters as text.

use crate::studies::agreement::{AgreementResult, KappaResult, ShareResult};
use std::fmt::{self, Write};

/// The agreement of raters as text for people.
#[must_use]
pub fn agreement_text(result: &AgreementResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

fn write_text(out: &mut String, result: &AgreementResult) -> fmt::Result {
    writeln!(
        out,
        "{} cases, {} raters, verdicts {}\n",
        result.cases,
        result.raters.len(),
        result.verdicts.join(", ")
    )?;
    writeln!(
        out,
        "{:<32}{:>6}{:>11}  kappa (95 % interval)",
        "raters", "cases", "agreement"
    )?;
    for pair in &result.pairs {
        write_kappa(out, &pair.raters.join(", "), pair.agreement.as_ref())?;
    }
    if result.raters.len() > 2 {
        write_kappa(out, "all", result.all.as_ref())?;
    }
    if !result.beside.is_empty() {
        writeln!(
            out,
            "\n{:<32}{:<30}false alarms (95 % interval)",
            "rater", "missed (95 % interval)"
        )?;
    }
    for beside in &result.beside {
        let [missed, alarms] = [beside.missed, beside.false_alarms].map(share);
        writeln!(out, "{:<32}{missed:<30}{alarms}", beside.rater)?;
    }
    writeln!(
        out,
        "\nkappa: agreement beyond chance, 1 where all agree, 0 as by chance. Of two raters Cohen's, with the \
         interval of Fleiss, Cohen and Everitt 1969; of all Fleiss', with that of the jackknife over cases."
    )
}

fn write_kappa(out: &mut String, raters: &str, found: Option<&KappaResult>) -> fmt::Result {
    match found {
        Some(found) => writeln!(
            out,
            "{raters:<32}{:>6}{:>9.1} %  {:.2} ({:.2} to {:.2})",
            found.cases,
            100.0 * found.agreement,
            found.kappa,
            found.kappa_from,
            found.kappa_to
        ),
        None => writeln!(
            out,
            "{raters:<32}not known beyond chance: one verdict only, or no case in common"
        ),
    }
}

fn share(found: ShareResult) -> String {
    match found.share_from.zip(found.share_to) {
        Some((from, to)) => format!(
            "{} of {} ({:.1} to {:.1} %)",
            found.count,
            found.of,
            100.0 * from,
            100.0 * to
        ),
        None => "no such case".to_owned(),
    }
}
