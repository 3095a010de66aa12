//! Is a place that departs from the smooth surface a void or a nodule? Its
//! surroundings are fitted without it, and profiles with and without a sharp
//! rim are laid over what is left.

use super::candidates::Candidate;
use super::profile::{Fitted, Fitting, Outline, Profile};
use super::quadric::{Frame, Quadric, Ridge};
use super::surface::{Searcher, Surface};
use nalgebra::{Point3, Vector2, Vector3};

/// Corners of a rim's outline.
const RIM_CORNERS: u32 = 24;

/// The surroundings' own relief, as a part of the depth.
const MOST_ROUGH: f64 = 0.125;

/// The best profile explains this share of what departs from the surroundings.
const LEAST_EXPLAINED: f64 = 0.8;
/// Where it explains less than this, something else is there than a part of a ball.
const HARDLY_EXPLAINED: f64 = 0.6;

/// What is known of a place.
#[derive(Debug, Clone)]
pub(super) struct Reading {
    /// Its middle, on the surface as it would be without it.
    pub centre: Point3<f64>,
    /// Greatest departure, mm.
    pub depth_mm: f64,
    /// Standard uncertainty of the depth, mm.
    pub depth_sd_mm: f64,
    /// Radius of the rim, as of a circle of the same area, mm.
    pub rim_mm: f64,
    /// That circle, laid on the surface as it would be without the place.
    pub rim: Vec<Point3<f64>>,
    /// Radius at half of the depth, mm.
    pub half_mm: f64,
    /// Longer over shorter axis of the outline at half the depth.
    pub elongation: f64,
    /// Share of the departures' sum of squares, beyond that of the noise, that
    /// the best profile explains.
    pub explained: f64,
    /// Standard deviation of the surroundings about their smooth surface, less what
    /// the scan's noise explains of it, mm.
    pub relief_mm: f64,
    /// Whether these follow a ridge, which no quadric did.
    pub on_ridge: bool,
    /// Share of the directions around in which surroundings are seen.
    pub surrounded: f64,
    /// Logarithm of the likelihood ratio of a sharp rim to a smooth one.
    pub rim_evidence: f64,
}

impl Reading {
    /// Whether this is a defect and no anatomy: it stands out of surroundings
    /// that are smooth beside it and seen all around, is compact, has the shape
    /// of a part of a ball, and has a sharp rim or walls steeper than any
    /// hollow or pimple of the mucosa.
    pub(super) fn is_defect(&self, least_mm: f64) -> bool {
        const MOST_ELONGATED: f64 = 2.2;
        const LEAST_SEEN: f64 = 0.8;
        /// Odds of e^7, about 1000 to 1.
        const LEAST_RIM_EVIDENCE: f64 = 7.0;
        /// Depth over the radius at half of it: a bell this steep has slopes of
        /// 35 degrees, which no fovea or papilla has (common practice, no source).
        const STEEP: f64 = 1.0;
        /// Beside a ridge a fit follows less surely, and a tray pressed into the tissue leaves
        /// shallow dents: least depth over the radius at half of it. Own choice, no source.
        const DEEP_ON_RIDGE: f64 = 0.5;
        let deep = !self.on_ridge || self.depth_mm >= DEEP_ON_RIDGE * self.half_mm;
        let sharp = self.rim_evidence > LEAST_RIM_EVIDENCE
            || (self.depth_mm > STEEP * self.half_mm && self.rim_evidence > -LEAST_RIM_EVIDENCE);
        self.depth_mm >= least_mm
            && self.depth_mm >= 5.0 * self.depth_sd_mm
            && self.relief_mm <= MOST_ROUGH * self.depth_mm
            && self.surrounded >= LEAST_SEEN
            && self.elongation <= MOST_ELONGATED
            && self.explained >= LEAST_EXPLAINED
            && deep
            && sharp
    }

    /// Whether the surroundings leave so much unexplained that they may be a ridge's.
    pub(super) fn may_be_on_ridge(&self) -> bool {
        !self.on_ridge && (HARDLY_EXPLAINED..LEAST_EXPLAINED).contains(&self.explained)
    }
}

/// The footprint of a candidate: what is joined to it and departs at least half
/// as far. `None` where it is too wide for the smooth surface to have passed it.
fn half_radius(
    surface: &Surface<'_>,
    searcher: &mut Searcher,
    departures: &[f32],
    candidate: &Candidate,
    radius_mm: f64,
) -> Option<f64> {
    let sign = candidate.sense.sign() as f32;
    let half = (0.5 * candidate.peak_mm) as f32;
    let middle = surface.points[candidate.vertex as usize];
    let near = radius_mm * radius_mm;
    let footprint = searcher.joined(surface, candidate.vertex, |v| {
        departures[v as usize] * sign > half
            && (surface.points[v as usize] - middle).norm_squared() < near
    });
    let area: f64 = footprint.iter().map(|&v| surface.areas[v as usize]).sum();
    let half_mm = (area / std::f64::consts::PI).sqrt();
    (half_mm < 0.6 * radius_mm).then_some(half_mm)
}

/// What follows the surroundings of a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum FollowedBy {
    /// A quadric, or a ridge where no quadric does.
    QuadricFirst,
    /// A ridge.
    Ridge,
}

/// A place laid flat: what is around it, over the smooth surface of its surroundings.
struct LaidFlat {
    /// Radius of its footprint, mm.
    half_mm: f64,
    /// The vertices around.
    ball: Vec<u32>,
    frame: Frame,
    surroundings: Ridge,
    /// Whether that is a ridge's, and no quadric.
    on_ridge: bool,
    /// Standard deviation of the surroundings about that surface, mm.
    scale_mm: f64,
    /// The vertices in the frame, their z over it toward the departure.
    local: Vec<Vector3<f64>>,
    /// Greatest departure, mm.
    peak_mm: f64,
}

impl LaidFlat {
    /// `None` where there is nothing to fit or nothing stands out.
    fn of(
        surface: &Surface<'_>,
        searcher: &mut Searcher,
        departures: &[f32],
        candidate: &Candidate,
        radius_mm: f64,
        followed_by: FollowedBy,
    ) -> Option<Self> {
        /// Surroundings rougher than this part of the peak hide it.
        const HOPELESS: f64 = 0.25;
        let half_mm = half_radius(surface, searcher, departures, candidate, radius_mm)?;
        let middle = surface.points[candidate.vertex as usize];
        let reach = f64::max(2.6 * half_mm, 1.6 * half_mm + 4.0 * surface.edge_mm);
        let ball = searcher.ball(surface, candidate.vertex, reach);
        let around: Vec<u32> = ball
            .iter()
            .copied()
            .filter(|&v| (surface.points[v as usize] - middle).norm() > 1.5 * half_mm)
            .collect();
        let frame = Frame::at(surface, middle, &around)?;
        let annulus = |frame: &Frame| -> Vec<Vector3<f64>> {
            let faces_up = |v: &&u32| surface.normals[**v as usize].dot(&frame.up()) > 0.2;
            (around.iter().filter(faces_up))
                .map(|&v| frame.local(&surface.points[v as usize]))
                .collect()
        };
        let floor_mm = surface.noise_mm.max(1e-3);
        let quadric = Quadric::robust_fit(&annulus(&frame), floor_mm)?;
        let sign = candidate.sense.sign();
        let over =
            |frame, fit, scale_mm| Self::over(surface, &ball, half_mm, sign, frame, fit, scale_mm);
        let plain = over(frame, quadric.height.into(), quadric.scale_mm);
        let is_followed = followed_by == FollowedBy::QuadricFirst
            && plain.relief_mm(surface) <= MOST_ROUGH * plain.peak_mm;
        // No quadric follows a ridge with a narrow crest.
        let turned = frame.turned(&quadric.height.across());
        let ridge = (!is_followed)
            .then(|| Ridge::robust_fit(&annulus(&turned), floor_mm))
            .flatten();
        let place = match (ridge, followed_by) {
            (Some(ridge), _) => Self {
                on_ridge: true,
                ..over(turned, ridge.height, ridge.scale_mm)
            },
            (None, FollowedBy::QuadricFirst) => plain,
            (None, FollowedBy::Ridge) => return None,
        };
        let is_lost = place.peak_mm <= 0.0 || place.scale_mm > HOPELESS * place.peak_mm;
        (!is_lost).then_some(place)
    }

    /// A place over a smooth surface of its surroundings.
    fn over(
        surface: &Surface<'_>,
        ball: &[u32],
        half_mm: f64,
        sign: f64,
        frame: Frame,
        surroundings: Ridge,
        scale_mm: f64,
    ) -> Self {
        let local: Vec<Vector3<f64>> = ball
            .iter()
            .map(|&v| {
                let p = frame.local(&surface.points[v as usize]);
                Vector3::new(p.x, p.y, (p.z - surroundings.at(p.x, p.y)) * sign)
            })
            .collect();
        let peak_mm = local
            .iter()
            .filter(|p| p.xy().norm() < 1.2 * half_mm)
            .map(|p| p.z)
            .fold(f64::NEG_INFINITY, f64::max)
            - surface.noise_mm;
        Self {
            half_mm,
            ball: ball.to_vec(),
            frame,
            surroundings,
            on_ridge: false,
            scale_mm,
            local,
            peak_mm,
        }
    }

    /// What of the surroundings' departures the scan's noise does not explain, mm.
    fn relief_mm(&self, surface: &Surface<'_>) -> f64 {
        (self.scale_mm.powi(2) - surface.noise_mm.powi(2))
            .max(0.0)
            .sqrt()
    }

    /// How far the surface at a vertex faces up, and not aside.
    fn facing(&self, surface: &Surface<'_>, vertex: u32) -> f64 {
        surface.normals[vertex as usize]
            .dot(&self.frame.up())
            .max(0.2)
    }

    /// The footprint once more, now over surroundings that do not know it.
    fn outline(&self, surface: &Surface<'_>) -> Option<Outline> {
        let deep = self
            .ball
            .iter()
            .zip(&self.local)
            .filter(|(_, p)| p.z > 0.5 * self.peak_mm && p.xy().norm() < 2.2 * self.half_mm);
        Outline::of(deep.map(|(&v, p)| {
            let area = surface.areas[v as usize] * self.facing(surface, v);
            (p.xy(), area)
        }))
    }

    /// How much each vertex counts in a fit.
    fn weights(&self, surface: &Surface<'_>, outline: &Outline) -> Vec<f64> {
        let beside = |p: &Vector3<f64>| (p.xy() - outline.centre).norm();
        let scale_mm = self.scale_mm;
        self.ball
            .iter()
            .zip(&self.local)
            .map(|(&v, p)| {
                // A steep wall's height is known less well than a level place's.
                let stranger = beside(p) > 2.2 * self.half_mm && p.z.abs() > 4.685 * scale_mm;
                if stranger {
                    0.0
                } else {
                    self.facing(surface, v).powi(2)
                }
            })
            .collect()
    }

    /// A circle around a foot, laid on the smooth surface.
    fn circle(&self, foot: &Vector3<f64>, radius_mm: f64) -> Vec<Point3<f64>> {
        let corners = (0..RIM_CORNERS).map(|corner| {
            let angle = std::f64::consts::TAU * f64::from(corner) / f64::from(RIM_CORNERS);
            let place = foot.xy() + Vector2::new(angle.cos(), angle.sin()) * radius_mm;
            let height = self.surroundings.at(place.x, place.y);
            self.frame.point(&Vector3::new(place.x, place.y, height))
        });
        corners.collect()
    }
}

/// Reads a place; `None` where there is nothing to fit or nothing stands out.
pub(super) fn read(
    surface: &Surface<'_>,
    searcher: &mut Searcher,
    departures: &[f32],
    candidate: &Candidate,
    radius_mm: f64,
    followed_by: FollowedBy,
) -> Option<Reading> {
    /// Where vertices happen to lie moves a depth by about this part of an edge:
    /// a wall of slope 1 is known to a rectangle of edge / 2, and some ten
    /// vertices share in it.
    const SAMPLING: f64 = 0.1;
    let place = LaidFlat::of(
        surface,
        searcher,
        departures,
        candidate,
        radius_mm,
        followed_by,
    )?;
    let outline = place.outline(surface)?;
    let weights = place.weights(surface, &outline);
    let fitting = Fitting::new(&place.local, &weights)?;
    let kept = place.local.iter().zip(&weights).filter(|(_, w)| **w > 0.0);
    let off = kept.map(|(p, _)| p.xy() - outline.centre);
    let surrounded = sectors(off.filter(|o| o.norm() > 1.5 * place.half_mm));
    let profiles = Profiles::of(&fitting, &outline)?;
    let best = profiles.best();
    let foot = Vector3::new(
        best.centre.x,
        best.centre.y,
        place.surroundings.at(best.centre.x, best.centre.y),
    );
    // Noise is the least that a fit can leave.
    let floor = 0.5 * surface.noise_mm.max(1e-4).powi(2) * fitting.weight;
    let variance = best.left.max(floor) / (fitting.weight - 10.0).max(1.0);
    // What noise adds to a sum of squares can be explained by nothing.
    let of_noise = surface.noise_mm.powi(2) * fitting.weight;
    let beyond_noise = |squares: f64| (squares - of_noise).max(0.0);
    let between_profiles = profiles.depth_difference_mm();
    let rim_mm = profiles.sharp[0].radius_mm;
    Some(Reading {
        centre: place.frame.point(&foot),
        rim: place.circle(&foot, rim_mm),
        depth_mm: best.depth_mm,
        depth_sd_mm: (variance / best.leverage
            + between_profiles.powi(2)
            + (SAMPLING * surface.edge_mm).powi(2))
        .sqrt(),
        rim_mm,
        half_mm: outline.radius(),
        elongation: outline.elongation(),
        explained: 1.0 - beyond_noise(best.left) / beyond_noise(fitting.left_alone).max(1e-12),
        relief_mm: place.relief_mm(surface),
        on_ridge: place.on_ridge,
        surrounded,
        rim_evidence: 0.5
            * fitting.weight
            * (profiles.smooth.left.max(floor) / profiles.sharp[0].left.max(floor)).ln(),
    })
}

/// The profiles that fit best.
struct Profiles {
    /// With a sharp rim: the best and the next.
    sharp: [Fitted; 2],
    /// With a smooth one.
    smooth: Fitted,
}

impl Profiles {
    fn of(fitting: &Fitting<'_>, outline: &Outline) -> Option<Self> {
        let mut fitted: Vec<Fitted> = Profile::ALL
            .iter()
            .filter_map(|&profile| fitting.best(profile, outline))
            .collect();
        fitted.sort_by(|a, b| a.left.total_cmp(&b.left));
        let mut sharp = fitted.iter().filter(|f| f.profile.has_rim());
        Some(Self {
            sharp: [*sharp.next()?, *sharp.next()?],
            smooth: *fitted.iter().find(|f| !f.profile.has_rim())?,
        })
    }

    fn best(&self) -> &Fitted {
        if self.sharp[0].left <= self.smooth.left {
            &self.sharp[0]
        } else {
            &self.smooth
        }
    }

    /// What choosing among the profiles leaves open in the depth (standard
    /// uncertainty of a value between the two), mm.
    fn depth_difference_mm(&self) -> f64 {
        let [best, next] = self.sharp;
        0.29 * (best.depth_mm - next.depth_mm)
    }
}

/// Share of twelve directions in which there are places.
fn sectors(off: impl Iterator<Item = Vector2<f64>>) -> f64 {
    let mut seen = [false; 12];
    for p in off {
        let turn = p.y.atan2(p.x) / std::f64::consts::TAU + 0.5;
        seen[(turn * 12.0) as usize % 12] = true;
    }
    seen.iter().filter(|&&s| s).count() as f64 / 12.0
}
