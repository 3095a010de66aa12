//! Figures of impressions in order of time, by group, in memory that does not grow with
//! the number of cases.

use super::charted::{Charted, Group};
use crate::folder::rows::ImpressionRow;
use std::collections::BTreeMap;

/// Groups that are followed; a label with more values than that compares nothing.
const MOST_GROUPS: usize = 100;

/// An impression in its series.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::folder) struct Point {
    pub(in crate::folder) scanned: String,
    pub(in crate::folder) case: String,
    folder: String,
    /// The way from the page to what a person reads.
    pub(in crate::folder) link: String,
    pub(super) figures: [Option<f64>; 3],
}

/// The impressions of a group.
#[derive(Debug, Default)]
pub(super) struct OfGroup {
    /// The latest, in order of time once settled.
    pub(super) latest: Vec<Point>,
    /// By day: how many fail, and of how many.
    pub(super) days: BTreeMap<String, [u64; 2]>,
}

/// Series of all groups.
#[derive(Debug)]
pub(in crate::folder) struct Series {
    pub(super) by: Option<String>,
    /// Points kept of each group.
    most: usize,
    pub(super) groups: BTreeMap<Group, OfGroup>,
    /// Impressions of groups beyond those followed.
    pub(super) left_out: u64,
}

impl Series {
    pub(in crate::folder) fn new(by: Option<String>, most: usize) -> Self {
        Self {
            by,
            most,
            groups: BTreeMap::new(),
            left_out: 0,
        }
    }

    /// Takes an impression in; one whose time or jaw is not known has no place in a series.
    pub(in crate::folder) fn add(&mut self, row: &ImpressionRow, link: &str) {
        let group = Group::of(row, self.by.as_deref());
        let (Some(scanned), Some(group)) = (&row.scanned, group) else {
            return;
        };
        if self.groups.len() >= MOST_GROUPS && !self.groups.contains_key(&group) {
            self.left_out += 1;
            return;
        }
        let of_group = self.groups.entry(group).or_default();
        let verdict = row.verdict.as_deref();
        let fails = matches!(verdict, Some("rework" | "retake"));
        let day = scanned.get(..10).unwrap_or(scanned).to_owned();
        let [part, of] = of_group.days.entry(day).or_default();
        *part += u64::from(fails);
        *of += 1;
        of_group.latest.push(Point {
            scanned: scanned.clone(),
            case: row.case.clone().unwrap_or_default(),
            folder: row.folder.clone(),
            link: link.to_owned(),
            figures: Charted::of(row),
        });
        if of_group.latest.len() > 10 * self.most {
            of_group.keep(self.most);
        }
    }

    /// Puts all in order of time.
    pub(in crate::folder) fn settle(&mut self) {
        for group in self.groups.values_mut() {
            group.keep(self.most);
        }
    }
}

impl OfGroup {
    fn keep(&mut self, most: usize) {
        let key = |point: &Point| {
            (
                point.scanned.clone(),
                point.case.clone(),
                point.folder.clone(),
            )
        };
        self.latest.sort_by_cached_key(key);
        let early = self.latest.len().saturating_sub(most);
        self.latest.drain(..early);
    }

    /// Points that have a figure, with it.
    pub(super) fn with(&self, figure: Charted) -> (Vec<&Point>, Vec<f64>) {
        let place = Charted::ALL.iter().position(|one| *one == figure);
        let value = |point: &Point| place.and_then(|place| point.figures[place]);
        let known = self.latest.iter().filter_map(|p| Some((p, value(p)?)));
        known.filter(|(_, value)| value.is_finite()).unzip()
    }

    /// How many fail, and of how many.
    pub(super) fn counted(&self) -> [u64; 2] {
        let add = |[part, of]: [u64; 2], day: &[u64; 2]| [part + day[0], of + day[1]];
        self.days.values().fold([0, 0], add)
    }
}
