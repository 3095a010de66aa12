//! Results judged again by other limits: as a fresh batch by those limits, or not at all.
#![allow(clippy::unwrap_used)]

use crate::common::{coarse, demonstration_files, run};
use phantom::{Arch, Options, Phantom};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;
use tempfile::TempDir;

/// The demonstration, which has a wash and a record; coarse impressions, and two that are
/// fine enough for defects of the surface. Checked by the program's own limits.
static CHECKED: LazyLock<TempDir> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let cases = folder.path().join("in");
    let demo = demonstration_files(&|name| name != "first-pass.toml");
    fs::create_dir_all(cases.join("demo")).unwrap();
    for entry in fs::read_dir(demo.path()).unwrap().map(Result::unwrap) {
        fs::copy(entry.path(), cases.join("demo").join(entry.file_name())).unwrap();
    }
    for seed in 0..4_u64 {
        let (arch, jaw) = match seed % 2 {
            0 => (Arch::Maxillary, "maxillary"),
            _ => (Arch::Mandibular, "mandibular"),
        };
        let made = if seed < 2 {
            coarse(arch, seed, seed == 0)
        } else {
            Phantom::new(&Options {
                arch,
                seed,
                edge_mm: 0.6,
                tray_edge_mm: 0.8,
                ..Options::default()
            })
        };
        let case = cases.join(seed.to_string());
        fs::create_dir(&case).unwrap();
        mesh::write::write_ply(&case.join("first.ply"), &made.impression).unwrap();
        mesh::write::write_stl(&case.join("tray.stl"), &made.tray).unwrap();
        let text = format!(
            "case = \"J-{seed}\"\n[{jaw}]\none_step = \"first.ply\"\ntray = \"tray.stl\"\n"
        );
        fs::write(case.join("case.toml"), text).unwrap();
    }
    let batch = ["batch", "in", "--out", "own", "--no-report"];
    let outcome = run(folder.path(), &batch);
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    folder
});

type Rows = BTreeMap<String, Value>;

/// Rows of JSON by the case that they are of.
fn by_case(text: &str) -> Rows {
    let rows = text.lines().map(|line| serde_json::from_str(line).unwrap());
    rows.map(|row: Value| (row["case"].as_str().unwrap().to_owned(), row))
        .collect()
}

/// What one check found, in an order of its own: in words, and its figure.
fn found<'a>(rows: impl Iterator<Item = &'a Value>, check: &str) -> Vec<(String, Option<f64>)> {
    let of = rows.filter(|row| row["check"] == check);
    let mut of: Vec<(String, Option<f64>)> = of
        .map(|row| {
            let fields = ["impression", "severity", "zone", "limit"];
            let words = fields.map(|name| row[name].to_string()).join(" ");
            (words, row["measured"].as_f64())
        })
        .collect();
    of.sort_by(|a, b| a.partial_cmp(b).unwrap());
    of
}

/// The same findings. A figure made of two that a result rounds to 0.0001 mm, such as how
/// much lower a flange is than the other, may differ by so much.
fn same(again: &[(String, Option<f64>)], fresh: &[(String, Option<f64>)]) -> bool {
    again.len() == fresh.len()
        && again.iter().zip(fresh).all(|(a, b)| {
            let apart = a.1.zip(b.1).map(|(a, b)| (a - b).abs());
            a.0 == b.0 && a.1.is_some() == b.1.is_some() && apart.is_none_or(|mm| mm < 2.1e-4)
        })
}

/// Judges again by these limits and compares with a fresh batch by them; gives what was
/// judged again and what was left to be measured again.
fn compared(name: &str, limits: &str) -> (Vec<String>, Vec<String>) {
    let folder = CHECKED.path();
    let protocol = format!("{name}.toml");
    fs::write(folder.join(&protocol), limits).unwrap();
    let arguments = ["judge", "own", "--protocol", &protocol, "--json"];
    let outcome = run(folder, &arguments);
    assert_eq!(outcome.code, Some(0), "{}", outcome.complaint);
    let again = by_case(&outcome.out);
    let batch = [
        "batch",
        "in",
        "--out",
        name,
        "--no-report",
        "--protocol",
        &protocol,
    ];
    assert_eq!(run(folder, &batch).code, Some(0));
    let read = |file: &str| fs::read_to_string(folder.join(name).join(file)).unwrap();
    let fresh = by_case(&read("results.jsonl"));
    let findings: Vec<Value> = (read("findings.jsonl").lines())
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    assert_eq!(again.len(), fresh.len());
    let [mut judged, mut open] = [Vec::new(), Vec::new()];
    for (case, row) in &again {
        let codes = |name: &str| -> Vec<String> {
            let codes = row[name].as_array().unwrap().iter();
            codes
                .map(|code| code.as_str().unwrap().to_owned())
                .collect()
        };
        let own = || findings.iter().filter(|row| row["case"] == **case);
        let superseded = superseded(&folder.join(name), case);
        for check in codes("judged_again") {
            // What a wash superseded is not judged again.
            let of = own().filter(|row| !superseded.contains(&row["impression"]));
            let now = found(row["findings"].as_array().unwrap().iter(), &check);
            let of = found(of, &check);
            assert!(same(&now, &of), "{case} {check}: {now:?} {of:?}");
        }
        if !row["now"].is_null() {
            assert_eq!(row["now"], fresh[case]["case_verdict"], "{case}: {row}");
        }
        judged.extend(codes("judged_again"));
        open.extend(codes("measure_again"));
    }
    (judged, open)
}

fn superseded(out: &Path, case: &str) -> Vec<Value> {
    let rows = fs::read_to_string(out.join("results.jsonl")).unwrap();
    let rows = rows
        .lines()
        .map(|line| serde_json::from_str::<Value>(line).unwrap());
    rows.filter(|row| row["case"] == case && row["superseded"] == true)
        .map(|row| row["impression"].clone())
        .collect()
}

#[test]
fn limits_are_judged_again_as_measured_anew() {
    let (judged, open) = compared(
        "tighter",
        "[limits]\n\
         flange_height_mm = { value = 7.0, level = \"fail\" }\n\
         under_extension_mm = { value = 0.8 }\n\
         least_flange_thickness_mm = { value = 2.6, level = \"fail\" }\n\
         most_flange_thickness_mm = { value = 3.4, level = \"undecided\" }\n\
         border_radius_mm = { value = 1.2 }\n\
         most_border_overlap_mm = { value = 3.0, level = \"undecided\" }\n\
         border_asymmetry_mm = { value = 0.5, level = \"undecided\" }\n\
         border_drop_mm = { value = 0.05, level = \"fail\" }\n\
         wash_most_mm = { value = 0.4, level = \"fail\" }\n\
         wash_spread_mm = { value = 0.1, level = \"fail\" }\n\
         void_mm = { value = 0.6 }\n\
         nodule_mm = { value = 0.6, level = \"undecided\" }\n\
         scan_noise_mm = { value = 0.001, level = \"undecided\" }\n\
         smallest_void_seen_mm = { value = 0.7, level = \"fail\" }\n\
         median_edge_mm = { value = 0.5, level = \"fail\" }\n\
         maxillary_tissue_area_mm2 = { value = 9000.0, level = \"fail\" }\n\
         cover_uncertainty_mm = { value = 0.02, level = \"undecided\" }\n",
    );
    for check in [
        "flange-height",
        "under-extension",
        "flange-thickness",
        "border-radius",
        "border-overlap",
        "border-asymmetry",
        "border-change",
        "wash-thickness",
        "wash-uneven",
        "void",
        "nodule",
        "scan-quality",
        "scan-resolution",
        "tissue-area",
        "cover-uncertainty",
    ] {
        assert!(
            judged.iter().any(|code| code == check),
            "{check}: {judged:?} {open:?}"
        );
    }
}

/// Patches are found by these limits: a result does not hold what other limits would find.
#[test]
fn what_was_measured_by_a_limit_is_never_judged_by_another() {
    let (judged, open) = compared(
        "patches",
        "[limits]\n\
         show_through_mm = { value = 0.5 }\n\
         flange_depth_mm = { value = 2.0 }\n\
         landmark_margin_mm = { value = 4.0 }\n",
    );
    for check in [
        "show-through",
        "thin-cover",
        "flange-thickness",
        "landmark-cut-short",
    ] {
        assert!(open.iter().any(|code| code == check), "{check}: {open:?}");
        assert!(!judged.iter().any(|code| code == check), "{check}");
    }
    let text = run(
        CHECKED.path(),
        &["judge", "own", "--protocol", "patches.toml"],
    )
    .out;
    assert!(
        text.contains("measure again") && text.contains("show-through"),
        "{text}"
    );
}

#[test]
fn by_the_same_limits_nothing_changes() {
    let folder = CHECKED.path();
    fs::write(folder.join("same.toml"), "name = \"the same\"\n").unwrap();
    let text = run(folder, &["judge", "own", "--protocol", "same.toml"]).out;
    let says = "5 cases judged again: 0 change their verdict, 0 must be measured again.";
    assert!(text.ends_with(&format!("{says}\n")), "{text}");
    let none = run(folder, &["judge", "in", "--protocol", "same.toml"]);
    assert_eq!(none.code, Some(2));
    assert!(
        none.complaint.contains("holds no results"),
        "{}",
        none.complaint
    );
}
