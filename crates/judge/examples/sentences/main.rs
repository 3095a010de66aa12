//! Prints the sentence of every check, by jaw, stage and cause, to be read from end to end
//! for sense. Hand-built measurements are spoiled in one way each; a protocol with every
//! level raised to `fail` and lowered to `note` brings out the other sentences.
//!
//! `cargo run -p archproof-judge --example sentences`

#![allow(clippy::print_stdout, reason = "it prints what is to be read")]

mod cases;
mod impressions;
mod in_transit;

use cases::{cases, questions};
use fixtures::impression::{evidence, one, scanned};
use impressions::spoiled;
use in_transit::in_transit;
use judge::{Case, Check, Finding, LimitKey, Protocol, Stage, judge_case};
use measure::{Arch, Scanned};
use std::collections::BTreeMap;

/// Check, cause, jaw and stage, with each sentence that they give.
type Table = BTreeMap<(Check, String, String), Vec<String>>;

const STAGES: [(Stage, &str); 3] = [
    (Stage::FirstPass, "before the wash"),
    (Stage::Wash, "wash"),
    (Stage::Single, "one-step"),
];

fn main() {
    let mut table = Table::new();
    for protocol in protocols() {
        for (arch, jaw) in [(Arch::Maxillary, "upper"), (Arch::Mandibular, "lower")] {
            for (stage, stage_word) in STAGES {
                for measurement in spoiled(arch) {
                    let case = one(Some(arch), stage);
                    of_scan(
                        &mut table,
                        &case,
                        scanned(&measurement),
                        &protocol,
                        (jaw, stage_word),
                    );
                }
            }
        }
        let all = [
            questions(&protocol),
            cases(&protocol),
            in_transit(&protocol),
        ];
        for findings in all.concat() {
            add(&mut table, &findings, ("any", "any"));
        }
    }
    for check in Check::ALL {
        println!("{check}: {}", check.gist());
        let rows = table.iter().filter(|((of, _, _), _)| *of == check);
        let mut is_empty = true;
        for ((_, cause, sentence), places) in rows {
            is_empty = false;
            println!("  [{cause}; {}]\n    {sentence}", places.join(", "));
        }
        if is_empty {
            println!("  (no sentence was brought out)");
        }
    }
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

fn add(table: &mut Table, findings: &[Finding], (jaw, stage): (&str, &str)) {
    for finding in findings {
        let key = (
            finding.check,
            finding.cause().name().to_owned(),
            finding.instruction.to_string(),
        );
        let place = format!("{jaw} {stage}");
        let places = table.entry(key).or_default();
        if !places.contains(&place) {
            places.push(place);
        }
    }
}

fn of_scan(
    table: &mut Table,
    case: &Case,
    scanned: Scanned,
    protocol: &Protocol,
    place: (&str, &str),
) {
    let judged = judge_case(case, &[evidence(&scanned, 0)], None, protocol);
    add(table, &judged.findings, place);
}
