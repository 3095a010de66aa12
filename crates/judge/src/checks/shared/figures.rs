//! What the checks of a single figure share.

use crate::check::Check;
use crate::decision::Bound;
use crate::finding::{Figure, Finding};
use crate::protocol::LimitKey;
use crate::subject::{CaseSubject, ScanSubject, Subject};
use messages::Message;

/// One figure against one limit.
pub(crate) struct FigureCheck {
    pub(crate) check: Check,
    pub(crate) key: LimitKey,
    /// Which way the limit bounds the figure.
    pub(crate) bound: fn(f64) -> Bound,
    /// What is to be done unless the limit is clearly met.
    pub(crate) instruction: fn() -> Message,
}

impl FigureCheck {
    /// The finding on a figure of an impression, if any. Figure and expanded
    /// uncertainty are in the unit of the limit.
    pub(crate) fn findings(
        &self,
        subject: &Subject<'_>,
        measured: f64,
        uncertainty: Option<f64>,
    ) -> Vec<Finding> {
        Figure::against(subject.limit(self.key), self.bound, measured, uncertainty)
            .map(|(severity, figure)| {
                subject
                    .finding(self.check, severity, (self.instruction)())
                    .with(figure)
            })
            .into_iter()
            .collect()
    }

    /// The finding on a figure that is stated beside a scan, if any.
    pub(crate) fn findings_on_scan(
        &self,
        subject: &ScanSubject<'_>,
        stated: f64,
        uncertainty: Option<f64>,
    ) -> Vec<Finding> {
        let limit = subject.protocol.limit(self.key);
        Figure::against(limit, self.bound, stated, uncertainty)
            .map(|(severity, figure)| {
                subject
                    .finding(self.check, severity, (self.instruction)())
                    .with(figure)
            })
            .into_iter()
            .collect()
    }

    /// The finding on a figure of the case as a whole, if any.
    pub(crate) fn findings_on_case(
        &self,
        subject: &CaseSubject<'_>,
        measured: f64,
        uncertainty: Option<f64>,
    ) -> Vec<Finding> {
        let limit = subject.protocol.limit(self.key);
        Figure::against(limit, self.bound, measured, uncertainty)
            .map(|(severity, figure)| {
                Finding::on_case(self.check, severity, (self.instruction)()).with(figure)
            })
            .into_iter()
            .collect()
    }
}
