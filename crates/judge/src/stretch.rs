//! Stretches of border: which run of stations a finding speaks of.

use crate::decision::Conformity;
use measure::Border;

/// Consecutive stations of a border.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stretch {
    /// Number of its first station.
    pub from: usize,
    /// Number of its last station; less than `from` where it lies across the
    /// first station of the border.
    pub to: usize,
    /// Number of the station where it is worst.
    pub worst: usize,
}

impl Stretch {
    /// Whether a station belongs to it.
    #[must_use]
    pub fn holds(&self, station: usize) -> bool {
        within(self.from, self.to, station)
    }
}

/// Whether a station lies from one to another, going round.
pub(crate) fn within(from: usize, to: usize, station: usize) -> bool {
    if from <= to {
        (from..=to).contains(&station)
    } else {
        station >= from || station <= to
    }
}

/// What a station that does not clearly meet a limit says about it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Doubt {
    pub conformity: Conformity,
    /// By how much the limit is met; below 0 where it is missed.
    pub margin: f64,
}

/// A stretch and what its stations together say about the limit.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Doubtful {
    pub stretch: Stretch,
    pub conformity: Conformity,
}

/// Stations that conform, or were not measured, interrupt a stretch only where
/// there are more than this of them on end, mm.
const BRIDGED_MM: f64 = 1.5;

/// Stretches, at least `least_mm` long, of stations that `doubt` doubts. A
/// stretch clearly misses the limit where that much of it clearly does.
pub(crate) fn doubtful(
    border: &Border,
    least_mm: f64,
    doubt: impl Fn(usize) -> Option<Doubt>,
) -> Vec<Doubtful> {
    let doubts: Vec<(usize, Doubt)> = (0..border.stations.len())
        .filter_map(|i| Some((i, doubt(i)?)))
        .filter(|(_, doubt)| doubt.conformity != Conformity::Conforming)
        .collect();
    let step_mm = border.length_mm / border.stations.len().max(1) as f64;
    let joined = |a: &(usize, Doubt), b: &(usize, Doubt)| {
        border.stations[a.0].part == border.stations[b.0].part
            && apart_mm(border, a.0, b.0) <= BRIDGED_MM + step_mm
    };
    let mut runs: Vec<Vec<(usize, Doubt)>> = doubts.chunk_by(joined).map(<[_]>::to_vec).collect();
    join_round(&mut runs, joined);
    runs.iter()
        .filter_map(|run| {
            let (from, to) = (run.first()?.0, run.last()?.0);
            let worst = run
                .iter()
                .min_by(|a, b| a.1.margin.total_cmp(&b.1.margin))?
                .0;
            let sure = run
                .iter()
                .filter(|(_, doubt)| doubt.conformity == Conformity::NotConforming)
                .count();
            let surely_missed = sure as f64 * step_mm >= least_mm;
            (apart_mm(border, from, to) + step_mm >= least_mm).then_some(Doubtful {
                stretch: Stretch { from, to, worst },
                conformity: if surely_missed {
                    Conformity::NotConforming
                } else {
                    Conformity::Borderline
                },
            })
        })
        .collect()
}

/// The last run goes on in the first where the border closes.
fn join_round<T>(runs: &mut Vec<Vec<T>>, joined: impl Fn(&T, &T) -> bool) {
    if runs.len() < 2 {
        return;
    }
    let last = runs.last().and_then(|run| run.last());
    let first = runs.first().and_then(|run| run.first());
    if let Some((last, first)) = last.zip(first)
        && joined(last, first)
        && let Some(mut run) = runs.pop()
    {
        run.append(&mut runs[0]);
        runs[0] = run;
    }
}

/// Length of border from one station on to another, mm.
pub(crate) fn apart_mm(border: &Border, from: usize, to: usize) -> f64 {
    let share = border.stations[to].s - border.stations[from].s;
    share.rem_euclid(1.0) * border.length_mm
}
