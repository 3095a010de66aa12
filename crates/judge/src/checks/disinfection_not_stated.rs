//! `disinfection-not-stated`: what disinfected the set, or for how long, is not
//! stated with it.

use super::Check;
use super::on_case::{CaseSubject, given};
use crate::decision::{Bound, decide};
use crate::finding::{Finding, Severity};
use crate::judging::figure;
use crate::protocol::LimitKey;

pub(super) fn judge(subject: &CaseSubject<'_>) -> Vec<Finding> {
    let Some(consignment) = &subject.case.consignment else {
        return Vec::new();
    };
    let agent_missing = !given(consignment.disinfectant.as_ref());
    let instruction = match (agent_missing, consignment.disinfection_min) {
        (true, Some(_)) => "State what the set was disinfected with (disinfectant).",
        (true, None) => {
            "State what the set was disinfected with, and for how long (disinfectant, \
             disinfection_min). If it was not yet, clean and disinfect it before it is handled."
        }
        (false, _) => "State for how many minutes the set was disinfected (disinfection_min).",
    };
    let mut findings: Vec<Finding> = subject
        .required(
            LimitKey::DisinfectionRequired,
            agent_missing || consignment.disinfection_min.is_none(),
            Check::DisinfectionNotStated,
            instruction,
        )
        .into_iter()
        .collect();
    if let Some(minutes) = consignment.disinfection_min {
        for (key, bound) in [
            (
                LimitKey::DisinfectionLeast,
                Bound::AtLeast as fn(f64) -> Bound,
            ),
            (LimitKey::DisinfectionMost, Bound::AtMost),
        ] {
            let limit = subject.protocol.limit(key);
            let conformity = decide(minutes, 0.0, bound(limit.value));
            if let Some(severity) = Severity::of(conformity, limit.level) {
                findings.push(Finding {
                    figure: Some(figure(minutes, None, limit)),
                    ..subject.finding(
                        Check::DisinfectionNotStated,
                        severity,
                        "The time of disinfection is unusual: compare it with the instructions of \
                         the makers of disinfectant and elastomer, which take precedence.",
                    )
                });
            }
        }
    }
    findings
}
