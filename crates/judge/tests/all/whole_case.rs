//! What is judged on a case as a whole: vertical dimensions and the parcel.

#![allow(clippy::unwrap_used, reason = "a test may panic")]

use fixtures::impression::{evidence, one, scanned, sound};
use judge::{
    Case, Check, Consignment, JawRelation, Protocol, Severity, Stage, Verdict, judge_case,
};
use measure::Arch;
use rstest::rstest;

fn judged(case: &Case, protocol: &Protocol) -> (Vec<(Severity, Check)>, Verdict) {
    let scanned = scanned(&sound());
    let judged = judge_case(case, &[evidence(&scanned, 0)], None, protocol);
    let codes = judged.findings.iter().map(|f| (f.severity, f.check));
    (codes.collect(), judged.verdict)
}

fn with_heights(rest: f64, occlusion: f64, lip: Option<f64>) -> Case {
    let mut case = one(Some(Arch::Maxillary), Stage::Single);
    case.jaw_relation = Some(JawRelation {
        vertical_dimension_mm: Some(occlusion),
        rest_vertical_dimension_mm: Some(rest),
        upper_lip_length_mm: lip,
        ..JawRelation::default()
    });
    case
}

// JAW-01 to JAW-03: 2 to 4 mm usual, 1 to 7 observed, 0 or less impossible. The distance of
// two single readings is known to 0.99 mm.
#[rstest]
#[case::usual(69.0, 66.0, None, Verdict::Accept)]
#[case::at_the_bound(70.0, 66.0, None, Verdict::Accept)]
#[case::unusual(71.0, 66.0, Some(Severity::Note), Verdict::Accept)]
#[case::questioned(74.0, 66.0, Some(Severity::Borderline), Verdict::Undecided)]
#[case::small(66.5, 66.0, Some(Severity::Borderline), Verdict::Undecided)]
#[case::none(66.0, 66.0, Some(Severity::Borderline), Verdict::Undecided)]
#[case::surely_none(66.0, 67.0, Some(Severity::Fail), Verdict::Rework)]
#[case::exchanged(66.0, 69.0, Some(Severity::Fail), Verdict::Rework)]
fn interocclusal_distances_are_judged(
    #[case] rest: f64,
    #[case] occlusion: f64,
    #[case] severity: Option<Severity>,
    #[case] verdict: Verdict,
) {
    let expected: Vec<_> = severity
        .map(|severity| (severity, Check::InterocclusalDistance))
        .into_iter()
        .collect();
    let found = judged(
        &with_heights(rest, occlusion, Some(21.5)),
        &Protocol::default(),
    );
    assert_eq!(found, (expected, verdict));
}

#[test]
fn a_lip_that_hardly_anyone_has_is_noted() {
    for lip in [5.0, 60.0] {
        let (codes, _) = judged(&with_heights(69.0, 66.0, Some(lip)), &Protocol::default());
        assert_eq!(codes, [(Severity::Note, Check::LipLength)]);
    }
}

fn whole_parcel() -> Case {
    let mut case = with_heights(69.0, 66.0, None);
    let parts = || {
        vec![
            "upper impression".to_owned(),
            "jaw-relation record".to_owned(),
        ]
    };
    case.consignment = Some(Consignment {
        no_jaw_relation_because: None,
        one_arch_because: Some("lower jaw has teeth".into()),
        prescription: Some(true),
        disinfectant: Some("as the protocol says".into()),
        disinfection_min: Some(10.0),
        expected: parts(),
        packed: vec![" Upper Impression".into(), "jaw-relation record".into()],
    });
    case
}

/// Takes something from a whole parcel.
type Spoil = fn(&mut Case, &mut Consignment);

#[test]
fn a_whole_parcel_is_accepted_and_each_missing_part_is_named() {
    let protocol = Protocol::default();
    assert_eq!(
        judged(&whole_parcel(), &protocol),
        (vec![], Verdict::Accept)
    );
    let spoilt: [(Spoil, Check); 8] = [
        (|_, c| c.packed.truncate(1), Check::ParcelIncomplete),
        (|_, c| c.expected.clear(), Check::ParcelIncomplete),
        (
            |_, c| c.one_arch_because = Some(" ".into()),
            Check::ParcelIncomplete,
        ),
        (|case, _| case.jaw_relation = None, Check::ParcelIncomplete),
        (|_, c| c.prescription = None, Check::PrescriptionMissing),
        (
            |_, c| c.prescription = Some(false),
            Check::PrescriptionMissing,
        ),
        (|_, c| c.disinfectant = None, Check::DisinfectionNotStated),
        (
            |_, c| c.disinfection_min = None,
            Check::DisinfectionNotStated,
        ),
    ];
    for (number, (spoil, check)) in spoilt.into_iter().enumerate() {
        let mut case = whole_parcel();
        let mut consignment = case.consignment.take().unwrap();
        spoil(&mut case, &mut consignment);
        case.consignment = Some(consignment);
        let expected = (vec![(Severity::Borderline, check)], Verdict::Undecided);
        assert_eq!(judged(&case, &protocol), expected, "{number}");
    }
}

#[test]
fn what_a_protocol_does_not_require_is_not_asked_for() {
    let text = "name = \"ours\"\n[limits]\nprescription_required = { value = 0 }\n\
                disinfection_required = { value = 0 }\njaw_relation_required = { value = 0 }\n\
                both_arches_required = { value = 0 }\n";
    let protocol = Protocol::from_text(text).unwrap();
    let mut case = whole_parcel();
    case.jaw_relation = None;
    let consignment = case.consignment.as_mut().unwrap();
    consignment.prescription = None;
    consignment.disinfectant = None;
    consignment.disinfection_min = None;
    consignment.one_arch_because = None;
    assert_eq!(judged(&case, &protocol), (vec![], Verdict::Accept));
    let odd = "name = \"ours\"\n[limits]\nprescription_required = { value = 2 }\n";
    assert!(Protocol::from_text(odd).is_err());
}

#[test]
fn an_unusual_time_of_disinfection_is_noted() {
    for minutes in [1.0, 600.0] {
        let mut case = whole_parcel();
        case.consignment.as_mut().unwrap().disinfection_min = Some(minutes);
        let (codes, verdict) = judged(&case, &Protocol::default());
        assert_eq!(codes, [(Severity::Note, Check::DisinfectionNotStated)]);
        assert_eq!(verdict, Verdict::Accept);
    }
}
