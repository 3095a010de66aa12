//! Planted shifts are found, and a process in order is left alone; series by jaw, stage and
//! label; the baseline file.

use super::*;
use crate::folder::conditions::Conditions;
use crate::folder::rows::ImpressionRow;
use messages::Language;
use statistics::control::Rule;

/// Normal values by the sum of twelve of a linear congruential generator (Knuth's MMIX
/// constants): seeded, and the same everywhere.
fn normal(seed: u64, count: usize) -> Vec<f64> {
    let mut state = seed;
    let mut next = || {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    (0..count)
        .map(|_| (0..12).map(|_| next()).sum::<f64>() - 6.0)
        .collect()
}

/// The time of the number-th scan: one an hour.
fn time(number: usize) -> String {
    let (day, hour) = (number / 24, number % 24);
    format!(
        "2026-{:02}-{:02}T{hour:02}:00:00Z",
        1 + day / 28,
        1 + day % 28
    )
}

fn row(number: usize, thickness: f64, stage: &str, label: &str) -> ImpressionRow {
    ImpressionRow {
        folder: format!("f{number:04}"),
        case: Some(format!("C{number:04}")),
        arch: Some("maxillary".to_owned()),
        stage: Some(stage.to_owned()),
        verdict: Some("accept".to_owned()),
        scanned: Some(time(number)),
        cover_median_mm: Some(thickness),
        labels: Some(label.to_owned()),
        ..ImpressionRow::default()
    }
}

fn thickness_rows(off: &[f64]) -> Vec<ImpressionRow> {
    let rows = off.iter().enumerate();
    rows.map(|(number, off)| row(number, 2.5 + 0.1 * off, "wash", "scanner=S1"))
        .collect()
}

fn series(rows: &[ImpressionRow], by: Option<&str>) -> Series {
    let mut series = Series::new(by.map(str::to_owned), 10_000);
    rows.iter().for_each(|row| series.add(row, "link"));
    series
}

fn conditions(program: &str, protocol_sha256: &str) -> Conditions {
    Conditions {
        program: program.to_owned(),
        protocol: "ours".to_owned(),
        protocol_sha256: protocol_sha256.to_owned(),
        ..Conditions::default()
    }
}

fn baseline(rows: &[ImpressionRow], by: Option<&str>) -> Baseline {
    Baseline::of_series(
        series(rows, by),
        &conditions("0.1.0", "aa"),
        "dd".to_owned(),
    )
}

fn drift(rows: &[ImpressionRow], baseline: Option<Baseline>, by: Option<&str>) -> Drift {
    let options = DriftOptions {
        baseline,
        by: by.map(str::to_owned),
        ..DriftOptions::default()
    };
    Drift::of(series(rows, by), &options)
}

/// Limits that are as good as known: of 4000 impressions.
fn long_baseline() -> Baseline {
    baseline(&thickness_rows(&normal(7, 4000)), None)
}

#[test]
fn a_shift_by_one_and_a_half_standard_deviations_is_found_where_it_begins() {
    let frozen = long_baseline();
    let number = |case: &str| case[1..].parse::<i32>().unwrap();
    for seed in 1..=20 {
        let mut off = normal(seed, 100);
        off[60..].iter_mut().for_each(|value| *value += 1.5);
        let found = drift(&thickness_rows(&off), Some(frozen.clone()), None);
        // The latest come first.
        let mut signals = found.signals.iter().rev();
        let signal = signals
            .find(|s| s.rule == Rule::Ewma.name() && s.is_above && number(&s.case) >= 60)
            .unwrap_or_else(|| panic!("seed {seed}: {:?}", found.signals));
        assert!(number(&signal.case) <= 75, "seed {seed}: {signal:?}");
        assert!(
            (number(&signal.since_case) - 60).abs() <= 15,
            "seed {seed}: {signal:?}"
        );
        let about = (signal.figure.as_str(), signal.limits);
        assert_eq!(about, ("cover_median_mm", Limits::Baseline));
    }
}

/// 40 series of 100 points: as many signals as chance alone gives by published rates, 40 *
/// 100 * (1/370 + 1/500) = 18.8, give or take twice its root.
#[test]
fn a_process_in_order_is_left_alone_but_for_chance() {
    let frozen = long_baseline();
    let (mut signals, mut quiet, mut expected) = (0, 0, 0.0);
    for seed in 101..=140 {
        let found = drift(
            &thickness_rows(&normal(seed, 100)),
            Some(frozen.clone()),
            None,
        );
        signals += found.signals.len();
        quiet += usize::from(found.signals.is_empty());
        expected += found.by_chance;
    }
    assert!((expected - 18.8_f64).abs() < 0.1, "{expected}");
    assert!(signals <= 28, "{signals} signals, {expected:.1} expected");
    assert!(quiet >= 20, "{quiet} of 40 series without a signal");
}

#[test]
fn impressions_before_the_wash_and_washes_never_share_a_chart() {
    let off = normal(3, 80);
    let rows: Vec<ImpressionRow> = (off.iter().enumerate())
        .map(|(number, off)| {
            let (stage, mean) = [("first_pass", 4.0), ("wash", 2.0)][number % 2];
            row(number, mean + 0.1 * off, stage, "")
        })
        .collect();
    let found = drift(&rows, None, None);
    let centres: Vec<(&str, f64)> = (found.charts.iter())
        .map(|chart| (chart.group.stage.as_str(), chart.process.centre.round()))
        .collect();
    assert_eq!(centres, [("first_pass", 4.0), ("wash", 2.0)]);
    assert!(
        found
            .charts
            .iter()
            .all(|chart| chart.values.len() == 40 && chart.process.sigma < 0.2)
    );
}

#[test]
fn a_label_keeps_charts_apart_and_one_that_is_lacking_is_said() {
    let off = normal(5, 90);
    let labels = ["lot=L1 scanner=S1", "scanner=S2", "lot=L2"];
    let rows: Vec<ImpressionRow> = (off.iter().enumerate())
        .map(|(number, off)| row(number, 2.0 + off, "wash", labels[number % 3]))
        .collect();
    let groups: Vec<String> = (drift(&rows, None, Some("scanner")).charts.iter())
        .map(|chart| chart.group.words(Language::English))
        .collect();
    assert_eq!(
        groups,
        [
            "maxillary, wash, scanner=(none)",
            "maxillary, wash, scanner=S1",
            "maxillary, wash, scanner=S2",
        ]
    );
}

#[test]
fn a_share_that_rises_is_found_by_groups_of_days() {
    let rows: Vec<ImpressionRow> = (0..1200)
        .map(|number| {
            let often = if number < 1000 { 10 } else { 3 };
            let mut row = row(number, 2.0, "wash", "");
            if number % often == 0 {
                row.verdict = Some("rework".to_owned());
            }
            row
        })
        .collect();
    let frozen = baseline(&rows[..1000], None);
    assert_eq!((frozen.shares[0].fails, frozen.shares[0].of), (100, 1000));
    let found = drift(&rows, Some(frozen), None);
    let chart = &found.shares[0];
    assert!(
        chart.days.iter().all(|days| days.of >= 50),
        "{:?}",
        chart.days
    );
    assert_eq!(chart.days.iter().map(|days| days.of).sum::<u64>(), 1200);
    assert!(!found.signals.is_empty());
    assert!(
        found
            .signals
            .iter()
            .all(|s| s.is_above && s.since.as_str() >= "2026-02-12")
    );
}

#[test]
fn too_few_impressions_have_no_limits_and_are_named() {
    let found = drift(&thickness_rows(&normal(1, 9)), None, None);
    assert!(found.charts.is_empty() && found.signals.is_empty());
    let [few] = &found.too_few[..] else {
        panic!("{:?}", found.too_few);
    };
    assert_eq!(few.group.words(Language::English), "maxillary, wash");
    assert_eq!((few.figure, few.impressions), (Charted::Thickness, 9));
}

#[test]
fn a_baseline_file_gives_back_what_was_written() {
    let frozen = baseline(&thickness_rows(&normal(7, 100)), Some("scanner"));
    assert_eq!(frozen.figures[0].label.as_deref(), Some("scanner=S1"));
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("base.toml");
    std::fs::write(&file, frozen.to_toml()).unwrap();
    assert_eq!(Baseline::from_file(&file).unwrap(), frozen);
}

#[test]
fn a_broken_baseline_is_refused_in_one_line_with_its_key() {
    let text = baseline(&thickness_rows(&normal(7, 100)), None).to_toml();
    let sigma = text.lines().find(|line| line.starts_with("sigma")).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("base.toml");
    for (from, to, says) in [
        (
            sigma,
            "sigma = -0.1",
            "[[figure]] number 1: sigma must be a number above 0",
        ),
        (sigma, "sigma = nan", "sigma must be a number above 0"),
        (sigma, "sigma = \"x\"", "line "),
        (sigma, "sigmas = 0.1", "sigmas"),
        ("count = 100", "count = 1", "count must be 2 or more"),
        (
            "fails = 0",
            "fails = 101",
            "[[share]] number 1: fails must be no more than of",
        ),
        (
            "archproof-baseline/1",
            "archproof-baseline/9",
            "archproof-baseline/9",
        ),
    ] {
        assert!(text.contains(from), "{from}");
        std::fs::write(&file, text.replacen(from, to, 1)).unwrap();
        let why = Baseline::from_file(&file).unwrap_err().to_string();
        assert!(why.contains("base.toml: ") && why.contains(says), "{why}");
        assert!(
            why.contains("archproof baseline") && !why.contains('\n'),
            "{why}"
        );
    }
    let why = Baseline::from_file(&folder.path().join("none"))
        .unwrap_err()
        .to_string();
    assert!(
        why.contains("give a file that 'archproof baseline"),
        "{why}"
    );
}

#[test]
fn a_baseline_of_other_limits_or_another_version_says_so() {
    let frozen = baseline(&thickness_rows(&normal(7, 100)), None);
    assert_eq!(frozen.differs(&conditions("0.1.0", "aa")), []);
    let said = frozen.differs(&conditions("0.2.0", "bb"));
    let said = said.iter().map(ToString::to_string).collect::<String>();
    assert!(
        said.contains("other limits (ours)") && said.contains("archproof 0.1.0"),
        "{said}"
    );
}

/// A folder is gone through by names, and its cases may have been scanned in any order.
#[test]
fn points_are_in_order_of_time_whatever_the_order_of_the_cases() {
    let rows = thickness_rows(&normal(7, 60));
    let mut others = rows.clone();
    others.reverse();
    others.rotate_left(17);
    // Fewer are kept than there are: the latest.
    let [by_time, anew] = [&rows, &others].map(|rows| {
        let mut series = Series::new(None, 5);
        rows.iter().for_each(|row| series.add(row, "link"));
        series.settle();
        series
    });
    let kept = |series: &Series| -> Vec<(String, Vec<_>)> {
        let of = |group: &series::OfGroup| {
            let cases = group.latest.iter().map(|point| point.case.clone());
            (
                cases.collect::<Vec<_>>().join(" "),
                group
                    .days
                    .iter()
                    .map(|(day, n)| (day.clone(), *n))
                    .collect(),
            )
        };
        series.groups.values().map(of).collect()
    };
    assert_eq!(kept(&by_time), kept(&anew));
    assert_eq!(kept(&by_time)[0].0, "C0055 C0056 C0057 C0058 C0059");
}
