//! What a person reads first, for cases of one cause each: headline, exit status, first
//! finding. One snapshot, to be read from end to end like a conversation.

use crate::result::CaseResult;
use crate::sheet::return_text;
use crate::sheet::tests::assert_names_no_limit;
use crate::testing::{loaded, parcel};
use crate::text::summary::summary;
use crate::text::words::exit_status;
use check::{CheckedCase, CheckedImpression, CheckedPair, LoadedScan, judged};
use fixtures::border::{measured, sound_border};
use fixtures::impression::{input, pair, sound, spot, stop, void};
use judge::{Case, JawRelation, Protocol, Stage, UnitReading};
use measure::record::NoRelation;
use measure::{
    Arch, CoverMethod, Defect, DefectKind, Measurement, NoBorder, NotAnImpression, Scanned,
    TrayNotPlaced, TrayThickness,
};
use mesh::Unit;
use messages::Language;
use std::fmt::Write;
use std::sync::Arc;

/// One impression of a case.
struct Taken {
    arch: Option<Arch>,
    stage: Stage,
    measurement: Measurement,
    scan: LoadedScan,
}

/// A case to which one thing happens.
struct Given {
    taken: Vec<Taken>,
    case: Case,
    /// What the record shows, where there is one.
    no_relation: Option<NoRelation>,
    not_an_impression: bool,
}

fn taken(arch: Arch, stage: Stage) -> Taken {
    let mut measurement = sound();
    measurement.frame.arch = arch;
    let name = format!("{arch:?} {stage:?}");
    Taken {
        arch: Some(arch),
        stage,
        measurement,
        scan: loaded(&name),
    }
}

fn given(taken: Vec<Taken>) -> Given {
    Given {
        taken,
        case: Case {
            scanner: None,
            impressions: Vec::new(),
            ..Case::of_one("C", input(None, Stage::Single))
        },
        no_relation: None,
        not_an_impression: false,
    }
}

/// One upper impression of a stage.
fn upper(stage: Stage) -> Given {
    given(vec![taken(Arch::Maxillary, stage)])
}

/// Both jaws, ready to be sent.
fn set() -> Given {
    let mut given = given(vec![
        taken(Arch::Maxillary, Stage::Wash),
        taken(Arch::Mandibular, Stage::Wash),
    ]);
    given.case.consignment = Some(parcel());
    given.case.jaw_relation = Some(JawRelation {
        vertical_dimension_mm: Some(66.0),
        rest_vertical_dimension_mm: Some(69.0),
        ..JawRelation::default()
    });
    given
}

fn checked(given: Given) -> CheckedCase {
    let mut case = given.case;
    let mut impressions = Vec::new();
    for (number, one) in given.taken.into_iter().enumerate() {
        let mut told = input(one.arch, one.stage);
        told.stops = (one.measurement.stops.iter()).map(|stop| stop.at).collect();
        case.impressions.push(told);
        let is_else = given.not_an_impression && number == 0;
        let figures = fixtures::impression::figures();
        impressions.push(CheckedImpression {
            scan: Arc::new(one.scan),
            tray: Some(Arc::new(loaded("tray"))),
            as_sent: None,
            shelf: None,
            relief: None,
            parts: None,
            pieces: None,
            scanned: if is_else {
                Scanned::Else(NotAnImpression::Cast, figures)
            } else {
                Scanned::Impression(Box::new(one.measurement))
            },
            next_tray: None,
        });
    }
    let pairs = (0..case.impressions.len())
        .filter_map(|wash| Some((wash, case.first_pass_of(wash)?)))
        .map(|(wash, first_pass)| CheckedPair {
            first_pass,
            wash,
            found: Ok(pair()),
        })
        .collect();
    let relation = (given.no_relation).map(|why| (Arc::new(loaded("record")), Err(why)));
    judged(case, Protocol::default(), impressions, pairs, relation)
}

/// A case with one thing that is the matter with it.
type Told = (&'static str, fn() -> Given);

fn with(mut given: Given, change: impl FnOnce(&mut Given)) -> Given {
    change(&mut given);
    given
}

fn first(given: &mut Given) -> &mut Measurement {
    &mut given.taken[0].measurement
}

const CASES: &[Told] = &[
    ("A finished upper impression, nothing amiss.", || {
        upper(Stage::Wash)
    }),
    ("The same before its wash.", || upper(Stage::FirstPass)),
    ("A whole set, nothing amiss.", set),
    ("The prescription is not enclosed.", || {
        with(set(), |g| {
            g.case.consignment.as_mut().unwrap().prescription = Some(false)
        })
    }),
    ("Nobody says how the set was disinfected.", || {
        with(set(), |g| {
            g.case.consignment.as_mut().unwrap().disinfectant = None
        })
    }),
    ("The record was not packed.", || {
        with(set(), |g| {
            g.case.consignment.as_mut().unwrap().packed.pop();
        })
    }),
    ("No jaw relation, and no reason for that.", || {
        with(set(), |g| g.case.jaw_relation = None)
    }),
    ("The lower jaw is missing, and no reason for that.", || {
        with(set(), |g| g.taken.truncate(1))
    }),
    ("The lower jaw has no wash yet.", || {
        with(set(), |g| g.taken[1].stage = Stage::FirstPass)
    }),
    ("Tray shows before the wash.", || {
        with(upper(Stage::FirstPass), |g| {
            first(g).spots = vec![spot(0.0)]
        })
    }),
    ("Tray shows on the wash.", || {
        with(upper(Stage::Wash), |g| first(g).spots = vec![spot(0.0)])
    }),
    ("Tray shows on one of two washes.", || {
        with(set(), |g| g.taken[1].measurement.spots = vec![spot(0.0)])
    }),
    (
        "Tray shows before the wash, and the wash covers it.",
        || {
            let before = with(upper(Stage::FirstPass), |g| {
                first(g).spots = vec![spot(0.0)]
            });
            with(upper(Stage::Wash), |g| {
                g.taken.splice(0..0, before.taken).for_each(drop)
            })
        },
    ),
    ("Tray shows over too much of the surface.", || {
        with(upper(Stage::FirstPass), |g| {
            let mut wide = spot(0.0);
            (wide.area_mm2, wide.area_uncertainty_mm2) = (540.0, 72.0);
            first(g).spots = vec![wide];
        })
    }),
    ("Tray may show: too close to call.", || {
        with(upper(Stage::Wash), |g| first(g).spots = vec![spot(0.15)])
    }),
    ("Material is thin, no more.", || {
        with(upper(Stage::Wash), |g| first(g).spots = vec![spot(0.5)])
    }),
    ("A tissue stop does not show before the wash.", || {
        with(upper(Stage::FirstPass), |g| {
            first(g).stops = vec![stop(Some(0.8))]
        })
    }),
    ("A tissue stop is covered on a wash alone.", || {
        with(upper(Stage::Wash), |g| {
            first(g).stops = vec![stop(Some(0.8))]
        })
    }),
    ("A knife edge.", || {
        with(upper(Stage::FirstPass), |g| {
            let mut border = sound_border();
            for station in &mut border.stations[80..110] {
                station.border_radius = measured(0.4);
            }
            first(g).border = Ok(border);
        })
    }),
    ("A void on the ridge of a wash.", || {
        with(upper(Stage::Wash), |g| {
            first(g).tissue.as_mut().unwrap().defects = vec![void()];
        })
    }),
    ("A bump on the ridge.", || {
        with(upper(Stage::Wash), |g| {
            first(g).tissue.as_mut().unwrap().defects = vec![Defect {
                kind: DefectKind::Nodule,
                ..void()
            }];
        })
    }),
    ("No scan of the tray.", || {
        with(upper(Stage::Wash), |g| {
            first(g).cover = Err(TrayNotPlaced::NoTray.into());
            first(g).tray_fit = None;
        })
    }),
    ("The tray's thickness was stated instead.", || {
        with(upper(Stage::Wash), |g| {
            let cover = first(g).cover.as_mut().unwrap();
            cover.registration = None;
            cover.method = CoverMethod::TwoSided {
                tray: TrayThickness {
                    mm: 2.0,
                    uncertainty_mm: 0.1,
                },
            };
        })
    }),
    ("The border could not be followed.", || {
        with(upper(Stage::Wash), |g| {
            first(g).border = Err(NoBorder::NoLine)
        })
    }),
    ("The scan ends before the border does.", || {
        with(upper(Stage::Wash), |g| {
            let mut border = sound_border();
            for station in &mut border.stations[80..110] {
                station.scan_ends = true;
            }
            first(g).border = Ok(border);
        })
    }),
    ("The scan is too coarse.", || {
        with(upper(Stage::Wash), |g| {
            first(g).scan.integrity.median_edge = 1.2
        })
    }),
    ("The unit is in doubt.", || {
        with(upper(Stage::Wash), |g| {
            g.taken[0].scan.unit = UnitReading::Ambiguous(vec![Unit::Centimetre, Unit::Inch]);
            first(g).spots = vec![spot(0.0)];
        })
    }),
    ("The jaw was not declared and is in doubt.", || {
        with(upper(Stage::Wash), |g| {
            g.taken[0].arch = None;
            first(g).frame.arch_confidence = 0.2;
            first(g).spots = vec![spot(0.0)];
        })
    }),
    ("Declared as the other jaw.", || {
        with(upper(Stage::Wash), |g| {
            g.taken[0].arch = Some(Arch::Mandibular);
            first(g).spots = vec![spot(0.0)];
        })
    }),
    ("Which way it lies is in doubt.", || {
        with(upper(Stage::Wash), |g| first(g).frame.confidence = 0.2)
    }),
    ("A cast instead of an impression.", || {
        with(upper(Stage::Wash), |g| g.not_an_impression = true)
    }),
    ("One file for both jaws.", || {
        with(set(), |g| g.taken[1].scan = loaded("Maxillary Wash"))
    }),
    ("Tray shows above; below, the jaw is in doubt.", || {
        with(set(), |g| {
            first(g).spots = vec![spot(0.0)];
            g.taken[1].measurement.frame.arch = Arch::Maxillary;
        })
    }),
    ("The vertical dimensions were exchanged.", || {
        with(set(), |g| {
            let record = g.case.jaw_relation.as_mut().unwrap();
            (
                record.vertical_dimension_mm,
                record.rest_vertical_dimension_mm,
            ) = (Some(69.0), Some(66.0));
        })
    }),
    ("The interocclusal distance is too close to call.", || {
        with(set(), |g| {
            g.case
                .jaw_relation
                .as_mut()
                .unwrap()
                .rest_vertical_dimension_mm = Some(67.5);
        })
    }),
    ("The record could not be measured.", || {
        with(set(), |g| g.no_relation = Some(NoRelation::JawsNotOpposed))
    }),
];

/// Of each case the headline, so many lines of the first finding, and the exit status. The
/// first line holds its figure, the second its instruction.
fn conversation(language: Language, lines_of_finding: usize) -> String {
    let mut text = String::new();
    for (what, given) in CASES {
        let result = CaseResult::of(&checked(given()));
        let plain = without_colours(&summary(&result, language));
        let mut lines = plain.lines();
        let headline = lines.next().unwrap();
        writeln!(text, "{what}\n  {headline}").unwrap();
        let is_finding = |line: &&str| line.trim_start().starts_with("F1 ");
        let mut rest = lines.skip_while(|line| !is_finding(line));
        for line in rest.by_ref().take(lines_of_finding) {
            writeln!(text, "  {}", line.trim_start()).unwrap();
        }
        writeln!(text, "  exit status {}\n", exit_status(result.verdict)).unwrap();
    }
    text
}

#[test]
fn thirty_cases_of_one_cause_each_read_like_a_conversation() {
    assert!(CASES.len() >= 30);
    insta::assert_snapshot!(conversation(Language::English, 2));
}

#[test]
fn the_same_cases_read_so_in_german() {
    insta::assert_snapshot!(conversation(Language::German, 1));
}

#[test]
fn the_same_cases_read_so_in_spanish() {
    insta::assert_snapshot!(conversation(Language::Spanish, 1));
}

#[test]
fn the_clinic_is_asked_in_words_that_need_no_program() {
    for (what, given) in CASES {
        let result = CaseResult::of(&checked(given()));
        let text = return_text(&result, Language::English);
        for words in ["--", "`", "_", "case file", "check again", "archproof"] {
            assert!(!text.contains(words), "{what} {words}: {text}");
        }
        assert_names_no_limit(&result, &text);
    }
}

/// The text without terminal colours.
fn without_colours(text: &str) -> String {
    let mut plain = String::new();
    let mut rest = text;
    while let Some(start) = rest.find('\u{1b}') {
        plain.push_str(&rest[..start]);
        rest = rest[start..].split_once('m').map_or("", |(_, after)| after);
    }
    plain + rest
}
