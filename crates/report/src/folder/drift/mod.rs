//! Is it getting worse? Figures and shares of many cases in order of time, beside a frozen
//! baseline where there is one.

mod baseline;
mod charted;
mod found;
mod frozen;
mod options;
mod series;
mod shares;
#[cfg(test)]
mod tests;

pub use baseline::{Baseline, BaselineError};
pub use charted::{Charted, Group, Limits};
pub use found::DriftSignal;
pub(super) use found::{Chart, Drift, TooFew};
pub use frozen::{BaselineFault, BaselineFigure, BaselineShare, MustBe};
pub use options::DriftOptions;
pub(super) use series::Series;
pub(super) use shares::ShareChart;
