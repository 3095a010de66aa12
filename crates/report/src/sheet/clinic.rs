//! The sheet turned to the clinic: what is asked of it, in plain words. Limits are
//! those of whoever checks and are not named; what is asked of the person at the
//! program is asked of the clinic in its own words.

use super::content::{Content, Fixed, Parcel, Task, is_material_added, of_parcel, program, shown};
use super::plain_words::in_plain_words;
use crate::result::{CaseResult, Finding};
use crate::text::steps::pressing;
use crate::text::times;
use crate::text::words::finding_place;
use judge::Check;
use messages::{Language, text};
use std::fmt::Write;

fn for_the_clinic(language: Language) -> Fixed {
    Fixed {
        tasks: text!(language, "return-tasks"),
        no_tasks: text!(language, "return-no-tasks"),
        missing: text!(language, "return-parcel-missing"),
        legend: text!(language, "return-legend"),
        elsewhere: text!(language, "return-in-the-text"),
        lines: [
            text!(language, "return-answered-by"),
            text!(language, "sheet-date"),
            text!(language, "return-answer"),
        ],
    }
}

/// What the page says.
pub(super) fn content(result: &CaseResult, language: Language) -> Content<'_> {
    let (parcel, work) = asked(result, language);
    let count = parcel.len() + work.len();
    Content {
        language,
        case: &result.case,
        purpose: text!(language, "return-purpose"),
        word: text!(language, "return-word"),
        fixed: for_the_clinic(language),
        lead: text!(language, "return-lead", count = count),
        times: (result.times.as_ref()).map(|times| times::in_words(times, language)),
        impressions: shown(result, language),
        tasks: work,
        parcel: match parcel.is_empty() {
            true => Parcel::Unsaid,
            false => Parcel::Missing(parcel.into_iter().map(|task| task.text).collect()),
        },
        not_judged: None,
        notes: 0,
        adds_material: is_material_added(result),
        source: program(result),
    }
}

/// The same as a plain text, to be pasted into a message.
pub(crate) fn text(result: &CaseResult, language: Language) -> String {
    let (parcel, work) = asked(result, language);
    let count = parcel.len() + work.len();
    let mut text = format!(
        "{}\n\n{}\n",
        text!(language, "return-head", case = result.case.as_str()),
        text!(language, "return-lead", count = count)
    );
    for (task, number) in work.iter().chain(&parcel).zip(1..) {
        // Writing to a String cannot fail.
        let _ = write!(text, "\n{number}. {}\n", task.text);
        for place in &task.places {
            let _ = writeln!(text, "   - {place}");
        }
    }
    text.push('\n');
    if is_material_added(result) {
        let _ = writeln!(text, "{}", text!(language, "adhesive"));
    }
    let _ = writeln!(text, "{}", text!(language, "return-pictures"));
    let _ = writeln!(text, "{}", text!(language, "return-cautions"));
    text
}

/// What is asked of the parcel, and of the impressions and their scans.
fn asked(result: &CaseResult, language: Language) -> (Vec<Task>, Vec<Task>) {
    let of = |is_parcel: bool| {
        let mut tasks: Vec<Task> = Vec::new();
        for finding in pressing(result).filter(|finding| of_parcel(finding) == is_parcel) {
            let text = in_plain_words(finding, language);
            let place = place(result, finding, language);
            match tasks.iter_mut().find(|task| task.text == text) {
                Some(task) => task.places.push(place),
                None => tasks.push(Task {
                    text,
                    places: vec![place],
                }),
            }
        }
        tasks
    };
    (of(true), of(false))
}

/// `F2: mandibular wash, lingual flange, patient's left. A stretch of border is short, or may be.`
fn place(result: &CaseResult, finding: &Finding, language: Language) -> String {
    let known = finding.check.parse::<Check>().ok();
    let gist = known.map_or_else(String::new, |check| check.gist_in(language));
    let place = finding_place(result, finding, language);
    if place.is_empty() {
        format!("{}: {gist}", finding.id)
    } else {
        format!("{}: {place}. {gist}", finding.id)
    }
}
