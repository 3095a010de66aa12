//! What landmarks are looked for on; local coordinates unless said.

use crate::border::{Border, BorderPart};
use crate::impression::Impression;
use crate::words::{Arch, Side, Zone};
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use nalgebra::{Isometry3, Point2, Point3, Vector2};

/// The impression with its map, crest and border.
pub(super) struct Ground<'a> {
    pub arch: Arch,
    pub map: HeightMap,
    pub border: Option<&'a Border>,
    pub edge_mm: f64,
    pub noise_mm: f64,
    impression: &'a Impression,
    local_from_scan: Isometry3<f64>,
    /// Crest points, from +x over the front to -x, and how far along from the
    /// midline each lies, mm; positive over +x.
    crest: Vec<(Point3<f64>, f64)>,
    /// Share of the outer border between midline and its end, for each station.
    part_of_outer: Vec<f64>,
}

impl<'a> Ground<'a> {
    /// `belongs` says which triangles are no stray islands.
    pub(super) fn new(
        impression: &'a Impression,
        border: Option<&'a Border>,
        belongs: &[bool],
        noise_mm: f64,
    ) -> Self {
        // Through a hole the back of the impression must not be seen.
        let faces_up = |t: usize| impression.local.area_vector(t).z > 0.0;
        let kept: Vec<[u32; 3]> = (impression.local.triangles().iter().enumerate())
            .filter(|(t, _)| belongs[*t] && faces_up(*t))
            .map(|(_, corners)| *corners)
            .collect();
        Self {
            arch: impression.frame.arch,
            map: HeightMap::of(impression.local.vertices(), &kept, FINE_CELL_MM),
            edge_mm: impression.edge_mm,
            noise_mm,
            local_from_scan: impression.frame.local_from_scan(),
            crest: numbered_from_midline(impression.zones.crest_points()),
            part_of_outer: border.map(parts_of_outer).unwrap_or_default(),
            border,
            impression,
        }
    }

    /// A scan point in local coordinates.
    pub(super) fn local(&self, scan: &Point3<f64>) -> Point3<f64> {
        self.local_from_scan * scan
    }

    /// A local point in scan coordinates.
    pub(super) fn scan(&self, local: &Point3<f64>) -> Point3<f64> {
        self.local_from_scan.inverse() * local
    }

    /// The mirror image of a scan point, in scan coordinates.
    pub(super) fn mirrored(&self, scan: &Point3<f64>) -> Point3<f64> {
        let local = self.local(scan);
        self.scan(&Point3::new(-local.x, local.y, local.z))
    }

    /// The patient's side of a local point.
    pub(super) fn side(&self, local: &Point3<f64>) -> Option<Side> {
        self.impression.zones.side(local)
    }

    /// The part of the arch that a scan point lies in.
    pub(super) fn zone(&self, scan: &Point3<f64>) -> Zone {
        self.impression.zones.zone(&self.local(scan))
    }

    /// The sign of x on a side.
    pub(super) fn sign_of(&self, side: Side) -> f64 {
        let right = match self.arch {
            Arch::Maxillary => 1.0,
            Arch::Mandibular => -1.0,
        };
        match side {
            Side::Right => right,
            Side::Left => -right,
        }
    }

    /// Share of the outer border from the midline to its end, of a station there.
    pub(super) fn part_of_outer(&self, station: usize) -> f64 {
        self.part_of_outer[station]
    }

    /// The crest's place at a distance along it from the midline, and the
    /// direction away from the inside of the arch; in plan.
    pub(super) fn crest_at(&self, along: f64) -> Option<(Point2<f64>, Vector2<f64>)> {
        // The distances fall along the line.
        let next = self.crest.iter().position(|(_, s)| *s <= along)?;
        let before = next.checked_sub(1)?;
        let ((a, from), (b, to)) = (&self.crest[before], &self.crest[next]);
        let share = (from - along) / (from - to).max(f64::MIN_POSITIVE);
        let near = self.impression.zones.crest();
        let outward = near.outward(before) * (1.0 - share) + near.outward(next) * share;
        Some((
            a.xy() + (b - a).xy() * share,
            outward.try_normalize(0.0).unwrap_or(outward),
        ))
    }

    /// The crest line's points.
    pub(super) fn crest(&self) -> impl Iterator<Item = &Point3<f64>> {
        self.crest.iter().map(|(point, _)| point)
    }

    /// Length of the crest of one limb, mm.
    pub(super) fn limb_length(&self, side: Side) -> f64 {
        let limb = self.limb(side);
        limb.windows(2).map(|p| (p[1] - p[0]).xy().norm()).sum()
    }

    /// The closed border line, local coordinates; empty where there is none.
    pub(super) fn border_line(&self) -> Vec<Point3<f64>> {
        let stations = self.border.iter().flat_map(|border| &border.stations);
        stations.map(|station| self.local(&station.point)).collect()
    }

    /// Crest points of one limb, from the front to its end.
    pub(super) fn limb(&self, side: Side) -> Vec<Point3<f64>> {
        let sign = self.sign_of(side);
        let mut limb: Vec<(Point3<f64>, f64)> = (self.crest.iter())
            .filter(|(_, s)| s * sign >= 0.0)
            .copied()
            .collect();
        limb.sort_by(|a, b| a.1.abs().total_cmp(&b.1.abs()));
        limb.into_iter().map(|(p, _)| p).collect()
    }
}

/// Crest points with their distance along the line from where it crosses the
/// midline; positive before it, over +x.
fn numbered_from_midline(points: &[Point3<f64>]) -> Vec<(Point3<f64>, f64)> {
    let mut passed = 0.0;
    let mut along = Vec::with_capacity(points.len());
    for (i, point) in points.iter().enumerate() {
        if i > 0 {
            passed += (point - points[i - 1]).xy().norm();
        }
        along.push(passed);
    }
    let zero = points
        .windows(2)
        .position(|pair| pair[0].x >= 0.0 && pair[1].x < 0.0)
        .map_or(passed / 2.0, |i| {
            let (a, b) = (points[i].x, points[i + 1].x);
            along[i] + (along[i + 1] - along[i]) * a / (a - b).max(f64::MIN_POSITIVE)
        });
    points
        .iter()
        .zip(along)
        .map(|(p, s)| (*p, zero - s))
        .collect()
}

/// For each station of the outer border its share of the way from the midline
/// to the end; 0 elsewhere. The stations begin at the midline.
fn parts_of_outer(border: &Border) -> Vec<f64> {
    let is_outer = |i: &usize| border.stations[*i].part == BorderPart::Outer;
    let count = border.stations.len();
    let leaving = (0..count).take_while(is_outer).count();
    let coming = (0..count).rev().take_while(is_outer).count();
    let mut parts = vec![0.0; count];
    for (i, part) in parts.iter_mut().enumerate() {
        if i < leaving {
            *part = i as f64 / leaving as f64;
        } else if i >= count - coming {
            *part = (count - i) as f64 / coming as f64;
        }
    }
    parts
}
