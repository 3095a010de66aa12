//! How members of the broad family with one planted fault each are judged.

use crate::Population;
use fixtures::impression::{evidence, input};
use judge::{Case, Check, Finding, Protocol, Severity, Stage, judge_case};
use measure::landmarks::Landmark;
use measure::{MeasureSettings, Scanned, Side};
use nalgebra::Point3;
use phantom::{Arch, Fault, Member, Phantom};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Edges of both scans, mm.
const EDGE_MM: f64 = 0.6;
/// How far from a planted place its finding may lie, mm: half the length of a
/// short border and the reach of what is shown of it.
const NEAR_MM: f64 = 8.0;

/// Of members whose fault nothing speaks of, %, and one more.
const MOST_MISSED_PERCENT: usize = 5;

/// What became of a planted fault.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
enum Outcome {
    /// A fail or a question names it for what it is, at its place.
    Named,
    /// A fail or a question of another kind lies at its place.
    OtherName,
    /// What it takes to see it is asked for: it is said not to be judged.
    NotJudged,
    /// A note names it: shape alone does not tell it from what belongs to the mouth.
    Noted,
    /// Nothing is said of it.
    Missed,
}

#[derive(Serialize, Deserialize)]
struct Row {
    fault: String,
    outcome: Outcome,
    /// Every fail and question, and every note at the place.
    findings: Vec<String>,
}

/// The checks that name a fault for what it is.
fn names_of(fault: Fault) -> &'static [Check] {
    match fault {
        Fault::ShortBorder | Fault::ShortBesideFrenum => {
            &[Check::UnderExtension, Check::FlangeHeight]
        }
        Fault::CutLandmark | Fault::LostSeal => &[
            Check::LandmarkCutShort,
            Check::LandmarkNotFound,
            Check::LandmarkObscured,
        ],
        Fault::Void => &[Check::Void],
        Fault::ShowThrough => &[Check::ShowThrough],
    }
}

/// The checks that say of a fault that it could not have been seen.
fn unseen(fault: Fault) -> &'static [Check] {
    match fault {
        Fault::Void => &[Check::VoidUnseen],
        Fault::ShowThrough => &[Check::CoverNotJudged],
        _ => &[Check::ScanEnds, Check::BorderNotJudged],
    }
}

/// Where what was planted lies; nowhere for a landmark, which is known by name.
fn places(made: &Phantom) -> Vec<Point3<f64>> {
    let spots = made.truth.spots.iter().map(|spot| spot.centre);
    let blemishes = made.truth.blemishes.iter().map(|blemish| blemish.centre);
    spots.chain(blemishes).collect()
}

/// Whether the border of this member ends before a landmark of this name and side.
fn is_cut_off(made: &Phantom, landmark: &Landmark) -> bool {
    let mut ends = made.truth.family.iter().flat_map(|family| &family.ends);
    ends.any(|end| {
        end.margin_mm < 0.0
            && end.landmark == landmark.name.in_words()
            && landmark
                .side
                .is_none_or(|side| (side == Side::Left) == (end.side == phantom::Side::Left))
    })
}

fn judged((_, seed): &(Arch, u64)) -> Row {
    let member = Member::with_a_fault(*seed);
    // Every member of `with_a_fault` has one.
    let fault = member.fault.unwrap_or(Fault::Void);
    let made = Phantom::new(&member.options(EDGE_MM));
    let settings = MeasureSettings::default();
    let scanned = measure::measure(&made.impression, Some(&made.tray), &settings, &|_| {});
    let row = |outcome, findings| Row {
        fault: format!("{fault:?}"),
        outcome,
        findings,
    };
    if let Scanned::Else(what, _) = &scanned {
        return row(Outcome::NotJudged, vec![format!("refused: {what}")]);
    }
    let case = Case::of_one("B-1", input(None, Stage::FirstPass));
    let evidence = [evidence(&scanned, 0)];
    let judged = judge_case(&case, &evidence, None, &Protocol::default());
    let planted = places(&made);
    let landmarks = match &scanned {
        Scanned::Impression(measurement) => &measurement.landmarks[..],
        Scanned::Else(..) => &[],
    };
    let gone = |finding: &Finding| {
        let landmark = finding.landmark.and_then(|number| landmarks.get(number));
        if landmark.is_some_and(|landmark| is_cut_off(&made, landmark)) {
            return Some(0.0);
        }
        let at = finding.place.as_ref()?.at;
        let all = planted.iter().map(|place| (place - at).norm());
        Some(all.fold(f64::INFINITY, f64::min))
    };
    let is_near = |finding: &&Finding| gone(finding).is_some_and(|gone| gone <= NEAR_MM);
    let is_note = |finding: &&Finding| finding.severity == Severity::Note;
    let pressing = || judged.findings.iter().filter(|finding| !is_note(finding));
    let of = |checks: &'static [Check]| move |f: &&Finding| checks.contains(&f.check);
    let outcome = if pressing().filter(is_near).any(|f| of(names_of(fault))(&f)) {
        Outcome::Named
    } else if pressing().any(|f| is_near(&f) && !of(unseen(fault))(&f)) {
        Outcome::OtherName
    } else if pressing().any(|f| of(unseen(fault))(&f)) {
        Outcome::NotJudged
    } else if judged
        .findings
        .iter()
        .filter(is_near)
        .any(|f| of(names_of(fault))(&f))
    {
        Outcome::Noted
    } else {
        Outcome::Missed
    };
    let said = judged.findings.iter().filter(|f| !is_note(f) || is_near(f));
    let said = said.map(|finding| {
        let place = finding.place.as_ref();
        let zone = place.map_or(String::new(), |place| format!(" {:?}", place.zone));
        let gone = gone(finding).map_or(String::new(), |gone| format!(" {gone:.0} mm off"));
        let figure = finding.figure.as_ref();
        let figure = figure.map_or(String::new(), |figure| format!(" {:.2}", figure.measured));
        let (severity, code) = (finding.severity.name(), finding.check.code());
        format!("{severity} {code}{zone}{figure}{gone}")
    });
    row(outcome, said.collect())
}

/// Members of the broad family with one planted fault each, at edges of 0.6 mm,
/// both scans given: how many of each fault are named for what they are.
pub fn planted_faults_are_found(population: Population) {
    let promise = population.asked("family-faults");
    let trials = population.jaws_in_turn(6);
    let rows = promise.rows(trials.clone(), judged);
    let mut outcomes = BTreeMap::<(String, Outcome), usize>::new();
    for ((arch, seed), row) in trials.iter().zip(&rows) {
        *outcomes
            .entry((row.fault.clone(), row.outcome))
            .or_default() += 1;
        if row.outcome != Outcome::Named {
            let Row { fault, outcome, .. } = row;
            println!(
                "{arch:?} {seed}: {fault}: {outcome:?}: {}",
                row.findings.join("; ")
            );
        }
    }
    let all = |fault: &str, outcome| {
        outcomes
            .get(&(fault.to_owned(), outcome))
            .copied()
            .unwrap_or(0)
    };
    let faults = Fault::ALL.map(|fault| format!("{fault:?}"));
    for fault in &faults {
        let [named, other, not_judged, noted, missed] = [
            Outcome::Named,
            Outcome::OtherName,
            Outcome::NotJudged,
            Outcome::Noted,
            Outcome::Missed,
        ]
        .map(|outcome| all(fault, outcome));
        promise.figure(
            &format!("{fault}: named; called something else; said not to be judged; noted; missed"),
            "98 % named",
            format!("{named}; {other}; {not_judged}; {noted}; {missed}"),
        );
    }
    let missed: usize = faults.iter().map(|fault| all(fault, Outcome::Missed)).sum();
    promise.figure(
        "missed in silence",
        &format!("{MOST_MISSED_PERCENT} %"),
        format!("{missed} of {}", rows.len()),
    );
    assert!(
        missed <= 1 + rows.len() * MOST_MISSED_PERCENT / 100,
        "{missed} of {}",
        rows.len()
    );
}
