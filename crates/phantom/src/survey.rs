//! Border, crest line and landmarks of an impression, found on its formula.

use crate::circle::fitted_radius;
use crate::design::Mark;
use crate::impression::Impression;
use crate::jaw::{Arch, Side};
use crate::mesher::Solid;
use crate::mouth::FrenumPlace;
use crate::options::FlangeSide;
use crate::place::least_at;
use crate::shaping::norm;
use crate::truth::{BorderPart, BorderPoint, Landmark};
use nalgebra::{Point3, Vector3};
use rayon::prelude::*;

/// Distance between neighbouring points of the lines, mm.
const STEP_MM: f64 = 0.5;
/// Depth below the border at which flange thickness is taken, mm.
const FLANGE_DEPTH_MM: f64 = 3.0;
/// Arc on either side of the border point that the border's circle is fitted to, mm.
const BORDER_ARC_MM: f64 = 1.5;
const TRACE_STEP_MM: f64 = 0.1;
/// The flanges' own border lines end this far before the material does, mm.
const CORNER_MM: f64 = 1.5;

impl Impression {
    /// The crest line from the patient's right to the left, in made coordinates.
    #[must_use]
    pub fn crest_line(&self) -> Vec<Point3<f64>> {
        let reach = self.tray.reach() - 6.0;
        stations(
            self.along(-1.0).signum() * reach,
            self.along(1.0).signum() * reach,
        )
        .into_par_iter()
        .filter_map(|along| self.crest(along))
        .collect()
    }

    /// The closed border, from the labial midline toward the patient's left.
    #[must_use]
    pub fn border(&self) -> Vec<BorderPoint> {
        let left = self.along(1.0).signum();
        let end = |side: f64| side * (self.mouth.reach(side) - CORNER_MM);
        let (last, first) = (end(left), end(-left));
        let flange = |which, from, to| self.flange_border(which, &stations(from, to));
        let mut line = flange(FlangeSide::Outer, 0.0, last);
        match self.mouth.kind {
            Arch::Maxillary => {
                let aside = self.end_aside(FlangeSide::Outer, last);
                line.extend(self.back_border(left * aside, -left * aside));
            }
            Arch::Mandibular => {
                let [outer, inner] =
                    [FlangeSide::Outer, FlangeSide::Lingual].map(|w| self.end_aside(w, last));
                line.extend(self.back_border(left * outer, left * inner));
                line.extend(flange(FlangeSide::Lingual, last, first));
                line.extend(self.back_border(-left * inner, -left * outer));
            }
        }
        line.extend(flange(FlangeSide::Outer, first, -left * STEP_MM));
        let mut line = self.bridged(&line);
        number_by_length(&mut line);
        line
    }

    /// The closed line with points put in where neighbours lie far apart: at
    /// the corners, where the highest point gives way to the furthest one back.
    fn bridged(&self, line: &[BorderPoint]) -> Vec<BorderPoint> {
        let mut closer = Vec::with_capacity(line.len());
        for (one, next) in line.iter().zip(line.iter().cycle().skip(1)) {
            closer.push(*one);
            let step = next.point - one.point;
            let parts = (step.norm() / (2.0 * STEP_MM)).floor();
            for i in 1..parts as usize {
                let between = one.point + step * (i as f64 / parts);
                let point = self.top(between.x, between.y);
                closer.extend(point.map(|point| self.unmeasured(point)));
            }
        }
        closer
    }

    fn unmeasured(&self, point: Point3<f64>) -> BorderPoint {
        BorderPoint {
            s: 0.0,
            part: BorderPart::Posterior,
            point,
            flange_height_mm: None,
            flange_thickness_mm: None,
            border_radius_mm: None,
            overlap_mm: self.tray.exact_distance(&point),
            scanned: true,
        }
    }

    /// The border of a flange at a station told from -1 (right) to 1 (left).
    #[must_use]
    pub fn border_at(&self, which: FlangeSide, station: f64) -> Point3<f64> {
        let along = self.along(station);
        let flange = *self.mouth.sections.at(along).flange(which);
        self.flange_top(which, along).unwrap_or_else(|| {
            let plan = self.mouth.plan(along, flange.border_out);
            Point3::new(plan.x, plan.y, flange.border_z)
        })
    }

    /// Distance from the midline at which a flange meets the back.
    fn end_aside(&self, which: FlangeSide, along: f64) -> f64 {
        let out = self.mouth.sections.at(along).flange(which).border_out;
        // Just inside the flange's own line, so that the two meet without a loop.
        self.mouth.arch.half_width() + out - out.signum()
    }

    fn flange_border(&self, which: FlangeSide, stations: &[f64]) -> Vec<BorderPoint> {
        stations
            .par_iter()
            .filter_map(|&along| self.flange_point(which, along))
            .collect()
    }

    /// The highest point of a flange in a section across the arch.
    fn flange_top(&self, which: FlangeSide, along: f64) -> Option<Point3<f64>> {
        let middle = self.mouth.sections.at(along).flange(which).border_out;
        let depth = |out: f64| self.top_at(along, out).map_or(f64::INFINITY, |p| -p.z);
        self.top_at(along, least_at(depth, middle - 1.5, middle + 1.5, 6))
    }

    fn flange_point(&self, which: FlangeSide, along: f64) -> Option<BorderPoint> {
        let point = self.flange_top(which, along)?;
        let crest = self.crest(along)?;
        let across = self.across(along);
        let below = point - Vector3::z() * FLANGE_DEPTH_MM;
        let [one, other] = [across, -across].map(|d| self.exit(&below, &d, 8.0));
        Some(BorderPoint {
            s: 0.0,
            part: if which == FlangeSide::Outer {
                BorderPart::Outer
            } else {
                BorderPart::Lingual
            },
            point,
            flange_height_mm: Some(point.z - crest.z),
            flange_thickness_mm: one.zip(other).map(|(a, b)| (a - b).norm()),
            border_radius_mm: self.border_radius(&point, &across),
            overlap_mm: self.tray.exact_distance(&point),
            scanned: true,
        })
    }

    /// Unit vector of the plan across the arch, outward.
    #[must_use]
    pub fn across(&self, along: f64) -> Vector3<f64> {
        let step = self.mouth.plan(along, 1.0) - self.mouth.plan(along, 0.0);
        Vector3::new(step.x, step.y, 0.0)
    }

    /// Radius of the least-squares circle through the section near a border point.
    fn border_radius(&self, point: &Point3<f64>, across: &Vector3<f64>) -> Option<f64> {
        let mut profile = vec![[0.0, 0.0]];
        for sense in [-1.0, 1.0] {
            let mut at = [0.0, 0.0];
            for _ in 0..(BORDER_ARC_MM / TRACE_STEP_MM).round() as usize {
                at = self.traced(point, across, at, sense * TRACE_STEP_MM);
                profile.push(at);
            }
        }
        fitted_radius(&profile)
    }

    /// The next point along the section's outline, in (across, z) from `origin`.
    fn traced(
        &self,
        origin: &Point3<f64>,
        across: &Vector3<f64>,
        from: [f64; 2],
        step: f64,
    ) -> [f64; 2] {
        const H: f64 = 1e-4;
        let value = |u: f64, w: f64| self.at(&(origin + across * u + Vector3::z() * w));
        let gradient = |u: f64, w: f64| {
            [
                value(u + H, w) - value(u - H, w),
                value(u, w + H) - value(u, w - H),
            ]
            .map(|d| d / (2.0 * H))
        };
        let [gu, gw] = gradient(from[0], from[1]);
        let size = norm(gu, gw).max(1e-9);
        let mut at = [from[0] + step * gw / size, from[1] - step * gu / size];
        for _ in 0..2 {
            let [gu, gw] = gradient(at[0], at[1]);
            let share = value(at[0], at[1]) / (gu * gu + gw * gw).max(1e-9);
            at = [at[0] - share * gu, at[1] - share * gw];
        }
        at
    }

    /// The border across the back, between two distances from the midline.
    fn back_border(&self, from: f64, to: f64) -> Vec<BorderPoint> {
        stations(from, to)
            .into_par_iter()
            .filter_map(|x| Some(self.unmeasured(self.back_point(x)?)))
            .collect()
    }

    /// In a section along the arch's midplane: the point furthest in a direction
    /// that leans back from the seating axis by 30 degrees behind a limb, where
    /// the surface turns from up to back, and by 80 behind the palate, where the
    /// posterior edge is meant; between them the lean changes smoothly.
    pub(crate) fn back_point(&self, x: f64) -> Option<Point3<f64>> {
        let behind = match self.mouth.kind {
            Arch::Maxillary => {
                let limb = self.mouth.arch.half_width();
                1.0 - crate::shaping::rise(x.abs(), limb - 13.0, limb - 4.0)
            }
            Arch::Mandibular => 0.0,
        };
        let lean = (60.0 + 20.0 * behind).to_radians();
        let direction = Vector3::new(0.0, -lean.sin(), lean.cos());
        let start = self.mouth.back(x) - 2.0;
        let found = |z: f64| self.hit(&Point3::new(x, start, z), &Vector3::y(), 8.0);
        let goal = |z: f64| found(z).map_or(f64::INFINITY, |p| -direction.dot(&p.coords));
        let (low, high) = (self.mouth.behind.lowest, self.bounds().1.z);
        found(least_at(goal, low, high, 30))
    }

    /// Landmarks in made coordinates.
    #[must_use]
    pub fn landmarks(&self, marks: &[Mark]) -> Vec<Landmark> {
        let features = &self.mouth.features;
        let side = |x: f64| Side::of(x * self.mouth.kind.right_sign());
        // A place behind the end of the material was not recorded.
        let is_within = |x: f64, y: f64| y > self.mouth.back(x);
        let mut found = Vec::new();
        let mut add = |name, side, point: Option<Point3<f64>>| {
            found.extend(point.map(|point| Landmark { name, side, point }));
        };
        let (outer, lingual): (Vec<&FrenumPlace>, Vec<_>) = features
            .frena
            .iter()
            .partition(|frenum| frenum.flange == FlangeSide::Outer);
        for frenum in outer {
            let own_side = frenum.paired.then(|| side(frenum.along));
            add(frenum.name, own_side, self.notch_bottom(frenum));
        }
        if self.mouth.kind == Arch::Maxillary {
            let within = |along: &f64| {
                let at = self.mouth.plan(*along, 0.0);
                is_within(at.x, at.y)
            };
            for along in features.posterior.into_iter().filter(within) {
                add("hamular notch", Some(side(along)), self.notch_ridge(along));
            }
            add("posterior palatal seal", None, self.back_point(0.0));
        }
        for frenum in lingual {
            add(frenum.name, None, self.notch_bottom(frenum));
        }
        for mark in marks.iter().filter(|m| is_within(m.at.x, m.at.y)) {
            add(
                mark.name,
                mark.paired.then(|| side(mark.at.x)),
                self.top(mark.at.x, mark.at.y),
            );
        }
        found
    }

    /// The lowest border point near a frenum.
    pub(crate) fn notch_bottom(&self, frenum: &FrenumPlace) -> Option<Point3<f64>> {
        let FrenumPlace {
            flange,
            along,
            reach,
            ..
        } = *frenum;
        let height = |s: f64| self.flange_top(flange, s).map_or(f64::INFINITY, |p| p.z);
        self.flange_top(flange, least_at(height, along - reach, along + reach, 12))
    }

    /// The highest point along the trough where the hamular notch closes it.
    fn notch_ridge(&self, along: f64) -> Option<Point3<f64>> {
        let out = self.mouth.sections.at(along).crest_out;
        let depth = |s: f64| self.top_at(s, out).map_or(f64::INFINITY, |p| -p.z);
        self.top_at(least_at(depth, along - 2.5, along + 2.5, 20), out)
    }
}

/// Evenly spaced values from one to the other, both included.
fn stations(from: f64, to: f64) -> Vec<f64> {
    let count = ((to - from).abs() / STEP_MM).ceil().max(1.0);
    (0..=count as usize)
        .map(|i| from + (to - from) * i as f64 / count)
        .collect()
}

/// Gives each point its share of the closed line's length.
fn number_by_length(line: &mut [BorderPoint]) {
    let mut length = 0.0;
    for i in 1..line.len() {
        length += (line[i].point - line[i - 1].point).norm();
        line[i].s = length;
    }
    if let (Some(first), Some(last)) = (line.first(), line.last()) {
        length += (first.point - last.point).norm();
    }
    for point in line {
        point.s /= length.max(1e-9);
    }
}
