//! What is left of a change once bend and size are taken off: places by themselves.
//!
//! What is missing is seen from the scan as sent, outside which nothing of it lies any
//! more; what was added from the scan as it arrived. Both are distances outside a solid, which
//! a surface nearby cannot mistake. As in M3C2 (Lague, Brodu and Leroux 2013) a distance counts
//! beyond a level of detection of its own.

use super::figures::{Damage, DamageKind};
use crate::bend::BentPose;
use crate::border::Measured;
use crate::measurement::Measurement;
use geometry::field::{neighbour_medians, smoothed, smoothing_rounds, vertex_areas};
use geometry::order::median;
use geometry::patches::{Patch, patches};
use geometry::signed_distance::{Beside, Solid, angle_weighted_normals};
use mesh::{Mesh, SpatialIndex, Topology};
use nalgebra::{Isometry3, Point3, Unit, UnitVector3, Vector3};
use rayon::prelude::*;

/// What lies deeper than this in the other scan's material is taken for outside it, mm: half
/// of the thickest flange.
const HALF_WALL_MM: f64 = 4.0;
/// Smaller places are taken for noise, mm². Own choice, no source.
const LEAST_AREA_MM2: f64 = 1.0;
/// What moved by no more than this, mm, counts as unchanged even where the scans could show
/// less: no smaller difference matters to a denture (Steinmassl et al. 2018).
const AGREES_MM: f64 = 0.1;
/// Radius of the sharpest bends that facets follow, mm: the roll of a border.
const ROLL_MM: f64 = 2.0;
/// Where so much of the greatest depth reaches the edge of the tissue surface, material is
/// missing at the border. Own choice, no source.
const PART_AT_EDGE: f64 = 0.5;

/// One of the two scans, ready to be measured from.
pub(super) struct Seen<'a> {
    mesh: &'a Mesh,
    measured: &'a Measurement,
    topology: Topology,
    index: SpatialIndex,
    normals: Vec<Vector3<f64>>,
}

/// Both scans and how the one as it arrived (local coordinates) lies on the one as sent.
pub(super) struct Changes<'a> {
    pub(super) pose: &'a BentPose,
    pub(super) sent: Seen<'a>,
    pub(super) arrived: Seen<'a>,
}

/// How much of the tissue surface did not change by itself.
pub(super) struct Left {
    /// Share of its area, 0 to 1.
    pub(super) unchanged_share: f64,
    /// Median expanded uncertainty (k = 2), mm.
    pub(super) uncertainty_mm: f64,
}

/// How far each vertex of the tissue surface lies outside the other scan, mm, with its
/// expanded uncertainty (k = 2); negative inside.
type Outside = Vec<Option<Measured>>;

impl<'a> Seen<'a> {
    pub(super) fn new(mesh: &'a Mesh, measured: &'a Measurement) -> Self {
        Self {
            topology: Topology::of(mesh),
            index: SpatialIndex::new(mesh),
            normals: angle_weighted_normals(mesh),
            mesh,
            measured,
        }
    }

    fn solid(&self) -> Solid<'_> {
        Solid::new(
            self.mesh,
            &self.topology,
            &self.index,
            &self.normals,
            HALF_WALL_MM,
        )
    }

    /// Vertices of the tissue surface with their normals.
    fn tissue(&self) -> Vec<(usize, Point3<f64>, UnitVector3<f64>)> {
        (self.mesh.vertices().iter().zip(&self.normals).enumerate())
            .filter(|(v, _)| self.measured.places[*v].is_some())
            .filter_map(|(v, (&p, &n))| Some((v, p, Unit::try_new(n, 0.0)?)))
            .collect()
    }

    /// What its noise, its facets and its scanner add, expanded uncertainty (k = 2), mm.
    fn own_mm(&self) -> f64 {
        let edge_mm = self.measured.scan.integrity.median_edge;
        (2.0 * self.measured.noise_mm.unwrap_or(0.0))
            .hypot(edge_mm * edge_mm / (8.0 * ROLL_MM))
            .hypot(self.measured.scan.scanner_uncertainty_mm)
    }

    /// Values at tissue vertices without single vertices that stand out, smoothed over the
    /// scan's noise.
    fn settled(&self, found: impl Iterator<Item = (usize, f64, f64)>) -> Outside {
        let mut raw = vec![None; self.mesh.vertices().len()];
        let mut doubts = vec![0.0; raw.len()];
        for (v, mm, uncertainty_mm) in found {
            raw[v] = Some(mm);
            doubts[v] = uncertainty_mm;
        }
        let rounds = smoothing_rounds(self.measured.scan.integrity.median_edge);
        let even = neighbour_medians(self.mesh, &raw);
        (smoothed(self.mesh, &even, rounds).into_iter().zip(doubts))
            .map(|(mm, uncertainty_mm)| {
                Some(Measured {
                    mm: mm?,
                    uncertainty_mm,
                })
            })
            .collect()
    }

    fn smoothed_again(&self, values: &Outside) -> Vec<Option<f64>> {
        let values: Vec<Option<f64>> = values.iter().map(|m| m.map(|m| m.mm)).collect();
        let rounds = smoothing_rounds(self.measured.scan.integrity.median_edge);
        smoothed(self.mesh, &values, rounds)
    }

    /// Whether a vertex lies where the tissue surface turns over into the outer surface.
    fn edge_vertices(&self) -> Vec<bool> {
        let mut is_edge = vec![false; self.mesh.vertices().len()];
        let is_tissue = |v: &u32| self.measured.places[*v as usize].is_some();
        for corners in self.mesh.triangles() {
            if !corners.iter().all(is_tissue) {
                for &v in corners {
                    is_edge[v as usize] = true;
                }
            }
        }
        is_edge
    }
}

impl Changes<'_> {
    fn uncertainty_mm(&self, local: &Point3<f64>, direction: &UnitVector3<f64>) -> f64 {
        (2.0 * self.pose.sd_along(local, direction))
            .hypot(self.sent.own_mm())
            .hypot(self.arrived.own_mm())
    }

    /// What was there when it was sent, outside the scan as it arrived.
    fn missing(&self) -> Outside {
        let tissue = self.sent.tissue();
        let local: Vec<Point3<f64>> = tissue
            .par_iter()
            .map(|(_, p, _)| self.pose.out_of_tray(p))
            .collect();
        let found = self.arrived.solid().beside(&local);
        let known: Vec<_> = (tissue.into_par_iter().zip(local).zip(found))
            .filter_map(|(((v, _, normal), p), beside)| {
                let mm = on_surface(beside)?;
                Some((v, mm, self.uncertainty_mm(&p, &normal)))
            })
            .collect();
        self.sent.settled(known.into_iter())
    }

    /// What is there as it arrived, outside the scan as sent.
    fn added(&self) -> Outside {
        let tissue = self.arrived.tissue();
        let in_sent: Vec<Point3<f64>> = tissue
            .par_iter()
            .map(|(_, p, _)| self.pose.in_tray_scan(p))
            .collect();
        let found = self.sent.solid().beside(&in_sent);
        let known: Vec<_> = (tissue.into_par_iter().zip(found))
            .filter_map(|((v, p, _), beside)| {
                let away = beside.as_ref()?.away;
                let mm = on_surface(beside)?;
                Some((v, mm, self.uncertainty_mm(&p, &away)))
            })
            .collect();
        self.arrived.settled(known.into_iter())
    }

    pub(super) fn left(&self) -> Left {
        let added = self.added();
        let areas = vertex_areas(self.arrived.mesh, |_| true);
        let tissue = |v: &usize| self.arrived.measured.places[*v].is_some();
        let area = |is: &dyn Fn(usize) -> bool| -> f64 {
            let vertices = (0..areas.len()).filter(tissue);
            vertices.filter(|&v| is(v)).map(|v| areas[v]).sum()
        };
        // The doubt of the fit is no excuse: where much differs, it grows.
        let agrees_mm = (self.sent.own_mm())
            .hypot(self.arrived.own_mm())
            .max(AGREES_MM);
        let is_unchanged = |v: usize| added[v].is_some_and(|m| m.mm.abs() <= agrees_mm);
        let mut doubts: Vec<f64> = added.iter().flatten().map(|m| m.uncertainty_mm).collect();
        Left {
            unchanged_share: area(&is_unchanged) / area(&|_| true).max(f64::MIN_POSITIVE),
            uncertainty_mm: median(&mut doubts).unwrap_or(f64::NAN),
        }
    }

    /// Places that changed by themselves, deepest first.
    pub(super) fn damage(&self, scan_from_local: &Isometry3<f64>) -> Vec<Damage> {
        let now = |p: &Point3<f64>| scan_from_local * self.pose.out_of_tray(p);
        let missing = damaged(&self.sent, &self.missing(), -1.0, now);
        let added = damaged(&self.arrived, &self.added(), 1.0, |p| scan_from_local * p);
        let mut all = [missing, added].concat();
        all.sort_by(|a, b| b.depth.mm.abs().total_cmp(&a.depth.mm.abs()));
        all
    }
}

/// A value without what smoothing took off it, as smoothing it once more shows; that is a part
/// of its uncertainty.
fn unsmoothed(value: Measured, again_mm: Option<f64>) -> Measured {
    let lost_mm = again_mm.map_or(0.0, |again_mm| value.mm - again_mm);
    Measured {
        mm: value.mm + lost_mm,
        uncertainty_mm: value.uncertainty_mm.hypot(lost_mm),
    }
}

/// How far a place lies off a surface; `None` where that ends there.
fn on_surface(beside: Option<Beside>) -> Option<f64> {
    beside
        .filter(|beside| !beside.on_open_edge)
        .map(|beside| beside.mm)
}

/// Patches that surely lie outside the other scan. The sense of their depth is given: -1
/// where material is missing.
fn damaged(
    seen: &Seen<'_>,
    outside: &Outside,
    sense: f64,
    at: impl Fn(&Point3<f64>) -> Point3<f64>,
) -> Vec<Damage> {
    let beyond: Vec<Option<f64>> = (outside.iter())
        .map(|m| m.map(|m| m.mm - m.uncertainty_mm))
        .collect();
    let is_edge = seen.edge_vertices();
    let again = seen.smoothed_again(outside);
    let depth = |v: u32| outside[v as usize].map_or(0.0, |m| m.mm);
    let of_patch = |patch: &Patch| {
        let worst = *(patch.vertices.iter()).max_by(|a, b| depth(**a).total_cmp(&depth(**b)))?;
        let at_edge = (patch.vertices.iter())
            .filter(|&&v| is_edge[v as usize])
            .map(|&v| depth(v))
            .fold(0.0, f64::max);
        let own = unsmoothed(outside[worst as usize]?, again[worst as usize]);
        let place = seen.measured.places[worst as usize]?;
        Some(Damage {
            kind: match sense < 0.0 {
                true if at_edge >= PART_AT_EDGE * own.mm => DamageKind::Torn,
                true => DamageKind::PressedIn,
                false => DamageKind::StuckOn,
            },
            at: at(&seen.mesh.vertices()[worst as usize]),
            zone: place.zone,
            side: place.side,
            depth: Measured {
                mm: sense * own.mm,
                ..own
            },
            area_mm2: patch.area_mm2,
        })
    };
    let found = patches(seen.mesh, &beyond, 0.0, f64::INFINITY);
    let large = found.iter().filter(|p| p.area_mm2 >= LEAST_AREA_MM2);
    large.filter_map(of_patch).collect()
}
