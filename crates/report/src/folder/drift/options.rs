//! How drift is looked for.

use super::baseline::Baseline;
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
