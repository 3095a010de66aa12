//! Control charts of values in order of time: individuals with moving ranges,
//! exponentially weighted moving averages, run rules, and shares.

mod ewma;
mod individuals;
mod rules;
mod shares;
#[cfg(test)]
mod simulated;

pub use ewma::{Ewma, EwmaChart};
pub use individuals::{D2, D4, IndividualsChart};
pub use rules::{Rule, Signal, signals};
pub use shares::{ShareLimits, share_limits};

/// What a process does while nothing disturbs it: normal values about a centre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Process {
    /// Mean of the values, in their unit.
    pub centre: f64,
    /// Standard deviation of the values, in their unit.
    pub sigma: f64,
}

impl Process {
    /// How many standard deviations above the centre a value lies; a value on the centre of
    /// a process that does not vary lies at 0, any other infinitely far.
    #[must_use]
    pub fn standardised(&self, value: f64) -> f64 {
        let off = value - self.centre;
        if off == 0.0 { 0.0 } else { off / self.sigma }
    }
}
