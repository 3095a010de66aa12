//! One impression scanned where it was sent from and where it arrived: what changed between.
//!
//! The scan as it arrived is laid on the scan as sent by a fit that lets it bend and change its
//! size evenly, as an elastomer and its tray do, and that heeds no place by itself (see
//! [`crate::bend`]). What is then left is local.

mod figures;
mod local;
mod places;

pub use figures::{Damage, DamageKind, NoTransit, PlaceKind, PlaceThen, Transit};

use crate::amount::Amount;
use crate::bend::{BentPose, FROM_FAR_MM, Limbs, fitted};
use crate::measurement::{Measurement, Scanned};
use crate::tray::limb_bends;
use crate::words::Zone;
use geometry::Laying;
use geometry::registration::Target;
use geometry::sampling::{SurfacePoint, spread_over};
use local::{Changes, Seen};
use mesh::Mesh;
use nalgebra::{Point3, Unit, Vector3};

/// Points of the tissue surface that are laid on the scan as sent.
const POINTS: usize = 12_000;
/// Where less of it can be laid at all, the two scans show two things.
const LEAST_LAID: f64 = 0.2;
/// Where less of the tissue surface lies on the scan as sent, bend and size taken off, it is
/// of another impression: two impressions of one mouth differ by more than half a millimetre.
const LEAST_UNCHANGED: f64 = 0.8;

/// Compares the scan (mm) of an impression as it arrived with that of the same impression as
/// it was sent.
///
/// # Errors
/// When either shows no impression, or they are not of one and the same.
pub fn changed_in_transit(
    sent: (&Mesh, &Scanned),
    arrived: (&Mesh, &Scanned),
) -> Result<Transit, NoTransit> {
    let (then, now) = match (sent.1, arrived.1) {
        (_, Scanned::Else(what, _)) => {
            return Err(NoTransit::ArrivedNotAnImpression(what.clone()));
        }
        (Scanned::Else(what, _), _) => return Err(NoTransit::SentNotAnImpression(what.clone())),
        (Scanned::Impression(then), Scanned::Impression(now)) => (then, now),
    };
    if then.frame.arch != now.frame.arch {
        return Err(NoTransit::OtherJaw {
            sent: then.frame.arch,
        });
    }
    let (sent, arrived) = (then.scan.outward(sent.0), now.scan.outward(arrived.0));
    let local = arrived.moved(&now.frame.local_from_scan());
    let pose = laid((&sent, then), (&local, now))?;
    let changes = Changes {
        pose: &pose,
        sent: Seen::new(&sent, then),
        arrived: Seen::new(&local, now),
    };
    let left = changes.left();
    if left.unchanged_share < LEAST_UNCHANGED {
        return Err(NoTransit::NotThisImpression {
            fitting_percent: 100.0 * left.unchanged_share,
        });
    }
    let scan_from_local = now.frame.local_from_scan().inverse();
    Ok(Transit {
        damage: changes.damage(&scan_from_local),
        places: places::looked_for(then, now, |p| scan_from_local * pose.out_of_tray(p)),
        unchanged_share: left.unchanged_share,
        uncertainty_mm: left.uncertainty_mm,
        ..arch_wide(&pose, now, scanners_mm(then, now), &local)
    })
}

/// Where the impression as it arrived (local coordinates) lies on the scan as sent, bent and
/// of another size.
fn laid(
    (sent, then): (&Mesh, &Measurement),
    (local, now): (&Mesh, &Measurement),
) -> Result<BentPose, NoTransit> {
    let crest = crest_line(now)?;
    let is_tissue = |t: usize| {
        let corners = local.triangles()[t];
        corners.iter().all(|&v| now.places[v as usize].is_some())
    };
    let source: Vec<SurfacePoint> = spread_over(local, POINTS, is_tissue);
    let target = Target::new(sent);
    let start = then.frame.local_from_scan().inverse();
    let unfit = |share: f64| NoTransit::NotThisImpression {
        fitting_percent: 100.0 * share,
    };
    let rigid = Laying::by_share(LEAST_LAID)
        .lay(&source, &target, &[start], &|| {})
        .map_err(|why| unfit(why.fitting_share()))?;
    let limbs = Limbs::under(&crest, crest.iter().copied()).of_any_size();
    fitted(
        &source,
        &target,
        &rigid.target_from_source,
        limbs,
        &FROM_FAR_MM,
    )
    .ok_or_else(|| unfit(0.0))
}

/// The crest line in local coordinates.
fn crest_line(now: &Measurement) -> Result<Vec<Point3<f64>>, NoTransit> {
    let border = now.border.as_ref().map_err(|&why| why);
    let border = border.map_err(NoTransit::NoCrestLine)?;
    let local_from_scan = now.frame.local_from_scan();
    let points = border.crest_line.iter();
    Ok(points.map(|p| local_from_scan * p).collect())
}

/// What both scanners may add to a length, expanded uncertainty (k = 2), mm.
fn scanners_mm(then: &Measurement, now: &Measurement) -> f64 {
    then.scan
        .scanner_uncertainty_mm
        .hypot(now.scan.scanner_uncertainty_mm)
}

/// The change of the arch as a whole, without any place by itself.
fn arch_wide(pose: &BentPose, now: &Measurement, scanners_mm: f64, local: &Mesh) -> Transit {
    let zone = |p: &Point3<f64>| nearest_zone(local, now, p);
    let bends = limb_bends(pose, &now.frame, zone, scanners_mm);
    let local_from_scan = now.frame.local_from_scan();
    let ends = [&bends[0], &bends[1]].map(|limb| local_from_scan * limb.end);
    let across = Unit::try_new(ends[1] - ends[0], 0.0).unwrap_or_else(Vector3::x_axis);
    let (apart, sd) = pose.moved_apart(&ends[0], &ends[1], &across);
    let between_heels_mm = (ends[1] - ends[0]).norm();
    let (grown, grown_sd) = pose.grown();
    Transit {
        larger_percent: Amount {
            value: 100.0 * grown,
            uncertainty: 100.0 * (2.0 * grown_sd).hypot(scanners_mm / between_heels_mm.max(1.0)),
        },
        heels_apart_mm: Amount {
            value: apart,
            uncertainty: (2.0 * sd).hypot(scanners_mm),
        },
        between_heels_mm,
        bends,
        unchanged_share: 0.0,
        uncertainty_mm: 0.0,
        damage: Vec::new(),
        places: Vec::new(),
    }
}

/// The part of the arch of the tissue vertex nearest to a place, local coordinates.
fn nearest_zone(local: &Mesh, now: &Measurement, place: &Point3<f64>) -> Zone {
    let known = (local.vertices().iter().zip(&now.places)).filter_map(|(p, at)| Some((p, (*at)?)));
    known
        .min_by(|a, b| (a.0 - place).norm().total_cmp(&(b.0 - place).norm()))
        .map_or(Zone::ResidualRidge, |(_, at)| at.zone)
}
