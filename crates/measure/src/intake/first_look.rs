//! A first look at a scan: what it is, not how good it is.

use super::scan_pieces::two_scans;
use crate::frame;
use crate::frame::Frame;
use crate::impression::{Impression, Surface};
use crate::not_an_impression::NotAnImpression;
use geometry::double_layers::double_layers;
use geometry::noise::noise_mm;
use geometry::winding::Turned;
use mesh::{Integrity, Mesh};
use nalgebra::Vector3;

/// What a first look at a scan shows.
#[derive(Debug, Clone, PartialEq)]
pub struct FirstLook {
    /// Sides of the box around it, along the coordinate axes, mm.
    pub size_mm: Vector3<f64>,
    /// Figures of the mesh itself (mm).
    pub integrity: Integrity,
    /// What was turned so that the scan faces outward.
    pub turned: Turned,
    /// The impression frame, or what the scan is instead.
    pub frame: Result<Frame, NotAnImpression>,
    /// Whether the outer surface was scanned too; `None` where that cannot be told.
    pub has_outer_surface: Option<bool>,
    /// Standard deviation of the scan's noise along the normal, mm.
    pub noise_mm: Option<f64>,
    /// Share of the area that has another sheet close over or under it, 0 to 1.
    pub double_layer_share: f64,
}

/// Looks at a mesh in mm, in any pose.
#[must_use]
pub fn first_look(mesh: &Mesh) -> FirstLook {
    let surface = Surface::of(mesh);
    let (found, (noise_mm, layers)) = rayon::join(
        || {
            two_scans(&surface.mesh, &surface.topology)
                .map_or_else(|| frame::find(&surface.mesh)?.of_impression(), Err)
        },
        || {
            rayon::join(
                || noise_mm(&surface.mesh),
                || double_layers(&surface.mesh, &surface.topology),
            )
        },
    );
    let impression = found.map(|found| Impression::of(&surface, found));
    FirstLook {
        size_mm: mesh
            .bounds()
            .map_or_else(Vector3::zeros, |(low, high)| high - low),
        has_outer_surface: impression
            .as_ref()
            .ok()
            .map(|impression| impression.regions.has_outer_surface()),
        frame: impression.map(|impression| impression.frame),
        integrity: surface.integrity,
        turned: surface.turned,
        noise_mm,
        double_layer_share: layers.share,
    }
}
