//! Cover without a scan of the tray: the thickness of material and tray
//! together, less a stated thickness of the tray.
//!
//! The outer face of a tray of even thickness is an offset of its inner face,
//! so that the distance from a place of the tissue surface to the outer face,
//! less the thickness, is its distance to the inner face: its cover. (The
//! diameter of the largest ball between the faces is the thickness only where
//! they are parallel; in a wedge it is larger.)

use super::figures::{Cover, CoverMethod, NoCover, TrayThickness};
use crate::anatomy;
use crate::border::Border;
use crate::impression::Impression;
use crate::tray::TrayNotPlaced;
use geometry::field::{smoothed, smoothing_rounds};
use mesh::{Nearest, SpatialIndex};
use nalgebra::Point3;

/// Less of the tissue surface than this is too little to speak of cover.
const LEAST_SHARE: f64 = 0.2;
/// A line to the outer surface that leans further from its normal than this
/// (cosine) ends at an edge, as round the root of a handle.
const SQUARE: f64 = 0.9;
/// Facets and smoothing, expanded uncertainty (k = 2), mm.
const SURFACE_DOUBT_MM: f64 = 0.05;

/// Cover where the thickness of the tray was stated. The scan's noise is a standard
/// deviation, what the scanner itself adds to a length an expanded uncertainty
/// (k = 2), mm.
///
/// # Errors
/// When the outer surface was not scanned, or too little of it shows tray.
pub(crate) fn cover(
    impression: &Impression,
    border: &Border,
    tray: TrayThickness,
    [noise_mm, of_scanner_mm]: [f64; 2],
) -> Result<Cover, NoCover> {
    if !impression.regions.has_outer_surface() {
        return Err(TrayNotPlaced::NoOuterSurface.into());
    }
    let mesh = &impression.local;
    let outer = mesh.filtered(|t| !impression.regions.is_tissue[t]);
    let local_from_scan = impression.frame.local_from_scan();
    let edge: Vec<Point3<f64>> = (border.stations.iter())
        .map(|station| local_from_scan * station.point)
        .collect();
    let is_tray = |from: &Point3<f64>, to: &Nearest| {
        let off_border = |p: &Point3<f64>| {
            (p - to.point).norm_squared() > anatomy::MATERIAL_LAP_MM * anatomy::MATERIAL_LAP_MM
        };
        let inward = -outer.area_vector(to.triangle as usize).normalize();
        (from - to.point).dot(&inward) > SQUARE * to.distance && edge.iter().all(off_border)
    };
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let points: Vec<Point3<f64>> = tissue.iter().map(|&v| mesh.vertices()[v]).collect();
    let nearest = SpatialIndex::new(&outer).nearest_many(&points, f64::INFINITY);
    let mut raw = vec![None; weights.len()];
    for ((&v, point), nearest) in tissue.iter().zip(&points).zip(nearest) {
        raw[v] = nearest
            .filter(|nearest| is_tray(point, nearest))
            .map(|nearest| nearest.distance - tray.mm);
    }
    let uncertainty_mm = tray
        .uncertainty_mm
        .hypot(2.0 * std::f64::consts::SQRT_2 * noise_mm)
        .hypot(of_scanner_mm)
        .hypot(SURFACE_DOUBT_MM);
    Cover::of(
        CoverMethod::TwoSided { tray },
        smoothed(mesh, &raw, smoothing_rounds(impression.edge_mm)),
        weights,
        vec![uncertainty_mm; weights.len()],
    )
    .filter(|cover| cover.area_judged_mm2 >= LEAST_SHARE * weights.iter().sum::<f64>())
    .ok_or(NoCover::TooLittleTraySeen)
}
