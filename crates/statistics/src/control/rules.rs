//! When a chart says that something has changed: the run rules of the Western Electric
//! Statistical Quality Control Handbook (1956), and moving averages.

use super::{Ewma, EwmaChart, Process};
use std::fmt;
use std::str::FromStr;

/// A rule by which a chart gives a signal. The first four are the zone rules of the Western
/// Electric handbook (1956), as in the NIST/SEMATECH e-Handbook, 6.3.2.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rule {
    /// One value beyond three standard deviations.
    BeyondLimits,
    /// Two of three values in a row beyond two standard deviations on one side.
    TwoOfThree,
    /// Four of five values in a row beyond one standard deviation on one side.
    FourOfFive,
    /// Eight values in a row on one side of the centre.
    EightInARow,
    /// The exponentially weighted moving average ([`Ewma::DEFAULT`]) outside its limits.
    Ewma,
}

impl Rule {
    /// All rules, in the order in which they are said.
    pub const ALL: [Self; 5] = [
        Self::BeyondLimits,
        Self::TwoOfThree,
        Self::FourOfFive,
        Self::EightInARow,
        Self::Ewma,
    ];
    /// The zone rules of the Western Electric handbook.
    pub const WESTERN_ELECTRIC: [Self; 4] = [
        Self::BeyondLimits,
        Self::TwoOfThree,
        Self::FourOfFive,
        Self::EightInARow,
    ];
    /// One that finds large changes at once, and one that finds small ones soon: together
    /// four in ten of the false alarms of the four zone rules (one in about 240 points).
    pub const DEFAULT: [Self; 2] = [Self::BeyondLimits, Self::Ewma];

    /// Its name, by which it is switched on.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::BeyondLimits => "beyond-limits",
            Self::TwoOfThree => "two-of-three",
            Self::FourOfFive => "four-of-five",
            Self::EightInARow => "eight-in-a-row",
            Self::Ewma => "ewma",
        }
    }

    /// Points between two false alarms of this rule alone, on average, for normal values
    /// of a process that is known: 1 / 0.0027 and 2^8 - 1 by hand, the moving average by
    /// [`Ewma::FALSE_ALARM_EVERY`], the other two exact by the Markov chain of the last values.
    /// Published are figures of each with the first (Champ and Woodall 1987), to which the
    /// tests compare.
    #[must_use]
    pub const fn false_alarm_every(self) -> f64 {
        match self {
            Self::BeyondLimits => 370.4,
            Self::TwoOfThree => 510.7,
            Self::FourOfFive => 291.3,
            Self::EightInARow => 255.0,
            Self::Ewma => Ewma::FALSE_ALARM_EVERY,
        }
    }

    /// How many values in a row it looks at, how many of them must lie beyond how many
    /// standard deviations on one side; `None` for the moving average.
    const fn run(self) -> Option<(usize, usize, f64)> {
        match self {
            Self::BeyondLimits => Some((1, 1, 3.0)),
            Self::TwoOfThree => Some((3, 2, 2.0)),
            Self::FourOfFive => Some((5, 4, 1.0)),
            Self::EightInARow => Some((8, 8, 0.0)),
            Self::Ewma => None,
        }
    }
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

/// There is no rule of such a name.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("there is no rule '{0}'; give {names}", names = Rule::ALL.map(Rule::name).join(", "))]
pub struct UnknownRule(String);

impl FromStr for Rule {
    type Err = UnknownRule;

    fn from_str(name: &str) -> Result<Self, UnknownRule> {
        let found = Self::ALL.into_iter().find(|rule| rule.name() == name);
        found.ok_or_else(|| UnknownRule(name.to_owned()))
    }
}

/// Points at which one rule says that something has changed to one side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Signal {
    /// The rule.
    pub rule: Rule,
    /// The first point that it speaks of, counted from 0: where its run of values begins.
    pub from: usize,
    /// The point at which it spoke first.
    pub first: usize,
    /// The last point at which it speaks.
    pub last: usize,
    /// Whether the values lie above the centre.
    pub is_above: bool,
}

/// What these rules say of values in order of time.
#[must_use]
pub fn signals(values: &[f64], process: Process, rules: &[Rule]) -> Vec<Signal> {
    let off: Vec<f64> = values.iter().map(|&v| process.standardised(v)).collect();
    let averages = EwmaChart::of(values, process, Ewma::DEFAULT);
    let mut found: Vec<Signal> = Vec::new();
    for &rule in rules {
        let mut own: Vec<Signal> = Vec::new();
        for point in 0..values.len() {
            let said = match rule.run() {
                Some(run) => run_ends_at(&off, point, run),
                None => average_is_out(&averages, point),
            };
            let Some((from, is_above)) = said else {
                continue;
            };
            match own.last_mut() {
                Some(before) if goes_on(before, point, (from, is_above)) => before.last = point,
                _ => own.push(Signal {
                    rule,
                    from,
                    first: point,
                    last: point,
                    is_above,
                }),
            }
        }
        found.append(&mut own);
    }
    found.sort_by_key(|signal| (signal.first, signal.rule));
    found
}

/// Whether what a rule says at a point goes on with what it said before: without a break,
/// or of a moving average that has not crossed the centre since.
fn goes_on(before: &Signal, point: usize, (from, is_above): (usize, bool)) -> bool {
    let has_not_crossed = before.rule == Rule::Ewma && before.from == from;
    before.is_above == is_above && (before.last + 1 == point || has_not_crossed)
}

/// Whether the average at a point is outside: since when it lies on that side, and which.
fn average_is_out(averages: &EwmaChart, point: usize) -> Option<(usize, bool)> {
    let is_above = averages.averages[point] > averages.centre;
    averages
        .is_out(point)
        .then(|| (begins(averages, point, is_above), is_above))
}

/// Whether a run of a rule ends at a point: where it begins, and whether it lies above.
fn run_ends_at(
    off: &[f64],
    point: usize,
    (of, enough, beyond): (usize, usize, f64),
) -> Option<(usize, bool)> {
    let is_there = |sense: f64, at: usize| sense * off[at] > beyond;
    let sense = [1.0, -1.0]
        .into_iter()
        .find(|sense| is_there(*sense, point))?;
    let from = (point + 1).saturating_sub(of);
    let mut there = (from..=point).filter(|at| is_there(sense, *at));
    let first = there.next()?;
    (1 + there.count() >= enough).then_some((first, sense > 0.0))
}

/// Since when the average has lain on this side of the centre.
fn begins(averages: &EwmaChart, point: usize, is_above: bool) -> usize {
    let is_there = |at: &usize| (averages.averages[*at] > averages.centre) == is_above;
    (0..=point)
        .rev()
        .take_while(is_there)
        .last()
        .unwrap_or(point)
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLAIN: Process = Process {
        centre: 0.0,
        sigma: 1.0,
    };

    fn said(values: &[f64], rule: Rule) -> Vec<(usize, usize, usize, bool)> {
        let found = signals(values, PLAIN, &[rule]);
        found
            .iter()
            .map(|s| (s.from, s.first, s.last, s.is_above))
            .collect()
    }

    #[test]
    fn each_rule_speaks_at_its_run_and_not_before() {
        assert_eq!(
            said(&[2.9, 3.1, -3.1], Rule::BeyondLimits),
            [(1, 1, 1, true), (2, 2, 2, false)]
        );
        assert_eq!(said(&[2.1, 0.0, 2.1], Rule::TwoOfThree), [(0, 2, 2, true)]);
        assert_eq!(said(&[2.1, 0.0, 0.0, 2.1], Rule::TwoOfThree), []);
        assert_eq!(said(&[2.1, -2.1, 0.0], Rule::TwoOfThree), []);
        assert_eq!(
            said(&[1.1, 1.1, -5.0, 1.1, 1.1, 0.0], Rule::FourOfFive),
            [(0, 4, 4, true)]
        );
        assert_eq!(said(&[-0.1; 7], Rule::EightInARow), []);
        assert_eq!(said(&[-0.1; 10], Rule::EightInARow), [(0, 7, 9, false)]);
        assert_eq!(said(&[0.0; 20], Rule::EightInARow), []);
        // 0.2 * 2.962 standard deviations: as far as the first value.
        assert_eq!(said(&[0.0, 3.9], Rule::Ewma), [(1, 1, 1, true)]);
        // Within the limits at the third, but on the same side still.
        assert_eq!(said(&[3.9, 3.9, -2.0, 3.9], Rule::Ewma), [(0, 0, 3, true)]);
        assert_eq!(said(&[0.0; 30], Rule::Ewma), []);
    }

    #[test]
    fn a_rule_is_known_by_its_name_alone() {
        for rule in Rule::ALL {
            assert_eq!(rule.name().parse(), Ok(rule));
        }
        let why = "nine".parse::<Rule>().unwrap_err().to_string();
        assert!(
            why.contains("'nine'") && why.contains("eight-in-a-row"),
            "{why}"
        );
    }
}
