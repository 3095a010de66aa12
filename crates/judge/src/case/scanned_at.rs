//! When the scans of a case were made, as its case file states it.

use chrono::{DateTime, Datelike, NaiveDate, NaiveDateTime, SecondsFormat, Utc};
use messages::{Message, message};
use thiserror::Error;

/// Ways to write a date and time without an offset from UTC.
const WITHOUT_OFFSET: [&str; 4] = [
    "%Y-%m-%dT%H:%M:%S",
    "%Y-%m-%dT%H:%M",
    "%Y-%m-%d %H:%M:%S",
    "%Y-%m-%d %H:%M",
];

/// A stated time that cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", self.message())]
pub struct BadTime;

impl BadTime {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!("case-time")
    }
}

/// The stated time in UTC to the second (RFC 3339), or the date where no time of day is
/// stated. Such texts sort in order of time, a date before all times of its day.
pub(super) fn scanned_at(written: &str) -> Result<String, BadTime> {
    let in_range = |date: NaiveDate| (2000..2100).contains(&date.year());
    let written = written.trim();
    if let Ok(date) = NaiveDate::parse_from_str(written, "%Y-%m-%d") {
        let text = date.format("%Y-%m-%d").to_string();
        return in_range(date).then_some(text).ok_or(BadTime);
    }
    let stated = DateTime::parse_from_rfc3339(written).map(|time| time.to_utc());
    let time = stated.ok().or_else(|| {
        let mut each = WITHOUT_OFFSET.into_iter();
        let found = each.find_map(|form| NaiveDateTime::parse_from_str(written, form).ok());
        found.map(|time| time.and_utc())
    });
    let time: DateTime<Utc> = time.ok_or(BadTime)?;
    let text = time.to_rfc3339_opts(SecondsFormat::Secs, true);
    in_range(time.date_naive()).then_some(text).ok_or(BadTime)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("2026-03-04", "2026-03-04")]
    #[case("2026-03-04T10:20:00+01:00", "2026-03-04T09:20:00Z")]
    #[case("2026-03-04T23:30:00-05:00", "2026-03-05T04:30:00Z")]
    #[case("2026-03-04T10:20:05.25Z", "2026-03-04T10:20:05Z")]
    #[case("2026-03-04T10:20", "2026-03-04T10:20:00Z")]
    #[case(" 2026-03-04 10:20:05 ", "2026-03-04T10:20:05Z")]
    fn a_date_or_time_is_read(#[case] written: &str, #[case] wanted: &str) {
        assert_eq!(scanned_at(written).as_deref(), Ok(wanted));
    }

    #[rstest]
    #[case("")]
    #[case("yesterday")]
    #[case("04.03.2026")]
    #[case("2026-02-30")]
    #[case("0226-03-04")]
    #[case("2026-03-04T25:00:00Z")]
    #[case("10:20:00")]
    fn what_is_no_date_is_refused(#[case] written: &str) {
        assert_eq!(scanned_at(written), Err(BadTime));
    }
}
