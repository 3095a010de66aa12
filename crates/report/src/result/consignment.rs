//! The parcel, in a result.

use judge::Case;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What the case says of the parcel. Free text of the case file that might name
/// a person is not kept: only whether it was given.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Consignment {
    /// Whether a written prescription is enclosed; `null` where nothing was said.
    pub prescription: Option<bool>,
    /// Whether the disinfectant is stated.
    pub disinfectant_stated: bool,
    /// Time of disinfection, minutes, as given.
    pub disinfection_min: Option<f64>,
    /// Whether a reason for sending no jaw-relation record is given.
    pub no_jaw_relation_reason_given: bool,
    /// Whether a reason for sending one jaw is given.
    pub one_arch_reason_given: bool,
    /// What must be in the parcel, and whether it has been packed.
    pub parts: Vec<ParcelPart>,
}

/// One thing that must be in the parcel.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct ParcelPart {
    /// What it is.
    pub name: String,
    /// Whether it has been packed.
    pub packed: bool,
}

impl Consignment {
    /// What the case says of the parcel.
    pub(super) fn of(case: &Case) -> Option<Self> {
        let said = case.consignment.as_ref()?;
        let is_given = |text: &Option<String>| text.as_ref().is_some_and(|t| !t.trim().is_empty());
        Some(Self {
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
}
