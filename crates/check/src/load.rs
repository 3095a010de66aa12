//! Reads scans and brings them to millimetres.

use crate::reader::warned;
use judge::{Case, UnitReading};
use mesh::{Format, Mesh, ReadError, Scan, Unit};
use messages::Message;
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// A scan brought to millimetres.
#[derive(Debug, Clone)]
pub struct LoadedScan {
    /// The surface, mm.
    pub mesh: Mesh,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
    /// What the file's contents are.
    pub format: Format,
    /// How the unit of its numbers was settled.
    pub unit: UnitReading,
    /// Whether the file holds free text, which may name a person.
    pub carries_text: bool,
    /// Whether it is a binary STL with attribute bytes, in which colour may be.
    pub stl_attributes: bool,
    /// What was odd about the file.
    pub warnings: Vec<Message>,
    /// Those of them that need an answer before anything can be judged.
    pub questions: Vec<Message>,
}

/// Reads every scan file of a case once, side by side. Where several cannot be
/// read, the error is that of the first in the order of their paths. `look` is called
/// before each.
///
/// # Errors
/// When one of them cannot be read.
pub fn load_all<'a>(
    case: &'a Case,
    unit: Option<Unit>,
    look: &(dyn Fn() + Sync),
) -> Result<BTreeMap<&'a Path, Arc<LoadedScan>>, ReadError> {
    let paths: Vec<&Path> = case.scans().into_iter().collect();
    let read: Vec<_> = paths
        .par_iter()
        .map(|&path| {
            look();
            Ok((path, Arc::new(load(path, unit)?)))
        })
        .collect();
    read.into_iter().collect()
}

/// Reads one scan file and settles its unit.
///
/// # Errors
/// When it cannot be read.
pub fn load(path: &Path, given: Option<Unit>) -> Result<LoadedScan, ReadError> {
    let scan = mesh::read_scan(path)?;
    let unit = UnitReading::of(longest_side(&scan), given);
    let asking = scan.warnings.iter().filter(|warning| warning.asks());
    Ok(LoadedScan {
        questions: asking.map(warned).collect(),
        warnings: scan.warnings.iter().map(warned).collect(),
        sha256: scan.sha256,
        format: scan.format,
        carries_text: scan.carries_text,
        stl_attributes: scan.stl_attributes,
        mesh: match unit.unit() {
            Unit::Millimetre => scan.mesh,
            other => scan.mesh.scaled(other.in_mm()),
        },
        unit,
    })
}

/// Longest side of the box around a scan, in the file's own numbers.
fn longest_side(scan: &Scan) -> f64 {
    scan.mesh
        .bounds()
        .map_or(0.0, |(low, high)| (high - low).max())
}
