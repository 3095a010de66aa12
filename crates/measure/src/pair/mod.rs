//! Two passes of one impression in the same tray: a first pass and its wash.

mod border_change;
mod figures;
mod laid;
mod wash;

pub use border_change::changes;
pub use figures::{NoPair, PassPair};
pub use laid::{Pass, laid};
pub use wash::{NoWash, PlaceNow, Wash};

use crate::measurement::{Measurement, Scanned};
use geometry::winding;
use mesh::{Mesh, Topology};
use std::borrow::Cow;

/// Compares two scans (mm) of one impression with what was measured of each.
///
/// # Errors
/// As [`laid`], and when either shows no impression.
pub fn compare(first_pass: (&Mesh, &Scanned), wash: (&Mesh, &Scanned)) -> Result<PassPair, NoPair> {
    let later = impression(wash.1)?;
    let first = impression(first_pass.1)?;
    let (first_mesh, later_mesh) = (outward(first_pass.0, first), outward(wash.0, later));
    let laid = laid(
        Pass {
            mesh: &first_mesh,
            frame: &first.frame,
        },
        Pass {
            mesh: &later_mesh,
            frame: &later.frame,
        },
    )?;
    Ok(PassPair {
        border_changes: match (&first.border, &later.border) {
            (Ok(before), Ok(now)) => changes(before, now, &later.frame, &laid),
            _ => Vec::new(),
        },
        wash: wash::measure((&first_mesh, first), (&later_mesh, later), &laid),
    })
}

fn impression(scanned: &Scanned) -> Result<&Measurement, NoPair> {
    match scanned {
        Scanned::Impression(measurement) => Ok(measurement),
        Scanned::Else(what, _) => Err(NoPair::NotAnImpression(what.clone())),
    }
}

/// The scan (mm) as it was measured: what faced the wrong way is turned.
#[must_use]
pub fn outward<'a>(mesh: &'a Mesh, measured: &Measurement) -> Cow<'a, Mesh> {
    if measured.scan.turned == winding::Turned::default() {
        Cow::Borrowed(mesh)
    } else {
        Cow::Owned(winding::righted(mesh, &Topology::of(mesh)).0)
    }
}
