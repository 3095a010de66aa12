//! The terminal summary: the verdict first, then one entry a finding. Made from
//! the result alone, so that every figure is that of `result.json`.

use super::format::{self, two_decimals};
use super::words::{
    arch_word, finding_figure, finding_place, impression_name, landmark_name, severity_word,
    verdict_word, what_to_do,
};
use crate::result::{CaseResult, ImpressionResult, LandmarkStatus, NotJudged, Severity, Verdict};
use anstyle::{AnsiColor, Style};
use std::collections::BTreeMap;
use std::fmt::{self, Write};

/// Findings that are written out; the rest is counted.
const MOST_FINDINGS: usize = 12;

/// The summary as text with terminal colours; strip them where they are not
/// wanted. Nothing is told by colour alone.
#[must_use]
pub fn summary(result: &CaseResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_summary(&mut text, result);
    text
}

fn write_summary(out: &mut String, result: &CaseResult) -> fmt::Result {
    let style = verdict_style(result.verdict);
    writeln!(
        out,
        "{style}{}{style:#} case {}: {}",
        verdict_word(result.verdict).to_uppercase(),
        result.case,
        what_to_do(result)
    )?;
    for impression in &result.impressions {
        write_impression(out, impression)?;
    }
    write_washes(out, result)?;
    write_relation(out, result)?;
    write_findings(out, result)?;
    write_not_judged(out, result)?;
    write_maps(out, result)?;
    write_warnings(out, result)
}

fn write_impression(out: &mut String, impression: &ImpressionResult) -> fmt::Result {
    write!(
        out,
        "  {}: {}",
        impression_name(impression),
        verdict_word(impression.verdict)
    )?;
    if let Some(cover) = &impression.cover {
        let values = cover.min_mm.zip(cover.median_mm).zip(cover.uncertainty_mm);
        if let Some(((least, median), doubt)) = values {
            write!(
                out,
                "; cover least {}, median {}, each ± {} mm, over {} of scanned tissue surface",
                two_decimals(least),
                two_decimals(median),
                two_decimals(doubt),
                format::area(cover.area_judged_mm2)
            )?;
        }
        let stops = cover
            .spots
            .iter()
            .filter(|spot| spot.stop.is_some())
            .count();
        if stops > 0 {
            write!(
                out,
                "; tray shows at {stops} declared tissue stops, as it should"
            )?;
        }
    }
    writeln!(out)?;
    write_colour(out, impression)?;
    write_landmarks(out, impression)
}

/// How much tray the colours show, and what they were taken for.
fn write_colour(out: &mut String, impression: &ImpressionResult) -> fmt::Result {
    let Some(colour) = &impression.tray_colour else {
        return Ok(());
    };
    writeln!(
        out,
        "    by colour tray ({}, {}) shows over {} of {}, material is {}",
        colour.tray,
        if colour.inferred {
            "told from the scan"
        } else {
            "as given"
        },
        format::quantity(colour.tray_seen_mm2, None, "mm2"),
        format::area(colour.area_judged_mm2),
        colour.material
    )
}

/// How many landmarks were recorded, and which were not.
fn write_landmarks(out: &mut String, impression: &ImpressionResult) -> fmt::Result {
    let landmarks = &impression.landmarks;
    if landmarks.is_empty() {
        return Ok(());
    }
    let of = |status| landmarks.iter().filter(move |l| l.status == status);
    let recorded = of(LandmarkStatus::Recorded).count();
    let verifiable = landmarks.len() - of(LandmarkStatus::Reached).count();
    write!(out, "    landmarks recorded: {recorded} of {verifiable}")?;
    for (status, word) in [
        (LandmarkStatus::Reached, "place reached, not verified"),
        (LandmarkStatus::CutShort, "cut short"),
        (LandmarkStatus::Obscured, "obscured"),
        (LandmarkStatus::NotFound, "not found"),
    ] {
        let names: Vec<String> = of(status).map(landmark_name).collect();
        if !names.is_empty() {
            write!(out, "; {word}: {}", names.join(", "))?;
        }
    }
    writeln!(out)
}

fn write_findings(out: &mut String, result: &CaseResult) -> fmt::Result {
    let mut first_with: BTreeMap<&str, &str> = BTreeMap::new();
    for finding in result.findings.iter().take(MOST_FINDINGS) {
        let style = severity_style(finding.severity);
        write!(
            out,
            "{:>4} {style}{}{style:#} {}",
            finding.id,
            severity_word(finding.severity),
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
        match first_with.get(finding.instruction.as_str()) {
            Some(id) => writeln!(out, "       as {id}")?,
            None => {
                writeln!(out, "       {}", finding.instruction)?;
                first_with.insert(&finding.instruction, &finding.id);
            }
        }
    }
    match result.findings.len().saturating_sub(MOST_FINDINGS) {
        0 => Ok(()),
        more => writeln!(out, "     and {more} more in the report"),
    }
}

fn write_not_judged(out: &mut String, result: &CaseResult) -> fmt::Result {
    for impression in &result.impressions {
        let of = match result.impressions.len() {
            1 => String::new(),
            _ => format!(", {}", impression_name(impression)),
        };
        write_by_reason(out, &of, &impression.not_judged)?;
    }
    write_by_reason(out, "", &result.not_judged)
}

fn write_by_reason(out: &mut String, of: &str, not_judged: &[NotJudged]) -> fmt::Result {
    let mut by_reason: Vec<(&str, Vec<&str>)> = Vec::new();
    for entry in not_judged {
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

/// What each wash added, and what became of the first pass's places.
fn write_washes(out: &mut String, result: &CaseResult) -> fmt::Result {
    for wash in &result.wash {
        write!(
            out,
            "  {} wash over its first pass: median {:.2}, 5 to 95 % {:.2} to {:.2}, each ± {:.2} mm",
            arch_word(wash.arch),
            wash.median_mm,
            wash.p05_mm,
            wash.p95_mm,
            wash.uncertainty_mm
        )?;
        for (places, word) in [
            (&wash.resolved, "resolved"),
            (&wash.still_open, "still open"),
            (&wash.unclear, "not told"),
            (&wash.new, "new"),
        ] {
            if !places.is_empty() {
                write!(out, "; {word}: {}", places.join(", "))?;
            }
        }
        writeln!(out)?;
    }
    Ok(())
}

/// The relation of the jaws, as far as it was given or measured.
fn write_relation(out: &mut String, result: &CaseResult) -> fmt::Result {
    let Some(relation) = &result.jaw_relation else {
        return Ok(());
    };
    if let Some(mm) = relation.interocclusal_distance_mm {
        writeln!(
            out,
            "  interocclusal distance: {mm:.1} mm, as the case gives it"
        )?;
    }
    let spaces = relation.interarch_space_mm.iter().copied();
    let ends = spaces.clone().reduce(f64::min).zip(spaces.reduce(f64::max));
    let angle = relation
        .ridge_angle_deg
        .zip(relation.ridge_angle_uncertainty_deg);
    if let (Some((least, most)), Some(doubt), Some((angle, angle_doubt))) =
        (ends, relation.uncertainty_mm, angle)
    {
        writeln!(
            out,
            "  space between the ridges: {least:.1} to {most:.1}, each ± {doubt:.1} mm; angle between \
             them {angle:.1} ± {angle_doubt:.1}°"
        )?;
    }
    Ok(())
}

/// How the colours of the cover maps are to be read.
fn write_maps(out: &mut String, result: &CaseResult) -> fmt::Result {
    let covers = result.impressions.iter().flat_map(|i| &i.cover);
    for map in covers.flat_map(|cover| &cover.map) {
        writeln!(
            out,
            "Cover map {}: {}, dark {} mm to bright {} mm; grey where cover is not known",
            map.file, map.colours, map.from_mm, map.to_mm
        )?;
    }
    for map in result.wash.iter().flat_map(|wash| &wash.map) {
        writeln!(
            out,
            "Wash map {}: {}, dark {} mm to bright {} mm; grey where its thickness is not known",
            map.file, map.colours, map.from_mm, map.to_mm
        )?;
    }
    Ok(())
}

fn write_warnings(out: &mut String, result: &CaseResult) -> fmt::Result {
    for impression in &result.impressions {
        let scan = &impression.scan;
        let of_tray = impression
            .tray
            .iter()
            .flat_map(|tray| tray.warnings.iter().map(|warning| (&tray.file, warning)));
        let of_scan = scan.warnings.iter().map(|warning| (&scan.file, warning));
        for (file, warning) in of_scan.chain(of_tray) {
            writeln!(out, "Reading: {file}: {warning}")?;
        }
    }
    Ok(())
}

fn verdict_style(verdict: Verdict) -> Style {
    let colour = match verdict {
        Verdict::Accept => AnsiColor::Cyan,
        Verdict::Rework | Verdict::Retake => AnsiColor::Yellow,
        Verdict::Undecided => AnsiColor::Blue,
    };
    Style::new().bold().fg_color(Some(colour.into()))
}

fn severity_style(severity: Severity) -> Style {
    match severity {
        Severity::Fail => Style::new().bold(),
        Severity::Borderline | Severity::Note => Style::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::CaseResult;
    use crate::testing::{checked_with_spots, checked_without_cover};

    fn plain(text: &str) -> String {
        let mut plain = String::new();
        let mut rest = text;
        while let Some(start) = rest.find('\u{1b}') {
            plain.push_str(&rest[..start]);
            rest = rest[start..].split_once('m').map_or("", |(_, after)| after);
        }
        plain + rest
    }

    #[test]
    fn the_verdict_comes_first_then_a_place_a_line() {
        let text = plain(&summary(&CaseResult::of(&checked_with_spots())));
        let expected = "\
REWORK case D-1042: mend the places that fail, then take a wash.
  maxillary first pass: rework; cover least 0.03, median 2.46, each ± 0.10 mm, over 36.0 cm² of scanned tissue surface
  F1 FAIL show-through, residual ridge, patient's right: 0.03 ± 0.10 mm, limit 0.2 mm [C1]
       Relieve the tray here (out of the mouth, with eye and dust protection, then feel for sharp edges), then take a wash.
  F2 BORDERLINE show-through, palate: 0.15 ± 0.10 mm, limit 0.2 mm [C2]
       Too close to tell from the scan: look at the impression here. If tray shows, relieve it (out of the mouth, with eye and dust protection, then feel for sharp edges) and take a wash; if not, scan this place again, finer.
  F3 note thin-cover, labial flange, patient's left: 0.60 ± 0.10 mm, limit 1 mm [C3]
       Thin here: if a wash is to follow, give it room by relieving the tray a little (out of the mouth, with eye and dust protection, then feel for sharp edges).
Not judged: wash (the case names no first pass beside a wash of the same jaw)
Not judged: jaw_relation (the case names no scan of the jaw-relation record)
Not judged: interocclusal-distance (the case does not give both vertical dimensions)
Not judged: consignment (the case says nothing of the parcel)
Cover map cover-maxillary-first-pass.ply: viridis, dark 0 mm to bright 3 mm; grey where cover is not known
";
        assert_eq!(text, expected);
    }

    #[test]
    fn what_was_not_judged_is_told_with_its_reason() {
        let text = plain(&summary(&CaseResult::of(&checked_without_cover())));
        assert!(text.starts_with("UNDECIDED case D-1042: "), "{text}");
        assert!(
            text.contains(
                "Not judged: show-through, show-through-extent, tissue-area, thin-cover, \
                 cover-uncertainty, tray-seating, tray-size (no tray scan was given)"
            ),
            "{text}"
        );
    }

    #[test]
    fn many_findings_are_counted_beyond_the_first() {
        let mut result = CaseResult::of(&checked_with_spots());
        let one = result.findings[0].clone();
        result.findings.extend(std::iter::repeat_n(one, 20));
        let text = plain(&summary(&result));
        assert!(text.contains("and 11 more in the report"), "{text}");
        assert!(text.contains("       as F1\n"), "{text}");
    }
}
