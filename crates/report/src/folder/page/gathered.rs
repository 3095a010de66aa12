//! What the page is made from.
//!
//! Records are taken in one after another, so that of a million cases only a
//! few numbers of each are held.

use crate::folder::drift::{DriftOptions, Series};
use crate::folder::overview::Tally;
use crate::folder::record::CaseRecord;
use crate::folder::rows::{FindingRow, ImpressionRow};
use crate::folder::spread::Spread;
use crate::folder::thumbnail::Thumbnail;
use crate::text::words::group_words;
use messages::Language;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Impressions on a control chart: the latest.
const ON_CHART: usize = 120;
/// Cases that are shown as the worst.
const WORST: usize = 12;
/// Outlines that are drawn under the places of faults.
const OUTLINES: usize = 12;
/// Cases that the page lists; beyond, those that need most attention.
pub(super) const LISTED: usize = 2_000;
/// Side of the squares in which findings are counted, mm.
pub(super) const CELL_MM: f64 = 4.0;

/// How many there are of each.
pub(super) type Counts<K> = BTreeMap<K, u64>;

/// What the page is made from, gathered case by case.
#[derive(Debug)]
pub struct Page {
    pub(super) language: Language,
    pub(super) tally: Tally,
    pub(super) unreadable: Vec<(String, String)>,
    /// Failing findings by check, and by check and zone; without a zone those of the whole.
    pub(super) by_check: Counts<String>,
    pub(super) by_zone: Counts<(String, Option<String>)>,
    /// By jaw.
    pub(super) arches: BTreeMap<String, OfArch>,
    pub(super) series: Series,
    pub(super) drift: DriftOptions,
    pub(super) worst: Vec<Worst>,
    pub(super) listed: Vec<Listed>,
}

/// What is gathered of one jaw.
#[derive(Debug, Default)]
pub(super) struct OfArch {
    /// Failing findings by the square that they lie in: to the right and to the front.
    pub(super) faults: Counts<[i64; 2]>,
    pub(super) outlines: Vec<Vec<[f64; 2]>>,
    pub(super) cover_median: Spread,
    pub(super) cover_min: Spread,
    pub(super) flange_height: Spread,
    pub(super) flange_thickness: Spread,
}

/// One of the worst cases.
#[derive(Debug)]
pub(super) struct Worst {
    pub(super) fails: u64,
    pub(super) row: ImpressionRow,
    /// Where its results lie, and the way there from the page.
    pub(super) folder: PathBuf,
    pub(super) link: String,
    /// The file of them that a person reads.
    pub(super) opens: &'static str,
    pub(super) thumbnail: Option<Thumbnail>,
}

/// A row of the list of all cases. Its order is theirs: what needs most attention first.
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Listed {
    rank: u8,
    pub(super) case: String,
    folder: String,
    pub(super) arches: String,
    pub(super) verdict: String,
    pub(super) step: String,
    /// The way from the page to what a person reads; `None` where the case was not read.
    pub(super) link: Option<String>,
}

impl Listed {
    fn of(record: &CaseRecord, link: &str, language: Language) -> Self {
        let rows = &record.impressions;
        let first = rows.first().cloned().unwrap_or_default();
        let arches = rows.iter().filter_map(|row| row.arch.as_deref());
        let mut arches: Vec<String> = arches.map(|arch| group_words(arch, language)).collect();
        arches.dedup();
        let verdict = first.case_verdict.unwrap_or_default();
        let rank = match verdict.as_str() {
            "retake" => 0,
            "rework" => 1,
            "undecided" => 3,
            "accept" => 4,
            _ => 2,
        };
        Self {
            rank,
            case: first.case.unwrap_or_else(|| first.folder.clone()),
            arches: arches.join(", "),
            step: record.said(language),
            link: (rank != 2).then(|| format!("{link}/{}", record.opens())),
            folder: first.folder,
            verdict,
        }
    }
}

impl Default for Page {
    fn default() -> Self {
        Self::new(DriftOptions::default(), Language::English)
    }
}

impl Page {
    /// A page in a language, without cases, on which drift is looked for so.
    #[must_use]
    pub fn new(drift: DriftOptions, language: Language) -> Self {
        let from_baseline = drift.baseline.as_ref().and_then(|frozen| frozen.by.clone());
        let by = drift.by.clone().or(from_baseline);
        Self {
            language,
            tally: Tally::default(),
            unreadable: Vec::new(),
            by_check: Counts::new(),
            by_zone: Counts::new(),
            arches: BTreeMap::new(),
            series: Series::new(by, ON_CHART),
            drift,
            worst: Vec::new(),
            listed: Vec::new(),
        }
    }

    /// Takes a case in; its results lie in `folder`, which from the page is at
    /// `link`.
    pub fn add(&mut self, record: &CaseRecord, folder: PathBuf, link: String) {
        self.tally.add(record);
        self.listed.push(Listed::of(record, &link, self.language));
        if self.listed.len() > 2 * LISTED {
            self.keep_listed();
        }
        for (number, row) in record.impressions.iter().enumerate() {
            match &row.problem {
                Some(_) => {
                    if self.unreadable.len() < WORST {
                        let case = row.case.clone().unwrap_or_else(|| row.folder.clone());
                        self.unreadable.push((case, record.said(self.language)));
                    }
                }
                None => self.add_impression(record, number, row, (&folder, &link)),
            }
        }
        for finding in failing(record) {
            *self.by_check.entry(finding.check.clone()).or_default() += 1;
            let of_zone = (finding.check.clone(), finding.zone.clone());
            *self.by_zone.entry(of_zone).or_default() += 1;
        }
    }

    fn add_impression(
        &mut self,
        record: &CaseRecord,
        number: usize,
        row: &ImpressionRow,
        (folder, link): (&Path, &str),
    ) {
        if let Some(arch) = &row.arch {
            let of_arch = self.arches.entry(arch.clone()).or_default();
            of_arch.add(record, number, row);
        }
        self.series.add(row, &format!("{link}/{}", record.opens()));
        let fails = row.fails.unwrap_or(0);
        if fails > 0 {
            self.worst.push(Worst {
                fails,
                row: row.clone(),
                folder: folder.to_owned(),
                link: link.to_owned(),
                opens: record.opens(),
                thumbnail: record.thumbnails.get(number).cloned().flatten(),
            });
            if self.worst.len() > 10 * WORST {
                self.keep_worst();
            }
        }
    }

    /// Cuts what is gathered down to what is shown, in its order.
    pub(super) fn settle(&mut self) {
        self.keep_worst();
        self.keep_listed();
    }

    fn keep_listed(&mut self) {
        self.listed.sort();
        self.listed.truncate(LISTED);
    }

    /// Most failing findings first, then least cover.
    pub(super) fn keep_worst(&mut self) {
        let least = |one: &Worst| one.row.cover_min_mm.unwrap_or(f64::INFINITY);
        self.worst.sort_by(|a, b| {
            let by_fails = b.fails.cmp(&a.fails);
            by_fails
                .then(least(a).total_cmp(&least(b)))
                .then(a.row.folder.cmp(&b.row.folder))
        });
        self.worst.truncate(WORST);
    }
}

impl OfArch {
    fn add(&mut self, record: &CaseRecord, number: usize, row: &ImpressionRow) {
        for fault in failing(record).filter(|f| f.impression == row.impression) {
            if let (Some(right), Some(anterior)) = (fault.right_mm, fault.anterior_mm) {
                let cell = [right, anterior].map(|mm| (mm / CELL_MM).floor() as i64);
                *self.faults.entry(cell).or_default() += 1;
            }
        }
        let outline = record.outlines.get(number).filter(|line| !line.is_empty());
        if let Some(outline) = outline.filter(|_| self.outlines.len() < OUTLINES) {
            self.outlines.push(outline.clone());
        }
        for (spread, value) in [
            (&mut self.cover_median, row.cover_median_mm),
            (&mut self.cover_min, row.cover_min_mm),
            (&mut self.flange_height, row.flange_height_median_mm),
            (&mut self.flange_thickness, row.flange_thickness_median_mm),
        ] {
            if let Some(value) = value {
                spread.add(value);
            }
        }
    }
}

fn failing(record: &CaseRecord) -> impl Iterator<Item = &FindingRow> {
    record.findings.iter().filter(|f| f.severity == "fail")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::folder::conditions::Conditions;
    use crate::folder::drift::{Charted, Drift};
    use crate::folder::record::Provenance;
    use crate::folder::thumbnail::write_case;
    use crate::result::{CaseResult, Verdict};
    use crate::testing::{checked_with_border, checked_with_spots};
    use messages::Message;

    fn provenance() -> Provenance {
        Provenance {
            inputs_sha256: String::new(),
            settings_sha256: String::new(),
            program: String::new(),
        }
    }

    /// Two cases with spots, one with a border and another name and verdict, one unread.
    fn page_of(folder: &Path) -> String {
        let mut page = Page::default();
        let mut add = |record: &CaseRecord, name: &str| {
            page.add(record, folder.join(name), format!("cases/{name}"));
        };
        for (number, name) in ["a", "b"].into_iter().enumerate() {
            let checked = checked_with_spots();
            let result = CaseResult::of(&checked);
            let thumbnails =
                write_case(&checked, &result, &folder.join(name), Language::English).unwrap();
            let scanned = [Some(format!("2026-01-0{}T00:00:00Z", number + 1))];
            let record = CaseRecord::checked(&result, name, &scanned, thumbnails, provenance());
            add(&record, name);
        }
        let mut result = CaseResult::of(&checked_with_border());
        result.case = "<b>\"c\"".to_owned();
        result.verdict = Verdict::Accept;
        let record = CaseRecord::checked(&result, "c", &[], Vec::new(), provenance());
        add(&record, "c");
        let why = "case file: line 1: <nothing>".to_owned();
        add(
            &CaseRecord::unreadable(None, "d", (Message::verbatim(why), false), provenance()),
            "d",
        );
        let conditions = Conditions {
            program: "0.1.0".to_owned(),
            protocol: "our limits".to_owned(),
            protocol_sha256: "0123456789abcdef".to_owned(),
            shard: Some(3),
            shards: 8,
        };
        page.finish(conditions, "fedcba".to_owned()).1
    }

    #[test]
    fn the_page_counts_shows_and_links() {
        let folder = tempfile::tempdir().unwrap();
        let page = page_of(folder.path());
        for words in [
            "4 cases, 3 impressions",
            "1 of 3 cases that were read are accepted: 33.3 %, 95 % interval 6.1 % to 79.2 %. 1 could not be read.",
            "our limits",
            "0123456789abcdef",
            "fedcba",
            "shard 3 of 8",
            "2026-01-01T00:00:00Z to 2026-01-02T00:00:00Z",
            "show through, ",
            "Where findings fail, maxillary",
            "Median thickness, mm",
            "href=\"cases/a/report.html\"",
            "href=\"cases/b/report.html\"",
            "&lt;b&gt;",
            "case file: line 1: &lt;nothing&gt;",
            "Too few impressions for limits",
            "not a medical device",
        ] {
            assert!(page.contains(words), "{words}");
        }
        assert!(!page.contains("<b>") && !page.contains("<nothing>"));
        assert!(!page.contains("id=\"hatch\""));
        // Nothing is asked for from elsewhere.
        let elsewhere = page.split("src=\"").chain(page.split("href=\""));
        assert!(!elsewhere.skip(1).any(|link| link.starts_with("http")));
    }

    /// The worst are those with the most failing findings, however many come.
    #[test]
    fn the_worst_and_the_latest_are_kept() {
        let result = CaseResult::of(&checked_with_spots());
        let mut page = Page::default();
        for number in 0..1000_u64 {
            let scanned = [Some(format!(
                "2026-01-01T{:02}:{:02}:00Z",
                number / 60,
                number % 60
            ))];
            let mut record = CaseRecord::checked(
                &result,
                &format!("{number:04}"),
                &scanned,
                Vec::new(),
                provenance(),
            );
            record.impressions[0].fails = Some(1 + (number * 7) % 1000);
            record.impressions[0].cover_median_mm = Some(number as f64);
            record.impressions[0].case = Some(format!("{number:04}"));
            page.add(&record, PathBuf::new(), String::new());
        }
        page.settle();
        let worst: Vec<u64> = page.worst.iter().map(|one| one.fails).collect();
        assert_eq!(
            worst,
            (0..WORST as u64).map(|i| 1000 - i).collect::<Vec<_>>()
        );
        let drift = Drift::of(page.series, &page.drift);
        let latest = drift
            .charts
            .iter()
            .find(|chart| chart.figure == Charted::Thickness);
        let wanted: Vec<f64> = (0..ON_CHART)
            .map(|i| (1000 - ON_CHART + i) as f64)
            .collect();
        assert_eq!(latest.unwrap().values, wanted);
    }

    /// Beyond the number that the page lists, accepted cases are left to the tables.
    #[test]
    fn the_list_is_complete_up_to_its_number() {
        let result = CaseResult::of(&checked_with_spots());
        let mut page = Page::default();
        for number in 0..5 * LISTED {
            let name = format!("{number:05}");
            let mut record = CaseRecord::checked(&result, &name, &[], Vec::new(), provenance());
            record.impressions[0].case = Some(name);
            let verdict = if number % 10 == 0 { "retake" } else { "accept" };
            record.impressions[0].case_verdict = Some(verdict.to_owned());
            page.add(&record, PathBuf::new(), String::new());
            assert!(page.listed.len() <= 2 * LISTED);
        }
        page.settle();
        assert_eq!(page.listed.len(), LISTED);
        let retakes = page.listed.iter().take(LISTED / 2);
        assert!(retakes.clone().all(|one| one.verdict == "retake"));
        assert_eq!(page.listed[LISTED / 2].verdict, "accept");
        assert!(page.listed.iter().all(|one| !one.step.is_empty()));
    }
}
