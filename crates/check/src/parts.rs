//! An impression in parts: its scans joined to one before it is measured.

use crate::load::LoadedScan;
use crate::several::one_of;
use judge::ImpressionInput;
use measure::{JoinedParts, NotAnImpression, PartsNotJoined, PreparedTray, ScanFigures, Scanned};
use mesh::{Integrity, Mesh, Topology};
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// The scans of the parts of an impression, and how they were joined.
#[derive(Debug, Clone)]
pub struct CheckedParts {
    /// The parts, in the order of the case.
    pub scans: Vec<Arc<LoadedScan>>,
    /// How they lie together, or why they do not.
    pub joined: Result<JoinedParts, PartsNotJoined>,
}

impl CheckedParts {
    /// `None` of an impression in one piece, or without a tray.
    pub(crate) fn of(
        input: &ImpressionInput,
        scans: &BTreeMap<&Path, Arc<LoadedScan>>,
        trays: &BTreeMap<&Path, PreparedTray>,
    ) -> Option<Self> {
        if input.other_parts.is_empty() {
            return None;
        }
        let tray = input.tray_then()?;
        let unit_mm = scans.get(tray)?.unit.unit().in_mm();
        let parts: Vec<Arc<LoadedScan>> = (input.scan_files())
            .filter_map(|file| scans.get(file.as_path()).cloned())
            .collect();
        // The size of a part does not tell its unit: it is that of the tray.
        let meshes: Vec<Cow<'_, Mesh>> = (parts.iter())
            .map(|part| match unit_mm / part.unit.unit().in_mm() {
                1.0 => Cow::Borrowed(&part.mesh),
                factor => Cow::Owned(part.mesh.scaled(factor)),
            })
            .collect();
        let meshes: Vec<&Mesh> = meshes.iter().map(AsRef::as_ref).collect();
        Some(Self {
            joined: JoinedParts::of(&meshes, trays.get(tray)?),
            scans: parts,
        })
    }

    /// The parts as one scan, in the coordinates of the tray's scan; of parts that do not
    /// join the first.
    pub(crate) fn as_one(&self, tray: &LoadedScan) -> LoadedScan {
        let mesh = match &self.joined {
            Ok(joined) => joined.mesh.clone(),
            Err(_) => self.scans[0].mesh.clone(),
        };
        one_of(&self.scans, "part", mesh, &tray.unit)
    }

    /// What parts that do not join show; `None` of those that do.
    pub(crate) fn not_joined(&self) -> Option<Scanned> {
        let why = self.joined.as_ref().err()?;
        let mesh = &self.scans[0].mesh;
        let figures = ScanFigures {
            integrity: Integrity::of(mesh, &Topology::of(mesh)),
            turned: Default::default(),
            scanner_uncertainty_mm: 0.0,
            cut_width_mm: None,
        };
        Some(Scanned::Else(NotAnImpression::Parts(why.clone()), figures))
    }
}
