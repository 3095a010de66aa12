//! `wash-missing`: a jaw is still before its wash although the set is to be worked from.

use super::shared::case::required;
use crate::case::Stage;
use crate::check::Check;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;
use measure::Arch;
use messages::message;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let impressions = &subject.case.impressions;
    let some_jaw_is_done = impressions.iter().any(|i| i.stage != Stage::FirstPass);
    let is_to_be_sent = subject.case.consignment.is_some();
    impressions
        .iter()
        .enumerate()
        .filter(|(_, input)| input.stage == Stage::FirstPass)
        .filter(|(number, _)| !subject.case.is_superseded(*number))
        .filter_map(|(number, input)| {
            let jaw = match input.declared {
                Some(Arch::Maxillary) => "upper",
                Some(Arch::Mandibular) => "lower",
                None => "other",
            };
            let finding = required(
                subject,
                LimitKey::WashRequired,
                some_jaw_is_done || is_to_be_sent,
                Check::WashMissing,
                message!("wash-missing", jaw = jaw),
            )?;
            Some(Finding {
                impression: Some(number),
                arch: input.declared,
                ..finding
            })
        })
        .collect()
}
