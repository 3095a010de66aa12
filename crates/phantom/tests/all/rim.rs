//! Planted faults of the border and of the scan's rim.

use mesh::Topology;
use nalgebra::Point3;
use phantom::{
    Arch, Blemish, BorderPart, BorderPoint, FlangeSide, Options, Phantom, RimFaults, Sides, Truth,
};

const PLACES: [(Arch, FlangeSide, BorderPart); 3] = [
    (Arch::Maxillary, FlangeSide::Outer, BorderPart::Outer),
    (Arch::Mandibular, FlangeSide::Outer, BorderPart::Outer),
    (Arch::Mandibular, FlangeSide::Lingual, BorderPart::Lingual),
];
const STATION: f64 = 0.5;
const LENGTH_MM: f64 = 12.0;

fn made(arch: Arch, blemishes: Vec<Blemish>) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 4,
        edge_mm: 0.5,
        tray_edge_mm: 3.0,
        blemishes,
        ..Options::default()
    })
}

/// The border point of a part over (or under) a place of the plan.
fn border_at<'a>(truth: &'a Truth, part: BorderPart, place: &Point3<f64>) -> &'a BorderPoint {
    let seating = truth.axes.seating;
    let aside = |b: &&BorderPoint| {
        let gone = b.point - place;
        (gone - seating * gone.dot(&seating)).norm()
    };
    truth
        .border
        .iter()
        .filter(|b| b.part == part)
        .min_by(|a, b| aside(a).total_cmp(&aside(b)))
        .expect("a border point")
}

/// How far the scan rises over a border point within a flange's width of it, mm.
fn rise_near(made: &Phantom, point: &Point3<f64>) -> f64 {
    let seating = made.truth.axes.seating;
    made.impression
        .vertices()
        .iter()
        .map(|v| v - point)
        .filter(|d| (d - seating * d.dot(&seating)).norm() < 2.2)
        .map(|d| d.dot(&seating))
        .fold(f64::NEG_INFINITY, f64::max)
}

fn nearest_vertex(made: &Phantom, p: &Point3<f64>) -> f64 {
    made.impression
        .vertices()
        .iter()
        .map(|v| (v - p).norm())
        .fold(f64::INFINITY, f64::min)
}

#[test]
fn a_short_border_is_lower_by_what_was_planted_on_either_flange() {
    for (arch, flange, part) in PLACES {
        let short = made(
            arch,
            vec![Blemish::ShortBorder {
                flange,
                station: STATION,
                length_mm: LENGTH_MM,
                by_mm: 2.5,
            }],
        );
        let there = border_at(&short.truth, part, &short.truth.blemishes[0].centre);
        let plain = made(arch, Vec::new()).truth;
        let before = border_at(&plain, part, &there.point);
        let height = |b: &BorderPoint| b.flange_height_mm.expect("a height");
        let lower = height(before) - height(there);
        assert!((lower - 2.5).abs() < 0.1, "{arch:?} {flange:?} {lower}");
        assert!(there.scanned);
        assert!(nearest_vertex(&short, &there.point) < 0.45, "{arch:?}");
    }
}

#[test]
fn a_knife_edge_is_sharp_and_as_high_as_the_border_beside_it() {
    for (arch, flange, part) in PLACES {
        let knife = Blemish::KnifeEdge {
            flange,
            station: STATION,
            length_mm: LENGTH_MM,
            radius_mm: 0.3,
        };
        let sharp = made(arch, vec![knife]);
        let plain = made(arch, Vec::new()).truth;
        let there = border_at(&sharp.truth, part, &sharp.truth.blemishes[0].centre);
        let before = border_at(&plain, part, &there.point);
        let radius = |b: &BorderPoint| b.border_radius_mm.expect("a radius");
        let thickness = |b: &BorderPoint| b.flange_thickness_mm.expect("a thickness");
        let height = |b: &BorderPoint| b.flange_height_mm.expect("a height");
        assert!(radius(there) < 0.6 && radius(there) < 0.7 * radius(before));
        assert!(thickness(there) < thickness(before));
        assert!((height(there) - height(before)).abs() < 0.15);
    }
}

#[test]
fn a_cut_scan_lacks_its_border_and_says_which_points() {
    for (arch, flange, part) in PLACES {
        let cut = made(
            arch,
            vec![Blemish::CutScan {
                flange,
                station: STATION,
                length_mm: LENGTH_MM,
                by_mm: 2.0,
            }],
        );
        assert!(!Topology::of(&cut.impression).is_closed());
        let lost: Vec<&BorderPoint> = cut.truth.border.iter().filter(|b| !b.scanned).collect();
        assert!(lost.iter().all(|b| b.part == part), "{arch:?}");
        // A stretch is as long as told along the arch's curve; the border
        // runs outside or inside of it.
        let length: f64 = lost
            .windows(2)
            .map(|w| (w[1].point - w[0].point).norm())
            .sum();
        assert!((8.0..17.0).contains(&length), "{arch:?} {length}");
        let beside = |b: &BorderPoint| {
            let scanned = cut.truth.border.iter().filter(|other| other.scanned);
            scanned
                .map(|other| (other.point - b.point).norm())
                .fold(f64::INFINITY, f64::min)
        };
        let within: Vec<_> = lost.iter().filter(|b| beside(b) > 3.0).collect();
        assert!(within.len() > 4, "{arch:?}");
        for b in within {
            let up = rise_near(&cut, &b.point);
            assert!((-2.7..-1.0).contains(&up), "{arch:?} {up}");
        }
    }
}

#[test]
fn a_maxilla_has_no_lingual_flange_to_spoil() {
    let spoilt = made(
        Arch::Maxillary,
        vec![
            Blemish::CutScan {
                flange: FlangeSide::Lingual,
                station: STATION,
                length_mm: LENGTH_MM,
                by_mm: 3.0,
            },
            Blemish::ShortBorder {
                flange: FlangeSide::Lingual,
                station: STATION,
                length_mm: LENGTH_MM,
                by_mm: 3.0,
            },
        ],
    );
    let plain = made(Arch::Maxillary, Vec::new());
    assert_eq!(spoilt.impression.vertices(), plain.impression.vertices());
}

#[test]
fn a_ragged_rim_leaves_the_border_and_adds_islands_and_holes() {
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        let scan = |rim| {
            Phantom::new(&Options {
                arch,
                seed: 9,
                edge_mm: 0.4,
                tray_edge_mm: 3.0,
                sides: Sides::Tissue,
                rim,
                ..Options::default()
            })
        };
        let plain = scan(RimFaults::default());
        let bitten = scan(RimFaults {
            bites_mm: 2.5,
            ..RimFaults::default()
        });
        let spoilt = scan(RimFaults {
            bites_mm: 2.5,
            islands: 4,
            holes: 3,
        });
        let area = |p: &Phantom| -> f64 {
            (0..p.impression.triangles().len())
                .map(|t| p.impression.area_vector(t).norm())
                .sum()
        };
        assert!(area(&bitten) < area(&plain) - 5.0);
        for b in bitten.truth.border.iter().step_by(5) {
            assert!(nearest_vertex(&bitten, &b.point) < 0.4, "{arch:?} {b:?}");
        }
        let parts = |p: &Phantom| Topology::of(&p.impression).components();
        assert_eq!(parts(&spoilt), parts(&bitten) + 4);
        let loops = |p: &Phantom| Topology::of(&p.impression).boundary_loops().len();
        assert!(loops(&spoilt) > loops(&bitten) + 4);
    }
}
