//! The share that fails in order of time, counted in groups of days.

use super::baseline::Baseline;
use super::charted::{Group, Limits};
use super::series::OfGroup;
use messages::{Message, message};
use statistics::control::{ShareLimits, share_limits};

/// Impressions that fail, and that do not, which must be expected in a group of days, so
/// that limits by the normal distribution hold.
const LEAST_EXPECTED: f64 = 5.0;
/// Groups of days on a chart, at most.
const MOST: u64 = 60;
/// Groups of days without which there is nothing to compare.
const LEAST: usize = 5;

/// Days that are counted together.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::folder) struct Days {
    pub(in crate::folder) from: String,
    pub(in crate::folder) to: String,
    pub(in crate::folder) part: u64,
    pub(in crate::folder) of: u64,
    pub(in crate::folder) limits: ShareLimits,
}

impl Days {
    pub(in crate::folder) fn share(&self) -> f64 {
        self.part as f64 / self.of as f64
    }

    pub(in crate::folder) fn is_out(&self) -> bool {
        self.share() < self.limits.lower || self.share() > self.limits.upper
    }
}

/// The p chart of a group.
#[derive(Debug)]
pub(in crate::folder) struct ShareChart {
    pub(in crate::folder) group: Group,
    /// Share of the process, 0 to 1.
    pub(in crate::folder) share: f64,
    pub(in crate::folder) limits: Limits,
    pub(in crate::folder) days: Vec<Days>,
}

/// What to look at when the share that fails rises or falls.
pub(super) fn look_at(is_above: bool) -> Message {
    if is_above {
        message!("look-share-above")
    } else {
        message!("look-share-below")
    }
}

impl ShareChart {
    /// `None` where nothing or everything fails, or too few days are counted.
    pub(super) fn of(
        group: &Group,
        of_group: &OfGroup,
        baseline: Option<&Baseline>,
    ) -> Option<Self> {
        let frozen = baseline.and_then(|baseline| baseline.share_of(group));
        let [part, of] = frozen.unwrap_or_else(|| of_group.counted());
        let share = part as f64 / of as f64;
        let days = in_groups(of_group, share)?;
        (days.len() >= LEAST).then(|| Self {
            group: group.clone(),
            share,
            limits: if frozen.is_some() {
                Limits::Baseline
            } else {
                Limits::Own
            },
            days,
        })
    }
}

/// Days joined until enough is expected of each kind; what is left over at the end joins
/// the last.
fn in_groups(of_group: &OfGroup, share: f64) -> Option<Vec<Days>> {
    let rarer = share.min(1.0 - share);
    let [_, all] = of_group.counted();
    if rarer <= 0.0 || !rarer.is_finite() {
        return None;
    }
    let least = (LEAST_EXPECTED / rarer).max((all / MOST) as f64);
    let mut groups: Vec<(String, String, [u64; 2])> = Vec::new();
    for (day, [part, of]) in &of_group.days {
        match groups.last_mut() {
            Some((_, to, counted)) if (counted[1] as f64) < least => {
                to.clone_from(day);
                *counted = [counted[0] + part, counted[1] + of];
            }
            _ => groups.push((day.clone(), day.clone(), [*part, *of])),
        }
    }
    if groups.len() > 1 && groups.last().is_some_and(|g| (g.2[1] as f64) < least) {
        let (_, end, rest) = groups.pop()?;
        let (_, to, counted) = groups.last_mut()?;
        *to = end;
        *counted = [counted[0] + rest[0], counted[1] + rest[1]];
    }
    let days = groups.into_iter().map(|(from, to, [part, of])| {
        Some(Days {
            from,
            to,
            part,
            of,
            limits: share_limits(share, of)?,
        })
    });
    days.collect()
}
