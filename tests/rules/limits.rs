//! Measuring knows no limit and no opinion.

use crate::common::{assert_none, lines_out_of_place};

const OPINIONS: &[&str] = &["Verdict", "Protocol", "Finding", "Severity"];

#[test]
fn measuring_knows_no_verdict_protocol_or_finding() {
    let holds_opinion = |line: &str| OPINIONS.iter().any(|word| line.contains(word));
    assert_none(&lines_out_of_place(|row| row.limits, holds_opinion));
}
