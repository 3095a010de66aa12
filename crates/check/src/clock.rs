//! How long each step of a check takes.

use crate::road::Step;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant, SystemTime};

/// Runs while a case is checked, and hears of each step as it begins.
#[derive(Debug)]
pub struct Clock {
    started: SystemTime,
    begun: Instant,
    steps: Mutex<Vec<(Step, Duration)>>,
}

/// When a case was checked, and how long each step took.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timing {
    /// When checking began.
    pub started: SystemTime,
    /// Each step and its duration, in the order in which they began.
    pub steps: Vec<(Step, Duration)>,
}

impl Clock {
    /// Starts the clock.
    #[must_use]
    pub fn start() -> Self {
        Self {
            started: SystemTime::now(),
            begun: Instant::now(),
            steps: Mutex::default(),
        }
    }

    /// A step begins now, or goes on; whether it begins.
    pub fn begin(&self, step: Step) -> bool {
        let mut steps = self.steps.lock().unwrap_or_else(PoisonError::into_inner);
        let begins = steps.iter().all(|(begun, _)| *begun != step);
        if begins {
            steps.push((step, self.begun.elapsed()));
        }
        begins
    }

    /// Stops the clock.
    #[must_use]
    pub fn stop(self) -> Timing {
        let end = self.begun.elapsed();
        let steps = self.steps.into_inner();
        Timing {
            started: self.started,
            steps: durations(&steps.unwrap_or_else(PoisonError::into_inner), end),
        }
    }
}

/// Duration of each step from when it began, and when the last one ended.
/// Impressions are measured side by side: a stage of one of them lasts until
/// the next of the same impression or of the whole case begins, or the
/// impression is measured.
fn durations(steps: &[(Step, Duration)], end: Duration) -> Vec<(Step, Duration)> {
    let impression = |step: &Step| match step {
        Step::Measuring { impression, .. } | Step::Measured { impression } => Some(*impression),
        _ => None,
    };
    let each = steps.iter().enumerate();
    let lasting = each.filter(|(_, (step, _))| !matches!(step, Step::Measured { .. }));
    lasting
        .map(|(number, (step, from))| {
            let own = impression(step);
            let next = steps[number + 1..].iter().find(|(next, _)| {
                own.is_none() || impression(next).is_none() || impression(next) == own
            });
            let until = next.map_or(end, |(_, from)| *from);
            (*step, until.saturating_sub(*from))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use measure::Stage;

    #[test]
    fn a_step_that_goes_on_is_timed_once() {
        let clock = Clock::start();
        let named = [Step::Reading, Step::Reading, Step::Judging, Step::Judging];
        assert_eq!(
            named.map(|step| clock.begin(step)),
            [true, false, true, false]
        );
        let steps: Vec<Step> = clock.stop().steps.iter().map(|(step, _)| *step).collect();
        assert_eq!(steps, [Step::Reading, Step::Judging]);
    }

    #[test]
    fn stages_of_impressions_side_by_side_are_timed_apart() {
        let measuring = |impression, stage| Step::Measuring {
            impression,
            of: 2,
            stage,
        };
        let at = Duration::from_secs;
        let steps = [
            (Step::Reading, at(0)),
            (measuring(0, Stage::Frame), at(2)),
            (measuring(1, Stage::Frame), at(3)),
            (measuring(0, Stage::Cover), at(7)),
            (Step::Measured { impression: 0 }, at(8)),
            (Step::Judging, at(9)),
        ];
        let lasted: Vec<u64> = (durations(&steps, at(10)).iter())
            .map(|(_, duration)| duration.as_secs())
            .collect();
        assert_eq!(lasted, [2, 5, 6, 1, 1]);
    }
}
