use super::paper::{A4, Item, Words};
use super::*;
use crate::picture::pictures;
use crate::result::{Finding, Severity, Times};
use crate::testing::{
    checked_by_colour, checked_whole, checked_with_border, checked_with_spots,
    checked_without_cover,
};
use check::CheckedCase;
use messages::{Language, Message};

fn cases() -> [CheckedCase; 5] {
    [
        checked_by_colour(),
        checked_whole(),
        checked_with_spots(),
        checked_without_cover(),
        checked_with_border(),
    ]
}

/// The English page of a case whose result was changed by `change`.
fn with_page(
    checked: &CheckedCase,
    change: impl Fn(&mut CaseResult),
    look: impl Fn(&CaseResult, &Paper<'_>),
) {
    let english = |result: &CaseResult, paper: &Paper<'_>| {
        if paper.language == Language::English {
            look(result, paper);
        }
    };
    with_pages(checked, change, english);
}

/// The same in every language.
fn with_pages(
    checked: &CheckedCase,
    change: impl Fn(&mut CaseResult),
    look: impl Fn(&CaseResult, &Paper<'_>),
) {
    let mut result = CaseResult::of(checked);
    change(&mut result);
    let pictures = pictures(checked).unwrap();
    for language in Language::ALL {
        look(&result, &sheet(&result, &pictures, language));
    }
}

fn words<'a>(paper: &'a Paper<'_>) -> Vec<&'a Words> {
    let items = paper.items.iter();
    items
        .filter_map(|item| match item {
            Item::Words(words) => Some(words),
            _ => None,
        })
        .collect()
}

fn text(paper: &Paper<'_>) -> String {
    let lines: Vec<&str> = words(paper)
        .iter()
        .map(|words| words.text.as_str())
        .collect();
    lines.join(" ")
}

/// Left, top, right and bottom of a line of lettering.
fn bounds(words: &Words) -> [f64; 4] {
    let [x, y] = words.at;
    let width = words.weight.width(&words.text, words.size);
    [x, y - words.size * 0.74, x + width, y + words.size * 0.2]
}

fn assert_in_place(paper: &Paper<'_>) {
    let words = words(paper);
    for (number, one) in words.iter().enumerate() {
        let [left, top, right, bottom] = bounds(one);
        let is_inside =
            left >= 20.0 && top >= 20.0 && right <= A4[0] - 20.0 && bottom <= A4[1] - 20.0;
        assert!(is_inside, "{} at {:?}", one.text, one.at);
        for other in &words[number + 1..] {
            let [l, t, r, b] = bounds(other);
            let overlap = left < r && l < right && top < b && t < bottom;
            assert!(!overlap, "{} lies over {}", other.text, one.text);
        }
    }
}

/// Neither a limit of a finding nor the limits' name is said.
pub(crate) fn assert_names_no_limit(result: &CaseResult, said: &str) {
    for finding in pressing(result) {
        let Some((bound, limit)) = finding.bound.zip(finding.limit) else {
            continue;
        };
        let unit = crate::text::format::unit(finding.unit.as_deref().unwrap_or("1"));
        for words in [
            format!("{} {limit}", bound.in_words()),
            format!(" {limit}{unit}"),
        ] {
            assert!(!said.contains(&words), "{words}: {said}");
        }
    }
    for words in [
        &result.protocol.name,
        &result.protocol.sha256[..12],
        "limit",
    ] {
        assert!(!said.contains(words), "{words}: {said}");
    }
}

/// Many findings that fail, each with an instruction of its own.
fn overfilled(result: &mut CaseResult) {
    result.case =
        "A pseudonym that goes on and on, longer than any that a person would choose".to_owned();
    let Some(one) = result.findings.first().cloned() else {
        return;
    };
    result.findings = (1..=60)
        .map(|number| Finding {
            id: format!("F{number}"),
            severity: Severity::Fail,
            instruction_messages: Message::default(),
            instruction: format!(
                "{number}: {}",
                "relieve the tray at this place and look ".repeat(1 + number % 9)
            ),
            ..one.clone()
        })
        .collect();
}

#[test]
fn everything_lies_on_the_page_and_nothing_over_anything_else() {
    for checked in cases() {
        with_pages(&checked, |_| (), |_, paper| assert_in_place(paper));
        with_pages(&checked, overfilled, |_, paper| assert_in_place(paper));
    }
}

/// The page names its language, and nothing on it is the key of a message.
#[test]
fn every_language_has_a_whole_page() {
    for checked in cases() {
        with_pages(
            &checked,
            |_| (),
            |result, paper| {
                let code = paper.language.code();
                assert!(page(paper).contains(&format!("<html lang=\"{code}\">")));
                let pdf = pdf(paper).unwrap();
                let pdf = String::from_utf8_lossy(&pdf);
                assert!(pdf.contains("/Count 1") && pdf.contains(&format!("/Lang ({code})")));
                let said = text(paper);
                let verdict = crate::text::words::verdict_word(result.verdict, paper.language);
                assert!(said.contains(&verdict.to_uppercase()), "{verdict}: {said}");
                for kind in ["sheet-", "return-", "check-", "gist-", "zone-", "patient-"] {
                    assert!(!said.contains(kind), "{kind}: {said}");
                }
            },
        );
    }
}

#[test]
fn the_adhesive_is_spoken_of_where_material_is_added() {
    with_pages(
        &checked_with_spots(),
        |_| (),
        |_, paper| {
            let adhesive = messages::text!(paper.language, "adhesive");
            let bare = |text: &str| text.replace(' ', "");
            assert!(bare(&text(paper)).contains(&bare(&adhesive)));
        },
    );
    with_page(
        &checked_without_cover(),
        |_| (),
        |_, paper| assert!(!text(paper).contains("Adhesive")),
    );
}

#[test]
fn what_does_not_fit_is_counted() {
    with_page(&checked_with_spots(), overfilled, |_, paper| {
        let text = text(paper);
        let shown = (1..=60)
            .filter(|n| text.contains(&format!(" {n}: relieve")))
            .count();
        assert!((5..40).contains(&shown), "{shown}");
        let rest = format!("And {} more to do, in the report.", 60 - shown);
        assert!(text.contains(&rest), "{rest}: {text}");
    });
}

/// What a person at the bench must be able to read from the sheet alone.
#[test]
fn the_sheet_alone_says_what_is_to_be_done_and_where() {
    for checked in cases() {
        with_page(
            &checked,
            |_| (),
            |result, paper| {
                let text = text(paper);
                let bare = |text: &str| text.replace(' ', "");
                let says =
                    |words: &str| assert!(bare(&text).contains(&bare(words)), "{words}: {text}");
                let word = crate::text::words::verdict_word(result.verdict, Language::English);
                says(&word.to_uppercase());
                says(&result.case);
                for finding in pressing(result) {
                    says(&finding.instruction);
                    if finding.at.is_some() {
                        says(&finding.id);
                    }
                }
                for caution in [
                    "not a medical device",
                    "clinician decides",
                    "Disinfect",
                    "eye and dust protection",
                    "Makers' instructions",
                ] {
                    says(caution);
                }
                for line in [
                    "Checked by",
                    "Date",
                    "Returned because",
                    "Not judged",
                    "Parcel",
                    "limits:",
                ] {
                    assert!(
                        text.to_lowercase().contains(&line.to_lowercase()),
                        "{line}: {text}"
                    );
                }
                says(&result.program);
                says(&result.protocol.sha256[..12]);
            },
        );
    }
}

/// The note to the clinic asks for the same as the sheet, without the limits that the
/// laboratory judges by.
#[test]
fn the_return_note_asks_the_clinic_and_names_no_limit() {
    for checked in cases() {
        for change in [|_: &mut CaseResult| (), overfilled] {
            let mut result = CaseResult::of(&checked);
            change(&mut result);
            let pictures = pictures(&checked).unwrap();
            for language in Language::ALL {
                let note = return_note(&result, &pictures, language);
                assert_in_place(&note);
                let pdf = pdf(&note).unwrap();
                assert!(String::from_utf8_lossy(&pdf).contains("/Count 1"));
                let said = return_text(&result, language);
                for task in said.lines().filter(|line| line.starts_with("   - F")) {
                    assert!(!task.contains("gist-"), "{said}");
                }
                assert_names_no_limit(&result, &said);
            }
            let note = return_note(&result, &pictures, Language::English);
            for said in [text(&note), return_text(&result, Language::English)] {
                assert!(said.contains(&result.case) || said.contains("A pseudonym"));
                for caution in ["not a medical device", "clinician decides", "Disinfect"] {
                    assert!(said.contains(caution), "{caution}: {said}");
                }
                assert_names_no_limit(&result, &said);
            }
        }
    }
}

#[test]
fn a_return_note_is_made_only_where_something_is_asked() {
    let mut result = CaseResult::of(&checked_with_spots());
    assert!(add_return_note(&mut result));
    let names: Vec<&str> = result.files.iter().map(|file| file.file.as_str()).collect();
    for name in ["return.html", "return.pdf", "return.txt"] {
        assert!(names.contains(&name), "{names:?}");
    }
    let mut result = CaseResult::of(&checked_with_spots());
    let files = result.files.clone();
    result.findings.clear();
    assert!(!add_return_note(&mut result));
    assert_eq!(result.files, files);
    assert!(return_text(&result, Language::English).contains("Nothing is asked of you."));
}

#[test]
fn the_numbers_beside_the_picture_are_those_of_the_tasks() {
    with_page(
        &checked_with_spots(),
        |_| (),
        |result, paper| {
            let pressing: Vec<&str> = pressing(result)
                .filter(|finding| finding.at.is_some())
                .map(|finding| finding.id.as_str())
                .collect();
            let text = text(paper);
            for id in pressing {
                let marked = words(paper).iter().any(|words| words.text == id);
                let hidden = text.contains("Hidden in these views") && text.contains(id);
                assert!(marked || hidden, "{id}");
            }
        },
    );
}

#[test]
fn the_time_of_the_check_stands_in_one_place() {
    let checked = checked_with_spots();
    let at = |time: &str| {
        let time = time.to_owned();
        move |result: &mut CaseResult| {
            result.times = Some(Times {
                checked_at: time.clone(),
                scans_changed_at: Vec::new(),
                steps: Vec::new(),
            });
        }
    };
    with_page(&checked, at("2026-01-02T03:04:05Z"), |_, paper| {
        assert!(text(paper).contains("Checked 2026-01-02 03:04 UTC"));
        let timed = words(paper)
            .into_iter()
            .filter(|words| words.is_time)
            .count();
        assert_eq!(timed, 1);
    });
}

#[test]
fn the_same_page_gives_the_same_pdf_with_its_fonts() {
    with_page(
        &checked_with_spots(),
        |_| (),
        |_, paper| {
            let bytes = pdf(paper).unwrap();
            assert_eq!(bytes, pdf(paper).unwrap());
            assert!(bytes.starts_with(b"%PDF-"));
            let plain = String::from_utf8_lossy(&bytes);
            for part in [
                "/Count 1",
                "/FontFile2",
                "DejaVuSansCondensed-Bold",
                "/Indexed",
            ] {
                assert!(plain.contains(part), "{part}");
            }
            assert!(bytes.len() < 400_000, "{}", bytes.len());
        },
    );
}

#[test]
fn the_page_needs_nothing_from_elsewhere_and_runs_nothing() {
    let mut checked = checked_with_spots();
    checked.case.id = "<script>alert(1)</script>".into();
    with_page(
        &checked,
        |_| (),
        |_, paper| {
            let page = page(paper);
            assert!(!page.contains("<script"));
            assert!(page.contains("default-src 'none'"));
            for source in ["src=\"http", "href=\"http", "url(http", "@import"] {
                assert!(!page.contains(source), "{source}");
            }
        },
    );
}
