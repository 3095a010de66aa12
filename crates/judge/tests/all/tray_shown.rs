//! What the thickness of the material and the colours say of the tray.
#![allow(clippy::unwrap_used)]

use crate::one_scan::{codes, judged, judged_by};
use fixtures::impression::*;
use judge::{Case, Check, Evidence, Protocol, Severity, Stage, Verdict, judge_case};
use measure::tray_fit::Amount;
use measure::{
    Arch, Contrast, CoverMethod, EdgeExtent, NoColour, OuterExcess, Scanned, Spot, TrayNotPlaced,
    TrayThickness, Zone,
};
use rstest::rstest;

// Uncertainty of cover is 0.1 mm; limits are 0.2 (fail) and 1.0 mm (note).
#[rstest]
#[case::at_the_tray(0.0, Severity::Fail, Check::ShowThrough, Verdict::Rework)]
#[case::through_it(-0.4, Severity::Fail, Check::ShowThrough, Verdict::Rework)]
#[case::hardly_bare(0.15, Severity::Borderline, Check::ShowThrough, Verdict::Undecided)]
#[case::hardly_covered(0.25, Severity::Borderline, Check::ShowThrough, Verdict::Undecided)]
#[case::thin(0.5, Severity::Note, Check::ThinCover, Verdict::Accept)]
#[case::hardly_thin(0.95, Severity::Note, Check::ThinCover, Verdict::Accept)]
fn a_spot_is_judged_by_its_least_cover(
    #[case] min_mm: f64,
    #[case] severity: Severity,
    #[case] check: Check,
    #[case] verdict: Verdict,
) {
    let mut measurement = sound();
    measurement.spots = vec![spot(min_mm)];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(severity, check)]);
    assert_eq!(judged.verdict, verdict);
    let finding = &judged.findings[0];
    let figure = finding.figure.as_ref().unwrap();
    assert_eq!((figure.measured, figure.uncertainty), (min_mm, Some(0.1)));
    assert_eq!(finding.spot, Some(0));
    assert_eq!(finding.place.as_ref().unwrap().at, spot(0.0).centre);
}

// Nothing can be recorded inside the wall of a tray that is still there.
#[rstest]
#[case::at_the_tray(-0.1, Stage::Wash, Some("tray.stl"), Severity::Fail)]
#[case::in_the_wall_as_scanned(-0.4, Stage::Wash, Some("tray.stl"), Severity::Borderline)]
#[case::before_any_relief(-0.4, Stage::FirstPass, Some("tray.stl"), Severity::Fail)]
#[case::in_a_tray_of_the_shelf(-0.4, Stage::FirstPass, None, Severity::Borderline)]
#[case::at_a_tray_of_the_shelf(-0.1, Stage::FirstPass, None, Severity::Fail)]
fn an_impression_inside_the_wall_of_a_tray_that_may_have_changed_is_a_question(
    #[case] min_mm: f64,
    #[case] stage: Stage,
    #[case] tray: Option<&str>,
    #[case] severity: Severity,
) {
    let mut measurement = sound();
    measurement.spots = vec![spot(min_mm)];
    let scanned = Scanned::Impression(Box::new(measurement));
    let mut input = input(Some(Arch::Maxillary), stage);
    input.tray = tray.map(Into::into);
    let case = Case::of_one("test", input);
    let judged = judge_case(&case, &[evidence(&scanned, 0)], None, &Protocol::default());
    let found = judged
        .findings
        .iter()
        .find(|f| f.check == Check::ShowThrough);
    assert_eq!(found.unwrap().severity, severity);
}

#[test]
fn a_protocol_can_make_thin_material_fail() {
    let protocol =
        Protocol::from_text("[limits]\nthin_cover_mm = { value = 1.0, level = \"fail\" }").unwrap();
    let mut measurement = sound();
    measurement.spots = vec![spot(0.5), spot(0.25), spot(0.95)];
    let judged = judged_by(&measurement, &protocol);
    // The second may even show through, but that it is thin is sure.
    assert_eq!(
        codes(&judged),
        [
            (Severity::Fail, Check::ThinCover),
            (Severity::Fail, Check::ThinCover),
            (Severity::Borderline, Check::ThinCover)
        ]
    );
    assert_eq!(judged.verdict, Verdict::Rework);
}

#[test]
fn instructions_to_relieve_say_how_to_do_it_safely() {
    let mut measurement = sound();
    measurement.spots = vec![spot(0.0)];
    let instruction = &judged(&measurement).findings[0].instruction.to_string();
    for words in [
        "Relieve the tray",
        "out of the mouth",
        "eye",
        "dust",
        "sharp edges",
        "wash",
    ] {
        assert!(instruction.contains(words), "{words}: {instruction}");
    }
}

#[test]
fn tray_that_shows_at_a_declared_stop_is_right() {
    let mut measurement = sound();
    let mut at_stop = spot(0.0);
    at_stop.stop = Some(0);
    measurement.spots = vec![at_stop];
    measurement.stops = vec![stop(Some(0.0))];
    let judged = judged(&measurement);
    assert!(judged.findings.is_empty());
    assert_eq!(judged.verdict, Verdict::Accept);
}

#[test]
fn the_thin_ring_of_a_show_through_is_no_place_of_its_own() {
    let mut measurement = sound();
    let mut ring = spot(0.3);
    ring.around = Some(0);
    measurement.spots = vec![spot(0.0), ring];
    assert_eq!(
        codes(&judged(&measurement)),
        [(Severity::Fail, Check::ShowThrough)]
    );
}

#[rstest]
#[case::covered(Some(0.8), Severity::Fail, Verdict::Retake, "not fully seated here")]
#[case::hardly(
    Some(0.25),
    Severity::Borderline,
    Verdict::Undecided,
    "Look at this tissue stop"
)]
#[case::not_scanned(None, Severity::Borderline, Verdict::Undecided, "Scan this place")]
fn a_stop_that_does_not_show_means_an_unseated_tray(
    #[case] min_mm: Option<f64>,
    #[case] severity: Severity,
    #[case] verdict: Verdict,
    #[case] says: &str,
) {
    let mut measurement = sound();
    measurement.stops = vec![stop(min_mm)];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(severity, Check::TissueStop)]);
    assert_eq!(judged.verdict, verdict);
    assert!(judged.findings[0].instruction.to_string().contains(says));
}

#[test]
fn show_through_over_much_of_the_surface_is_no_case_for_a_wash() {
    let mut measurement = sound();
    let mut wide = spot(0.0);
    // 15 ± 2 % of 3600 mm² against a limit of 10 %.
    wide.area_mm2 = 540.0;
    wide.area_uncertainty_mm2 = 72.0;
    measurement.spots = vec![wide];
    let judged = judged(&measurement);
    assert_eq!(
        codes(&judged),
        [
            (Severity::Fail, Check::ShowThroughExtent),
            (Severity::Fail, Check::ShowThrough)
        ]
    );
    let share = judged.findings[0].figure.as_ref().unwrap();
    assert!(
        (share.measured - 15.0).abs() < 1e-12 && (share.uncertainty.unwrap() - 2.0).abs() < 1e-12
    );
    assert_eq!(judged.verdict, Verdict::Retake);
}

/// Without a tray scan, a patch of 5 ± 1 mm² of the tray's colour.
#[rstest]
#[case::surely(5.0, 1.0, 0.9, Severity::Fail, Verdict::Rework)]
#[case::hardly(1.5, 1.0, 0.9, Severity::Borderline, Verdict::Undecided)]
#[case::another_colour(5.0, 1.0, 0.2, Severity::Borderline, Verdict::Undecided)]
fn tray_is_told_by_its_colour(
    #[case] area_mm2: f64,
    #[case] area_uncertainty_mm2: f64,
    #[case] confidence: f64,
    #[case] severity: Severity,
    #[case] verdict: Verdict,
) {
    let mut measurement = sound();
    measurement.cover = Err(TrayNotPlaced::NoTray.into());
    measurement.tray_fit = None;
    measurement.colour = Some(Ok(colours(area_mm2)));
    measurement.spots = vec![Spot {
        area_mm2,
        area_uncertainty_mm2,
        min_mm: None,
        confidence: Some(confidence),
        ..spot(0.0)
    }];
    let judged = judged(&measurement);
    assert_eq!(
        codes(&judged),
        [
            (severity, Check::ShowThrough),
            (Severity::Note, Check::CoverNotJudged)
        ]
    );
    let figure = judged.findings[0].figure.as_ref().unwrap();
    assert_eq!((figure.measured, figure.unit.as_str()), (area_mm2, "mm2"));
    assert_eq!(judged.verdict, verdict);
    let entries = &judged.impressions[0].not_judged;
    assert!(
        entries
            .iter()
            .all(|entry| entry.what != Check::ShowThrough.into())
    );
    assert!(
        entries
            .iter()
            .any(|entry| entry.what == Check::ThinCover.into())
    );
}

/// Where cover contradicts colour one of the two errs, and no scan tells which;
/// where cover is not known, colour alone is judged.
#[rstest]
#[case::covered(Some(2.4), Severity::Borderline, "the thickness map finds material")]
#[case::not_known(None, Severity::Fail, "Relieve the tray")]
fn tray_by_its_colour_beside_a_cover_map(
    #[case] min_mm: Option<f64>,
    #[case] severity: Severity,
    #[case] says: &str,
) {
    let mut measurement = sound();
    measurement.colour = Some(Ok(colours(5.0)));
    measurement.spots = vec![Spot {
        min_mm,
        confidence: Some(0.9),
        ..spot(0.0)
    }];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(severity, Check::ShowThrough)]);
    let words = &judged.findings[0].instruction.to_string();
    assert!(words.contains(says), "{words}");
}

#[rstest]
#[case::bare(
    0.02,
    Severity::Fail,
    "A tray edge shows through over 6.2 ± 0.3 mm of its length. Relieve the tray"
)]
#[case::perhaps(0.15, Severity::Borderline, "along 6.2 ± 0.3 mm of a tray edge")]
fn a_bare_tray_edge_is_called_so(
    #[case] min_mm: f64,
    #[case] severity: Severity,
    #[case] says: &str,
) {
    let amount = |value, uncertainty| Amount { value, uncertainty };
    let mut measurement = sound();
    measurement.spots = vec![Spot {
        area_mm2: 0.8,
        edge: Some(EdgeExtent {
            length_mm: amount(6.2, 0.3),
            width_mm: amount(0.13, 0.02),
        }),
        ..spot(min_mm)
    }];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(severity, Check::ShowThrough)]);
    let words = &judged.findings[0].instruction.to_string();
    assert!(words.contains(says), "{words}");
}

#[rstest]
#[case::some(140.0, 15.0, &[(Severity::Note, Check::OuterExcess)])]
#[case::hardly_more_than_is_let_pass(60.0, 15.0, &[])]
fn material_on_the_outer_faces_is_noted(
    #[case] area_mm2: f64,
    #[case] uncertainty: f64,
    #[case] expected: &[(Severity, Check)],
) {
    let amount = |value, uncertainty| Amount { value, uncertainty };
    let mut measurement = sound();
    measurement.outer_excess = Some(OuterExcess {
        area_mm2: amount(area_mm2, uncertainty),
        thickest_mm: amount(2.3, 0.04),
        at: nalgebra::Point3::new(1.0, 2.0, 3.0),
        zone: Zone::ResidualRidge,
        side: None,
    });
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), expected);
    assert_eq!(judged.verdict, Verdict::Accept);
    if let Some(finding) = judged.findings.first() {
        let words = &finding.instruction.to_string();
        assert!(
            words.contains("up to 2.3 ± 0.1 mm") && words.contains("Trim"),
            "{words}"
        );
    }
}

#[test]
fn colours_that_tell_nothing_leave_it_undecided() {
    let mut measurement = sound();
    measurement.cover = Err(TrayNotPlaced::NoTray.into());
    measurement.colour = Some(Err(NoColour::TrayColourUnknown));
    let judged = judged(&measurement);
    assert_eq!(judged.verdict, Verdict::Undecided);
    let entries = &judged.impressions[0].not_judged;
    let why = &entries
        .iter()
        .find(|e| e.what == Check::ShowThrough.into())
        .unwrap()
        .why
        .to_string();
    assert!(
        why.contains("no tray scan") && why.contains("colour"),
        "{why}"
    );
}

#[test]
fn cover_by_a_stated_thickness_is_not_accepted_by_itself() {
    let mut measurement = sound();
    let cover = measurement.cover.as_mut().unwrap();
    cover.registration = None;
    cover.method = CoverMethod::TwoSided {
        tray: TrayThickness {
            mm: 2.0,
            uncertainty_mm: 0.1,
        },
    };
    cover.area_judged_mm2 = 800.0;
    measurement.tray_fit = None;
    assert_eq!(
        codes(&judged(&measurement)),
        [(Severity::Borderline, Check::CoverNotJudged)]
    );
    measurement.spots = vec![spot(0.02)];
    let judged = judged(&measurement);
    assert_eq!(judged.verdict, Verdict::Rework);
    assert_eq!(judged.findings[0].check, Check::ShowThrough);
}

#[test]
fn a_tray_that_stood_askew_is_told_in_words() {
    let mut measurement = sound();
    let seating = measurement
        .tray_fit
        .as_mut()
        .unwrap()
        .seating
        .as_mut()
        .unwrap();
    let much = |value| Amount {
        value,
        uncertainty: 0.4,
    };
    (seating.right_mm, seating.anterior_mm) = (much(-2.4), much(1.7));
    seating.front_up_deg = much(4.2);
    seating.wider_mm = much(-5.0);
    let judged = judged(&measurement);
    assert_eq!(
        codes(&judged),
        [
            (Severity::Note, Check::TraySeating),
            (Severity::Note, Check::TraySeating),
            (Severity::Note, Check::TraySize)
        ]
    );
    let text = &judged.findings[0].instruction.to_string();
    assert!(
        text.contains("too far to the patient's left and tilted, nearer to the tissue in front"),
        "{text}"
    );
    assert!(!text.contains("to the front"), "{text}");
    assert!(
        judged.findings[2]
            .instruction
            .to_string()
            .contains("narrower")
    );
    assert_eq!(judged.verdict, Verdict::Accept);
}

#[rstest]
#[case::closed(0.05, 0.02, &[])]
#[case::nearly_closed(0.18, 0.02, &[])]
#[case::open(0.5, 0.2, &[(Severity::Borderline, Check::TrayJoint)])]
#[case::stepped(0.0, 0.4, &[(Severity::Borderline, Check::TrayJoint)])]
#[case::one_inside_the_other(-0.4, 0.0, &[(Severity::Borderline, Check::TrayJoint)])]
fn pieces_of_a_tray_that_were_not_joined_are_asked_about(
    #[case] gap_mm: f64,
    #[case] step_mm: f64,
    #[case] expected: &[(Severity, Check)],
) {
    let joints = [measure::TrayJoint {
        pieces: [1, 2],
        gap_mm,
        step_mm,
        uncertainty_mm: 0.05,
    }];
    let measured = scanned(&sound());
    let evidence = Evidence {
        joints: &joints,
        ..evidence(&measured, 0)
    };
    let case = one(Some(Arch::Maxillary), Stage::Single);
    let judged = judge_case(&case, &[evidence], None, &Protocol::default());
    assert_eq!(codes(&judged), expected);
}

#[test]
fn another_colour_is_a_question_and_says_how_to_settle_it() {
    let mut measurement = sound();
    measurement.contrasts = vec![Contrast {
        centre: nalgebra::Point3::new(5.0, 6.0, 7.0),
        area_mm2: 12.0,
        zone: Zone::BuccalFlange,
        side: None,
    }];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), [(Severity::Borderline, Check::OtherColour)]);
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .contains("--tray-colour")
    );
}
