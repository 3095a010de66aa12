//! The tray scans of a case: made ready once for all uses, and the tray after relief beside
//! the tray before.

use crate::load::LoadedScan;
use judge::{Case, ImpressionInput, Stage};
use measure::{NotRelieved, PlaceRelieved, PreparedTray, Relaid, Scanned, relaid};
use nalgebra::Point3;
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// The scan of a relieved tray beside the tray's first scan.
#[derive(Debug, Clone)]
pub struct CheckedRelief {
    /// The scan.
    pub scan: Arc<LoadedScan>,
    /// What was taken off at each spot of the impression before the wash.
    pub places: Result<Vec<Option<PlaceRelieved>>, NotRelieved>,
}

/// The tray scans that are used more than once, made ready once for all uses.
pub(crate) fn shared_trays<'a>(
    case: &'a Case,
    scans: &BTreeMap<&Path, Arc<LoadedScan>>,
) -> BTreeMap<&'a Path, PreparedTray> {
    let mut used: BTreeMap<&Path, usize> = BTreeMap::new();
    for input in &case.impressions {
        // Of a tray in pieces each impression has its own.
        if let Some(tray) = input.tray_then().filter(|_| input.other_pieces.is_empty()) {
            // The parts of an impression are laid on their tray before it is measured in it.
            let parts = input.other_parts.len();
            let as_sent = usize::from(input.as_sent.is_some());
            *used.entry(tray).or_default() += 1 + parts + as_sent;
        }
        // A relieved tray and its first scan are laid on one another.
        if input.tray_relieved.is_some() {
            for tray in [&input.tray, &input.tray_relieved].into_iter().flatten() {
                *used.entry(tray).or_default() += 2;
            }
        }
    }
    used.into_par_iter()
        .filter(|(_, times)| *times > 1)
        .map(|(tray, _)| (tray, PreparedTray::of(&scans[tray].mesh)))
        .collect()
}

/// A relieved tray laid on its first scan.
pub(crate) struct Relief<'a> {
    scan: Arc<LoadedScan>,
    tray: &'a PreparedTray,
    laid: Result<Relaid, NotRelieved>,
}

impl<'a> Relief<'a> {
    /// `None` where no scan of the relieved tray was given, and of a wash without stops, which
    /// alone need it.
    pub(crate) fn of(
        input: &ImpressionInput,
        scans: &BTreeMap<&Path, Arc<LoadedScan>>,
        trays: &'a BTreeMap<&Path, PreparedTray>,
        scanner_uncertainty_mm: f64,
    ) -> Option<Self> {
        if input.stage == Stage::Wash && input.stops.is_empty() {
            return None;
        }
        let (before, after) = (input.tray.as_deref()?, input.tray_relieved.as_deref()?);
        let tray = trays.get(after)?;
        Some(Self {
            scan: Arc::clone(scans.get(after)?),
            laid: relaid(trays.get(before)?, tray, scanner_uncertainty_mm),
            tray,
        })
    }

    /// What was taken off under the impression that was taken before; `None` where the scan
    /// shows none.
    pub(crate) fn under(self, scanned: &Scanned) -> Option<CheckedRelief> {
        let measured = scanned.impression()?;
        Some(CheckedRelief {
            places: self.laid.map(|laid| laid.places(self.tray, measured)),
            scan: self.scan,
        })
    }
}

/// Tissue stops in the coordinates of the tray scan in which the impression is measured, mm.
/// They are written in the numbers of the tray's first scan; where the relieved tray cannot be
/// laid on that, they are not known.
pub(crate) fn stops(
    input: &ImpressionInput,
    scans: &BTreeMap<&Path, Arc<LoadedScan>>,
    relief: Option<&Relief<'_>>,
) -> Vec<Point3<f64>> {
    let first = input.tray.as_deref().and_then(|tray| scans.get(tray));
    let in_mm = first.map_or(1.0, |tray| tray.unit.unit().in_mm());
    let stops = input.stops.iter().map(|stop| stop * in_mm);
    match relief.filter(|_| input.stage == Stage::Wash) {
        None => stops.collect(),
        Some(relief) => {
            let laid = relief.laid.iter();
            laid.flat_map(|laid| stops.clone().map(|stop| laid.relieved_from_tray * stop))
                .collect()
        }
    }
}
