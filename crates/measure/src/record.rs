//! The relation of the jaws: both impressions laid in the scan of the record,
//! in which they stand with their tissue surfaces facing away from each other,
//! and the space between their crest lines.
//!
//! A scan shows where the jaws were held, not whether that is centric relation.

use crate::anatomy;
use crate::border::NoBorder;
use crate::frame::Frame;
use crate::not_an_impression::NotAnImpression;
use crate::words::{Arch, Side};
use geometry::registration::{self, NotRegistered, Registered, Target};
use geometry::sampling::{SurfacePoint, spread_over};
use geometry::{Laying, NotLaid};
use mesh::{Mesh, SpatialIndex};
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Point3, Translation3, UnitQuaternion, UnitVector3, Vector3};
use std::collections::HashSet;
use std::f64::consts::PI;

/// Points of an impression that are laid on the record.
const POINTS: usize = 12_000;
/// Points that tell whether it lies there at all.
const FEW_POINTS: usize = 3000;
/// Where so much of an impression's tissue side lies on the record, it is in it: of
/// another mouth's up to 0.4 fits, of its own nearly all.
const ENOUGH_FITTING: f64 = 0.5;
/// A record may show the front part of each jaw alone: less of an impression than this
/// does not settle where it lies.
const LEAST_FITTING: f64 = 0.15;
/// Of what the record shows of an impression so much fits where it is the same one.
const LEAST_OF_SHOWN: f64 = 0.75;
/// A record shows the surface that lies within this of its scan, mm.
const SHOWN_WITHIN_MM: f64 = 1.5;
/// What the crest lines themselves are off, mm (k = 2): on phantoms 95 % lie
/// within 0.22 mm, mostly across, where the trough's floor is level.
const CREST_DOUBT_MM: f64 = 0.1;
/// What the seating axes themselves are off, degrees (k = 2): on phantoms 1.1 at most.
const AXIS_DOUBT_DEG: f64 = 1.1;

/// Why the jaws could not be related.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoRelation {
    NotInRecord { arch: Arch, fitting_percent: f64 },
    Ambiguous { arch: Arch, spread_mm: f64 },
    JawMissing { arch: Arch },
    JawsNotOpposed,
    NotAnImpression(NotAnImpression),
    NoBorder(NoBorder),
}

impl NoRelation {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NotInRecord {
                arch,
                fitting_percent,
            } => message!(
                "no-relation-not-in-record",
                arch = arch.name(),
                share = Value::number(*fitting_percent, 0)
            ),
            Self::Ambiguous { arch, spread_mm } => message!(
                "no-relation-ambiguous",
                arch = arch.name(),
                spread = Value::number(*spread_mm, 1)
            ),
            Self::JawMissing { arch } => message!("no-relation-jaw-missing", arch = arch.name()),
            Self::JawsNotOpposed => message!("no-relation-not-opposed"),
            Self::NotAnImpression(what) => message!("reason-not-an-impression", what = what),
            Self::NoBorder(why) => why.message(),
        }
    }
}

said_by_the_catalogue!(NoRelation);

impl From<NoBorder> for NoRelation {
    fn from(reason: NoBorder) -> Self {
        Self::NoBorder(reason)
    }
}

/// One jaw of the relation.
#[derive(Debug, Clone, Copy)]
pub struct Jaw<'a> {
    /// The impression's scan, mm.
    pub mesh: &'a Mesh,
    /// Its frame.
    pub frame: &'a Frame,
    /// Its crest line, scan coordinates, mm.
    pub crest_line: &'a [Point3<f64>],
    /// What the scanner itself may add to a length, expanded uncertainty (k = 2), mm.
    pub scanner_uncertainty_mm: f64,
}

/// The space between the jaws.
#[derive(Debug, Clone, PartialEq)]
pub struct JawRelation {
    /// `record_from_maxilla * point` lies in the record scan.
    pub record_from_maxilla: Isometry3<f64>,
    /// `record_from_mandible * point` lies in the record scan.
    pub record_from_mandible: Isometry3<f64>,
    /// Stations along the upper crest line, from the patient's right end to the left.
    pub stations: Vec<Space>,
    /// Expanded uncertainty (k = 2) of a space, mm.
    pub uncertainty_mm: f64,
    /// Angle between the planes of the two crest lines, degrees.
    pub ridge_angle_deg: f64,
    /// Expanded uncertainty (k = 2) of that angle, degrees.
    pub ridge_angle_uncertainty_deg: f64,
}

/// The space between the crest lines at one place.
#[derive(Debug, Clone, PartialEq)]
pub struct Space {
    /// On the upper crest line, record scan coordinates, mm.
    pub at: Point3<f64>,
    /// Along the upper crest line from its foremost point, mm.
    pub from_front_mm: f64,
    /// The patient's side; `None` within 1 mm of the foremost point.
    pub side: Option<Side>,
    /// Distance along the common seating axis to the lower crest line where it
    /// is nearest in plan, mm.
    pub mm: Result<f64, NoSpace>,
}

/// Why no space was measured at a station.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoSpace {
    /// The lower crest line does not reach under it.
    NotOpposed,
    /// The scan of the record shows one of the two crests no longer: it may hold the
    /// front parts alone.
    NotShown,
}

impl NoSpace {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NotOpposed => message!("no-space-not-opposed"),
            Self::NotShown => message!("no-space-not-shown"),
        }
    }
}

said_by_the_catalogue!(NoSpace);

impl JawRelation {
    /// How many stations the record does not show.
    #[must_use]
    pub fn not_shown(&self) -> usize {
        let unseen = |station: &&Space| station.mm == Err(NoSpace::NotShown);
        self.stations.iter().filter(unseen).count()
    }
}

/// Lays both impressions in the record and measures the space between them.
/// All meshes are in mm, in any pose.
///
/// # Errors
/// When an impression does not lie on the record, or the two stand in it as no
/// jaws do: side by side, or with right and left exchanged.
pub fn measure(
    maxilla: Jaw<'_>,
    mandible: Jaw<'_>,
    record: &Mesh,
    look: &(dyn Fn() + Sync),
) -> Result<JawRelation, NoRelation> {
    /// Cosines between seating axes and between the patient's right of the two.
    const OPPOSED: f64 = -0.8;
    const ALIKE: f64 = 0.8;
    let target = Target::new(record);
    let (upper, lower) = rayon::join(
        || laid(maxilla, &target, Arch::Maxillary, look),
        || laid(mandible, &target, Arch::Mandibular, look),
    );
    let (upper, lower) = (upper?, lower?);
    let (up, down) = (
        upper.target_from_source * maxilla.frame.seating,
        lower.target_from_source * mandible.frame.seating,
    );
    let rights = [(&upper, maxilla), (&lower, mandible)]
        .map(|(laid, jaw)| laid.target_from_source * jaw.frame.right);
    let crest = |laid: &Registered, jaw: Jaw<'_>| -> Vec<Point3<f64>> {
        on_surface(jaw)
            .iter()
            .map(|p| laid.target_from_source * p)
            .collect()
    };
    let (above, below) = (crest(&upper, maxilla), crest(&lower, mandible));
    if up.dot(&down) > OPPOSED || rights[0].dot(&rights[1]) < ALIKE {
        return Err(NoRelation::JawsNotOpposed);
    }
    let axis = UnitVector3::new_normalize(up - down);
    let [above, below] = [above, below].map(|line| Crest::of(line, &target));
    let stations = spaces(&above, &below, &axis, &rights[0]);
    if stations.iter().all(|station| station.mm.is_err()) {
        return Err(NoRelation::JawsNotOpposed);
    }
    Ok(JawRelation {
        record_from_maxilla: upper.target_from_source,
        record_from_mandible: lower.target_from_source,
        stations,
        uncertainty_mm: upper
            .uncertainty_mm(&above.seen())
            .hypot(lower.uncertainty_mm(&below.seen()))
            .hypot(2f64.sqrt() * CREST_DOUBT_MM)
            .hypot(of_scanners_mm(maxilla, mandible)),
        ridge_angle_deg: up.angle(&-down).to_degrees(),
        ridge_angle_uncertainty_deg: 2f64.sqrt() * AXIS_DOUBT_DEG,
    })
}

/// What the scanner adds to a space, mm (k = 2): each impression is one scan, and
/// the record, by the scanner of theirs that errs more, is a third.
fn of_scanners_mm(maxilla: Jaw<'_>, mandible: Jaw<'_>) -> f64 {
    let [upper, lower] = [maxilla, mandible].map(|jaw| jaw.scanner_uncertainty_mm);
    upper.hypot(lower).hypot(upper.max(lower))
}

/// The crest line, which is smooth, put back on the surface: at the pads it
/// rises faster than a smooth line.
fn on_surface(jaw: Jaw<'_>) -> Vec<Point3<f64>> {
    const REACH_MM: f64 = 1.0;
    let near = near_to(jaw.mesh, jaw.crest_line, REACH_MM);
    let found = SpatialIndex::new(&near).nearest_many(jaw.crest_line, REACH_MM);
    (jaw.crest_line.iter().zip(found))
        .map(|(p, nearest)| nearest.map_or(*p, |nearest| nearest.point))
        .collect()
}

/// The part of a mesh that holds all of it within `reach_mm` of some places.
fn near_to(mesh: &Mesh, places: &[Point3<f64>], reach_mm: f64) -> Mesh {
    type Cell = [i64; 3];
    let edges = (0..mesh.triangles().len()).map(|t| {
        let [a, b, c] = mesh.corners(t);
        let squares = [b - a, c - b, a - c].map(|edge| edge.norm_squared());
        squares.into_iter().fold(0.0, f64::max)
    });
    // A triangle that comes so near has its corners in the cell of a place or beside it.
    let cell_mm = reach_mm + edges.fold(0.0, f64::max).sqrt();
    let cell = |p: &Point3<f64>| <[f64; 3]>::from(p.coords).map(|c| (c / cell_mm).floor() as i64);
    let beside = |[x, y, z]: Cell| {
        (0..27_i64).map(move |k| [x + k % 3 - 1, y + k / 3 % 3 - 1, z + k / 9 - 1])
    };
    let cells: HashSet<Cell> = places.iter().flat_map(|p| beside(cell(p))).collect();
    let is_near: Vec<bool> = (mesh.vertices().iter())
        .map(|p| cells.contains(&cell(p)))
        .collect();
    mesh.filtered(|t| mesh.triangles()[t].iter().any(|&v| is_near[v as usize]))
}

/// A crest line in the coordinates of the record.
struct Crest {
    points: Vec<Point3<f64>>,
    /// Whether the record shows the surface at each of them.
    shown: Vec<bool>,
}

impl Crest {
    fn of(points: Vec<Point3<f64>>, record: &Target) -> Self {
        let nearest = record.index().nearest_many(&points, SHOWN_WITHIN_MM);
        Self {
            shown: nearest.iter().map(Option::is_some).collect(),
            points,
        }
    }

    fn seen(&self) -> Vec<Point3<f64>> {
        let shown = self.points.iter().zip(&self.shown);
        shown
            .filter(|(_, shown)| **shown)
            .map(|(p, _)| *p)
            .collect()
    }
}

/// Whether an impression lies in what may be the scan of a record, by its tissue side
/// alone. Both meshes are in mm, in any pose. What may be a record looks like an
/// impression of one jaw, whose frame is given: an impression of the same jaw is
/// looked for there, one of the other jaw opposite it, and neither anywhere else.
#[must_use]
pub fn lies_in((mesh, frame): (&Mesh, &Frame), (record, seen): (&Mesh, &Frame)) -> bool {
    let source = facing_tissue(mesh, frame, FEW_POINTS);
    let starts: Vec<Isometry3<f64>> = if frame.arch == seen.arch {
        vec![Isometry3::identity()]
    } else {
        opposite().collect()
    };
    let record_from_seen = seen.local_from_scan().inverse();
    let starts: Vec<Isometry3<f64>> = (starts.iter())
        .map(|start| record_from_seen * start * frame.local_from_scan())
        .collect();
    registration::register(&source, &Target::new(record), &starts, &|| {})
        .is_ok_and(|found| found.fitting_share >= ENOUGH_FITTING)
}

/// Where the other jaw may lie, from its local coordinates to those of this one:
/// turned over about the anterior axis, so far away as jaws and trays are.
fn opposite() -> impl Iterator<Item = Isometry3<f64>> {
    const APART_MM: [f64; 5] = [12.0, 20.0, 28.0, 38.0, 50.0];
    const FORWARD_MM: [f64; 3] = [-8.0, 0.0, 8.0];
    let turned = UnitQuaternion::from_axis_angle(&Vector3::y_axis(), PI);
    APART_MM.into_iter().flat_map(move |apart| {
        FORWARD_MM.into_iter().map(move |forward| {
            Isometry3::from_parts(Translation3::new(0.0, forward, -apart), turned)
        })
    })
}

fn facing_tissue(mesh: &Mesh, frame: &Frame, count: usize) -> Vec<SurfacePoint> {
    // What faces away from the tissue is hidden by the other half.
    spread_over(mesh, count, |t| {
        mesh.area_vector(t).dot(&frame.seating) > 0.0
    })
}

fn laid(
    jaw: Jaw<'_>,
    record: &Target,
    arch: Arch,
    look: &(dyn Fn() + Sync),
) -> Result<Registered, NoRelation> {
    let source = facing_tissue(jaw.mesh, jaw.frame, POINTS);
    let not_there = |fitting_share: f64| NoRelation::NotInRecord {
        arch,
        fitting_percent: 100.0 * fitting_share,
    };
    let found = Laying::by_share(LEAST_FITTING)
        .lay(&source, record, &[], look)
        .map_err(|why| match why {
            NotLaid::NotRegistered(NotRegistered::Ambiguous { spread_mm }) => {
                NoRelation::Ambiguous { arch, spread_mm }
            }
            _ => not_there(why.fitting_share()),
        })?;
    let is_there = found.fitting_share >= ENOUGH_FITTING
        || found.fitting_share >= LEAST_OF_SHOWN * shown_share(&source, record, &found);
    is_there
        .then_some(found.clone())
        .ok_or_else(|| not_there(found.fitting_share))
}

/// Share of an impression's points near which the record has any surface.
fn shown_share(source: &[SurfacePoint], record: &Target, found: &Registered) -> f64 {
    let moved: Vec<Point3<f64>> = (source.iter())
        .map(|s| found.target_from_source * s.point)
        .collect();
    let near = record.index().nearest_many(&moved, SHOWN_WITHIN_MM);
    near.iter().flatten().count() as f64 / source.len().max(1) as f64
}

/// The space at each point of the upper crest line.
fn spaces(
    upper: &Crest,
    lower: &Crest,
    axis: &UnitVector3<f64>,
    right: &Vector3<f64>,
) -> Vec<Space> {
    let above = &upper.points;
    let front = axis.cross(right);
    // Whichever way `front` points, the foremost point lies farthest from the ends.
    let (Some(first), Some(last)) = (above.first(), above.last()) else {
        return Vec::new();
    };
    let chord = Point3::from((first.coords + last.coords) / 2.0);
    let foremost = (0..above.len())
        .max_by(|&a, &b| {
            let off = |i: usize| front.dot(&(above[i] - chord)).abs();
            off(a).total_cmp(&off(b))
        })
        .unwrap_or(0);
    let mut lengths = vec![0.0; above.len()];
    for i in 1..above.len() {
        lengths[i] = lengths[i - 1] + (above[i] - above[i - 1]).norm();
    }
    let starts_right = right.dot(&(first - chord)) > 0.0;
    let mut stations: Vec<Space> = (above.iter().zip(&lengths).zip(&upper.shown))
        .map(|((at, length), &shown)| {
            let from_front_mm = (length - lengths[foremost]).abs();
            let is_right = (*length < lengths[foremost]) == starts_right;
            Space {
                at: *at,
                from_front_mm,
                side: (from_front_mm > anatomy::NO_SIDE_WITHIN_MM).then_some(if is_right {
                    Side::Right
                } else {
                    Side::Left
                }),
                mm: if shown {
                    space_mm(at, lower, axis)
                } else {
                    Err(NoSpace::NotShown)
                },
            }
        })
        .collect();
    if !starts_right {
        stations.reverse();
    }
    stations
}

/// Distance along the axis to the line below where it is nearest across.
fn space_mm(at: &Point3<f64>, lower: &Crest, axis: &UnitVector3<f64>) -> Result<f64, NoSpace> {
    let across = |v: Vector3<f64>| v - axis.into_inner() * axis.dot(&v);
    /// So far past the end of a crest line it still counts as under it, mm.
    const PAST_MM: f64 = 1.0;
    struct Under {
        off: f64,
        past_mm: f64,
        mm: f64,
        shown: bool,
    }
    let mut best: Option<Under> = None;
    for (ends, shown) in lower.points.windows(2).zip(lower.shown.windows(2)) {
        let (start, along) = (across(at - ends[0]), across(ends[1] - ends[0]));
        let length = along.norm().max(f64::MIN_POSITIVE);
        let reached = start.dot(&along) / length;
        let share = (reached / length).clamp(0.0, 1.0);
        let off = (start - along * share).norm();
        if best.as_ref().is_none_or(|least| off < least.off) {
            let place = ends[0] + (ends[1] - ends[0]) * share;
            best = Some(Under {
                off,
                past_mm: (-reached).max(reached - length),
                mm: axis.dot(&(at - place)),
                shown: shown[0] && shown[1],
            });
        }
    }
    let is_opposed =
        |under: &Under| under.off <= anatomy::RIDGES_OPPOSED_WITHIN_MM && under.past_mm <= PAST_MM;
    match best.filter(is_opposed) {
        None => Err(NoSpace::NotOpposed),
        Some(under) if !under.shown => Err(NoSpace::NotShown),
        Some(under) => Ok(under.mm),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_part_near_to_places_holds_their_nearest_places() {
        let vertices = (0..1600_u32)
            .map(|k| (f64::from(k % 40), f64::from(k / 40)))
            .map(|(x, y)| Point3::new(x, y, (x / 3.0).sin() + (y / 4.0).cos()))
            .collect();
        let squares = (0..39_u32).flat_map(|j| (0..39).map(move |i| 40 * j + i));
        let triangles = squares.flat_map(|a| [[a, a + 1, a + 41], [a, a + 41, a + 40]]);
        let sheet = Mesh::new(vertices, triangles.collect(), None).expect("indices are in range");
        let line: Vec<Point3<f64>> = (0..60)
            .map(|k| Point3::new(12.0, 4.0 + 0.5 * f64::from(k), 0.5))
            .collect();
        let near = near_to(&sheet, &line, 1.0);
        assert!(near.triangles().len() < sheet.triangles().len() / 2);
        let [of_all, of_part] =
            [&sheet, &near].map(|mesh| SpatialIndex::new(mesh).nearest_many(&line, 1.0));
        assert!(of_all.iter().any(Option::is_some));
        for (all, part) in of_all.iter().zip(&of_part) {
            assert_eq!(all.is_some(), part.is_some());
            if let (Some(all), Some(part)) = (all, part) {
                assert!((all.distance - part.distance).abs() < 1e-9);
            }
        }
    }
}
