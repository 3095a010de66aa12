//! The roll of a border: the circle through what lies near the border point.

use super::find::Profile;
use super::lines::{EVEN_MM, evenly};
use crate::border::figures::{Measured, Missing};
use geometry::circle::Circle;
use geometry::section::SectionPoint;

/// Reach of the roll on either side of the border point, mm of arc (DESIGN:
/// border radius).
const ROLL_ARC_MM: f64 = 1.5;

/// Over 3 mm of arc a greater radius cannot be told from a level surface, mm.
const FLATTEST_MM: f64 = 8.0;

impl Profile {
    /// Radius of the circle through the roll, with its centre; by a mesh whose edges
    /// have a median length, mm.
    pub(in crate::border) fn roll(
        &self,
        noise_mm: f64,
        edge_mm: f64,
    ) -> Result<(Measured, SectionPoint), Missing> {
        /// Noise is alike within this distance, mm.
        const ALIKE_MM: f64 = 0.2;
        if self.scan_ends {
            return Err(Missing::ScanEnds);
        }
        let [tissue, outer] = [&self.tissue, &self.outer].map(|face| evenly(face, ROLL_ARC_MM));
        let enough = (ROLL_ARC_MM / EVEN_MM).round() as usize;
        if tissue.len() <= enough || outer.len() <= enough {
            return Err(Missing::ScanEnds);
        }
        let points: Vec<SectionPoint> = tissue.iter().rev().chain(&outer[1..]).copied().collect();
        let circle = Circle::fit(&points).ok_or(Missing::NoRoll)?;
        // A circle this flat, or on the hollow side, is no roll.
        if circle.radius > FLATTEST_MM || circle.centre[1] >= self.border[1] {
            return Err(Missing::NoRoll);
        }
        let doubt = noise_mm.max(circle.rms) * (ALIKE_MM / EVEN_MM).sqrt();
        // Facets are chords of the roll: their sagitta.
        let of_facets_mm = edge_mm * edge_mm / (8.0 * circle.radius);
        Ok((
            Measured {
                mm: circle.radius,
                uncertainty_mm: (2.0 * circle.radius_per_noise * doubt).hypot(of_facets_mm),
            },
            circle.centre,
        ))
    }
}
