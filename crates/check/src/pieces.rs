//! A tray in pieces: its scans placed on the impression before it is measured.

use crate::load::LoadedScan;
use crate::several::one_of;
use judge::ImpressionInput;
use measure::{AssembledTray, PiecesNotPlaced, TrayJoint};
use mesh::Mesh;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// The scans of the pieces of a tray, and how they lay in the impression.
#[derive(Debug, Clone)]
pub struct CheckedPieces {
    /// The pieces, in the order of the case.
    pub scans: Vec<Arc<LoadedScan>>,
    /// How they lay, or why that is not known.
    pub assembled: Result<AssembledTray, PiecesNotPlaced>,
}

impl CheckedPieces {
    /// `None` of a tray in one piece, or where none was given.
    pub(crate) fn of(
        input: &ImpressionInput,
        scans: &BTreeMap<&Path, Arc<LoadedScan>>,
        scanner_uncertainty_mm: f64,
    ) -> Option<Self> {
        if input.other_pieces.is_empty() {
            return None;
        }
        let impression = &scans.get(input.scan.as_path())?.mesh;
        let files = input.tray.iter().chain(&input.other_pieces);
        let pieces: Vec<Arc<LoadedScan>> = files
            .filter_map(|file| scans.get(file.as_path()).cloned())
            .collect();
        let meshes: Vec<&Mesh> = pieces.iter().map(|piece| &piece.mesh).collect();
        Some(Self {
            assembled: AssembledTray::on(impression, &meshes, scanner_uncertainty_mm),
            scans: pieces,
        })
    }

    /// The pieces as one scan, in the coordinates of the first; of pieces that were not
    /// placed the first.
    pub(crate) fn as_one(&self) -> LoadedScan {
        let first = &self.scans[0];
        let mesh = match &self.assembled {
            Ok(assembled) => assembled.mesh.clone(),
            Err(_) => first.mesh.clone(),
        };
        one_of(&self.scans, "piece", mesh, &first.unit)
    }

    /// Where they meet.
    #[must_use]
    pub fn joints(&self) -> &[TrayJoint] {
        let assembled = self.assembled.as_ref();
        assembled.map_or(&[], |assembled| &assembled.joints)
    }
}
