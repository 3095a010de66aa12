//! `disinfection-not-stated`: what disinfected the set, or for how long, is not
//! stated with it.

use super::shared::case::{given, required};
use super::shared::figures::FigureCheck;
use crate::case::Consignment;
use crate::check::Check;
use crate::decision::Bound;
use crate::finding::Finding;
use crate::protocol::LimitKey;
use crate::subject::CaseSubject;

const SHORT: FigureCheck = FigureCheck {
    check: Check::DisinfectionNotStated,
    key: LimitKey::DisinfectionLeast,
    bound: Bound::AtLeast,
    instruction: "The time of disinfection is unusual: compare it with the instructions of the \
                  makers of disinfectant and elastomer, which take precedence.",
};

const LONG: FigureCheck = FigureCheck {
    key: LimitKey::DisinfectionMost,
    bound: Bound::AtMost,
    ..SHORT
};

pub(super) fn judge(subject: &CaseSubject<'_>, consignment: &Consignment) -> Vec<Finding> {
    let agent_missing = !given(consignment.disinfectant.as_ref());
    let instruction = match (agent_missing, consignment.disinfection_min) {
        (true, Some(_)) => "State what the set was disinfected with (disinfectant).",
        (true, None) => {
            "State what the set was disinfected with, and for how long (disinfectant, \
             disinfection_min). If it was not yet, clean and disinfect it before it is handled."
        }
        (false, _) => "State for how many minutes the set was disinfected (disinfection_min).",
    };
    let not_stated = required(
        subject,
        LimitKey::DisinfectionRequired,
        agent_missing || consignment.disinfection_min.is_none(),
        Check::DisinfectionNotStated,
        instruction,
    );
    let unusual = consignment
        .disinfection_min
        .map(|minutes| [SHORT, LONG].map(|check| check.findings_on_case(subject, minutes, None)));
    not_stated
        .into_iter()
        .chain(unusual.into_iter().flatten().flatten())
        .collect()
}
