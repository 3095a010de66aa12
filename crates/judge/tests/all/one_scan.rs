//! One maxillary impression, judged.

use fixtures::impression::{evidence, one, scanned};
use judge::{Check, JudgedCase, Protocol, Severity, Stage, judge_case};
use measure::{Arch, Measurement};

pub(crate) fn judged(measurement: &Measurement) -> JudgedCase {
    judged_by(measurement, &Protocol::default())
}

pub(crate) fn judged_by(measurement: &Measurement, protocol: &Protocol) -> JudgedCase {
    let case = one(Some(Arch::Maxillary), Stage::Single);
    judge_case(&case, &[evidence(&scanned(measurement), 0)], None, protocol)
}

pub(crate) fn codes(judged: &JudgedCase) -> Vec<(Severity, Check)> {
    judged
        .findings
        .iter()
        .map(|f| (f.severity, f.check))
        .collect()
}
