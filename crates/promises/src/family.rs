//! How sound members of the broad family are judged: mouths that nothing was
//! made from.

use crate::Population;
use fixtures::impression::{evidence, input};
use judge::{Case, Check, Finding, Protocol, Severity, Stage, judge_case};
use measure::{MeasureSettings, Scanned};
use nalgebra::Point3;
use phantom::{Arch, Member, Phantom, Sides};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Edges of both scans, mm.
const EDGE_MM: f64 = 0.6;
/// Cover at which tray shows, mm, and as much as the place is known to.
const SHOWS_MM: f64 = 0.25;

/// What was said of one member.
#[derive(Serialize, Deserialize)]
struct Row {
    verdict: String,
    /// Whether only the tissue side was scanned, which shows no tray.
    is_one_sided: bool,
    findings: Vec<Said>,
}

/// A finding, with what is true of the border near it.
#[derive(Serialize, Deserialize)]
struct Said {
    severity: String,
    /// Code, and zone where it has a place.
    what: String,
    measured: Option<f64>,
    /// The nearest frenum: its name, depth, width and distance, mm.
    near: Option<String>,
}

fn judged((_, seed): &(Arch, u64)) -> Row {
    let options = Member::sound(*seed).options(EDGE_MM);
    let is_one_sided = options.sides == Sides::Tissue;
    let made = Phantom::new(&options);
    let settings = MeasureSettings::default();
    let scanned = measure::measure(&made.impression, Some(&made.tray), &settings, &|_| {});
    if let Scanned::Else(what, _) = &scanned {
        return Row {
            verdict: format!("refused: {what}"),
            is_one_sided,
            findings: Vec::new(),
        };
    }
    let case = Case::of_one("B-1", input(None, Stage::FirstPass));
    let evidence = [evidence(&scanned, 0)];
    let judged = judge_case(&case, &evidence, None, &Protocol::default());
    // Where the formula leaves tray bare, the member is not sound.
    let is_true = |finding: &&Finding| {
        let at = finding.place.as_ref().map(|place| place.at);
        let shows = at.is_some_and(|at| {
            made.truth.is_tissue_side(&at) && made.truth.cover_at(&at) <= SHOWS_MM
        });
        finding.check == Check::ShowThrough && shows
    };
    let said = judged
        .findings
        .iter()
        .filter(|finding| !is_true(finding))
        .map(|finding| {
            let place = finding.place.as_ref();
            let zone = place.map_or(String::new(), |place| format!(" {:?}", place.zone));
            Said {
                severity: finding.severity.name().to_owned(),
                what: format!("{}{zone}", finding.check.code()),
                measured: finding.figure.as_ref().map(|figure| figure.measured),
                near: place.and_then(|place| nearest_frenum(&made, &place.at)),
            }
        });
    Row {
        verdict: judged.verdict.name().to_owned(),
        is_one_sided,
        findings: said.collect(),
    }
}

fn nearest_frenum(made: &Phantom, at: &Point3<f64>) -> Option<String> {
    let frena = made.truth.family.iter().flat_map(|family| &family.frena);
    frena
        .filter_map(|frenum| Some(((frenum.point? - at).norm(), frenum)))
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(gone, frenum)| {
            let (depth, width) = (frenum.depth_mm, frenum.width_mm);
            format!(
                "{gone:.1} mm from a {} ({:?}, {depth:.1} mm deep, {width:.1} mm wide)",
                frenum.name, frenum.shape
            )
        })
}

/// Sound members of the broad family, at edges of 0.6 mm, both scans given:
/// verdicts, and findings by severity, code and zone.
pub fn sound_members_are_judged(population: Population) {
    let promise = population.asked("family-sound");
    let trials = population.jaws_in_turn(10);
    let rows = promise.rows(trials.clone(), judged);
    let mut verdicts = BTreeMap::<String, usize>::new();
    let mut findings = BTreeMap::<String, usize>::new();
    for ((arch, seed), row) in trials.iter().zip(&rows) {
        let scanned = if row.is_one_sided {
            "tissue side"
        } else {
            "both sides"
        };
        let verdict = format!("{scanned}: {}", row.verdict);
        *verdicts.entry(verdict).or_default() += 1;
        for said in &row.findings {
            let Said { severity, what, .. } = said;
            *findings.entry(format!("{severity} {what}")).or_default() += 1;
            if *severity == Severity::Fail.name() {
                let near = said.near.as_deref().unwrap_or("no frenum");
                println!("{arch:?} {seed}: {what} {:?}: {near}", said.measured);
            }
        }
    }
    let listed = |counts: Vec<(String, usize)>| {
        let each = counts.iter().map(|(what, count)| format!("{what} {count}"));
        each.collect::<Vec<_>>().join(", ")
    };
    let has_fail = |row: &&Row| row.findings.iter().any(|said| said.severity == "fail");
    let failed = rows.iter().filter(has_fail).count();
    let refused = rows
        .iter()
        .filter(|row| row.verdict.starts_with("refused"))
        .count();
    promise.figure(
        "members with a fail; refused as no impression",
        "1 in 600; 0",
        format!("{failed}; {refused} of {}", rows.len()),
    );
    promise.figure("verdicts", "", listed(verdicts.into_iter().collect()));
    promise.figure("findings", "", listed(findings.into_iter().collect()));
    assert!(failed <= rows.len() / 600, "{failed} of {}", rows.len());
    assert_eq!(refused, 0);
}
