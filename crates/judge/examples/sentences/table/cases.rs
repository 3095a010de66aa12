//! Questions, and cases as a whole.

use fixtures::impression::{evidence, figures, input, one, pair, scanned, sound, spot, stop};
use judge::{
    Case, Consignment, Evidence, Finding, JawRelation, Material, Protocol, Stage, UnitReading,
    judge_case,
};
use measure::pair::{NoPair, PassPair, PlaceNow};
use measure::record::{JawRelation as Related, NoRelation, Space};
use measure::{
    Arch, Measured, NotAnImpression, PartsNotJoined, Scanned, Side, SpotKind, TrayNotPlaced, Zone,
};
use mesh::Unit;
use messages::message;
use nalgebra::{Isometry3, Point3};

/// What is asked before anything is judged.
pub fn questions(protocol: &Protocol) -> Vec<Vec<Finding>> {
    let mut all = Vec::new();
    let measurement = sound();
    let shown = scanned(&measurement);
    let mut ask = |declared, scanned: &Scanned, change: &dyn Fn(&mut Evidence<'_>)| {
        let mut evidence = evidence(scanned, 0);
        change(&mut evidence);
        let case = one(declared, Stage::Single);
        all.push(judge_case(&case, &[evidence], None, protocol).findings);
    };
    for unit in [
        UnitReading::Inferred(Unit::Metre),
        UnitReading::Ambiguous(vec![Unit::Centimetre, Unit::Inch]),
    ] {
        ask(None, &shown, &|e| e.scan.unit = unit.clone());
    }
    ask(None, &shown, &|e| {
        e.scan.questions = vec![message!("read-second-scan", triangles = 2_u64)]
    });
    ask(None, &shown, &|e| {
        let sum = e.scan.sha256.clone();
        if let Some(tray) = &mut e.tray {
            tray.sha256 = sum;
        }
    });
    ask(Some(Arch::Mandibular), &shown, &|_| {});
    let mut bare = sound();
    bare.spots = vec![spot(0.0)];
    ask(Some(Arch::Mandibular), &scanned(&bare), &|_| {});
    let mirrored = Err(NoPair::Mirrored);
    let case = one(Some(Arch::Maxillary), Stage::Wash);
    let wash = Evidence {
        pair: Some(&mirrored),
        ..evidence(&shown, 0)
    };
    let of_pair = judge_case(&case, &[wash], None, protocol).findings;
    let mut unsure = sound();
    unsure.frame.arch_confidence = 0.2;
    unsure.frame.confidence = 0.2;
    ask(None, &scanned(&unsure), &|_| {});
    for what in [
        NotAnImpression::Positive,
        NotAnImpression::Cast,
        NotAnImpression::Half,
        NotAnImpression::WrongSize { longest_mm: 30.0 },
        NotAnImpression::Teeth { teeth: 3 },
        NotAnImpression::Shell { wall_mm: 2.0 },
        NotAnImpression::Parts(PartsNotJoined::Step { step_mm: 1.5 }),
        NotAnImpression::TwoScans {
            larger_mm2: 5200.0,
            smaller_mm2: 4100.0,
        },
        NotAnImpression::NoTrough,
    ] {
        ask(None, &Scanned::Else(what, figures()), &|_| {});
    }
    all.push(of_pair);
    let twice = Case {
        impressions: [Arch::Maxillary, Arch::Mandibular]
            .map(|arch| input(Some(arch), Stage::Single))
            .into(),
        ..one(None, Stage::Single)
    };
    let both = [evidence(&shown, 0), evidence(&shown, 0)];
    all.push(judge_case(&twice, &both, None, protocol).findings);
    all
}

/// What is judged of a case as a whole.
pub fn cases(protocol: &Protocol) -> Vec<Vec<Finding>> {
    let mut all = Vec::new();
    let shown = scanned(&sound());
    let mut judge = |case: &Case, relation: Option<&Result<Related, NoRelation>>| {
        all.push(judge_case(case, &[evidence(&shown, 0)], relation, protocol).findings);
    };
    let upper = || one(Some(Arch::Maxillary), Stage::Single);
    for (rest, occlusion, lip, papilla) in [
        (66.0, 69.0, 5.0, 21.0),
        (66.3, 66.0, 60.0, -3.0),
        (76.0, 66.0, 21.0, 7.0),
        (72.0, 66.0, 21.0, 7.0),
    ] {
        let case = Case {
            scanner: None,
            jaw_relation: Some(JawRelation {
                vertical_dimension_mm: Some(occlusion),
                rest_vertical_dimension_mm: Some(rest),
                upper_lip_length_mm: Some(lip),
                papilla_to_lip_mm: Some(papilla),
                ..JawRelation::default()
            }),
            ..upper()
        };
        judge(&case, None);
    }
    judge(&upper(), Some(&Err(NoRelation::JawsNotOpposed)));
    judge(&upper(), Some(&Ok(narrow())));
    let nothing = Consignment {
        no_jaw_relation_because: None,
        one_arch_because: None,
        prescription: None,
        disinfectant: None,
        disinfection_min: None,
        expected: Vec::new(),
        packed: Vec::new(),
    };
    let short = Consignment {
        prescription: Some(false),
        disinfectant: Some("stated".into()),
        disinfection_min: Some(2.0),
        expected: vec!["upper impression".into()],
        ..nothing.clone()
    };
    let no_time = Consignment {
        disinfection_min: None,
        ..short.clone()
    };
    let no_agent = Consignment {
        disinfectant: None,
        ..short.clone()
    };
    for consignment in [nothing, short, no_time, no_agent] {
        let mut case = one(Some(Arch::Maxillary), Stage::FirstPass);
        case.consignment = Some(consignment);
        judge(&case, None);
    }
    for (material, hours) in [
        (Material::Alginate, 2.0),
        (Material::AdditionSilicone, 400.0),
    ] {
        let mut case = upper();
        case.impressions[0].material = Some(material);
        case.impressions[0].hours_since_taken = Some(hours);
        judge(&case, None);
    }
    all.extend(washes(protocol));
    all
}

fn narrow() -> Related {
    Related {
        record_from_maxilla: Isometry3::identity(),
        record_from_mandible: Isometry3::identity(),
        stations: vec![Space {
            at: Point3::origin(),
            from_front_mm: 0.0,
            side: None,
            mm: Ok(4.0),
        }],
        uncertainty_mm: 0.3,
        ridge_angle_deg: 30.0,
        ridge_angle_uncertainty_deg: 1.5,
    }
}

/// A wash over an impression before it.
fn washes(protocol: &Protocol) -> Vec<Vec<Finding>> {
    let case = Case {
        scanner: None,
        impressions: [Stage::FirstPass, Stage::Wash]
            .map(|stage| input(Some(Arch::Maxillary), stage))
            .into(),
        ..one(None, Stage::Single)
    };
    let mut before = sound();
    before.spots = vec![spot(0.0)];
    before.stops = vec![stop(Some(0.8))];
    let before = scanned(&before);
    let mut after = sound();
    after.cover = Err(TrayNotPlaced::NoTray.into());
    after.tray_fit = None;
    let uncovered = scanned(&after);
    let mut covered_stop = sound();
    covered_stop.stops = vec![stop(Some(0.8))];
    let covered_stop = scanned(&covered_stop);
    let mut thick: PassPair = pair();
    if let Ok(changes) = &mut thick.border_changes {
        for change in &mut changes[80..110] {
            *change = Some(Measured {
                mm: -3.0,
                uncertainty_mm: 0.2,
            });
        }
    }
    if let Ok(wash) = &mut thick.wash {
        (wash.p95_mm, wash.p05_mm) = (4.0, 0.1);
        wash.places = [0.0, 0.2]
            .map(|cover_mm| PlaceNow {
                spot: 0,
                kind: SpotKind::ShowThrough,
                area_mm2: 5.0,
                was_mm: Some(0.0),
                was_uncertainty_mm: 0.1,
                zone: Zone::ResidualRidge,
                side: Some(Side::Right),
                at: Point3::origin(),
                cover_mm: Some(cover_mm),
                uncertainty_mm: 0.1,
            })
            .into();
    }
    let pair = Ok(thick);
    [&uncovered, &covered_stop]
        .map(|wash| {
            let both = [
                evidence(&before, 0),
                Evidence {
                    pair: Some(&pair),
                    ..evidence(wash, 1)
                },
            ];
            judge_case(&case, &both, None, protocol).findings
        })
        .into()
}
