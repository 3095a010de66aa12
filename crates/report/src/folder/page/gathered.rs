//! What the page is made from.
//!
//! Records are taken in one after another, so that of a million cases only a
//! few numbers of each are held.

use crate::folder::record::CaseRecord;
use crate::folder::rows::{FindingRow, ImpressionRow};
use crate::folder::thumbnail::Thumbnail;
use crate::{REPORT_FILE, RESULT_FILE};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Impressions on a control chart: the latest.
const ON_CHART: usize = 120;
/// Cases that are shown as the worst.
const WORST: usize = 12;
/// Outlines that are drawn under the places of faults.
const OUTLINES: usize = 12;

/// How many there are of each.
pub(super) type Counts<K> = BTreeMap<K, u64>;

/// What the page is made from, gathered case by case.
#[derive(Debug, Default)]
pub struct Page {
    pub(super) cases: u64,
    pub(super) unreadable: Vec<(String, String)>,
    pub(super) unreadable_count: u64,
    pub(super) cases_by_verdict: Counts<String>,
    pub(super) impressions_by_verdict: Counts<String>,
    pub(super) impressions: u64,
    /// Failing findings by check, and by check and zone.
    pub(super) by_check: Counts<String>,
    pub(super) by_zone: Counts<(String, String)>,
    /// By jaw.
    pub(super) arches: BTreeMap<String, OfArch>,
    pub(super) latest: Vec<Latest>,
    pub(super) worst: Vec<Worst>,
}

/// What is gathered of one jaw.
#[derive(Debug, Default)]
pub(super) struct OfArch {
    /// Places of failing findings, mm to the right and to the front.
    pub(super) faults: Vec<[f64; 2]>,
    pub(super) outlines: Vec<Vec<[f64; 2]>>,
    pub(super) cover_median: Vec<f64>,
    pub(super) cover_min: Vec<f64>,
    pub(super) flange_height: Vec<f64>,
    pub(super) flange_thickness: Vec<f64>,
}

/// An impression on the control charts.
#[derive(Debug)]
pub(super) struct Latest {
    pub(super) scanned: String,
    pub(super) case: String,
    pub(super) arch: String,
    pub(super) figures: [Option<f64>; 3],
}

/// What the control charts are of, with decimals.
pub(super) const CHARTED: [(&str, usize); 3] = [
    ("Noise of the scan, mm", 4),
    ("Impression on its tray, root mean square, mm", 4),
    ("Median thickness, mm", 2),
];

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

impl Page {
    /// Takes a case in; its results lie in `folder`, which from the page is at
    /// `link`.
    pub fn add(&mut self, record: &CaseRecord, folder: PathBuf, link: String) {
        self.cases += 1;
        let first = record.impressions.first();
        if let Some(verdict) = first.and_then(|row| row.case_verdict.clone()) {
            *self.cases_by_verdict.entry(verdict).or_default() += 1;
        }
        for (number, row) in record.impressions.iter().enumerate() {
            match &row.problem {
                Some(problem) => {
                    self.unreadable_count += 1;
                    if self.unreadable.len() < WORST {
                        let case = row.case.clone().unwrap_or_else(|| row.folder.clone());
                        self.unreadable.push((case, problem.clone()));
                    }
                }
                None => self.add_impression(record, number, row, (&folder, &link)),
            }
        }
        for finding in failing(record) {
            *self.by_check.entry(finding.check.clone()).or_default() += 1;
            let zone = (finding.zone.clone()).unwrap_or_else(|| "the whole".to_owned());
            let of_zone = self.by_zone.entry((finding.check.clone(), zone));
            *of_zone.or_default() += 1;
        }
    }

    fn add_impression(
        &mut self,
        record: &CaseRecord,
        number: usize,
        row: &ImpressionRow,
        (folder, link): (&Path, &str),
    ) {
        self.impressions += 1;
        let verdict = row.verdict.clone().unwrap_or_default();
        *self.impressions_by_verdict.entry(verdict).or_default() += 1;
        if let Some(arch) = &row.arch {
            let arch = self.arches.entry(arch.clone()).or_default();
            let faults = failing(record).filter(|f| f.impression == row.impression);
            arch.faults
                .extend(faults.filter_map(|f| Some([f.right_mm?, f.anterior_mm?])));
            let outline = record.outlines.get(number).filter(|line| !line.is_empty());
            if let Some(outline) = outline.filter(|_| arch.outlines.len() < OUTLINES) {
                arch.outlines.push(outline.clone());
            }
            arch.cover_median.extend(row.cover_median_mm);
            arch.cover_min.extend(row.cover_min_mm);
            arch.flange_height.extend(row.flange_height_median_mm);
            arch.flange_thickness.extend(row.flange_thickness_median_mm);
        }
        if let Some(scanned) = &row.scanned {
            self.latest.push(Latest {
                scanned: scanned.clone(),
                case: row.case.clone().unwrap_or_default(),
                arch: row.arch.clone().unwrap_or_default(),
                figures: [row.noise_mm, row.registration_rms_mm, row.cover_median_mm],
            });
            if self.latest.len() > 10 * ON_CHART {
                self.keep_latest();
            }
        }
        let fails = row.fails.unwrap_or(0);
        if fails > 0 {
            self.worst.push(Worst {
                fails,
                row: row.clone(),
                folder: folder.to_owned(),
                link: link.to_owned(),
                opens: if record.has_report {
                    REPORT_FILE
                } else {
                    RESULT_FILE
                },
                thumbnail: record.thumbnails.get(number).cloned().flatten(),
            });
            if self.worst.len() > 10 * WORST {
                self.keep_worst();
            }
        }
    }

    pub(super) fn keep_latest(&mut self) {
        self.latest
            .sort_by(|a, b| (&a.scanned, &a.case).cmp(&(&b.scanned, &b.case)));
        let early = self.latest.len().saturating_sub(ON_CHART);
        self.latest.drain(..early);
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

fn failing(record: &CaseRecord) -> impl Iterator<Item = &FindingRow> {
    record.findings.iter().filter(|f| f.severity == "fail")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::folder::record::Provenance;
    use crate::folder::thumbnail::write_case;
    use crate::result::{CaseResult, Verdict};
    use crate::testing::{checked_with_border, checked_with_spots};

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
            let thumbnails = write_case(&checked, &result, &folder.join(name)).unwrap();
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
        add(&CaseRecord::unreadable(None, "d", (why, false), provenance()), "d");
        page.html()
    }

    #[test]
    fn the_page_counts_shows_and_links() {
        let folder = tempfile::tempdir().unwrap();
        let page = page_of(folder.path());
        for words in [
            "4 cases, 3 impressions",
            "1 of 3 cases checked are accepted: pass rate 33 %. 1 could not be checked.",
            "show through, ",
            "Where findings fail, maxillary",
            "Median thickness, mm",
            "href=\"cases/a/report.html\"",
            "href=\"cases/b/report.html\"",
            "&lt;b&gt;",
            "case file: line 1: &lt;nothing&gt;",
            "2 impressions, 0 outside",
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
            page.add(&record, PathBuf::new(), String::new());
        }
        page.keep_worst();
        page.keep_latest();
        let worst: Vec<u64> = page.worst.iter().map(|one| one.fails).collect();
        assert_eq!(
            worst,
            (0..WORST as u64).map(|i| 1000 - i).collect::<Vec<_>>()
        );
        let latest: Vec<f64> = page
            .latest
            .iter()
            .filter_map(|one| one.figures[2])
            .collect();
        let wanted: Vec<f64> = (0..ON_CHART)
            .map(|i| (1000 - ON_CHART + i) as f64)
            .collect();
        assert_eq!(latest, wanted);
    }
}
