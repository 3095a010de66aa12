//! Patches of the tissue surface whose colour stands out from the material's,
//! where the tray's colour is not known: it may be the tray that shows there.

use super::cluster::Cluster;
use super::figures::LEAST_SEPARATION;
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::words::{Side, Zone};
use geometry::patches::{nearest_vertex, patches};
use nalgebra::{Point3, Vector3};

/// A colour stands out where it differs from the material's by this much in CIELAB
/// (CIE 1976 difference), and by [`LEAST_SEPARATION`] standard deviations of it.
const STANDS_OUT: f64 = 15.0;
/// Tray ends in an edge no wider than this, mm: what fades over a longer way is
/// moisture, a shadow, or material rubbed thin.
const WIDEST_EDGE_MM: f64 = 1.5;

/// A patch of the tissue surface of another colour than the material's.
#[derive(Debug, Clone, PartialEq)]
pub struct Contrast {
    /// On the surface, near the patch's middle; scan coordinates, mm.
    pub centre: Point3<f64>,
    /// Area, mm².
    pub area_mm2: f64,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

/// Patches that stand out and have sharp edges, largest first. `colours` are those
/// of the tissue surface with the light taken out.
pub(super) fn contrasts(
    impression: &Impression,
    colours: &[Option<Vector3<f64>>],
    near_rim: &[bool],
    material: &Cluster,
    settings: &MeasureSettings,
) -> Vec<Contrast> {
    let mesh = &impression.local;
    let standing_out: Vec<Option<f64>> = (colours.iter().zip(near_rim))
        .map(|(colour, near_rim)| {
            let colour = colour.filter(|_| !near_rim)?;
            let difference = (colour - material.centre).norm() / STANDS_OUT;
            Some(difference.min(material.deviations(&colour) / LEAST_SEPARATION))
        })
        .collect();
    let scan_from_local = impression.frame.local_from_scan().inverse();
    patches(mesh, &standing_out, 1.0, f64::INFINITY)
        .into_iter()
        .filter(|patch| patch.area_mm2 >= settings.least_area_mm2)
        .filter(|patch| {
            let peak = (patch.vertices.iter())
                .filter_map(|&v| standing_out[v as usize])
                .fold(0.0, f64::max);
            let area_above = |part: f64| {
                patches(mesh, &standing_out, part * peak, f64::INFINITY)
                    .into_iter()
                    .filter(|other| {
                        (other.vertices.iter()).any(|v| patch.vertices.binary_search(v).is_ok())
                    })
                    .map(|other| other.area_mm2)
                    .sum::<f64>()
            };
            let radius = |area: f64| (area / std::f64::consts::PI).sqrt();
            radius(area_above(0.3)) - radius(area_above(0.7)) <= WIDEST_EDGE_MM
        })
        .map(|patch| {
            let on_surface = nearest_vertex(mesh, &patch);
            Contrast {
                centre: scan_from_local * on_surface,
                area_mm2: patch.area_mm2,
                zone: impression.zones.zone(&on_surface),
                side: impression.zones.side(&on_surface),
            }
        })
        .collect()
}
