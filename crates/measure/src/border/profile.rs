//! What one section shows: border point, crest point, thickness, roll.

use super::figures::{Measured, Missing, Reading};
use geometry::circle::Circle;
use geometry::section::{CutLine, SectionPoint};

/// Reach of the roll on either side of the border point, mm of arc (DESIGN:
/// border radius).
const ROLL_ARC_MM: f64 = 1.5;
/// A section 8 degrees off square shows a wall one part in a hundred thicker;
/// crest lines are not known better (k = 2).
const ASKEW: f64 = 0.01;
/// Over 3 mm of arc a greater radius cannot be told from a level surface, mm.
const FLATTEST_MM: f64 = 8.0;
/// Even steps along a profile for fits, mm.
const EVEN_MM: f64 = 0.1;

/// The surface on either side of the border point, in order away from it.
#[derive(Debug, Clone)]
pub struct Profile {
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
    top: TopPiece,
}

/// Where on the cut the border point lies.
#[derive(Debug, Clone, Copy)]
struct TopPiece {
    line: usize,
    point: usize,
    tissue_is_before: bool,
}

/// Polylines of a cut.
pub type Lines = Vec<Vec<SectionPoint>>;

/// Where in a section the border is looked for.
#[derive(Debug, Clone, Copy)]
pub struct Search {
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
    fn is_near(&self, [u, w]: SectionPoint) -> bool {
        const ALONG_MM: f64 = 4.0;
        const ACROSS_MM: f64 = 2.0;
        let (sin, cos) = self.lean.sin_cos();
        let (du, dw) = (u - self.about[0], w - self.about[1]);
        (sin * du + cos * dw).abs() <= ALONG_MM && (cos * du - sin * dw).abs() <= ACROSS_MM
    }

    fn furthest(&self, [u, w]: SectionPoint) -> f64 {
        self.lean.sin() * u + self.lean.cos() * w
    }
}

impl Profile {
    /// The border in a cut. `None` where no surface lies near where it should.
    pub fn find(lines: &[CutLine], search: &Search, is_tissue: &[bool]) -> Option<Self> {
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

    /// The whole cut as tissue face and outer face: parted at the border point
    /// near it, and by the triangles everywhere else.
    pub fn faces(&self, lines: &[CutLine], is_tissue: &[bool]) -> (Lines, Lines) {
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

    /// Distance between the faces, square to the seating axis, `depth_mm` below
    /// the border; with the two points.
    pub fn thickness(
        &self,
        depth_mm: f64,
        noise_mm: f64,
        has_outer_surface: bool,
    ) -> Result<(Measured, [SectionPoint; 2]), Missing> {
        if self.scan_ends {
            return Err(Missing::ScanEnds);
        }
        let level = self.border[1] - depth_mm;
        let tissue = crossing(&self.tissue, level).ok_or(Missing::FlangeTooLow)?;
        let outer = crossing(&self.outer, level).ok_or(if has_outer_surface {
            Missing::NoSurface
        } else {
            Missing::TissueSideOnly
        })?;
        // The level moves with the border point; a face that is not upright
        // turns that into width.
        let of_level = self.border_noise_mm * (tissue.run + outer.run);
        let mm = (outer.at[0] - tissue.at[0]).abs();
        let of_noise = noise_mm * (tissue.noise * tissue.noise + outer.noise * outer.noise).sqrt();
        Ok((
            Measured {
                mm,
                uncertainty_mm: (2.0 * of_level.hypot(of_noise)).hypot(ASKEW * mm),
            },
            [tissue.at, outer.at],
        ))
    }

    /// Radius of the circle through the roll, with its centre.
    pub fn roll(&self, noise_mm: f64) -> Result<(Measured, SectionPoint), Missing> {
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
        Ok((
            Measured {
                mm: circle.radius,
                uncertainty_mm: 2.0 * circle.radius_per_noise * doubt,
            },
            circle.centre,
        ))
    }

    /// The bottom of the trough on the tissue face, near a place across.
    pub fn crest(&self, about: f64, within_mm: f64) -> Option<SectionPoint> {
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

/// What lies within so many edges of the end of a line is that end.
const END_EDGES: f64 = 2.0;

/// Whether a point of a line is as good as its end.
fn is_free_end(line: &CutLine, at: usize, search: &Search) -> bool {
    !line.is_closed()
        && [&line.points[..=at], &line.points[at..]]
            .into_iter()
            .any(|side| length(side) <= END_EDGES * search.edge_mm)
}

fn length(points: &[SectionPoint]) -> f64 {
    points.windows(2).map(|p| distance(p[0], p[1])).sum()
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

struct Top {
    at: SectionPoint,
    noise_mm: f64,
}

/// The furthest point of the parabola through what lies near the raw one.
fn refined(
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
fn ends_rising(
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

/// Where a face first passes below a level.
struct Crossing {
    at: SectionPoint,
    /// Width gained for each mm of height.
    run: f64,
    /// Noise of the place for noise of 1 on each point.
    noise: f64,
}

/// The crossing from the line through what lies within 0.4 mm of it.
fn crossing(face: &[SectionPoint], level: f64) -> Option<Crossing> {
    const FIT_MM: f64 = 0.4;
    let pair = face
        .windows(2)
        .find(|pair| pair[0][1] >= level && pair[1][1] < level)?;
    let share = (pair[0][1] - level) / (pair[0][1] - pair[1][1]);
    let raw = [pair[0][0] + share * (pair[1][0] - pair[0][0]), level];
    let near: Vec<SectionPoint> = face
        .iter()
        .filter(|p| distance(**p, raw) <= FIT_MM)
        .map(|p| [p[1] - level, p[0] - raw[0]])
        .collect();
    let (at, run) = match straight(&near) {
        Some([a, b]) if a.abs() < FIT_MM => ([raw[0] + a, level], b.abs().min(2.0)),
        _ => (raw, 1.0),
    };
    Some(Crossing {
        at,
        run,
        noise: run.hypot(1.0) / (near.len().max(1) as f64).sqrt(),
    })
}

/// Points at even steps along a line from its start, for at most `reach_mm`.
pub fn evenly(line: &[SectionPoint], reach_mm: f64) -> Vec<SectionPoint> {
    let Some(&first) = line.first() else {
        return Vec::new();
    };
    let mut out = vec![first];
    let mut left = EVEN_MM;
    let most = (reach_mm / EVEN_MM).round() as usize;
    for pair in line.windows(2) {
        let length = distance(pair[0], pair[1]);
        let mut at = left;
        while at <= length {
            if out.len() > most {
                return out;
            }
            let share = at / length;
            out.push([
                pair[0][0] + share * (pair[1][0] - pair[0][0]),
                pair[0][1] + share * (pair[1][1] - pair[0][1]),
            ]);
            at += EVEN_MM;
        }
        left = at - length;
    }
    out
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

pub(super) fn distance(a: SectionPoint, b: SectionPoint) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}

/// Coefficients of a + bx + cx² by least squares.
fn parabola(points: &[[f64; 2]]) -> Option<[f64; 3]> {
    if points.len() < 4 {
        return None;
    }
    let (mut normal, mut right) = (nalgebra::Matrix3::zeros(), nalgebra::Vector3::zeros());
    for [x, y] in points {
        let row = nalgebra::Vector3::new(1.0, *x, x * x);
        normal += row * row.transpose();
        right += row * *y;
    }
    let solved = normal.cholesky()?.solve(&right);
    Some([solved.x, solved.y, solved.z])
}

/// Coefficients of a + bx by least squares.
fn straight(points: &[[f64; 2]]) -> Option<[f64; 2]> {
    if points.len() < 2 {
        return None;
    }
    let (mut normal, mut right) = (nalgebra::Matrix2::zeros(), nalgebra::Vector2::zeros());
    for [x, y] in points {
        let row = nalgebra::Vector2::new(1.0, *x);
        normal += row * row.transpose();
        right += row * *y;
    }
    let solved = normal.cholesky()?.solve(&right);
    Some([solved.x, solved.y])
}

/// A reading from what may be missing.
pub fn reading<T>(figure: &Result<(Measured, T), Missing>) -> Reading {
    figure
        .as_ref()
        .map(|(measured, _)| *measured)
        .map_err(|why| *why)
}
