//! A case as a whole as its checks see it.

use super::Check;
use crate::case::Case;
use crate::finding::{Finding, Severity};
use crate::protocol::{LimitKey, Protocol};
use measure::NotMeasured;
use measure::jaw_relation::JawRelation;

/// A case with the limits to judge it by.
pub(crate) struct CaseSubject<'a> {
    pub(crate) case: &'a Case,
    /// What the scan of the record gave; `None` where there is none.
    pub(crate) relation: Option<&'a Result<JawRelation, NotMeasured>>,
    pub(crate) protocol: &'a Protocol,
}

impl CaseSubject<'_> {
    pub(super) fn finding(
        &self,
        check: Check,
        severity: Severity,
        instruction: impl Into<String>,
    ) -> Finding {
        Finding::on_case(check, severity, instruction)
    }

    /// A finding on something that is missing, where the protocol asks for it.
    pub(super) fn required(
        &self,
        key: LimitKey,
        is_missing: bool,
        check: Check,
        instruction: &str,
    ) -> Option<Finding> {
        let limit = self.protocol.limit(key);
        (is_missing && limit.value > 0.0)
            .then(|| self.finding(check, limit.level.severity(), instruction))
    }
}

/// Whether something was written at all.
pub(super) fn given(text: Option<&String>) -> bool {
    text.is_some_and(|text| !text.trim().is_empty())
}
