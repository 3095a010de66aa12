//! Verdicts, and the order of findings, on hand-built measurements.
#![allow(clippy::unwrap_used)]

use crate::one_scan::{codes, judged};
use fixtures::impression::*;
use judge::{Case, Check, Evidence, Protocol, Severity, Stage, Verdict, judge_case};
use measure::record::NoRelation;
use measure::{Arch, Measurement, TrayNotPlaced};
use rstest::rstest;

#[test]
fn a_sound_impression_is_accepted_and_says_what_was_not_judged() {
    let judged = judged(&sound());
    assert_eq!(judged.verdict, Verdict::Accept);
    assert_eq!(judged.impressions[0].verdict, Verdict::Accept);
    assert!(judged.findings.is_empty());
    assert!(judged.impressions[0].not_judged.is_empty());
}

#[rstest]
#[case(TrayNotPlaced::NoTray)]
#[case(TrayNotPlaced::NoOuterSurface)]
#[case(TrayNotPlaced::LittleOuterSurface { outer_cm2: 15.0, tissue_cm2: 40.0 })]
#[case(TrayNotPlaced::DoesNotFit { fitting_percent: 3.0 })]
#[case(TrayNotPlaced::Ambiguous { spread_mm: 2.0 })]
#[case(TrayNotPlaced::NoneOfShelf { trays: 8, nearest: None })]
#[case(TrayNotPlaced::AlikeOnShelf { one: "a".to_owned(), other: "b".to_owned() })]
#[case(TrayNotPlaced::TooCoarse { median_edge_mm: 1.4 })]
fn without_cover_nothing_is_accepted(#[case] why: TrayNotPlaced) {
    let mut measurement = sound();
    measurement.cover = Err(why.clone().into());
    let judged = judged(&measurement);
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert_eq!(
        codes(&judged),
        [(Severity::Borderline, Check::CoverNotJudged)]
    );
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .contains(&why.to_string())
    );
    let entries = &judged.impressions[0].not_judged;
    for check in [Check::ShowThrough, Check::ThinCover] {
        assert!(
            entries
                .iter()
                .any(|e| e.what == check.into() && e.why.to_string() == why.to_string())
        );
    }
}

#[rstest]
#[case::uncertain(|m: &mut Measurement| m.cover.as_mut().unwrap().uncertainty_mm = 0.4, Check::CoverUncertainty)]
#[case::half_a_scan(|m: &mut Measurement| m.cover.as_mut().unwrap().area_judged_mm2 = 2000.0, Check::TissueArea)]
#[case::coarse(|m: &mut Measurement| m.scan.integrity.median_edge = 1.2, Check::ScanResolution)]
#[case::nan(|m: &mut Measurement| m.cover.as_mut().unwrap().uncertainty_mm = f64::NAN, Check::CoverUncertainty)]
fn a_poor_measurement_bars_acceptance(#[case] spoil: fn(&mut Measurement), #[case] check: Check) {
    let mut measurement = sound();
    spoil(&mut measurement);
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(Severity::Borderline, check)]);
    assert_eq!(judged.verdict, Verdict::Undecided);
}

fn two_passes() -> Case {
    Case {
        scanner: None,
        trays: None,
        id: "two".into(),
        impressions: vec![
            input(Some(Arch::Maxillary), Stage::FirstPass),
            input(Some(Arch::Maxillary), Stage::Wash),
        ],
        jaw_relation: None,
        consignment: None,
        labels: Default::default(),
        scanned_at: None,
    }
}

#[test]
fn a_wash_decides_and_its_first_pass_is_history() {
    let mut first = sound();
    first.spots = vec![spot(0.0)];
    let first = scanned(&first);
    let wash = scanned(&sound());
    let both: Vec<Evidence<'_>> = vec![evidence(&first, 0), evidence(&wash, 1)];
    let judged = judge_case(&two_passes(), &both, None, &Protocol::default());
    assert_eq!(judged.impressions[0].verdict, Verdict::Rework);
    assert_eq!(judged.impressions[1].verdict, Verdict::Accept);
    assert_eq!(judged.verdict, Verdict::Accept);
    assert!(judged.findings.iter().all(|f| f.severity == Severity::Note));
    assert!(
        judged
            .findings
            .iter()
            .any(|f| f.check == Check::ShowThrough && f.impression == Some(0))
    );

    let turned: Vec<Evidence<'_>> = vec![evidence(&wash, 0), evidence(&first, 1)];
    let judged = judge_case(&two_passes(), &turned, None, &Protocol::default());
    assert_eq!(judged.verdict, Verdict::Rework);
}

#[test]
fn a_question_about_one_jaw_does_not_hide_that_the_other_must_be_mended() {
    let mut upper = sound();
    upper.spots = vec![spot(0.0)];
    let upper = scanned(&upper);
    // Found maxillary, declared mandibular.
    let lower = scanned(&sound());
    let case = Case {
        scanner: None,
        trays: None,
        impressions: vec![
            input(Some(Arch::Maxillary), Stage::Wash),
            input(Some(Arch::Mandibular), Stage::Wash),
        ],
        ..two_passes()
    };
    let both: Vec<Evidence<'_>> = vec![evidence(&upper, 0), evidence(&lower, 1)];
    let judged = judge_case(&case, &both, None, &Protocol::default());
    assert_eq!(judged.impressions[1].verdict, Verdict::Undecided);
    assert_eq!(judged.verdict, Verdict::Rework);
}

#[test]
fn an_impression_that_nobody_measured_is_never_accepted() {
    let measured = scanned(&sound());
    let judged = judge_case(
        &two_passes(),
        &[evidence(&measured, 0)],
        None,
        &Protocol::default(),
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
}

#[test]
fn a_record_that_could_not_be_measured_is_not_passed_in_silence() {
    let measurement = scanned(&sound());
    let case = one(Some(Arch::Maxillary), Stage::Single);
    let evidence = [evidence(&measurement, 0)];
    let relation = Err(NoRelation::JawsNotOpposed);
    let judged = judge_case(&case, &evidence, Some(&relation), &Protocol::default());
    assert_eq!(
        codes(&judged),
        [(Severity::Borderline, Check::JawRelationNotJudged)]
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert_eq!(judged.impressions[0].verdict, Verdict::Accept);
}

#[test]
fn the_same_scan_as_first_pass_and_wash_is_asked_about() {
    let wash = scanned(&sound());
    let same: Vec<Evidence<'_>> = vec![evidence(&wash, 0), evidence(&wash, 0)];
    let judged = judge_case(&two_passes(), &same, None, &Protocol::default());
    assert_eq!(judged.findings[0].check, Check::FileUnclear);
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert_eq!(judged.impressions[1].verdict, Verdict::Undecided);
}

#[test]
fn findings_stand_in_order_of_urgency() {
    let mut measurement = sound();
    measurement.spots = vec![spot(0.6), spot(0.15), spot(0.0)];
    measurement.stops = vec![stop(Some(0.9))];
    let judged = judged(&measurement);
    assert_eq!(
        codes(&judged),
        [
            (Severity::Fail, Check::TissueStop),
            (Severity::Fail, Check::ShowThrough),
            (Severity::Borderline, Check::ShowThrough),
            (Severity::Note, Check::ThinCover),
        ]
    );
}
