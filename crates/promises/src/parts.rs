//! An impression that was cut apart with its tray, beside the same one whole.

use crate::Population;
use fixtures::quantile;
use measure::{
    Cut, JoinedParts, MeasureSettings, Measurement, PartsNotJoined, PreparedTray, Scanned,
    measure_in_tray,
};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, HalfSpace, Options, Phantom, Pose, part};

/// Width of the saw, mm.
const SAW_MM: f64 = 0.8;

/// The front part and what is behind the cut: of a lower jaw its two limbs, of an upper jaw
/// one part, or two where it was cut along the midline, too.
fn cut_apart(whole: &Mesh, arch: Arch, seed: u64) -> Vec<Mesh> {
    let y = 8.0 + (seed % 4) as f64 * 3.0;
    let front = part(whole, &[HalfSpace::above(1, y)]);
    let behind = HalfSpace::below(1, y - SAW_MM);
    let backs = if arch == Arch::Mandibular || seed % 2 == 1 {
        vec![
            part(whole, &[behind, HalfSpace::above(0, SAW_MM / 2.0)]),
            part(whole, &[behind, HalfSpace::below(0, -SAW_MM / 2.0)]),
        ]
    } else {
        vec![part(whole, &[behind])]
    };
    let parts = std::iter::once(front).chain(backs);
    let elsewhere = |(number, part): (usize, Mesh)| {
        let turn = 0.7 + number as f64 + seed as f64;
        let pose = Isometry3::new(
            Vector3::new(30.0 * turn, -12.0, 5.0 * turn),
            Vector3::new(turn.sin(), 0.4 * turn, turn.cos()),
        );
        part.moved(&pose)
    };
    parts.enumerate().map(elsewhere).collect()
}

fn made(arch: Arch, seed: u64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm: 0.5,
        tray_edge_mm: 1.0,
        noise_sd_mm: 0.01,
        pose: Pose::AsMade,
        ..Options::default()
    })
}

fn measured(scan: &Mesh, tray: &PreparedTray, cut: Option<Cut>, doubt_mm: f64) -> Box<Measurement> {
    let settings = MeasureSettings {
        cut,
        scanner_uncertainty_mm: doubt_mm,
        ..MeasureSettings::default()
    };
    match measure_in_tray(scan, tray, &settings, &|_| ()) {
        Scanned::Impression(found) => found,
        Scanned::Else(what, _) => panic!("{what}"),
    }
}

/// Values at the stations of a border with their uncertainties, by place in the tray's scan.
type Figures = Vec<(Point3<f64>, f64, f64)>;

fn heights(of: &Measurement, tray_from_scan: &Isometry3<f64>) -> Figures {
    let border = of.border.as_ref().expect("a border is found");
    (border.stations.iter())
        .filter_map(|station| {
            let height = station.flange_height.ok()?;
            Some((
                tray_from_scan * station.point,
                height.mm,
                height.uncertainty_mm,
            ))
        })
        .collect()
}

fn covers(of: &Measurement, scan: &Mesh, tray_from_scan: &Isometry3<f64>) -> Figures {
    let cover = of.cover.as_ref().expect("the tray is placed");
    (scan.vertices().iter().enumerate().step_by(7))
        .filter_map(|(v, place)| {
            let mm = cover.at_vertex_mm[v]?;
            Some((
                tray_from_scan * place,
                mm,
                cover.uncertainty_at_vertex_mm[v],
            ))
        })
        .collect()
}

/// Differences of the figures at places that both have within a distance, and how many of
/// them the two uncertainties hold.
fn beside(parts: &Figures, whole: &Figures, within_mm: f64) -> (Vec<f64>, usize) {
    let mut held = 0;
    let differences = parts.iter().filter_map(|(place, mm, doubt)| {
        let off = |other: &(Point3<f64>, f64, f64)| (other.0 - place).norm();
        let nearest = whole.iter().min_by(|a, b| off(a).total_cmp(&off(b)))?;
        let difference = (mm - nearest.1).abs();
        (off(nearest) <= within_mm).then(|| {
            held += usize::from(difference <= doubt.hypot(nearest.2));
            difference
        })
    });
    (differences.collect(), held)
}

/// Cut into two or three parts and scanned in any pose, an impression gives the figures of
/// the whole, and nothing is found at the cut.
pub fn an_impression_in_parts_measures_as_the_whole(population: Population) {
    let promise = population.asked("impression-in-parts");
    let outcomes = promise.rows(population.both_jaws(0, 2), |&(arch, seed)| {
        let made = made(arch, seed);
        let tray = PreparedTray::of(&made.tray);
        let whole = measured(&made.impression, &tray, None, 0.0);
        let parts = cut_apart(&made.impression, arch, seed);
        let parts: Vec<&Mesh> = parts.iter().collect();
        let joined = JoinedParts::of(&parts, &tray)
            .unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"));
        let (cut, doubt_mm) = (joined.cut(), joined.uncertainty_mm());
        let found = measured(&joined.mesh, &tray, Some(cut), doubt_mm);
        let whole_from = (whole.cover.as_ref().ok())
            .and_then(|cover| cover.registration.as_ref())
            .expect("the tray is placed")
            .impression_from_tray
            .inverse();
        let own = Isometry3::identity();
        let cover = beside(
            &covers(&found, &joined.mesh, &own),
            &covers(&whole, &made.impression, &whole_from),
            0.3,
        );
        let height = beside(&heights(&found, &own), &heights(&whole, &whole_from), 1.0);
        let spots = [&found, &whole].map(|of| of.spots.len());
        let defects = [&found, &whole].map(|of| of.tissue.as_ref().map_or(0, |t| t.defects.len()));
        println!(
            "{arch:?} {seed}: {} parts, cut {:.2} mm, U {doubt_mm:.3}, spots {spots:?}, defects {defects:?}",
            parts.len(),
            joined.width_mm
        );
        (cover, height, [spots, defects], doubt_mm)
    });
    let mut held = [[0, 0]; 2];
    let mut differences = [Vec::new(), Vec::new()];
    let mut more = 0;
    for (cover, height, counts, _) in &outcomes {
        for (k, (of, within)) in [cover, height].into_iter().enumerate() {
            differences[k].extend(of.iter().copied());
            held[k][0] += within;
            held[k][1] += of.len();
        }
        more += counts.iter().filter(|[parts, whole]| parts > whole).count();
    }
    let [cover, height] = &mut differences;
    let share = held.map(|[held, all]| 100.0 * held as f64 / all.max(1) as f64);
    promise.figure(
        "difference of cover and of heights, 95th percentile; U holds",
        "0.15, 0.2 mm; 93 %",
        format!(
            "{:.3}, {:.3} mm; {:.0}, {:.0} %",
            quantile(cover, 0.95),
            quantile(height, 0.95),
            share[0],
            share[1]
        ),
    );
    promise.figure(
        "impressions with more spots or defects in parts than whole",
        "0",
        more.to_string(),
    );
    assert!(quantile(cover, 0.95) <= 0.15 && quantile(height, 0.95) <= 0.2);
    // The places of one mouth err together.
    let least = match population {
        Population::OneMouth => 90.0,
        Population::Many => 93.0,
    };
    assert!(share.iter().all(|share| *share >= least));
    assert_eq!(more, 0);
}

/// A part of another mouth, a part given twice and a part that is missing are named.
pub fn parts_that_do_not_belong_together_are_refused() {
    let made = [0, 1].map(|seed| made(Arch::Maxillary, seed));
    let tray = PreparedTray::of(&made[0].tray);
    let [own, other] = [&made[0], &made[1]].map(|of| cut_apart(&of.impression, Arch::Maxillary, 1));
    let refused = |parts: &[&Mesh]| {
        let why = JoinedParts::of(parts, &tray).expect_err("they do not belong together");
        println!("{why}");
        why
    };
    assert!(matches!(
        refused(&[&own[0], &other[1], &own[2]]),
        PartsNotJoined::OffTheTray { part: 2, .. } | PartsNotJoined::Ambiguous { part: 2, .. }
    ));
    assert!(matches!(
        refused(&[&own[0], &own[0]]),
        PartsNotJoined::NotJoined(_)
    ));
    let middle_gone = [
        part(&made[0].impression, &[HalfSpace::above(1, 25.0)]),
        part(&made[0].impression, &[HalfSpace::below(1, 5.0)]),
    ];
    assert!(matches!(
        refused(&[&middle_gone[0], &middle_gone[1]]),
        PartsNotJoined::NotJoined(_)
    ));
}
