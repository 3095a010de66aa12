//! One section in order away from its border point: tissue face and outer face.

use super::lines::{distance, length};
use super::top::{Search, ends_rising, is_free_end, refined};
use geometry::section::{CutLine, SectionPoint};

/// The surface on either side of the border point, in order away from it.
#[derive(Debug, Clone)]
pub(in crate::border) struct Profile {
    /// The border point.
    pub border: SectionPoint,
    /// Standard uncertainty of the border point along the direction in which
    /// it is furthest, mm, from noise alone.
    pub border_noise_mm: f64,
    /// The border point lies on the edge of the scan, where it still rises.
    pub scan_ends: bool,
    /// Tissue face, from the border point.
    pub tissue: Vec<SectionPoint>,
    /// Outer face, from the border point.
    pub outer: Vec<SectionPoint>,
    /// Where on the cut the border point lies.
    pub(super) top: TopPiece,
}

/// Where on the cut the border point lies.
#[derive(Debug, Clone, Copy)]
pub(super) struct TopPiece {
    pub line: usize,
    pub point: usize,
    pub tissue_is_before: bool,
}

impl Profile {
    /// The border in a cut. `None` where no surface lies near where it should.
    pub(in crate::border) fn find(
        lines: &[CutLine],
        search: &Search,
        is_tissue: &[bool],
    ) -> Option<Self> {
        let highest = |belongs: &dyn Fn(usize, usize) -> bool| {
            (0..lines.len())
                .flat_map(|line| (0..lines[line].points.len()).map(move |point| (line, point)))
                .filter(|&(line, point)| search.is_near(lines[line].points[point]))
                .filter(|&(line, point)| belongs(line, point))
                .max_by(|a, b| {
                    let height = |at: &(usize, usize)| search.furthest(lines[at.0].points[at.1]);
                    height(a).total_cmp(&height(b)).then(b.cmp(a))
                })
        };
        let is_of_tissue = |line: usize, point: usize| {
            let pieces = &lines[line].triangles;
            is_tissue[pieces[point.min(pieces.len() - 1)] as usize]
        };
        let (mut line, mut top) = highest(&|_, _| true)?;
        // Where both faces end without meeting, the tissue's own end counts.
        if is_free_end(&lines[line], top, search) && !is_of_tissue(line, top) {
            (line, top) = highest(&is_of_tissue).unwrap_or((line, top));
        }
        let (before, after) = branches(&lines[line], top);
        let tissue_is_before = if is_free_end(&lines[line], top, search) {
            length(&before) > length(&after)
        } else {
            faces_tissue(&lines[line], top, &before, &after, is_tissue)
        };
        let (tissue, outer) = if tissue_is_before {
            (before, after)
        } else {
            (after, before)
        };
        let raw = lines[line].points[top];
        let refined = refined(raw, &tissue, &outer, search);
        Some(Self {
            border: refined.at,
            border_noise_mm: refined.noise_mm,
            scan_ends: ends_rising(raw, &tissue, &outer, search),
            tissue: from(refined.at, &tissue),
            outer: from(refined.at, &outer),
            top: TopPiece {
                line,
                point: top,
                tissue_is_before,
            },
        })
    }
}

/// The line before and after one of its points, both in order away from it.
/// A closed line is parted where it is furthest along from the point.
fn branches(line: &CutLine, at: usize) -> (Vec<SectionPoint>, Vec<SectionPoint>) {
    let points = &line.points;
    if !line.is_closed() {
        let before = points[..=at].iter().rev().copied().collect();
        return (before, points[at..].to_vec());
    }
    let count = points.len() - 1;
    let half = count / 2;
    let round = |step: isize| points[(at as isize + step).rem_euclid(count as isize) as usize];
    let steps = 0..=half as isize;
    (
        steps.clone().map(|k| round(-k)).collect(),
        steps.map(round).collect(),
    )
}

/// Whether the first of two branches is the tissue's side: by the triangles
/// beyond the roll, else by which lies nearer to the crest.
fn faces_tissue(
    line: &CutLine,
    at: usize,
    one: &[SectionPoint],
    other: &[SectionPoint],
    is_tissue: &[bool],
) -> bool {
    const FROM_MM: f64 = 0.4;
    const TO_MM: f64 = 3.0;
    let pieces = line.triangles.len();
    let votes = |branch: &[SectionPoint], forward: bool| {
        let (mut passed, mut sum) = (0.0, 0.0);
        for (k, pair) in branch.windows(2).enumerate() {
            let step = distance(pair[0], pair[1]);
            passed += step;
            if passed > TO_MM {
                break;
            }
            let piece = if forward {
                at + k
            } else {
                (at + 2 * pieces - 1 - k) % pieces
            };
            if passed >= FROM_MM {
                let tissue = is_tissue[line.triangles[piece % pieces] as usize];
                sum += if tissue { step } else { -step };
            }
        }
        sum
    };
    let difference = votes(one, false) - votes(other, true);
    if difference.abs() > 0.5 {
        return difference > 0.0;
    }
    let aside = |branch: &[SectionPoint]| {
        let near: Vec<f64> = branch.iter().take(12).map(|p| p[0]).collect();
        near.iter().sum::<f64>() / near.len().max(1) as f64
    };
    aside(one) < aside(other)
}

/// A branch that begins in the border point instead of the raw one.
fn from(border: SectionPoint, branch: &[SectionPoint]) -> Vec<SectionPoint> {
    let begin = branch
        .iter()
        .position(|p| distance(*p, border) > 0.15)
        .unwrap_or(branch.len());
    std::iter::once(border)
        .chain(branch[begin..].iter().copied())
        .collect()
}
