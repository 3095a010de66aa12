//! What is asked about a scan before anything is measured on it: nothing about
//! sound impressions, and what is no impression is named.

use crate::Population;
use fixtures::{coarse, mirrored};
use geometry::double_layers::double_layers;
use measure::intake::first_look;
use measure::pair::NoPair;
use measure::pair::{Pass, laid};
use measure::{Frame, NotAnImpression, frame};
use mesh::{Mesh, Topology};
use phantom::{
    Across, Arch, Blemish, FlangeSide, Options, Other, Phantom, Place, PlantedSpot, Pose,
    RimFaults, Sides, cast_from,
};

/// Most that may lie double unasked (the default protocol's limit).
const MOST_DOUBLE: f64 = 0.02;

/// What is asked about a scan: nothing, for a sound impression.
fn questions(scan: &Mesh) -> Vec<String> {
    let topology = Topology::of(scan);
    let found = first_look(scan).frame.err().map(|what| what.to_string());
    let (_, turned) = geometry::winding::righted(scan, &topology);
    let layers = double_layers(scan, &topology);
    let doubled =
        (layers.share > MOST_DOUBLE).then(|| format!("{:.2e} of it lies double", layers.share));
    found
        .into_iter()
        .chain(turned.in_words())
        .chain(doubled)
        .collect()
}

/// Each jaw with each seed, from both sides and from the tissue side.
fn with_sides(mouths: Vec<(Arch, u64)>) -> Vec<(Arch, u64, Sides)> {
    let each = mouths.into_iter();
    each.flat_map(|(arch, seed)| [Sides::Both, Sides::Tissue].map(|sides| (arch, seed, sides)))
        .collect()
}

/// What is asked of a scan, and what its cast was taken for.
type Row = (String, Vec<String>, Option<String>);

/// Sound impressions and the casts made from them.
pub fn no_sound_impression_is_questioned_and_every_cast_is_named(population: Population) {
    let promise = population.asked("sound-impressions-and-casts");
    let trials = with_sides(population.both_jaws(0, 8));
    let outcomes: Vec<Row> = promise.rows(trials, |&(arch, seed, sides)| {
        let phantom = coarse(arch, seed, sides);
        let cast = (sides == Sides::Both).then(|| match frame::find(&cast_from(&phantom)) {
            Err(what) => what.to_string(),
            Ok(_) => "an impression".to_owned(),
        });
        let name = format!("{arch:?} {seed} {sides:?}");
        (name, questions(&phantom.impression), cast)
    });
    let questioned: Vec<_> = outcomes.iter().filter(|o| !o.1.is_empty()).collect();
    let unnamed: Vec<_> = outcomes
        .iter()
        .filter(|o| {
            o.2.as_ref()
                .is_some_and(|is| *is != NotAnImpression::Positive.to_string())
        })
        .map(|o| (&o.0, &o.2))
        .collect();
    promise.figure(
        "scans questioned; casts not named as such",
        "0; 0",
        format!("{}; {}", questioned.len(), unnamed.len()),
    );
    assert!(questioned.is_empty(), "{questioned:#?}");
    assert!(unnamed.is_empty(), "{unnamed:#?}");
}

/// Sound in what they are, whatever else they suffer: bare and thin places,
/// voids or nodules, folds, holes, ragged rims, cut scans, short and sharp
/// borders, noise, coarse edges.
pub fn no_impression_with_many_faults_is_taken_for_something_else(population: Population) {
    let promise = population.asked("impressions-full-of-faults");
    let trials = with_sides(population.both_jaws(1000, 3));
    let outcomes: Vec<(String, Vec<String>)> = promise.rows(trials, |&(arch, seed, sides)| {
        let phantom = Phantom::new(&full_of_faults(arch, seed, sides));
        let mut asked = questions(&phantom.impression);
        // Where the scan ends below the border it may be asked how it lies.
        if !is_cut(seed)
            && let Ok(found) = frame::find(&phantom.impression)
        {
            let frame = found.frame;
            let same_arch = (frame.arch == measure::Arch::Maxillary) == (arch == Arch::Maxillary);
            if !same_arch || frame.arch_confidence < LEAST_CONFIDENCE {
                asked.push(format!("{:?}, {:.2}", frame.arch, frame.arch_confidence));
            }
            if frame.confidence < LEAST_CONFIDENCE {
                asked.push(format!("axes, {:.2}", frame.confidence));
            }
        }
        (format!("{arch:?} {seed} {sides:?}"), asked)
    });
    let questioned: Vec<_> = outcomes.iter().filter(|o| !o.1.is_empty()).collect();
    promise.figure(
        "taken for something else, or asked which way they lie",
        "0",
        questioned.len().to_string(),
    );
    assert!(questioned.is_empty(), "{questioned:?}");
}

/// Whether a trial's scan lacks 3 mm of a flange over 20 mm.
fn is_cut(seed: u64) -> bool {
    seed % 4 == 1
}

/// Below it the orientation is asked about (the default protocol's limit).
const LEAST_CONFIDENCE: f64 = 0.5;

fn full_of_faults(arch: Arch, seed: u64, sides: Sides) -> Options {
    let turn = seed as usize;
    let mut blemishes = if turn.is_multiple_of(2) {
        Blemish::random_voids(arch, seed, 8)
    } else {
        Blemish::random_nodules(arch, seed, 8)
    };
    if turn.is_multiple_of(3) {
        blemishes.extend(Blemish::random_folds(arch, seed + 9, 4));
    }
    let flange = FlangeSide::Outer;
    blemishes.extend(match turn % 4 {
        1 => vec![Blemish::CutScan {
            flange,
            station: 0.4,
            length_mm: 20.0,
            by_mm: 3.0,
        }],
        2 => vec![
            Blemish::ShortBorder {
                flange,
                station: -0.4,
                length_mm: 12.0,
                by_mm: 4.0,
            },
            Blemish::KnifeEdge {
                flange,
                station: 0.5,
                length_mm: 10.0,
                radius_mm: 0.4,
            },
        ],
        _ => Vec::new(),
    });
    blemishes.extend([-0.5, 0.1, 0.6].map(|station| Blemish::Hole {
        place: Place::Arch {
            station,
            across: Across::Crest,
        },
        diameter_mm: 3.0,
    }));
    Options {
        arch,
        seed,
        sides,
        edge_mm: [0.4, 0.7, 0.9][turn % 3],
        tray_edge_mm: 2.5,
        noise_sd_mm: [0.05, 0.0, 0.03][turn / 2 % 3],
        handle: turn.is_multiple_of(2),
        overflow: [1.0, 1.6, 0.4][turn / 3 % 3],
        spots: PlantedSpot::random(arch, seed, 6 + turn % 3, 3),
        blemishes,
        rim: RimFaults {
            bites_mm: 1.5,
            islands: turn % 5,
            holes: turn % 7,
        },
        ..Options::default()
    }
}

fn pass<'a>(mesh: &'a Mesh, frame: &'a Frame) -> Pass<'a> {
    Pass {
        mesh,
        frame,
        scan_from_tray: None,
    }
}

/// Two passes of one mouth: another scanner, another pose, other spots.
pub fn a_mirrored_second_pass_is_told_and_a_true_one_is_not(population: Population) {
    let promise = population.asked("second-passes");
    let trials = population.both_jaws(0, 4);
    let outcomes: Vec<[Option<bool>; 2]> = promise.rows(trials, |&(arch, seed)| {
        let first = coarse(arch, seed, Sides::Both).impression;
        let second = Phantom::new(&Options {
            arch,
            seed,
            edge_mm: 0.6,
            noise_sd_mm: 0.03,
            overflow: 1.4,
            spots: PlantedSpot::random(arch, seed, 3, 2),
            pose: Pose::AsMade,
            ..Options::default()
        })
        .impression;
        let mirrored = mirrored(&second);
        let frame_of = |scan: &Mesh| frame::find(scan).expect("a sound impression").frame;
        let first_frame = frame_of(&first);
        [second, mirrored].map(|second| {
            let frame = frame_of(&second);
            let (one, two) = (pass(&first, &first_frame), pass(&second, &frame));
            match laid(one, two, &|| {}) {
                Ok(_) => Some(false),
                Err(NoPair::Mirrored) => Some(true),
                Err(_) => None,
            }
        })
    });
    let count = |which: usize, answer| outcomes.iter().filter(|o| o[which] == answer).count();
    promise.figure(
        "true ones taken as true, as mirrored; mirrored ones taken as mirrored, as true",
        "none, 0; all, 0",
        format!(
            "{}, {}; {}, {} of {}",
            count(0, Some(false)),
            count(0, Some(true)),
            count(1, Some(true)),
            count(1, Some(false)),
            outcomes.len()
        ),
    );
    assert_eq!(count(0, Some(true)), 0);
    assert_eq!(count(1, Some(false)), 0);
    assert_eq!(count(1, Some(true)), outcomes.len());
}

/// Casts, bases, rims, trays and halves: twelve scans of each mouth.
pub fn nothing_else_is_judged_as_an_impression(population: Population) {
    const IMPRESSION: &str = "an impression";
    let promise = population.asked("something-else");
    let mouths = population.both_jaws(2000, 3);
    let trials: Vec<(Other, Arch, u64)> = mouths
        .into_iter()
        .flat_map(|(arch, seed)| Other::ALL.map(|what| (what, arch, seed)))
        .collect();
    let outcomes: Vec<(String, String)> = promise.rows(trials, |&(what, arch, seed)| {
        let scan = what.scan(arch, seed, [0.5, 0.7, 1.0][seed as usize % 3]);
        let taken = match first_look(&scan).frame {
            Err(what) => what.name().to_string(),
            Ok(_) => IMPRESSION.to_owned(),
        };
        (format!("{what:?} {arch:?} {seed}"), taken)
    });
    for (what, taken) in &outcomes {
        println!("{what}: {taken}");
    }
    let judged: Vec<_> = outcomes.iter().filter(|o| o.1 == IMPRESSION).collect();
    promise.figure("judged as an impression", "0", judged.len().to_string());
    assert!(judged.is_empty(), "{judged:#?}");
}
