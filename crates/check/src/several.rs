//! Several scans of one thing as one.

use crate::load::LoadedScan;
use judge::UnitReading;
use mesh::Mesh;
use messages::{Message, message};
use std::sync::Arc;

/// Scans of the parts or pieces of one thing as one scan. Its checksum is that of theirs,
/// each in lower-case hexadecimal, in their order. Their `kind` is `part` or `piece`.
pub(crate) fn one_of(
    scans: &[Arc<LoadedScan>],
    kind: &'static str,
    mesh: Mesh,
    unit: &UnitReading,
) -> LoadedScan {
    let said = |of: fn(&LoadedScan) -> &Vec<Message>| -> Vec<Message> {
        let sentences = scans.iter().enumerate().flat_map(|(number, scan)| {
            let own = of(scan).iter();
            own.map(move |said| {
                message!(
                    "read-of-one",
                    kind = kind,
                    number = number + 1,
                    said = said.clone()
                )
            })
        });
        sentences.collect()
    };
    let sums: String = scans.iter().map(|scan| &scan.sha256[..]).collect();
    LoadedScan {
        mesh,
        sha256: mesh::read::sha256_of(sums.as_bytes()),
        format: scans[0].format,
        unit: unit.clone(),
        carries_text: scans.iter().any(|scan| scan.carries_text),
        stl_attributes: scans.iter().any(|scan| scan.stl_attributes),
        warnings: said(|scan| &scan.warnings),
        questions: said(|scan| &scan.questions),
    }
}
