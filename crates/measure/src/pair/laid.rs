//! An earlier impression laid on a later one in the same tray: a first pass on
//! its wash.

use super::figures::NoPair;
use crate::frame::Frame;
use geometry::order::median;
use geometry::registration::{
    NotRegistered, Registered, Target, brought_closer, refined, register,
};
use geometry::sampling::{SurfacePoint, spread_over};
use geometry::{Laying, NotLaid};
use mesh::Mesh;
use nalgebra::Isometry3;

/// Points of the earlier impression that are laid on the later one.
const POINTS: usize = 12_000;
/// Points that tell a mouth from its mirror image.
const FEW_POINTS: usize = 3000;
/// Where less of it fits, the two do not show one tray.
const LEAST_FITTING: f64 = 0.3;

/// A scan of an impression with its frame.
#[derive(Debug, Clone, Copy)]
pub struct Pass<'a> {
    /// The scan, mm.
    pub mesh: &'a Mesh,
    /// Its frame.
    pub frame: &'a Frame,
    /// Where the tray scan lies in it, where it was registered.
    pub scan_from_tray: Option<&'a Isometry3<f64>>,
}

impl Pass<'_> {
    /// Evenly spread points of what faces the tissue or, where it does not,
    /// away from it; the part of all surface that is so.
    fn facing(&self, toward_tissue: bool, count: usize) -> (Vec<SurfacePoint>, f64) {
        let is_chosen =
            |t: usize| (self.mesh.area_vector(t).dot(&self.frame.seating) > 0.0) == toward_tissue;
        let chosen_mm2: f64 = (0..self.mesh.triangles().len())
            .filter(|&t| is_chosen(t))
            .map(|t| self.mesh.area_vector(t).norm())
            .sum();
        let share = chosen_mm2 / self.mesh.area().max(f64::MIN_POSITIVE);
        (spread_over(self.mesh, count, is_chosen), share)
    }
}

/// Lays the earlier pass on the later one by what faces away from the tissue,
/// which a wash leaves alone; where nothing of it was scanned, by all there is.
/// Both may lie in any pose. `look` is called from time to time.
///
/// # Errors
/// When the two do not fit on one another, or only as in a mirror.
pub fn laid(
    earlier: Pass<'_>,
    later: Pass<'_>,
    look: &(dyn Fn() + Sync),
) -> Result<Registered, NoPair> {
    /// A scan of the tissue side alone has little that faces away.
    const LEAST_AWAY: f64 = 0.2;
    let target = Target::new(later.mesh);
    let (away, share) = earlier.facing(false, POINTS);
    let source = if share > LEAST_AWAY {
        away
    } else {
        spread_over(earlier.mesh, POINTS, |_| true)
    };
    let start = later.frame.local_from_scan().inverse() * earlier.frame.local_from_scan();
    let found = by_the_tray(earlier, later)
        .and_then(|known| refined(&source, &target, &known))
        .map_or_else(
            || Laying::by_share(LEAST_FITTING).lay(&source, &target, &[start], look),
            Ok,
        );
    let pose = match &found {
        Ok(found) => found.target_from_source,
        Err(NotLaid::Unfit(found)) => found.target_from_source,
        Err(NotLaid::NotRegistered(_)) => start,
    };
    let (tissue, _) = earlier.facing(true, FEW_POINTS);
    if only_in_the_mirror((&tissue, &target), &pose, earlier, later, look) {
        return Err(NoPair::Mirrored);
    }
    found.map_err(|why| match why {
        NotLaid::NotRegistered(NotRegistered::Ambiguous { spread_mm }) => {
            NoPair::Ambiguous { spread_mm }
        }
        why => NoPair::DoesNotFit {
            fitting_percent: 100.0 * why.fitting_share(),
        },
    })
}

/// The way from the earlier scan to the later one by the tray, where that was
/// registered in both.
fn by_the_tray(earlier: Pass<'_>, later: Pass<'_>) -> Option<Isometry3<f64>> {
    Some(later.scan_from_tray? * earlier.scan_from_tray?.inverse())
}

/// Whether the tissue surface of the earlier pass lies on the later one only
/// once it is mirrored: trays are nearly symmetric, mouths are not. A scan alone
/// cannot show it, since its mirror image is the impression of another mouth.
fn only_in_the_mirror(
    (tissue, target): (&[SurfacePoint], &Target),
    pose: &Isometry3<f64>,
    earlier: Pass<'_>,
    later: Pass<'_>,
    look: &(dyn Fn() + Sync),
) -> bool {
    /// Surfaces of one mouth nearer than this over their half, mm, are not
    /// looked into: a mouth so symmetric is its own mirror image.
    const NOTABLE_MM: f64 = 0.06;
    /// How much nearer the mirror image must lie. A wash moves the surface, but
    /// no nearer to its mirror image.
    const SHARE: f64 = 0.5;
    if apart_mm(tissue, target, pose) <= NOTABLE_MM {
        return false;
    }
    let local_from_earlier = earlier.frame.local_from_scan();
    let mirrored: Vec<SurfacePoint> = tissue
        .iter()
        .map(|point| point.moved(&local_from_earlier).mirrored())
        .collect();
    let mirrored_start = later.frame.local_from_scan().inverse();
    // Brought closer on few points, both lie nearly where they would in the end:
    // where the mirror image is the farther one, it cannot come half as near.
    let roughly = |points: &[SurfacePoint], start: &Isometry3<f64>| {
        brought_closer(points, target, start)
            .map_or(f64::INFINITY, |pose| apart_mm(points, target, &pose))
    };
    if roughly(&mirrored, &mirrored_start) > roughly(tissue, pose) {
        return false;
    }
    let nearest = |points: &[SurfacePoint], start: Isometry3<f64>| {
        register(points, target, &[start], look).map_or(f64::INFINITY, |found| {
            apart_mm(points, target, &found.target_from_source)
        })
    };
    let as_it_is = nearest(tissue, *pose);
    let in_the_mirror = nearest(&mirrored, mirrored_start);
    in_the_mirror < SHARE * as_it_is
}

/// Median distance of points, laid in a pose, from the target, mm; none of
/// them counts as farther than 5 mm.
fn apart_mm(points: &[SurfacePoint], target: &Target, pose: &Isometry3<f64>) -> f64 {
    const FARTHEST_MM: f64 = 5.0;
    let mut distances: Vec<f64> = target
        .matches(points, pose, FARTHEST_MM)
        .iter()
        .map(|found| found.as_ref().map_or(FARTHEST_MM, |m| m.distance()))
        .collect();
    median(&mut distances).unwrap_or(0.0)
}
