//! The bottom of the trough in a section.

use super::find::Profile;
use super::lines::{distance, parabola};
use geometry::section::SectionPoint;

impl Profile {
    /// The bottom of the trough on the tissue face, near a place across.
    pub(in crate::border) fn crest(&self, about: f64, within_mm: f64) -> Option<SectionPoint> {
        lowest(&self.tissue, about, within_mm)
    }
}

/// The bottom of a face near a place across, from the parabola through what
/// lies within a millimetre of its lowest point.
fn lowest(face: &[SectionPoint], about: f64, within_mm: f64) -> Option<SectionPoint> {
    const FIT_MM: f64 = 1.0;
    let near = |p: &&SectionPoint| (p[0] - about).abs() <= within_mm;
    let raw = face
        .iter()
        .filter(near)
        .min_by(|a, b| a[1].total_cmp(&b[1]))?;
    let around: Vec<[f64; 2]> = face
        .iter()
        .filter(|p| distance(**p, *raw) <= FIT_MM)
        .map(|p| [p[0] - raw[0], p[1] - raw[1]])
        .collect();
    let [a, b, c] = parabola(&around).unwrap_or([0.0; 3]);
    let vertex = (-b / (2.0 * c)).clamp(-FIT_MM, FIT_MM);
    Some(if c > 1e-3 {
        [
            raw[0] + vertex,
            raw[1] + a + b * vertex + c * vertex * vertex,
        ]
    } else {
        [raw[0], raw[1] + a]
    })
}
