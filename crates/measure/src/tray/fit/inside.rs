//! The inside of a tray.

use crate::frame;
use crate::impression::{Impression, Surface};
use crate::tray::PreparedTray;
use crate::words::Arch;
use geometry::signed_distance::{Solid, angle_weighted_normals};
use mesh::{Mesh, SpatialIndex, Topology};
use nalgebra::{Point3, Vector3};

/// The inside of a tray, which faces the tissue, in the tray's coordinates.
pub(super) struct Inside {
    pub(super) arch: Arch,
    pub(super) arch_confidence: f64,
    mesh: Mesh,
    topology: Topology,
    index: SpatialIndex,
    corner_normals: Vec<Vector3<f64>>,
    /// Its edge.
    pub(super) rim: Vec<Point3<f64>>,
}

impl Inside {
    /// `None` where the scan shows no tray.
    pub(super) fn of(tray: &PreparedTray) -> Option<Self> {
        let surface = Surface::of(tray.mesh());
        let found = frame::find(&surface.mesh).ok()?;
        let tray = Impression::of(&surface, found);
        let mesh = (surface.mesh).filtered(|t| tray.regions.is_tissue[t]);
        let topology = Topology::of(&mesh);
        let loops = topology.boundary_loops();
        let rim = loops.iter().max_by_key(|vertices| vertices.len())?;
        Some(Self {
            arch: tray.frame.arch,
            arch_confidence: tray.frame.arch_confidence,
            rim: rim.iter().map(|&v| mesh.vertices()[v as usize]).collect(),
            index: SpatialIndex::new(&mesh),
            corner_normals: angle_weighted_normals(&mesh),
            topology,
            mesh,
        })
    }

    /// What lies behind it is inside the tray, or beyond its wall: it touches.
    pub(super) fn solid(&self) -> Solid<'_> {
        Solid::new(
            &self.mesh,
            &self.topology,
            &self.index,
            &self.corner_normals,
            f64::INFINITY,
        )
    }
}
