//! Strips of bare tray along its edges.

use crate::arch_curve::ArchPlace;
use crate::options::{BareEdge, TrayEdge};
use crate::shaping::norm;
use crate::tray::{STOP_HALF_MM, Stop, Tray};
use nalgebra::{Isometry3, Point3, Vector3};
use serde::Serialize;
use std::f64::consts::PI;

/// Growth of cover for each mm beside a strip, as far as material is thin; beyond, cover grows
/// ever faster.
const RAMP: f64 = 1.5;
const EVEN_RAMP_MM: f64 = 1.1;
/// Further from the tray than any material goes along a strip's axis, mm.
const DEPTH_MM: f64 = 7.0;
/// The edge is known so far beyond either end of a strip, in such steps, mm.
const BEYOND_MM: f64 = 8.0;
const STEP_MM: f64 = 0.1;

/// A planted strip of bare tray. Lengths in mm, in the phantom's own frame.
#[derive(Debug, Clone)]
pub struct BareStrip {
    wanted: BareEdge,
    /// Middle line of the bare band, and the way from the tray to the tissue along it.
    line: Vec<(Point3<f64>, Vector3<f64>)>,
    /// Arc length of its first place from the strip's middle.
    from: f64,
}

/// What is true of a planted strip of bare tray, in scan coordinates.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BareEdgeTruth {
    /// Along which edge of the tray.
    pub edge: TrayEdge,
    /// Middle line of the strip, from end to end.
    pub line: Vec<Point3<f64>>,
    /// Width of the bare strip, straight across, mm.
    pub width_mm: f64,
    /// Length of the bare strip, mm.
    pub length_mm: f64,
}

impl BareStrip {
    /// The wanted strip, at an arc length and the height of the trough there; `None` where the
    /// tray has no such edge.
    pub(crate) fn planted(
        tray: &Tray,
        [along, above_z]: [f64; 2],
        wanted: &BareEdge,
    ) -> Option<Self> {
        let reach = 0.5 * wanted.length_mm + BEYOND_MM;
        let line = match wanted.edge {
            TrayEdge::OuterRim => rim(tray, along, -1.0, reach, &|along| {
                Some(tray.outer_edge_at(along))
            }),
            TrayEdge::InnerRim => rim(tray, along, 1.0, reach, &|along| tray.inner_edge_at(along)),
            TrayEdge::Opening => opening(tray, [along, above_z], wanted, reach),
            TrayEdge::StopFoot => stop_foot(tray, [along, above_z], wanted, reach),
            TrayEdge::Joint => Some(joint(tray, [along, above_z], wanted)),
        }?;
        let lengths = lengths(&line);
        let middle = lengths.last()? / 2.0;
        Some(Self {
            wanted: *wanted,
            line,
            from: -middle,
        })
    }

    /// What is true of it, moved by a pose.
    pub(crate) fn truth(&self, pose: &Isometry3<f64>) -> BareEdgeTruth {
        let half = 0.5 * self.wanted.length_mm;
        let places = self.line.iter().zip(lengths(&self.line));
        BareEdgeTruth {
            edge: self.wanted.edge,
            line: places
                .filter(|(_, gone)| (gone + self.from).abs() <= half)
                .map(|((place, _), _)| pose * place)
                .collect(),
            width_mm: self.wanted.width_mm,
            length_mm: self.wanted.length_mm,
        }
    }

    /// Cover that the strip leaves at a point, mm; grows without end away from it.
    pub(crate) fn cover(&self, p: &Point3<f64>) -> f64 {
        let (gone, off, axis, run) = self.nearest(p);
        let height = off.dot(&axis);
        let across = (off.dot(&run.cross(&axis)).abs() - 0.5 * self.wanted.width_mm).max(0.0);
        let past = (gone.abs() - 0.5 * self.wanted.length_mm).max(0.0);
        let beside = norm(across, past);
        let beyond = (-height - 0.8).max(0.0) * 4.0 + (height - DEPTH_MM).max(0.0) * 4.0;
        let rounding = (beside - EVEN_RAMP_MM / RAMP).max(0.0);
        RAMP * beside + 0.5 * rounding * rounding + beyond
    }

    /// Whether the strip can matter above a point of the plan.
    pub(crate) fn touches_column(&self, x: f64, y: f64) -> bool {
        let near = |(p, _): &(Point3<f64>, _)| norm(p.x - x, p.y - y) < 7.0;
        self.line.iter().step_by(10).any(near)
    }

    /// Arc length of the nearest place of the line from the strip's middle, the way from there
    /// to the point, the axis there and the line's direction.
    fn nearest(&self, p: &Point3<f64>) -> (f64, Vector3<f64>, Vector3<f64>, Vector3<f64>) {
        let last = self.line.len() - 2;
        let squared = |i: &usize| (self.line[*i].0 - p).norm_squared();
        let by_distance = |i: &usize, j: &usize| squared(i).total_cmp(&squared(j));
        let coarse = (0..=last).step_by(8).min_by(by_distance).unwrap_or(0);
        let near = coarse.saturating_sub(8)..=(coarse + 8).min(last);
        let at = near.min_by(by_distance).unwrap_or(coarse);
        let (a, axis) = self.line[at];
        let (b, _) = self.line[at + 1];
        let run = (b - a).normalize();
        // The places are evenly spaced to within the curve's sagitta.
        let step = (b - a).norm();
        let along = (p - a).dot(&run);
        let gone = self.from + at as f64 * step + along;
        let axis = (axis - run * axis.dot(&run)).normalize();
        (gone, p - a - run * along, axis, run)
    }
}

fn lengths(line: &[(Point3<f64>, Vector3<f64>)]) -> Vec<f64> {
    let mut gone = 0.0;
    let steps = line.windows(2).map(|w| (w[1].0 - w[0].0).norm());
    let after = steps.map(|step| {
        gone += step;
        gone
    });
    std::iter::once(0.0).chain(after).collect()
}

/// A line in even steps of arc length along a wall's top, on the side that looks up and
/// toward the trough.
fn rim(
    tray: &Tray,
    middle: f64,
    outward: f64,
    reach: f64,
    edge: &dyn Fn(f64) -> Option<Point3<f64>>,
) -> Option<Vec<(Point3<f64>, Vector3<f64>)>> {
    let across = |along: f64| {
        let at = |out: f64| tray.arch().point(ArchPlace { along, out });
        let to = at(1.0) - at(0.0);
        Vector3::new(to.x, to.y, 0.0) * outward
    };
    // Bare where the tissue comes from half way between above and the trough.
    let place = |along: f64| {
        let [a, b] = [edge(along - 0.01)?, edge(along + 0.01)?];
        let run = (b - a).normalize();
        let toward = across(along).normalize() + Vector3::z();
        let axis = (toward - run * toward.dot(&run)).normalize();
        Some((edge(along)? + axis * tray.rim_radius(), axis))
    };
    let half = (reach / STEP_MM) as i64;
    let walk = |sense: f64| -> Option<Vec<(Point3<f64>, Vector3<f64>)>> {
        let (mut along, mut line) = (middle, vec![place(middle)?]);
        for _ in 0..half {
            let here = line[line.len() - 1].0;
            // Twice corrected to the wanted step.
            let mut by = STEP_MM;
            for _ in 0..3 {
                by *= STEP_MM / (place(along + sense * by)?.0 - here).norm();
            }
            along += sense * by;
            line.push(place(along)?);
        }
        Some(line)
    };
    let mut line = walk(-1.0)?;
    line.reverse();
    line.extend(walk(1.0)?.into_iter().skip(1));
    Some(line)
}

/// A line round the hole nearest to the station, on the floor half the strip's width beside
/// the hole, its middle toward the front.
fn opening(
    tray: &Tray,
    [along, above_z]: [f64; 2],
    wanted: &BareEdge,
    reach: f64,
) -> Option<Vec<(Point3<f64>, Vector3<f64>)>> {
    let at = tray.arch().point(ArchPlace { along, out: 0.0 });
    let off = |hole: &&[f64; 2]| norm(hole[0] - at.x, hole[1] - at.y);
    let hole = (tray.holes().iter()).min_by(|a, b| off(a).total_cmp(&off(b)))?;
    let radius = tray.hole_radius() + 0.5 * wanted.width_mm;
    let reach = reach.min(0.98 * PI * radius);
    Some(on_floor(tray, above_z, reach, |gone| {
        let turn = PI / 2.0 + gone / radius;
        [hole[0] + radius * turn.cos(), hole[1] + radius * turn.sin()]
    }))
}

/// A line round the foot of the stop nearest to the station, half the strip's width beside it,
/// its middle that of the side toward the front end of the arch.
fn stop_foot(
    tray: &Tray,
    [along, above_z]: [f64; 2],
    wanted: &BareEdge,
    reach: f64,
) -> Option<Vec<(Point3<f64>, Vector3<f64>)>> {
    let at = tray.arch().point(ArchPlace { along, out: 0.0 });
    let off = |stop: &&Stop| norm(stop.foot.x - at.x, stop.foot.y - at.y);
    let stop = (tray.stops().iter()).min_by(|a, b| off(a).total_cmp(&off(b)))?;
    let beside = 0.5 * wanted.width_mm;
    // Half a side, round a corner, and back along the next side.
    let corner = 0.5 * PI * beside;
    let reach = reach.min(3.0 * STOP_HALF_MM + corner);
    let along_side = |gone: f64| {
        let far = gone.abs();
        let turn = ((far - STOP_HALF_MM) / beside).clamp(0.0, 0.5 * PI);
        let back = (far - STOP_HALF_MM - corner).max(0.0);
        let u = far.min(STOP_HALF_MM) + beside * turn.sin();
        [u.copysign(gone), STOP_HALF_MM - back + beside * turn.cos()]
    };
    let across = stop.across;
    let toward_front = if across.x < 0.0 { -1.0 } else { 1.0 };
    Some(on_floor(tray, above_z, reach, |gone| {
        let [u, v] = along_side(gone);
        let v = v * toward_front;
        [
            stop.foot.x + u * across.x - v * across.y,
            stop.foot.y + u * across.y + v * across.x,
        ]
    }))
}

/// A line across the floor, along x.
fn joint(
    tray: &Tray,
    [along, above_z]: [f64; 2],
    wanted: &BareEdge,
) -> Vec<(Point3<f64>, Vector3<f64>)> {
    /// Beyond either end of the strip, the line stays on the floor.
    const BEYOND_MM: f64 = 0.5;
    let at = tray.arch().point(ArchPlace { along, out: 0.0 });
    let reach = 0.5 * wanted.length_mm + BEYOND_MM;
    on_floor(tray, above_z, reach, |gone| [at.x + gone, at.y])
}

/// A line in even steps of its plan on the floor, from above.
fn on_floor(
    tray: &Tray,
    above_z: f64,
    reach: f64,
    plan: impl Fn(f64) -> [f64; 2],
) -> Vec<(Point3<f64>, Vector3<f64>)> {
    let half = (reach / STEP_MM) as i64;
    let place = |step: i64| {
        let [x, y] = plan(step as f64 * STEP_MM);
        let column = tray.column(x, y);
        let mut z = above_z;
        for _ in 0..60 {
            z -= tray.distance(&column, z).shell;
        }
        let p = Point3::new(x, y, z);
        (p, tray.away(&(p + Vector3::z() * 0.05)))
    };
    (-half..=half).map(place).collect()
}
