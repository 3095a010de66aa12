//! `prescription-missing`: no written prescription goes with the parcel.

use super::shared::case::required;
use crate::case::Consignment;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use messages::message;

pub(super) fn judge(subject: &CaseSubject<'_>, consignment: &Consignment) -> Vec<Finding> {
    let instruction = match consignment.prescription {
        Some(true) => return Vec::new(),
        Some(false) => message!("prescription-not-enclosed"),
        None => message!("prescription-not-stated"),
    };
    required(
        subject,
        LimitKey::PrescriptionRequired,
        true,
        Check::PrescriptionMissing,
        instruction,
    )
    .into_iter()
    .collect()
}
