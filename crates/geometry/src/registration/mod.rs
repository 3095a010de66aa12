//! Registration of one surface on another that shows the same thing in part.
//!
//! Many starts are brought closer on few points, the better ones on more, and
//! the best is finished on many with a kernel as narrow as the noise allows.
//! The surfaces are taken as rigid.

mod evenly;
mod icp;
mod point_pairs;
pub mod rigid;
mod starts;
mod target;
mod uncertainty;

pub use starts::{Scatter, anywhere, around};
pub use target::{Match, Target};

use crate::order::robust_sd;
use crate::sampling::{SurfacePoint, centre_of};
use evenly::evenly_apart;
use nalgebra::{Isometry3, Point3, Vector3};
use rayon::prelude::*;
use thiserror::Error;
use uncertainty::PoseCovariance;

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

/// A pose found, with how sure it is.
#[derive(Debug, Clone)]
pub struct Registered {
    /// `target_from_source * source_point` lies in target coordinates.
    pub target_from_source: Isometry3<f64>,
    /// Root mean square distance of the source points that fit, mm.
    pub rms_mm: f64,
    /// Share of source points that fit.
    pub fitting_share: f64,
    /// Share of source points that lie behind the target: within 2 mm of it,
    /// deeper than those that fit. Next to nothing where the target is what
    /// the source partly shows, for nothing can be scanned through it.
    pub behind_share: f64,
    /// Covariance of the pose.
    covariance: PoseCovariance,
    /// How far apart starts ended that fit as well, mm.
    pub spread_mm: f64,
}

impl Registered {
    /// How much fits and how closely: share of the points over the root mean
    /// square of their distances, with a floor below which closer is no better.
    #[must_use]
    pub fn closeness(&self) -> f64 {
        const CLOSE_MM: f64 = 0.02;
        self.fitting_share / self.rms_mm.max(CLOSE_MM)
    }

    /// Whether it lies as parts of one thing do: smoothly, and on much of it.
    /// Otherwise it may be caught beside the true pose.
    fn is_close(&self) -> bool {
        const ROUGH_MM: f64 = 0.06;
        const LITTLE: f64 = 0.35;
        self.rms_mm <= ROUGH_MM && self.fitting_share >= LITTLE
    }

    /// Expanded uncertainty (k = 2) of where the pose puts points of the target
    /// (target coordinates), mm: 95th percentile over the points.
    #[must_use]
    pub fn uncertainty_mm(&self, points: &[Point3<f64>]) -> f64 {
        let spread = self.spread_mm / 2.0;
        2.0 * self.covariance.displacement_sd(points, 0.95).hypot(spread)
    }
}

/// One round of narrowing down: so many points, so many steps, kernel widths
/// from first to last (in parts of the largest), and how many go on.
struct Round {
    points: usize,
    steps: usize,
    by_planes_from: usize,
    widths: (f64, f64),
    kept: usize,
    one_in: usize,
}

/// Kernel width at the start, as a part of the target's size: what a start may
/// be off.
const FIRST_WIDTH: f64 = 1.0 / 16.0;

/// Before the first round, where there are starts in every orientation: most of
/// them are far off, which few points tell.
const SIFTING: Round = Round {
    points: 100,
    steps: 4,
    by_planes_from: 4,
    widths: (1.0, 0.5),
    kept: 50,
    one_in: 8,
};
/// So many starts are sifted first.
const MANY_STARTS: usize = 100;

const ROUNDS: [Round; 3] = [
    Round {
        points: 250,
        steps: 10,
        by_planes_from: 5,
        widths: (1.0, 0.25),
        kept: 8,
        one_in: 10,
    },
    Round {
        points: 1000,
        steps: 12,
        by_planes_from: 0,
        widths: (0.25, 0.06),
        kept: 3,
        one_in: 8,
    },
    Round {
        points: 2000,
        steps: 8,
        by_planes_from: 0,
        widths: (0.06, 0.03),
        kept: 3,
        one_in: 8,
    },
];

/// Points of the last, finest fit.
const FINISHING_POINTS: usize = 12_000;

/// Registers a surface, given as evenly spread points, on a target.
///
/// # Errors
/// When no start fits, or starts that fit equally well end in different places.
pub fn register(
    source: &[SurfacePoint],
    target: &Target,
    starts: &[Isometry3<f64>],
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
            .filter_map(|start| approached(&points, target, start, round, size))
            .collect();
        scored.sort_by(|a, b| b.0.total_cmp(&a.0));
        scored.truncate(round.kept.max(scored.len() / round.one_in));
        let within_mm = MET * round.widths.1 * size;
        (scores, poses) = met(scored, &thinned(source, ENDS), within_mm)
            .into_iter()
            .unzip();
    }
    let best = *poses.first().ok_or(NotRegistered::NothingFits)?;
    let best = finished(&thinned(source, FINISHING_POINTS), target, best)
        .ok_or(NotRegistered::NothingFits)?;
    let best = shaken(source, target, best);
    let ends = thinned(source, ENDS);
    let apart = |pose: &Isometry3<f64>| apart_mm(&ends, pose, &best.target_from_source);
    // A rival that ends where the best did, once it is finished too, is none.
    let spread_mm = poses
        .iter()
        .zip(&scores)
        .skip(1)
        .filter(|&(pose, &score)| score > RIVAL * scores[0] && apart(pose) > NOTABLE_MM)
        .filter_map(|(pose, _)| finished(&thinned(source, RIVAL_POINTS), target, *pose))
        .filter(|rival| rival.closeness() > RIVAL * best.closeness())
        .map(|rival| apart(&rival.target_from_source))
        .fold(0.0, f64::max);
    if spread_mm > SAME_MM {
        return Err(NotRegistered::Ambiguous { spread_mm });
    }
    Ok(Registered { spread_mm, ..best })
}

/// Poses farther apart than this, mm, are different placings.
const SAME_MM: f64 = 0.5;
/// Points by which poses are compared.
const ENDS: usize = 200;
/// Poses that are nearer to each other than this part of a round's last kernel
/// have met: they end in one place.
const MET: f64 = 0.1;

/// Of poses that have met, the one with the best score; the best come first.
fn met(
    scored: Vec<(f64, Isometry3<f64>)>,
    ends: &[SurfacePoint],
    within_mm: f64,
) -> Vec<(f64, Isometry3<f64>)> {
    let mut kept: Vec<(f64, Isometry3<f64>)> = Vec::new();
    for one in scored {
        let is_near = |other: &(f64, Isometry3<f64>)| apart_mm(ends, &one.1, &other.1) < within_mm;
        if !kept.iter().any(is_near) {
            kept.push(one);
        }
    }
    kept
}

/// Root mean square distance between where two poses put points, mm.
fn apart_mm(points: &[SurfacePoint], one: &Isometry3<f64>, other: &Isometry3<f64>) -> f64 {
    let squares = points
        .iter()
        .map(|s| (one * s.point - other * s.point).norm_squared());
    (squares.sum::<f64>() / points.len().max(1) as f64).sqrt()
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
) -> Result<Registered, NotRegistered> {
    /// Where so much of the source fits, nothing else can fit better.
    const ENOUGH: f64 = 0.5;
    const VOTED: usize = 16;
    const ORIENTATIONS: usize = 400;
    let spaced = evenly_apart(source, target.spacing_mm());
    let mut starts = point_pairs::voted(&spaced, target.pairs());
    starts.truncate(VOTED);
    match register(source, target, &starts) {
        Ok(found) if found.fitting_share >= ENOUGH => Ok(found),
        _ => {
            starts.extend(anywhere(&centre_of(source), &target.centre(), ORIENTATIONS));
            register(source, target, &starts)
        }
    }
}

/// Poses in which a surface that is a small part of what the target shows may lie on it, the
/// closest first: those that most pairs of points agree on, and that fit closely with next
/// to nothing behind the target. Several may, where the target is even or symmetrical.
#[must_use]
pub fn candidates(source: &[SurfacePoint], target: &Target) -> Vec<Registered> {
    const VOTED: usize = 120;
    /// How many go on after each round.
    const KEPT: [usize; 3] = [40, 16, 8];
    const CLOSE_MM: f64 = 0.06;
    const MOST_BEHIND: f64 = 0.1;
    let size = size_of(source).min(target.size_mm()) * FIRST_WIDTH;
    let spaced = evenly_apart(source, target.spacing_mm());
    let mut poses = point_pairs::voted(&spaced, target.pairs());
    let ends = thinned(source, ENDS);
    poses.truncate(VOTED);
    for (round, kept) in ROUNDS.iter().zip(KEPT) {
        let points = thinned(source, round.points);
        let mut scored: Vec<(f64, Isometry3<f64>)> = (poses.par_iter())
            .filter_map(|start| approached(&points, target, start, round, size))
            .collect();
        scored.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut apart = met(scored, &ends, MET * round.widths.1 * size);
        apart.truncate(kept);
        poses = apart.into_iter().map(|(_, pose)| pose).collect();
    }
    let points = thinned(source, FINISHING_POINTS);
    let mut found: Vec<Registered> = (poses.into_par_iter())
        .filter_map(|pose| finished(&points, target, pose))
        .filter(|found| {
            found.rms_mm <= CLOSE_MM && found.behind_share <= MOST_BEHIND * found.fitting_share
        })
        .collect();
    found.sort_by(|a, b| b.closeness().total_cmp(&a.closeness()));
    if let Some(best) = found.first_mut() {
        *best = settled(&points, target, best);
    }
    let mut distinct: Vec<Registered> = Vec::new();
    for one in found {
        let is_known = |other: &Registered| {
            apart_mm(&ends, &one.target_from_source, &other.target_from_source) < SAME_MM
        };
        if !distinct.iter().any(is_known) {
            distinct.push(one);
        }
    }
    distinct
}

/// The pose nearby that leaves least behind the target, where a surface that could slide
/// along the target has more than one that fits; its spread is how far those lie apart that
/// are as good.
fn settled(points: &[SurfacePoint], target: &Target, found: &Registered) -> Registered {
    const SCATTERS: [Scatter; 2] = [
        Scatter {
            turn: 0.01,
            step_mm: 0.3,
        },
        Scatter {
            turn: 0.03,
            step_mm: 0.8,
        },
    ];
    const POINTS: usize = 4000;
    /// Shares of the points by which poses as good as each other differ, by chance.
    const AS_GOOD: f64 = 0.01;
    let score = |pose: &Registered| pose.fitting_share - 5.0 * pose.behind_share;
    let (pose, few) = (found.target_from_source, thinned(points, POINTS));
    let about = pose * centre_of(points);
    let axes = [&Vector3::z(), &Vector3::y()];
    let nearby: Vec<Registered> = SCATTERS
        .into_par_iter()
        .flat_map_iter(|scatter| around(&pose, &about, axes, scatter))
        .filter_map(|start| finished(&few, target, start))
        .collect();
    let best = nearby.iter().max_by(|a, b| score(a).total_cmp(&score(b)));
    let Some(best) = best else {
        return found.clone();
    };
    let ends = thinned(points, ENDS);
    let as_good = nearby
        .iter()
        .filter(|other| score(other) > score(best) - AS_GOOD);
    let spread_mm = as_good
        .map(|other| apart_mm(&ends, &other.target_from_source, &best.target_from_source))
        .fold(0.0, f64::max);
    let settled = finished(points, target, best.target_from_source);
    Registered {
        spread_mm,
        ..settled.unwrap_or_else(|| found.clone())
    }
}

/// Diagonal of the box around points, mm.
fn size_of(points: &[SurfacePoint]) -> f64 {
    let ends = points.iter().fold(None, |ends, s| match ends {
        None => Some((s.point, s.point)),
        Some((low, high)) => Some((s.point.inf(&low), s.point.sup(&high))),
    });
    ends.map_or(0.0, |(low, high)| (high - low).norm())
}

/// The finest fit from a pose that is known to some tenths of a millimetre.
/// `None` where the surface does not fit closely from there.
#[must_use]
pub fn refined(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
) -> Option<Registered> {
    finest(source, target, pose).filter(Registered::is_close)
}

/// As [`refined`], however close the fit is. `None` where nothing fits.
#[must_use]
pub fn finest(
    source: &[SurfacePoint],
    target: &Target,
    pose: &Isometry3<f64>,
) -> Option<Registered> {
    finished(&thinned(source, FINISHING_POINTS), target, *pose)
}

/// A pose brought closer on few points, from as far off as a start of
/// [`register`] may be. `None` where nothing fits.
#[must_use]
pub fn brought_closer(
    source: &[SurfacePoint],
    target: &Target,
    start: &Isometry3<f64>,
) -> Option<Isometry3<f64>> {
    let size = target.size_mm() * FIRST_WIDTH;
    ROUNDS[..2].iter().try_fold(*start, |pose, round| {
        let points = thinned(source, round.points);
        Some(approached(&points, target, &pose, round, size)?.1)
    })
}

/// A start brought closer, with its score: the mean weight under the round's
/// last kernel.
fn approached(
    points: &[SurfacePoint],
    target: &Target,
    start: &Isometry3<f64>,
    round: &Round,
    size: f64,
) -> Option<(f64, Isometry3<f64>)> {
    let (first, last) = (round.widths.0 * size, round.widths.1 * size);
    let mut pose = *start;
    for step in 0..round.steps {
        let part = step as f64 / (round.steps - 1) as f64;
        let width = first * (last / first).powf(part);
        let take = if step < round.by_planes_from {
            icp::step_by_points
        } else {
            icp::step_by_planes
        };
        pose = take(points, target, &pose, width)?;
    }
    Some((fit(points, target, &pose, last), pose))
}

/// Mean weight of the points under a kernel.
fn fit(points: &[SurfacePoint], target: &Target, pose: &Isometry3<f64>, width: f64) -> f64 {
    let matches = icp::matches_within(points, target, pose, width);
    let sum: f64 = matches
        .iter()
        .map(|m| icp::weight(m.distance(), width))
        .sum();
    sum / points.len().max(1) as f64
}

/// The finest fit: the kernel shrinks to what the residuals themselves spread,
/// on few points until the pose stands still, then on all.
fn finished(points: &[SurfacePoint], target: &Target, start: Isometry3<f64>) -> Option<Registered> {
    const BEHIND_MM: f64 = 2.0;
    const PLAY_MM: f64 = 0.05;
    let few = thinned(points, 2000);
    let (pose, width) = narrowed(&few, target, start, 0.3, 12)?;
    let (pose, width) = narrowed(points, target, pose, width, 2)?;
    let near: Vec<_> = target
        .matches(points, &pose, BEHIND_MM)
        .into_iter()
        .flatten()
        .collect();
    let off: Vec<f64> = near.iter().map(Match::off_plane).collect();
    let fitting: Vec<f64> = off.iter().copied().filter(|r| r.abs() <= width).collect();
    let behind = off.iter().filter(|&&r| r < -(width + PLAY_MM)).count();
    let squares: f64 = fitting.iter().map(|r| r * r).sum();
    let matches: Vec<_> = near
        .into_iter()
        .filter(|m| m.distance() <= 3.0 * width)
        .collect();
    Some(Registered {
        target_from_source: pose,
        rms_mm: (squares / fitting.len().max(1) as f64).sqrt(),
        fitting_share: fitting.len() as f64 / points.len() as f64,
        behind_share: behind as f64 / points.len() as f64,
        covariance: PoseCovariance::of(&matches, width)?,
        spread_mm: 0.0,
    })
}

/// A fit that looks caught beside the true one (too rough, or on too little of
/// the surface) is tried again from poses around it under a narrow kernel, for
/// as long as that finds a better one.
fn shaken(source: &[SurfacePoint], target: &Target, found: Registered) -> Registered {
    const ROUNDS: usize = 3;
    let scatters = [(0.03, 1.5), (0.06, 3.0)].map(|(turn, step_mm)| Scatter { turn, step_mm });
    const WIDTH_MM: f64 = 0.6;
    const CLOSE_MM: f64 = 0.1;
    /// Starts that go on to more points.
    const BETTER: usize = 6;
    let (few, points) = (thinned(source, 250), thinned(source, 1000));
    let tried = |points: &[SurfacePoint], start, steps| {
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

/// Steps under a kernel that narrows from a width, at most so many; gives the
/// pose and the last width.
fn narrowed(
    points: &[SurfacePoint],
    target: &Target,
    start: Isometry3<f64>,
    first_width: f64,
    steps: usize,
) -> Option<(Isometry3<f64>, f64)> {
    const NARROWEST_MM: f64 = 0.03;
    const STILL_MM: f64 = 1e-4;
    let (mut pose, mut width) = (start, first_width);
    for _ in 0..steps {
        let matches = icp::matches_within(points, target, &pose, width);
        let motion = icp::motion_by_planes(&matches, width)?;
        let moved = matches
            .iter()
            .step_by(97)
            .map(|m| (motion * m.moved - m.moved).norm());
        let still = moved.fold(0.0, f64::max) < STILL_MM;
        pose = motion * pose;
        let close = matches
            .iter()
            .map(Match::off_plane)
            .filter(|r| r.abs() <= width);
        let own = (3.0 * robust_sd(close).unwrap_or(0.0)).clamp(NARROWEST_MM, first_width);
        if still && own > 0.95 * width {
            break;
        }
        width = own.min(width).max(0.6 * width);
    }
    Some((pose, width))
}

/// Every so many-th point, about `count` of them.
fn thinned(points: &[SurfacePoint], count: usize) -> Vec<SurfacePoint> {
    points
        .iter()
        .step_by((points.len() / count.max(1)).max(1))
        .copied()
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sampling::spread_over;
    use mesh::Mesh;

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
