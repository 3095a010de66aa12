//! What is true of the mouth: a test for each mistake that instructions once made.
#![allow(clippy::unwrap_used)]

use crate::one_scan::{codes, judged, judged_by};
use fixtures::border::{measured, sound_border};
use fixtures::impression::{evidence, input, one, pair, scanned, sound, spot, stop};
use judge::{
    Case, Check, Consignment, Evidence, Finding, JawRelation, JudgedCase, Material, Protocol,
    Severity, Stage, Verdict, judge_case, words,
};
use measure::{Arch, Defect, DefectKind, Measurement, Zone};
use nalgebra::Point3;
use rstest::rstest;

fn with_record(record: JawRelation) -> Case {
    Case {
        scanner: None,
        jaw_relation: Some(record),
        ..one(Some(Arch::Maxillary), Stage::Single)
    }
}

fn judged_case(case: &Case) -> JudgedCase {
    let scanned = scanned(&sound());
    judge_case(case, &[evidence(&scanned, 0)], None, &Protocol::default())
}

// JAW-16 less JAW-14: about 3 to 9 mm with teeth. JAW-15: lips of 10 to 36 mm.
#[rstest]
#[case::papilla(None, Some(6.0), None)]
#[case::papilla_after_resorption(None, Some(12.0), None)]
#[case::lip(Some(21.5), None, None)]
#[case::both(Some(21.5), Some(7.5), None)]
#[case::lip_given_as_papilla(None, Some(21.0), Some("upper_lip_length_mm"))]
#[case::papilla_given_as_lip(Some(6.0), None, Some("papilla_to_lip_mm"))]
#[case::hardly_outside(Some(36.5), Some(15.5), None)]
fn the_papilla_distance_is_not_judged_by_the_length_of_the_lip(
    #[case] upper_lip_length_mm: Option<f64>,
    #[case] papilla_to_lip_mm: Option<f64>,
    #[case] asks_for: Option<&str>,
) {
    let judged = judged_case(&with_record(JawRelation {
        upper_lip_length_mm,
        papilla_to_lip_mm,
        ..JawRelation::default()
    }));
    let of_lip: Vec<&Finding> = (judged.findings.iter())
        .filter(|finding| finding.check == Check::LipLength)
        .collect();
    assert_eq!(of_lip.len(), usize::from(asks_for.is_some()));
    for (finding, key) in of_lip.iter().zip(asks_for) {
        assert_eq!(finding.severity, Severity::Note);
        assert!(
            finding.instruction.to_string().contains(key),
            "{}",
            finding.instruction.to_string()
        );
    }
}

/// Sound but for a thick flange over a good stretch.
fn thick_flange() -> Measurement {
    let mut border = sound_border();
    for station in &mut border.stations[20..50] {
        station.flange_thickness = measured(6.5);
    }
    Measurement {
        border: Ok(border),
        ..sound()
    }
}

#[test]
fn set_material_is_reduced_and_then_moulded_with_the_wash() {
    let judged = judged(&thick_flange());
    let finding = &judged.findings[0];
    assert_eq!(finding.check, Check::FlangeThickness);
    let reduce = finding
        .instruction
        .to_string()
        .find("reduce it from the outside");
    let wash = finding
        .instruction
        .to_string()
        .find("then take a wash")
        .unwrap();
    let mould = finding
        .instruction
        .to_string()
        .find("mould it again")
        .unwrap();
    assert!(
        reduce.unwrap() < wash && wash < mould,
        "{}",
        finding.instruction.to_string()
    );
    assert!(
        finding
            .instruction
            .to_string()
            .contains("while the wash is soft")
    );
}

#[test]
fn a_relieved_tray_gets_adhesive_before_the_wash() {
    let mut measurement = sound();
    measurement.spots = vec![spot(0.0)];
    let instruction = &judged(&measurement).findings[0].instruction.to_string();
    let order = [
        "Relieve the tray",
        "Clean and dry",
        "adhesive",
        "let it dry",
        "wash",
    ]
    .map(|words| instruction.find(words).unwrap());
    assert!(order.is_sorted(), "{instruction}");
    let safety = words::safety().to_string();
    assert!(instruction.ends_with(&safety), "{instruction}");
}

#[test]
fn thin_material_that_is_sound_is_not_ground_away() {
    let mut measurement = sound();
    measurement.spots = vec![spot(0.5)];
    let instruction = &judged(&measurement).findings[0].instruction.to_string();
    for order in ["Relieve", "relieve", "Grind", "reduce"] {
        assert!(!instruction.contains(order), "{instruction}");
    }
    assert!(instruction.contains("leave it as it is"), "{instruction}");
}

#[test]
fn asymmetry_says_that_the_other_side_may_be_too_long() {
    let mut border = sound_border();
    for number in 20..50 {
        border.stations[number].flange_height = measured(4.0);
        border.stations[number].opposite = Some(130 - number);
        border.stations[130 - number].flange_height = measured(12.0);
        border.stations[130 - number].opposite = Some(number);
    }
    let judged = judged(&Measurement {
        border: Ok(border),
        ..sound()
    });
    let asymmetry = (judged.findings.iter()).find(|f| f.check == Check::BorderAsymmetry);
    let instruction = &asymmetry.unwrap().instruction.to_string();
    assert!(
        instruction.contains("that side is too long"),
        "{instruction}"
    );
}

/// An impression of a stage with one void.
fn with_void(stage: Stage, zone: Zone, from_edge_mm: f64) -> String {
    let mut measurement = sound();
    measurement.tissue.as_mut().unwrap().defects = vec![Defect {
        kind: DefectKind::Void,
        centre: Point3::origin(),
        across_mm: 3.0,
        across_uncertainty_mm: 0.2,
        zone,
        from_edge_mm,
        ..fixtures::impression::void()
    }];
    let scanned = scanned(&measurement);
    let case = one(Some(Arch::Maxillary), stage);
    let judged = judge_case(&case, &[evidence(&scanned, 0)], None, &Protocol::default());
    judged.findings[0].instruction.to_string().clone()
}

#[test]
fn a_void_in_a_finished_wash_is_trimmed_off_the_cast_first() {
    let on_ridge = with_void(Stage::Wash, Zone::ResidualRidge, 12.0);
    assert!(
        on_ridge.contains("stone bead") && on_ridge.contains("trimmed"),
        "{on_ridge}"
    );
    assert!(!on_ridge.contains("seat"), "{on_ridge}");
    for at_seal in [
        with_void(Stage::Wash, Zone::PosteriorPalatalSeal, 12.0),
        with_void(Stage::Single, Zone::ResidualRidge, 1.0),
    ] {
        let [trim, seat] = ["trim", "seat"].map(|word| at_seal.find(word).unwrap());
        assert!(trim < seat, "{at_seal}");
    }
    let before = with_void(Stage::FirstPass, Zone::ResidualRidge, 12.0);
    assert!(before.contains("wash fills it"), "{before}");
}

/// An impression before its wash and the wash, each with its stop covered so far, mm.
fn stops(before_mm: f64, wash_mm: f64, stops_relieved: bool) -> JudgedCase {
    let [before, wash] = [before_mm, wash_mm].map(|mm| {
        let mut measurement = sound();
        measurement.stops = vec![stop(Some(mm))];
        scanned(&measurement)
    });
    let pair = Ok(pair());
    let impressions = [Stage::FirstPass, Stage::Wash].map(|stage| judge::ImpressionInput {
        stops: vec![Point3::origin()],
        stops_relieved,
        ..input(Some(Arch::Maxillary), stage)
    });
    let case = Case {
        scanner: None,
        impressions: impressions.into(),
        ..one(Some(Arch::Maxillary), Stage::Wash)
    };
    let both = [
        evidence(&before, 0),
        Evidence {
            pair: Some(&pair),
            ..evidence(&wash, 1)
        },
    ];
    judge_case(&case, &both, None, &Protocol::default())
}

#[test]
fn a_stop_under_the_wash_does_not_call_for_a_retake() {
    let shown_before = stops(0.0, 0.6, false);
    assert_eq!(codes(&shown_before), [(Severity::Note, Check::TissueStop)]);
    assert_eq!(shown_before.verdict, Verdict::Accept);

    let never_shown = stops(0.8, 1.4, false);
    assert_eq!(codes(&never_shown)[0], (Severity::Fail, Check::TissueStop));
    assert_eq!(never_shown.verdict, Verdict::Retake);
}

#[test]
fn relieved_stops_are_not_looked_for_on_the_wash() {
    let judged = stops(0.0, 0.6, true);
    assert_eq!(codes(&judged), []);
    let entry = &judged.impressions[1].not_judged[0];
    assert_eq!(entry.what, Check::TissueStop.into());
    assert!(
        entry.why.to_string().contains("relieved before the wash"),
        "{}",
        entry.why.to_string()
    );
}

#[test]
fn a_stop_on_a_wash_alone_is_a_question() {
    let mut measurement = sound();
    measurement.stops = vec![stop(Some(0.6))];
    let scanned = scanned(&measurement);
    let case = one(Some(Arch::Maxillary), Stage::Wash);
    let judged = judge_case(&case, &[evidence(&scanned, 0)], None, &Protocol::default());
    assert_eq!(codes(&judged), [(Severity::Borderline, Check::TissueStop)]);
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .contains("stops_relieved")
    );
}

fn two_jaws(upper: Stage, lower: Stage) -> JudgedCase {
    let [above, below] = [Arch::Maxillary, Arch::Mandibular].map(|arch| {
        let mut measurement = sound();
        measurement.frame.arch = arch;
        scanned(&measurement)
    });
    let case = Case {
        scanner: None,
        impressions: vec![
            input(Some(Arch::Maxillary), upper),
            input(Some(Arch::Mandibular), lower),
        ],
        ..one(None, Stage::Single)
    };
    let both = [evidence(&above, 0), evidence(&below, 1)];
    judge_case(&case, &both, None, &Protocol::default())
}

#[test]
fn a_jaw_without_its_wash_is_not_ready_to_be_worked_from() {
    let judged = two_jaws(Stage::Wash, Stage::FirstPass);
    assert_eq!(codes(&judged), [(Severity::Borderline, Check::WashMissing)]);
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert!(
        judged.findings[0]
            .instruction
            .to_string()
            .contains("The lower impression")
    );
    for stages in [
        [Stage::FirstPass, Stage::FirstPass],
        [Stage::Wash, Stage::Wash],
        [Stage::Wash, Stage::Single],
    ] {
        let judged = two_jaws(stages[0], stages[1]);
        assert_eq!(codes(&judged), [], "{stages:?}");
    }
}

#[test]
fn an_impression_before_its_wash_is_not_sent() {
    let mut case = one(Some(Arch::Maxillary), Stage::FirstPass);
    case.consignment = Some(Consignment {
        no_jaw_relation_because: Some("later".into()),
        one_arch_because: Some("the lower jaw has its teeth".into()),
        prescription: Some(true),
        disinfectant: Some("as the protocol says".into()),
        disinfection_min: Some(10.0),
        expected: vec!["upper impression".into()],
        packed: vec!["upper impression".into()],
    });
    let judged = judged_case(&case);
    assert_eq!(codes(&judged), [(Severity::Borderline, Check::WashMissing)]);
}

#[test]
fn two_readings_that_agree_to_a_millimetre_do_not_decide_a_tenth() {
    let of = |occlusion: f64| {
        let judged = judged_case(&with_record(JawRelation {
            vertical_dimension_mm: Some(occlusion),
            rest_vertical_dimension_mm: Some(69.0),
            ..JawRelation::default()
        }));
        let found = codes(&judged);
        let uncertainty = judged
            .findings
            .first()
            .and_then(|f| f.figure.as_ref()?.uncertainty);
        assert!(uncertainty.is_none_or(|mm| (0.9..1.1).contains(&mm)));
        found
    };
    let interocclusal = |severity| vec![(severity, Check::InterocclusalDistance)];
    assert_eq!(
        of(69.1),
        interocclusal(Severity::Borderline),
        "-0.1 mm is not impossible yet"
    );
    assert_eq!(of(70.5), interocclusal(Severity::Fail));
    assert_eq!(of(66.0), []);
}

#[test]
fn a_relation_section_with_a_lip_length_alone_relates_no_jaws() {
    for (record, is_missing) in [
        (JawRelation::default(), true),
        (
            JawRelation {
                papilla_to_lip_mm: Some(7.0),
                ..JawRelation::default()
            },
            true,
        ),
        (
            JawRelation {
                vertical_dimension_mm: Some(66.0),
                ..JawRelation::default()
            },
            false,
        ),
    ] {
        let mut case = with_record(record);
        case.consignment = Some(Consignment {
            no_jaw_relation_because: None,
            one_arch_because: Some("the lower jaw has its teeth".into()),
            prescription: Some(true),
            disinfectant: Some("as the protocol says".into()),
            disinfection_min: Some(10.0),
            expected: vec!["upper impression".into()],
            packed: vec!["upper impression".into()],
        });
        let judged = judged_case(&case);
        let expected = [(Severity::Borderline, Check::ParcelIncomplete)];
        assert_eq!(codes(&judged), &expected[..usize::from(is_missing)]);
    }
}

#[rstest]
#[case::alginate_at_once(Some(Material::Alginate), Some(0.2), false)]
#[case::alginate_too_late(Some(Material::Alginate), Some(2.0), true)]
#[case::silicone_next_day(Some(Material::AdditionSilicone), Some(30.0), false)]
#[case::silicone_too_late(Some(Material::AdditionSilicone), Some(400.0), true)]
#[case::no_norm(Some(Material::Polyether), Some(400.0), false)]
#[case::not_stated(None, Some(400.0), false)]
fn material_and_time_are_judged_together(
    #[case] material: Option<Material>,
    #[case] hours_since_taken: Option<f64>,
    #[case] is_noted: bool,
) {
    let mut case = one(Some(Arch::Maxillary), Stage::Single);
    case.impressions[0].material = material;
    case.impressions[0].hours_since_taken = hours_since_taken;
    let judged = judged_case(&case);
    let expected = [(Severity::Note, Check::ImpressionAge)];
    assert_eq!(codes(&judged), &expected[..usize::from(is_noted)]);
}

#[test]
fn a_stated_thickness_is_not_made_surer_by_more_scanning() {
    let mut measurement = sound();
    let cover = measurement.cover.as_mut().unwrap();
    cover.uncertainty_mm = 0.6;
    cover.method = measure::CoverMethod::TwoSided {
        tray: measure::TrayThickness {
            mm: 2.0,
            uncertainty_mm: 0.5,
        },
    };
    let judged = judged_by(&measurement, &Protocol::default());
    let found = (judged.findings.iter()).find(|f| f.check == Check::CoverUncertainty);
    assert!(found.unwrap().instruction.to_string().contains("caliper"));
}
