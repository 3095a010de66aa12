//! The whole of a result.

use super::common::Verdict;
use super::consignment::Consignment;
use super::files::{OutputFile, files_of};
use super::findings::{Finding, NotJudged, not_judged};
use super::impression::ImpressionResult;
use super::jaw_relation::JawRelation;
use super::numbering::Before;
use super::protocol::{ProtocolResult, ScannerResult};
use super::times::Times;
use super::wash::Wash;
use check::CheckedCase;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Name and version of the contract.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Contract {
    /// Version 1.
    #[serde(rename = "archproof-result/1")]
    V1,
}

/// What came of a case: the whole of `result.json`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CaseResult {
    /// Name and version of the contract.
    pub schema: Contract,
    /// Version of the program that wrote it.
    pub program: String,
    /// The commit that the program was built from; `null` where the build does not state it.
    pub commit: Option<String>,
    /// Pseudonym of the case.
    pub case: String,
    /// What results are compared by, as given in the case file: codes by their keys.
    #[serde(default)]
    pub labels: BTreeMap<String, String>,
    /// When its scans were made, as the case file states it: a time in UTC (RFC 3339) or a
    /// date; `null` where it does not.
    #[serde(default)]
    pub scanned_at: Option<String>,
    /// Verdict on the whole case.
    pub verdict: Verdict,
    /// The limits that it was judged by.
    pub protocol: ProtocolResult,
    /// What the scanner of its scans adds to lengths.
    #[serde(default)]
    pub scanner: ScannerResult,
    /// Each impression scan.
    pub impressions: Vec<ImpressionResult>,
    /// Wash against first pass, for each jaw that has both.
    pub wash: Vec<Wash>,
    /// The relation of the jaws; `null` where the case says nothing of it.
    pub jaw_relation: Option<JawRelation>,
    /// The parcel; `null` where the case says nothing of it.
    pub consignment: Option<Consignment>,
    /// What fails or cannot be judged, most urgent first.
    pub findings: Vec<Finding>,
    /// What was not judged on the case as a whole, and why.
    pub not_judged: Vec<NotJudged>,
    /// The files that belong to the result, beside `result.json`.
    pub files: Vec<OutputFile>,
    /// When the case was checked and how long that took; `null` where nobody
    /// took the time. Nothing else differs between two results of the same files.
    pub times: Option<Times>,
}

impl CaseResult {
    /// The result of a checked case.
    #[must_use]
    pub fn of(checked: &CheckedCase) -> Self {
        let before = Before::each(checked);
        let impressions: Vec<ImpressionResult> = (before.iter().enumerate())
            .map(|(number, before)| ImpressionResult::of(checked, number, *before))
            .collect();
        let wash = Wash::each(checked, &before);
        let findings = checked.judged.findings.iter().enumerate();
        let findings: Vec<Finding> = findings
            .map(|(number, found)| Finding::of(checked, number, found, &before))
            .collect();
        Self {
            schema: Contract::V1,
            program: concat!("archproof ", env!("CARGO_PKG_VERSION")).to_owned(),
            commit: option_env!("ARCHPROOF_COMMIT").map(str::to_owned),
            case: checked.case.id.clone(),
            labels: checked.case.labels.clone(),
            scanned_at: checked.case.scanned_at.clone(),
            verdict: checked.judged.verdict.into(),
            protocol: (&checked.protocol).into(),
            scanner: ScannerResult::of(checked),
            files: files_of(&impressions, &wash, &findings),
            impressions,
            wash,
            jaw_relation: JawRelation::of(checked),
            consignment: Consignment::of(&checked.case),
            findings,
            not_judged: not_judged(&checked.judged.not_judged),
            times: None,
        }
    }
}
