//! Voids, nodules, folds and holes on phantoms that hold them, and on sound
//! ones. Run with `--nocapture` to see the figures; the long run of 50 seeds an
//! arch with `--ignored` too.

#![allow(clippy::print_stdout, reason = "the figures are what the test is for")]

use measure::{Defect, DefectKind, MeasureSettings, TissueSurface, measure};
use nalgebra::Point3;
use phantom::{Arch, Blemish, BlemishKind, BlemishTruth, Options, Phantom, Sides};
use rayon::prelude::*;

const ARCHES: [Arch; 2] = [Arch::Maxillary, Arch::Mandibular];

fn settings() -> MeasureSettings {
    MeasureSettings {
        show_through_mm: 0.2,
        thin_cover_mm: 1.0,
        least_area_mm2: 1.0,
        stops: Vec::new(),
        stop_radius_mm: 2.0,
        flange_depth_mm: 3.0,
    }
}

fn surface_of(phantom: &Phantom) -> TissueSurface {
    let measured = measure(&phantom.impression, None, &settings(), &|_| {});
    measured.tissue.expect("a phantom has a tissue surface")
}

fn made(options: Options) -> Phantom {
    Phantom::new(&Options {
        // No tray scan is used.
        tray_edge_mm: 4.0,
        ..options
    })
}

/// How a planted void, nodule or fold came out.
struct Outcome {
    truth: BlemishTruth,
    /// Its width at the surface, mm.
    width_mm: f64,
    found: Option<Defect>,
}

/// What was planted and what else was found.
struct Trial {
    name: String,
    outcomes: Vec<Outcome>,
    false_finds: Vec<(Defect, String)>,
}

fn kind_of(kind: BlemishKind) -> Option<DefectKind> {
    match kind {
        BlemishKind::Void => Some(DefectKind::Void),
        BlemishKind::Nodule => Some(DefectKind::Nodule),
        BlemishKind::Fold => Some(DefectKind::Fold),
        BlemishKind::Hole => Some(DefectKind::Hole),
        _ => None,
    }
}

fn width_of(blemish: &Blemish) -> f64 {
    let mouth = |ball: f64, depth: f64| 2.0 * (depth * (ball - depth)).max(0.0).sqrt();
    match *blemish {
        Blemish::Void {
            diameter_mm,
            depth_mm,
            ..
        } => mouth(diameter_mm, depth_mm),
        Blemish::Nodule {
            diameter_mm,
            height_mm,
            ..
        } => mouth(diameter_mm, height_mm),
        Blemish::Fold { width_mm, .. } => width_mm,
        Blemish::Hole { diameter_mm, .. } => diameter_mm,
        _ => 0.0,
    }
}

fn tried(options: Options) -> Trial {
    let blemishes = options.blemishes.clone();
    let name = format!("{:?} {}", options.arch, options.seed);
    let phantom = made(options);
    let defects = surface_of(&phantom).defects;
    let truths = &phantom.truth.blemishes;
    let reach = |truth: &BlemishTruth, width: f64| {
        if truth.kind == BlemishKind::Fold {
            truth.size_mm / 2.0 + 0.5
        } else {
            width / 2.0
        }
    };
    let outcomes = truths
        .iter()
        .zip(&blemishes)
        .map(|(truth, blemish)| {
            let width_mm = width_of(blemish);
            let near = |d: &&Defect| {
                Some(d.kind) == kind_of(truth.kind)
                    && (d.centre - truth.centre).norm() <= reach(truth, width_mm)
            };
            let off = |d: &&Defect| (d.centre - truth.centre).norm();
            Outcome {
                truth: *truth,
                width_mm,
                found: defects
                    .iter()
                    .filter(near)
                    .min_by(|a, b| off(a).total_cmp(&off(b)))
                    .cloned(),
            }
        })
        .collect();
    let false_finds = defects
        .iter()
        .filter(|d| {
            !truths.iter().zip(&blemishes).any(|(truth, blemish)| {
                (d.centre - truth.centre).norm() <= reach(truth, width_of(blemish)) + 0.5
            })
        })
        .map(|d| (d.clone(), nearest_landmark(&phantom, &d.centre)))
        .collect();
    Trial {
        name,
        outcomes,
        false_finds,
    }
}

fn nearest_landmark(phantom: &Phantom, place: &Point3<f64>) -> String {
    phantom
        .truth
        .landmarks
        .iter()
        .map(|l| ((l.point - place).norm(), l.name))
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map_or_else(String::new, |(off, name)| {
            format!("{off:.1} mm from {name}")
        })
}

/// Prints and checks the figures of many trials: recall, false finds, depth.
fn judged(what: &str, trials: &[Trial], least_recall: f64) {
    let outcomes: Vec<&Outcome> = trials.iter().flat_map(|t| &t.outcomes).collect();
    for trial in trials {
        for (defect, place) in &trial.false_finds {
            println!(
                "  false: {} {:?} {:.2} mm across, depth {:?}, {:?} {:?}, {place}",
                trial.name,
                defect.kind,
                defect.across_mm,
                defect.depth_mm,
                defect.zone,
                defect.side
            );
        }
        for missed in trial.outcomes.iter().filter(|o| o.found.is_none()) {
            println!(
                "  missed: {} {:?} {:.2} mm wide",
                trial.name, missed.truth, missed.width_mm
            );
        }
    }
    let found: Vec<(&Outcome, &Defect)> = outcomes
        .iter()
        .filter_map(|o| Some((*o, o.found.as_ref()?)))
        .collect();
    let recall = found.len() as f64 / outcomes.len().max(1) as f64;
    let false_finds: usize = trials.iter().map(|t| t.false_finds.len()).sum();
    let errors: Vec<(f64, f64, f64)> = found
        .iter()
        .filter_map(|(o, d)| {
            let error = d.depth_mm? - o.truth.depth_mm;
            Some((error, o.truth.depth_mm, d.depth_uncertainty_mm?))
        })
        .collect();
    let within = errors
        .iter()
        .filter(|(error, depth, _)| error.abs() <= f64::max(0.1, 0.15 * depth))
        .count();
    let held = errors
        .iter()
        .filter(|(error, _, u)| error.abs() <= *u)
        .count();
    let worst = errors.iter().map(|e| e.0.abs()).fold(0.0, f64::max);
    let widths: Vec<(f64, f64)> = found
        .iter()
        .map(|(o, d)| (d.across_mm - o.width_mm, d.across_uncertainty_mm))
        .collect();
    let widths_held = widths.iter().filter(|(error, u)| error.abs() <= *u).count();
    let worst_width = widths.iter().map(|w| w.0.abs()).fold(0.0, f64::max);
    println!(
        "{what}: {} impressions, {} planted, {} found ({:.1} %, {:.0} needed); {false_finds} false \
         ({:.0} allowed); depth within 0.1 mm or 15 %: {within} of {}, worst {worst:.3} mm, stated \
         uncertainty holds {held}; width worst {worst_width:.2} mm, uncertainty holds {widths_held}",
        trials.len(),
        outcomes.len(),
        found.len(),
        100.0 * recall,
        100.0 * least_recall,
        trials.len() as f64 / 10.0,
        errors.len(),
    );
    assert!(outcomes.is_empty() || recall >= least_recall, "{what}");
    assert!(false_finds as f64 <= trials.len() as f64 / 10.0, "{what}");
    assert!(within as f64 >= 0.98 * errors.len() as f64, "{what}");
    assert!(held as f64 >= 0.9 * errors.len() as f64, "{what}");
}

/// Three voids and three nodules in each impression, every other one scanned
/// from the tissue side alone.
fn beads(seeds: std::ops::Range<u64>, edge_mm: f64, noise_sd_mm: f64) -> Vec<Trial> {
    let cases: Vec<(Arch, u64)> = ARCHES
        .into_iter()
        .flat_map(|arch| seeds.clone().map(move |seed| (arch, seed)))
        .collect();
    cases
        .into_par_iter()
        .map(|(arch, seed)| {
            // Six places; the nodules take the second half of them.
            let mut blemishes = Blemish::random_voids(arch, seed, 6);
            blemishes.truncate(3);
            blemishes.extend(Blemish::random_nodules(arch, seed, 6).into_iter().skip(3));
            tried(Options {
                arch,
                seed,
                edge_mm,
                noise_sd_mm,
                sides: if seed % 2 == 0 {
                    Sides::Both
                } else {
                    Sides::Tissue
                },
                handle: seed % 3 != 0,
                blemishes,
                ..Options::default()
            })
        })
        .collect()
}

#[test]
fn voids_and_nodules_are_found_and_none_is_invented() {
    judged(
        "voids and nodules, edge 0.25 mm, noise 0.02 mm",
        &beads(100..106, 0.25, 0.02),
        0.98,
    );
}

/// The bar of the issue: 50 seeds an arch.
#[test]
#[ignore = "takes many minutes: the same as above, over 50 seeds an arch"]
fn voids_and_nodules_of_fifty_seeds_an_arch() {
    let (edge, noise) = std::env::var("SURFACE")
        .ok()
        .and_then(|s| {
            let (e, n) = s.split_once(' ')?;
            Some((e.parse().ok()?, n.parse().ok()?))
        })
        .unwrap_or((0.25, 0.02));
    judged(
        &format!("voids and nodules, edge {edge} mm, noise {noise} mm"),
        &beads(0..50, edge, noise),
        0.98,
    );
}
