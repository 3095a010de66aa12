//! Questions that stand before everything: what a scan shows, which jaw, which way.
#![allow(clippy::unwrap_used)]

use crate::one_scan::codes;
use fixtures::impression::*;
use judge::{Check, Protocol, Severity, Stage, UnitReading, Verdict, judge_case};
use measure::{Arch, NotAnImpression, Scanned};
use mesh::Unit;
use messages::Message;
use rstest::rstest;

#[rstest]
#[case::given(UnitReading::Given(Unit::Inch), None)]
#[case::assumed(UnitReading::Assumed, None)]
#[case::inferred(UnitReading::Inferred(Unit::Metre), Some("--unit m"))]
#[case::either(UnitReading::Ambiguous(vec![Unit::Centimetre, Unit::Inch]), Some("cm or in"))]
fn the_unit_is_asked_for_unless_it_is_clear(#[case] unit: UnitReading, #[case] asks: Option<&str>) {
    let measurement = scanned(&sound());
    let case = one(None, Stage::Single);
    for of_tray in [false, true] {
        let mut evidence = evidence(&measurement, 0);
        if of_tray {
            evidence.tray.as_mut().unwrap().unit = unit.clone();
        } else {
            evidence.scan.unit = unit.clone();
        }
        let judged = judge_case(&case, &[evidence], None, &Protocol::default());
        match asks {
            None => assert_eq!(judged.verdict, Verdict::Accept),
            Some(words) => {
                assert_eq!(codes(&judged), [(Severity::Borderline, Check::UnitUnclear)]);
                assert!(judged.findings[0].instruction.to_string().contains(words));
                assert_eq!(judged.verdict, Verdict::Undecided);
            }
        }
    }
}

#[test]
fn what_is_no_impression_is_named_and_not_judged() {
    let cast = Scanned::Else(NotAnImpression::Positive, figures());
    let case = one(Some(Arch::Maxillary), Stage::Single);
    let judged = judge_case(&case, &[evidence(&cast, 0)], None, &Protocol::default());
    assert_eq!(
        codes(&judged),
        [(Severity::Borderline, Check::NotAnImpression)]
    );
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .starts_with("Not an impression: ")
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
}

#[test]
fn another_jaw_than_declared_leaves_all_undecided() {
    let case = one(Some(Arch::Mandibular), Stage::Single);
    let mut measurement = sound();
    measurement.spots = vec![spot(0.0)];
    let judged = judge_case(
        &case,
        &[evidence(&scanned(&measurement), 0)],
        None,
        &Protocol::default(),
    );
    assert_eq!(judged.findings[0].check, Check::ArchMismatch);
    assert_eq!(judged.verdict, Verdict::Undecided);
}

#[rstest]
#[case::jaw_not_declared(None, 0.3, 0.9, true)]
#[case::jaw_declared(Some(Arch::Maxillary), 0.3, 0.9, false)]
#[case::axes_unsure(Some(Arch::Maxillary), 0.9, 0.3, true)]
#[case::all_sure(None, 0.9, 0.9, false)]
fn sides_are_relied_on_only_when_told_surely(
    #[case] declared: Option<Arch>,
    #[case] arch_confidence: f64,
    #[case] confidence: f64,
    #[case] asks: bool,
) {
    let mut measurement = sound();
    let frame = &mut measurement.frame;
    frame.arch_confidence = arch_confidence;
    frame.confidence = confidence;
    let case = one(declared, Stage::Single);
    let judged = judge_case(
        &case,
        &[evidence(&scanned(&measurement), 0)],
        None,
        &Protocol::default(),
    );
    assert_eq!(judged.verdict == Verdict::Undecided, asks);
    assert_eq!(
        judged
            .findings
            .iter()
            .any(|f| f.check == Check::OrientationUnclear),
        asks
    );
}

#[test]
fn one_file_for_two_things_is_asked_about() {
    let measurement = scanned(&sound());
    let case = one(None, Stage::Single);
    let mut doubled = evidence(&measurement, 0);
    doubled.tray = Some(facts("impression 0"));
    let judged = judge_case(&case, &[doubled], None, &Protocol::default());
    assert_eq!(codes(&judged), [(Severity::Borderline, Check::FileUnclear)]);
    assert_eq!(judged.verdict, Verdict::Undecided);

    let mut questioned = evidence(&measurement, 0);
    questioned.scan.questions = vec![Message::verbatim("a second scan follows")];
    let judged = judge_case(&case, &[questioned], None, &Protocol::default());
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .contains("a second scan follows")
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
}
