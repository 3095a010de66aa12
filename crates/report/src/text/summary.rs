//! The terminal summary: the verdict first, then one entry a finding. Made from
//! the result alone, so that every figure is that of `result.json`.

use super::format;
use super::headline::what_to_do;
use super::lists::{write_findings, write_not_judged};
use super::words::{
    arch_word, impression_name, landmark_name, part_of_the_record, side_word, tray_found,
    verdict_word,
};
use crate::result::{
    CaseResult, Cause, ImpressionResult, LandmarkStatus, PlaceThen, Stage, Verdict,
};
use anstyle::{AnsiColor, Style};
use std::fmt::{self, Write};

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
    for (impression, number) in result.impressions.iter().zip(0u64..) {
        write_impression(out, impression, has_question(result, number))?;
    }
    write_washes(out, result)?;
    write_relation(out, result)?;
    write_findings(out, result)?;
    write_not_judged(out, result)?;
    if result.impressions.iter().any(|one| one.frame.is_some()) {
        write_scanner(out, result)?;
    }
    write_maps(out, result)?;
    write_warnings(out, result)
}

/// What the scanner adds to every length, and where that comes from.
fn write_scanner(out: &mut String, result: &CaseResult) -> fmt::Result {
    let scanner = &result.scanner;
    writeln!(
        out,
        "Scanner: ± {} mm of a length, part of every uncertainty above ({})",
        scanner.length_uncertainty_mm, scanner.source
    )
}

/// Whether a question on an impression stands: then no side of it is named.
fn has_question(result: &CaseResult, impression: u64) -> bool {
    let mut findings = result.findings.iter();
    findings.any(|f| f.cause == Cause::Question && f.impression == Some(impression))
}

fn write_impression(
    out: &mut String,
    impression: &ImpressionResult,
    has_question: bool,
) -> fmt::Result {
    write!(
        out,
        "  {}: {}",
        impression_name(impression),
        verdict_word(impression.verdict)
    )?;
    if let Some(mm) = impression.scan.cut_width_mm {
        let parts = impression.scan.parts.len();
        write!(
            out,
            "\n    joined from {parts} parts; the cuts are {mm:.1} mm wide and not judged"
        )?;
    }
    if let Some(chosen) = &impression.tray_chosen {
        write!(out, "\n    {}", tray_found(chosen))?;
    }
    let cover = impression.cover.as_ref().filter(|_| !has_question);
    if let Some(cover) = cover {
        let values = cover.min_mm.zip(cover.median_mm).zip(cover.uncertainty_mm);
        if let Some(((least, median), doubt)) = values {
            let [median, doubt] = format::parts(median, Some(doubt), 0);
            let least = if least <= 0.0 {
                "0 (tray at the surface)".to_owned()
            } else {
                let [least, _] = format::parts(least, cover.uncertainty_mm, 0);
                format!("{least} mm")
            };
            write!(
                out,
                "\n    material thickness over the tray: minimum {least}, median {median} mm (± {doubt} mm), \
                 over {} of tissue surface",
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
                "\n    tray shows at {stops} declared tissue stops, as it should"
            )?;
        }
    }
    if impression.stops_relieved && impression.stage == Stage::Wash {
        write!(out, "\n    the tissue stops were relieved before the wash")?;
    }
    writeln!(out)?;
    if has_question {
        return Ok(());
    }
    write_colour(out, impression)?;
    write_landmarks(out, impression)?;
    write_change_in_transit(out, impression)
}

/// What changed since the impression was sent, and what became of the places seen then.
fn write_change_in_transit(out: &mut String, impression: &ImpressionResult) -> fmt::Result {
    let sent = impression.as_sent.as_ref();
    let Some(change) = sent.and_then(|sent| sent.change.as_ref()) else {
        return Ok(());
    };
    let within = |value: f64, doubt: f64| {
        let [value, doubt] = format::parts(value, Some(doubt), 0);
        format!("{value} ± {doubt}")
    };
    let (larger, apart) = (change.larger_percent, change.heels_apart_mm);
    write!(
        out,
        "    since it was sent: {} % {}, heels {} mm {}",
        within(larger.abs(), change.larger_uncertainty_percent),
        if larger < 0.0 { "smaller" } else { "larger" },
        within(apart.abs(), change.heels_apart_uncertainty_mm),
        if apart < 0.0 {
            "nearer together"
        } else {
            "farther apart"
        },
    )?;
    match change.damage.len() {
        0 => write!(out, "; no place changed by itself")?,
        1 => write!(out, "; 1 place changed by itself")?,
        places => write!(out, "; {places} places changed by themselves")?,
    }
    writeln!(out)?;
    if change.places.is_empty() {
        return Ok(());
    }
    let of = |state| {
        change
            .places
            .iter()
            .filter(move |then| then.found_again == state)
    };
    write!(
        out,
        "    of {} places on the scan as sent, {} found again",
        change.places.len(),
        of(Some(true)).count()
    )?;
    for (state, word) in [(Some(false), "gone"), (None, "not measured again")] {
        let names: Vec<String> = of(state).map(place_then).collect();
        if !names.is_empty() {
            write!(out, "; {word}: {}", names.join(", "))?;
        }
    }
    writeln!(out)
}

/// A place of the scan as sent, in words.
fn place_then(then: &PlaceThen) -> String {
    match then.side {
        Some(side) => format!("{} ({}, {})", then.kind, then.zone, side_word(side)),
        None => format!("{} ({})", then.kind, then.zone),
    }
}

/// How much tray the colours show, and what they were taken for.
fn write_colour(out: &mut String, impression: &ImpressionResult) -> fmt::Result {
    let Some(colour) = &impression.tray_colour else {
        return Ok(());
    };
    writeln!(
        out,
        "    by colour, tray ({}, {}) shows over {} of {}; the material is {}",
        colour.tray,
        if colour.inferred {
            "found in the scan"
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

/// What each wash added, and what became of the first pass's places.
fn write_washes(out: &mut String, result: &CaseResult) -> fmt::Result {
    for wash in &result.wash {
        let of = |mm| {
            let [mm, _] = format::parts(mm, Some(wash.uncertainty_mm), 0);
            mm
        };
        write!(
            out,
            "  {} wash: thickness median {}, 5 to 95 % {} to {}, each ± {} mm",
            arch_word(wash.arch),
            of(wash.median_mm),
            of(wash.p05_mm),
            of(wash.p95_mm),
            format::parts(0.0, Some(wash.uncertainty_mm), 0)[1]
        )?;
        for (places, word) in [
            (&wash.resolved, "resolved"),
            (&wash.still_open, "still open"),
            (&wash.unclear, "too close to call"),
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
            "  interocclusal distance, from the readings given: {}",
            format::quantity(mm, relation.interocclusal_distance_uncertainty_mm, "mm")
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
        let [least, shown_doubt] = format::parts(least, Some(doubt), 0);
        let [most, _] = format::parts(most, Some(doubt), 0);
        writeln!(
            out,
            "  space between the ridges: {least} to {most}, each ± {shown_doubt} mm; angle between them {}",
            format::quantity(angle, Some(angle_doubt), "deg")
        )?;
        if let Some(sentence) = part_of_the_record(relation) {
            writeln!(out, "  {sentence}")?;
        }
    }
    Ok(())
}

/// How the colours of the cover maps are to be read.
fn write_maps(out: &mut String, result: &CaseResult) -> fmt::Result {
    let covers = result.impressions.iter().flat_map(|i| &i.cover);
    for map in covers.flat_map(|cover| &cover.map) {
        writeln!(
            out,
            "Thickness map {}: dark = {} mm, bright = {} mm or more, grey = not measured",
            map.file, map.from_mm, map.to_mm
        )?;
    }
    for map in result.wash.iter().flat_map(|wash| &wash.map) {
        writeln!(
            out,
            "Wash map {}: dark = {} mm, bright = {} mm or more, grey = not measured",
            map.file, map.from_mm, map.to_mm
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
Not judged: over-extension (no scan shows whether the border is too long: compare it with the mouth)
Not part of this check: wash, jaw-relation, interocclusal-distance, parcel
Scanner: ± 0.048 mm of a length, part of every uncertainty above (published median of intra-oral scans of models, in vitro; Clin Oral Investig 2021;25:1839-1847)
Thickness map cover-maxillary-first-pass.ply: dark = 0 mm, bright = 3 mm or more, grey = not measured
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
        let text = plain(&summary(&result));
        assert!(
            text.contains("11 further findings are in report.html."),
            "{text}"
        );
        assert!(text.contains("       Same action as F1.\n"), "{text}");
    }
}
