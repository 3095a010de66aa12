//! A scan brought in order, and an impression in its own frame.

use crate::arch::tissue_side::{self, TissueSide};
use crate::arch::zones::ZoneMap;
use crate::frame::{FoundFrame, Frame};
use geometry::field::vertex_areas;
use geometry::winding::{Turned, righted};
use mesh::{Integrity, Mesh, Topology};
use std::sync::OnceLock;

/// A mesh with what is known of it without knowing what it shows.
pub(crate) struct Surface {
    pub mesh: Mesh,
    pub topology: Topology,
    pub integrity: Integrity,
    pub turned: Turned,
}

impl Surface {
    /// Triangles that face the wrong way are turned.
    pub(crate) fn of(mesh: &Mesh) -> Self {
        Self::watched(mesh, &|| {})
    }

    /// As [`Surface::of`]; `look` is called between its parts.
    pub(crate) fn watched(mesh: &Mesh, look: &(dyn Fn() + Sync)) -> Self {
        let topology = Topology::of(mesh);
        look();
        let integrity = Integrity::of(mesh, &topology);
        look();
        let (mesh, turned) = righted(mesh, &topology);
        look();
        Self {
            topology: if turned.against_neighbours > 0 {
                Topology::of(&mesh)
            } else {
                topology
            },
            mesh,
            integrity,
            turned,
        }
    }
}

/// An impression in local coordinates with its parts told apart.
pub(crate) struct Impression {
    pub frame: Frame,
    pub local: Mesh,
    pub edge_mm: f64,
    pub zones: ZoneMap,
    pub regions: TissueSide,
    tissue_weights: OnceLock<Vec<f64>>,
}

impl Impression {
    pub(crate) fn of(surface: &Surface, found: FoundFrame) -> Self {
        let local = surface.mesh.moved(&found.frame.local_from_scan());
        let regions = tissue_side::tell_apart(
            &local,
            &surface.topology,
            &found.crest,
            found.frame.arch,
            surface.integrity.median_edge,
        );
        Self {
            zones: ZoneMap::new(found.crest, found.frame.arch),
            frame: found.frame,
            local,
            edge_mm: surface.integrity.median_edge,
            regions,
            tissue_weights: OnceLock::new(),
        }
    }

    /// The tissue surface that each vertex stands for, mm²: a third of the
    /// tissue triangles round it, 0 off the tissue surface.
    pub(crate) fn tissue_weights(&self) -> &[f64] {
        self.tissue_weights
            .get_or_init(|| vertex_areas(&self.local, |t| self.regions.is_tissue[t]))
    }
}
