//! The agreement of raters in its JSON.

use crate::text::rounding::to_decimals;
use schemars::JsonSchema;
use serde::Serialize;
use statistics::agreement::Kappa;
use statistics::proportion::wilson;
use study::agreement::AgreementStudy;

/// How far raters agree on the same cases.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct AgreementResult {
    /// Name and version of this format: `archproof-agreement/1`.
    pub schema: &'static str,
    /// Version of the program.
    pub program: &'static str,
    /// Number of cases.
    pub cases: usize,
    /// The raters.
    pub raters: Vec<String>,
    /// The verdicts that were given.
    pub verdicts: Vec<String>,
    /// Each pair of raters, by Cohen's kappa.
    pub pairs: Vec<PairResult>,
    /// All raters together, by Fleiss' kappa; `null` of fewer than three, or where
    /// nothing can be said beyond chance.
    pub all: Option<KappaResult>,
    /// Each rater beside the one that they are compared with.
    pub beside: Vec<BesideResult>,
}

/// Agreement beyond chance.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct KappaResult {
    /// Number of cases that all of these raters judged.
    pub cases: usize,
    /// Share of agreement that was seen, 0 to 1.
    pub agreement: f64,
    /// Agreement beyond chance: 1 where all agree, 0 as by chance.
    pub kappa: f64,
    /// Lower end of its 95 % interval.
    pub kappa_from: f64,
    /// Upper end.
    pub kappa_to: f64,
}

/// Two raters.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct PairResult {
    /// Who they are.
    pub raters: [String; 2],
    /// Their agreement; `null` where nothing can be said beyond chance.
    pub agreement: Option<KappaResult>,
}

/// A rater beside the one that all are compared with.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct BesideResult {
    /// Who it is.
    pub rater: String,
    /// Cases that this rater accepted, of those that the other did not.
    pub missed: ShareResult,
    /// Cases that this rater did not accept, of those that the other did.
    pub false_alarms: ShareResult,
}

/// A share that was counted.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct ShareResult {
    /// How many.
    pub count: u64,
    /// Of how many.
    pub of: u64,
    /// Lower end of the 95 % interval of the share, 0 to 1 (Wilson); `null` of none.
    pub share_from: Option<f64>,
    /// Upper end.
    pub share_to: Option<f64>,
}

impl AgreementResult {
    /// What a study of agreement came to, in the words of the format.
    #[must_use]
    pub fn of(found: &AgreementStudy) -> Self {
        let name = |rater: usize| found.raters[rater].clone();
        let pairs = found.pairs.iter().map(|(pair, kappa)| PairResult {
            raters: pair.map(name),
            agreement: kappa.as_ref().map(KappaResult::of),
        });
        let beside = found.beside.iter().map(|beside| BesideResult {
            rater: name(beside.rater),
            missed: ShareResult::of(beside.missed),
            false_alarms: ShareResult::of(beside.false_alarms),
        });
        Self {
            schema: "archproof-agreement/1",
            program: env!("CARGO_PKG_VERSION"),
            cases: found.cases,
            raters: found.raters.clone(),
            verdicts: found.verdicts.clone(),
            pairs: pairs.collect(),
            all: found.all.as_ref().map(KappaResult::of),
            beside: beside.collect(),
        }
    }
}

impl KappaResult {
    fn of(found: &Kappa) -> Self {
        let [agreement, kappa, kappa_from, kappa_to] = [
            found.agreement,
            found.kappa,
            found.interval[0],
            found.interval[1],
        ]
        .map(|value| to_decimals(value, 4));
        Self {
            cases: found.things,
            agreement,
            kappa,
            kappa_from,
            kappa_to,
        }
    }
}

impl ShareResult {
    fn of([count, of]: [u64; 2]) -> Self {
        let interval = wilson(count, of).map(|ends| ends.map(|end| to_decimals(end, 4)));
        Self {
            count,
            of,
            share_from: interval.map(|ends| ends[0]),
            share_to: interval.map(|ends| ends[1]),
        }
    }
}
