use super::*;
use crate::files::outputs::result_json;
use crate::picture::pictures;
use crate::result::CaseResult;
use crate::testing::{
    checked_by_colour, checked_whole, checked_with_border, checked_with_spots,
    checked_without_cover,
};
use crate::text::format;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use check::CheckedCase;
use messages::{Language, Message};
use serde_json::Value;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

fn page(checked: &CheckedCase) -> (CaseResult, String) {
    let result = CaseResult::of(checked);
    let page = report(&result, &pictures(checked).unwrap(), &[], Language::English);
    (result, page)
}

pub(super) fn cases() -> [CheckedCase; 5] {
    [
        checked_by_colour(),
        checked_whole(),
        checked_with_spots(),
        checked_without_cover(),
        checked_with_border(),
    ]
}

/// A page without its scripts, and each of those with its attributes.
pub(super) fn without_scripts(page: &str) -> (String, Vec<&str>) {
    let mut pieces = page.split("<script");
    let mut rest = pieces.next().unwrap().to_owned();
    let mut scripts = Vec::new();
    for piece in pieces {
        let (script, after) = piece.split_once("</script>").unwrap();
        scripts.push(script);
        rest.push_str(after);
    }
    (rest, scripts)
}

/// Numbers and words of a result.
#[derive(Default)]
struct Said {
    numbers: Vec<f64>,
    words: BTreeSet<String>,
}

impl Said {
    fn take(&mut self, value: &Value) {
        match value {
            Value::Number(number) => self.numbers.extend(number.as_f64()),
            Value::String(text) => self.words.extend(words_of(text)),
            Value::Array(values) => values.iter().for_each(|value| self.take(value)),
            Value::Object(values) => values.iter().for_each(|(name, value)| {
                self.words.extend(words_of(name));
                self.take(value);
            }),
            Value::Null | Value::Bool(_) => {}
        }
    }
}

fn words_of(text: &str) -> impl Iterator<Item = String> {
    let is_bare = |c: char| !matches!(c, ',' | '.' | ':' | ';' | '(' | ')');
    text.split_whitespace()
        .map(move |word| word.trim_matches(|c| !is_bare(c)).to_owned())
        .collect::<Vec<_>>()
        .into_iter()
}

/// Figures (their number, and how they read) and the other words of a page.
fn read(page: &str) -> (Vec<(f64, String)>, String) {
    let (page, _) = without_scripts(page);
    let body = page.split_once("<body>").unwrap().1;
    let (mut figures, mut rest) = (Vec::new(), String::new());
    let mut value: Option<f64> = None;
    for piece in body.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').unwrap();
        let given = ["data value=\"", "tspan data-value=\""]
            .iter()
            .find_map(|start| tag.strip_prefix(start)?.strip_suffix('"'));
        match given {
            Some(number) => value = Some(number.parse().unwrap()),
            None if tag.starts_with('/') => value = None,
            None => {}
        }
        match value {
            Some(value) => figures.push((value, text.to_owned())),
            // The scale of a chart's axis is no figure.
            None if tag.starts_with("text class=\"tick\"") => {}
            None => {
                rest.push_str(text);
                rest.push(' ');
            }
        }
    }
    (figures, rest.replace("&quot;", "\"").replace("&amp;", "&"))
}

#[test]
fn every_figure_is_that_of_the_result() {
    for checked in cases() {
        let (result, page) = page(&checked);
        let mut said = Said::default();
        said.take(&serde_json::from_str(&result_json(&result)).unwrap());
        for key in judge::LimitKey::ALL {
            said.words.extend(words_of(&key.gist().to_string()));
        }
        let (figures, rest) = read(&page);
        assert!(figures.len() > 60, "{}", figures.len());
        for (value, text) in figures {
            assert!(
                said.numbers.contains(&value),
                "{value} is not in the result"
            );
            let readings = [
                format::two_decimals(value),
                rounded_to(value, &text),
                format::area(value),
                format::percent(value),
                value.to_string(),
            ];
            assert!(readings.contains(&text), "{value} reads {text}");
        }
        // No figure stands outside: whatever else has a digit is a name, a word
        // of the result, or belongs to the page's own fixed words.
        let fixed = [
            "2", "5th", "95th", "95", "60", "100", "SHA-256", "14253-1", "10", "5", "3D",
        ];
        for word in words_of(&rest).filter(|w| w.contains(|c: char| c.is_ascii_digit())) {
            let known = said.words.contains(&word) || fixed.contains(&word.as_str());
            assert!(known, "{word} is not from the result");
        }
    }
}

/// A number as it is printed with as many decimals as a text has; an uncertainty is rounded
/// up, so that the next step counts as well.
fn rounded_to(value: f64, text: &str) -> String {
    let decimals = text.split_once('.').map_or(0, |(_, after)| after.len());
    let step = 10f64.powi(-(decimals as i32));
    let nearest = format!("{:.decimals$}", (value / step).round() * step + 0.0);
    let up = format!("{:.decimals$}", (value / step - 1e-6).ceil() * step + 0.0);
    if text == up { up } else { nearest }
}

#[test]
fn every_finding_states_figure_uncertainty_unit_and_limit() {
    let mut stated = 0;
    for checked in cases() {
        let (result, page) = page(&checked);
        for finding in &result.findings {
            let start = format!("<article id=\"{}\"", finding.id);
            let article = page.split_once(&start).unwrap().1;
            let article = article.split_once("</article>").unwrap().0;
            let instruction = html! { (finding.instruction) }.into_string();
            assert!(article.contains(&instruction), "{instruction}");
            let Some((measured, limit)) = finding.measured.zip(finding.limit) else {
                continue;
            };
            let unit = format::unit(finding.unit.as_deref().unwrap());
            let bound = finding.bound.unwrap();
            let [printed, printed_doubt] =
                format::decided_parts(measured, finding.uncertainty, bound.of(limit));
            let doubt = match finding.uncertainty {
                Some(u) => format!(" ± <data value=\"{u}\">{printed_doubt}</data>{unit}"),
                None => format!("{unit}<span class=\"aside\"> (uncertainty not stated)</span>"),
            };
            let whole = format!(
                "Measured <span class=\"figure\"><data value=\"{measured}\">{printed}</data>{doubt}</span>, \
                 {} <data value=\"{limit}\">{limit}</data>{unit}.",
                bound.in_words()
            );
            assert!(article.contains(&whole), "{whole}\n{article}");
            stated += 1;
        }
    }
    assert!(stated >= 4, "{stated}");
}

#[test]
fn no_figure_stands_without_its_uncertainty() {
    for checked in cases() {
        let (_, page) = page(&checked);
        for figure in page.split("<span class=\"figure\">").skip(1) {
            let figure = figure.split_once("</span>").unwrap().0;
            let is_told = figure.contains(" ± ") || figure.contains("uncertainty not stated");
            assert!(is_told, "{figure}");
        }
    }
}

#[test]
fn what_a_case_is_called_cannot_break_the_page() {
    let mut checked = checked_with_spots();
    checked.case.id = "<script>alert(1)</script>&\"".into();
    let (_, page) = page(&checked);
    assert!(!page.contains("<script>alert"));
    assert!(page.contains("Case &lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;"));
}

#[test]
fn one_script_runs_which_the_policy_names_by_its_checksum() {
    let mut result = CaseResult::of(&checked_with_spots());
    // The result is read back from a file, and may hold anything.
    result.findings[0].zone = Some("</script><script>alert(1)</script>&".to_owned());
    let pictures = pictures(&checked_with_spots()).unwrap();
    let page = report(&result, &pictures, &[], Language::English);
    let (_, scripts) = without_scripts(&page);
    let [surface, scene, run] = scripts[..] else {
        panic!("{} scripts", scripts.len());
    };
    assert!(surface.starts_with(" type=\"application/octet-stream\" id=\"surface-1\">"));
    assert!(scene.contains("type=\"application/json\""));
    assert!(scene.contains("\\u003c/script\\u003e\\u003cscript\\u003ealert(1)"));
    let run = run.strip_prefix('>').unwrap();
    assert_eq!(run, turning::SCRIPT);
    let policy = page
        .split_once("Content-Security-Policy\" content=\"")
        .unwrap();
    let policy = policy.1.split_once('"').unwrap().0;
    assert!(policy.starts_with("default-src 'none'; "), "{policy}");
    let named = STANDARD.encode(Sha256::digest(run));
    assert!(
        policy.contains(&format!("script-src 'sha256-{named}';")),
        "{policy}"
    );
    assert!(!policy.contains("unsafe"), "{policy}");
}

#[test]
fn a_page_needs_nothing_from_elsewhere() {
    for checked in cases() {
        let (_, page) = page(&checked);
        let (page, scripts) = without_scripts(&page);
        for script in scripts
            .iter()
            .filter(|script| !script.contains("octet-stream"))
        {
            for start in ["http", "//", "import", "url(", "eval", "innerHTML"] {
                assert!(!script.contains(start), "{start}");
            }
        }
        let is_base64 = |c: char| c.is_ascii_alphanumeric() || "+/=".contains(c);
        let page: String = (page.split("base64,"))
            .map(|piece| piece.trim_start_matches(is_base64))
            .collect();
        for start in ["http:", "https:", "//", "@import", "url(", "<iframe"] {
            let found = page.split_once(start);
            assert_eq!(
                found.map(|(_, rest)| rest.chars().take(60).collect::<String>()),
                None,
                "{start}"
            );
        }
        // Every link within the page leads somewhere, and every name is its own.
        let names: Vec<&str> = page
            .split(" id=\"")
            .skip(1)
            .filter_map(|rest| Some(rest.split_once('"')?.0))
            .collect();
        let own: BTreeSet<&str> = names.iter().copied().collect();
        assert_eq!(own.len(), names.len());
        for link in page.split("href=\"#").skip(1) {
            let name = link.split_once('"').unwrap().0;
            assert!(own.contains(name), "{name}");
        }
    }
}

#[test]
fn what_was_not_judged_is_told_before_the_findings() {
    let (_, page) = page(&checked_without_cover());
    let at = |words: &str| page.find(words).unwrap();
    assert!(at("no tray scan was given") < at("most urgent first</h2>"));
    assert!(at("Not judged</h2>") < at("most urgent first</h2>"));
}

#[test]
fn however_much_fails_the_front_stays_short_and_nothing_is_lost() {
    let checked = checked_with_spots();
    let mut result = CaseResult::of(&checked);
    let one = result.findings[0].clone();
    result.findings = (1..=30)
        .map(|number| crate::result::Finding {
            id: format!("F{number}"),
            severity: crate::result::Severity::Fail,
            instruction: format!("Relieve place {number}."),
            instruction_messages: Message::verbatim(format!("Relieve place {number}.")),
            ..one.clone()
        })
        .collect();
    let page = report(
        &result,
        &pictures(&checked).unwrap(),
        &[],
        Language::English,
    );
    let front = page.split("<details").next().unwrap();
    assert_eq!(front.matches("Relieve place").count(), 10);
    for number in 1..=30 {
        assert!(page.contains(&format!("<article id=\"F{number}\"")));
    }
    let in_full = page.split("id=\"findings\"").nth(1).unwrap();
    let in_full = in_full.split("<details").next().unwrap();
    assert_eq!(in_full.matches("<article").count(), 4);
    // The others are named in the open, with what is to be done.
    assert_eq!(in_full.matches("href=\"#F").count(), 26);
    assert!(in_full.contains("Relieve place 30."));
}
