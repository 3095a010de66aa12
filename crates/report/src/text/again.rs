//! Cases judged again by other limits, as text.

use super::columns::in_columns;
use super::words::{check_names, verdict_word};
use crate::again::{CaseAgain, CheckChange};
use crate::result::Verdict;
use messages::{Language, text};
use std::collections::BTreeMap;

/// What comes before the cases whose verdict changes by a protocol of this name.
#[must_use]
pub fn again_head(protocol: &str, language: Language) -> String {
    text!(language, "again-head", protocol = protocol) + "\n"
}

/// The line of a case whose verdict changes:
/// `D-1042 [0003]: accept -> rework (flange-height: none -> 2 fail)`; `None` of another.
#[must_use]
pub fn again_line(folder: &str, again: &CaseAgain, language: Language) -> Option<String> {
    let now = again.now.filter(|now| *now != again.was)?;
    let [was, now] = [again.was, now].map(|verdict| verdict_word(verdict, language));
    let why = again.changes.iter().map(|change| changed(change, language));
    let why: Vec<String> = why.collect();
    let (case, why) = (&again.case, why.join("; "));
    Some(format!("  {case} [{folder}]: {was} -> {now} ({why})\n"))
}

fn changed(change: &CheckChange, language: Language) -> String {
    let check = check_names(&[&change.check], language);
    let [was, now] = [&change.was, &change.now].map(|findings| counted(findings, language));
    format!("{check}: {was} -> {now}")
}

/// Findings by severity.
fn counted(findings: &BTreeMap<String, u64>, language: Language) -> String {
    if findings.is_empty() {
        return text!(language, "again-no-finding");
    }
    let each = findings.iter().map(|(severity, count)| {
        let severity = severity.as_str();
        text!(
            language,
            "again-findings",
            severity = severity,
            count = *count
        )
    });
    each.collect::<Vec<_>>().join(", ")
}

/// What came of all cases.
#[derive(Debug, Clone, Default)]
pub struct AgainTally {
    cases: u64,
    /// Cases by verdict before and now; no verdict where they must be measured again.
    verdicts: Vec<((Verdict, Option<Verdict>), u64)>,
    /// Cases by the check for which they must be measured again.
    measure_again: BTreeMap<String, u64>,
    changed: u64,
}

impl AgainTally {
    /// Counts a case.
    pub fn add(&mut self, again: &CaseAgain) {
        self.cases += 1;
        self.changed += u64::from(again.now.is_some_and(|now| now != again.was));
        let pair = (again.was, again.now);
        match self.verdicts.iter_mut().find(|(known, _)| *known == pair) {
            Some((_, cases)) => *cases += 1,
            None => self.verdicts.push((pair, 1)),
        }
        for check in &again.measure_again {
            *self.measure_again.entry(check.clone()).or_default() += 1;
        }
    }

    /// The counts as text; `unread` cases hold no result.
    #[must_use]
    pub fn text(&self, unread: u64, language: Language) -> String {
        let mut said = String::new();
        if self.changed == 0 {
            said += &format!("  {}\n", text!(language, "again-no-case"));
        }
        said += &format!("\n{}", self.table(language));
        if !self.measure_again.is_empty() {
            said += &format!("\n{}\n", text!(language, "again-measure-these"));
        }
        for (check, cases) in &self.measure_again {
            let check = check_names(&[check], language);
            let of_check = text!(language, "again-check", check = check, cases = *cases);
            said += &format!("  {of_check}\n");
        }
        if unread > 0 {
            said += &format!("\n{}\n", text!(language, "again-unread", cases = unread));
        }
        let open = self.verdicts.iter().filter(|((_, now), _)| now.is_none());
        let total = text!(
            language,
            "again-total",
            cases = self.cases,
            changed = self.changed,
            open = open.map(|(_, cases)| cases).sum::<u64>()
        );
        said + &format!("\n{total}\n")
    }

    /// The cases by their verdicts before and now.
    fn table(&self, language: Language) -> String {
        let head = vec![
            text!(language, "again-was"),
            text!(language, "again-now"),
            text!(language, "again-cases"),
        ];
        let rows = self.verdicts.iter().map(|((was, now), cases)| {
            let measure_again = || text!(language, "again-measure");
            vec![
                verdict_word(*was, language),
                now.map_or_else(measure_again, |now| verdict_word(now, language)),
                cases.to_string(),
            ]
        });
        let mut rows: Vec<Vec<String>> = rows.collect();
        rows.sort();
        rows.insert(0, head);
        in_columns(&rows, &[0, 1])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn case(was: Verdict, now: Option<Verdict>) -> CaseAgain {
        CaseAgain {
            case: "D-1042".to_owned(),
            was,
            now,
            judged_again: Vec::new(),
            measure_again: now.map_or_else(|| vec!["show-through".to_owned()], |_| Vec::new()),
            findings: Vec::new(),
            changes: vec![CheckChange {
                impression: 0,
                check: "flange-height".to_owned(),
                was: BTreeMap::new(),
                now: [("fail".to_owned(), 2), ("borderline".to_owned(), 1)].into(),
            }],
        }
    }

    #[test]
    fn a_case_whose_verdict_changes_is_a_line_in_each_language() {
        let again = case(Verdict::Accept, Some(Verdict::Rework));
        for (language, line) in [
            (
                Language::English,
                "  D-1042 [0003]: accept -> rework (flange-height: none -> 1 borderline, 2 fail)\n",
            ),
            (
                Language::German,
                "  D-1042 [0003]: annehmen -> nacharbeiten (Höhe des Funktionsrandes: kein Befund -> 1 Grenzfall, 2 Mängel)\n",
            ),
            (
                Language::Spanish,
                "  D-1042 [0003]: aceptar -> retocar (altura de la aleta: ningún hallazgo -> 1 en el límite, 2 incumplimientos)\n",
            ),
        ] {
            assert_eq!(again_line("0003", &again, language).as_deref(), Some(line));
        }
        let same = case(Verdict::Rework, Some(Verdict::Rework));
        assert_eq!(again_line("0003", &same, Language::English), None);
        let open = case(Verdict::Rework, None);
        assert_eq!(again_line("0003", &open, Language::English), None);
    }

    #[test]
    fn cases_are_counted_by_their_verdicts_and_by_what_must_be_measured_again() {
        let mut tally = AgainTally::default();
        tally.add(&case(Verdict::Rework, None));
        tally.add(&case(Verdict::Accept, Some(Verdict::Accept)));
        tally.add(&case(Verdict::Accept, Some(Verdict::Rework)));
        tally.add(&case(Verdict::Accept, Some(Verdict::Accept)));
        let text = tally.text(1, Language::English);
        let table = "\nwas     now            cases\n\
                     accept  accept             2\n\
                     accept  rework             1\n\
                     rework  measure again      1\n";
        assert!(text.starts_with(table), "{text}");
        assert!(text.contains("\n  show-through: 1 case\n"), "{text}");
        assert!(text.contains("\n1 case could not be read "), "{text}");
        let total = "4 cases judged again: 1 changes its verdict, 1 must be measured again.\n";
        assert!(text.ends_with(total), "{text}");
    }
}
