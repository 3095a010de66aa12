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
use messages::message;

const SHORT: FigureCheck = FigureCheck {
    check: Check::DisinfectionNotStated,
    key: LimitKey::DisinfectionLeast,
    bound: Bound::AtLeast,
    instruction: || message!("disinfection-time-unusual"),
};

const LONG: FigureCheck = FigureCheck {
    key: LimitKey::DisinfectionMost,
    bound: Bound::AtMost,
    ..SHORT
};

pub(super) fn judge(subject: &CaseSubject<'_>, consignment: &Consignment) -> Vec<Finding> {
    let agent_missing = !given(consignment.disinfectant.as_ref());
    let instruction = match (agent_missing, consignment.disinfection_min) {
        (true, Some(_)) => message!("disinfectant-not-stated"),
        (true, None) => message!("disinfection-not-stated"),
        (false, _) => message!("disinfection-time-not-stated"),
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
