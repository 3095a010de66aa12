//! Registration of one surface on another that shows the same thing in part.
//!
//! Many starts are brought closer on few points, the better ones on more, and
//! the best is finished on many with a kernel as narrow as the noise allows.
//! The surfaces are taken as rigid.

mod coarse;
mod evenly;
mod fine;
mod icp;
mod part_of;
mod point_pairs;
mod registered;
pub mod rigid;
mod slide;
mod starts;
mod target;
mod uncertainty;

pub use coarse::brought_closer;
pub use fine::{finest, refined};
pub use part_of::candidates;
pub use registered::Registered;
pub use slide::slid_on;
pub use starts::{Scatter, anywhere, around};
pub use target::{Match, Target};

use crate::sampling::{SurfacePoint, centre_of};
use coarse::{FIRST_WIDTH, MANY_STARTS, MET, ROUNDS, SIFTING, approached, fit, met};
use evenly::evenly_apart;
use fine::{ENDS, FINISHING_POINTS, SAME_MM, apart_mm, finished, narrowed, thinned};
use nalgebra::{Isometry3, Vector3};
use rayon::prelude::*;
use thiserror::Error;

/// Why a surface could not be registered on another.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
pub enum NotRegistered {
    /// No start came close.
    #[error("no part of the surface fits")]
    NothingFits,
    /// Starts that fit equally well ended in different places.
    #[error("the surface fits in more than one way; the poses differ by {spread_mm:.2} mm")]
    Ambiguous {
        /// How far apart they ended, mm.
        spread_mm: f64,
    },
}

/// Registers a surface, given as evenly spread points, on a target. `look` is called
/// for every start that is tried; it may unwind, as when nobody waits for the pose any
/// more.
///
/// # Errors
/// When no start fits, or starts that fit equally well end in different places.
pub fn register(
    source: &[SurfacePoint],
    target: &Target,
    starts: &[Isometry3<f64>],
    look: &(dyn Fn() + Sync),
) -> Result<Registered, NotRegistered> {
    /// Coarse fits nearer than this, mm, end in one place when finished.
    const NOTABLE_MM: f64 = 0.1;
    const RIVAL_POINTS: usize = 3000;
    /// Fits this much worse than the best are no rivals.
    const RIVAL: f64 = 0.85;
    let size = target.size_mm() * FIRST_WIDTH;
    let mut poses = starts.to_vec();
    let mut scores = Vec::new();
    let sifting = (starts.len() >= MANY_STARTS).then_some(&SIFTING);
    for round in sifting.into_iter().chain(&ROUNDS) {
        let points = thinned(source, round.points);
        let mut scored: Vec<(f64, Isometry3<f64>)> = poses
            .par_iter()
            .filter_map(|start| {
                look();
                approached(&points, target, start, round, size)
            })
            .collect();
        scored.sort_by(|a, b| b.0.total_cmp(&a.0));
        scored.truncate(round.kept.max(scored.len() / round.one_in));
        let within_mm = MET * round.widths.1 * size;
        (scores, poses) = met(scored, &thinned(source, ENDS), within_mm)
            .into_iter()
            .unzip();
    }
    look();
    let best = *poses.first().ok_or(NotRegistered::NothingFits)?;
    let best = finished(&thinned(source, FINISHING_POINTS), target, best)
        .ok_or(NotRegistered::NothingFits)?;
    let best = shaken(source, target, best, look);
    let ends = thinned(source, ENDS);
    let apart = |pose: &Isometry3<f64>| apart_mm(&ends, pose, &best.target_from_source);
    // A rival that ends where the best did, once it is finished too, is none.
    let spread_mm = poses
        .iter()
        .zip(&scores)
        .skip(1)
        .filter(|&(pose, &score)| score > RIVAL * scores[0] && apart(pose) > NOTABLE_MM)
        .filter_map(|(pose, _)| {
            look();
            finished(&thinned(source, RIVAL_POINTS), target, *pose)
        })
        .filter(|rival| rival.closeness() > RIVAL * best.closeness())
        .map(|rival| apart(&rival.target_from_source))
        .fold(0.0, f64::max);
    if spread_mm > SAME_MM {
        return Err(NotRegistered::Ambiguous { spread_mm });
    }
    Ok(Registered { spread_mm, ..best })
}

/// Registers a surface in any pose on a target that shows the same thing: from
/// the poses that most pairs of points agree on and, where little fits from
/// there, from every orientation about the centres of both as well.
///
/// # Errors
/// As [`register`].
pub fn register_anywhere(
    source: &[SurfacePoint],
    target: &Target,
    look: &(dyn Fn() + Sync),
) -> Result<Registered, NotRegistered> {
    /// Where so much of the source fits, nothing else can fit better.
    const ENOUGH: f64 = 0.5;
    const VOTED: usize = 16;
    const ORIENTATIONS: usize = 400;
    let spaced = evenly_apart(source, target.spacing_mm());
    look();
    let mut starts = point_pairs::voted(&spaced, target.pairs());
    starts.truncate(VOTED);
    match register(source, target, &starts, look) {
        Ok(found) if found.fitting_share >= ENOUGH => Ok(found),
        _ => {
            starts.extend(anywhere(&centre_of(source), &target.centre(), ORIENTATIONS));
            register(source, target, &starts, look)
        }
    }
}

/// A fit that looks caught beside the true one (too rough, or on too little of
/// the surface) is tried again from poses around it under a narrow kernel, for
/// as long as that finds a better one.
fn shaken(
    source: &[SurfacePoint],
    target: &Target,
    found: Registered,
    look: &(dyn Fn() + Sync),
) -> Registered {
    const ROUNDS: usize = 3;
    let scatters = [(0.03, 1.5), (0.06, 3.0)].map(|(turn, step_mm)| Scatter { turn, step_mm });
    const WIDTH_MM: f64 = 0.6;
    const CLOSE_MM: f64 = 0.1;
    /// Starts that go on to more points.
    const BETTER: usize = 6;
    let (few, points) = (thinned(source, 250), thinned(source, 1000));
    let tried = |points: &[SurfacePoint], start, steps| {
        look();
        let (pose, _) = narrowed(points, target, start, WIDTH_MM, steps)?;
        Some((fit(points, target, &pose, CLOSE_MM), pose))
    };
    let axes = [&Vector3::z(), &Vector3::y()];
    let mut best = found;
    for _ in 0..ROUNDS {
        if best.is_close() {
            break;
        }
        let pose = best.target_from_source;
        let about = pose * centre_of(source);
        let mut first: Vec<(f64, Isometry3<f64>)> = scatters
            .into_par_iter()
            .flat_map_iter(|scatter| around(&pose, &about, axes, scatter))
            .filter_map(|start| tried(&few, start, 8))
            .collect();
        first.sort_by(|a, b| b.0.total_cmp(&a.0));
        first.truncate(BETTER);
        let better = first
            .into_par_iter()
            .filter_map(|(_, start)| tried(&points, start, 8))
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .and_then(|(_, pose)| finished(&thinned(source, FINISHING_POINTS), target, pose));
        match better {
            Some(better) if better.closeness() > 1.02 * best.closeness() => best = better,
            _ => break,
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sampling::spread_over;
    use mesh::Mesh;
    use nalgebra::Point3;

    /// A wavy sheet of 60 by 40 mm in triangles of 1 mm.
    fn waves() -> Mesh {
        let at = |i: u32, j: u32| {
            let (x, y) = (f64::from(i), f64::from(j));
            Point3::new(x, y, 3.0 * (x / 5.0).sin() + 2.0 * (y / 7.0).cos())
        };
        let vertices = (0..=60).flat_map(|i| (0..=40).map(move |j| at(i, j)));
        let squares = (0..60).flat_map(|i| (0..40).map(move |j| 41 * i + j));
        let triangles = squares.flat_map(|a| [[a, a + 41, a + 42], [a, a + 42, a + 1]]);
        Mesh::new(vertices.collect(), triangles.collect(), None).expect("indices are in range")
    }

    #[test]
    fn a_pose_known_to_tenths_is_refined() {
        let (sheet, off) = (
            waves(),
            Isometry3::new(
                Vector3::new(0.1, -0.1, 0.05),
                Vector3::new(0.002, -0.001, 0.002),
            ),
        );
        let source = spread_over(&sheet, 4000, |_| true);
        let target = Target::new(&sheet);
        let found = refined(&source, &target, &off).expect("it fits");
        let still = Isometry3::identity();
        assert!(apart_mm(&source, &off, &still) > 0.1);
        assert!(apart_mm(&source, &found.target_from_source, &still) < 1e-3);
        let beside = Isometry3::translation(0.0, 0.0, 20.0);
        assert!(refined(&source, &target, &beside).is_none());
    }

    #[test]
    fn of_poses_that_met_the_best_goes_on() {
        let ends = spread_over(&waves(), 100, |_| true);
        let up = |mm| Isometry3::translation(0.0, 0.0, mm);
        let scored = vec![
            (0.9, up(0.0)),
            (0.8, up(3.0)),
            (0.7, up(0.05)),
            (0.6, up(3.05)),
        ];
        let kept = met(scored, &ends, 0.1);
        let scores: Vec<f64> = kept.iter().map(|one| one.0).collect();
        assert_eq!(scores, [0.9, 0.8]);
    }
}
