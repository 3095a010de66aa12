//! Defects of the tissue surface, by size and place.
#![allow(clippy::unwrap_used)]

use crate::one_scan::{codes, judged};
use fixtures::border::notch;
use fixtures::impression::{sound, spot};
use judge::{Check, Severity, Verdict};
use measure::landmarks::{Extent, Landmark, LandmarkName, LandmarkSource, Seen};
use measure::{Defect, DefectKind, NoTissue, Spot, Zone};
use nalgebra::{Point3, Vector3};
use rstest::rstest;

fn defect(kind: DefectKind, across_mm: f64, zone: Zone) -> Defect {
    Defect {
        kind,
        centre: Point3::new(5.0, 6.0, 7.0),
        area_mm2: 1.0,
        depth_mm: (kind != DefectKind::Hole).then_some(0.5),
        depth_uncertainty_mm: (kind != DefectKind::Hole).then_some(0.05),
        across_mm,
        across_uncertainty_mm: 0.1,
        length_mm: (kind == DefectKind::Fold).then_some(across_mm),
        outline: Vec::new(),
        from_edge_mm: 10.0,
        zone,
        side: None,
    }
}

// Uncertainty of the width is 0.1 mm. On the ridge voids fail above 2 mm and are
// noted above 1 mm; on the flange, away from the border, they are noted above 2 mm.
#[rstest]
#[case::void_on_the_ridge(DefectKind::Void, 2.2, Zone::ResidualRidge, Some((Severity::Fail, Check::Void)), Verdict::Rework)]
#[case::hardly(DefectKind::Void, 2.05, Zone::ResidualRidge, Some((Severity::Borderline, Check::Void)), Verdict::Undecided)]
#[case::bubble_on_the_ridge(DefectKind::Void, 1.2, Zone::ResidualRidge, Some((Severity::Note, Check::Void)), Verdict::Accept)]
#[case::small(DefectKind::Void, 0.8, Zone::ResidualRidge, None, Verdict::Accept)]
#[case::void_on_the_flange(DefectKind::Void, 1.5, Zone::BuccalFlange, None, Verdict::Accept)]
#[case::large_on_the_flange(DefectKind::Void, 2.5, Zone::BuccalFlange, Some((Severity::Note, Check::Void)), Verdict::Accept)]
#[case::nodule(DefectKind::Nodule, 1.5, Zone::PosteriorPalatalSeal, Some((Severity::Borderline, Check::Nodule)), Verdict::Undecided)]
#[case::fold(DefectKind::Fold, 4.0, Zone::Palate, Some((Severity::Note, Check::Fold)), Verdict::Accept)]
#[case::fold_on_the_ridge(DefectKind::Fold, 4.0, Zone::ResidualRidge, Some((Severity::Borderline, Check::Fold)), Verdict::Undecided)]
#[case::hole(DefectKind::Hole, 2.5, Zone::Palate, Some((Severity::Borderline, Check::Hole)), Verdict::Undecided)]
#[case::hole_on_the_ridge(DefectKind::Hole, 2.5, Zone::ResidualRidge, Some((Severity::Borderline, Check::Hole)), Verdict::Undecided)]
#[case::small_hole(DefectKind::Hole, 1.5, Zone::Palate, None, Verdict::Accept)]
#[case::small_hole_on_the_ridge(DefectKind::Hole, 1.5, Zone::ResidualRidge, Some((Severity::Note, Check::Hole)), Verdict::Accept)]
fn a_defect_is_judged_by_its_size_and_place(
    #[case] kind: DefectKind,
    #[case] across_mm: f64,
    #[case] zone: Zone,
    #[case] finding: Option<(Severity, Check)>,
    #[case] verdict: Verdict,
) {
    let mut measurement = sound();
    measurement.tissue.as_mut().unwrap().defects = vec![defect(kind, across_mm, zone)];
    let judged = judged(&measurement);
    assert_eq!(codes(&judged), Vec::from_iter(finding));
    assert_eq!(judged.verdict, verdict);
    if finding.is_some() {
        assert_eq!(judged.findings[0].defect, Some(0));
        assert_eq!(judged.findings[0].place.as_ref().unwrap().zone, zone);
    }
}

#[test]
fn beside_the_border_a_void_is_judged_strictly() {
    let mut measurement = sound();
    let mut void = defect(DefectKind::Void, 2.5, Zone::BuccalFlange);
    void.from_edge_mm = 2.0;
    measurement.tissue.as_mut().unwrap().defects = vec![void];
    assert_eq!(
        codes(&judged(&measurement)),
        [(Severity::Fail, Check::Void)]
    );
}

#[rstest]
#[case::of_a_bubble(3.0, Severity::Fail, Verdict::Rework)]
#[case::of_a_dent(5.0, Severity::Borderline, Verdict::Undecided)]
fn a_wide_void_over_a_thin_place_is_a_question(
    #[case] across_mm: f64,
    #[case] severity: Severity,
    #[case] verdict: Verdict,
) {
    let mut measurement = sound();
    let void = defect(DefectKind::Void, across_mm, Zone::ResidualRidge);
    let thin = Spot {
        centre: void.centre + Vector3::new(0.0, 1.0, -0.5),
        ..spot(0.4)
    };
    measurement.tissue.as_mut().unwrap().defects = vec![void];
    measurement.spots = vec![thin];
    let judged = judged(&measurement);
    let voids = judged.findings.iter().filter(|f| f.check == Check::Void);
    let severities: Vec<Severity> = voids.map(|f| f.severity).collect();
    assert_eq!(severities, [severity]);
    assert_eq!(judged.verdict, verdict);
}

// A pad is no narrower than 4.3 mm; a frenum's notch ends where its landmark lies.
#[rstest]
#[case::on_a_pad(
    LandmarkName::RetromolarPad,
    Zone::RetromolarPad,
    5.0,
    0.0,
    Severity::Borderline
)]
#[case::too_small_for_a_pad(
    LandmarkName::RetromolarPad,
    Zone::RetromolarPad,
    3.0,
    0.0,
    Severity::Fail
)]
#[case::at_a_frenum(
    LandmarkName::LingualFrenum,
    Zone::LingualFlange,
    3.0,
    2.0,
    Severity::Borderline
)]
#[case::away_from_a_frenum(
    LandmarkName::LingualFrenum,
    Zone::LingualFlange,
    3.0,
    4.0,
    Severity::Fail
)]
#[case::on_another_landmark(LandmarkName::BuccalShelf, Zone::BuccalShelf, 5.0, 0.0, Severity::Fail)]
fn a_hollow_where_a_landmark_leaves_one_is_a_question(
    #[case] name: LandmarkName,
    #[case] zone: Zone,
    #[case] across_mm: f64,
    #[case] away_mm: f64,
    #[case] severity: Severity,
) {
    let mut measurement = sound();
    let mut void = defect(DefectKind::Void, across_mm, zone);
    void.from_edge_mm = 2.0;
    measurement.landmarks = vec![Landmark {
        name,
        side: void.side,
        source: LandmarkSource::Detected,
        seen: Ok(Seen {
            point: void.centre + Vector3::new(away_mm, 0.0, 0.0),
            uncertainty_mm: 0.5,
            confidence: 0.9,
            relief_mm: Some(2.0),
        }),
        expected: None,
        zone: Some(zone),
        extent: Extent::default(),
        nearby: Vec::new(),
    }];
    measurement.tissue.as_mut().unwrap().defects = vec![void];
    let judged = judged(&measurement);
    let voids = judged.findings.iter().filter(|f| f.check == Check::Void);
    let severities: Vec<Severity> = voids.map(|f| f.severity).collect();
    assert_eq!(severities, [severity]);
}

// Two notches of 3 mm at 0 and 6 mm along the border; station 6 lies halfway between them.
#[rstest]
#[case::between_the_bands(3.0, 1.0, 2.5, Severity::Note)]
#[case::beside_them(12.0, 1.0, 2.5, Severity::Borderline)]
#[case::away_from_the_border(3.0, 2.5, 2.5, Severity::Borderline)]
#[case::higher_than_they_are_deep(3.0, 1.0, 3.5, Severity::Borderline)]
fn a_bump_between_two_notches_is_not_to_be_trimmed(
    #[case] along_mm: f64,
    #[case] from_edge_mm: f64,
    #[case] height_mm: f64,
    #[case] severity: Severity,
) {
    let mut measurement = sound();
    let bump = Defect {
        centre: Point3::new(along_mm, 0.0, 8.0),
        depth_mm: Some(height_mm),
        from_edge_mm,
        ..defect(DefectKind::Nodule, 4.0, Zone::LabialFlange)
    };
    measurement.border.as_mut().unwrap().dips = vec![notch(0), notch(12)];
    measurement.tissue.as_mut().unwrap().defects = vec![bump];
    assert_eq!(codes(&judged(&measurement)), [(severity, Check::Nodule)]);
}

#[test]
fn what_a_coarse_scan_cannot_show_is_said() {
    let mut measurement = sound();
    measurement.tissue.as_mut().unwrap().zones[0].least_across_mm = 1.6;
    let judged = judged(&measurement);
    assert_eq!(judged.verdict, Verdict::Accept);
    let entry = judged.impressions[0]
        .not_judged
        .iter()
        .find(|entry| entry.what == Check::Void.into())
        .unwrap();
    assert!(
        entry.why.to_string().contains("1.6 mm"),
        "{}",
        entry.why.to_string()
    );
    let unseen = (Severity::Borderline, Check::VoidUnseen);
    measurement.tissue.as_mut().unwrap().zones[0].least_across_mm = 2.3;
    assert_eq!(codes(&self::judged(&measurement))[0], unseen);
    measurement.tissue = Err(NoTissue::TooCoarse {
        median_edge_mm: 0.9,
    });
    let judged = self::judged(&measurement);
    assert_eq!(codes(&judged), [unseen]);
    assert_eq!(judged.verdict, Verdict::Undecided);
    for check in [Check::Void, Check::Nodule, Check::Fold, Check::Hole] {
        let said = judged.impressions[0].not_judged.iter();
        assert_eq!(said.filter(|entry| entry.what == check.into()).count(), 1);
    }
}

#[test]
fn a_part_that_was_scanned_badly_is_named() {
    let mut measurement = sound();
    let zones = &mut measurement.tissue.as_mut().unwrap().zones;
    zones[0].noise_mm = 0.08;
    zones[0].doubled_mm2 = 60.0;
    let mut good = zones[0].clone();
    good.zone = Zone::Palate;
    good.noise_mm = 0.01;
    good.doubled_mm2 = 0.0;
    zones.push(good);
    let judged = judged(&measurement);
    assert_eq!(judged.verdict, Verdict::Accept);
    assert_eq!(codes(&judged), [(Severity::Note, Check::ScanQuality); 2]);
    for finding in &judged.findings {
        assert!(finding.instruction.to_string().contains("residual ridge"));
    }
}
