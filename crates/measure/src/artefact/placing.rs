//! Which sphere of a scan is which of the artefact.

use super::candidates::Candidate;
use super::figures::{NominalSphere, SCALE_PLAY};
use geometry::registration::rigid::{Pair, fit};
use nalgebra::{Isometry3, Point3};

/// Distances may be off by this much besides, mm.
const PLAY_MM: f64 = 0.3;

/// The nominal spheres laid on some of those in the scan.
#[derive(Debug, Clone, PartialEq)]
pub struct Placing {
    /// For each nominal sphere, the number of the one in the scan.
    pub chosen: Vec<usize>,
    /// The motion that lays them there.
    pub motion: Isometry3<f64>,
    /// Root mean square distance between their centres, mm.
    pub rms_mm: f64,
    /// Whether another choice fits about as well.
    pub is_ambiguous: bool,
}

/// The choice that fits best, if one does.
pub fn best(nominal: &[NominalSphere], seen: &[Candidate]) -> Option<Placing> {
    let mut choices: Vec<Vec<usize>> = (starts(nominal, seen).iter())
        .filter_map(|start| completed(nominal, seen, start))
        .collect();
    choices.sort();
    choices.dedup();
    let mut placings: Vec<Placing> = (choices.into_iter())
        .filter_map(|chosen| {
            let (motion, rms_mm) = laid(nominal, seen, &chosen)?;
            Some(Placing {
                chosen,
                motion,
                rms_mm,
                is_ambiguous: false,
            })
        })
        .collect();
    // Of two that fit alike, the first in order.
    placings.sort_by(|a, b| a.rms_mm.total_cmp(&b.rms_mm));
    let second_mm = placings.get(1).map(|other| other.rms_mm);
    let best = placings.into_iter().next()?;
    Some(Placing {
        is_ambiguous: second_mm.is_some_and(|mm| mm <= best.rms_mm + PLAY_MM),
        ..best
    })
}

fn near(value: f64, nominal: f64) -> bool {
    (value - nominal).abs() <= PLAY_MM + SCALE_PLAY * nominal
}

/// Up to three nominal spheres, far apart and not in line, each with a sphere
/// of the scan, so that sizes and distances agree.
fn starts(nominal: &[NominalSphere], seen: &[Candidate]) -> Vec<Vec<(usize, usize)>> {
    let mut partial: Vec<Vec<(usize, usize)>> = vec![Vec::new()];
    for &next in &base(nominal) {
        let fits = |so_far: &[(usize, usize)], number: usize| {
            let (wanted, own) = (&nominal[next], &seen[number].sphere);
            near(2.0 * own.radius, 2.0 * wanted.radius_mm)
                && so_far.iter().all(|&(other, place)| {
                    let apart = (nominal[other].centre - wanted.centre).norm();
                    place != number && near((seen[place].sphere.centre - own.centre).norm(), apart)
                })
        };
        partial = partial
            .iter()
            .flat_map(|so_far| {
                (0..seen.len())
                    .filter(|&number| fits(so_far, number))
                    .map(|number| {
                        let mut longer = so_far.clone();
                        longer.push((next, number));
                        longer
                    })
            })
            .collect();
    }
    partial
}

/// The two nominal spheres farthest apart, and the one farthest from their line.
fn base(nominal: &[NominalSphere]) -> Vec<usize> {
    let apart = |a: usize, b: usize| (nominal[a].centre - nominal[b].centre).norm();
    let pairs = (0..nominal.len()).flat_map(|a| (0..a).map(move |b| (b, a)));
    let Some((a, b)) = pairs.max_by(|x, y| apart(x.0, x.1).total_cmp(&apart(y.0, y.1))) else {
        return (0..nominal.len()).collect();
    };
    let area = |c: usize| {
        let from = nominal[a].centre;
        (nominal[b].centre - from)
            .cross(&(nominal[c].centre - from))
            .norm()
    };
    let third = (0..nominal.len())
        .filter(|&c| c != a && c != b)
        .max_by(|&x, &y| area(x).total_cmp(&area(y)));
    [a, b].into_iter().chain(third).collect()
}

fn pair(nominal: &NominalSphere, seen: &Candidate) -> Pair {
    Pair {
        from: nominal.centre,
        to: seen.sphere.centre,
        weight: 1.0,
    }
}

/// A start with the other spheres where its motion puts them; `None` where one
/// is not there.
fn completed(
    nominal: &[NominalSphere],
    seen: &[Candidate],
    start: &[(usize, usize)],
) -> Option<Vec<usize>> {
    let pairs: Vec<Pair> = start
        .iter()
        .map(|&(n, s)| pair(&nominal[n], &seen[s]))
        .collect();
    let motion = fit(&pairs)?;
    let middle = Point3::from(
        pairs
            .iter()
            .map(|p| p.from.coords)
            .sum::<nalgebra::Vector3<f64>>()
            / pairs.len() as f64,
    );
    let mut chosen = Vec::with_capacity(nominal.len());
    for (n, sphere) in nominal.iter().enumerate() {
        let place = match start.iter().find(|(known, _)| *known == n) {
            Some(&(_, s)) => s,
            None => nearest(sphere, seen, &motion, &middle)?,
        };
        if chosen.contains(&place) {
            return None;
        }
        chosen.push(place);
    }
    Some(chosen)
}

/// The sphere of the scan where a nominal one should lie.
fn nearest(
    sphere: &NominalSphere,
    seen: &[Candidate],
    motion: &Isometry3<f64>,
    middle: &Point3<f64>,
) -> Option<usize> {
    let place = motion * sphere.centre;
    let reach = PLAY_MM + SCALE_PLAY * (sphere.centre - middle).norm().max(sphere.radius_mm);
    (0..seen.len())
        .filter(|&s| near(2.0 * seen[s].sphere.radius, 2.0 * sphere.radius_mm))
        .map(|s| ((seen[s].sphere.centre - place).norm(), s))
        .filter(|(off, _)| *off <= reach)
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, s)| s)
}

/// The motion that lays the nominal centres on the chosen ones, and their root
/// mean square distance then, mm.
fn laid(
    nominal: &[NominalSphere],
    seen: &[Candidate],
    chosen: &[usize],
) -> Option<(Isometry3<f64>, f64)> {
    let pairs: Vec<Pair> = (nominal.iter().zip(chosen))
        .map(|(n, &s)| pair(n, &seen[s]))
        .collect();
    let motion = fit(&pairs)?;
    let squares = pairs
        .iter()
        .map(|p| (motion * p.from - p.to).norm_squared());
    Some((motion, (squares.sum::<f64>() / pairs.len() as f64).sqrt()))
}
