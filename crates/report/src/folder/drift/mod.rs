//! Is it getting worse? Figures and shares of many cases in order of time, beside a frozen
//! baseline where there is one.

mod baseline;
mod charted;
mod found;
mod series;
mod shares;
#[cfg(test)]
mod tests;

pub use baseline::{Baseline, BaselineError, BaselineFault, BaselineFigure, BaselineShare};
pub use charted::{Charted, Group};
pub use found::DriftSignal;
pub(super) use found::{Chart, Drift, Limits};
pub(super) use series::Series;
pub(super) use shares::ShareChart;

use statistics::control::Rule;

/// How drift is looked for.
#[derive(Debug, Clone, PartialEq)]
pub struct DriftOptions {
    /// Frozen limits; without them, charts are judged by their own points.
    pub baseline: Option<Baseline>,
    /// A label by which charts are kept apart, beside jaw and stage.
    pub by: Option<String>,
    /// Rules by which the charts of figures speak.
    pub rules: Vec<Rule>,
}

impl Default for DriftOptions {
    fn default() -> Self {
        Self {
            baseline: None,
            by: None,
            rules: Rule::DEFAULT.to_vec(),
        }
    }
}
