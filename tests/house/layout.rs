//! Where crates are drawn: in floors, each above all that it needs, and in
//! columns, so that no arrow to a crate passes behind another crate.

use super::whole::Crate;
use std::collections::{BTreeMap, BTreeSet};

pub(super) const BOX_WIDTH: usize = 250;
pub(super) const FLOOR_GAP: usize = 70;
const GAP: usize = 40;

/// Where a crate is drawn.
#[derive(Debug, Clone, Copy)]
pub(super) struct Spot {
    pub(super) x: usize,
    pub(super) y: usize,
    pub(super) height: usize,
    /// Lower end of the highest box on its floor.
    pub(super) floor_end: usize,
}

/// Places the crates; gives the size of the whole as well.
pub(super) fn laid_out<'a>(
    shown: &[&'a Crate],
    height: impl Fn(&Crate) -> usize,
) -> (BTreeMap<&'a str, Spot>, (usize, usize)) {
    let floors = floors(shown);
    let columns = columns(shown, &floors);
    let levels: BTreeSet<usize> = floors.values().copied().collect();
    let mut spots = BTreeMap::new();
    let mut y = GAP;
    for level in levels.iter().rev() {
        let on_floor = || shown.iter().filter(|r| floors[r.name.as_str()] == *level);
        let tallest = on_floor().map(|room| height(room)).max().unwrap_or(0);
        for room in on_floor() {
            let spot = Spot {
                x: GAP + columns[room.name.as_str()] * (BOX_WIDTH + GAP),
                y,
                height: height(room),
                floor_end: y + tallest,
            };
            spots.insert(room.name.as_str(), spot);
        }
        y += tallest + FLOOR_GAP;
    }
    let widest = columns.values().max().map_or(0, |column| column + 1);
    (spots, (GAP + widest * (BOX_WIDTH + GAP), y))
}

/// The floor of each crate: one above the highest that it needs.
fn floors<'a>(shown: &[&'a Crate]) -> BTreeMap<&'a str, usize> {
    let mut floors: BTreeMap<&str, usize> = shown.iter().map(|r| (r.name.as_str(), 0)).collect();
    // As often as there are crates: enough without circles, and an end with one.
    for _ in shown {
        for room in shown {
            let needed = room.needs.iter().filter_map(|to| floors.get(to.as_str()));
            if let Some(highest) = needed.max() {
                floors.insert(&room.name, (highest + 1).min(shown.len()));
            }
        }
    }
    floors
}

/// The column of each crate: the first in which its own floor and those that
/// arrows to it come down through are free. A crate right below its
/// user comes first, so that the longest way down is one column.
fn columns<'a>(shown: &[&'a Crate], floors: &BTreeMap<&'a str, usize>) -> BTreeMap<&'a str, usize> {
    let lane = |name: &str| {
        let above = shown.iter().filter(|r| direct(r, shown).contains(&name));
        let highest = above
            .map(|r| floors[r.name.as_str()].saturating_sub(1))
            .max();
        (floors[name], highest.unwrap_or(0).max(floors[name]))
    };
    let mut order: Vec<&str> = shown.iter().map(|r| r.name.as_str()).collect();
    order.sort_by_key(|name| {
        let (low, high) = lane(name);
        (high - low, usize::MAX - low, *name)
    });
    let mut taken: Vec<Vec<(usize, usize)>> = Vec::new();
    let mut columns = BTreeMap::new();
    for name in order {
        let (low, high) = lane(name);
        let is_free = |lanes: &Vec<(usize, usize)>| lanes.iter().all(|l| l.1 < low || high < l.0);
        let column = taken.iter().position(is_free).unwrap_or(taken.len());
        if column == taken.len() {
            taken.push(Vec::new());
        }
        taken[column].push((low, high));
        columns.insert(name, column);
    }
    columns
}

/// The crates that a crate needs, without those it needs by way of another too.
pub(super) fn direct<'a>(room: &'a Crate, shown: &[&'a Crate]) -> Vec<&'a str> {
    let needs = |name: &str| {
        let found = shown.iter().find(|r| r.name == name);
        found.map_or(&[][..], |r| r.needs.as_slice())
    };
    let reaches = |from: &str, to: &str| {
        let (mut seen, mut waiting) = (BTreeSet::new(), vec![from]);
        while let Some(next) = waiting.pop() {
            if seen.insert(next) {
                waiting.extend(needs(next).iter().map(String::as_str));
            }
        }
        seen.contains(to)
    };
    let drawn = room
        .needs
        .iter()
        .filter(|to| shown.iter().any(|r| r.name == **to));
    drawn
        .filter(|to| !room.needs.iter().any(|by| by != *to && reaches(by, to)))
        .map(String::as_str)
        .collect()
}
