//! Every check on every kind of case: it is made, or it is in `not_judged` with
//! its reason, or there is nothing that it could judge.
#![allow(clippy::unwrap_used)]

use fixtures::impression::{colours, evidence, figures, input, pair, scanned, sound, unchanged};
use judge::Check::*;
use judge::{
    Case, Check, Consignment, Evidence, JawRelation, JudgedCase, NotJudged, Part, Protocol, Stage,
    Unjudged, judge_case,
};
use measure::pair::{NoBorderChange, NoPair, NoTransit, NoWash, PassPair, Transit};
use measure::record::{JawRelation as Related, NoRelation, Space};
use measure::{
    Arch, CoverMethod, Measurement, Missing, NoBorder, NoColour, NoTissue, NotAnImpression as Else,
    Scanned, TrayNotPlaced, TrayThickness,
};
use messages::Language;
use nalgebra::{Isometry3, Point3};
use rstest::rstest;

/// A case of a first pass and a wash over it, with what was measured of both.
struct Given {
    case: Case,
    first_pass: Scanned,
    wash: Scanned,
    pair: Option<Result<PassPair, NoPair>>,
    transit: Option<Result<Transit, NoTransit>>,
    relation: Option<Result<Related, NoRelation>>,
}

impl Given {
    fn wash(&mut self) -> &mut Measurement {
        impression(&mut self.wash)
    }

    fn pair(&mut self) -> &mut PassPair {
        self.pair.as_mut().unwrap().as_mut().unwrap()
    }
}

fn impression(scanned: &mut Scanned) -> &mut Measurement {
    match scanned {
        Scanned::Impression(measurement) => measurement,
        Scanned::Else(what, _) => panic!("not an impression: {what}"),
    }
}

/// A case that lacks nothing.
fn whole() -> Given {
    let stops = vec![Point3::origin()];
    let impressions = [Stage::FirstPass, Stage::Wash].map(|stage| judge::ImpressionInput {
        stops: stops.clone(),
        ..input(Some(Arch::Maxillary), stage)
    });
    Given {
        case: Case {
            scanner: None,
            trays: None,
            id: "whole".into(),
            impressions: impressions.into(),
            jaw_relation: Some(JawRelation {
                scan: Some("record.ply".into()),
                vertical_dimension_mm: Some(66.0),
                rest_vertical_dimension_mm: Some(69.0),
                upper_lip_length_mm: Some(21.5),
                ..JawRelation::default()
            }),
            labels: Default::default(),
            scanned_at: None,
            consignment: Some(Consignment {
                no_jaw_relation_because: None,
                one_arch_because: Some("lower jaw has teeth".into()),
                prescription: Some(true),
                disinfectant: Some("as the protocol says".into()),
                disinfection_min: Some(10.0),
                expected: vec!["upper impression".into()],
                packed: vec!["upper impression".into()],
            }),
        },
        first_pass: scanned(&sound()),
        wash: scanned(&sound()),
        pair: Some(Ok(pair())),
        transit: Some(Ok(unchanged())),
        relation: Some(Ok(relation())),
    }
}

fn relation() -> Related {
    Related {
        record_from_maxilla: Isometry3::identity(),
        record_from_mandible: Isometry3::identity(),
        stations: vec![Space {
            at: Point3::origin(),
            from_front_mm: 0.0,
            side: None,
            mm: Ok(20.0),
        }],
        uncertainty_mm: 0.3,
        ridge_angle_deg: 3.0,
        ridge_angle_uncertainty_deg: 1.5,
    }
}

/// A tray of two pieces, joined.
const JOINED: [measure::TrayJoint; 1] = [measure::TrayJoint {
    pieces: [1, 2],
    gap_mm: 0.02,
    step_mm: 0.01,
    uncertainty_mm: 0.05,
}];

fn judged(given: &Given) -> JudgedCase {
    judge_case(
        &given.case,
        &[
            evidence(&given.first_pass, 0),
            Evidence {
                pair: given.pair.as_ref(),
                transit: given.transit.as_ref(),
                joints: &JOINED,
                ..evidence(&given.wash, 1)
            },
        ],
        given.relation.as_ref(),
        &Protocol::default(),
    )
}

/// The checks that need a part, all of which its one entry stands for.
fn needing(part: Part) -> &'static [Check] {
    match part {
        Part::Border => &[
            BorderChange,
            ScanEnds,
            FlangeHeight,
            UnderExtension,
            BorderAsymmetry,
            FlangeThickness,
            BorderRadius,
            BorderOverlap,
            TrayAtBorder,
        ],
        Part::Wash => &[WashOpen, WashThickness, WashUneven, BorderChange],
        Part::JawRelation => &[InterarchSpace, RidgeAngle],
        // No check judges them, and no entry of an impression or a case names it.
        Part::OverExtension | Part::Cut => &[],
        Part::Parcel => &[ParcelIncomplete, PrescriptionMissing, DisinfectionNotStated],
    }
}

/// What was not judged of the wash and of the case, each once, in its order.
fn entries(judged: &JudgedCase) -> Vec<&NotJudged> {
    let mut entries: Vec<&NotJudged> = Vec::new();
    for entry in (judged.impressions[1].not_judged.iter()).chain(&judged.not_judged) {
        assert!(!entry.why.to_string().trim().is_empty(), "{}", entry.what);
        for (sentence, language) in
            (entry.why.sentences().iter()).flat_map(|s| Language::ALL.map(|language| (s, language)))
        {
            // A sentence without a text reads as its key.
            assert_ne!(sentence.text(language), sentence.key, "{language}");
            assert_ne!(sentence.key, "verbatim", "{}", entry.what);
        }
        if entries.iter().all(|known| known.what != entry.what) {
            entries.push(entry);
        }
    }
    entries
}

/// What is taken from a whole case.
type Spoil = fn(&mut Given);

const NO_COVER: [Check; 10] = [
    ShowThrough,
    ShowThroughExtent,
    TissueArea,
    ThinCover,
    CoverUncertainty,
    TissueStop,
    TraySeating,
    TrayBent,
    OuterExcess,
    TraySize,
];

/// In the order in which they are judged.
const NO_COVER_NOR_TRANSIT: [Check; 11] = [
    ShowThrough,
    ShowThroughExtent,
    TissueArea,
    ThinCover,
    CoverUncertainty,
    TissueStop,
    TraySeating,
    TrayBent,
    ChangedInTransit,
    OuterExcess,
    TraySize,
];

fn checks(checks: &[Check]) -> Vec<Unjudged> {
    checks.iter().map(|&check| check.into()).collect()
}

#[rstest]
#[case::whole(|_: &mut Given| {}, vec![], &[])]
#[case::no_tray(
    |given: &mut Given| {
        given.wash().cover = Err(TrayNotPlaced::NoTray.into());
        given.wash().tray_fit = None;
    },
    checks(&NO_COVER),
    &[]
)]
#[case::colours_that_tell_nothing(
    |given: &mut Given| {
        given.wash().cover = Err(TrayNotPlaced::NoTray.into());
        given.wash().tray_fit = None;
        given.wash().colour = Some(Err(NoColour::TrayColourUnknown));
    },
    checks(&NO_COVER),
    &[]
)]
#[case::colours_alone(
    |given: &mut Given| {
        given.wash().cover = Err(TrayNotPlaced::NoTray.into());
        given.wash().tray_fit = None;
        given.wash().colour = Some(Ok(colours(0.0)));
    },
    checks(&[ThinCover, CoverUncertainty, TissueStop, TraySeating, TrayBent, OuterExcess, TraySize]),
    &[]
)]
#[case::no_stop_declared(
    |given: &mut Given| {
        given.wash().cover = Err(TrayNotPlaced::NoTray.into());
        given.case.impressions[1].stops.clear();
    },
    checks(&[ShowThrough, ShowThroughExtent, TissueArea, ThinCover, CoverUncertainty, TrayBent, OuterExcess]),
    &[TissueStop]
)]
#[case::stated_thickness(
    |given: &mut Given| {
        given.wash().cover.as_mut().unwrap().method = CoverMethod::TwoSided {
            tray: TrayThickness { mm: 2.0, uncertainty_mm: 0.1 },
        };
        given.wash().cover.as_mut().unwrap().registration = None;
        given.wash().tray_fit = None;
    },
    checks(&[TissueArea, TraySeating, TrayBent, OuterExcess, TraySize]),
    &[]
)]
#[case::no_border(
    |given: &mut Given| given.wash().border = Err(NoBorder::NoLine),
    vec![Part::Border.into()],
    &[]
)]
#[case::no_height(
    |given: &mut Given| of_stations(given, |s| s.flange_height = Err(Missing::NoCrest)),
    checks(&[FlangeHeight, UnderExtension, BorderAsymmetry]),
    &[]
)]
#[case::no_thickness(
    |given: &mut Given| of_stations(given, |s| s.flange_thickness = Err(Missing::TissueSideOnly)),
    checks(&[FlangeThickness]),
    &[]
)]
#[case::no_radius(
    |given: &mut Given| of_stations(given, |s| s.border_radius = Err(Missing::NoRoll)),
    checks(&[BorderRadius]),
    &[]
)]
#[case::no_overlap(
    |given: &mut Given| of_stations(given, |s| s.overlap = Err(Missing::NoTray)),
    checks(&[BorderOverlap, TrayAtBorder]),
    &[]
)]
#[case::no_tissue(
    |given: &mut Given| given.wash().tissue = Err(NoTissue::TooCoarse { median_edge_mm: 0.9 }),
    checks(&[Void, Nodule, Fold, Hole, ScanQuality]),
    &[]
)]
#[case::too_coarse_for_small_voids(
    |given: &mut Given| given.wash().tissue.as_mut().unwrap().zones[0].least_across_mm = 1.6,
    checks(&[Void, Nodule]),
    &[]
)]
#[case::another_first_pass(
    |given: &mut Given| given.pair = Some(Err(NoPair::DoesNotFit { fitting_percent: 9.0 })),
    checks(&[WashOpen, WashThickness, WashUneven, BorderChange]),
    &[]
)]
#[case::tissue_sides_of_both_passes(
    |given: &mut Given| given.pair().wash = Err(NoWash::NoOuterSurface),
    checks(&[WashOpen, WashThickness, WashUneven]),
    &[]
)]
#[case::first_pass_without_border(
    without_border_on_the_first_pass,
    checks(&[BorderChange]),
    &[]
)]
#[case::no_scan_as_sent(|given: &mut Given| given.transit = None, vec![], &[ChangedInTransit])]
#[case::no_crest_line_to_bend(
    |given: &mut Given| given.transit = Some(Err(NoTransit::NoCrestLine(NoBorder::NoLine))),
    checks(&[ChangedInTransit]),
    &[]
)]
#[case::no_relation(
    |given: &mut Given| given.relation = None,
    vec![Part::JawRelation.into()],
    &[]
)]
#[case::another_record(
    |given: &mut Given| given.relation = Some(Err(NoRelation::JawsNotOpposed)),
    vec![Part::JawRelation.into()],
    &[]
)]
#[case::one_vertical_dimension(
    |given: &mut Given| given.case.jaw_relation.as_mut().unwrap().rest_vertical_dimension_mm = None,
    checks(&[InterocclusalDistance]),
    &[]
)]
#[case::nothing_of_the_parcel(
    |given: &mut Given| given.case.consignment = None,
    vec![Part::Parcel.into()],
    &[]
)]
#[case::no_pair(
    |given: &mut Given| {
        given.case.impressions[0].declared = Some(Arch::Mandibular);
        given.pair = None;
    },
    vec![Part::Wash.into()],
    &[]
)]
#[case::a_cast(
    |given: &mut Given| {
        given.wash = Scanned::Else(Else::Positive, figures());
        given.pair = Some(Err(NoPair::NotAnImpression(Else::Positive)));
        given.transit = Some(Err(NoTransit::ArrivedNotAnImpression(Else::Positive)));
    },
    [
        checks(&NO_COVER_NOR_TRANSIT),
        checks(&[WashOpen, WashThickness, WashUneven, BorderChange]),
        checks(&[Void, Nodule, Fold, Hole, ScanQuality]),
        vec![Part::Border.into()],
    ]
    .concat(),
    // What they would say of an impression, `not-an-impression` makes pointless.
    &[
        ArchMismatch,
        OrientationUnclear,
        ScanResolution,
        CoverNotJudged,
        OtherColour,
        VoidUnseen,
        BorderNotJudged,
        TrayJoint,
        LandmarkCutShort,
        LandmarkObscured,
        LandmarkNotFound,
    ]
)]
fn each_check_is_made_or_says_why_not(
    #[case] spoil: Spoil,
    #[case] not_judged: Vec<Unjudged>,
    #[case] nothing_to_judge: &[Check],
) {
    let mut given = whole();
    spoil(&mut given);
    let judged = judged(&given);
    let entries = entries(&judged);
    let found: Vec<Unjudged> = entries.iter().map(|entry| entry.what).collect();
    assert_eq!(found, not_judged);
    for check in Check::ALL {
        let made = judged.impressions[1].made.contains(&check) || judged.made.contains(&check);
        let said = found.iter().any(|what| match *what {
            Unjudged::Check(of) => of == check,
            Unjudged::Part(part) => needing(part).contains(&check),
        });
        assert_eq!(
            made || said,
            !nothing_to_judge.contains(&check),
            "{check}: made {made}, said {said}"
        );
    }
}

fn without_border_on_the_first_pass(given: &mut Given) {
    impression(&mut given.first_pass).border = Err(NoBorder::NoLine);
    given.pair().border_changes = Err(NoBorderChange::FirstPass(NoBorder::NoLine));
}

fn of_stations(given: &mut Given, spoil: fn(&mut measure::Station)) {
    let border = given.wash().border.as_mut().unwrap();
    for station in &mut border.stations {
        spoil(station);
    }
}

#[test]
fn a_first_pass_is_not_judged_as_a_wash() {
    let judged = judged(&whole());
    let first_pass = &judged.impressions[0];
    assert!(first_pass.not_judged.is_empty());
    for check in needing(Part::Wash) {
        assert!(!first_pass.made.contains(check), "{check}");
    }
}

#[test]
fn a_bare_scan_says_all_that_was_not_judged() {
    let mut measurement = sound();
    measurement.cover = Err(TrayNotPlaced::NoTray.into());
    measurement.tray_fit = None;
    let case = Case::of_one("bare", input(None, Stage::Single));
    let judged = judge_case(
        &case,
        &[evidence(&scanned(&measurement), 0)],
        None,
        &Protocol::default(),
    );
    let names = |entries: &[NotJudged]| -> Vec<&str> {
        entries.iter().map(|entry| entry.what.name()).collect()
    };
    assert_eq!(
        names(&judged.impressions[0].not_judged),
        [
            "show-through",
            "show-through-extent",
            "tissue-area",
            "thin-cover",
            "cover-uncertainty",
            "tray-seating",
            "tray-bent",
            "outer-excess",
            "tray-size",
        ]
    );
    assert_eq!(
        names(&judged.not_judged),
        ["wash", "jaw-relation", "interocclusal-distance", "parcel"]
    );
}

#[test]
fn what_was_not_judged_names_its_own_reason() {
    let mut given = whole();
    without_border_on_the_first_pass(&mut given);
    let judged = judged(&given);
    let entry = &judged.impressions[1].not_judged[0];
    assert_eq!(entry.what, BorderChange.into());
    assert_eq!(
        entry.why.to_string(),
        "before the wash, no border line could be followed round the scan"
    );
}
