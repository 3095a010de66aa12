//! What every sheet ends with: what was not judged, lines to sign, cautions, and where it
//! comes from.

use super::content::Content;
use super::font::{Weight, clipped, wrapped};
use super::paper::{BOTTOM, INK, LEFT, Paper, Pen, RIGHT, SMALL, THIN, WIDE};
use messages::{Language, text};

/// What every sheet ends with, drawn from the lower edge upward. Gives where it
/// begins.
pub(super) fn foot(paper: &mut Paper<'_>, content: &Content<'_>) -> f64 {
    const TINY: f64 = 7.4;
    let source = clipped(&content.source, Weight::Book, TINY, WIDE);
    paper.words([LEFT, BOTTOM], Weight::Book, TINY, source);
    let cautions = cautions(content, TINY);
    let top = BOTTOM - 12.0 - 9.6 * cautions.len() as f64;
    for (line, number) in cautions.into_iter().zip(1..) {
        let at = [LEFT, top + 9.6 * f64::from(number)];
        paper.words(at, Weight::Book, TINY, line);
    }
    let mut y = top - 12.0;
    signatures(paper, &content.fixed.lines, y);
    y -= 42.0;
    if let Some(checks) = &content.not_judged {
        y -= 12.0;
        paper.line([LEFT, y + 12.0], [RIGHT, y + 12.0], THIN);
        let line = not_judged(checks, content.language);
        paper.words([LEFT, y + 6.0], Weight::Book, SMALL, line);
        y -= 6.0;
    }
    paper.line([LEFT, y], [RIGHT, y], THIN);
    y
}

/// The lines of what is always to be heeded, and of the adhesive where material is added.
fn cautions(content: &Content<'_>, size: f64) -> Vec<String> {
    let language = content.language;
    let adhesive = content.adds_material.then(|| text!(language, "adhesive"));
    let always = [
        text!(language, "sheet-cautions"),
        text!(language, "sheet-safety"),
    ];
    (always.into_iter().chain(adhesive))
        .flat_map(|caution| wrapped(&caution, Weight::Book, size, WIDE))
        .collect()
}

/// Lines for names, dates and a reason, the lower one at `y`.
fn signatures(paper: &mut Paper<'_>, [by, date, remark]: &[String; 3], y: f64) {
    let middle = LEFT + WIDE * 0.6;
    for (text, from, to, y) in [
        (by, LEFT, middle - 12.0, y - 22.0),
        (date, middle, RIGHT, y - 22.0),
        (remark, LEFT, RIGHT, y),
    ] {
        paper.words([from, y], Weight::Book, SMALL, text.as_str());
        let start = from + Weight::Book.width(text, SMALL) + 5.0;
        paper.line([start, y + 1.5], [to, y + 1.5], Pen::whole(0.8, INK));
    }
}

/// What was not judged, in one line; what does not fit is counted.
fn not_judged(checks: &[String], language: Language) -> String {
    if checks.is_empty() {
        return text!(language, "sheet-all-judged");
    }
    let count = checks.len().to_string();
    let line = |shown: usize| {
        let listed = checks[..shown].join(", ");
        let count = count.as_str();
        match checks.len() - shown {
            0 => text!(language, "sheet-not-judged", count = count, checks = listed),
            more => text!(
                language,
                "sheet-not-judged-more",
                count = count,
                checks = listed,
                more = more.to_string()
            ),
        }
    };
    (1..=checks.len())
        .rev()
        .map(line)
        .find(|line| Weight::Book.width(line, SMALL) <= WIDE)
        .unwrap_or_else(|| text!(language, "sheet-not-judged-count", count = count.as_str()))
}
