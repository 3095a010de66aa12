//! The truth beside a phantom against its mesh and against what is known of mouths.

use mesh::SpatialIndex;
use nalgebra::Point3;
use phantom::{Across, Arch, Blemish, BorderPart, Options, Phantom, Place, Side, Sides, Truth};

const ARCHES: [Arch; 2] = [Arch::Maxillary, Arch::Mandibular];

fn fine(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.5,
        tray_edge_mm: 3.0,
        ..Options::default()
    })
}

/// The truth does not depend on the mesh, so a coarse one will do.
fn truth_of(arch: Arch, seed: u64) -> Truth {
    let options = Options {
        arch,
        seed,
        edge_mm: 3.0,
        tray_edge_mm: 3.0,
        ..Options::default()
    };
    Phantom::new(&options).truth
}

fn nearest_vertex(made: &Phantom, p: &Point3<f64>) -> f64 {
    made.impression
        .vertices()
        .iter()
        .map(|v| (v - p).norm())
        .fold(f64::INFINITY, f64::min)
}

#[test]
fn lines_and_landmarks_lie_on_the_scanned_surface() {
    for arch in ARCHES {
        let made = fine(arch, 2);
        let lines = made
            .truth
            .border
            .iter()
            .map(|b| b.point)
            .chain(made.truth.crest_line.iter().copied());
        for p in lines
            .step_by(7)
            .chain(made.truth.landmarks.iter().map(|l| l.point))
        {
            assert!(nearest_vertex(&made, &p) < 0.45, "{arch:?} {p}");
        }
    }
}

#[test]
fn the_border_starts_at_the_front_runs_to_the_left_and_is_closed() {
    for arch in ARCHES {
        for seed in 0..3 {
            let truth = truth_of(arch, seed);
            let border = &truth.border;
            let middle: Point3<f64> = Point3::from(
                border
                    .iter()
                    .map(|b| b.point.coords)
                    .sum::<nalgebra::Vector3<f64>>()
                    / border.len() as f64,
            );
            assert_eq!(border[0].s, 0.0);
            assert!((border[0].point - middle).dot(&truth.axes.anterior) > 20.0);
            assert!(border.windows(2).all(|w| w[0].s < w[1].s));
            let quarter = border.iter().find(|b| b.s > 0.15).expect("a point");
            assert!(
                (quarter.point - middle).dot(&truth.axes.right) < -15.0,
                "{arch:?} {seed}"
            );
            for (one, next) in border.iter().zip(border.iter().cycle().skip(1)) {
                assert!(
                    (one.point - next.point).norm() < 3.5,
                    "{arch:?} {seed} {one:?} {next:?}"
                );
            }
        }
    }
}

#[test]
fn flanges_have_the_sizes_of_real_ones() {
    for arch in ARCHES {
        for seed in 0..4 {
            let truth = truth_of(arch, seed);
            for b in truth
                .border
                .iter()
                .filter(|b| b.part != BorderPart::Posterior)
            {
                let height = b.flange_height_mm.expect("a height");
                let radius = b.border_radius_mm.expect("a radius");
                assert!((0.5..14.0).contains(&height), "{arch:?} {seed} {b:?}");
                assert!((0.7..3.2).contains(&radius), "{arch:?} {seed} {b:?}");
                assert!((1.3..8.0).contains(&b.overlap_mm), "{arch:?} {seed} {b:?}");
            }
        }
    }
}

#[test]
fn the_crest_s_mean_plane_is_square_to_the_seating_axis_within_a_degree() {
    for arch in ARCHES {
        for seed in 0..4 {
            let truth = truth_of(arch, seed);
            let count = truth.crest_line.len() as f64;
            let mean = truth
                .crest_line
                .iter()
                .map(|p| p.coords)
                .sum::<nalgebra::Vector3<f64>>()
                / count;
            let spread = truth
                .crest_line
                .iter()
                .map(|p| (p.coords - mean) * (p.coords - mean).transpose())
                .sum::<nalgebra::Matrix3<f64>>();
            let eigen = spread.symmetric_eigen();
            let normal = eigen
                .eigenvectors
                .column(eigen.eigenvalues.imin())
                .into_owned();
            let tilt = normal
                .dot(&truth.axes.seating)
                .abs()
                .min(1.0)
                .acos()
                .to_degrees();
            assert!(tilt < 1.0, "{arch:?} {seed}: {tilt}");
        }
    }
}

#[test]
fn landmarks_are_on_their_sides_and_as_far_apart_as_in_mouths() {
    for (arch, pair, apart) in [
        (Arch::Maxillary, "hamular notch", 36.0..52.8),
        (Arch::Mandibular, "retromolar pad", 38.0..56.0),
    ] {
        for seed in 0..4 {
            let truth = truth_of(arch, seed);
            let find = |side| {
                truth
                    .landmarks
                    .iter()
                    .find(|l| l.name == pair && l.side == Some(side))
                    .expect("a pair")
                    .point
            };
            let across = find(Side::Right) - find(Side::Left);
            assert!(across.dot(&truth.axes.right) > 0.0, "{arch:?} {seed}");
            assert!(
                apart.contains(&across.norm()),
                "{arch:?} {seed}: {}",
                across.norm()
            );
        }
    }
}

#[test]
fn a_void_is_as_deep_as_planted_and_a_nodule_as_high() {
    let at = |station| Place::Arch {
        station,
        across: Across::Crest,
    };
    let blemishes = vec![
        Blemish::Void {
            place: at(-0.4),
            diameter_mm: 2.4,
            depth_mm: 1.0,
        },
        Blemish::Nodule {
            place: at(0.4),
            diameter_mm: 2.0,
            height_mm: 0.8,
        },
    ];
    for arch in ARCHES {
        let options = Options {
            arch,
            seed: 3,
            edge_mm: 0.2,
            tray_edge_mm: 3.0,
            blemishes: blemishes.clone(),
            ..Options::default()
        };
        let made = Phantom::new(&options);
        for (blemish, sense) in made.truth.blemishes.iter().zip([-1.0, 1.0]) {
            let axis = made.truth.axes.seating * sense;
            let furthest = made
                .impression
                .vertices()
                .iter()
                .map(|v| v - blemish.centre)
                .filter(|d| d.norm() < 1.5 && (d - axis * d.dot(&axis)).norm() < 0.4)
                .map(|d| d.dot(&axis))
                .fold(f64::NEG_INFINITY, f64::max);
            assert!(
                (furthest - blemish.depth_mm).abs() < 0.12,
                "{arch:?}: {furthest} {blemish:?}"
            );
        }
    }
}

/// A fold's bottom lies as deep as planted, and the surface beside it not at all.
#[test]
fn a_fold_is_as_deep_and_as_narrow_as_planted() {
    let (width_mm, depth_mm) = (0.6, 0.4);
    for heading_deg in [0.0, 70.0] {
        let options = Options {
            arch: Arch::Mandibular,
            seed: 5,
            edge_mm: 0.2,
            tray_edge_mm: 3.0,
            ..Options::default()
        };
        let fold = Blemish::Fold {
            place: Place::Arch {
                station: 0.4,
                across: Across::Crest,
            },
            heading_deg,
            length_mm: 5.0,
            width_mm,
            depth_mm,
        };
        let sound = Phantom::new(&options);
        let folded = Phantom::new(&Options {
            blemishes: vec![fold],
            ..options
        });
        let truth = folded.truth.blemishes[0];
        assert_eq!(truth.size_mm, 5.0);
        let index = SpatialIndex::new(&sound.impression);
        let grooved: Vec<(Point3<f64>, f64)> = folded
            .impression
            .vertices()
            .iter()
            .filter(|v| (*v - truth.centre).norm() < 3.5)
            .filter_map(|v| Some((*v, index.nearest(v, 2.0)?.distance)))
            .filter(|(_, depth)| *depth > 0.05)
            .collect();
        let deepest = grooved.iter().map(|g| g.1).fold(0.0, f64::max);
        assert!((deepest - depth_mm).abs() < 0.05, "{deepest}");
        let far = |from: &Point3<f64>| {
            let off = grooved.iter().map(|g| g.0 - from);
            off.max_by(|a, b| a.norm().total_cmp(&b.norm()))
                .expect("a groove")
        };
        let end = truth.centre + far(&truth.centre);
        let run = far(&end);
        assert!((run.norm() - 5.0 - 0.3).abs() < 0.4, "{}", run.norm());
        let aside = grooved
            .iter()
            .map(|g| (g.0 - end).cross(&run.normalize()).norm())
            .fold(0.0, f64::max);
        // The arch bends a little, and the bottom lies below the line.
        assert!(aside < 1.0, "{aside}");
    }
}

#[test]
fn a_tissue_stop_shows_the_tray_over_about_its_face() {
    for arch in ARCHES {
        let options = Options {
            arch,
            seed: 6,
            edge_mm: 0.25,
            tray_edge_mm: 3.0,
            stops: vec![-0.6, 0.5],
            ..Options::default()
        };
        let made = Phantom::new(&options);
        for face in &made.truth.stops {
            let centre = made.truth.impression_from_tray * face;
            assert!(made.truth.cover_at(&centre).abs() < 1e-9);
            let shown: f64 = (0..made.impression.triangles().len())
                .filter(|&t| {
                    made.impression
                        .corners(t)
                        .iter()
                        .all(|p| (p - centre).norm() < 3.2 && made.truth.cover_at(p) < 0.02)
                })
                .map(|t| made.impression.area_vector(t).norm())
                .sum();
            assert!((12.0..22.0).contains(&shown), "{arch:?}: {shown}");
        }
    }
}

#[test]
fn a_scan_of_the_tissue_s_side_is_open_and_ends_near_the_border() {
    for arch in ARCHES {
        let options = Options {
            arch,
            seed: 8,
            edge_mm: 0.6,
            tray_edge_mm: 3.0,
            sides: Sides::Tissue,
            ..Options::default()
        };
        let made = Phantom::new(&options);
        assert!(!mesh::Topology::of(&made.impression).is_closed());
        let beyond = made
            .impression
            .vertices()
            .iter()
            .filter(|p| !made.truth.is_tissue_side(p));
        for p in beyond {
            let gone = made
                .truth
                .border
                .iter()
                .map(|b| (b.point - p).norm())
                .fold(f64::INFINITY, f64::min);
            assert!(gone < 3.5, "{arch:?}: {gone}");
        }
    }
}
