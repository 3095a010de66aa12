//! What a wash added over its first pass, and what became of the first pass's
//! bare and thin places.
//!
//! As in M3C2 (Lague, Brodu and Leroux 2013) a difference counts only beyond a
//! level of detection made of the noise of both scans and the doubt of the
//! registration. The distance itself is that to the nearest place of the first
//! pass, averaged over the scan's noise: a wash is thin beside the curvature of
//! the surface.

use crate::anatomy;
use crate::cover::{Spot, SpotKind};
use crate::measurement::Measurement;
use crate::words::{Side, Zone};
use geometry::field::{quantile, smoothed, smoothing_rounds, vertex_areas};
use geometry::registration::Registered;
use geometry::signed_distance::{Solid, angle_weighted_normals};
use mesh::{Mesh, SpatialIndex, Topology};
use messages::{Message, message, said_by_the_catalogue};
use nalgebra::{Isometry3, Point3};

/// What lies deeper than this below the first pass's surface is no wash, mm.
const DEEPEST_MM: f64 = 1.5;

/// Why a wash could not be measured over its first pass.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoWash {
    NoOuterSurface,
    NothingOver,
}

impl NoWash {
    /// What it is, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoOuterSurface => message!("no-wash-outer-surface"),
            Self::NothingOver => message!("no-wash-nothing-over"),
        }
    }
}

said_by_the_catalogue!(NoWash);

/// Thickness of a wash over the first pass.
#[derive(Debug, Clone, PartialEq)]
pub struct Wash {
    /// Thickness at each vertex of the wash's scan, mm, negative where its
    /// surface lies below the first pass's; `None` off the tissue surface.
    pub at_vertex_mm: Vec<Option<f64>>,
    /// Expanded uncertainty (k = 2) of a thickness, mm: the level of detection.
    pub uncertainty_mm: f64,
    /// Tissue surface over which thickness is known, mm².
    pub area_judged_mm2: f64,
    /// 5th percentile of the thickness by area, mm.
    pub p05_mm: f64,
    /// Median thickness, mm.
    pub median_mm: f64,
    /// 95th percentile of the thickness, mm.
    pub p95_mm: f64,
    /// Share of the area over which material was surely added, 0 to 1.
    pub added_share: f64,
    /// Share of the area over which the surface surely lies lower than before.
    pub lowered_share: f64,
    /// What became of each bare or thin place of the first pass.
    pub places: Vec<PlaceNow>,
}

/// A bare or thin place of the first pass, seen again under the wash.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceNow {
    /// Its number among the spots of the first pass.
    pub spot: usize,
    /// What it was.
    pub kind: SpotKind,
    /// Its area on the first pass, mm².
    pub area_mm2: f64,
    /// Least cover there on the first pass, mm; `None` where its colour alone showed it.
    pub was_mm: Option<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Expanded uncertainty (k = 2) of that cover, mm.
    pub was_uncertainty_mm: f64,
    /// Where it lies now, wash scan coordinates, mm.
    pub at: Point3<f64>,
    /// Least cover there now, mm; `None` where the wash was not scanned.
    pub cover_mm: Option<f64>,
    /// Expanded uncertainty (k = 2) of that cover, mm.
    pub uncertainty_mm: f64,
}

/// Measures a wash against its first pass. `laid` takes the first pass's scan
/// to the wash's (see [`super::laid()`]); both meshes are in mm.
///
/// # Errors
/// When the wash's or the first pass's outer surface was not scanned: laid on
/// one another by the tissue surface, an even wash could not be seen.
pub(super) fn measure(
    first_pass: (&Mesh, &Measurement),
    wash: (&Mesh, &Measurement),
    laid: &Registered,
) -> Result<Wash, NoWash> {
    let (first_mesh, first) = first_pass;
    let (mesh, now) = wash;
    if !(first.has_outer_surface && now.has_outer_surface) {
        return Err(NoWash::NoOuterSurface);
    }
    let tissue: Vec<usize> = (0..mesh.vertices().len())
        .filter(|&v| now.places.get(v).is_some_and(Option::is_some))
        .collect();
    let points: Vec<Point3<f64>> = tissue.iter().map(|&v| mesh.vertices()[v]).collect();
    let first_from_wash = laid.target_from_source.inverse();
    let on_first: Vec<Point3<f64>> = points.iter().map(|p| first_from_wash * p).collect();
    let topology = Topology::of(first_mesh);
    let (index, normals) = (
        SpatialIndex::new(first_mesh),
        angle_weighted_normals(first_mesh),
    );
    let before = Solid::new(first_mesh, &topology, &index, &normals, DEEPEST_MM);
    let mut raw = vec![None; mesh.vertices().len()];
    for (&v, thickness) in tissue.iter().zip(before.distances(&on_first)) {
        raw[v] = thickness;
    }
    let at_vertex_mm = smoothed(mesh, &raw, smoothing_rounds(now.scan.integrity.median_edge));
    let noise_mm = [first, now].map(|one| one.noise_mm.unwrap_or(0.0));
    let uncertainty_mm = laid
        .uncertainty_mm(&thinned(&points))
        .hypot(2.0 * noise_mm[0])
        .hypot(2.0 * noise_mm[1])
        .hypot(first.scan.scanner_uncertainty_mm)
        .hypot(now.scan.scanner_uncertainty_mm);
    let areas = vertex_areas(mesh, |_| true);
    let mut weighted: Vec<(f64, f64)> = tissue
        .iter()
        .filter_map(|&v| Some((at_vertex_mm[v]?, areas[v])))
        .collect();
    let part = |part| quantile(&mut weighted, part).unwrap_or(f64::NAN);
    let [p05_mm, median_mm, p95_mm] = [0.05, 0.5, 0.95].map(part);
    if !median_mm.is_finite() {
        return Err(NoWash::NothingOver);
    }
    let area_judged_mm2: f64 = weighted.iter().map(|w| w.1).sum();
    let share = |is: &dyn Fn(f64) -> bool| {
        let area: f64 = weighted.iter().filter(|w| is(w.0)).map(|w| w.1).sum();
        area / area_judged_mm2
    };
    let seen_again = SeenAgain {
        mesh,
        now,
        thickness_mm: &at_vertex_mm,
        uncertainty_mm,
        first_mesh,
        first_index: &index,
        first_from_wash,
    };
    let places = (first.spots.iter().enumerate())
        .filter(|(_, spot)| spot.stop.is_none() && spot.around.is_none())
        .map(|(number, spot)| seen_again.place(number, spot, laid.target_from_source * spot.centre))
        .collect();
    Ok(Wash {
        added_share: share(&|mm| mm > uncertainty_mm),
        lowered_share: share(&|mm| mm < -uncertainty_mm),
        at_vertex_mm,
        uncertainty_mm,
        area_judged_mm2,
        p05_mm,
        median_mm,
        p95_mm,
        places,
    })
}

/// The wash as it is looked through for places of the first pass.
struct SeenAgain<'a> {
    mesh: &'a Mesh,
    now: &'a Measurement,
    thickness_mm: &'a [Option<f64>],
    uncertainty_mm: f64,
    first_mesh: &'a Mesh,
    first_index: &'a SpatialIndex,
    first_from_wash: Isometry3<f64>,
}

impl SeenAgain<'_> {
    /// The wash's vertices over a patch of the first pass: those nearest to one
    /// of its triangles. Of a patch that falls between them, those beside it.
    fn over(&self, spot: &Spot, at: &Point3<f64>) -> Vec<usize> {
        let first = self.first_mesh.vertices();
        let radius_mm = (spot.vertices.iter())
            .map(|&v| (first[v as usize] - spot.centre).norm())
            .fold(0.0, f64::max);
        let within = |mm: f64| -> Vec<usize> {
            let near = |v: &usize| (self.mesh.vertices()[*v] - at).norm() <= mm;
            (0..self.mesh.vertices().len()).filter(near).collect()
        };
        let about = within(radius_mm + anatomy::WASH_BELOW_MM);
        let points: Vec<Point3<f64>> = (about.iter())
            .map(|&v| self.first_from_wash * self.mesh.vertices()[v])
            .collect();
        let is_of_patch = |triangle: u32| {
            let corners = self.first_mesh.triangles()[triangle as usize];
            (corners.iter()).any(|v| spot.vertices.binary_search(v).is_ok())
        };
        let over: Vec<usize> = (about.iter())
            .zip(
                self.first_index
                    .nearest_many(&points, anatomy::WASH_BELOW_MM),
            )
            .filter(|(_, under)| under.as_ref().is_some_and(|at| is_of_patch(at.triangle)))
            .map(|(&v, _)| v)
            .collect();
        if over.is_empty() {
            within(2.0 * self.now.scan.integrity.median_edge)
        } else {
            over
        }
    }

    /// Cover under the wash: its own, where it was measured; else what the
    /// first pass had there and what the wash added.
    fn place(&self, number: usize, spot: &Spot, at: Point3<f64>) -> PlaceNow {
        let over = self.over(spot, &at);
        let least = |values: &[Option<f64>]| {
            let seen = over.iter().filter_map(|&v| values[v]);
            seen.reduce(f64::min)
        };
        let was_uncertainty_mm = spot.min_uncertainty_mm.unwrap_or(0.0);
        let (cover_mm, uncertainty_mm) = match &self.now.cover {
            Ok(cover) => {
                let least = cover.least_of(over.iter().copied());
                (
                    least.map(|least| least.value),
                    least.map_or(cover.uncertainty_mm, |least| least.uncertainty),
                )
            }
            Err(_) => (
                least(self.thickness_mm)
                    .zip(spot.min_mm)
                    .map(|(added, was)| was + added),
                was_uncertainty_mm.hypot(self.uncertainty_mm),
            ),
        };
        PlaceNow {
            spot: number,
            kind: spot.kind,
            area_mm2: spot.area_mm2,
            was_mm: spot.min_mm,
            was_uncertainty_mm,
            zone: spot.zone,
            side: spot.side,
            at,
            cover_mm,
            uncertainty_mm,
        }
    }
}

/// Some hundred of many points.
fn thinned(points: &[Point3<f64>]) -> Vec<Point3<f64>> {
    let every = (points.len() / 500).max(1);
    points.iter().step_by(every).copied().collect()
}
