//! `parcel-incomplete`: something that must be in the parcel is not.

use super::Check;
use super::on_case::{CaseSubject, given};
use crate::finding::{Finding, Severity};
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(consignment) = &subject.case.consignment else {
        return Vec::new();
    };
    let missing = consignment
        .expected
        .iter()
        .filter(|part| !consignment.is_packed(part))
        .map(|part| {
            format!(
                "Not packed: {}. Add it, or take it off the list.",
                part.trim()
            )
        });
    let unlisted = consignment.expected.is_empty().then(|| {
        "No list says what must be in the parcel: give it as `expected` under [consignment]."
            .to_owned()
    });
    let mut findings: Vec<Finding> = missing
        .chain(unlisted)
        .map(|instruction| {
            subject.finding(Check::ParcelIncomplete, Severity::Borderline, instruction)
        })
        .collect();
    let no_record =
        subject.case.jaw_relation.is_none() && !given(consignment.no_jaw_relation_because.as_ref());
    findings.extend(subject.required(
        LimitKey::RecordRequired,
        no_record,
        Check::ParcelIncomplete,
        "No jaw relation is in the case: add the record, or say why there is none \
         (no_jaw_relation_because under [consignment]).",
    ));
    let arches = |case: &crate::Case| {
        let mut declared: Vec<_> = case.impressions.iter().map(|i| i.declared).collect();
        declared.sort_by_key(|arch| arch.map(|arch| arch as u8));
        declared.dedup();
        declared.len()
    };
    let one_arch = arches(subject.case) < 2 && !given(consignment.one_arch_because.as_ref());
    findings.extend(subject.required(
        LimitKey::BothArchesRequired,
        one_arch,
        Check::ParcelIncomplete,
        "Only one jaw is in the case: add the other's impression with its stage, or say why there is \
         none (one_arch_because under [consignment]).",
    ));
    findings
}
