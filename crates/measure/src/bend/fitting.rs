//! The pose of a tray and its bend, found together.
//!
//! A robust least-squares fit of the outer surface to the tray (Chen and Medioni
//! 1992 with the kernel of Welsch), in which the amounts of the bend are expected
//! to be small beforehand (Bayesian linear regression): where no tray shows, they
//! stay near zero and their uncertainty is what was expected.

use super::limbs::{Amounts, EXPECTED_MM, Limb, Limbs, MODES, SIZE};
use geometry::order::robust_sd;
use geometry::registration::{Match, Target};
use geometry::sampling::SurfacePoint;
use nalgebra::{
    Isometry3, Point3, SMatrix, SVector, Translation3, UnitQuaternion, UnitVector3, Vector3,
};
use std::collections::BTreeSet;

/// Unknowns of the pose: rotation about a centre, then translation.
const POSE: usize = 6;
const ALL: usize = POSE + MODES;
type Row = SVector<f64, ALL>;
type Matrix = SMatrix<f64, ALL, ALL>;

/// Widths of the kernel, mm: the first as wide as a limb may be off after a rigid
/// fit, the last ones as narrow as the surfaces allow.
pub(crate) const FROM_FAR_MM: [f64; 12] =
    [1.0, 1.0, 0.8, 0.8, 0.6, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1];
/// Widths for a tray that bent little, mm: where much of it is lapped by material
/// that a wider kernel would take for tray.
pub(crate) const FROM_NEAR_MM: [f64; 5] = [0.2, 0.2, 0.15, 0.15, 0.1];
/// Narrower kernels than this tell nothing apart, mm.
const NARROWEST_MM: f64 = 0.03;
/// Residuals nearer to each other than this, mm, are one observation: feathered
/// material, wear of the tray and facets err together over such patches.
const CORRELATED_MM: f64 = 6.0;
/// A patch of the surface is never known better than this, mm.
const LEAST_PATCH_SD_MM: f64 = 0.01;
/// A bend that was found follows the model of it to within this part, as a standard
/// deviation. Own choice, no source.
const MODEL_PART: f64 = 0.05;
/// How far behind the tray surface is looked for, mm.
const BEHIND_MM: f64 = 2.0;
/// Deeper behind the tray than those that fit by this, mm, is behind.
const PLAY_MM: f64 = 0.05;

/// A tray where and as it lay.
#[derive(Debug, Clone)]
pub(crate) struct BentPose {
    limbs: Limbs,
    /// Moves unbent local coordinates into those of the tray's scan.
    tray_from_unbent: Isometry3<f64>,
    amounts: Amounts,
    covariance: Matrix,
    /// What rotations of the covariance turn about, tray coordinates.
    centre: Point3<f64>,
    /// Root mean square distance of the points that fit, mm.
    pub(crate) rms_mm: f64,
    /// Share of points that fit, 0 to 1.
    pub(crate) fitting_share: f64,
    /// Places of the outer surface that lie behind the tray, local coordinates,
    /// mm: neither the tray nor material over it can be there.
    pub(crate) behind: Vec<Point3<f64>>,
}

/// One source point on the tray, at the present estimate.
struct Observation {
    residual: f64,
    row: Row,
    place: Point3<f64>,
    distance: f64,
}

/// The tray's pose and bend by evenly spread points of the outer surface (local
/// coordinates), from a rigid pose that fits a part of them, under a kernel that
/// narrows by `widths_mm`. `None` where too little fits.
pub(crate) fn fitted(
    outer: &[SurfacePoint],
    target: &Target,
    rigid: &Isometry3<f64>,
    limbs: Limbs,
    widths_mm: &[f64],
) -> Option<BentPose> {
    let few: Vec<SurfacePoint> = outer.iter().step_by(6).copied().collect();
    let more: Vec<SurfacePoint> = outer.iter().step_by(3).copied().collect();
    let mut fit = Fit {
        target,
        limbs,
        pose: *rigid,
        amounts: Amounts::zeros(),
        points_a_patch: points_a_patch(&few),
    };
    let mut width = 0.0;
    for &each in widths_mm {
        width = each;
        fit.improve(&fit.observed(&few, 3.0 * width), width)?;
    }
    fit.points_a_patch = points_a_patch(&more);
    for _ in 0..2 {
        let observations = fit.observed(&more, 3.0 * width);
        fit.improve(&observations, width)?;
        let own = 3.0 * robust_sd(near(&observations, width)).unwrap_or(0.0);
        width = own.clamp(NARROWEST_MM, width);
    }
    fit.points_a_patch = points_a_patch(outer);
    let observations = fit.observed(outer, BEHIND_MM);
    let system = fit.system(&observations, width);
    let fitting: Vec<f64> = near(&observations, width).collect();
    let squares: f64 = fitting.iter().map(|r| r * r).sum();
    Some(BentPose {
        limbs,
        tray_from_unbent: fit.pose,
        amounts: fit.amounts,
        covariance: system.matrix.cholesky()?.inverse(),
        centre: system.centre,
        rms_mm: (squares / fitting.len().max(1) as f64).sqrt(),
        fitting_share: fitting.len() as f64 / outer.len().max(1) as f64,
        behind: observations
            .iter()
            .filter(|o| o.residual < -(width + PLAY_MM))
            .map(|o| o.place)
            .collect(),
    })
}

/// Residuals that a kernel does not cut off.
fn near(observations: &[Observation], width: f64) -> impl Iterator<Item = f64> {
    observations
        .iter()
        .map(|o| o.residual)
        .filter(move |r| r.abs() <= width)
}

/// How many of evenly spread points share one patch, on average.
fn points_a_patch(points: &[SurfacePoint]) -> f64 {
    let patches: BTreeSet<[i64; 3]> = points
        .iter()
        .map(|s| {
            let p = s.point;
            [p.x, p.y, p.z].map(|c| (c / CORRELATED_MM).floor() as i64)
        })
        .collect();
    points.len() as f64 / patches.len().max(1) as f64
}

/// An estimate that is being improved.
struct Fit<'a> {
    target: &'a Target,
    limbs: Limbs,
    pose: Isometry3<f64>,
    amounts: Amounts,
    points_a_patch: f64,
}

/// Normal equations, each patch of the surface counted once.
struct System {
    matrix: Matrix,
    right_side: Row,
    centre: Point3<f64>,
}

impl Fit<'_> {
    fn observed(&self, points: &[SurfacePoint], reach: f64) -> Vec<Observation> {
        let unbent: Vec<SurfacePoint> = points
            .iter()
            .map(|s| SurfacePoint {
                point: self.limbs.unbent(&s.point, &self.amounts),
                normal: s.normal,
            })
            .collect();
        let matches = self.target.matches(&unbent, &self.pose, reach);
        let centre = self.target.centre();
        points
            .iter()
            .zip(matches)
            .filter_map(|(s, found)| {
                let found = found?;
                Some(Observation {
                    residual: found.off_plane(),
                    distance: found.distance(),
                    row: self.row(&s.point, &found, &centre),
                    place: s.point,
                })
            })
            .collect()
    }

    /// What each unknown adds to the residual of a match.
    fn row(&self, place: &Point3<f64>, found: &Match, centre: &Point3<f64>) -> Row {
        row(
            &self.limbs,
            place,
            &found.moved,
            &found.normal,
            &(self.pose.rotation.inverse() * found.normal),
            centre,
        )
    }

    fn system(&self, observations: &[Observation], width: f64) -> System {
        let spread = robust_sd(near(observations, width)).unwrap_or(width / 3.0);
        let variance = spread.max(LEAST_PATCH_SD_MM).powi(2) * self.points_a_patch;
        let (mut matrix, mut right_side) = (Matrix::zeros(), Row::zeros());
        for o in observations.iter().filter(|o| o.distance <= 3.0 * width) {
            let weight = (-(o.residual / width).powi(2)).exp() / variance;
            // Loops of known length, which are worked out several steps at once.
            for column in 0..ALL {
                let weighted = weight * o.row[column];
                for k in column..ALL {
                    matrix[(k, column)] += weighted * o.row[k];
                }
            }
            right_side.axpy(-weight * o.residual, &o.row, 1.0);
        }
        matrix.fill_upper_triangle_with_lower_triangle();
        for k in 0..MODES {
            matrix[(POSE + k, POSE + k)] += EXPECTED_MM.powi(-2);
            right_side[POSE + k] -= self.amounts[k] * EXPECTED_MM.powi(-2);
        }
        System {
            matrix,
            right_side,
            centre: self.target.centre(),
        }
    }

    fn improve(&mut self, observations: &[Observation], width: f64) -> Option<()> {
        let system = self.system(observations, width);
        let step = system.matrix.cholesky()?.solve(&system.right_side);
        let turn = UnitQuaternion::from_scaled_axis(step.fixed_rows::<3>(0).into_owned());
        let shift = step.fixed_rows::<3>(3).into_owned();
        let centre = system.centre.coords;
        let motion =
            Isometry3::from_parts(Translation3::from(centre + shift - turn * centre), turn);
        self.pose = motion * self.pose;
        self.amounts += step.fixed_rows::<MODES>(POSE);
        Some(())
    }
}

/// What each unknown adds to the distance of a place from the tray along a
/// normal, given in the coordinates of the tray and in local ones.
fn row(
    limbs: &Limbs,
    place: &Point3<f64>,
    in_tray: &Point3<f64>,
    normal: &Vector3<f64>,
    local_normal: &Vector3<f64>,
    centre: &Point3<f64>,
) -> Row {
    let turning = (in_tray - centre).cross(normal);
    let mut row = Row::zeros();
    row.fixed_rows_mut::<3>(0).copy_from(&turning);
    row.fixed_rows_mut::<3>(3).copy_from(normal);
    for (k, mode) in limbs.modes(place).iter().enumerate() {
        row[POSE + k] = -local_normal.dot(mode);
    }
    row
}

impl BentPose {
    /// Where the tray ends at the back on one side of the midline, local y, mm.
    pub(crate) fn back_y(&self, x: f64) -> f64 {
        self.limbs.back_y(x)
    }

    /// A place on a limb, this part of the way from the front to where the tray
    /// ends at the back, local coordinates.
    pub(crate) fn on_limb(&self, limb: Limb, part: f64) -> Point3<f64> {
        self.limbs.on(limb, part)
    }

    /// A place, given in local coordinates, in those of the tray's scan: where
    /// it lay beside the tray before that bent.
    pub(crate) fn in_tray_scan(&self, place: &Point3<f64>) -> Point3<f64> {
        self.tray_from_unbent * self.limbs.unbent(place, &self.amounts)
    }

    /// A place of the tray's scan where it lay in the impression, local
    /// coordinates.
    pub(crate) fn out_of_tray(&self, place: &Point3<f64>) -> Point3<f64> {
        let unbent = self.tray_from_unbent.inverse_transform_point(place);
        unbent + self.limbs.moved_by(&unbent, &self.amounts)
    }

    /// Standard deviation of the tray's place along a direction (tray
    /// coordinates), near a place (local coordinates), mm.
    pub(crate) fn sd_along(&self, place: &Point3<f64>, direction: &UnitVector3<f64>) -> f64 {
        let in_tray = self.in_tray_scan(place);
        let local = self.tray_from_unbent.rotation.inverse() * direction.into_inner();
        let row = row(
            &self.limbs,
            place,
            &in_tray,
            direction,
            &local,
            &self.centre,
        );
        let by_fit = row.dot(&(self.covariance * row)).max(0.0).sqrt();
        let bend = self.limbs.moved_by(place, &self.amounts).dot(&local);
        by_fit.hypot(MODEL_PART * bend)
    }

    /// How far the bend moved a place of a limb (local coordinates), mm, with the
    /// standard deviation of each coordinate. An even change of size is no part of it.
    pub(crate) fn movement(&self, place: &Point3<f64>) -> (Vector3<f64>, Vector3<f64>) {
        let mut modes = self.limbs.modes(place);
        modes[SIZE] = Vector3::zeros();
        self.moved_by(&modes)
    }

    /// How far two places (local coordinates) moved apart along an axis, bend and size
    /// together, mm, with its standard deviation.
    pub(crate) fn moved_apart(
        &self,
        one: &Point3<f64>,
        other: &Point3<f64>,
        axis: &UnitVector3<f64>,
    ) -> (f64, f64) {
        let (of_one, of_other) = (self.limbs.modes(one), self.limbs.modes(other));
        let apart =
            std::array::from_fn(|k| axis.into_inner() * axis.dot(&(of_other[k] - of_one[k])));
        let (moved, sd) = self.moved_by(&apart);
        (axis.dot(&moved), sd.norm())
    }

    /// By what part all of it became larger, negative where smaller, with its standard
    /// deviation.
    pub(crate) fn grown(&self) -> (f64, f64) {
        let length_mm = self.limbs.length_mm();
        let variance = self.covariance[(POSE + SIZE, POSE + SIZE)].max(0.0);
        (self.amounts[SIZE] / length_mm, variance.sqrt() / length_mm)
    }

    fn moved_by(&self, modes: &[Vector3<f64>; MODES]) -> (Vector3<f64>, Vector3<f64>) {
        let own = self.covariance.fixed_view::<MODES, MODES>(POSE, POSE);
        let moved: Vector3<f64> = (modes.iter().zip(self.amounts.iter()))
            .map(|(mode, amount)| mode * *amount)
            .sum();
        let sd = Vector3::from_fn(|axis, _| {
            let row = Amounts::from_fn(|k, _| modes[k][axis]);
            let by_fit = row.dot(&(own * row)).max(0.0).sqrt();
            by_fit.hypot(MODEL_PART * moved.norm())
        });
        (moved, sd)
    }
}
