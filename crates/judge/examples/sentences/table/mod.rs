//! Findings of every check, by jaw, stage and cause. Hand-built measurements are spoiled in
//! one way each; a protocol with every level raised to `fail` and lowered to `note` brings
//! out the other sentences.

mod border;
mod cases;
mod impressions;
mod in_transit;
mod landmarks;
mod trays;

use fixtures::impression::{evidence, one, scanned};
use judge::{Finding, LimitKey, Protocol, Stage, judge_case};
use measure::Arch;

/// Jaw and stage of the impressions, with what was found on them.
pub type Row = (String, Vec<Finding>);

const STAGES: [(Stage, &str); 3] = [
    (Stage::FirstPass, "before the wash"),
    (Stage::Wash, "wash"),
    (Stage::Single, "one-step"),
];

/// What is found on everything that is spoiled.
pub fn table() -> Vec<Row> {
    protocols().iter().flat_map(by_protocol).collect()
}

fn by_protocol(protocol: &Protocol) -> Vec<Row> {
    let mut rows = Vec::new();
    for (arch, jaw) in [(Arch::Maxillary, "upper"), (Arch::Mandibular, "lower")] {
        for (stage, stage_word) in STAGES {
            let place = format!("{jaw} {stage_word}");
            let case = one(Some(arch), stage);
            for measurement in impressions::spoiled(arch) {
                let scanned = scanned(&measurement);
                let judged = judge_case(&case, &[evidence(&scanned, 0)], None, protocol);
                rows.push((place.clone(), judged.findings));
            }
            let of_trays = trays::trays(arch, stage, protocol).into_iter();
            rows.extend(of_trays.map(|findings| (place.clone(), findings)));
        }
    }
    let others = [
        cases::questions(protocol),
        cases::cases(protocol),
        in_transit::in_transit(protocol),
    ];
    let of_any = |findings| ("any".to_owned(), findings);
    rows.extend(others.into_iter().flatten().map(of_any));
    rows
}

/// The default, and the default with every level at `fail` and at `note`.
fn protocols() -> Vec<Protocol> {
    let at = |level: &str| {
        let limits: String = LimitKey::ALL
            .iter()
            .map(|key| format!("{} = {{ level = \"{level}\" }}\n", key.name()))
            .collect();
        Protocol::from_text(&format!("[limits]\n{limits}"))
    };
    [Some(Protocol::default()), at("fail").ok(), at("note").ok()]
        .into_iter()
        .flatten()
        .collect()
}
