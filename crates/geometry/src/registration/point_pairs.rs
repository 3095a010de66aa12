//! Poses to start from, by pairs of points (surface matching after Drost,
//! Ulrich, Navab and Ilic 2010, "Model globally, match locally").
//!
//! How far apart two points of a surface are, and how their normals lean, does
//! not change when the surface is moved. So a pair of source points, looked up
//! among all pairs of the target, tells where its first point may lie on the
//! target, and how far the source is turned about the normal there. Each pair
//! votes; where the votes of many pairs agree, there is a pose.

use crate::sampling::{SurfacePoint, centre_of};
use nalgebra::{Isometry3, Translation3, UnitQuaternion, Vector3};
use rayon::prelude::*;
use std::f64::consts::{PI, TAU};

/// Steps of the angle between two directions: 12 degrees each, as in the paper.
const ANGLE_STEPS: usize = 15;
/// Steps of a turn about a normal: 12 degrees each.
const TURN_STEPS: usize = 30;
/// Pairs farther apart than this many spacings do not vote.
const DISTANCE_STEPS: usize = 128;
/// Points of a surface at most: the target's pairs are their square.
const MOST_POINTS: usize = 1500;
/// Source points whose pairs vote.
const REFERENCES: usize = 40;
/// Poses that one of them puts up.
const POSES_EACH: usize = 8;
/// Poses turned less than this against each other (rad) may be one.
const SAME_TURN: f64 = 20.0 * PI / 180.0;
/// Poses that move the source's middle less than this many spacings apart may
/// be one.
const SAME_PLACE: f64 = 3.0;

/// Poses that lay the source on the target, the most voted first, no two of
/// them alike. The source is given as points as far from each other as the
/// target's, with smooth normals.
pub(super) fn voted(source: &[SurfacePoint], pairs: &TargetPairs) -> Vec<Isometry3<f64>> {
    let source = at_most(MOST_POINTS, source);
    let poses = at_most(REFERENCES, &source)
        .par_iter()
        .flat_map_iter(|reference| pairs.vote(reference, &source))
        .collect();
    joined(poses, &source, pairs.spacing)
}

/// Every so many-th point, so that there are no more than `count`.
fn at_most(count: usize, points: &[SurfacePoint]) -> Vec<SurfacePoint> {
    let step = points.len().div_ceil(count).max(1);
    points.iter().step_by(step).copied().collect()
}

/// A pose with its votes.
struct Voted {
    votes: f64,
    pose: Isometry3<f64>,
}

/// All pairs of the target's points, in the order of their keys.
#[derive(Clone)]
pub(super) struct TargetPairs {
    spacing: f64,
    upright: Vec<Isometry3<f64>>,
    /// Where the pairs of each key begin, and the end of all.
    begins: Vec<u32>,
    pairs: Vec<TargetPair>,
}

/// A pair: its first point, and the turn (in steps) at which the second is seen
/// from it.
#[derive(Clone, Copy, Default)]
struct TargetPair {
    first: u32,
    turn: f32,
}

impl TargetPairs {
    /// The pairs of points about `spacing` (mm) from each other with smooth
    /// normals.
    pub(super) fn of(points: &[SurfacePoint], spacing: f64) -> Self {
        let points = at_most(MOST_POINTS, points);
        let upright: Vec<Isometry3<f64>> = points.par_iter().map(upright).collect();
        let keyed: Vec<(u32, TargetPair)> = points
            .par_iter()
            .zip(&upright)
            .enumerate()
            .flat_map_iter(|(number, (first, upright))| {
                points.iter().filter_map(move |second| {
                    let pair = TargetPair {
                        first: number as u32,
                        turn: turn_seen(upright, second),
                    };
                    Some((key(first, second, spacing)? as u32, pair))
                })
            })
            .collect();
        let (begins, pairs) = sorted_by_key(&keyed);
        Self {
            spacing,
            upright,
            begins,
            pairs,
        }
    }

    /// The pairs of one key.
    fn alike(&self, key: usize) -> &[TargetPair] {
        &self.pairs[self.begins[key] as usize..self.begins[key + 1] as usize]
    }

    /// The poses that the pairs of one source point with all others agree on.
    fn vote(&self, reference: &SurfacePoint, source: &[SurfacePoint]) -> Vec<Voted> {
        let own = upright(reference);
        let mut votes = vec![0.0; self.upright.len() * TURN_STEPS];
        for second in source {
            let Some(key) = key(reference, second, self.spacing) else {
                continue;
            };
            let alike = self.alike(key);
            let turn = turn_seen(&own, second);
            // Pairs as there are many, such as those of level places, tell
            // little.
            let vote = 1.0 / (alike.len() as f32).sqrt();
            for pair in alike {
                let between = pair.turn - turn;
                let onward = between
                    + if between < 0.0 {
                        TURN_STEPS as f32
                    } else {
                        0.0
                    };
                let step = (onward as usize).min(TURN_STEPS - 1);
                votes[pair.first as usize * TURN_STEPS + step] += vote;
            }
        }
        most_voted(&votes)
            .into_iter()
            .map(|peak| {
                let turn = UnitQuaternion::from_axis_angle(&Vector3::x_axis(), peak.turn);
                Voted {
                    votes: f64::from(peak.votes),
                    pose: self.upright[peak.first].inverse() * turn * own,
                }
            })
            .collect()
    }
}

/// What moving a pair does not change, in steps and as one number: the
/// distance, the angles of both normals with it, and the angle between them.
/// `None` for a point with itself and for points too far apart.
fn key(first: &SurfacePoint, second: &SurfacePoint, spacing: f64) -> Option<usize> {
    let between = second.point - first.point;
    let distance = between.norm();
    let step = (distance / spacing) as usize;
    if distance <= 0.0 || step >= DISTANCE_STEPS {
        return None;
    }
    let along = between / distance;
    let cosines = [
        first.normal.dot(&along),
        second.normal.dot(&along),
        first.normal.dot(&second.normal),
    ];
    Some(cosines.iter().fold(step, |key, cosine| {
        let part = cosine.clamp(-1.0, 1.0).acos() / PI;
        let angle = (part * ANGLE_STEPS as f64) as usize;
        key * ANGLE_STEPS + angle.min(ANGLE_STEPS - 1)
    }))
}

/// Pairs in the order of their keys, with where each key's begin (counting
/// sort).
fn sorted_by_key(keyed: &[(u32, TargetPair)]) -> (Vec<u32>, Vec<TargetPair>) {
    let mut begins = vec![0; DISTANCE_STEPS * ANGLE_STEPS.pow(3) + 1];
    for (key, _) in keyed {
        begins[*key as usize + 1] += 1;
    }
    for key in 1..begins.len() {
        begins[key] += begins[key - 1];
    }
    let mut next = begins.clone();
    let mut pairs = vec![TargetPair::default(); keyed.len()];
    for (key, pair) in keyed {
        let place = &mut next[*key as usize];
        pairs[*place as usize] = *pair;
        *place += 1;
    }
    (begins, pairs)
}

/// A target point and a turn about its normal, with the votes for both.
struct Peak {
    votes: f32,
    first: usize,
    turn: f64,
}

fn most_voted(votes: &[f32]) -> Vec<Peak> {
    let mut peaks: Vec<Peak> = votes
        .chunks(TURN_STEPS)
        .enumerate()
        .flat_map(|(first, turns)| {
            // The votes for one turn fall on two steps: taken together, and the
            // turn between their middles where their weight lies.
            (0..TURN_STEPS).map(move |k| {
                let (one, next) = (turns[k], turns[(k + 1) % TURN_STEPS]);
                let share = f64::from(next / (one + next).max(f32::MIN_POSITIVE));
                Peak {
                    votes: one + next,
                    first,
                    turn: (k as f64 + 0.5 + share) / TURN_STEPS as f64 * TAU,
                }
            })
        })
        .collect();
    if peaks.len() > POSES_EACH {
        peaks.select_nth_unstable_by(POSES_EACH, |a, b| {
            b.votes
                .total_cmp(&a.votes)
                .then(a.first.cmp(&b.first))
                .then(a.turn.total_cmp(&b.turn))
        });
        peaks.truncate(POSES_EACH);
    }
    peaks
}

/// The motion that brings a point to the origin and its normal onto the x axis.
fn upright(at: &SurfacePoint) -> Isometry3<f64> {
    let turn = UnitQuaternion::rotation_between(&at.normal, &Vector3::x())
        .unwrap_or_else(|| UnitQuaternion::from_axis_angle(&Vector3::z_axis(), PI));
    turn * Translation3::from(-at.point.coords)
}

/// The turn about the x axis, in steps from none to all, at which a point is seen
/// from an upright one.
fn turn_seen(upright: &Isometry3<f64>, at: &SurfacePoint) -> f32 {
    let seen = upright * at.point;
    ((seen.z.atan2(seen.y) / TAU + 0.5) * TURN_STEPS as f64) as f32
}

/// Poses that are nearly one joined to the one of them with the most votes,
/// ordered by the votes of all.
fn joined(mut poses: Vec<Voted>, source: &[SurfacePoint], spacing: f64) -> Vec<Isometry3<f64>> {
    let middle = centre_of(source);
    poses.sort_by(|a, b| b.votes.total_cmp(&a.votes));
    let mut groups: Vec<Voted> = Vec::new();
    for found in poses {
        let same = |group: &&mut Voted| {
            let apart = (group.pose * middle - found.pose * middle).norm();
            let turned = group.pose.rotation.angle_to(&found.pose.rotation);
            apart < SAME_PLACE * spacing && turned < SAME_TURN
        };
        match groups.iter_mut().find(same) {
            Some(group) => group.votes += found.votes,
            None => groups.push(found),
        }
    }
    groups.sort_by(|a, b| b.votes.total_cmp(&a.votes));
    groups.into_iter().map(|group| group.pose).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::{Point3, Unit};

    /// Points 2 mm apart of the surface z = 5 sin(x/7) + 4 cos(y/5 + x/9), whose
    /// normals are known by formula; `shift` moves the grid.
    fn waves(columns: i32, shift: f64) -> Vec<SurfacePoint> {
        let at = |x: f64, y: f64| {
            let (a, b) = (x / 7.0, y / 5.0 + x / 9.0);
            let slope_x = 5.0 / 7.0 * a.cos() - 4.0 / 9.0 * b.sin();
            let slope_y = -4.0 / 5.0 * b.sin();
            SurfacePoint {
                point: Point3::new(x, y, 5.0 * a.sin() + 4.0 * b.cos()),
                normal: Unit::new_normalize(Vector3::new(-slope_x, -slope_y, 1.0)),
            }
        };
        (0..columns)
            .flat_map(|i| (0..25).map(move |j| (i, j)))
            .map(|(i, j)| at(2.0 * f64::from(i) + shift, 2.0 * f64::from(j) + shift))
            .collect()
    }

    #[test]
    fn a_moved_part_of_a_surface_votes_for_the_way_back() {
        let motion = Isometry3::new(
            Vector3::new(80.0, -30.0, 12.0),
            Vector3::new(1.9, -0.7, 1.2),
        );
        let part: Vec<SurfacePoint> = waves(18, 0.9)
            .iter()
            .map(|s| SurfacePoint {
                point: motion * s.point,
                normal: motion.rotation * s.normal,
            })
            .collect();
        let best = voted(&part, &TargetPairs::of(&waves(30, 0.0), 2.0))[0] * motion;
        assert!(best.rotation.angle() < TAU / TURN_STEPS as f64);
        let middle = centre_of(&waves(18, 0.9));
        assert!((best * middle - middle).norm() < 3.0);
    }

    #[test]
    fn any_number_of_threads_gives_the_same_poses() {
        let (part, whole) = (waves(12, 0.9), waves(20, 0.0));
        let on = |threads: usize| {
            rayon::ThreadPoolBuilder::new()
                .num_threads(threads)
                .build()
                .expect("a few threads can be had")
                .install(|| voted(&part, &TargetPairs::of(&whole, 2.0)))
        };
        assert_eq!(on(1), on(5));
    }

    #[test]
    fn without_pairs_there_are_no_poses_of_use_and_no_panic() {
        let points = waves(1, 0.0);
        let pairs = |points: &[SurfacePoint], spacing| TargetPairs::of(points, spacing);
        assert!(voted(&[], &pairs(&points, 2.0)).is_empty());
        assert!(voted(&points, &pairs(&[], 2.0)).is_empty());
        voted(&points[..1], &pairs(&points[..1], 2.0));
        voted(&points, &pairs(&points, 0.0));
    }
}
