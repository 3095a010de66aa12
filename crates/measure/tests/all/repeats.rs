//! Repeated scans of one phantom, with noise and a difference planted by
//! formula. Run with `--nocapture` to see the figures.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

use measure::repeats::{Spread, spread};
use measure::{ImpressionMeasurement, MeasureSettings, NotMeasured, measure};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, Options, Phantom, Pose};
use rand::{RngExt, SeedableRng};

fn phantom(edge_mm: f64, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch: Arch::Mandibular,
        seed,
        edge_mm,
        tray_edge_mm: 2.0,
        pose: Pose::AsMade,
        ..Options::default()
    })
}

/// A scan with its vertices moved along their normals by so much.
fn moved_out(mesh: &Mesh, mut by: impl FnMut(&Point3<f64>) -> f64) -> Mesh {
    let normals = mesh.vertex_normals();
    let vertices = (mesh.vertices().iter().zip(&normals))
        .map(|(p, normal)| p + normal * by(p))
        .collect();
    Mesh::new(vertices, mesh.triangles().to_vec(), None).expect("the triangles are the scan's")
}

/// A scan with independent noise on every vertex, in a pose of its own.
fn scanned(mesh: &Mesh, noise_sd_mm: f64, seed: u64) -> Mesh {
    let mut random = rand_pcg::Pcg64Mcg::seed_from_u64(seed);
    // Sum of twelve uniform numbers: normal enough.
    let mut normal = || (0..12).map(|_| random.random::<f64>()).sum::<f64>() - 6.0;
    let turn = seed as f64;
    let pose = Isometry3::new(
        Vector3::new(5.0 * turn, -20.0, 3.0),
        Vector3::new(0.4 * turn, 0.9 - turn, 0.2),
    );
    moved_out(mesh, |_| noise_sd_mm * normal()).moved(&pose)
}

fn compared(scans: &[Mesh]) -> Spread {
    let measured: Vec<ImpressionMeasurement> = (scans.iter())
        .map(|scan| measure(scan, None, &MeasureSettings::default(), &|_| {}))
        .collect();
    let repeats: Vec<_> = scans.iter().zip(&measured).collect();
    spread(&repeats).expect("all lie on the first")
}

/// The same vertices with noise of their own: what lies opposite a vertex is
/// nearly the same vertex, and its noise is seen whole.
#[test]
fn planted_noise_is_the_spread_between_scans_of_the_same_vertices() {
    const NOISE_MM: f64 = 0.03;
    let mesh = phantom(0.7, 4).impression;
    let scans: Vec<Mesh> = (0..4).map(|k| scanned(&mesh, NOISE_MM, k)).collect();
    let found = compared(&scans);
    let ratio = found.pooled_sd_mm / NOISE_MM;
    println!("same vertices: spread is {ratio:.3} of the planted noise");
    assert!((0.9..1.05).contains(&ratio), "{ratio}");
    assert!(found.places.is_empty(), "{:?}", found.places);
    let area = mesh.area();
    assert!(found.area_judged_mm2 > 0.95 * area);
    for laid in &found.laid {
        assert!(
            laid.fitting_share > 0.95 && laid.uncertainty_mm < 0.02,
            "{laid:?}"
        );
    }
}

/// Triangles of their own: a place between three vertices has half the variance
/// of one, so of n scans of which the first shows its vertices the variance is
/// (n + 1) / 2 n of the noise's.
#[test]
fn planted_noise_is_averaged_by_other_triangles_as_the_formula_says() {
    const NOISE_MM: f64 = 0.05;
    let edges = [0.55, 0.58, 0.62, 0.66];
    let scans: Vec<Mesh> = (0..)
        .zip(edges)
        .map(|(k, edge)| scanned(&phantom(edge, 4).impression, NOISE_MM, k))
        .collect();
    let found = compared(&scans);
    let expected = NOISE_MM * (5.0_f64 / 8.0).sqrt();
    let ratio = found.pooled_sd_mm / expected;
    println!("other triangles: spread is {ratio:.3} of the formula's");
    assert!((0.9..1.1).contains(&ratio), "{ratio}");
    assert!(found.places.is_empty(), "{:?}", found.places);
}

#[test]
fn a_planted_difference_is_found_where_it_is() {
    const BUMP_MM: f64 = 0.25;
    let made = phantom(0.5, 7);
    let mesh = &made.impression;
    let tissue = |p: &&Point3<f64>| made.truth.is_tissue_side(p);
    let all: Vec<&Point3<f64>> = mesh.vertices().iter().filter(tissue).collect();
    let centre = *all[all.len() / 3];
    // A bell 4 mm across at half its height, on the third scan alone.
    let bell = |p: &Point3<f64>| BUMP_MM * (-(p - centre).norm_squared() / 5.77).exp();
    let scans = [
        scanned(mesh, 0.02, 0),
        scanned(mesh, 0.02, 1),
        scanned(&moved_out(mesh, bell), 0.02, 2),
        scanned(mesh, 0.02, 3),
    ];
    let found = compared(&scans);
    let [place] = &found.places[..] else {
        panic!("one place, not {:?}", found.places);
    };
    // The first scan lies in a pose of its own.
    let there = Isometry3::new(Vector3::new(0.0, -20.0, 3.0), Vector3::new(0.0, 0.9, 0.2));
    let off = (place.centre - there * centre).norm();
    println!(
        "planted bell of {BUMP_MM} mm: {off:.2} mm off, {:.3} mm apart",
        place.apart_mm
    );
    assert!(off < 1.0, "{off}");
    assert!(
        (place.apart_mm - BUMP_MM).abs() < 0.05,
        "{}",
        place.apart_mm
    );
    assert_eq!(place.scan, Some(2));
    assert!(place.place.is_some());
}

#[test]
fn what_is_of_another_impression_or_mirrored_is_not_compared() {
    let first = phantom(0.8, 4).impression;
    let vertices = first.vertices().iter().map(|p| Point3::new(-p.x, p.y, p.z));
    let mirrored = Mesh::new(vertices.collect(), first.triangles().to_vec(), None)
        .expect("the triangles are the scan's")
        .turned_inside_out();
    let of_first = measure(&first, None, &MeasureSettings::default(), &|_| {});
    for other in [mirrored, phantom(0.8, 5).impression] {
        let of_other = measure(&other, None, &MeasureSettings::default(), &|_| {});
        let repeats = [
            (&first, &of_first),
            (&first, &of_first),
            (&other, &of_other),
        ];
        let refused = spread(&repeats).expect_err("it is of something else");
        assert_eq!(refused.scan, 2);
        let why = refused.why;
        assert!(matches!(why, NotMeasured::RepeatDoesNotFit { .. }), "{why}");
    }
}
