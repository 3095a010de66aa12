//! What scans of an artefact say of the scanner: its own part of every length.

use super::ArtefactStudy;
use chrono::{DateTime, Utc};
use judge::Scanner;
use messages::{Language, Value, text};
use std::time::SystemTime;

impl ArtefactStudy {
    /// The scanner by all certified lengths (diameters, distances, steps) in all scans:
    /// the root mean square of their errors joined with that of the errors' own
    /// standard uncertainties, times two. A systematic error is so taken for a part of
    /// the uncertainty, as the GUM (JCGM 100:2008, F.2.4.5) allows where it is not
    /// corrected for. Its source, in a language, says how it was found and when. `None`
    /// without a certified length.
    #[must_use]
    pub fn scanner(&self, checked: SystemTime, language: Language) -> Option<Scanner> {
        let readings = self.sizes.iter().flat_map(|size| &size.readings);
        let lengths = readings.filter(|reading| reading.certified.is_some());
        let squares: Vec<[f64; 2]> = lengths
            .map(|r| [r.error_mm.powi(2), (r.uncertainty_mm / 2.0).powi(2)])
            .collect();
        if squares.is_empty() {
            return None;
        }
        let mean = |part: usize| {
            squares.iter().map(|square| square[part]).sum::<f64>() / squares.len() as f64
        };
        let (error, doubt) = (mean(0), mean(1));
        let mm = 2.0 * (error + doubt).sqrt();
        Some(Scanner {
            // Tenths of a micrometre, rounded up.
            length_uncertainty_mm: (mm * 1e4).ceil() / 1e4,
            source: text!(
                language,
                "artefact-scanner-source",
                artefact = self.artefact.id.as_str(),
                certificate = self.artefact.certificate.as_str(),
                date = DateTime::<Utc>::from(checked).date_naive().to_string(),
                lengths = squares.len(),
                scans = self.scans.len(),
                error = Value::number(error.sqrt(), 4)
            ),
            file: None,
        })
    }
}
