//! Repeated scans of one impression, laid on the first, and how far they lie
//! apart at each place.
//!
//! A distance is taken from each vertex of the first scan to the surface of
//! another along the normal. Noise of single vertices is averaged by the
//! triangles between them, so that independent noise of a standard deviation s
//! on every vertex reads as a spread between 0.7 s and s.

use geometry::Laying;
use geometry::field::{quantile, smoothed, smoothing_rounds, vertex_areas};
use geometry::patches::patches;
use geometry::registration::{Registered, Target};
use geometry::sampling::{SurfacePoint, spread_over};
use measure::{Scanned, VertexPlace};
use mesh::Mesh;
use messages::{Message, Value, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Point3, Unit};
use statistics::critical_range_factor;
use statistics::repeatability::LIMIT_FACTOR;

/// Points of a scan that are laid on the first.
const POINTS: usize = 12_000;
/// Where less of a scan lies on the first, it is of something else.
const LEAST_FITTING: f64 = 0.6;
/// Surfaces farther apart than this, mm, are not the same surface.
const REACH_MM: f64 = 2.0;
/// Rounds in which variances are averaged with their neighbours': about thirty
/// vertices count for one.
const POOLING_ROUNDS: usize = 4;
/// Smaller places are not told, mm².
const LEAST_PLACE_MM2: f64 = 1.0;

/// A scan (mm) with what was measured of it.
pub type Repeat<'a> = (&'a Mesh, &'a Scanned);

/// How far repeated scans lie apart. Places and vertices are those of the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Spread {
    /// How each of the other scans lies on the first.
    pub laid: Vec<Laid>,
    /// Standard deviation between the scans at each vertex, mm; `None` where
    /// one of them shows no surface.
    pub sd_at_vertex_mm: Vec<Option<f64>>,
    /// The same pooled with the vertices round it, mm: steadier, for a map.
    pub local_sd_at_vertex_mm: Vec<Option<f64>>,
    /// Area over which that is known, mm².
    pub area_judged_mm2: f64,
    /// Root of its mean square over the area, mm.
    pub pooled_sd_mm: f64,
    /// Its median over the area, mm.
    pub median_sd_mm: f64,
    /// Its 95th percentile, mm.
    pub p95_sd_mm: f64,
    /// Scans that lie farther apart than this, mm, after averaging over their
    /// noise, differ by more than noise and placing explain (k = 2, for their number).
    pub detectable_mm: f64,
    /// Where they do, largest first.
    pub places: Vec<ApartPlace>,
}

/// A scan laid on the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Laid {
    /// `first_from_scan * point` lies in the first scan.
    pub first_from_scan: Isometry3<f64>,
    /// Root mean square distance of what fits, mm.
    pub rms_mm: f64,
    /// Share of it that fits, 0 to 1.
    pub fitting_share: f64,
    /// Expanded uncertainty (k = 2) of its place on the first, mm.
    pub uncertainty_mm: f64,
}

/// A place where repeated scans differ.
#[derive(Debug, Clone, PartialEq)]
pub struct ApartPlace {
    /// Its centre, first scan's coordinates, mm.
    pub centre: Point3<f64>,
    /// Its area, mm².
    pub area_mm2: f64,
    /// How far the scans lie apart there at most, mm.
    pub apart_mm: f64,
    /// Number of the scan, from 0, that lies farthest from their median; `None`
    /// of two scans, of which either may be off.
    pub scan: Option<usize>,
    /// Where it lies in the arch; `None` off the tissue surface.
    pub place: Option<VertexPlace>,
}

/// Why a scan cannot be compared with the first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RepeatDoesNotFit {
    /// Share of it that fits, percent.
    pub fitting_percent: f64,
}

impl RepeatDoesNotFit {
    /// Why, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        let share = Value::number(self.fitting_percent, 0);
        message!("repeat-does-not-fit", share = share)
    }
}

said_by_the_catalogue!(RepeatDoesNotFit);

/// A scan that cannot be compared.
#[derive(Debug, Clone, PartialEq)]
pub struct NotComparable {
    /// Its number, from 0.
    pub scan: usize,
    /// Why.
    pub why: RepeatDoesNotFit,
}

/// Lays repeated scans on the first, by all that they show, and compares them.
/// They may lie in any pose and must face outward.
///
/// # Errors
/// When one does not lie on the first.
pub fn spread(scans: &[Repeat<'_>]) -> Result<Spread, NotComparable> {
    let Some((&(mesh, measured), others)) = scans.split_first() else {
        return Ok(summed_up(&Mesh::default(), Vec::new(), &[], 0.0));
    };
    let target = Target::new(mesh);
    let points = vertices(mesh);
    let (mut laid, mut apart) = (Vec::new(), Vec::new());
    for (number, &other) in others.iter().enumerate() {
        let found = placed(&target, measured, other).map_err(|why| NotComparable {
            scan: number + 1,
            why,
        })?;
        let other_from_first = found.target_from_source.inverse();
        apart.push(distances(&points, other.0, &other_from_first));
        laid.push(Laid {
            first_from_scan: found.target_from_source,
            rms_mm: found.rms_mm,
            fitting_share: found.fitting_share,
            uncertainty_mm: found.uncertainty_mm(&thinned(mesh)),
        });
    }
    let detectable_mm = detectable_mm(scans, &laid);
    let mut spread = summed_up(mesh, laid, &apart, detectable_mm);
    spread.places = places(mesh, measured, &apart, detectable_mm);
    Ok(spread)
}

/// Where another scan lies on the first.
fn placed(
    first: &Target,
    of_first: &Scanned,
    (mesh, measured): Repeat<'_>,
) -> Result<Registered, RepeatDoesNotFit> {
    let source = spread_over(mesh, POINTS, |_| true);
    let start = of_first.impression().zip(measured.impression());
    let start = start.map(|(first, other)| {
        first.frame.local_from_scan().inverse() * other.frame.local_from_scan()
    });
    Laying::by_share(LEAST_FITTING)
        .lay(&source, first, start.as_slice(), &|| {})
        .map_err(|why| RepeatDoesNotFit {
            fitting_percent: 100.0 * why.fitting_share(),
        })
}

/// The vertices of a mesh with their normals; `None` where a vertex has none.
fn vertices(mesh: &Mesh) -> Vec<Option<SurfacePoint>> {
    (mesh.vertices().iter().zip(mesh.vertex_normals()))
        .map(|(&point, normal)| {
            let normal = Unit::try_new(normal, 0.5)?;
            Some(SurfacePoint { point, normal })
        })
        .collect()
}

/// How far the surface of a scan lies above each point along its normal, mm.
fn distances(
    points: &[Option<SurfacePoint>],
    other: &Mesh,
    other_from_first: &Isometry3<f64>,
) -> Vec<Option<f64>> {
    /// Where a place lies farther aside than this beside its height, mm, the
    /// surface ends short of it.
    const ASIDE_MM: f64 = 0.1;
    let target = Target::new(other);
    let known: Vec<SurfacePoint> = points.iter().flatten().copied().collect();
    let mut found = target
        .matches(&known, other_from_first, REACH_MM)
        .into_iter();
    points
        .iter()
        .map(|point| {
            point.as_ref()?;
            let place = found.next().flatten()?;
            let above = -place.off_plane();
            (place.distance() <= 1.5 * above.abs() + ASIDE_MM).then_some(above)
        })
        .collect()
}

/// What every scan shows at a vertex, the first at 0; `None` where one is missing.
fn at_vertex(apart: &[Vec<Option<f64>>], vertex: usize) -> Option<Vec<f64>> {
    let others = apart.iter().map(|of| of[vertex]);
    std::iter::once(Some(0.0)).chain(others).collect()
}

fn summed_up(
    mesh: &Mesh,
    laid: Vec<Laid>,
    apart: &[Vec<Option<f64>>],
    detectable_mm: f64,
) -> Spread {
    let sd_at_vertex_mm: Vec<Option<f64>> = (0..mesh.vertices().len())
        .map(|v| at_vertex(apart, v).as_deref().and_then(sd))
        .collect();
    let variances: Vec<Option<f64>> = sd_at_vertex_mm
        .iter()
        .map(|sd| Some((*sd)?.powi(2)))
        .collect();
    let local_sd_at_vertex_mm = smoothed(mesh, &variances, POOLING_ROUNDS)
        .iter()
        .map(|variance| Some((*variance)?.sqrt()))
        .collect();
    let mut weighted: Vec<(f64, f64)> = (sd_at_vertex_mm.iter().zip(vertex_areas(mesh, |_| true)))
        .filter_map(|(sd, area)| Some(((*sd)?, area)))
        .collect();
    let area_judged_mm2: f64 = weighted.iter().map(|w| w.1).sum();
    let squares: f64 = weighted.iter().map(|(sd, area)| sd * sd * area).sum();
    let part = |part, weighted: &mut Vec<_>| quantile(weighted, part).unwrap_or(f64::NAN);
    Spread {
        laid,
        median_sd_mm: part(0.5, &mut weighted),
        p95_sd_mm: part(0.95, &mut weighted),
        pooled_sd_mm: (squares / area_judged_mm2).sqrt(),
        area_judged_mm2,
        sd_at_vertex_mm,
        local_sd_at_vertex_mm,
        detectable_mm,
        places: Vec::new(),
    }
}

/// Standard deviation of a sample (n - 1); `None` of fewer than two.
fn sd(values: &[f64]) -> Option<f64> {
    let count = values.len() as f64;
    let mean = values.iter().sum::<f64>() / count;
    let squares: f64 = values.iter().map(|v| (v - mean).powi(2)).sum();
    (values.len() > 1).then(|| (squares / (count - 1.0)).sqrt())
}

/// Doubt of the placing of two and the noise of both, as a difference of a wash counts,
/// the two worst of the scans; of more than two scans, the range of so many by the factors
/// of ISO 5725-6, since ten lie farther apart than two by chance alone.
fn detectable_mm(scans: &[Repeat<'_>], laid: &[Laid]) -> f64 {
    let two_worst = |values: &mut Vec<f64>| {
        values.sort_by(|a, b| b.total_cmp(a));
        values.iter().take(2).fold(0.0_f64, |sum, v| sum.hypot(*v))
    };
    let mut noise: Vec<f64> = (scans.iter())
        .map(|(_, scanned)| 2.0 * scanned.impression().and_then(|i| i.noise_mm).unwrap_or(0.0))
        .collect();
    let mut placing: Vec<f64> = laid.iter().map(|l| l.uncertainty_mm).collect();
    let of_two = two_worst(&mut noise).hypot(two_worst(&mut placing));
    let factor = |readings| critical_range_factor(readings).unwrap_or(LIMIT_FACTOR);
    of_two * factor(scans.len()) / factor(2)
}

fn places(
    mesh: &Mesh,
    measured: &Scanned,
    apart: &[Vec<Option<f64>>],
    detectable_mm: f64,
) -> Vec<ApartPlace> {
    let rounds = smoothing_rounds(measured.figures().integrity.median_edge);
    let apart: Vec<Vec<Option<f64>>> = apart
        .iter()
        .map(|values| smoothed(mesh, values, rounds))
        .collect();
    let range = |values: &[f64]| {
        let (low, high) = values
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &v| {
                (low.min(v), high.max(v))
            });
        high - low
    };
    let ranges: Vec<Option<f64>> = (0..mesh.vertices().len())
        .map(|v| at_vertex(&apart, v).as_deref().map(range))
        .collect();
    let found = patches(mesh, &ranges, detectable_mm, f64::INFINITY);
    let told = found.iter().filter(|p| p.area_mm2 >= LEAST_PLACE_MM2);
    told.filter_map(|patch| {
        let range_at = |v: &u32| ranges[*v as usize].unwrap_or(0.0);
        let worst = (patch.vertices.iter())
            .max_by(|a, b| range_at(a).total_cmp(&range_at(b)))
            .map(|v| *v as usize)?;
        Some(ApartPlace {
            centre: patch.centre,
            area_mm2: patch.area_mm2,
            apart_mm: ranges[worst]?,
            scan: farthest_from_median(&at_vertex(&apart, worst)?),
            place: (measured.impression()).and_then(|impression| *impression.places.get(worst)?),
        })
    })
    .collect()
}

/// Which of three values or more lies farthest from their median.
fn farthest_from_median(values: &[f64]) -> Option<usize> {
    if values.len() < 3 {
        return None;
    }
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let middle = (sorted[(sorted.len() - 1) / 2] + sorted[sorted.len() / 2]) / 2.0;
    let off = |k: &usize| (values[*k] - middle).abs();
    (0..values.len()).max_by(|a, b| off(a).total_cmp(&off(b)))
}

/// Some hundred vertices.
fn thinned(mesh: &Mesh) -> Vec<Point3<f64>> {
    let every = (mesh.vertices().len() / 500).max(1);
    mesh.vertices().iter().step_by(every).copied().collect()
}
