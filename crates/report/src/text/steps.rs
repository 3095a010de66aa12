//! What is to be done, first things first: the instructions of findings that fail
//! or are a question, each once.

use crate::result::{CaseResult, Finding, Severity};

/// One thing to do, and the findings that ask for it.
pub(crate) struct Step<'a> {
    pub(crate) instruction: &'a str,
    pub(crate) findings: Vec<&'a Finding>,
}

/// What failing and undecided findings ask for, most urgent first.
pub(crate) fn steps(result: &CaseResult) -> Vec<Step<'_>> {
    let mut steps: Vec<Step<'_>> = Vec::new();
    for finding in pressing(result) {
        match steps
            .iter_mut()
            .find(|step| step.instruction == finding.instruction)
        {
            Some(step) => step.findings.push(finding),
            None => steps.push(Step {
                instruction: &finding.instruction,
                findings: vec![finding],
            }),
        }
    }
    steps
}

/// Findings that fail or are a question, most urgent first.
pub(crate) fn pressing(result: &CaseResult) -> impl Iterator<Item = &Finding> {
    let findings = result.findings.iter();
    findings.filter(|finding| finding.severity != Severity::Note)
}
