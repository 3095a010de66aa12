//! The parcel in the words of the contract.

use crate::result::{Consignment, ParcelPart};
use judge::Case;

/// What the case says of the parcel.
pub(super) fn consignment(case: &Case) -> Option<Consignment> {
    let said = case.consignment.as_ref()?;
    let is_given = |text: &Option<String>| text.as_ref().is_some_and(|t| !t.trim().is_empty());
    Some(Consignment {
        prescription: said.prescription,
        disinfectant_stated: is_given(&said.disinfectant),
        disinfection_min: said.disinfection_min,
        no_jaw_relation_reason_given: is_given(&said.no_jaw_relation_because),
        one_arch_reason_given: is_given(&said.one_arch_because),
        parts: (said.expected.iter())
            .map(|part| ParcelPart {
                name: part.trim().to_owned(),
                packed: said.is_packed(part),
            })
            .collect(),
    })
}
