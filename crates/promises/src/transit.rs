//! One impression scanned twice, as it was sent and as it arrived, changed between the two
//! by a formula.

use crate::Population;
use crate::bent_tray::Bent;
use measure::pair::{DamageKind, NoTransit, Transit, changed_in_transit};
use measure::{MeasureSettings, Scanned, Side};
use mesh::Mesh;
use nalgebra::Point3;
use phantom::{Across, Blemish, FlangeSide, Member, Options, Phantom, Place, Pose};
use serde::{Deserialize, Serialize};

const BENT_MM: f64 = 0.3;
const DENT_MM: f64 = 0.3;
const DENT_ACROSS_MM: f64 = 5.0;
const STUCK_MM: f64 = 0.5;
const TORN_MM: f64 = 3.0;
const SMALLER_PERCENT: f64 = 0.15;
/// A change of the arch as a whole from which it is asked about, mm (SCAN-17).
const ARCH_LIMIT_MM: f64 = 0.15;
/// A depth from which a place is asked about, mm (SCAN-02).
const PLACE_LIMIT_MM: f64 = 0.1;

/// What happened between the two scans.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
enum Happened {
    Nothing,
    Shrank,
    HeelBent,
    Dented,
    Stuck,
    Torn,
}

const ALL: [Happened; 6] = [
    Happened::Nothing,
    Happened::Shrank,
    Happened::HeelBent,
    Happened::Dented,
    Happened::Stuck,
    Happened::Torn,
];

/// What was found.
#[derive(Debug, Clone, Serialize, Deserialize)]
struct Row {
    happened: Happened,
    /// Errors of the bend of each heel, upward and outward, with their uncertainty, mm.
    bend_errors: Vec<[f64; 2]>,
    /// Error of the change of size with its uncertainty, percent.
    size_error: [f64; 2],
    /// Whether the arch as a whole surely changed by more than its limit.
    is_arch_changed: bool,
    /// Code of each place that surely changed by more than its limit; how far it lies from
    /// what was planted, and its depth with its uncertainty, mm.
    damage: Vec<(u8, f64, [f64; 2])>,
    uncertainty_mm: f64,
}

fn blemish(happened: Happened, seed: u64) -> Option<Blemish> {
    let station = [-0.5, 0.35, 0.5, -0.3][(seed / 2) as usize % 4];
    match happened {
        Happened::Stuck => Some(Blemish::Nodule {
            place: Place::Arch {
                station,
                across: Across::Crest,
            },
            // A ball whose cap is 3 mm wide.
            diameter_mm: (2.25 + STUCK_MM * STUCK_MM) / STUCK_MM,
            height_mm: STUCK_MM,
        }),
        Happened::Torn => Some(Blemish::ShortBorder {
            flange: FlangeSide::Outer,
            station,
            length_mm: 6.0,
            by_mm: TORN_MM,
        }),
        Happened::Nothing | Happened::Shrank | Happened::HeelBent | Happened::Dented => None,
    }
}

/// A mouth of the first phantoms, or of the broad family.
fn options(arch: phantom::Arch, seed: u64) -> Options {
    let plain = Options {
        arch,
        seed: 1700 + seed,
        edge_mm: 0.5,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        ..Options::default()
    };
    if seed % 4 < 2 {
        return plain;
    }
    let mut members = (1700 + seed..).map(|seed| Member::sound(seed).options(0.55));
    // The family never ends.
    members
        .find(|options| options.arch == arch)
        .unwrap_or(plain)
}

fn scanned(scan: &Mesh) -> Scanned {
    let settings = MeasureSettings::default();
    measure::measure(scan, None, &settings, &|_| {})
}

/// A place of the crest line, one of four in turn.
fn dent_at(made: &Phantom, seed: u64) -> Point3<f64> {
    let crest = &made.truth.crest_line;
    crest[crest.len() * [1, 2, 3, 4][(seed / 2) as usize % 4] / 5]
}

/// A cap of a paraboloid pressed into the surface.
fn dented(scan: &Mesh, at: &Point3<f64>) -> Mesh {
    let vertices = (scan.vertices().iter())
        .zip(geometry::signed_distance::angle_weighted_normals(scan))
        .map(|(p, normal)| {
            let part = (p - at).norm() / (DENT_ACROSS_MM / 2.0);
            p - normal.normalize() * (DENT_MM * (1.0 - part * part).max(0.0))
        })
        .collect();
    Mesh::new(vertices, scan.triangles().to_vec(), None).expect("the same triangles")
}

fn row(options: &Options, sent: (&Mesh, &Scanned), happened: Happened, seed: u64) -> Row {
    let made = Phantom::new(&Options {
        edge_mm: options.edge_mm - 0.06,
        pose: Pose::AsMade,
        blemishes: blemish(happened, seed).into_iter().collect(),
        ..options.clone()
    });
    let heel = match seed / 2 % 4 {
        0 => [[1.0, 0.0], [0.0, 0.0]],
        1 => [[0.0, 0.0], [0.0, -1.0]],
        2 => [[0.0, 0.0], [-1.0, 0.0]],
        _ => [[0.0, 1.0], [0.0, 0.0]],
    };
    let by_mm = if happened == Happened::HeelBent {
        heel.map(|limb| limb.map(|part: f64| part * BENT_MM))
    } else {
        [[0.0; 2]; 2]
    };
    let smaller_percent = if happened == Happened::Shrank {
        SMALLER_PERCENT
    } else {
        0.0
    };
    let bent = Bent::new(&made.truth, by_mm);
    let dent = (happened == Happened::Dented).then(|| dent_at(&made, seed));
    let impression = match dent {
        Some(at) => dented(&made.impression, &at),
        None => made.impression.clone(),
    };
    let size = 1.0 - smaller_percent / 100.0;
    let arrived = impression.mapped(|p| (p + bent.moved(p)) * size);
    let found = changed_in_transit(sent, (&arrived, &scanned(&arrived)));
    let found = found.unwrap_or_else(|why| panic!("{happened:?}: {why}"));
    let bend_errors = found.bends.iter().flat_map(|limb| {
        let [up, out] = bent.of_limb(limb.side == Side::Left, &limb.end);
        [(limb.end_toward_tissue_mm, up), (limb.end_outward_mm, out)]
            .map(|(found, truth)| [found.value - truth, found.uncertainty])
    });
    let blemishes = made.truth.blemishes.first();
    let planted = dent.or(blemishes.map(|planted| planted.centre));
    let code = |kind: DamageKind| match kind {
        DamageKind::Torn => 0,
        DamageKind::PressedIn => 1,
        DamageKind::StuckOn => 2,
    };
    let surely = found
        .damage
        .iter()
        .filter(|place| place.depth.mm.abs() - place.depth.uncertainty_mm > PLACE_LIMIT_MM);
    let damage = surely.map(|place| {
        let off_mm = planted.map_or(f64::INFINITY, |planted| (place.at - planted).norm());
        let depth = [place.depth.mm, place.depth.uncertainty_mm];
        (code(place.kind), off_mm.min(99.0), depth)
    });
    Row {
        happened,
        bend_errors: bend_errors.collect(),
        size_error: [
            found.larger_percent.value + smaller_percent,
            found.larger_percent.uncertainty,
        ],
        is_arch_changed: is_arch_changed(&found),
        damage: damage.collect(),
        uncertainty_mm: found.uncertainty_mm,
    }
}

fn is_arch_changed(found: &Transit) -> bool {
    let heels = found.bends.iter();
    heels
        .flat_map(|limb| [limb.end_toward_tissue_mm, limb.end_outward_mm])
        .chain([found.heels_apart_mm])
        .any(|amount| amount.value.abs() - amount.uncertainty > ARCH_LIMIT_MM)
}

/// Of each impression as sent and as it arrived: neither noise nor shrinkage is damage, and a
/// bent heel, a dent, something stuck on and a torn border are found and told apart.
pub fn damage_in_transit_is_found_and_told_from_a_change_of_the_arch(population: Population) {
    let asked = population.asked("changed-in-transit");
    let rows: Vec<Row> = asked
        .rows(population.jaws_in_turn(2), |&(arch, seed)| {
            let options = options(arch, seed);
            let sent = Phantom::new(&options).impression;
            let of_sent = scanned(&sent);
            ALL.map(|happened| row(&options, (&sent, &of_sent), happened, seed))
                .to_vec()
        })
        .into_iter()
        .flatten()
        .collect();
    let of = |happened: Happened| rows.iter().filter(move |row| row.happened == happened);
    for happened in ALL {
        let count = of(happened).count();
        let arch = of(happened).filter(|row| row.is_arch_changed).count();
        let [damaged, right, alone] = [
            of(happened).filter(|row| !row.damage.is_empty()).count(),
            of(happened).filter(|row| row.is_found()).count(),
            of(happened).filter(|row| row.damage.len() == 1).count(),
        ];
        asked.figure(
            &format!("{}: the arch as a whole changed; damaged; of the right kind and in the right place; in one place", happened.name()),
            happened.bar(),
            format!("{arch}; {damaged}; {right}; {alone}, of {count}"),
        );
    }
    let held = |errors: &mut dyn Iterator<Item = [f64; 2]>| {
        let errors: Vec<[f64; 2]> = errors.collect();
        let held = errors.iter().filter(|e| e[0].abs() <= e[1]).count();
        let worst = errors.iter().map(|e| e[0].abs()).fold(0.0, f64::max);
        (100.0 * held as f64 / errors.len() as f64, worst)
    };
    let (bend_held, bend_worst) = held(&mut rows.iter().flat_map(|row| row.bend_errors.clone()));
    let (size_held, size_worst) = held(&mut rows.iter().map(|row| row.size_error));
    let mut uncertainty: Vec<f64> = rows.iter().map(|row| row.uncertainty_mm).collect();
    asked.figure(
        "worst error of the bend of a heel and of the size, U holds them; median U of a depth without the scanner's own",
        "0.06 mm, 0.03 %; at least 93 %",
        format!(
            "{bend_worst:.3} mm, {size_worst:.3} %; {bend_held:.0} %, {size_held:.0} %; {:.3} mm",
            fixtures::quantile(&mut uncertainty, 0.5)
        ),
    );
    assert!(bend_worst <= 0.06 && size_worst <= 0.03);
    assert!(bend_held >= 93.0 && size_held >= 93.0);
    for row in &rows {
        assert_eq!(
            row.is_arch_changed,
            row.happened == Happened::HeelBent,
            "{row:?}"
        );
        match row.happened.kind() {
            None => assert!(row.damage.is_empty(), "{row:?}"),
            Some(_) => assert!(row.is_found(), "{row:?}"),
        }
    }
}

/// Another impression given as the one that was sent: of another mouth, of the same mouth taken
/// again, or mirrored.
pub fn a_scan_of_another_impression_is_refused(population: Population) {
    let asked = population.asked("not-this-impression");
    let shares: Vec<Vec<f64>> = asked.rows(population.jaws_in_turn(2), |&(arch, seed)| {
        let options = options(arch, seed);
        let sent = Phantom::new(&options);
        let of_sent = scanned(&sent.impression);
        let other = Phantom::new(&self::options(arch, seed + 20)).impression;
        [
            other,
            taken_again(&options, seed),
            mirrored(&sent.impression),
        ]
        .iter()
        .map(|arrived| {
            let arrived = (arrived, &scanned(arrived));
            match changed_in_transit((&sent.impression, &of_sent), arrived) {
                Err(NoTransit::NotThisImpression { fitting_percent }) => fitting_percent,
                Ok(found) => 100.0 * found.unchanged_share,
                Err(why) => panic!("{why}"),
            }
        })
        .collect()
    });
    let most = |which: usize| shares.iter().map(|of| of[which]).fold(0.0, f64::max);
    let refused = |which: usize| shares.iter().filter(|of| of[which] < 80.0).count();
    asked.figure(
        "another mouth, the same mouth taken again, mirrored: most that lies on the scan as sent; refused below 80 %",
        "-; all, all, 90 % of mirrored ones",
        format!(
            "{:.0} %, {:.0} %, {:.0} %; {}, {}, {} of {}",
            most(0), most(1), most(2), refused(0), refused(1), refused(2), shares.len()
        ),
    );
    assert_eq!([refused(0), refused(1)], [shares.len(); 2]);
    // A mouth may be its own mirror image, but for a tenth of a millimetre.
    assert!(refused(2) as f64 >= 0.9 * shares.len() as f64);
}

/// The same mouth in another impression: its surface lies elsewhere by half a millimetre here
/// and there.
fn taken_again(options: &Options, seed: u64) -> Mesh {
    const APART_MM: f64 = 0.5;
    const WAVE_MM: f64 = 5.0;
    let made = Phantom::new(&Options {
        edge_mm: options.edge_mm - 0.06,
        pose: Pose::AsMade,
        ..options.clone()
    });
    let scan = &made.impression;
    let vertices = (scan.vertices().iter())
        .zip(geometry::signed_distance::angle_weighted_normals(scan))
        .map(|(p, normal)| {
            let wave = |mm: f64| (mm / WAVE_MM + seed as f64).sin();
            p + normal.normalize() * (APART_MM * wave(p.x) * wave(p.y))
        })
        .collect();
    Mesh::new(vertices, scan.triangles().to_vec(), None).expect("the same triangles")
}

fn mirrored(scan: &Mesh) -> Mesh {
    scan.mapped(|p| Point3::new(-p.x, p.y, p.z))
        .turned_inside_out()
}

impl Happened {
    fn name(self) -> &'static str {
        match self {
            Self::Nothing => "unchanged",
            Self::Shrank => "smaller by 0.15 %",
            Self::HeelBent => "a heel bent by 0.3 mm",
            Self::Dented => "a dent of 0.3 mm over 5 mm",
            Self::Stuck => "0.5 mm stuck on over 3 mm",
            Self::Torn => "the border torn by 3 mm",
        }
    }

    fn bar(self) -> &'static str {
        match self {
            Self::Nothing | Self::Shrank => "none; none; -; -",
            Self::HeelBent => "all; none; -; -",
            Self::Dented | Self::Stuck | Self::Torn => "none; all; all; -",
        }
    }

    /// The code of the damage that it is.
    fn kind(self) -> Option<u8> {
        match self {
            Self::Torn => Some(0),
            Self::Dented => Some(1),
            Self::Stuck => Some(2),
            Self::Nothing | Self::Shrank | Self::HeelBent => None,
        }
    }
}

impl Row {
    /// Whether all that was found is where it was planted, and what moved most of the kind that
    /// was planted: beside a short border a phantom's surface bulges.
    fn is_found(&self) -> bool {
        const WITHIN_MM: f64 = 5.0;
        let deepest = self.damage.first().map(|place| place.0);
        deepest.is_some()
            && deepest == self.happened.kind()
            && self.damage.iter().all(|place| place.1 <= WITHIN_MM)
    }
}
