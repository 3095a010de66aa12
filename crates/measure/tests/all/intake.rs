//! What a scan is: what is no impression is named, and what is badly made is
//! mended or said.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

use fixtures::{ARCHES, coarse, something_else, together};
use geometry::double_layers::double_layers;
use measure::{MeasureSettings, Measurement, NotAnImpression, frame};
use mesh::{Mesh, Topology, read_scan};
use nalgebra::{Translation3, Vector3};
use phantom::{Options, Phantom, Pose, Sides};
use std::path::Path;

fn measured(scan: &Mesh) -> Measurement {
    fixtures::measured(scan, None, &MeasureSettings::default())
}

#[test]
fn a_real_tooth_bearing_arch_is_named_as_one() {
    let scan = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../../shared/data/scans/tooth-bearing-half-arch-170k.ply");
    if !scan.exists() {
        println!("skipped: {} is absent", scan.display());
        return;
    }
    let teeth = read_scan(&scan).expect("a sound scan").mesh;
    let found = frame::find(&teeth).map(|f| f.frame);
    println!("tooth-bearing half arch: {found:?}");
    assert!(
        matches!(found, Err(NotAnImpression::Teeth { .. })),
        "{found:?}"
    );
    // The same turned inside out is what an impression of it would be.
    let found = frame::find(&teeth.turned_inside_out()).map(|f| f.frame);
    println!("its negative: {found:?}");
    assert!(
        matches!(found, Err(NotAnImpression::Sockets { .. })),
        "{found:?}"
    );
}

#[test]
fn two_scans_in_one_file_are_told() {
    for sides in [Sides::Both, Sides::Tissue] {
        let [upper, lower] = ARCHES.map(|arch| coarse(arch, 5, sides).impression);
        let beside = together(
            &upper,
            &lower.moved(&Translation3::new(95.0, 20.0, 5.0).into()),
        );
        let what = something_else(&beside, None);
        assert!(matches!(what, NotAnImpression::TwoScans { .. }), "{what:?}");
    }
}

#[test]
fn a_badly_stitched_scan_lies_double_where_it_does() {
    for arch in ARCHES {
        let phantom = coarse(arch, 8, Sides::Tissue);
        let scan = &phantom.impression;
        let normals = scan.vertex_normals();
        // A quarter of the arch a second time, 0.25 mm over the first.
        let middle = scan
            .vertices()
            .iter()
            .map(|p| p.coords)
            .sum::<Vector3<f64>>()
            / scan.vertices().len() as f64;
        let [front, right] = [phantom.truth.axes.anterior, phantom.truth.axes.right];
        let lifted = Mesh::new(
            scan.vertices()
                .iter()
                .zip(&normals)
                .map(|(p, n)| p + n * 0.25)
                .collect(),
            scan.triangles().to_vec(),
            None,
        )
        .expect("the same triangles");
        let second = lifted.filtered(|t| {
            let from_middle = lifted.corners(t)[0].coords - middle;
            from_middle.dot(&front) > 0.0 && from_middle.dot(&right) > 0.0
        });
        let both = together(scan, &second);
        let layers = double_layers(&both, &Topology::of(&both));
        let truth = 2.0 * second.area();
        println!(
            "{arch:?}: {:.0} mm² lie double, {truth:.0} mm² truly",
            layers.area_mm2
        );
        assert!((0.85..1.1).contains(&(layers.area_mm2 / truth)));
    }
}

#[test]
fn a_scan_of_two_minds_is_mended_and_that_is_said() {
    for arch in ARCHES {
        let scan = coarse(arch, 11, Sides::Both).impression;
        let sound = measured(&scan).frame;
        let triangles = scan
            .triangles()
            .iter()
            .enumerate()
            .map(|(t, &[a, b, c])| if t % 10 < 3 { [a, c, b] } else { [a, b, c] })
            .collect();
        let mixed = Mesh::new(scan.vertices().to_vec(), triangles, None).expect("same vertices");
        for (name, bad) in [
            ("mixed", mixed),
            ("inside out", scan.clone().turned_inside_out()),
        ] {
            let mended = measured(&bad);
            let frame = &mended.frame;
            assert!(frame.seating.angle(&sound.seating) < 1e-9, "{name}");
            assert!(mended.scan.turned.in_words().is_some(), "{name}");
        }
    }
}

#[test]
fn an_empty_tray_and_an_exchanged_pair_are_named() {
    for arch in ARCHES {
        let options = Options {
            arch,
            seed: 21,
            edge_mm: 0.6,
            tray_edge_mm: 0.6,
            noise_sd_mm: 0.02,
            ..Options::default()
        };
        let phantom = Phantom::new(&options);
        // The tray scanned a second time, in another pose and with another edge.
        let again = Phantom::new(&Options {
            tray_edge_mm: 0.5,
            tray_pose: Pose::AsMade,
            ..options
        })
        .tray;
        let empty = something_else(&again, Some(&phantom.tray));
        assert_eq!(empty, NotAnImpression::EmptyTray, "{arch:?}");
        let exchanged = something_else(&phantom.tray, Some(&phantom.impression));
        assert_eq!(exchanged, NotAnImpression::Exchanged, "{arch:?}");
    }
}
