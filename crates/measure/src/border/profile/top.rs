//! The border point: where in a section it is looked for, and the furthest place
//! of the roll there.

use super::lines::{distance, evenly, length, parabola};
use geometry::section::{CutLine, SectionPoint};

/// Where in a section the border is looked for.
#[derive(Debug, Clone, Copy)]
pub(in crate::border) struct Search {
    /// Roughly where it is.
    pub about: SectionPoint,
    /// Lean of the direction in which it is furthest from the seating axis, radians.
    pub lean: f64,
    /// Standard deviation of the scan's noise, mm.
    pub noise_mm: f64,
    /// Edge length of the scan's triangles, mm.
    pub edge_mm: f64,
}

impl Search {
    /// The rough border is smooth, so a frenum's notch lies well below it.
    pub(super) fn is_near(&self, [u, w]: SectionPoint) -> bool {
        const ALONG_MM: f64 = 4.0;
        const ACROSS_MM: f64 = 2.0;
        let (sin, cos) = self.lean.sin_cos();
        let (du, dw) = (u - self.about[0], w - self.about[1]);
        (sin * du + cos * dw).abs() <= ALONG_MM && (cos * du - sin * dw).abs() <= ACROSS_MM
    }

    pub(super) fn furthest(&self, [u, w]: SectionPoint) -> f64 {
        self.lean.sin() * u + self.lean.cos() * w
    }
}

/// What lies within so many edges of the end of a line is that end.
const END_EDGES: f64 = 2.0;

/// Whether a point of a line is as good as its end.
pub(super) fn is_free_end(line: &CutLine, at: usize, search: &Search) -> bool {
    !line.is_closed()
        && [&line.points[..=at], &line.points[at..]]
            .into_iter()
            .any(|side| length(side) <= END_EDGES * search.edge_mm)
}

pub(super) struct Top {
    pub at: SectionPoint,
    pub noise_mm: f64,
}

/// The furthest point of the parabola through what lies near the raw one.
pub(super) fn refined(
    raw: SectionPoint,
    tissue: &[SectionPoint],
    outer: &[SectionPoint],
    search: &Search,
) -> Top {
    /// Half width of the fit, mm: the sharpest rolls have radii near it.
    const FIT_MM: f64 = 0.6;
    let (sin, cos) = search.lean.sin_cos();
    let turned = |p: &SectionPoint| {
        let (du, dw) = (p[0] - raw[0], p[1] - raw[1]);
        [cos * du - sin * dw, sin * du + cos * dw]
    };
    let near: Vec<[f64; 2]> = [tissue, outer]
        .into_iter()
        .flat_map(|face| evenly(face, FIT_MM))
        .map(|p| turned(&p))
        .collect();
    let fallback = Top {
        at: raw,
        noise_mm: search.noise_mm,
    };
    let Some([a, b, c]) = parabola(&near) else {
        return fallback;
    };
    let spread = near.iter().map(|p| p[0].abs()).fold(0.0, f64::max);
    let along = -b / (2.0 * c);
    if c >= -0.02 || along.abs() > spread {
        return fallback;
    }
    let over = a + b * along + c * along * along;
    Top {
        at: [
            raw[0] + cos * along + sin * over,
            raw[1] - sin * along + cos * over,
        ],
        // About one in three points within the fit is independent.
        noise_mm: search.noise_mm * (3.0 / near.len() as f64).sqrt().min(1.0) * 1.5,
    }
}

/// Whether the raw border point is an end of the scan toward which the surface
/// still rises: the border itself was not scanned.
pub(super) fn ends_rising(
    raw: SectionPoint,
    tissue: &[SectionPoint],
    outer: &[SectionPoint],
    search: &Search,
) -> bool {
    /// Steeper than this at the edge of the scan, a roll of 1.5 mm radius would
    /// rise by 0.1 mm or more.
    const LEVEL: f64 = 0.36;
    const LOOK_BACK_MM: f64 = 0.8;
    if length(outer) > END_EDGES * search.edge_mm {
        return false;
    }
    let face = evenly(tissue, LOOK_BACK_MM);
    let Some(last) = face.last() else {
        return false;
    };
    let rise = search.furthest(raw) - search.furthest(*last);
    rise > LEVEL * distance(raw, *last)
}
