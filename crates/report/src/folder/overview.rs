//! What a folder of cases came to, in counts: the head of the page over it, and what
//! `batch --json` prints.

use super::conditions::Conditions;
use super::drift::DriftSignal;
use super::record::CaseRecord;
use super::rows::ImpressionRow;
use crate::result::TimeSources;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Name and version of the contract.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
enum Contract {
    #[default]
    #[serde(rename = "archproof-batch/1")]
    V1,
}

/// How many cases came to each verdict.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Verdicts {
    /// Ready for the next step.
    pub accept: u64,
    /// To be corrected, then a wash.
    pub rework: u64,
    /// To be taken again.
    pub retake: u64,
    /// Something is missing, or too close to call.
    pub undecided: u64,
    /// Could not be read.
    pub unreadable: u64,
}

/// What comes first in an undecided case; each case counts once.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct UndecidedBecause {
    /// A question comes before everything else.
    pub question: u64,
    /// Something is missing that a verdict needs.
    pub missing: u64,
    /// Too close to its limit to call, or for a person to see.
    pub look: u64,
    /// The parcel is not complete.
    pub parcel: u64,
    /// Not every impression could be measured.
    pub not_measured: u64,
}

/// A share that was counted, with its 95 % interval (Wilson 1927).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Rate {
    /// How many.
    pub part: u64,
    /// Of how many.
    pub of: u64,
    /// Their share, 0 to 1; `null` of none.
    pub share: Option<f64>,
    /// Lower end of the interval, 0 to 1.
    pub low: Option<f64>,
    /// Upper end of the interval, 0 to 1.
    pub high: Option<f64>,
}

impl Rate {
    pub(super) fn of(part: u64, of: u64) -> Self {
        let ends = statistics::proportion::wilson(part, of);
        Self {
            part,
            of,
            share: (of > 0).then(|| part as f64 / of as f64),
            low: ends.map(|ends| ends[0]),
            high: ends.map(|ends| ends[1]),
        }
    }
}

/// The share of a group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct GroupRate {
    /// What the group has in common: `arch`, `stage`, `arch stage`, `label KEY` or `check`.
    pub by: String,
    /// Its value.
    pub group: String,
    /// The share.
    pub rate: Rate,
}

/// What a folder of cases came to.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Overview {
    schema: Contract,
    /// How the cases were checked.
    pub conditions: Conditions,
    /// SHA-256 over the results' folder names and the SHA-256 of what was given of each
    /// case, in order: the same for the same cases, whatever they were checked by.
    pub folder_sha256: String,
    /// Cases, with those that could not be read.
    pub cases: u64,
    /// Impressions of the cases that were read, superseded ones included.
    pub impressions: u64,
    /// When the earliest scan was made, UTC (RFC 3339) or a date.
    pub first_scan: Option<String>,
    /// When the latest scan was made.
    pub last_scan: Option<String>,
    /// Cases that were read, by where the times of their scans are taken from.
    #[serde(default)]
    pub times_by: TimeSources,
    /// Cases by verdict.
    pub verdicts: Verdicts,
    /// Share of each verdict among the cases that were read.
    pub rates: BTreeMap<String, Rate>,
    /// Undecided cases by what comes first in them.
    pub undecided_because: UndecidedBecause,
    /// Verdicts on impressions that are to be worked from.
    pub impressions_by_verdict: BTreeMap<String, u64>,
    /// Verdicts on impressions before a wash that the case holds, too.
    pub superseded_by_verdict: BTreeMap<String, u64>,
    /// Share accepted of the impressions to be worked from, by jaw, stage and label.
    pub pass_rates: Vec<GroupRate>,
    /// Impressions whose label is not among the groups, since it has too many values.
    pub groups_left_out: u64,
    /// Share of the impressions to be worked from on which a check was not made, or not
    /// everywhere; most frequent first.
    pub not_judged: Vec<GroupRate>,
    /// What the control charts say; the latest first.
    #[serde(default)]
    pub drift: Vec<DriftSignal>,
}

impl Overview {
    /// Cases that were read.
    #[must_use]
    pub fn checked(&self) -> u64 {
        self.cases - self.verdicts.unreadable
    }

    /// Impressions that are to be worked from.
    pub(super) fn current(&self) -> u64 {
        self.impressions_by_verdict.values().sum()
    }
}

/// Groups that are counted; a label with more values than that compares nothing.
const MOST_GROUPS: usize = 500;

/// Counts cases as they come, in memory that does not grow with them.
#[derive(Debug, Default)]
pub(super) struct Tally {
    overview: Overview,
    groups: BTreeMap<(String, String), [u64; 2]>,
    not_judged: BTreeMap<String, u64>,
}

impl Tally {
    pub(super) fn add(&mut self, record: &CaseRecord) {
        let so_far = &mut self.overview;
        so_far.cases += 1;
        if record.is_unreadable() {
            so_far.verdicts.unreadable += 1;
            return;
        }
        let first = record.impressions.first();
        let mut times = record.impressions.iter().map(ImpressionRow::time_source);
        so_far.times_by.add(times.find_map(|source| source));
        let verdict = first.and_then(|row| row.case_verdict.as_deref());
        match verdict {
            Some("accept") => so_far.verdicts.accept += 1,
            Some("rework") => so_far.verdicts.rework += 1,
            Some("retake") => so_far.verdicts.retake += 1,
            _ => {
                so_far.verdicts.undecided += 1;
                *because(&mut so_far.undecided_because, record) += 1;
            }
        }
        for row in &record.impressions {
            self.add_impression(row);
        }
    }

    fn add_impression(&mut self, row: &ImpressionRow) {
        let so_far = &mut self.overview;
        so_far.impressions += 1;
        if let Some(scanned) = &row.scanned {
            let earliest = so_far.first_scan.get_or_insert_with(|| scanned.clone());
            if scanned < earliest {
                earliest.clone_from(scanned);
            }
            let latest = so_far.last_scan.get_or_insert_with(|| scanned.clone());
            if scanned > latest {
                latest.clone_from(scanned);
            }
        }
        let verdict = row.verdict.clone().unwrap_or_default();
        let is_accepted = verdict == "accept";
        if row.superseded == Some(true) {
            *so_far.superseded_by_verdict.entry(verdict).or_default() += 1;
            return;
        }
        *so_far.impressions_by_verdict.entry(verdict).or_default() += 1;
        let arch = row.arch.as_deref().unwrap_or("unknown").to_owned();
        let stage = row.stage.as_deref().unwrap_or("single").to_owned();
        let both = format!("{arch} {stage}");
        let own = [("arch", arch), ("stage", stage), ("arch stage", both)];
        let own = own.map(|(by, group)| (by.to_owned(), group));
        let labels = row.labels.iter().flat_map(|labels| labels.split(' '));
        let labels = labels.filter_map(|label| label.split_once('='));
        let labels = labels.map(|(key, value)| (format!("label {key}"), value.to_owned()));
        for group in own.into_iter().chain(labels) {
            if self.groups.len() >= MOST_GROUPS && !self.groups.contains_key(&group) {
                so_far.groups_left_out += 1;
                continue;
            }
            let [accepted, of] = self.groups.entry(group).or_default();
            *accepted += u64::from(is_accepted);
            *of += 1;
        }
        for code in row.not_judged.iter().flat_map(|codes| codes.split(' ')) {
            *self.not_judged.entry(code.to_owned()).or_default() += 1;
        }
    }

    pub(super) fn finish(self, conditions: Conditions, folder_sha256: String) -> Overview {
        let counted = &self.overview;
        let (of, verdicts) = (counted.checked(), counted.verdicts);
        let rates = [
            ("accept", verdicts.accept),
            ("rework", verdicts.rework),
            ("retake", verdicts.retake),
            ("undecided", verdicts.undecided),
        ];
        let rates = rates.map(|(verdict, part)| (verdict.to_owned(), Rate::of(part, of)));
        let groups = self.groups.into_iter();
        let pass_rates = groups.map(|((by, group), [part, of])| GroupRate {
            by,
            group,
            rate: Rate::of(part, of),
        });
        let current = counted.current();
        let mut not_judged: Vec<(String, u64)> = self.not_judged.into_iter().collect();
        not_judged.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
        let not_judged = not_judged.into_iter().map(|(check, part)| GroupRate {
            by: "check".to_owned(),
            group: check,
            rate: Rate::of(part, current),
        });
        Overview {
            conditions,
            folder_sha256,
            rates: BTreeMap::from(rates),
            pass_rates: pass_rates.collect(),
            not_judged: not_judged.collect(),
            ..self.overview
        }
    }
}

/// Where an undecided case counts: by what a person has to do first.
fn because<'a>(counts: &'a mut UndecidedBecause, record: &CaseRecord) -> &'a mut u64 {
    let any = |cause| record.findings.iter().any(|finding| finding.cause == cause);
    if any("question") {
        &mut counts.question
    } else if any("missing") {
        &mut counts.missing
    } else if any("look") {
        &mut counts.look
    } else if any("parcel") {
        &mut counts.parcel
    } else {
        &mut counts.not_measured
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::folder::record::Provenance;
    use crate::result::CaseResult;
    use crate::testing::checked_with_spots;

    fn record() -> CaseRecord {
        let provenance = Provenance {
            inputs_sha256: String::new(),
            settings_sha256: String::new(),
            program: String::new(),
        };
        let result = CaseResult::of(&checked_with_spots());
        CaseRecord::checked(&result, "a", &[], Vec::new(), provenance)
    }

    fn with_verdict(verdict: &str) -> CaseRecord {
        let mut record = record();
        for row in &mut record.impressions {
            row.case_verdict = Some(verdict.to_owned());
            row.verdict = Some(verdict.to_owned());
            row.superseded = Some(false);
        }
        record
    }

    #[test]
    fn the_parts_of_the_undecided_are_all_of_them() {
        let mut tally = Tally::default();
        for causes in [
            &["look", "missing"][..],
            &["look"],
            &["parcel", "look"],
            &["parcel"],
            &["look", "question"],
            &["note", "held_back"],
        ] {
            let mut record = with_verdict("undecided");
            let finding = record.findings[0].clone();
            record.findings = causes
                .iter()
                .map(|cause| {
                    let mut finding = finding.clone();
                    finding.cause = (*cause).to_owned();
                    finding
                })
                .collect();
            tally.add(&record);
        }
        let overview = tally.finish(Conditions::default(), String::new());
        let because = overview.undecided_because;
        let wanted = UndecidedBecause {
            question: 1,
            missing: 1,
            look: 2,
            parcel: 1,
            not_measured: 1,
        };
        assert_eq!((overview.verdicts.undecided, because), (6, wanted));
    }

    #[test]
    fn superseded_impressions_are_counted_apart() {
        let mut tally = Tally::default();
        let mut record = with_verdict("accept");
        let mut before = record.impressions[0].clone();
        before.verdict = Some("rework".to_owned());
        before.superseded = Some(true);
        record.impressions.push(before);
        tally.add(&record);
        let overview = tally.finish(Conditions::default(), String::new());
        assert_eq!(overview.impressions, 2);
        assert_eq!(overview.superseded_by_verdict["rework"], 1);
        assert_eq!(overview.impressions_by_verdict.get("rework"), None);
        let rates = overview.pass_rates.iter();
        assert!(rates.clone().all(|group| group.rate.share == Some(1.0)));
        assert_eq!(rates.count(), 3);
    }

    #[test]
    fn cases_are_counted_by_where_their_times_are_taken_from() {
        let mut tally = Tally::default();
        for (scanned, by, cases) in [
            (Some("2026-03-04"), Some("case_file"), 3),
            (Some("2026-03-01T00:00:00Z"), Some("scan_file"), 2),
            (None, None, 1),
        ] {
            let mut record = with_verdict("accept");
            record.impressions[0].scanned = scanned.map(str::to_owned);
            record.impressions[0].scanned_by = by.map(str::to_owned);
            (0..cases).for_each(|_| tally.add(&record));
        }
        let overview = tally.finish(Conditions::default(), String::new());
        let times = overview.times_by;
        assert_eq!([times.case_file, times.scan_file, times.unknown], [3, 2, 1]);
        let ends = [overview.first_scan, overview.last_scan].map(Option::unwrap);
        assert_eq!(ends, ["2026-03-01T00:00:00Z", "2026-03-04"]);
    }

    #[test]
    fn labels_are_groups_and_no_more_than_fit() {
        let mut tally = Tally::default();
        for number in 0..2 * MOST_GROUPS {
            let mut record = with_verdict(["accept", "rework"][number % 2]);
            record.impressions[0].labels = Some(format!("lot=L{number} scanner=S{}", number % 2));
            tally.add(&record);
        }
        let overview = tally.finish(Conditions::default(), String::new());
        assert_eq!(overview.pass_rates.len(), MOST_GROUPS);
        let of = |group: &str| {
            let mut rates = overview.pass_rates.iter();
            let found = rates.find(|rate| rate.by == "label scanner" && rate.group == group);
            found.map(|rate| [rate.rate.part, rate.rate.of])
        };
        let half = MOST_GROUPS as u64;
        assert_eq!([of("S0"), of("S1")], [Some([half, half]), Some([0, half])]);
        assert!(overview.groups_left_out > 0);
    }

    #[test]
    fn of_no_case_there_is_no_rate() {
        let overview = Tally::default().finish(Conditions::default(), String::new());
        assert_eq!(overview.rates["accept"].share, None);
        assert_eq!(overview.checked(), 0);
    }
}
