//! Why a tray scan does not fit the impression: which of the usual mistakes it
//! is, where it is one.

use super::figures::TrayNotPlaced;
use crate::anatomy;
use crate::not_an_impression::NotAnImpression;
use geometry::sampling::SurfacePoint;
use nalgebra::{Isometry3, Point3};

/// How much wider than the impression in it a tray may seem, mm: scans differ,
/// and both are measured across axes that were found.
const WIDER_MM: f64 = 2.0;
/// Where so much of a scan's back lies on a larger scan, it is a part of what
/// that one shows: the tray of an impression.
const PART_OF_IT: f64 = 0.5;

/// Trays are nearly symmetrical, so that much of one fits in the mirror, too: a
/// mirrored scan must fit better than the scan itself by this factor, and over
/// this share of its surface.
const MIRROR_MARGIN: f64 = 1.3;
const LEAST_IN_THE_MIRROR: f64 = 0.15;

/// What was measured of a tray that does not fit.
pub(super) struct Mismatch<'a> {
    /// Points of the impression's outer surface, local coordinates, mm.
    pub outer: &'a [SurfacePoint],
    /// Vertices of the tray, its own coordinates, mm.
    pub tray: &'a [Point3<f64>],
    /// Local coordinates of the tray by itself, where it has any.
    pub local_from_tray: Option<Isometry3<f64>>,
    /// Share of the outer surface that lies on the tray all the same.
    pub fitting_share: f64,
    /// What is to be said if it is none of the usual mistakes.
    pub without_cause: TrayNotPlaced,
}

/// The reason. `fitting` gives the share of an outer surface, laid on the tray
/// as well as can be, that lies on it beyond doubt.
pub(super) fn reason(
    mismatch: Mismatch<'_>,
    fitting: impl FnOnce(&[SurfacePoint]) -> f64,
) -> TrayNotPlaced {
    match other_size(&mismatch) {
        Some(TrayNotPlaced::OtherSize {
            tray_mm,
            impression_mm,
        }) if tray_mm > impression_mm && mismatch.fitting_share > PART_OF_IT => {
            return TrayNotPlaced::NotAnImpression(NotAnImpression::Exchanged);
        }
        Some(other_size) => return other_size,
        None => {}
    }
    let in_the_mirror: Vec<SurfacePoint> =
        mismatch.outer.iter().map(SurfacePoint::mirrored).collect();
    let mirrored_share = fitting(&in_the_mirror);
    if mirrored_share > LEAST_IN_THE_MIRROR.max(MIRROR_MARGIN * mismatch.fitting_share) {
        TrayNotPlaced::Mirrored
    } else {
        mismatch.without_cause
    }
}

fn other_size(mismatch: &Mismatch<'_>) -> Option<TrayNotPlaced> {
    let local_from_tray = mismatch.local_from_tray?;
    let tray_mm = width(mismatch.tray.iter().map(|p| (local_from_tray * p).x))?;
    let impression_mm = width(mismatch.outer.iter().map(|s| s.point.x))?;
    let fits = anatomy::TRAY_LEAST_WIDTH_PART * impression_mm..=impression_mm + WIDER_MM;
    (!fits.contains(&tray_mm)).then_some(TrayNotPlaced::OtherSize {
        tray_mm,
        impression_mm,
    })
}

/// Greatest less least.
fn width(places: impl Iterator<Item = f64>) -> Option<f64> {
    let (least, greatest) = places.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), x| {
        (low.min(x), high.max(x))
    });
    (greatest >= least).then_some(greatest - least)
}
