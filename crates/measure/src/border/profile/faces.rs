//! The faces of a whole cut: which of its pieces are tissue, which outer surface.

use super::find::Profile;
use super::lines::distance;
use geometry::section::{CutLine, SectionPoint};

/// Polylines of a cut.
pub(in crate::border) type Lines = Vec<Vec<SectionPoint>>;

impl Profile {
    /// The whole cut as tissue face and outer face: parted at the border point
    /// near it, and by the triangles everywhere else.
    pub(in crate::border) fn faces(&self, lines: &[CutLine], is_tissue: &[bool]) -> (Lines, Lines) {
        let (mut tissue, mut outer) = (Lines::new(), Lines::new());
        for (number, line) in lines.iter().enumerate() {
            let mut labels: Vec<bool> = line
                .triangles
                .iter()
                .map(|&triangle| is_tissue[triangle as usize])
                .collect();
            if number == self.top.line {
                self.part_at_top(line, &mut labels);
            }
            let mut at = 0;
            for run in labels.chunk_by(bool::eq) {
                let points = line.points[at..=at + run.len()].to_vec();
                at += run.len();
                let face = if run[0] { &mut tissue } else { &mut outer };
                face.push(points);
            }
        }
        (tissue, outer)
    }

    /// Near the border point it alone says where one face ends.
    fn part_at_top(&self, line: &CutLine, labels: &mut [bool]) {
        const NEAR_MM: f64 = 3.0;
        let pieces = labels.len();
        let mut part = |is_before: bool| {
            let label = is_before == self.top.tissue_is_before;
            let mut passed = 0.0;
            for k in 0..pieces / 2 {
                let piece = match (is_before, line.is_closed()) {
                    (false, false) if self.top.point + k >= pieces => break,
                    (true, false) if k >= self.top.point => break,
                    (false, _) => (self.top.point + k) % pieces,
                    (true, _) => (self.top.point + 2 * pieces - 1 - k) % pieces,
                };
                labels[piece] = label;
                passed += distance(line.points[piece], line.points[piece + 1]);
                if passed > NEAR_MM {
                    break;
                }
            }
        };
        part(true);
        part(false);
    }
}
