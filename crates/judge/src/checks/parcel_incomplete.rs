//! `parcel-incomplete`: something that must be in the parcel is not.

use super::shared::case::{given, required};
use crate::case::{Case, Consignment, JawRelation};
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::severity::Severity;
use crate::subject::CaseSubject;
use messages::message;

pub(super) fn judge(subject: &CaseSubject<'_>, consignment: &Consignment) -> Vec<Finding> {
    let missing = consignment
        .expected
        .iter()
        .filter(|part| !consignment.is_packed(part))
        .map(|part| message!("not-packed", part = part.trim()));
    let unlisted = (consignment.expected.is_empty()).then(|| message!("parcel-no-list"));
    let mut findings: Vec<Finding> = missing
        .chain(unlisted)
        .map(|instruction| {
            Finding::on_case(Check::ParcelIncomplete, Severity::Borderline, instruction)
        })
        .collect();
    let record = subject.case.jaw_relation.as_ref();
    let no_record = !record.is_some_and(JawRelation::is_given)
        && !given(consignment.no_jaw_relation_because.as_ref());
    findings.extend(required(
        subject,
        LimitKey::RecordRequired,
        no_record,
        Check::ParcelIncomplete,
        message!("parcel-no-record"),
    ));
    let arches = |case: &Case| {
        let mut declared: Vec<_> = case.impressions.iter().map(|i| i.declared).collect();
        declared.sort_by_key(|arch| arch.map(|arch| arch as u8));
        declared.dedup();
        declared.len()
    };
    let one_arch = arches(subject.case) < 2 && !given(consignment.one_arch_because.as_ref());
    findings.extend(required(
        subject,
        LimitKey::BothArchesRequired,
        one_arch,
        Check::ParcelIncomplete,
        message!("parcel-one-jaw"),
    ));
    findings
}
