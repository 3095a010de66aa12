//! The files of `test-meshes/`, each against its truth file.

use mesh::{Mesh, SpatialIndex, Topology, read_scan};
use nalgebra::{Isometry3, Point3, Vector3};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../test-meshes")
}

fn mesh(name: &str) -> Mesh {
    read_scan(&folder().join(name)).expect(name).mesh
}

fn truth(name: &str) -> Value {
    let text = fs::read_to_string(folder().join(name)).expect(name);
    serde_json::from_str(&text).expect(name)
}

fn figure(truth: &Value, pointer: &str) -> f64 {
    truth
        .pointer(pointer)
        .and_then(Value::as_f64)
        .expect(pointer)
}

fn three(value: &Value) -> [f64; 3] {
    serde_json::from_value(value.clone()).expect("three numbers")
}

fn vector(value: &Value) -> Vector3<f64> {
    Vector3::from(three(value))
}

fn close(found: f64, stated: f64, relative: f64) -> bool {
    (found - stated).abs() <= relative * stated.abs()
}

#[test]
fn simple_meshes_have_the_counts_area_and_volume_of_their_truth() {
    for (file, truth_file) in [
        ("cube.stl", "cube.truth.json"),
        ("sphere.ply", "sphere.truth.json"),
        ("plate.stl", "plate.truth.json"),
        ("disc.ply", "disc.truth.json"),
    ] {
        let (mesh, truth) = (mesh(file), truth(truth_file));
        assert_eq!(truth["vertices"], mesh.vertices().len(), "{file}");
        assert_eq!(truth["triangles"], mesh.triangles().len(), "{file}");
        let topology = Topology::of(&mesh);
        assert_eq!(truth["closed"], topology.is_closed(), "{file}");
        assert_eq!(topology.components(), 1, "{file}");
        let area = figure(&truth, "/area_mm2");
        assert!(close(mesh.area(), area, 1e-12), "{file}: {}", mesh.area());
        if topology.is_closed() {
            let (found, stated) = (mesh.signed_volume(), figure(&truth, "/volume_mm3"));
            assert!(close(found, stated, 1e-12), "{file}: {found}");
        }
    }
}

/// Flat facets with corners on a ball fall short of it, by a share that the
/// angle between them bounds.
#[test]
fn the_faceted_ball_falls_a_little_short_of_the_ball() {
    let truth = truth("sphere.truth.json");
    for (facets, ball) in [
        ("/area_mm2", "/ball_area_mm2"),
        ("/volume_mm3", "/ball_volume_mm3"),
    ] {
        let share = figure(&truth, facets) / figure(&truth, ball);
        assert!((0.994..1.0).contains(&share), "{facets}: {share}");
    }
}

#[test]
fn cover_of_the_slanting_disc_over_the_plate_is_its_height() {
    let (plate, disc, truth) = (
        mesh("plate.stl"),
        mesh("disc.ply"),
        truth("disc.truth.json"),
    );
    let found = SpatialIndex::new(&plate).nearest_many(disc.vertices(), 100.0);
    let mut covers = Vec::new();
    for (p, nearest) in disc.vertices().iter().zip(found) {
        let stated =
            figure(&truth, "/middle_cover_mm") + figure(&truth, "/cover_growth_along_x") * p.x;
        let cover = nearest.expect("the plate is near").distance;
        assert!((cover - stated).abs() < 1e-12, "{cover} at {p}");
        covers.push(cover);
    }
    covers.sort_by(f64::total_cmp);
    assert!((covers[0] - figure(&truth, "/least_cover_mm")).abs() < 1e-12);
    assert!((covers[covers.len() - 1] - figure(&truth, "/greatest_cover_mm")).abs() < 1e-12);

    // Whole triangles are counted, so the chord and the arc are open by an edge's part.
    for (limit, stated) in [
        (1.0, "/area_below_1_mm_mm2"),
        (0.5, "/area_below_0_5_mm_mm2"),
    ] {
        let low: f64 = (0..disc.triangles().len())
            .filter(|&t| disc.corners(t).iter().map(|p| p.z).sum::<f64>() / 3.0 < limit)
            .map(|t| disc.area_vector(t).norm())
            .sum();
        let stated = figure(&truth, stated);
        assert!(close(low, stated, 0.04), "{limit}: {low}, stated {stated}");
    }
}

fn impression_from_tray(truth: &Value) -> Isometry3<f64> {
    let motion = &truth["impression_from_tray"];
    serde_json::from_value(motion.clone()).expect("a rotation and a translation")
}

/// The distance to the tray's mesh is the cover by formula, but for what chords
/// cut off where the tray is rounded: at its rim, most sharply, by half its
/// thickness.
#[test]
fn cover_of_the_phantoms_is_the_distance_to_their_trays() {
    for arch in ["maxillary", "mandibular"] {
        let truth = truth(&format!("{arch}/truth.json"));
        assert_eq!(truth["arch"], arch);
        let impression = mesh(&format!("{arch}/impression.ply"));
        let tray = mesh(&format!("{arch}/tray.stl")).moved(&impression_from_tray(&truth));
        for (mesh, count) in [
            (&impression, "impression_triangles"),
            (&tray, "tray_triangles"),
        ] {
            assert_eq!(truth[count], mesh.triangles().len(), "{arch}");
            let topology = Topology::of(mesh);
            assert!(topology.is_closed() && mesh.signed_volume() > 0.0, "{arch}");
        }

        let cut_off =
            longest_edge(&tray).powi(2) / 8.0 / (figure(&truth, "/tray_thickness_mm") / 2.0);
        let tray = SpatialIndex::new(&tray);
        let to_tray = |p: &Point3<f64>| tray.nearest(p, 100.0).expect("the tray is near").distance;
        let mut errors: Vec<f64> = truth["cover_at"]
            .as_array()
            .expect("points with cover")
            .iter()
            .map(|entry| {
                let (point, cover): ([f64; 3], f64) =
                    serde_json::from_value(entry.clone()).expect("a point and its cover");
                (to_tray(&Point3::from(point)) - cover.abs()).abs()
            })
            .collect();
        errors.sort_by(f64::total_cmp);
        assert!(errors.len() > 200);
        let [median, greatest] = [errors[errors.len() / 2], errors[errors.len() - 1]];

        assert!(median < 0.01, "{arch}: {median} mm");
        assert!(greatest < cut_off, "{arch}: {greatest} of {cut_off} mm");

        let scan = SpatialIndex::new(&impression);
        for spot in truth["spots"].as_array().expect("spots") {
            let centre = Point3::from(vector(&spot["centre"]));
            let least = figure(spot, "/least_cover_mm");
            let cover = to_tray(&centre);
            assert!((cover - least).abs() < 0.05, "{arch}: {cover}, {spot}");
            let off = scan.nearest(&centre, 10.0).expect("the scan is near");
            assert!(off.distance < 0.05, "{arch}: off by {} mm", off.distance);
        }
    }
}

fn longest_edge(mesh: &Mesh) -> f64 {
    (0..mesh.triangles().len())
        .flat_map(|t| {
            let [a, b, c] = mesh.corners(t);
            [b - a, c - b, a - c].map(|edge| edge.norm())
        })
        .fold(0.0, f64::max)
}

#[test]
fn axes_of_the_phantoms_are_right_handed_by_the_rule_of_their_jaw() {
    for (arch, sign) in [("maxillary", 1.0), ("mandibular", -1.0), ("demo", 1.0)] {
        let truth = truth(&format!("{arch}/truth.json"));
        let [seating, anterior, right] =
            ["seating", "anterior", "right"].map(|axis| vector(&truth["axes"][axis]));
        let by_rule = anterior.cross(&seating) * sign;
        assert!((right - by_rule).norm() < 1e-9, "{arch}");
    }
}

#[test]
fn files_are_small() {
    const MOST_BYTES: u64 = 2_000_000;
    const MOST_BYTES_IN_ALL: u64 = 15_000_000;
    let mut in_all = 0;
    let mut folders = vec![folder()];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(next).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let bytes = fs::metadata(&path).expect("a file").len();
            assert!(bytes <= MOST_BYTES, "{}: {bytes} bytes", path.display());
            in_all += bytes;
        }
    }
    assert!(in_all <= MOST_BYTES_IN_ALL, "{in_all} bytes");
}
