//! What every phantom must be: a closed, outward surface with true axes.

use mesh::{Integrity, Topology};
use nalgebra::Matrix3;
use phantom::{Arch, Options, Phantom};

const ARCHES: [Arch; 2] = [Arch::Maxillary, Arch::Mandibular];

#[test]
fn both_scans_are_closed_manifolds_that_face_outward_with_the_wanted_edge() {
    for arch in ARCHES {
        for seed in 0..6 {
            let made = Phantom::new(&Options {
                arch,
                seed,
                edge_mm: 0.6,
                tray_edge_mm: 0.7,
                ..Options::default()
            });
            for (mesh, edge) in [(&made.impression, 0.6), (&made.tray, 0.7)] {
                let topology = Topology::of(mesh);
                assert!(topology.is_closed(), "{arch:?} {seed}");
                assert_eq!(topology.misoriented_edges(), 0, "{arch:?} {seed}");
                assert_eq!(topology.components(), 1, "{arch:?} {seed}");
                assert!(mesh.signed_volume() > 5000.0, "{arch:?} {seed}");
                let median = Integrity::of(mesh, &topology).median_edge;
                assert!(
                    (median / edge - 1.0).abs() < 0.15,
                    "{arch:?} {seed}: {median}"
                );
            }
        }
    }
}

#[test]
fn the_patient_s_axes_are_square_and_right_handed_or_not_as_the_jaw_wants() {
    for (arch, handedness) in [(Arch::Maxillary, 1.0), (Arch::Mandibular, -1.0)] {
        let axes = Phantom::new(&Options {
            arch,
            seed: 5,
            edge_mm: 1.5,
            ..Options::default()
        })
        .truth
        .axes;
        let matrix = Matrix3::from_columns(&[axes.right, axes.anterior, axes.seating]);
        assert!((matrix.determinant() - handedness).abs() < 1e-12);
        assert!((matrix.transpose() * matrix - Matrix3::identity()).norm() < 1e-12);
        let expected = axes.anterior.cross(&axes.seating) * handedness;
        assert!((axes.right - expected).norm() < 1e-12);
    }
}

#[test]
fn the_same_options_give_the_same_phantom() {
    let options = Options {
        seed: 9,
        edge_mm: 1.0,
        noise_sd_mm: 0.02,
        ..Options::default()
    };
    let (one, other) = (Phantom::new(&options), Phantom::new(&options));
    assert_eq!(one.impression, other.impression);
    assert_eq!(one.tray, other.tray);
}
