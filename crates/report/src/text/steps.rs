//! What is to be done, first things first: the instructions of findings that fail
//! or are a question, each once.

use crate::result::{CaseResult, Finding, Severity};
use messages::Language;

/// One thing to do, and the findings that ask for it.
pub(crate) struct Step<'a> {
    /// In English, by which findings are gathered.
    pub(crate) instruction: &'a str,
    pub(crate) findings: Vec<&'a Finding>,
}

impl Step<'_> {
    /// The instruction in a language.
    pub(crate) fn instruction_in(&self, language: Language) -> String {
        let first = self.findings.first();
        first.map_or_else(String::new, |finding| finding.instruction_in(language))
    }
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
