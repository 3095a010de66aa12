//! The broad family: its ranges are reached, its truth fits its meshes.

use mesh::{Integrity, SpatialIndex, Topology};
use phantom::{
    BackForm, FamilyTruth, Fault, FlangeSide, HandleForm, Member, NotchShape, Options, Phantom,
    RANGES, RidgeForm, RimFaults, Scanning, Sides,
};
use std::sync::LazyLock;

/// Truth of the first members; none is meshed.
static TRUTHS: LazyLock<Vec<FamilyTruth>> = LazyLock::new(|| {
    (0..140)
        .map(|seed| Member::sound(seed).truth().expect("a member has it"))
        .collect()
});

/// A member as the formula has it: nothing of its scan is lost.
fn plain(seed: u64, edge_mm: f64) -> Phantom {
    Phantom::new(&Options {
        tray_edge_mm: 3.0,
        noise_sd_mm: 0.0,
        sides: Sides::Both,
        rim: RimFaults::default(),
        scanning: Scanning::default(),
        ..Member::sound(seed).options(edge_mm)
    })
}

#[test]
fn one_seed_makes_one_member() {
    let of = |seed| Phantom::new(&Member::sound(seed).options(1.5));
    let (one, other) = (of(4), of(4));
    assert_eq!(one.impression, other.impression);
    assert_eq!(one.tray, other.tray);
    assert_eq!(one.truth.family, other.truth.family);
    assert_eq!(one.truth.border, other.truth.border);
    assert_ne!(one.impression, of(6).impression);
}

#[test]
fn every_range_has_a_source() {
    for range in RANGES {
        assert!(range.within[0] < range.within[1], "{range:?}");
        assert!(range.source.len() > 8, "{range:?}");
    }
}

/// Values reach within a tenth of a range's ends, and no further than those.
fn reach(what: &str, values: &[f64], [low, high]: [f64; 2]) {
    let least = values.iter().copied().fold(f64::INFINITY, f64::min);
    let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let tenth = 0.1 * (high - low);
    assert!(least < low + tenth, "{what}: {least} to {most}");
    assert!(most > high - tenth, "{what}: {least} to {most}");
    assert!(
        least > low - tenth && most < high + tenth,
        "{what}: {least} to {most}"
    );
}

#[test]
fn ranges_are_reached() {
    let truths = &*TRUTHS;
    let frena: Vec<_> = truths.iter().flat_map(|t| &t.frena).collect();
    let depths: Vec<f64> = frena.iter().map(|f| f.depth_mm).collect();
    reach("depth of frena", &depths, [1.0, 6.0]);
    let of = |name| {
        let named = frena.iter().filter(move |f| f.name == name);
        named.map(|f| f.width_mm).collect::<Vec<f64>>()
    };
    // Twins are narrower.
    reach("width of buccal frena", &of("buccal frenum"), [2.5, 12.0]);
    reach("width of labial frena", &of("labial frenum"), [2.0, 7.0]);
    for shape in [NotchShape::V, NotchShape::U, NotchShape::Bell] {
        assert!(frena.iter().filter(|f| f.shape == shape).count() > 50);
    }
    let waves: Vec<_> = truths.iter().flat_map(|t| &t.waves).collect();
    let of = |value: fn(&phantom::DrawnWave) -> f64| -> Vec<f64> {
        waves.iter().map(|w| value(w)).collect()
    };
    reach("height of waves", &of(|w| w.height_mm), [0.5, 2.0]);
    reach("length of waves", &of(|w| w.length_mm), [15.0, 40.0]);
    let rolls: Vec<f64> = truths.iter().flat_map(|t| t.rolls_mm).collect();
    reach("radius of borders", &rolls, [0.8, 3.0]);
    let sides: Vec<f64> = truths.iter().map(|t| t.left_over_right_mm).collect();
    reach("difference of sides", &sides, [-2.0, 2.0]);
    let vaults: Vec<f64> = truths.iter().filter_map(|t| t.vault_mm).collect();
    reach("vault", &vaults, [3.4, 15.0]);
    let ends: Vec<_> = truths.iter().flat_map(|t| &t.ends).collect();
    let notches = ends.iter().filter(|e| e.landmark == "hamular notch");
    let reliefs: Vec<f64> = notches.filter_map(|e| e.relief_mm).collect();
    reach("hamular notch", &reliefs, [1.0, 5.0]);
}

#[test]
fn every_kind_is_drawn() {
    let truths = &*TRUTHS;
    use HandleForm::{Flat, High, Low, None, Steep, Stepped};
    for form in [None, Stepped, Flat, High, Low, Steep] {
        assert!(truths.iter().filter(|t| t.handle == form).count() > 8);
    }
    use RidgeForm::{High as Tall, KnifeEdged, Undercut, Usual};
    for form in [Usual, Tall, RidgeForm::Flat, KnifeEdged, Undercut] {
        assert!(truths.iter().filter(|t| t.ridge == form).count() > 8);
    }
    for form in [
        BackForm::HamularNotch,
        BackForm::PadClosed,
        BackForm::PadOpen,
    ] {
        let ends = truths.iter().flat_map(|t| &t.ends);
        assert!(ends.filter(|e| e.form == Some(form)).count() > 8);
    }
    assert!(truths.iter().any(|t| t.torus_mm.is_some()));
    assert!(truths.iter().any(|t| t.lapped));
    let buccal = |t: &FamilyTruth| {
        let named = t.frena.iter().filter(|f| f.name == "buccal frenum");
        named.count()
    };
    assert!(truths.iter().any(|t| buccal(t) < 2));
    assert!(truths.iter().any(|t| buccal(t) > 2));
    let lingual = |t: &&FamilyTruth| t.frena.iter().any(|f| f.flange == FlangeSide::Lingual);
    assert!(truths.iter().filter(lingual).count() > 50);
}

#[test]
fn sound_members_reach_every_posterior_landmark_and_cut_ones_lack_one() {
    for end in TRUTHS.iter().flat_map(|sound| &sound.ends) {
        assert!(end.margin_mm > 0.0, "{end:?}");
    }
    for seed in 0..8 {
        for fault in [Fault::CutLandmark, Fault::LostSeal] {
            let member = Member {
                seed,
                fault: Some(fault),
            };
            let truth = member.truth().expect("a member has it");
            let short: Vec<_> = truth.ends.iter().filter(|e| e.margin_mm < 0.0).collect();
            let landmarks: Vec<&str> = short.iter().map(|e| e.landmark).collect();
            let is_one = match (fault, seed % 2) {
                (_, 1) => landmarks == ["retromolar pad"],
                (Fault::LostSeal, _) => landmarks == ["posterior palatal seal"],
                // Where the notch is not reached, the seal's end is not either.
                _ => landmarks[0] == "hamular notch" && landmarks.len() <= 2,
            };
            assert!(is_one, "{seed} {fault:?}: {:?}", truth.ends);
            let side = short[0].side;
            assert!(short.iter().all(|e| e.side == side), "{seed} {fault:?}");
        }
    }
}

#[test]
fn lines_and_landmarks_lie_on_the_surface() {
    for seed in [6, 7] {
        let made = plain(seed, 0.5);
        let index = SpatialIndex::new(&made.impression);
        let border = made.truth.border.iter().map(|b| b.point);
        let landmarks = made.truth.landmarks.iter().map(|l| l.point);
        let family = made.truth.family.as_ref().expect("a member has it");
        let frena = family.frena.iter().filter_map(|f| f.point);
        let mut off: Vec<f64> = border
            .chain(landmarks)
            .chain(frena)
            .map(|p| {
                index
                    .nearest(&p, 2.0)
                    .map_or(2.0, |nearest| nearest.distance)
            })
            .collect();
        off.sort_by(f64::total_cmp);
        // Triangles cut the corner of a narrow notch by up to half an edge.
        let (middle, most) = (off[off.len() / 2], off[off.len() - 1]);
        assert!(middle < 0.03 && most < 0.3, "{seed}: {middle} {most}");
    }
}

#[test]
fn the_border_dips_where_a_frenum_is_said_to_be() {
    for seed in 0..2 {
        let made = plain(seed, 3.0);
        let truth = &made.truth;
        let height = |p: &nalgebra::Point3<f64>| p.coords.dot(&truth.axes.seating);
        let family = truth.family.as_ref().expect("a member has it");
        for frenum in &family.frena {
            let bottom = frenum.point.expect("it has a bottom");
            let near = truth
                .border
                .iter()
                .filter(|b| (b.point - bottom).norm() < 2.0 * frenum.width_mm + 6.0)
                .map(|b| height(&b.point));
            let shoulder = near.fold(f64::NEG_INFINITY, f64::max);
            let dip = shoulder - height(&bottom);
            assert!(dip > 0.8 * frenum.depth_mm, "{seed} {frenum:?}: {dip}");
        }
    }
}

#[test]
fn members_are_closed_manifolds_and_no_edge_is_lost_to_thinning() {
    for seed in 0..2 {
        let member = Member::sound(seed);
        let thinned = Phantom::new(&Options {
            tray_edge_mm: 1.2,
            sides: Sides::Both,
            rim: RimFaults::default(),
            scanning: Scanning {
                smoothing: 2,
                longest_edge_mm: Some(1.5),
                stitch_mm: 0.08,
                spikes: 2,
            },
            noise_sd_mm: 0.0,
            ..member.options(0.4)
        });
        for mesh in [&thinned.impression, &thinned.tray] {
            let topology = Topology::of(mesh);
            assert!(topology.is_closed(), "{seed}");
            assert_eq!(topology.misoriented_edges(), 0, "{seed}");
            assert_eq!(topology.components(), 1, "{seed}");
        }
        let scan = &thinned.impression;
        let mut edges: Vec<f64> = (scan.triangles().iter())
            .map(|t| (scan.vertices()[t[0] as usize] - scan.vertices()[t[1] as usize]).norm())
            .collect();
        edges.sort_by(f64::total_cmp);
        assert!(edges[edges.len() / 50] < 0.3, "{seed}");
        assert!(edges[edges.len() * 49 / 50] > 1.0, "{seed}");
        let topology = Topology::of(scan);
        assert!(Integrity::of(scan, &topology).median_edge < 1.2, "{seed}");
    }
}

#[test]
fn a_fault_is_planted_and_no_other() {
    for seed in [0, 3, 4, 7, 8, 11] {
        let member = Member::with_a_fault(seed);
        let made = Phantom::new(&Options {
            tray_edge_mm: 3.0,
            ..member.options(2.0)
        });
        let spots = made.truth.spots.len() + made.truth.blemishes.len();
        let short = (made.truth.family.as_ref().expect("a member has it").ends)
            .iter()
            .any(|e| e.margin_mm < 0.0);
        match member.fault {
            Some(Fault::CutLandmark | Fault::LostSeal) => assert!(spots == 0 && short, "{seed}"),
            _ => assert!(spots == 1 && !short, "{seed}"),
        }
        for spot in &made.truth.spots {
            let area = spot.show_through_area_mm2;
            assert!((2.0..4.5).contains(&area), "{seed}: {area}");
        }
    }
}
