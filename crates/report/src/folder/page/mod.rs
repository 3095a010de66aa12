//! The page over a folder of cases: one HTML file that needs no other.
//!
//! Records are taken in one after another, so that of a million cases only a
//! few numbers of each are held.

mod charts;
mod html;

use super::record::CaseRecord;
use super::rows::{FindingRow, ImpressionRow};
use super::thumbnail::Thumbnail;
use crate::{REPORT_FILE, RESULT_FILE};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Name of the page.
pub const PAGE_FILE: &str = "summary.html";

/// Impressions on a control chart: the latest.
const ON_CHART: usize = 120;
/// Cases that are shown as the worst.
const WORST: usize = 12;
/// Outlines that are drawn under the places of faults.
const OUTLINES: usize = 12;

/// How many there are of each.
type Counts<K> = BTreeMap<K, u64>;

/// What the page is made from, gathered case by case.
#[derive(Debug, Default)]
pub struct Page {
    cases: u64,
    unreadable: Vec<(String, String)>,
    unreadable_count: u64,
    cases_by_verdict: Counts<String>,
    impressions_by_verdict: Counts<String>,
    impressions: u64,
    /// Failing findings by check, and by check and zone.
    by_check: Counts<String>,
    by_zone: Counts<(String, String)>,
    /// By jaw.
    arches: BTreeMap<String, OfArch>,
    latest: Vec<Latest>,
    worst: Vec<Worst>,
}

/// What is gathered of one jaw.
#[derive(Debug, Default)]
struct OfArch {
    /// Places of failing findings, mm to the right and to the front.
    faults: Vec<[f64; 2]>,
    outlines: Vec<Vec<[f64; 2]>>,
    cover_median: Vec<f64>,
    cover_min: Vec<f64>,
    flange_height: Vec<f64>,
    flange_thickness: Vec<f64>,
}

/// An impression on the control charts.
#[derive(Debug)]
struct Latest {
    scanned: String,
    case: String,
    figures: [Option<f64>; 3],
}

/// What the control charts are of, with decimals.
const CHARTED: [(&str, usize); 3] = [
    ("Noise of the scan, mm", 4),
    ("Impression on its tray, root mean square, mm", 4),
    ("Median cover, mm", 2),
];

/// One of the worst cases.
#[derive(Debug)]
struct Worst {
    fails: u64,
    row: ImpressionRow,
    /// Where its results lie, and the way there from the page.
    folder: PathBuf,
    link: String,
    /// The file of them that a person reads.
    opens: &'static str,
    thumbnail: Option<Thumbnail>,
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

    fn keep_latest(&mut self) {
        self.latest
            .sort_by(|a, b| (&a.scanned, &a.case).cmp(&(&b.scanned, &b.case)));
        let early = self.latest.len().saturating_sub(ON_CHART);
        self.latest.drain(..early);
    }

    /// Most failing findings first, then least cover.
    fn keep_worst(&mut self) {
        let least = |one: &Worst| one.row.cover_min_mm.unwrap_or(f64::INFINITY);
        self.worst.sort_by(|a, b| {
            let by_fails = b.fails.cmp(&a.fails);
            by_fails
                .then(least(a).total_cmp(&least(b)))
                .then(a.row.folder.cmp(&b.row.folder))
        });
        self.worst.truncate(WORST);
    }

    /// The page as text.
    #[must_use]
    pub fn html(mut self) -> String {
        self.keep_latest();
        self.keep_worst();
        html::page(&self)
    }
}

fn failing(record: &CaseRecord) -> impl Iterator<Item = &FindingRow> {
    record.findings.iter().filter(|f| f.severity == "fail")
}
