//! When things were done, in words.

use crate::result::Times;
use messages::{Language, message, text};

/// When a case was checked and how old its scans are, in one line.
pub(crate) fn in_words(times: &Times, language: Language) -> String {
    let mut scans: Vec<String> = (times.scans_changed_at.iter())
        .flatten()
        .map(|time| minute(time))
        .collect();
    scans.sort();
    let scans = match (scans.first(), scans.last()) {
        (Some(first), Some(last)) if first == last => {
            message!("times-scans", first = first.as_str())
        }
        (Some(first), Some(last)) => message!(
            "times-scans-between",
            first = first.as_str(),
            last = last.as_str()
        ),
        _ => message!("times-scans-unknown"),
    };
    text!(
        language,
        "times-checked",
        checked = minute(&times.checked_at),
        scans = scans
    )
}

/// `2026-11-29 03:12`, of a time by RFC 3339.
fn minute(time: &str) -> String {
    time.get(..16).unwrap_or(time).replace('T', " ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_time_of_the_check_and_the_span_of_the_scans_are_stated() {
        let mut times = Times {
            checked_at: "2026-03-05T08:09:10Z".to_owned(),
            scans_changed_at: vec![Some("2026-03-04T16:30:00Z".to_owned()), None],
            steps: Vec::new(),
        };
        assert_eq!(
            in_words(&times, Language::English),
            "Checked 2026-03-05 08:09 UTC; scan files of 2026-03-04 16:30 UTC"
        );
        times.scans_changed_at[1] = Some("2026-03-03T07:00:00Z".to_owned());
        assert!(
            in_words(&times, Language::English)
                .ends_with("of 2026-03-03 07:00 to 2026-03-04 16:30 UTC")
        );
        times.scans_changed_at.clear();
        assert!(in_words(&times, Language::English).ends_with("time of the scan files not known"));
    }
}
