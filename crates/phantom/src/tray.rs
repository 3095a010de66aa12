//! The stock tray: a profile swept along the arch, as thick as twice its half
//! thickness, cut at the back and at the top of its walls.
//!
//! The distance to it is exact. A plan curve's signed distance changes by at
//! most one millimetre a millimetre, so nothing of a swept profile is nearer
//! than the profile in a point's own section; past the ends of the limbs the
//! two distances add like the sides of a right angle. Only a wall's top edge,
//! whose height varies along the arch, needs a search along its curve.

use crate::arch_curve::{ArchCurve, ArchPlace};
use crate::options::TrayForm;
use crate::profile::{Profile, ProfileDistance};
use crate::shaping::norm;
use crate::stations::Stations;
use nalgebra::{Point3, Vector3};

const EDGE_STEP_MM: f64 = 0.1;
/// How far along the arch the nearest point of an edge may lie.
const EDGE_SEARCH_MM: f64 = 8.0;
/// The search along an edge matters to the tray's own shape only this near to it.
const EDGE_NEAR_MM: f64 = 2.5;

/// A stock tray. Lengths in mm, in the phantom's own frame.
#[derive(Debug, Clone)]
pub struct Tray {
    arch: ArchCurve,
    profile: Profile,
    half_thickness: f64,
    limb_length: f64,
    outer_top: Stations<f64>,
    inner_top: Stations<f64>,
    outer_edge: Edge,
    inner_edge: Option<Edge>,
    handle: Option<Handle>,
    stops: Vec<Stop>,
    holes: Vec<[f64; 2]>,
    hole_radius: f64,
    rolled_rim: f64,
}

/// A block on the tray's floor that is meant to touch the tissue.
#[derive(Debug, Clone, Copy)]
pub struct Stop {
    /// Middle of its foot, inside the shell.
    pub foot: Point3<f64>,
    /// Height over the foot, mm.
    pub height: f64,
    /// Unit vector of the plan across the arch.
    pub across: Vector3<f64>,
}

/// Half the side of a stop, mm.
pub(crate) const STOP_HALF_MM: f64 = 2.0;

impl Stop {
    /// Middle of the face that touches the tissue.
    #[must_use]
    pub fn face(&self) -> Point3<f64> {
        self.foot + Vector3::z() * self.height
    }

    fn distance(&self, [x, y]: [f64; 2], z: f64) -> f64 {
        let offset = Point3::new(x, y, z) - self.foot - Vector3::z() * (self.height / 2.0);
        let u = offset.x * self.across.x + offset.y * self.across.y;
        let v = offset.y * self.across.x - offset.x * self.across.y;
        let over = [
            u.abs() - STOP_HALF_MM,
            v.abs() - STOP_HALF_MM,
            offset.z.abs() - self.height / 2.0,
        ];
        let outside = over.iter().map(|o| o.max(0.0).powi(2)).sum::<f64>().sqrt();
        outside
            + over
                .iter()
                .copied()
                .fold(f64::NEG_INFINITY, f64::max)
                .min(0.0)
    }
}

/// What the distances above one point of the plan have in common.
#[derive(Debug, Clone, Copy)]
pub struct TrayColumn {
    /// Place along the arch.
    pub place: ArchPlace,
    /// How far behind the ends of the limbs, mm; negative before them.
    pub behind: f64,
    /// Heights of the outer and inner wall's middle at its top.
    pub tops: [f64; 2],
    /// How far outside the nearest hole, mm; negative in one.
    pub off_hole: f64,
    plan: [f64; 2],
    near_edge: [bool; 2],
}

/// Distances of a point to the tray.
#[derive(Debug, Clone, Copy)]
pub struct TrayDistance {
    /// To the tray's surface, negative inside, mm.
    pub surface: f64,
    /// The same without handle, stops and holes, mm.
    pub shell: f64,
    /// To the outer face of the tray with endless walls; negative on the
    /// tissue's side of that face, mm.
    pub outer_face: f64,
}

/// What a tray is made from.
#[derive(Debug, Clone)]
pub struct TrayParts {
    /// Plan of the channel.
    pub arch: ArchCurve,
    /// Middle of the shell across the arch.
    pub profile: Profile,
    /// Thickness of the shell, mm.
    pub thickness: f64,
    /// Length of the straight limbs, mm.
    pub limb_length: f64,
    /// Height of the middle of the outer wall's edge along the arch.
    pub outer_top: Stations<f64>,
    /// The same of the inner wall, where the profile has one.
    pub inner_top: Stations<f64>,
    /// Handle at the front.
    pub handle: Option<Handle>,
}

impl Tray {
    /// A tray from its parts.
    #[must_use]
    pub fn new(parts: TrayParts) -> Self {
        let TrayParts {
            arch,
            profile,
            thickness,
            limb_length,
            outer_top,
            inner_top,
            handle,
        } = parts;
        let reach = arch.curved_length() + limb_length;
        let edge = |wall: &crate::profile::Wall, top: &Stations<f64>| {
            Edge::new(reach, |along| {
                let [out, z] = wall.at_height(top.at(along));
                let plan = arch.point(ArchPlace { along, out });
                Point3::new(plan.x, plan.y, z)
            })
        };
        let outer_edge = edge(profile.outer(), &outer_top);
        let inner_edge = profile.inner().map(|wall| edge(wall, &inner_top));
        Self {
            arch,
            profile,
            half_thickness: thickness / 2.0,
            limb_length,
            outer_top,
            inner_top,
            outer_edge,
            inner_edge,
            handle,
            stops: Vec::new(),
            holes: Vec::new(),
            hole_radius: 0.0,
            rolled_rim: 0.0,
        }
    }

    /// The tray with holes through its floor, in rows along the arch, and a rolled rim.
    #[must_use]
    pub fn with_form(mut self, form: &TrayForm) -> Self {
        /// Rows across the arch, and how far holes keep from the ends, mm.
        const ROWS: [f64; 4] = [0.0, -1.0, -2.0, -3.0];
        const FROM_END_MM: f64 = 4.0;
        self.rolled_rim = form.rolled_rim_mm;
        self.hole_radius = form.hole_radius_mm;
        if form.hole_radius_mm <= 0.0 || form.holes_apart_mm <= 0.0 {
            return self;
        }
        let apart = form.holes_apart_mm;
        let rows = if self.inner_edge.is_some() {
            1
        } else {
            ROWS.len()
        };
        let last = ((self.reach() - FROM_END_MM) / apart).floor() as i64;
        let mut holes: Vec<[f64; 2]> = Vec::new();
        for row in &ROWS[..rows] {
            for number in -last..=last {
                let place = ArchPlace {
                    along: number as f64 * apart,
                    out: row * apart,
                };
                let at = self.arch.point(place);
                // Inside a bend rows run together.
                let is_apart = |&[x, y]: &[f64; 2]| norm(at.x - x, at.y - y) >= 0.95 * apart;
                if holes.iter().all(is_apart) {
                    holes.push([at.x, at.y]);
                }
            }
        }
        self.holes = holes;
        self
    }

    /// Middles of the holes, in the plan.
    #[must_use]
    pub fn holes(&self) -> &[[f64; 2]] {
        &self.holes
    }

    /// Radius of the holes, mm.
    #[must_use]
    pub fn hole_radius(&self) -> f64 {
        self.hole_radius
    }

    /// Radius of the rim's rounding, mm.
    #[must_use]
    pub fn rim_radius(&self) -> f64 {
        self.half_thickness + self.rolled_rim
    }

    /// Middle of the outer wall's top at an arc length.
    #[must_use]
    pub fn outer_edge_at(&self, along: f64) -> Point3<f64> {
        self.edge_at(self.profile.outer(), self.outer_top.at(along), along)
    }

    /// Middle of the inner wall's top at an arc length; `None` where there is no such wall.
    #[must_use]
    pub fn inner_edge_at(&self, along: f64) -> Option<Point3<f64>> {
        let wall = self.profile.inner()?;
        Some(self.edge_at(wall, self.inner_top.at(along), along))
    }

    fn edge_at(&self, wall: &crate::profile::Wall, top: f64, along: f64) -> Point3<f64> {
        let [out, z] = wall.at_height(top);
        let plan = self.arch.point(ArchPlace { along, out });
        Point3::new(plan.x, plan.y, z)
    }

    /// The tray with tissue stops on its floor.
    #[must_use]
    pub fn with_stops(self, stops: Vec<Stop>) -> Self {
        Self { stops, ..self }
    }

    /// The tissue stops.
    #[must_use]
    pub fn stops(&self) -> &[Stop] {
        &self.stops
    }

    /// Plan of the channel.
    #[must_use]
    pub fn arch(&self) -> &ArchCurve {
        &self.arch
    }

    /// Thickness of the shell, mm.
    #[must_use]
    pub fn thickness(&self) -> f64 {
        2.0 * self.half_thickness
    }

    /// Top of the outer wall from one end to the other, mm.
    pub fn outer_rim(&self) -> impl Iterator<Item = Point3<f64>> {
        let up = Vector3::z() * self.half_thickness;
        self.outer_edge.points.iter().map(move |middle| middle + up)
    }

    /// Arc length from the front to the back end, mm.
    #[must_use]
    pub fn reach(&self) -> f64 {
        self.arch.curved_length() + self.limb_length
    }

    /// Lowest z and greatest y of the tray, mm, or a little more.
    #[must_use]
    pub fn low_and_front(&self) -> (f64, f64) {
        let low = self.profile.lowest() - self.half_thickness;
        let front = self.arch.depth() + self.profile.outer().at_height(15.0)[0] + 4.0;
        self.handle.as_ref().map_or((low, front), |h| {
            let [y, z] = h.middle[3];
            (low.min(z - h.thickness), front.max(y + h.thickness))
        })
    }

    /// What does not change along z at a point of the plan.
    #[must_use]
    pub fn column(&self, x: f64, y: f64) -> TrayColumn {
        let place = self.arch.place(x, y);
        let tops = [
            self.outer_top.at(place.along),
            self.inner_top.at(place.along),
        ];
        let edge_out = |wall: &crate::profile::Wall, top| wall.at_height(top)[0];
        let outer = edge_out(self.profile.outer(), tops[0]);
        let inner = self.profile.inner().map(|wall| edge_out(wall, tops[1]));
        TrayColumn {
            place,
            behind: -self.limb_length - y,
            tops,
            off_hole: (self.holes.iter())
                .map(|hole| norm(x - hole[0], y - hole[1]) - self.hole_radius)
                .fold(f64::INFINITY, f64::min),
            plan: [x, y],
            near_edge: [
                (place.out - outer).abs() < self.edge_near(),
                inner.is_some_and(|inner| (place.out - inner).abs() < self.edge_near()),
            ],
        }
    }

    fn edge_near(&self) -> f64 {
        EDGE_NEAR_MM + 2.0 * self.rolled_rim
    }

    /// Distances at a height, exact near the tray and never too small by more
    /// than a wall's edge slopes; [`Tray::exact_distance`] is exact everywhere.
    #[must_use]
    pub fn distance(&self, column: &TrayColumn, z: f64) -> TrayDistance {
        let found = self.profile.distance([column.place.out, z], column.tops);
        let mut to_edge = f64::INFINITY;
        let edges = [Some(&self.outer_edge), self.inner_edge.as_ref()];
        for ((edge, near), top) in edges.into_iter().zip(column.near_edge).zip(column.tops) {
            if let (Some(edge), true) = (edge, near && (z - top).abs() < self.edge_near()) {
                to_edge = to_edge.min(self.to_edge(edge, column, z));
            }
        }
        self.distances(found, to_edge, column, z)
    }

    /// Distance to the tray's surface, negative inside, mm.
    #[must_use]
    pub fn exact_distance(&self, p: &Point3<f64>) -> f64 {
        let column = self.column(p.x, p.y);
        let found = self.profile.distance([column.place.out, p.z], column.tops);
        let to_edge = [Some(&self.outer_edge), self.inner_edge.as_ref()]
            .into_iter()
            .flatten()
            .map(|edge| self.to_edge(edge, &column, p.z))
            .fold(f64::INFINITY, f64::min);
        self.distances(found, to_edge, &column, p.z).surface
    }

    /// Unit vector along which the distance to the tray grows fastest.
    #[must_use]
    pub fn away(&self, p: &Point3<f64>) -> Vector3<f64> {
        const H: f64 = 1e-5;
        let slope = |axis: Vector3<f64>| {
            self.exact_distance(&(p + axis * H)) - self.exact_distance(&(p - axis * H))
        };
        Vector3::new(
            slope(Vector3::x()),
            slope(Vector3::y()),
            slope(Vector3::z()),
        )
        .try_normalize(0.0)
        .unwrap_or_else(Vector3::z)
    }

    fn distances(
        &self,
        found: ProfileDistance,
        to_edge: f64,
        column: &TrayColumn,
        z: f64,
    ) -> TrayDistance {
        let to_middle = norm(found.to_cut, column.behind.max(0.0)).min(to_edge);
        let shell = (to_middle - self.half_thickness).min(to_edge - self.rim_radius());
        let surface = match &self.handle {
            // The handle's root ends in the middle of the shell.
            Some(handle) if handle.least_distance(column.plan) < shell => {
                shell.min(handle.distance(column.plan, z).max(-found.side))
            }
            _ => shell,
        };
        let surface = outside_both(surface, -column.off_hole);
        let surface = self
            .stops
            .iter()
            .fold(surface, |d, s| d.min(s.distance(column.plan, z)));
        TrayDistance {
            surface,
            shell,
            outer_face: found.side - self.half_thickness,
        }
    }

    fn to_edge(&self, edge: &Edge, column: &TrayColumn, z: f64) -> f64 {
        edge.distance(
            &Point3::new(column.plan[0], column.plan[1], z),
            column.place.along,
        )
    }
}

/// Distance to what two solids have in common, exact beside the right-angled edge in which
/// their faces meet.
fn outside_both(a: f64, b: f64) -> f64 {
    if a > 0.0 && b > 0.0 {
        norm(a, b)
    } else {
        a.max(b)
    }
}

/// Top of a wall as a dense line.
#[derive(Debug, Clone)]
struct Edge {
    reach: f64,
    points: Vec<Point3<f64>>,
}

impl Edge {
    fn new(reach: f64, point: impl Fn(f64) -> Point3<f64>) -> Self {
        let count = (2.0 * reach / EDGE_STEP_MM).ceil();
        let points = (0..=count as usize)
            .map(|i| point(-reach + 2.0 * reach * i as f64 / count))
            .collect();
        Self { reach, points }
    }

    fn distance(&self, p: &Point3<f64>, along: f64) -> f64 {
        const COARSE: usize = 5;
        let last = self.points.len() - 1;
        let index = |along: f64| {
            ((along + self.reach) / (2.0 * self.reach) * last as f64).clamp(0.0, last as f64)
                as usize
        };
        let (low, high) = (index(along - EDGE_SEARCH_MM), index(along + EDGE_SEARCH_MM));
        let start = (low..=high)
            .step_by(COARSE)
            .chain([high])
            .map(|i| (i, (self.points[i] - p).norm_squared()))
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .map_or(low, |(i, _)| i);
        let nearest = (start.saturating_sub(COARSE)..(start + COARSE).min(last))
            .map(|i| to_segment(p, &self.points[i], &self.points[i + 1]))
            .fold(f64::INFINITY, f64::min);
        nearest.sqrt()
    }
}

fn to_segment(p: &Point3<f64>, a: &Point3<f64>, b: &Point3<f64>) -> f64 {
    let (run, offset) = (b - a, p - a);
    let share = (offset.dot(&run) / run.norm_squared().max(1e-18)).clamp(0.0, 1.0);
    (offset - run * share).norm_squared()
}

/// A stepped plate that leaves the front of the tray.
#[derive(Debug, Clone)]
pub struct Handle {
    /// Middle line in the midline plane as (y, z), from the tray outward.
    pub middle: [[f64; 2]; 4],
    /// Width, mm.
    pub width: f64,
    /// Thickness, mm.
    pub thickness: f64,
}

impl Handle {
    /// No part of it is nearer in the plan, mm: quicker than the distance.
    fn least_distance(&self, [x, y]: [f64; 2]) -> f64 {
        let back = self
            .middle
            .iter()
            .map(|[y, _]| *y)
            .fold(f64::INFINITY, f64::min);
        (x.abs() - self.width / 2.0).max(back - self.thickness / 2.0 - y)
    }

    fn distance(&self, [x, y]: [f64; 2], z: f64) -> f64 {
        let rounding = 0.45 * self.thickness;
        let to_line = self
            .middle
            .windows(2)
            .map(|ends| {
                let [a, b] = [ends[0], ends[1]].map(|[y, z]| Point3::new(0.0, y, z));
                to_segment(&Point3::new(0.0, y, z), &a, &b)
            })
            .fold(f64::INFINITY, f64::min)
            .sqrt();
        let across = to_line - self.thickness / 2.0 + rounding;
        let aside = x.abs() - self.width / 2.0 + rounding;
        norm(across.max(0.0), aside.max(0.0)) + across.max(aside).min(0.0) - rounding
    }
}
