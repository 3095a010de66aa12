//! Borders from scan files to findings: planted faults are found, told apart
//! and named; sound borders are not faulted.
#![allow(clippy::unwrap_used)]

use crate::common::run;
use mesh::write::write_ply;
use phantom::{Arch, Blemish, FlangeSide, Options, Phantom};
use rstest::rstest;
use serde_json::Value;

const STATION: f64 = 0.5;
const OUTER: FlangeSide = FlangeSide::Outer;
const LINGUAL: FlangeSide = FlangeSide::Lingual;

/// A finding's severity, check and side.
type Found = (String, String, Value);

/// Findings that are no notes.
fn pressing(arch: Arch, seed: u64, blemish: Option<Blemish>) -> Vec<Found> {
    let mut found = all(arch, seed, blemish);
    found.retain(|(severity, _, _)| severity != "note");
    found
}

fn all(arch: Arch, seed: u64, blemish: Option<Blemish>) -> Vec<Found> {
    let made = Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.4,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.02,
        blemishes: blemish.into_iter().collect(),
        ..Options::default()
    });
    let folder = tempfile::tempdir().unwrap();
    write_ply(&folder.path().join("impression.ply"), &made.impression).unwrap();
    write_ply(&folder.path().join("tray.ply"), &made.tray).unwrap();
    let jaw = match arch {
        Arch::Maxillary => "maxillary",
        Arch::Mandibular => "mandibular",
    };
    let arguments = [
        "check",
        "impression.ply",
        "--tray",
        "tray.ply",
        "--arch",
        jaw,
        "--json",
        "--no-report",
    ];
    let outcome = run(folder.path(), &arguments);
    assert_ne!(outcome.code, Some(2), "{}", outcome.complaint);
    let result: Value = serde_json::from_str(&outcome.out).unwrap();
    let word = |finding: &Value, key: &str| finding[key].as_str().unwrap().to_owned();
    let findings = result["findings"].as_array().unwrap();
    findings
        .iter()
        .map(|f| (word(f, "severity"), word(f, "check"), f["side"].clone()))
        .collect()
}

#[rstest]
#[case(Arch::Maxillary, 3)]
#[case(Arch::Mandibular, 4)]
fn a_sound_border_is_not_faulted(#[case] arch: Arch, #[case] seed: u64) {
    assert_eq!(pressing(arch, seed, None), []);
}

fn short_by_3_5_mm(flange: FlangeSide, station: f64) -> Option<Blemish> {
    Some(Blemish::ShortBorder {
        flange,
        station,
        length_mm: 10.0,
        by_mm: 3.5,
    })
}

fn on_the_left(severity: &str, check: &str) -> Found {
    (severity.into(), check.into(), "left".into())
}

#[rstest]
#[case(Arch::Maxillary, OUTER, 0.8)]
#[case(Arch::Mandibular, OUTER, 0.8)]
#[case(Arch::Mandibular, LINGUAL, STATION)]
fn a_short_border_away_from_frena_fails_on_its_side(
    #[case] arch: Arch,
    #[case] flange: FlangeSide,
    #[case] station: f64,
) {
    let mut found = pressing(arch, 2, short_by_3_5_mm(flange, station));
    found.retain(|(severity, _, _)| severity == "fail");
    assert_eq!(found, [on_the_left("fail", "under-extension")]);
}

#[rstest]
#[case(Arch::Maxillary)]
#[case(Arch::Mandibular)]
fn where_a_frenum_may_lie_a_short_border_is_a_note(#[case] arch: Arch) {
    let found = all(arch, 2, short_by_3_5_mm(OUTER, STATION));
    assert!(
        found.contains(&on_the_left("note", "under-extension")),
        "{found:?}"
    );
    assert!(
        found.iter().all(|(severity, _, _)| severity == "note"),
        "{found:?}"
    );
}

#[rstest]
#[case(Arch::Maxillary, OUTER)]
#[case(Arch::Mandibular, LINGUAL)]
fn a_knife_edge_fails_on_its_side(#[case] arch: Arch, #[case] flange: FlangeSide) {
    let knife = Blemish::KnifeEdge {
        flange,
        station: -STATION,
        length_mm: 10.0,
        radius_mm: 0.3,
    };
    let expected = ("fail".into(), "border-radius".into(), "right".into());
    assert_eq!(pressing(arch, 2, Some(knife)), [expected]);
}

#[rstest]
#[case(Arch::Maxillary, OUTER)]
#[case(Arch::Mandibular, OUTER)]
#[case(Arch::Mandibular, LINGUAL)]
fn a_scan_that_was_cut_is_told_from_a_short_border(#[case] arch: Arch, #[case] flange: FlangeSide) {
    let cut = Blemish::CutScan {
        flange,
        station: STATION,
        length_mm: 12.0,
        by_mm: 2.5,
    };
    let found = pressing(arch, 3, Some(cut));
    assert!(found.iter().any(|f| f.1 == "scan-ends"), "{found:?}");
    assert!(found.iter().all(|f| f.1 != "under-extension"), "{found:?}");
    assert!(found.iter().all(|f| f.0 == "borderline"), "{found:?}");
}

#[test]
fn a_border_that_a_wash_lost_is_told() {
    let made = |blemishes| {
        Phantom::new(&Options {
            arch: Arch::Maxillary,
            seed: 5,
            edge_mm: 0.5,
            tray_edge_mm: 0.5,
            noise_sd_mm: 0.02,
            blemishes,
            ..Options::default()
        })
    };
    let short = Blemish::ShortBorder {
        flange: OUTER,
        station: STATION,
        length_mm: 12.0,
        by_mm: 1.8,
    };
    let (first, wash) = (made(Vec::new()), made(vec![short]));
    let folder = tempfile::tempdir().unwrap();
    let file = |name: &str| folder.path().join(name);
    write_ply(&file("first.ply"), &first.impression).unwrap();
    write_ply(&file("wash.ply"), &wash.impression).unwrap();
    let case = "case = \"D-7\"\n[maxillary]\nfirst_pass = \"first.ply\"\nwash = \"wash.ply\"\n";
    std::fs::write(file("case.toml"), case).unwrap();
    let outcome = run(
        folder.path(),
        &["check", "case.toml", "--json", "--no-report"],
    );
    let result: Value = serde_json::from_str(&outcome.out).unwrap();
    let found: Vec<&Value> = (result["findings"].as_array().unwrap().iter())
        .filter(|finding| finding["check"] == "border-change")
        .collect();
    assert_eq!(found.len(), 1, "{found:#?}");
    assert_eq!(found[0]["impression"], 1);
    assert_eq!(found[0]["side"], "left");
    assert!((found[0]["measured"].as_f64().unwrap() - 1.8).abs() < 0.3);
    let station = &result["impressions"][1]["border"]["stations"][0];
    assert!(station["change_mm"].as_f64().unwrap().abs() < 0.3);
    assert!(result["impressions"][0]["border"]["stations"][0]["change_mm"].is_null());
}
