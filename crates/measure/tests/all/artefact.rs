//! Spheres made by formula, found again in scans of them.
#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

use measure::artefact::{
    ArtefactNotFound, NominalSphere, NominalStep, ScannedArtefact, StepNotFound, find,
};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};

/// Four balls of 10 mm, not in one plane, all distances different.
const CENTRES: [[f64; 3]; 4] = [
    [0.0, 0.0, 0.0],
    [38.0, 2.0, 1.0],
    [15.0, 31.0, 6.0],
    [41.0, 25.0, -4.0],
];
const RADIUS_MM: f64 = 5.0;
/// Middles of two level faces of 6 mm: a step of 0.5 mm.
const FACES: [[f64; 3]; 2] = [[15.0, 10.0, 1.0], [25.0, 10.0, 1.5]];
const STEP_MM: f64 = 0.5;
const EDGE_MM: f64 = 0.3;

fn nominal() -> Vec<NominalSphere> {
    let one = |centre: [f64; 3]| NominalSphere {
        centre: Point3::from(centre),
        radius_mm: RADIUS_MM,
    };
    CENTRES.map(one).into()
}

fn face(middle: [f64; 3]) -> (Point3<f64>, f64) {
    (Point3::from(middle), 3.0)
}

fn step() -> NominalStep {
    NominalStep {
        faces: FACES.map(Point3::from),
        facing: Vector3::z_axis(),
        reach_mm: 2.5,
    }
}

fn scan(noise_sd_mm: f64, seed: u64) -> Mesh {
    let balls = CENTRES.map(|centre| (Point3::from(centre), RADIUS_MM));
    let turn = seed as f64;
    let pose = Isometry3::new(
        Vector3::new(10.0 * turn, -30.0, 7.0),
        Vector3::new(0.7 * turn, 1.0 - turn, 0.3),
    );
    phantom::artefact(&balls, &FACES.map(face), EDGE_MM, noise_sd_mm, seed).moved(&pose)
}

/// Errors of all diameters and distances, each with its stated uncertainty, mm.
fn errors(found: &ScannedArtefact, scale: f64) -> Vec<(f64, f64)> {
    let mut errors = Vec::new();
    for (a, one) in found.spheres.iter().enumerate() {
        let (diameter, doubt) = one.diameter_mm();
        errors.push((diameter - scale * 2.0 * RADIUS_MM, doubt));
        for (b, other) in found.spheres.iter().enumerate().skip(a + 1) {
            let apart = (Point3::from(CENTRES[a]) - Point3::from(CENTRES[b])).norm();
            let (distance, doubt) = one.distance_mm(other);
            errors.push((distance - scale * apart, doubt));
        }
    }
    errors
}

fn largest(errors: &[(f64, f64)]) -> f64 {
    errors.iter().map(|e| e.0.abs()).fold(0.0, f64::max)
}

#[test]
fn without_noise_sizes_are_exact_in_any_pose() {
    for seed in 0..4 {
        let scan = scan(0.0, seed);
        let found = find(&scan, &nominal()).expect("all are seen");
        assert!(!found.is_ambiguous);
        let height_mm = found.step(&scan, &step()).expect("both faces").height_mm;
        assert!((height_mm - STEP_MM).abs() < 1e-6, "{height_mm}");
        let off = largest(&errors(&found, 1.0));
        assert!(off < 1e-6, "{off}");
        assert!(found.spheres.iter().all(|s| s.dispersion_mm < 1e-6));
    }
}

#[test]
fn with_noise_the_stated_uncertainty_holds_the_error() {
    let (mut held, mut all, mut worst) = (0, 0, 0.0_f64);
    for seed in 0..10 {
        let found = find(&scan(0.02, seed), &nominal()).expect("all are seen");
        let errors = errors(&found, 1.0);
        held += errors.iter().filter(|(e, u)| e.abs() <= *u).count();
        all += errors.len();
        worst = worst.max(largest(&errors));
        for sphere in &found.spheres {
            // 95 % of a normal distribution lie within 3.92 standard deviations.
            let ratio = sphere.dispersion_mm / (3.92 * 0.02);
            assert!((ratio - 1.0).abs() < 0.1, "{ratio}");
        }
    }
    println!("noise 0.02 mm: sizes within {worst:.4} mm; stated uncertainty holds {held} of {all}");
    assert!(worst < 0.005, "{worst}");
    assert!(held * 100 >= all * 90, "{held} of {all}");
}

/// Height of a step between two discs of radius r whose middles lie d apart, with
/// one slope for both: its variance is sd² (1/n + 1/m + d² / ((n + m) r²/4)).
#[test]
fn a_step_is_measured_in_any_pose_and_its_uncertainty_holds_the_error() {
    let (mut held, mut squares) = (0, 0.0);
    for seed in 0..20 {
        let scan = scan(0.02, seed);
        let found = find(&scan, &nominal()).expect("all are seen");
        let step = found.step(&scan, &step()).expect("both faces are seen");
        let error = step.height_mm - STEP_MM;
        let [n, m] = step.points.map(|count| count as f64);
        let of_slope = 10.0_f64.powi(2) / ((n + m) * 2.5_f64.powi(2) / 4.0);
        let formula = 2.0 * 0.02 * (1.0 / n + 1.0 / m + of_slope).sqrt();
        let ratio = step.uncertainty_mm / formula;
        assert!((0.85..1.15).contains(&ratio), "{ratio}");
        held += usize::from(error.abs() <= step.uncertainty_mm);
        squares += error * error;
    }
    let rms: f64 = (squares / 20.0_f64).sqrt();
    println!(
        "step of {STEP_MM} mm, noise 0.02 mm: error {rms:.4} mm (rms of 20); held {held} of 20"
    );
    assert!(rms < 0.012 && held >= 17, "{rms}, {held}");
}

#[test]
fn a_face_that_was_not_scanned_is_said() {
    let balls = CENTRES.map(|centre| (Point3::from(centre), RADIUS_MM));
    let scan = phantom::artefact(&balls, &[face(FACES[0])], EDGE_MM, 0.01, 1);
    let found = find(&scan, &nominal()).expect("all are seen");
    let refused = found.step(&scan, &step());
    assert_eq!(
        refused,
        Err(StepNotFound {
            upper: true,
            seen: 0
        })
    );
}

/// 1 % too large: every size is too large by that, and by nothing else.
#[test]
fn a_wrong_scale_is_found_out() {
    let scan = scan(0.01, 3).scaled(1.01);
    let found = find(&scan, &nominal()).expect("all are seen");
    let height_mm = found.step(&scan, &step()).expect("both faces").height_mm;
    assert!((height_mm - 1.01 * STEP_MM).abs() < 0.004, "{height_mm}");
    let off = largest(&errors(&found, 1.01));
    assert!(off < 0.005, "{off}");
    assert!(largest(&errors(&found, 1.0)) > 0.4);
}

#[test]
fn what_is_not_the_artefact_is_said() {
    let mirrored: Vec<Point3<f64>> = scan(0.01, 1)
        .vertices()
        .iter()
        .map(|p| Point3::new(-p.x, p.y, p.z))
        .collect();
    let mirrored = Mesh::new(mirrored, scan(0.01, 1).triangles().to_vec(), None)
        .expect("the triangles are those of the scan")
        .turned_inside_out();
    assert_eq!(
        find(&mirrored, &nominal()),
        Err(ArtefactNotFound::StandsOtherwise { seen: 4 })
    );
    let three = CENTRES.map(|centre| (Point3::from(centre), RADIUS_MM));
    let three = phantom::artefact(&three[..3], &[], EDGE_MM, 0.01, 1);
    assert_eq!(
        find(&three, &nominal()),
        Err(ArtefactNotFound::TooFew { wanted: 4, seen: 3 })
    );
    let impression = phantom::Phantom::new(&phantom::Options {
        edge_mm: 0.8,
        ..Default::default()
    });
    assert!(find(&impression.impression, &nominal()).is_err());
    assert!(find(&Mesh::default(), &nominal()).is_err());
}

/// Balls that stand as an equilateral triangle may be taken for one another.
#[test]
fn spheres_that_stand_evenly_are_called_interchangeable() {
    let even: Vec<NominalSphere> = [[0.0, 0.0], [30.0, 0.0], [15.0, 675.0_f64.sqrt()]]
        .map(|[x, y]| NominalSphere {
            centre: Point3::new(x, y, 0.0),
            radius_mm: 4.0,
        })
        .into();
    let balls: Vec<_> = even.iter().map(|n| (n.centre, n.radius_mm)).collect();
    let found =
        find(&phantom::artefact(&balls, &[], EDGE_MM, 0.0, 1), &even).expect("all are seen");
    assert!(found.is_ambiguous && found.rms_mm < 1e-6);
}
