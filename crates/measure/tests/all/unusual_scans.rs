//! Scans that are not as one would like them, on phantoms whose truth is known.

use measure::{Cover, MeasureSettings, Measuring, NoCover, Spot, SpotKind, TrayNotPlaced};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, Member, Options, Phantom, PlantedSpot, Pose, TrayForm, Variety};
use std::sync::LazyLock;

/// Cover, and where there is little of it.
struct Found {
    cover: Result<Cover, NoCover>,
    spots: Vec<Spot>,
}

fn measured(impression: &Mesh, tray: &Mesh) -> Found {
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(impression, Some(tray), &settings);
    let cover = measuring.cover().expect("an impression");
    Found {
        cover: cover.cloned().map_err(Clone::clone),
        spots: measuring.spots().to_vec(),
    }
}

/// One phantom a jaw, with two show-throughs; without a handle, which would
/// make registration easy.
static PHANTOMS: LazyLock<[Phantom; 2]> = LazyLock::new(|| {
    [(Arch::Maxillary, 700), (Arch::Mandibular, 703)].map(|(arch, seed)| {
        Phantom::new(&Options {
            arch,
            seed,
            edge_mm: 0.4,
            tray_edge_mm: 0.45,
            noise_sd_mm: 0.01,
            handle: false,
            spots: PlantedSpot::random(arch, seed, 2, 0),
            ..Options::default()
        })
    })
});

/// The tray lies where it truly does and both show-throughs are found.
fn is_as_planted(result: &Found, phantom: &Phantom, moved: &Isometry3<f64>) {
    let cover = result.cover.as_ref().expect("the tray is there");
    let truth = moved * phantom.truth.impression_from_tray;
    let placed = cover.registration.as_ref().expect("the tray was laid on");
    let found = placed.impression_from_tray;
    for p in phantom.tray.vertices().iter().step_by(97) {
        assert!((found * p - truth * p).norm() < 0.05);
    }
    for planted in &phantom.truth.spots {
        let centre = moved * planted.centre;
        assert!(
            result
                .spots
                .iter()
                .any(|s| s.kind == SpotKind::ShowThrough && (s.centre - centre).norm() < 2.0),
            "{planted:?}"
        );
    }
}

fn faces(mesh: &Mesh, triangle: usize, axis: &Vector3<f64>) -> f64 {
    mesh.area_vector(triangle).normalize().dot(axis)
}

#[test]
fn the_order_of_triangles_and_a_far_origin_change_nothing() {
    for phantom in &*PHANTOMS {
        let scan = &phantom.impression;
        let mut triangles = scan.triangles().to_vec();
        triangles.reverse();
        triangles.rotate_left(scan.triangles().len() / 3);
        let shuffled = Mesh::new(scan.vertices().to_vec(), triangles, None).expect("same indices");
        let far = Isometry3::translation(1e5, -2e5, 3e4);
        let result = measured(&shuffled.moved(&far), &phantom.tray);
        is_as_planted(&result, phantom, &far);
    }
}

#[test]
fn a_scan_wound_inside_out_is_mended() {
    for phantom in &*PHANTOMS {
        let result = measured(
            &phantom.impression.clone().turned_inside_out(),
            &phantom.tray,
        );
        is_as_planted(&result, phantom, &Isometry3::identity());
    }
}

#[test]
fn the_walls_of_a_tray_are_enough_to_register_it() {
    for phantom in &*PHANTOMS {
        let (scan, truth) = (&phantom.impression, &phantom.truth);
        // The underside was not scanned.
        let walls = scan.filtered(|t| {
            truth.is_tissue_side(&scan.corners(t)[0]) || faces(scan, t, &truth.axes.seating) > -0.6
        });
        is_as_planted(
            &measured(&walls, &phantom.tray),
            phantom,
            &Isometry3::identity(),
        );
    }
}

#[test]
fn many_small_holes_do_no_harm() {
    for phantom in &*PHANTOMS {
        let scan = &phantom.impression;
        let pierced = scan.filtered(|t| (t * 2_654_435_761) % 100 >= 3);
        is_as_planted(
            &measured(&pierced, &phantom.tray),
            phantom,
            &Isometry3::identity(),
        );
    }
}

/// Its outer side alone would hide every show-through behind a wall's thickness.
#[test]
fn a_tray_scanned_from_outside_only_gives_no_cover() {
    for phantom in &*PHANTOMS {
        let (tray, truth) = (&phantom.tray, &phantom.truth);
        let seating = truth.impression_from_tray.inverse() * truth.axes.seating;
        let outside = tray.filtered(|t| faces(tray, t, &seating) < 0.3);
        let result = measured(&phantom.impression, &outside);
        assert!(
            matches!(result.cover, Err(NoCover::TrayInsideMissing { .. })),
            "{:?}",
            result.cover.map(|c| c.median_mm)
        );
    }
}

/// A mirrored scan has the shape of another mouth; only a tray that is not
/// symmetric can tell. Phantoms' are: here both scans are widened on one side.
#[test]
fn a_mirrored_impression_is_told_by_its_tray() {
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        let phantom = Phantom::new(&Options {
            arch,
            seed: 704,
            pose: Pose::AsMade,
            tray_pose: Pose::AsMade,
            ..Options::default()
        });
        let bent = |p: &Point3<f64>| Point3::new(p.x + 0.003 * p.x * p.x, p.y, p.z);
        let mirror = |p: &Point3<f64>| Point3::new(-p.x, p.y, p.z);
        let scan = mapped(&phantom.impression, bent);
        let tray = mapped(&phantom.tray, bent);
        assert!(measured(&scan, &tray).cover.is_ok());
        let result = measured(&mapped(&scan, mirror).turned_inside_out(), &tray);
        assert_eq!(
            result.cover.map(|c| c.median_mm),
            Err(TrayNotPlaced::Mirrored.into())
        );
    }
}

// Material covers most of the tray's outside: from the frames the tray slides along what shows
// of it and comes to lie beside its place, where the mirror image of the scan fits better.
#[test]
fn a_lapped_impression_in_its_own_tray_is_not_mirrored() {
    let made = Phantom::new(&Options {
        arch: Arch::Mandibular,
        seed: 873,
        variety: Variety::Broad { cut: None },
        edge_mm: 0.3,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.015,
        tray_form: TrayForm {
            hole_radius_mm: 1.5,
            holes_apart_mm: 6.0,
            rolled_rim_mm: 0.5,
        },
        ..Options::default()
    });
    let result = measured(&made.impression, &made.tray);
    assert!(result.cover.is_ok(), "{:?}", result.cover.err());
}

fn mapped(mesh: &Mesh, map: impl Fn(&Point3<f64>) -> Point3<f64>) -> Mesh {
    let vertices = mesh.vertices().iter().map(map).collect();
    Mesh::new(vertices, mesh.triangles().to_vec(), None).expect("the same triangles")
}

#[test]
fn a_tray_of_another_size_is_named_with_both_sizes() {
    for phantom in &*PHANTOMS {
        for factor in [0.7, 1.15] {
            let result = measured(&phantom.impression, &phantom.tray.scaled(factor));
            assert!(
                matches!(
                    result.cover,
                    Err(NoCover::Tray(TrayNotPlaced::OtherSize { .. }))
                ),
                "{factor}: {:?}",
                result.cover.map(|c| c.median_mm)
            );
        }
    }
}

// A palate 3.4 mm deep: its borders are 5.5 times larger than what a search for a trough of the
// usual width finds between them.
#[test]
fn a_shallow_palate_between_high_borders_is_no_cast() {
    let made = Phantom::new(&Options {
        arch: Arch::Maxillary,
        seed: 812,
        variety: Variety::Broad { cut: None },
        edge_mm: 0.5,
        tray_edge_mm: 2.5,
        ..Options::default()
    });
    let settings = MeasureSettings::default();
    let measuring = Measuring::new(&made.impression, None, &settings);
    let found = measuring.frame().expect("an impression");
    assert_eq!(found.frame.arch, measure::Arch::Maxillary);
}

// Palates less than 4.1 mm deep, from which the trough rises slowly. The last showed a third of its
// trough to the search for one of the usual width.
#[test]
fn under_a_shallow_palate_the_trough_is_seen_all_round() {
    for seed in [384, 466, 482] {
        let made = Phantom::new(&Member::sound(seed).options(0.6));
        let settings = MeasureSettings::default();
        let measuring = Measuring::new(&made.impression, None, &settings);
        let found = measuring.frame().expect("an impression");
        assert_eq!(found.frame.arch, measure::Arch::Maxillary, "{seed}");
        let off_mm = |place: &Point3<f64>| {
            let crest = made.truth.crest_line.iter();
            crest
                .map(|own| (own - place).norm())
                .fold(f64::INFINITY, f64::min)
        };
        let line = found.crest.points().iter();
        let from_local = found.frame.local_from_scan().inverse();
        let farthest = line
            .map(|place| off_mm(&(from_local * place)))
            .fold(0.0, f64::max);
        let length_mm = found.crest.points().len() as f64;
        assert!(
            length_mm > 80.0 && farthest < 4.0,
            "{seed}: {length_mm} mm, {farthest:.1} mm off"
        );
    }
}
