//! `prescription-missing`: no written prescription goes with the parcel.

use super::Check;
use super::on_case::CaseSubject;
use crate::finding::Finding;
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(consignment) = &subject.case.consignment else {
        return Vec::new();
    };
    let instruction = match consignment.prescription {
        Some(true) => return Vec::new(),
        Some(false) => "Enclose the written prescription.",
        None => {
            "Say whether the written prescription is enclosed (prescription = true), and enclose it."
        }
    };
    subject
        .required(
            LimitKey::PrescriptionRequired,
            true,
            Check::PrescriptionMissing,
            instruction,
        )
        .into_iter()
        .collect()
}
