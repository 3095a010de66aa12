//! The sheet turned to the clinic: what is asked of it, in plain words. Limits are
//! those of whoever checks and are not named; what is asked of the person at the
//! program is asked of the clinic in its own words.

use super::content::{Content, Fixed, Parcel, Task, of_parcel, program, shown};
use crate::result::{CaseResult, Finding};
use crate::text::steps::pressing;
use crate::text::times;
use crate::text::words::finding_place;
use judge::Check;
use std::fmt::Write;

const FOR_THE_CLINIC: Fixed = Fixed {
    tasks: "Please do this, in this order",
    no_tasks: "Nothing is asked of the impressions themselves.",
    missing: "Please complete the parcel",
    legend: "R, L: the patient's right and left. Numbered ring: a place to correct; dashed: a place to look at. Dark: \
             thin material over the tray; bright: thick; grey: not measured.",
    elsewhere: "in the text that goes with this page",
    lines: ["Answered by", "Date", "Answer"],
};

const CAUTIONS: &str = "This note comes from an aid to inspection, not a medical device; the licensed clinician decides. \
    Disinfect before handling and shipping. Makers' instructions take precedence.";

/// Parts of instructions for whoever runs the program, and what they are to a clinic.
const TURNED: [(&str, &str); 13] = [
    ("this figure is too low: scan", "scan"),
    ("and check again", "and send that scan"),
    ("Too close to the limit to tell", "Too close to tell"),
    ("thicker than the limit", "thick"),
    (
        "The case holds no jaw relation: give the scan of the record or the vertical dimension under \
         [jaw_relation], or say why there is none (no_jaw_relation_because under [parcel]).",
        "Send the jaw-relation record with its scan, or state the vertical dimension; or tell us why there is none.",
    ),
    (
        "There is no list of what must be in the parcel: give it as `expected` under [parcel].",
        "Send a list of what belongs in the parcel.",
    ),
    (" (one_arch_because under [parcel])", ""),
    (" (disinfectant, disinfection_min)", ""),
    (" (disinfectant)", ""),
    (" (disinfection_min)", ""),
    ("say so (stops_relieved = true)", "tell us"),
    (
        "Say whether the written prescription is enclosed (prescription = true), and enclose it.",
        "Enclose the written prescription.",
    ),
    (
        " (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm)",
        "",
    ),
];

/// What the page says.
pub(super) fn content(result: &CaseResult) -> Content<'_> {
    let (parcel, work) = asked(result);
    let count = parcel.len() + work.len();
    Content {
        case: &result.case,
        purpose: "Return note: laboratory to clinic",
        word: "please reply",
        fixed: FOR_THE_CLINIC,
        lead: lead(count),
        times: result.times.as_ref().map(times::in_words),
        impressions: shown(result),
        tasks: work,
        parcel: match parcel.is_empty() {
            true => Parcel::Unsaid,
            false => Parcel::Missing(parcel.into_iter().map(|task| task.text).collect()),
        },
        not_judged: None,
        notes: 0,
        source: program(result),
    }
}

fn lead(count: usize) -> String {
    match count {
        0 => "Nothing is asked of you.".to_owned(),
        1 => "The work cannot go on yet: one thing is asked of you.".to_owned(),
        _ => format!("The work cannot go on yet: {count} things are asked of you."),
    }
}

/// The same as a plain text, to be pasted into a message.
pub(crate) fn text(result: &CaseResult) -> String {
    let (parcel, work) = asked(result);
    let mut text = format!(
        "Case {}: return note\n\n{}\n",
        result.case,
        lead(parcel.len() + work.len())
    );
    for (task, number) in work.iter().chain(&parcel).zip(1..) {
        // Writing to a String cannot fail.
        let _ = write!(text, "\n{number}. {}\n", task.text);
        for place in &task.places {
            let _ = writeln!(text, "   - {place}");
        }
    }
    let _ = write!(
        text,
        "\nThe page with this text shows the numbered places in a picture.\n{CAUTIONS}\n"
    );
    text
}

/// What is asked of the parcel, and of the impressions and their scans.
fn asked(result: &CaseResult) -> (Vec<Task>, Vec<Task>) {
    let of = |is_parcel: bool| {
        let mut tasks: Vec<Task> = Vec::new();
        for finding in pressing(result).filter(|finding| of_parcel(finding) == is_parcel) {
            let text = in_plain_words(finding);
            let place = place(result, finding);
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

/// What a finding asks of the clinic. Instructions that speak of the program and its files
/// are for whoever runs it.
fn in_plain_words(finding: &Finding) -> String {
    let own = match finding.check.parse() {
        Ok(Check::FileUnclear) => {
            "Tell us which scan is which, and send each in a file of its own."
        }
        Ok(Check::UnitUnclear) => "Tell us the unit of the scan, or export it again in mm.",
        Ok(Check::NotAnImpression) => {
            "Send the scan of the whole impression in its tray; this scan shows something else."
        }
        Ok(Check::ArchMismatch | Check::OrientationUnclear) => "Tell us which jaw this scan shows.",
        Ok(Check::OtherColour) => {
            "Another colour shows here. Look whether it is the tray, and tell us."
        }
        Ok(Check::CoverNotJudged | Check::CoverUncertainty) => {
            "Scan the empty tray from all sides, unaltered as it was for this impression, and send that scan."
        }
        Ok(Check::WashMissing) => {
            "Send the wash of this impression with its scan. If it needs none, tell us."
        }
        _ => {
            let whole = finding.instruction.clone();
            let replaced = TURNED.iter();
            return replaced.fold(whole, |text, (ours, theirs)| text.replace(ours, theirs));
        }
    };
    own.to_owned()
}

/// `F2: mandibular wash, lingual flange, patient's left. A stretch of border is short, or may be.`
fn place(result: &CaseResult, finding: &Finding) -> String {
    let gist = finding.check.parse().map(Check::gist).unwrap_or_default();
    let place = finding_place(result, finding);
    if place.is_empty() {
        format!("{}: {gist}", finding.id)
    } else {
        format!("{}: {place}. {gist}", finding.id)
    }
}
