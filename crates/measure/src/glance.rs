//! A quick look at a scan: what it is, not how good it is.

use crate::facing::Turned;
use crate::figures::{Frame, NotAnImpression};
use crate::layers::double_layers;
use crate::{Impression, Surface, frame, noise, parts};
use mesh::{Integrity, Mesh};
use nalgebra::Vector3;

/// What a quick look at a scan shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Glance {
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
pub fn glance(mesh: &Mesh) -> Glance {
    let surface = Surface::of(mesh);
    let (found, (noise_mm, layers)) = rayon::join(
        || {
            parts::two_scans(&surface.mesh, &surface.topology)
                .map_or_else(|| frame::find(&surface.mesh), Err)
        },
        || {
            rayon::join(
                || noise::noise_mm(&surface.mesh),
                || double_layers(&surface.mesh, &surface.topology),
            )
        },
    );
    let impression = found.map(|found| Impression::of(&surface, found));
    Glance {
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
