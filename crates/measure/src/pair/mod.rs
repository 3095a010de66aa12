//! Two scans of one impression in the same tray: a first pass and its wash, or the impression
//! as it was sent and as it arrived.

mod border_change;
mod figures;
mod laid;
mod transit;
mod wash;

pub use border_change::changes;
pub use figures::{NoBorderChange, NoPair, PassPair};
pub use laid::{Pass, laid};
pub use transit::{
    Damage, DamageKind, NoTransit, PlaceKind, PlaceThen, Transit, changed_in_transit,
};
pub use wash::{NoWash, PlaceNow, Wash};

use crate::measurement::{Measurement, Scanned};
use mesh::Mesh;
use nalgebra::Isometry3;

/// Compares two scans (mm) of one impression with what was measured of each.
///
/// # Errors
/// As [`laid`], and when either shows no impression.
pub fn compare(
    first_pass: (&Mesh, &Scanned),
    wash: (&Mesh, &Scanned),
    look: &(dyn Fn() + Sync),
) -> Result<PassPair, NoPair> {
    let later = impression(wash.1)?;
    let first = impression(first_pass.1)?;
    let (first_mesh, later_mesh) = (first.scan.outward(first_pass.0), later.scan.outward(wash.0));
    let laid = laid(
        Pass {
            mesh: &first_mesh,
            frame: &first.frame,
            scan_from_tray: scan_from_tray(first),
        },
        Pass {
            mesh: &later_mesh,
            frame: &later.frame,
            scan_from_tray: scan_from_tray(later),
        },
        look,
    )?;
    look();
    Ok(PassPair {
        border_changes: match (&first.border, &later.border) {
            (Ok(before), Ok(now)) => Ok(changes(before, now, &later.frame, &laid)),
            (_, Err(why)) => Err(NoBorderChange::Wash(*why)),
            (Err(why), _) => Err(NoBorderChange::FirstPass(*why)),
        },
        wash: wash::measure((&first_mesh, first), (&later_mesh, later), &laid),
    })
}

fn scan_from_tray(measured: &Measurement) -> Option<&Isometry3<f64>> {
    let registration = measured.cover.as_ref().ok()?.registration.as_ref()?;
    Some(&registration.impression_from_tray)
}

fn impression(scanned: &Scanned) -> Result<&Measurement, NoPair> {
    match scanned {
        Scanned::Impression(measurement) => Ok(measurement),
        Scanned::Else(what, _) => Err(NoPair::NotAnImpression(what.clone())),
    }
}
