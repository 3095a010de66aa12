//! The terminal summary: the verdict first, then one entry a finding. Made from
//! the result alone, so that every figure is that of `result.json`.

use super::format;
use super::headline::what_to_do;
use super::lists::{write_findings, write_not_judged};
use super::of_impression::{write_impression, write_named};
use super::words::{part_of_the_record, verdict_word};
use crate::result::{Arch, CaseResult, Cause, CoverMap, Verdict};
use anstyle::{AnsiColor, Style};
use judge::scanner_source;
use messages::{Language, Value, message, text};
use std::fmt::{self, Write};

/// The summary as text with terminal colours; strip them where they are not
/// wanted. Nothing is told by colour alone.
#[must_use]
pub fn summary(result: &CaseResult, language: Language) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_summary(&mut text, result, language);
    text
}

fn write_summary(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    let style = verdict_style(result.verdict);
    let verdict = verdict_word(result.verdict, language).to_uppercase();
    let line = text!(
        language,
        "summary-head",
        verdict = format!("{style}{verdict}{style:#}"),
        case = result.case.as_str(),
        asked = what_to_do(result, language)
    );
    writeln!(out, "{line}")?;
    for (impression, number) in result.impressions.iter().zip(0u64..) {
        write_impression(out, impression, has_question(result, number), language)?;
    }
    write_washes(out, result, language)?;
    write_relation(out, result, language)?;
    write_findings(out, result, language)?;
    write_not_judged(out, result, language)?;
    if result.impressions.iter().any(|one| one.frame.is_some()) {
        write_scanner(out, result, language)?;
    }
    write_maps(out, result, language)?;
    write_warnings(out, result, language)
}

/// What the scanner adds to every length, and where that comes from.
fn write_scanner(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    let scanner = &result.scanner;
    let line = text!(
        language,
        "summary-scanner",
        doubt = Value::figure(scanner.length_uncertainty_mm.to_string()),
        source = scanner_source(&scanner.source)
    );
    writeln!(out, "{line}")
}

/// Whether a question on an impression stands: then no side of it is named.
fn has_question(result: &CaseResult, impression: u64) -> bool {
    let mut findings = result.findings.iter();
    findings.any(|f| f.cause == Cause::Question && f.impression == Some(impression))
}

/// What each wash added, and what became of the first pass's places.
fn write_washes(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    for wash in &result.wash {
        let of = |mm| {
            let [mm, _] = format::parts(mm, Some(wash.uncertainty_mm), 0);
            Value::figure(mm)
        };
        let [_, doubt] = format::parts(0.0, Some(wash.uncertainty_mm), 0);
        let line = text!(
            language,
            "summary-wash",
            jaw = match wash.arch {
                Arch::Maxillary => "maxillary",
                Arch::Mandibular => "mandibular",
            },
            median = of(wash.median_mm),
            least = of(wash.p05_mm),
            most = of(wash.p95_mm),
            doubt = Value::figure(doubt)
        );
        write!(out, "  {line}")?;
        for (places, words) in [
            (&wash.resolved, message!("wash-resolved")),
            (&wash.still_open, message!("wash-still-open")),
            (&wash.unclear, message!("wash-unclear")),
            (&wash.new, message!("wash-new")),
        ] {
            write_named(out, &words, places, language)?;
        }
        writeln!(out)?;
    }
    Ok(())
}

/// The relation of the jaws, as far as it was given or measured.
fn write_relation(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    let Some(relation) = &result.jaw_relation else {
        return Ok(());
    };
    if let Some(mm) = relation.interocclusal_distance_mm {
        let doubt = relation.interocclusal_distance_uncertainty_mm;
        let line = text!(
            language,
            "summary-interocclusal",
            distance = Value::figure(format::quantity(mm, doubt, "mm"))
        );
        writeln!(out, "  {line}")?;
    }
    let spaces = relation.interarch_space_mm.iter().copied();
    let ends = spaces.clone().reduce(f64::min).zip(spaces.reduce(f64::max));
    let angle = relation
        .ridge_angle_deg
        .zip(relation.ridge_angle_uncertainty_deg);
    if let (Some((least, most)), Some(doubt), Some((angle, angle_doubt))) =
        (ends, relation.uncertainty_mm, angle)
    {
        let [least, shown_doubt] = format::parts(least, Some(doubt), 0);
        let [most, _] = format::parts(most, Some(doubt), 0);
        let line = text!(
            language,
            "summary-space",
            least = Value::figure(least),
            most = Value::figure(most),
            doubt = Value::figure(shown_doubt),
            angle = Value::figure(format::quantity(angle, Some(angle_doubt), "deg"))
        );
        writeln!(out, "  {line}")?;
        if let Some(sentence) = part_of_the_record(relation, language) {
            writeln!(out, "  {sentence}")?;
        }
    }
    Ok(())
}

/// How the colours of the maps of thickness are to be read.
fn write_maps(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    let mut write = |what: &str, map: &CoverMap| {
        let line = text!(
            language,
            "summary-map",
            what = what,
            file = map.file.as_str(),
            from = Value::figure(map.from_mm.to_string()),
            to = Value::figure(map.to_mm.to_string())
        );
        writeln!(out, "{line}")
    };
    let covers = result.impressions.iter().flat_map(|i| &i.cover);
    for map in covers.flat_map(|cover| &cover.map) {
        write("thickness", map)?;
    }
    for map in result.wash.iter().flat_map(|wash| &wash.map) {
        write("wash", map)?;
    }
    Ok(())
}

/// What was odd about the files.
fn write_warnings(out: &mut String, result: &CaseResult, language: Language) -> fmt::Result {
    for impression in &result.impressions {
        let scan = &impression.scan;
        let of_tray = impression.tray.iter().flat_map(|tray| {
            let warnings = tray.warnings_in(language).into_iter();
            warnings.map(|warning| (&tray.file, warning))
        });
        let warnings = scan.warnings_in(language).into_iter();
        let of_scan = warnings.map(|warning| (&scan.file, warning));
        for (file, warning) in of_scan.chain(of_tray) {
            let line = text!(
                language,
                "summary-reading",
                file = file.as_str(),
                warning = warning
            );
            writeln!(out, "{line}")?;
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
        let text = plain(&summary(
            &CaseResult::of(&checked_with_spots()),
            Language::English,
        ));
        let expected = "\
REWORK case D-1042: Correct the places marked FAIL, then take the wash impression.
  maxillary impression before the wash: rework
    material thickness over the tray: minimum 0.03 mm, median 2.46 mm (± 0.10 mm), over 36.0 cm² of tissue surface
  F1 FAIL show-through, residual ridge, patient's right: material 0.03 ± 0.10 mm thick, at least 0.2 mm [C1]
       Relieve the tray here by 1.0 mm at the deepest and a little beyond the place. Clean and dry it, put adhesive on the bared tray and let it dry, then take a wash.
  F2 LOOK show-through, palate: material 0.15 ± 0.10 mm thick, at least 0.2 mm [C2]
       Too close to tell from the scan: look at the impression here. If no tray shows, scan this place again at higher resolution. If tray shows: Relieve the tray here by 0.9 mm at the deepest and a little beyond the place. Clean and dry it, put adhesive on the bared tray and let it dry, then take a wash.
  F3 note thin-cover, labial flange, patient's left: material 0.60 ± 0.10 mm thick, at least 1 mm [C3]
       The material is thin here. Look whether it is torn, lifted off the tray, or pressed the mucosa aside. If not, leave it as it is.
Safety: Grind only out of the mouth, with eye and dust protection; feel for sharp edges afterwards and smooth them.
Adhesive: Clean and dry tray and set material where you add to them; coat bared tray with adhesive and let it dry. Makers' instructions take precedence.
Not judged: over-extension (no scan shows whether the border is too long: compare it with the mouth)
Not part of this check: wash, jaw-relation, interocclusal-distance, parcel
Scanner: ± 0.048 mm of a length, part of every uncertainty above (published median of intra-oral scans of models, in vitro; Clin Oral Investig 2021;25:1839-1847)
Thickness map cover-maxillary-first-pass.ply: dark = 0 mm, bright = 3 mm or more, grey = not measured
";
        assert_eq!(text, expected);
    }

    #[test]
    fn what_was_not_judged_is_told_with_its_reason() {
        let text = plain(&summary(
            &CaseResult::of(&checked_without_cover()),
            Language::English,
        ));
        assert!(text.starts_with("UNDECIDED case D-1042: "), "{text}");
        assert!(
            text.contains(
                "Not judged: show-through, show-through-extent, tissue-area, thin-cover, \
                 cover-uncertainty, tray-seating, tray-bent, outer-excess, tray-size (no tray scan was given)"
            ),
            "{text}"
        );
    }

    #[test]
    fn many_findings_are_counted_beyond_the_first() {
        let mut result = CaseResult::of(&checked_with_spots());
        let one = result.findings[0].clone();
        result.findings.extend(std::iter::repeat_n(one, 20));
        let text = plain(&summary(&result, Language::English));
        assert!(
            text.contains("11 further findings are in report.html."),
            "{text}"
        );
        assert!(text.contains("       Same action as F1.\n"), "{text}");
    }
}
