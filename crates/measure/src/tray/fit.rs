//! How the stock trays of a shelf suit a mouth, before any impression in them: for each the
//! place of most even clearance, and what room it leaves there.
//!
//! The tissue surface is that of an impression, or of the mouth or a cast turned inside out.
//! A tray is moved, rigidly, until the clearance over its inside varies least, with places
//! near the tissue weighing more the nearer they come: it does not touch if it need not.

use super::placing::{PreparedTray, facet_doubt_mm, starts};
use super::shelf::ShelfTray;
use crate::amount::Amount;
use crate::anatomy;
use crate::border::{Border, BorderPart};
use crate::frame;
use crate::impression::{Impression, Surface};
use crate::measuring::Measuring;
use crate::not_an_impression::NotAnImpression;
use crate::settings::MeasureSettings;
use crate::words::{Arch, Side, Zone};
use geometry::order::median;
use geometry::sampling::spread_over;
use geometry::signed_distance::{Beside, Solid, angle_weighted_normals};
use mesh::{Mesh, SpatialIndex, Topology};
use nalgebra::{Isometry3, Point3, SMatrix, SVector, Translation3, UnitQuaternion, Vector3};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::f64::consts::SQRT_2;

/// Points that stand for the tissue surface where a tray is measured.
const POINTS: usize = 12_000;
/// Of them, every so many are used while it is moved.
const MOVED_BY: usize = 6;
/// And every so many while a start is looked for.
const SIFTED_BY: usize = 24;
/// Steps of moving a tray at most, and of each start.
const STEPS: usize = 60;
const SIFTING_STEPS: usize = 20;
/// Places farther from the even clearance than this, mm, count less: recesses that no stock
/// tray follows.
const FAR_MM: f64 = 1.5;
/// The even clearance that is aimed at is this at least, mm: a tray could else lie evenly
/// within the tissue. Own choice, no source.
const LEAST_EVEN_MM: f64 = 1.5;
/// How much more a place counts that touches.
const TOUCHING: f64 = 20.0;
/// Clearance that a stock tray is wanted to leave, mm: the border of the tray 2 mm short of
/// the vestibule (course slides, BORDER-01), a spacer of 2 to 3 mm (MAT-06, MAT-07).
pub const WANTED_CLEARANCE_MM: std::ops::RangeInclusive<f64> = 2.0..=3.0;

/// How the trays of a shelf suit a mouth.
#[derive(Debug, Clone, PartialEq)]
pub struct ShelfFit {
    /// The jaw.
    pub arch: Arch,
    /// Whether the scan shows the mouth or a cast, and no impression.
    pub is_positive: bool,
    /// Each tray, in the order of the shelf.
    pub trays: Vec<TraySuits>,
}

/// How one tray suits.
#[derive(Debug, Clone, PartialEq)]
pub enum TraySuits {
    /// It is a tray of the other jaw.
    OtherJaw,
    /// Its scan shows no tray, or it lies nowhere over the tissue.
    NotPlaced,
    /// What room it leaves.
    Placed(Box<Clearance>),
}

/// The room between a tray and the tissue, in the place of most even clearance.
#[derive(Debug, Clone, PartialEq)]
pub struct Clearance {
    /// `tray_from_scan * point` lies in the tray's scan, mm.
    pub tray_from_scan: Isometry3<f64>,
    /// The least over the tray, but for the nearest 0.2 % of the tissue, mm; below 0 where
    /// the tray reaches into it.
    pub least_mm: Amount,
    /// Median over the tray, mm.
    pub median_mm: Amount,
    /// Half of what the middle 68 % of the clearances over the tray span, mm: how uneven it is.
    pub unevenness_mm: f64,
    /// Share of the tissue over the tray with the wanted clearance, 0 to 1.
    pub wanted_share: f64,
    /// Share of the tissue surface that lies over the tray, 0 to 1.
    pub over_tray_share: f64,
    /// Area of that, mm².
    pub over_tray_mm2: f64,
    /// Where the tray touches the tissue.
    pub touches: Vec<Touch>,
    /// How far the tray's edge ends short of the border in each part of the arch.
    pub edges: Vec<EdgeToBorder>,
}

/// Where a tray touches, in one part of the arch.
#[derive(Debug, Clone, PartialEq)]
pub struct Touch {
    /// Part of the arch.
    pub zone: Zone,
    /// The patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Greatest depth to which the tray reaches into the tissue, mm.
    pub depth_mm: f64,
    /// Area over which it does, mm².
    pub area_mm2: f64,
    /// Where it is deepest, scan coordinates, mm.
    pub at: Point3<f64>,
}

/// From the tray's edge to the border of the impression, in one part of the arch.
#[derive(Debug, Clone, PartialEq)]
pub struct EdgeToBorder {
    /// Part of the arch.
    pub zone: Zone,
    /// The patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Least, mm; below 0 where the edge reaches past the border.
    pub least_mm: f64,
    /// Median, mm.
    pub median_mm: f64,
}

/// Measures how the trays of a shelf suit a mouth. The scan (mm, any pose) shows an impression
/// of it, the mouth itself or a cast.
///
/// # Errors
/// When the scan shows nothing of these.
pub fn fit(
    scan: &Mesh,
    shelf: &[ShelfTray],
    settings: &MeasureSettings,
) -> Result<ShelfFit, NotAnImpression> {
    let as_given = Measuring::new(scan, None, settings);
    match as_given.frame() {
        Ok(_) => measured(&as_given, shelf, settings, false),
        Err(NotAnImpression::Positive | NotAnImpression::Cast) => {
            let negative = Surface::of(scan).mesh.turned_inside_out();
            measured(
                &Measuring::new(&negative, None, settings),
                shelf,
                settings,
                true,
            )
        }
        Err(why) => Err(why.clone()),
    }
}

fn measured(
    measuring: &Measuring<'_>,
    shelf: &[ShelfTray],
    settings: &MeasureSettings,
    is_positive: bool,
) -> Result<ShelfFit, NotAnImpression> {
    let found = measuring.frame().map_err(Clone::clone)?;
    if let Some(shell) = &found.shell {
        return Err(shell.clone());
    }
    let impression = measuring.impression().ok_or(NotAnImpression::NoTrough)?;
    let border = measuring.border().and_then(Result::ok);
    let noise_mm = measuring.noise_mm().unwrap_or(0.0);
    let mouth = Mouth::of(
        impression,
        border,
        noise_mm,
        settings.scanner_uncertainty_mm,
    );
    Ok(ShelfFit {
        arch: impression.frame.arch,
        is_positive,
        trays: shelf
            .par_iter()
            .map(|tray| mouth.suited(&tray.scan))
            .collect(),
    })
}

/// The tissue that trays are tried in.
struct Mouth<'a> {
    impression: &'a Impression,
    /// Places spread over the tissue surface, local coordinates.
    tissue: Vec<Point3<f64>>,
    /// Points of the border, local coordinates.
    border: Vec<BorderPlace>,
    /// Expanded uncertainty (k = 2) of a distance but for the tray's facets, mm.
    uncertainty_mm: f64,
}

struct BorderPlace {
    place: Point3<f64>,
    part: BorderPart,
    zone: Zone,
    side: Option<Side>,
}

impl<'a> Mouth<'a> {
    fn of(
        impression: &'a Impression,
        border: Option<&Border>,
        noise_mm: f64,
        scanner_uncertainty_mm: f64,
    ) -> Self {
        let is_tissue = &impression.regions.is_tissue;
        let local_from_scan = impression.frame.local_from_scan();
        let stations = border.iter().flat_map(|border| &border.stations);
        Self {
            tissue: spread_over(&impression.local, POINTS, |t| is_tissue[t])
                .iter()
                .map(|s| s.point)
                .collect(),
            border: stations
                .map(|station| BorderPlace {
                    place: local_from_scan * station.point,
                    part: station.part,
                    zone: station.zone,
                    side: station.side,
                })
                .collect(),
            uncertainty_mm: (2.0 * noise_mm)
                .hypot(SQRT_2 * scanner_uncertainty_mm)
                .hypot(2.0 * facet_doubt_mm(impression.edge_mm)),
            impression,
        }
    }

    /// How a tray suits.
    fn suited(&self, tray: &PreparedTray) -> TraySuits {
        /// Jaws found less surely than this may be either.
        const SURE: f64 = 0.3;
        let Some(inside) = Inside::of(tray) else {
            return TraySuits::NotPlaced;
        };
        let frame = &self.impression.frame;
        let sure = inside.arch_confidence.min(frame.arch_confidence) >= SURE;
        if sure && inside.arch != frame.arch {
            return TraySuits::OtherJaw;
        }
        let solid = inside.solid();
        let Some(pose) = most_even_of(&self.tissue, &solid, &starts(tray)) else {
            return TraySuits::NotPlaced;
        };
        self.clearance(&inside, &solid, &pose, tray.median_edge_mm())
            .map_or(TraySuits::NotPlaced, |found| {
                TraySuits::Placed(Box::new(found))
            })
    }

    fn clearance(
        &self,
        inside: &Inside,
        solid: &Solid<'_>,
        pose: &Isometry3<f64>,
        tray_edge_mm: f64,
    ) -> Option<Clearance> {
        /// Part of the places that the least stands over: single points stray by noise.
        const NEAREST_PART: f64 = 0.002;
        let over = over_tray(&self.tissue, solid, pose);
        let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
        mm.sort_by(f64::total_cmp);
        let at = |part: f64| mm.get((mm.len() as f64 * part) as usize).copied();
        let least = at(NEAREST_PART)?;
        let wanted = mm
            .iter()
            .filter(|mm| WANTED_CLEARANCE_MM.contains(mm))
            .count();
        let amount = |value| Amount {
            value,
            uncertainty: self
                .uncertainty_mm
                .hypot(2.0 * facet_doubt_mm(tray_edge_mm)),
        };
        Some(Clearance {
            tray_from_scan: pose * self.impression.frame.local_from_scan(),
            least_mm: amount(least),
            median_mm: amount(at(0.5)?),
            unevenness_mm: (at(0.84)? - at(0.16)?) / 2.0,
            wanted_share: wanted as f64 / over.len() as f64,
            over_tray_share: over.len() as f64 / self.tissue.len() as f64,
            over_tray_mm2: over.len() as f64 * self.each_mm2(),
            touches: self.touches(&over),
            edges: self.edges(&inside.rim, pose),
        })
    }

    /// Area that each place of the tissue stands for, mm².
    fn each_mm2(&self) -> f64 {
        self.impression.regions.tissue_mm2 / self.tissue.len().max(1) as f64
    }

    /// Where the tray reaches into the tissue, by parts of the arch.
    fn touches(&self, over: &[(Point3<f64>, Beside)]) -> Vec<Touch> {
        /// Less of it is noise, mm².
        const LEAST_MM2: f64 = 2.0;
        let zones = &self.impression.zones;
        let scan_from_local = self.impression.frame.local_from_scan().inverse();
        let mut found: BTreeMap<(Zone, Option<Side>), Touch> = BTreeMap::new();
        for (place, beside) in over.iter().filter(|(_, beside)| beside.mm < 0.0) {
            let (zone, side) = (zones.zone(place), zones.side(place));
            let touch = found.entry((zone, side)).or_insert_with(|| Touch {
                zone,
                side,
                depth_mm: 0.0,
                area_mm2: 0.0,
                at: scan_from_local * place,
            });
            touch.area_mm2 += self.each_mm2();
            if -beside.mm > touch.depth_mm {
                touch.depth_mm = -beside.mm;
                touch.at = scan_from_local * place;
            }
        }
        found
            .into_values()
            .filter(|touch| touch.area_mm2 >= LEAST_MM2)
            .collect()
    }

    /// How far the tray's edge ends short of the border, by parts of the arch.
    fn edges(&self, rim: &[Point3<f64>], pose: &Isometry3<f64>) -> Vec<EdgeToBorder> {
        let local_from_tray = pose.inverse();
        let rim: Vec<Point3<f64>> = rim.iter().map(|p| local_from_tray * p).collect();
        let mut found: BTreeMap<(Zone, Option<Side>), Vec<f64>> = BTreeMap::new();
        for border in &self.border {
            let nearest = rim.iter().min_by(|a, b| {
                let [a, b] = [a, b].map(|p| (*p - border.place).norm_squared());
                a.total_cmp(&b)
            });
            if let Some(nearest) = nearest {
                let off = border.place - nearest;
                let beyond = match border.part {
                    BorderPart::Outer | BorderPart::Lingual => off.z,
                    BorderPart::Posterior => -off.y,
                };
                let all = found.entry((border.zone, border.side)).or_default();
                all.push(off.norm().copysign(beyond));
            }
        }
        let edge = |((zone, side), mut mm): (_, Vec<f64>)| {
            Some(EdgeToBorder {
                zone,
                side,
                least_mm: mm.iter().copied().fold(f64::INFINITY, f64::min),
                median_mm: median(&mut mm)?,
            })
        };
        found.into_iter().filter_map(edge).collect()
    }
}

/// The inside of a tray, which faces the tissue, in the tray's coordinates.
struct Inside {
    arch: Arch,
    arch_confidence: f64,
    mesh: Mesh,
    topology: Topology,
    index: SpatialIndex,
    corner_normals: Vec<Vector3<f64>>,
    /// Its edge.
    rim: Vec<Point3<f64>>,
}

impl Inside {
    /// `None` where the scan shows no tray.
    fn of(tray: &PreparedTray) -> Option<Self> {
        let surface = Surface::of(tray.mesh());
        let found = frame::find(&surface.mesh).ok()?;
        let tray = Impression::of(&surface, found);
        let mesh = (surface.mesh).filtered(|t| tray.regions.is_tissue[t]);
        let topology = Topology::of(&mesh);
        let loops = topology.boundary_loops();
        let rim = loops.iter().max_by_key(|vertices| vertices.len())?;
        Some(Self {
            arch: tray.frame.arch,
            arch_confidence: tray.frame.arch_confidence,
            rim: rim.iter().map(|&v| mesh.vertices()[v as usize]).collect(),
            index: SpatialIndex::new(&mesh),
            corner_normals: angle_weighted_normals(&mesh),
            topology,
            mesh,
        })
    }

    /// What lies behind it is inside the tray, or beyond its wall: it touches.
    fn solid(&self) -> Solid<'_> {
        Solid::new(
            &self.mesh,
            &self.topology,
            &self.index,
            &self.corner_normals,
            f64::INFINITY,
        )
    }
}

/// The places of the tissue that lie over a tray, not past its edge, and how.
fn over_tray(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    tray_from_local: &Isometry3<f64>,
) -> Vec<(Point3<f64>, Beside)> {
    let moved: Vec<Point3<f64>> = tissue.iter().map(|p| tray_from_local * p).collect();
    let beside = solid.beside(&moved).into_iter().zip(tissue);
    let near = |beside: &Beside| !beside.on_open_edge && beside.mm < anatomy::GREATEST_MATERIAL_MM;
    beside
        .filter_map(|(beside, place)| Some((*place, beside.filter(near)?)))
        .collect()
}

/// Unknowns: shift, turn, and the even clearance.
const UNKNOWNS: usize = 7;

/// The pose near one of the starts in which the clearance is most even.
fn most_even_of(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    starts: &[Isometry3<f64>],
) -> Option<Isometry3<f64>> {
    let every =
        |step: usize| -> Vec<Point3<f64>> { tissue.iter().step_by(step).copied().collect() };
    let (few, more) = (every(SIFTED_BY), every(MOVED_BY));
    let sifted = starts.par_iter().filter_map(|start| {
        let pose = most_even(&few, solid, *start, SIFTING_STEPS)?;
        Some((unevenness(&few, solid, &pose)?, pose))
    });
    let best = sifted.min_by(|a, b| a.0.total_cmp(&b.0))?;
    most_even(&more, solid, best.1, STEPS)
}

/// How uneven the clearance is in a pose, mm²; places that touch, and places that do not lie
/// over the tray, count against it.
fn unevenness(tissue: &[Point3<f64>], solid: &Solid<'_>, pose: &Isometry3<f64>) -> Option<f64> {
    let over = over_tray(tissue, solid, pose);
    let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
    let usual = median(&mut mm)?.max(LEAST_EVEN_MM);
    let off = |mm: &f64| (mm - usual).powi(2).min(FAR_MM.powi(2)) + TOUCHING * mm.min(0.0).powi(2);
    let mean = mm.iter().map(off).sum::<f64>() / mm.len() as f64;
    Some(mean * (tissue.len() as f64 / over.len() as f64).powi(2))
}

/// The pose near a start in which the clearance is most even. `None` where too little of the
/// tissue lies over the tray.
fn most_even(
    tissue: &[Point3<f64>],
    solid: &Solid<'_>,
    start: Isometry3<f64>,
    steps: usize,
) -> Option<Isometry3<f64>> {
    const LEAST_PLACES: usize = 100;
    const STILL_MM: f64 = 0.002;
    /// So far a step may turn the tray, rad, and move it, mm.
    const FARTHEST: [f64; 2] = [0.03, 1.0];
    let mut pose = start;
    for _ in 0..steps {
        let over = over_tray(tissue, solid, &pose);
        if over.len() < LEAST_PLACES {
            return None;
        }
        let places: Vec<Point3<f64>> = over.iter().map(|(place, _)| pose * place).collect();
        let centre = places.iter().map(|p| p.coords).sum::<Vector3<f64>>() / places.len() as f64;
        let found = step(&over, &places, &centre)?;
        let (shift, turn) = (
            Vector3::new(found[0], found[1], found[2]),
            Vector3::new(found[3], found[4], found[5]),
        );
        let shorter = (FARTHEST[1] / shift.norm())
            .min(FARTHEST[0] / turn.norm())
            .min(1.0);
        let about = Translation3::from(centre);
        let motion = Translation3::from(shift * shorter)
            * about
            * UnitQuaternion::from_scaled_axis(turn * shorter)
            * about.inverse();
        pose = motion * pose;
        if shift.norm() < STILL_MM && turn.norm() * 30.0 < STILL_MM {
            break;
        }
    }
    Some(pose)
}

/// The motion of the tissue beside the tray that leaves the least squares of what the
/// clearance differs from an even one.
fn step(
    over: &[(Point3<f64>, Beside)],
    places: &[Point3<f64>],
    centre: &Vector3<f64>,
) -> Option<SVector<f64, UNKNOWNS>> {
    /// Keeps motions small that the clearance does not depend on.
    const DAMPING: f64 = 1e-4;
    /// Number of the even clearance among the unknowns, and what holds it to its least.
    const EVEN: usize = UNKNOWNS - 1;
    const HELD: f64 = 1e4;
    let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
    let usual = median(&mut mm)?.max(LEAST_EVEN_MM);
    let count = over.len() as f64;
    let mut normal = SMatrix::<f64, UNKNOWNS, UNKNOWNS>::identity() * DAMPING;
    let mut right = SVector::<f64, UNKNOWNS>::zeros();
    for ((_, beside), place) in over.iter().zip(places) {
        let away = beside.away.into_inner();
        let turn = (place.coords - centre).cross(&away);
        let row =
            SVector::<f64, UNKNOWNS>::from([away.x, away.y, away.z, turn.x, turn.y, turn.z, -1.0]);
        let off = beside.mm - usual;
        let weight = if off < 0.0 {
            1.0 + TOUCHING * (off / usual).powi(2)
        } else {
            (FAR_MM / off).min(1.0)
        } / count;
        normal.ger(weight, &row, &row, 1.0);
        right.axpy(-beside.mm * weight, &row, 1.0);
    }
    let found = normal.cholesky()?.solve(&right);
    if found[EVEN] >= LEAST_EVEN_MM {
        return Some(found);
    }
    normal[(EVEN, EVEN)] += HELD;
    right[EVEN] += HELD * LEAST_EVEN_MM;
    Some(normal.cholesky()?.solve(&right))
}
