//! The tray scanned again after relief, from a case file to the instruction.
#![allow(clippy::unwrap_used)]

use check::{CheckOptions, CheckedCase, check_case};
use judge::{Case, Check, Finding, Protocol};
use mesh::Mesh;
use mesh::write::write_ply;
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, Options, Phantom, PlantedSpot};
use std::fs;
use std::sync::LazyLock;
use tempfile::TempDir;

static MADE: LazyLock<Phantom> = LazyLock::new(|| made(5));

fn made(seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch: Arch::Maxillary,
        seed,
        edge_mm: 0.7,
        tray_edge_mm: 0.7,
        noise_sd_mm: 0.01,
        spots: PlantedSpot::random(Arch::Maxillary, seed, 1, 0),
        ..Options::default()
    })
}

/// The tray with a flat dent of so many mm under the planted place, in another pose.
fn relieved(tray: &Mesh, at: &Point3<f64>, depth_mm: f64) -> Mesh {
    const RADIUS_MM: f64 = 7.0;
    let normals = tray.vertex_normals();
    let squared = |v: &usize| (tray.vertices()[*v] - at).norm_squared();
    let nearest = (0..normals.len())
        .min_by(|a, b| squared(a).total_cmp(&squared(b)))
        .expect("a tray has vertices");
    let facing = normals[nearest].normalize();
    let pose = Isometry3::new(Vector3::new(5.0, 40.0, -9.0), Vector3::new(0.4, 1.1, -0.7));
    let vertices = (tray.vertices().iter().zip(&normals)).map(|(p, normal)| {
        let is_there = (p - at).norm() < RADIUS_MM && normal.normalize().dot(&facing) > 0.7;
        pose * (p - facing * if is_there { depth_mm } else { 0.0 })
    });
    Mesh::new(vertices.collect(), tray.triangles().to_vec(), None).expect("the same triangles")
}

fn checked(keys: &str, files: &[(&str, &Mesh)]) -> CheckedCase {
    let folder = TempDir::new().expect("a folder can be made");
    for (name, mesh) in files {
        write_ply(&folder.path().join(name), mesh).expect("a scan can be written");
    }
    let case = folder.path().join("case.toml");
    fs::write(&case, format!("case = \"R-1\"\n[maxillary]\n{keys}")).expect("and its case");
    let case = Case::from_file(&case).expect("the case is sound");
    let options = CheckOptions {
        unit: None,
        protocol: Protocol::default(),
        shelves: Default::default(),
    };
    check_case(case, &options, &|_| {}).expect("every scan can be read")
}

const KEYS: &str =
    "before_wash = \"first.ply\"\ntray = \"tray.ply\"\ntray_relieved = \"after.ply\"\n";

fn show_through(checked: &CheckedCase, impression: usize) -> &Finding {
    let mut found = checked.judged.findings.iter();
    found
        .find(|f| f.check == Check::ShowThrough && f.impression == Some(impression))
        .unwrap_or_else(|| panic!("{:#?}", checked.judged.findings))
}

/// The first pass with a tray relieved by so much.
fn after(depth_mm: f64) -> CheckedCase {
    let made = &*MADE;
    let at = made.truth.on_tray(&made.truth.spots[0].centre);
    let after = relieved(&made.tray, &at, depth_mm);
    let first = ("first.ply", &made.impression);
    checked(
        KEYS,
        &[first, ("tray.ply", &made.tray), ("after.ply", &after)],
    )
}

#[test]
fn relief_that_is_deep_enough_is_said_to_be() {
    let checked = after(1.4);
    let said = &show_through(&checked, 0).instruction.to_string();
    assert!(said.contains("That is enough."), "{said}");
    assert!(said.contains("shows 1.4 ±"), "{said}");
}

#[test]
fn relief_that_is_too_shallow_is_said_to_be_with_what_is_missing() {
    let checked = after(0.5);
    let said = &show_through(&checked, 0).instruction.to_string();
    assert!(said.contains("by another 0."), "{said}");
}

#[test]
fn the_scan_of_another_tray_tells_nothing() {
    let (made, other) = (&*MADE, made(8));
    let part = other.tray.filtered(|t| other.tray.corners(t)[0].x > 0.0);
    let first = ("first.ply", &made.impression);
    let checked = checked(
        KEYS,
        &[first, ("tray.ply", &made.tray), ("after.ply", &part)],
    );
    let said = &show_through(&checked, 0).instruction.to_string();
    assert!(said.contains("tells nothing"), "{said}");
}

/// Tissue that springs back into the relief lies inside the wall of the tray as it was: by the
/// first scan that is a question, by the second it is material.
#[test]
fn a_wash_is_judged_by_the_tray_as_it_then_was() {
    let made = &*MADE;
    let spot = &made.truth.spots[0];
    let at = made.truth.on_tray(&spot.centre);
    let after = relieved(&made.tray, &at, 1.6);
    // The surface follows the relief half way.
    let normals = made.impression.vertex_normals();
    let sunk = (made.impression.vertices().iter().zip(&normals)).map(|(p, normal)| {
        let is_there = (p - spot.centre).norm() < 4.0 && made.truth.is_tissue_side(p);
        p - normal.normalize() * if is_there { 0.8 } else { 0.0 }
    });
    let triangles = made.impression.triangles().to_vec();
    let wash = Mesh::new(sunk.collect(), triangles, None).unwrap();
    let files = [
        ("wash.ply", &wash),
        ("tray.ply", &made.tray),
        ("after.ply", &after),
    ];
    let by_the_first = checked("wash = \"wash.ply\"\ntray = \"tray.ply\"\n", &files);
    let asked = show_through(&by_the_first, 0);
    assert_eq!(asked.severity, judge::Severity::Borderline, "{asked:#?}");
    assert!(
        asked.instruction.to_string().contains("inside the wall"),
        "{asked:#?}"
    );
    let by_the_second = checked(
        "wash = \"wash.ply\"\ntray = \"tray.ply\"\ntray_relieved = \"after.ply\"\n",
        &files,
    );
    let shown = (by_the_second.judged.findings.iter()).find(|f| f.check == Check::ShowThrough);
    assert!(shown.is_none(), "{shown:#?}");
}

/// Each pass lies in a tray scan of its own, in another pose: that is no way from one to the
/// other.
#[test]
fn a_wash_in_the_relieved_tray_is_laid_on_its_first_pass() {
    let made = &*MADE;
    let at = made.truth.on_tray(&made.truth.spots[0].centre);
    let after = relieved(&made.tray, &at, 1.4);
    let files = [
        ("first.ply", &made.impression),
        ("wash.ply", &made.impression),
        ("tray.ply", &made.tray),
        ("after.ply", &after),
    ];
    let checked = checked(&format!("{KEYS}wash = \"wash.ply\"\n"), &files);
    let wash = checked.wash_of(1).unwrap();
    assert!(
        wash.median_mm.abs() < 0.02 && wash.p95_mm < 0.05,
        "{wash:?}"
    );
    let shown = (checked.judged.findings.iter())
        .find(|f| f.check == Check::ShowThrough && f.impression == Some(1));
    assert!(shown.is_none(), "{shown:#?}");
}

#[test]
fn a_relieved_tray_without_the_tray_before_is_an_error_of_the_case_file() {
    let folder = TempDir::new().unwrap();
    let case = folder.path().join("case.toml");
    let text = "case = \"R-1\"\n[maxillary]\nwash = \"w.ply\"\ntray_relieved = \"after.ply\"\n";
    fs::write(&case, text).unwrap();
    let error = Case::from_file(&case).unwrap_err().to_string();
    assert!(
        error.contains("tray_relieved") && error.contains("line 4"),
        "{error}"
    );
}
