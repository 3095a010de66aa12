//! The lists of the summary: findings, and what was not judged.

use super::material_added::adds_material;
use super::measured::finding_figure;
use super::names::REPORT_FILE;
use super::safety::{speaks_of_safety, without_safety};
use super::words::{
    cause_word, check_name, check_names, finding_place, impression_name, place_on_tray,
};
use crate::result::{CaseResult, Cause, FileKind, Finding, NotJudged, Severity};
use anstyle::Style;
use judge::Check;
use messages::{Language, text};
use std::collections::BTreeMap;
use std::fmt::{self, Write};

/// Findings that are written out; the rest is counted.
const MOST_FINDINGS: usize = 12;

pub(super) fn write_findings(
    out: &mut String,
    result: &CaseResult,
    language: Language,
) -> fmt::Result {
    let mut first_with: BTreeMap<&str, &str> = BTreeMap::new();
    let shown: Vec<&Finding> = told(result).take(MOST_FINDINGS).collect();
    for finding in &shown {
        write_head(out, result, finding, language)?;
        if let Some(place) = place_on_tray(result, finding, language) {
            let line = text!(language, "summary-on-tray", place = place);
            writeln!(out, "       {line}")?;
        }
        match first_with.get(finding.instruction.as_str()) {
            Some(id) => {
                let line = text!(language, "summary-same-action", id = *id);
                writeln!(out, "       {line}")?;
            }
            None => {
                writeln!(out, "       {}", without_safety(finding, language))?;
                first_with.insert(&finding.instruction, &finding.id);
            }
        }
    }
    write_more(out, result, &shown, language)?;
    write_held_back(out, result, language)?;
    if shown.iter().any(|finding| speaks_of_safety(finding)) {
        writeln!(out, "{}", text!(language, "summary-safety"))?;
    }
    if shown.iter().any(|finding| adds_material(result, finding)) {
        writeln!(out, "{}", text!(language, "adhesive"))?;
    }
    if told(result).any(falls_short_of_a_scan) {
        writeln!(out, "{}", text!(language, "summary-how-to-scan"))?;
    }
    Ok(())
}

/// Name, cause, check, place and figure of a finding in one line.
fn write_head(
    out: &mut String,
    result: &CaseResult,
    finding: &Finding,
    language: Language,
) -> fmt::Result {
    let style = severity_style(finding.severity);
    write!(
        out,
        "{:>4} {style}{}{style:#} {}",
        finding.id,
        cause_word(finding, language),
        check_with_code(&finding.check, language)
    )?;
    let place = finding_place(result, finding, language);
    if !place.is_empty() {
        write!(out, ", {place}")?;
    }
    if let Some(figure) = finding_figure(finding, language) {
        write!(out, ": {figure}")?;
    }
    if let Some(spot) = &finding.refers_to {
        write!(out, " [{spot}]")?;
    }
    writeln!(out)
}

/// The name of a check with its code, by which `archproof explain` knows it; the code alone
/// where the name is the same.
fn check_with_code(code: &str, language: Language) -> String {
    let name = check_name(code, language);
    if name.replace(' ', "-") == code {
        code.to_owned()
    } else {
        format!("{name} ({code})")
    }
}

/// Whether a better scan is asked for.
fn falls_short_of_a_scan(finding: &Finding) -> bool {
    let check = finding.check.parse();
    finding.severity != Severity::Note
        && matches!(
            check,
            Ok(Check::NotAnImpression
                | Check::CoverNotJudged
                | Check::BorderNotJudged
                | Check::ScanEnds
                | Check::ScanResolution
                | Check::ScanQuality
                | Check::VoidUnseen
                | Check::TissueArea
                | Check::Hole)
        )
}

/// How many findings are written elsewhere, and where.
fn write_more(
    out: &mut String,
    result: &CaseResult,
    shown: &[&Finding],
    language: Language,
) -> fmt::Result {
    let rest = told(result).skip(shown.len());
    let (count, notes) = rest.fold((0_usize, 0), |(count, notes), finding| {
        (count + 1, notes + usize::from(finding.cause == Cause::Note))
    });
    if count == 0 {
        return Ok(());
    }
    let has_report = result
        .files
        .iter()
        .any(|file| file.kind == FileKind::Report);
    let place = if has_report {
        REPORT_FILE
    } else {
        "result.json"
    };
    let line = text!(
        language,
        "findings-more",
        count = count,
        notes = if count == notes { "all" } else { "some" },
        place = place
    );
    writeln!(out, "     {line}")
}

/// The findings that a person is to read: all but those that a question holds back.
fn told(result: &CaseResult) -> impl Iterator<Item = &Finding> {
    let findings = result.findings.iter();
    findings.filter(|finding| finding.cause != Cause::HeldBack)
}

fn write_held_back(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    let mut codes: Vec<&str> = Vec::new();
    for finding in result
        .findings
        .iter()
        .filter(|f| f.cause == Cause::HeldBack)
    {
        if !codes.contains(&finding.check.as_str()) {
            codes.push(&finding.check);
        }
    }
    if codes.is_empty() {
        return Ok(());
    }
    let checks = check_names(&codes, language);
    writeln!(
        out,
        "{}",
        text!(language, "summary-held-back", checks = checks)
    )
}

pub(super) fn write_not_judged(
    out: &mut String,
    result: &CaseResult,
    language: Language,
) -> fmt::Result {
    for impression in &result.impressions {
        let of = match result.impressions.len() {
            1 => None,
            _ => Some(impression_name(impression, language)),
        };
        write_by_reason(out, of.as_deref(), &impression.not_judged, language)?;
    }
    let borders = result.impressions.iter().flat_map(|i| &i.border);
    let of_borders: Vec<NotJudged> = borders.flat_map(|b| b.not_judged.clone()).collect();
    write_by_reason(out, None, &of_borders, language)?;
    write_by_reason(out, None, &result.not_judged, language)?;
    let not_asked: Vec<&str> = (result.not_judged.iter())
        .filter(|entry| !entry.asked)
        .map(|entry| entry.check.as_str())
        .collect();
    if not_asked.is_empty() {
        return Ok(());
    }
    let checks = check_names(&not_asked, language);
    writeln!(
        out,
        "{}",
        text!(language, "summary-not-part", checks = checks)
    )
}

fn write_by_reason(
    out: &mut String,
    of: Option<&str>,
    not_judged: &[NotJudged],
    language: Language,
) -> fmt::Result {
    let mut by_reason: Vec<(String, Vec<&str>)> = Vec::new();
    for entry in not_judged.iter().filter(|entry| entry.asked) {
        let why = entry.why_in(language);
        match by_reason.iter_mut().find(|(other, _)| *other == why) {
            Some((_, codes)) if codes.contains(&entry.check.as_str()) => {}
            Some((_, codes)) => codes.push(&entry.check),
            None => by_reason.push((why, vec![&entry.check])),
        }
    }
    for (why, codes) in by_reason {
        let checks = check_names(&codes, language);
        let line = match of {
            None => text!(language, "summary-not-judged", checks = checks, why = why),
            Some(of) => text!(
                language,
                "summary-not-judged-of",
                impression = of,
                checks = checks,
                why = why
            ),
        };
        writeln!(out, "{line}")?;
    }
    Ok(())
}

fn severity_style(severity: Severity) -> Style {
    match severity {
        Severity::Fail => Style::new().bold(),
        Severity::Borderline | Severity::Note => Style::new(),
    }
}
