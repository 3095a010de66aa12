//! Findings on hand-built borders.
#![allow(clippy::unwrap_used)]

use fixtures::border::{COUNT, measured, short, sound_border};
use fixtures::impression::*;
use judge::{Check, Finding, JudgedCase, Part, Protocol, Severity, Stage, Verdict, judge_case};
use measure::{Arch, Border, BorderPart, Dip, DipKind, Missing, NoBorder, Side, Station, Zone};
use rstest::rstest;

fn judged_by(border: Result<Border, NoBorder>, protocol: &Protocol) -> JudgedCase {
    let mut measurement = sound();
    measurement.border = border;
    let case = one(Some(Arch::Maxillary), Stage::Single);
    judge_case(
        &case,
        &[evidence(&scanned(&measurement), 0)],
        None,
        protocol,
    )
}

/// The sound border with some stations changed, judged.
fn judged(stations: impl IntoIterator<Item = usize>, spoil: fn(&mut Station)) -> JudgedCase {
    let mut border = sound_border();
    for number in stations {
        spoil(&mut border.stations[number]);
    }
    judged_by(Ok(border), &Protocol::default())
}

/// The same without the notch of a frenum, in which a thin edge is right.
fn without_notch(stations: impl IntoIterator<Item = usize>, spoil: fn(&mut Station)) -> JudgedCase {
    let mut border = sound_border();
    border.dips.clear();
    for number in stations {
        spoil(&mut border.stations[number]);
    }
    judged_by(Ok(border), &Protocol::default())
}

fn only(judged: &JudgedCase) -> &Finding {
    assert_eq!(judged.findings.len(), 1, "{:?}", judged.findings);
    &judged.findings[0]
}

#[test]
fn a_sound_border_has_no_findings_and_its_frenum_is_right() {
    let judged = judged([398, 399, 0, 1, 2], |s| s.flange_height = measured(1.0));
    assert!(judged.findings.is_empty());
    assert_eq!(judged.verdict, Verdict::Accept);
}

// Stations 100 to 119 are 10 mm of the left buccal flange. Uncertainty is 0.1 mm.
#[rstest]
#[case::bare(|s: &mut Station| s.overlap = measured(0.0), Check::TrayAtBorder, Severity::Fail, Verdict::Rework)]
#[case::hardly_bare(|s: &mut Station| s.overlap = measured(0.25), Check::TrayAtBorder, Severity::Borderline, Verdict::Undecided)]
#[case::near(|s: &mut Station| s.overlap = measured(1.5), Check::BorderOverlap, Severity::Note, Verdict::Accept)]
#[case::far(|s: &mut Station| s.overlap = measured(7.0), Check::BorderOverlap, Severity::Note, Verdict::Accept)]
#[case::knife(|s: &mut Station| s.border_radius = measured(0.5), Check::BorderRadius, Severity::Fail, Verdict::Rework)]
#[case::nearly_a_knife(|s: &mut Station| s.border_radius = measured(0.75), Check::BorderRadius, Severity::Borderline, Verdict::Undecided)]
#[case::low(|s: &mut Station| s.flange_height = measured(2.0), Check::FlangeHeight, Severity::Note, Verdict::Accept)]
#[case::thin(|s: &mut Station| s.flange_thickness = measured(1.5), Check::FlangeThickness, Severity::Note, Verdict::Accept)]
#[case::thick(|s: &mut Station| s.flange_thickness = measured(5.5), Check::FlangeThickness, Severity::Note, Verdict::Accept)]
#[case::askew(|s: &mut Station| s.flange_height = measured(4.5), Check::BorderAsymmetry, Severity::Note, Verdict::Accept)]
#[case::cut(|s: &mut Station| s.scan_ends = true, Check::ScanEnds, Severity::Borderline, Verdict::Undecided)]
#[case::gone(|s: &mut Station| s.flange_height = Err(Missing::NoSurface), Check::ScanEnds, Severity::Borderline, Verdict::Undecided)]
fn a_stretch_is_one_finding(
    #[case] spoil: fn(&mut Station),
    #[case] check: Check,
    #[case] severity: Severity,
    #[case] verdict: Verdict,
) {
    let judged = judged(100..120, spoil);
    // A low stretch can also be lower than the other side: its own check leads.
    let finding = &judged.findings[0];
    assert!(
        judged.findings[1..]
            .iter()
            .all(|f| f.severity == Severity::Note && f.check == Check::BorderAsymmetry)
    );
    assert_eq!((finding.check, finding.severity), (check, severity));
    assert_eq!(judged.verdict, verdict);
    let stretch = finding.stretch.unwrap();
    assert_eq!((stretch.from, stretch.to), (100, 119));
    assert!(stretch.holds(stretch.worst));
    let place = finding.place.as_ref().unwrap();
    assert_eq!(place.zone, Zone::BuccalFlange);
    assert_eq!(place.side, Some(Side::Left));
    assert!(
        finding
            .instruction
            .to_string()
            .contains("from 50 to 60 mm left of the labial midline"),
        "{}",
        finding.instruction.to_string()
    );
}

#[test]
fn the_worst_station_stands_for_its_stretch() {
    let mut border = sound_border();
    for (number, radius) in (100..).zip([0.55, 0.5, 0.5, 0.4, 0.5, 0.55, 0.5, 0.5]) {
        border.stations[number].border_radius = measured(radius);
    }
    let judged = judged_by(Ok(border.clone()), &Protocol::default());
    let finding = only(&judged);
    assert_eq!(finding.stretch.unwrap().worst, 103);
    let figure = finding.figure.as_ref().unwrap();
    assert_eq!(
        (figure.measured, figure.uncertainty, figure.limit()),
        (0.4, Some(0.1), 0.7)
    );
    assert_eq!(
        finding.place.as_ref().unwrap().at,
        border.stations[103].point
    );
}

#[rstest]
#[case::too_short(&[(100, 105)], 0)]
#[case::long_enough(&[(100, 106)], 1)]
#[case::over_a_small_gap(&[(100, 104), (106, 110)], 1)]
#[case::over_a_wide_gap(&[(100, 108), (114, 122)], 2)]
#[case::across_the_midline(&[(394, 400), (0, 6)], 1)]
#[case::on_both_sides(&[(100, 110), (290, 300)], 2)]
#[case::at_the_back(&[(180, 220)], 0)]
fn stretches_are_runs_of_stations_at_least_3_mm_long(
    #[case] runs: &[(usize, usize)],
    #[case] findings: usize,
) {
    let judged = without_notch(runs.iter().flat_map(|&(from, to)| from..to), |s| {
        s.border_radius = measured(0.4);
        if s.part == BorderPart::Posterior {
            s.overlap = measured(0.0);
        }
    });
    assert_eq!(judged.findings.len(), findings, "{:?}", judged.findings);
}

#[test]
fn a_stretch_across_the_midline_says_so() {
    let judged = without_notch((390..COUNT).chain(0..16), |s| {
        s.border_radius = measured(0.4);
    });
    let finding = only(&judged);
    assert_eq!(finding.stretch.map(|s| (s.from, s.to)), Some((390, 15)));
    assert!(
        finding
            .instruction
            .to_string()
            .contains("from 5 mm right to 8 mm left of the labial midline"),
        "{}",
        finding.instruction.to_string()
    );
    assert!(
        finding
            .instruction
            .to_string()
            .contains("draw the lip outward and down")
    );
}

#[rstest]
#[case(0, 16, "from the labial midline to 8 mm left of it")]
#[case(390, 0, "from the labial midline to 5 mm right of it")]
#[case(390, 15, "from 5 mm right to 8 mm left of the labial midline")]
#[case(300, 320, "from 40 to 50 mm right of the labial midline")]
#[case(180, 190, "from 5 to 10 mm left of the midline at the back")]
#[case(190, 216, "from 5 mm left to 8 mm right of the midline at the back")]
fn a_stretch_is_told_from_the_midline_of_its_part(
    #[case] from: usize,
    #[case] to: usize,
    #[case] told: &str,
) {
    let border = sound_border();
    let words = judge::words::stretch(&border, Some(Arch::Maxillary), from, to);
    assert_eq!(words.to_string(), told);
}

#[test]
fn a_few_stations_in_doubt_do_not_make_a_sure_miss() {
    let mut border = sound_border();
    for number in 100..120 {
        border.stations[number].border_radius = measured(0.72);
    }
    border.stations[110].border_radius = measured(0.4);
    let judged = judged_by(Ok(border), &Protocol::default());
    assert_eq!(only(&judged).severity, Severity::Borderline);
}

// Uncertainty of the depth is 0.3 mm, the limit 2 mm.
#[rstest]
#[case(3.0, Some(Severity::Fail), Verdict::Rework)]
#[case(2.2, Some(Severity::Borderline), Verdict::Undecided)]
#[case(1.6, None, Verdict::Accept)]
fn a_dip_is_judged_by_its_depth(
    #[case] depth_mm: f64,
    #[case] severity: Option<Severity>,
    #[case] verdict: Verdict,
) {
    let mut border = sound_border();
    border.dips.push(short(depth_mm));
    for station in &mut border.stations[84..=96] {
        station.flange_height = measured(8.0 - depth_mm - 0.3);
    }
    let judged = judged_by(Ok(border), &Protocol::default());
    assert_eq!(judged.verdict, verdict);
    let Some(severity) = severity else {
        assert!(judged.findings.is_empty(), "{:?}", judged.findings);
        return;
    };
    let finding = only(&judged);
    assert_eq!(
        (finding.check, finding.severity),
        (Check::UnderExtension, severity)
    );
    let figure = finding.figure.as_ref().unwrap();
    assert_eq!((figure.measured, figure.limit()), (depth_mm, 2.0));
    let words = [
        "from 40 to 50 mm left of the labial midline",
        "add border material",
        "mould it again (draw the cheek outward and down)",
    ];
    for words in words {
        assert!(
            finding
                .instruction
                .to_string()
                .to_lowercase()
                .contains(words),
            "{}",
            finding.instruction.to_string()
        );
    }
}

#[test]
fn a_dip_that_may_be_the_frenum_is_a_note_and_one_too_wide_for_it_a_question() {
    for (is_rather_short, severity) in [(false, Severity::Note), (true, Severity::Borderline)] {
        let mut border = sound_border();
        border.dips.push(Dip {
            kind: DipKind::BroadNotch,
            is_rather_short,
            ..short(3.5)
        });
        let judged = judged_by(Ok(border), &Protocol::default());
        let finding = only(&judged);
        assert_eq!(
            (finding.check, finding.severity),
            (Check::UnderExtension, severity)
        );
        assert!(
            finding
                .instruction
                .to_string()
                .contains("leave it as it is")
        );
    }
}

/// The tray in the section below a notch makes a flange thicker, and never thinner.
#[rstest]
#[case::thin(1.2, true)]
#[case::thick(6.5, false)]
fn a_flange_in_a_dip_that_may_be_the_frenum_can_be_thin_and_not_thick(
    #[case] thickness_mm: f64,
    #[case] is_noted: bool,
) {
    let mut border = sound_border();
    border.dips.push(Dip {
        kind: DipKind::Notch,
        ..short(3.5)
    });
    for station in &mut border.stations[80..=100] {
        station.flange_thickness = measured(thickness_mm);
    }
    let judged = judged_by(Ok(border), &Protocol::default());
    let noted = judged.findings.iter().map(|finding| finding.check);
    let expected = is_noted.then_some(Check::FlangeThickness);
    assert!(noted.eq(expected), "{:?}", judged.findings);
}

/// Stations 141 to 160 are the last 10 mm of the left flange.
#[test]
fn a_flange_that_runs_out_before_the_notch_is_not_thick() {
    let judged = judged(141..161, |s| s.flange_thickness = measured(7.6));
    assert!(judged.findings.is_empty(), "{:?}", judged.findings);
}

#[test]
fn the_thin_edge_in_a_notch_is_no_knife_edge() {
    let mut border = sound_border();
    border.dips.push(Dip {
        kind: DipKind::Notch,
        ..short(3.5)
    });
    for station in &mut border.stations[80..=100] {
        station.border_radius = measured(0.4);
    }
    let judged = judged_by(Ok(border), &Protocol::default());
    assert!(judged.findings.is_empty(), "{:?}", judged.findings);
}

#[test]
fn a_border_too_flat_for_a_roll_was_seen_all_the_same() {
    let mut border = sound_border();
    for station in &mut border.stations[100..130] {
        station.border_radius = Err(Missing::NoRoll);
    }
    let judged = judged_by(Ok(border), &Protocol::default());
    assert!(judged.findings.is_empty(), "{:?}", judged.findings);
}

#[test]
fn a_cut_scan_is_never_called_a_short_border() {
    let judged = judged(100..130, |s| {
        s.scan_ends = true;
        s.flange_height = measured(2.0);
        s.border_radius = Err(Missing::ScanEnds);
        s.flange_thickness = Err(Missing::ScanEnds);
    });
    let finding = only(&judged);
    assert_eq!(finding.check, Check::ScanEnds);
    assert!(
        finding
            .instruction
            .to_string()
            .contains("Scan this stretch again")
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
}

#[rstest]
#[case::beside_the_bottom(
    |s: &mut Station| s.scan_ends = true,
    92..=99,
    &[(Check::ScanEnds, Severity::Borderline)]
)]
#[case::scan_ends(|s: &mut Station| s.scan_ends = true, 80..=100, &[(Check::ScanEnds, Severity::Borderline)])]
#[case::one_face_alone(
    |s: &mut Station| s.border_radius = Err(Missing::ScanEnds),
    80..=100,
    &[(Check::ScanEnds, Severity::Borderline)]
)]
fn a_dip_that_was_not_wholly_seen_is_not_surely_short(
    #[case] spoil: fn(&mut Station),
    #[case] unseen: std::ops::RangeInclusive<usize>,
    #[case] expected: &[(Check, Severity)],
) {
    let mut border = sound_border();
    border.dips.push(short(3.5));
    for station in &mut border.stations[unseen] {
        spoil(station);
    }
    let judged = judged_by(Ok(border), &Protocol::default());
    let found: Vec<_> = judged
        .findings
        .iter()
        .map(|f| (f.check, f.severity))
        .collect();
    assert_eq!(found, expected);
    assert_eq!(judged.verdict, Verdict::Undecided);
}

#[test]
fn limits_hold_by_zone() {
    let low = |protocol: &str| {
        let mut border = sound_border();
        // A stretch of shelf on the left: a lower limit by default.
        for station in &mut border.stations[100..120] {
            station.zone = Zone::BuccalShelf;
            station.flange_height = measured(2.5);
            station.opposite = None;
        }
        judged_by(Ok(border), &Protocol::from_text(protocol).unwrap())
    };
    assert!(low("").findings.is_empty());
    let judged = low("[limits.flange_height_mm.zones]\nbuccal_shelf = 3.5\n");
    let finding = only(&judged);
    assert_eq!(finding.check, Check::FlangeHeight);
    assert_eq!(finding.figure.as_ref().unwrap().limit(), 3.5);
}

#[test]
fn a_flange_may_run_out_toward_the_back() {
    let judged = judged(142..=160, |s| {
        s.flange_height = measured(1.0);
        s.border_radius = measured(0.4);
        s.opposite = None;
    });
    assert!(judged.findings.is_empty(), "{:?}", judged.findings);
}

#[test]
fn the_tray_may_reach_the_border_where_it_is_left_long() {
    let judged = judged(161..240, |s| s.overlap = measured(0.0));
    assert!(judged.findings.is_empty(), "{:?}", judged.findings);
}

#[test]
fn a_figure_that_is_missing_is_not_judged_and_says_why() {
    let judged = judged(0..COUNT, |s| {
        s.overlap = Err(Missing::NoTray);
        if s.part == BorderPart::Outer {
            s.flange_thickness = Err(Missing::TissueSideOnly);
        }
        if s.zone == Zone::LabialFlange {
            s.border_radius = Err(Missing::TissueSideOnly);
        }
    });
    assert!(judged.findings.is_empty());
    let entries: Vec<(&str, String)> = judged.impressions[0]
        .not_judged
        .iter()
        .map(|entry| (entry.what.name(), entry.why.to_string()))
        .collect();
    let entries: Vec<(&str, &str)> = entries
        .iter()
        .map(|(code, why)| (*code, why.as_str()))
        .collect();
    assert_eq!(
        entries,
        [
            ("flange-thickness", "the scan shows the tissue side only"),
            (
                "border-radius",
                "60 of 160 mm of border could not be judged: the scan shows the tissue side only"
            ),
            ("border-overlap", "no tray scan is registered"),
            ("tray-at-border", "no tray scan is registered"),
        ]
    );
}

#[test]
fn without_a_border_nothing_is_accepted() {
    let judged = judged_by(Err(NoBorder::NoLine), &Protocol::default());
    let finding = only(&judged);
    assert_eq!(
        (finding.check, finding.severity),
        (Check::BorderNotJudged, Severity::Borderline)
    );
    assert_eq!(judged.verdict, Verdict::Undecided);
    assert!(
        judged.impressions[0]
            .not_judged
            .iter()
            .any(|entry| entry.what == Part::Border.into())
    );
}
