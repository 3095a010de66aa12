//! What pictures show of the trays of a shelf in a mouth.

use super::figures::{Clearance, ShelfFit, TraySuits};
use super::inside::Inside;
use super::most_even::is_over;
use crate::frame::Frame;
use crate::impression::Impression;
use crate::tray::placing::PreparedTray;
use crate::tray::shelf::ShelfTray;
use nalgebra::Point3;
use rayon::prelude::*;

/// What pictures show of a mouth and of the trays in it; all in scan coordinates.
#[derive(Debug, Clone, PartialEq)]
pub struct FitShown {
    /// The frame of the impression, or of the impression that the mouth would give.
    pub frame: Frame,
    /// The closed line of the border, or of where the scan of a mouth or a cast ends, mm.
    pub border: Vec<Point3<f64>>,
    /// Each tray, in the order of the shelf; `None` where it could not be tried in.
    pub trays: Vec<Option<TrayInMouth>>,
}

/// A tray where its clearance is most even.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayInMouth {
    /// Clearance at each vertex of the scan, mm, below 0 where the tray reaches into the
    /// tissue; `None` off the tissue and where no tray lies under it.
    pub at_vertex_mm: Vec<Option<f64>>,
    /// The closed line of the tray's edge, mm.
    pub edge: Vec<Point3<f64>>,
}

/// What pictures show of an impression with its border (scan coordinates, mm) and the trays in it.
pub(super) fn shown(
    impression: &Impression,
    border: Vec<Point3<f64>>,
    shelf: &[ShelfTray],
    fit: &ShelfFit,
) -> FitShown {
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let trays = shelf.par_iter().zip(&fit.trays);
    FitShown {
        frame: impression.frame.clone(),
        border,
        trays: trays
            .map(|(tray, suits)| match suits {
                TraySuits::Placed(found) => in_mouth(impression, &tray.scan, found, &tissue),
                TraySuits::OtherJaw | TraySuits::NotPlaced => None,
            })
            .collect(),
    }
}

fn in_mouth(
    impression: &Impression,
    tray: &PreparedTray,
    found: &Clearance,
    tissue: &[usize],
) -> Option<TrayInMouth> {
    let inside = Inside::of(tray)?;
    let (local, frame) = (&impression.local, &impression.frame);
    let tray_from_local = found.tray_from_scan * frame.local_from_scan().inverse();
    let in_tray: Vec<Point3<f64>> = (tissue.iter())
        .map(|&v| tray_from_local * local.vertices()[v])
        .collect();
    let mut at_vertex_mm = vec![None; local.vertices().len()];
    for (&v, beside) in tissue.iter().zip(inside.solid().beside(&in_tray)) {
        at_vertex_mm[v] = beside.filter(is_over).map(|beside| beside.mm);
    }
    let scan_from_tray = found.tray_from_scan.inverse();
    Some(TrayInMouth {
        at_vertex_mm,
        edge: inside.rim.iter().map(|p| scan_from_tray * p).collect(),
    })
}
