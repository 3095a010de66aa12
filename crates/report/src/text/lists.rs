//! The lists of the summary: findings, and what was not judged.

use super::measured::finding_figure;
use super::names::REPORT_FILE;
use super::words::{cause_word, finding_place, impression_name, place_on_tray};
use crate::result::{CaseResult, Cause, FileKind, Finding, NotJudged, Severity};
use anstyle::Style;
use judge::Check;
use judge::words::SAFETY;
use std::collections::BTreeMap;
use std::fmt::{self, Write};

/// Findings that are written out; the rest is counted.
const MOST_FINDINGS: usize = 12;

pub(super) fn write_findings(out: &mut String, result: &CaseResult) -> fmt::Result {
    let mut first_with: BTreeMap<&str, &str> = BTreeMap::new();
    let shown: Vec<&Finding> = told(result).take(MOST_FINDINGS).collect();
    for finding in &shown {
        let style = severity_style(finding.severity);
        write!(
            out,
            "{:>4} {style}{}{style:#} {}",
            finding.id,
            cause_word(finding),
            finding.check
        )?;
        let place = finding_place(result, finding);
        if !place.is_empty() {
            write!(out, ", {place}")?;
        }
        if let Some(figure) = finding_figure(finding) {
            write!(out, ": {figure}")?;
        }
        if let Some(spot) = &finding.refers_to {
            write!(out, " [{spot}]")?;
        }
        writeln!(out)?;
        if let Some(place) = place_on_tray(result, finding) {
            writeln!(out, "       On the tray: {place}.")?;
        }
        match first_with.get(finding.instruction.as_str()) {
            Some(id) => writeln!(out, "       Same action as {id}.")?,
            None => {
                writeln!(out, "       {}", without_safety(&finding.instruction))?;
                first_with.insert(&finding.instruction, &finding.id);
            }
        }
    }
    write_more(out, result, &shown)?;
    write_held_back(out, result)?;
    if shown.iter().any(|f| f.instruction.contains(SAFETY)) {
        writeln!(out, "Safety: {SAFETY}")?;
    }
    if told(result).any(falls_short_of_a_scan) {
        writeln!(
            out,
            "How to scan so that all of it can be judged: archproof help scanning"
        )?;
    }
    Ok(())
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

/// An instruction without the sentence on safe grinding, which the summary prints once.
fn without_safety(instruction: &str) -> String {
    instruction.replace(&format!(" {SAFETY}"), "")
}

/// How many findings are written elsewhere, and where.
fn write_more(out: &mut String, result: &CaseResult, shown: &[&Finding]) -> fmt::Result {
    let rest = told(result).skip(shown.len());
    let (count, notes) = rest.fold((0, 0), |(count, notes), finding| {
        (count + 1, notes + usize::from(finding.cause == Cause::Note))
    });
    let what = match (count, count == notes) {
        (0, _) => return Ok(()),
        (1, true) => "1 further note is".to_owned(),
        (1, false) => "1 further finding is".to_owned(),
        (_, true) => format!("{count} further notes are"),
        (_, false) => format!("{count} further findings are"),
    };
    let has_report = result
        .files
        .iter()
        .any(|file| file.kind == FileKind::Report);
    let place = if has_report {
        REPORT_FILE
    } else {
        "result.json"
    };
    writeln!(out, "     {what} in {place}.")
}

/// The findings that a person is to read: all but those that a question holds back.
fn told(result: &CaseResult) -> impl Iterator<Item = &Finding> {
    let findings = result.findings.iter();
    findings.filter(|finding| finding.cause != Cause::HeldBack)
}

fn write_held_back(out: &mut String, result: &CaseResult) -> fmt::Result {
    let mut checks: Vec<&str> = Vec::new();
    for finding in result
        .findings
        .iter()
        .filter(|f| f.cause == Cause::HeldBack)
    {
        if !checks.contains(&finding.check.as_str()) {
            checks.push(&finding.check);
        }
    }
    if checks.is_empty() {
        return Ok(());
    }
    writeln!(
        out,
        "Held back until the question is answered, because sides and places are not certain: {}",
        checks.join(", ")
    )
}

pub(super) fn write_not_judged(out: &mut String, result: &CaseResult) -> fmt::Result {
    for impression in &result.impressions {
        let of = match result.impressions.len() {
            1 => String::new(),
            _ => format!(", {}", impression_name(impression)),
        };
        write_by_reason(out, &of, &impression.not_judged)?;
    }
    let borders = result.impressions.iter().flat_map(|i| &i.border);
    let of_borders: Vec<NotJudged> = borders.flat_map(|b| b.not_judged.clone()).collect();
    write_by_reason(out, "", &of_borders)?;
    write_by_reason(out, "", &result.not_judged)?;
    let not_asked: Vec<&str> = (result.not_judged.iter())
        .filter(|entry| !entry.asked)
        .map(|entry| entry.check.as_str())
        .collect();
    if not_asked.is_empty() {
        return Ok(());
    }
    writeln!(out, "Not part of this check: {}", not_asked.join(", "))
}

fn write_by_reason(out: &mut String, of: &str, not_judged: &[NotJudged]) -> fmt::Result {
    let mut by_reason: Vec<(&str, Vec<&str>)> = Vec::new();
    for entry in not_judged.iter().filter(|entry| entry.asked) {
        match by_reason.iter_mut().find(|(why, _)| *why == entry.why) {
            Some((_, checks)) if checks.contains(&entry.check.as_str()) => {}
            Some((_, checks)) => checks.push(&entry.check),
            None => by_reason.push((&entry.why, vec![&entry.check])),
        }
    }
    for (why, checks) in by_reason {
        writeln!(out, "Not judged{of}: {} ({why})", checks.join(", "))?;
    }
    Ok(())
}

fn severity_style(severity: Severity) -> Style {
    match severity {
        Severity::Fail => Style::new().bold(),
        Severity::Borderline | Severity::Note => Style::new(),
    }
}
