//! What the checks on a case as a whole share.

use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use messages::Message;

/// A finding on something that is missing, where the protocol asks for it.
pub(crate) fn required(
    subject: &CaseSubject<'_>,
    key: LimitKey,
    is_missing: bool,
    check: Check,
    instruction: Message,
) -> Option<Finding> {
    let limit = subject.protocol.limit(key);
    (is_missing && limit.value > 0.0)
        .then(|| Finding::on_case(check, limit.level.severity(), instruction))
}

/// Whether something was written at all.
pub(crate) fn given(text: Option<&String>) -> bool {
    text.is_some_and(|text| !text.trim().is_empty())
}
