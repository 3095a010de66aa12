//! Cuts of a mesh by planes that hold the z axis.

use mesh::Mesh;
use nalgebra::{Point2, Point3, Vector2};
use std::ops::RangeInclusive;

/// A point in a section: across (along the plane in plan), then along z; mm.
/// The plane's origin is the origin.
pub type SectionPoint = [f64; 2];

/// A plane that holds the z axis.
#[derive(Debug, Clone, Copy)]
pub struct SectionPlane {
    /// A point of the plane: the origin of section coordinates.
    pub origin: Point3<f64>,
    /// Unit vector of the plan along the plane: the first section coordinate.
    pub across: Vector2<f64>,
}

impl SectionPlane {
    /// The place in space of a point of the section.
    pub fn place(&self, [u, w]: SectionPoint) -> Point3<f64> {
        Point3::new(
            self.origin.x + u * self.across.x,
            self.origin.y + u * self.across.y,
            self.origin.z + w,
        )
    }

    /// Section coordinates of a place on the plane.
    pub fn section_point(&self, place: &Point3<f64>) -> SectionPoint {
        let off = place - self.origin;
        [off.xy().dot(&self.across), off.z]
    }

    fn distance(&self, place: &Point3<f64>) -> f64 {
        self.across.perp(&(place - self.origin).xy())
    }
}

/// Part of a cut, in order along the surface.
#[derive(Debug, Clone, PartialEq)]
pub struct CutLine {
    /// The points; those of a closed line end where they began.
    pub points: Vec<SectionPoint>,
    /// The triangle that each piece between two points lies on.
    pub triangles: Vec<u32>,
}

impl CutLine {
    /// Whether it comes back to where it began.
    pub fn is_closed(&self) -> bool {
        self.points.len() > 2 && self.points.first() == self.points.last()
    }
}

/// A mesh whose triangles are filed by where they lie in plan.
pub struct Cutter<'a> {
    mesh: &'a Mesh,
    corner: Point2<f64>,
    size: [usize; 2],
    /// First entry of each cell in `filed`.
    starts: Vec<u32>,
    filed: Vec<u32>,
}

/// Side of a cell of the filing, mm.
const CELL_MM: f64 = 0.75;

impl<'a> Cutter<'a> {
    /// Files those triangles of a mesh that are to be cut.
    pub fn new(mesh: &'a Mesh, is_cut: impl Fn(usize) -> bool) -> Self {
        let (low, high) = mesh.bounds().unwrap_or_default();
        let cells = |axis: usize| ((high[axis] - low[axis]) / CELL_MM) as usize + 1;
        let mut cutter = Self {
            mesh,
            corner: low.xy(),
            size: [cells(0), cells(1)],
            starts: Vec::new(),
            filed: Vec::new(),
        };
        let mut entries: Vec<(u32, u32)> = Vec::new();
        for triangle in (0..mesh.triangles().len()).filter(|&t| is_cut(t)) {
            let corners = mesh.corners(triangle);
            let low = corners[0]
                .coords
                .inf(&corners[1].coords)
                .inf(&corners[2].coords);
            let high = corners[0]
                .coords
                .sup(&corners[1].coords)
                .sup(&corners[2].coords);
            let (from, to) = (cutter.cell_at(low.x, low.y), cutter.cell_at(high.x, high.y));
            for row in from[1]..=to[1] {
                for column in from[0]..=to[0] {
                    entries.push(((row * cutter.size[0] + column) as u32, triangle as u32));
                }
            }
        }
        let mut starts = vec![0_u32; cutter.size[0] * cutter.size[1] + 1];
        for (cell, _) in &entries {
            starts[*cell as usize + 1] += 1;
        }
        for cell in 1..starts.len() {
            starts[cell] += starts[cell - 1];
        }
        let mut next = starts.clone();
        let mut filed = vec![0; entries.len()];
        for (cell, triangle) in entries {
            let place = &mut next[cell as usize];
            filed[*place as usize] = triangle;
            *place += 1;
        }
        cutter.starts = starts;
        cutter.filed = filed;
        cutter
    }

    fn cell_at(&self, x: f64, y: f64) -> [usize; 2] {
        let index = |value: f64, axis: usize| {
            ((value - self.corner[axis]) / CELL_MM).clamp(0.0, self.size[axis] as f64 - 1.0)
                as usize
        };
        [index(x, 0), index(y, 1)]
    }

    /// The cut by a plane between two distances along it, as lines in order,
    /// longest first. A plane through a vertex passes just beside it.
    pub fn cut(&self, plane: &SectionPlane, span: RangeInclusive<f64>) -> Vec<CutLine> {
        let mut pieces: Vec<Piece> = self
            .cells_along(plane, &span)
            .into_iter()
            .flat_map(|cell| {
                &self.filed[self.starts[cell] as usize..self.starts[cell + 1] as usize]
            })
            .filter_map(|&triangle| self.piece(plane, triangle))
            .filter(|piece| piece.ends.iter().any(|end| span.contains(&end.at[0])))
            .collect();
        // A triangle may stand in more than one cell.
        pieces.sort_unstable_by_key(|piece| piece.triangle);
        pieces.dedup_by_key(|piece| piece.triangle);
        chained(&pieces)
    }

    /// The cells that the plane crosses.
    fn cells_along(&self, plane: &SectionPlane, span: &RangeInclusive<f64>) -> Vec<usize> {
        /// What rounding may put aside, in cells.
        const SLACK: f64 = 1e-6;
        let start = (plane.origin.xy() - self.corner) / CELL_MM;
        let step = plane.across / CELL_MM;
        // By the axis along which it is the steeper, cell by cell, and across each of
        // them from where the line enters it to where it leaves.
        let major = usize::from(step.y.abs() > step.x.abs());
        let minor = 1 - major;
        let minor_at =
            |place: f64| start[minor] + (place - start[major]) / step[major] * step[minor];
        let [one, other] = [span.start(), span.end()].map(|t| start[major] + t * step[major]);
        let (from, to) = (
            one.min(other).max(0.0),
            one.max(other).min(self.size[major] as f64),
        );
        let mut cells = Vec::new();
        if from > to {
            return cells;
        }
        // Conversion cuts off, and saturates.
        for at in from as usize..self.size[major].min((to + 1.0) as usize) {
            let ends = [at, at + 1].map(|edge| minor_at((edge as f64).clamp(from, to)));
            let low = (ends[0].min(ends[1]) - SLACK).max(0.0) as usize;
            let high = ends[0].max(ends[1]) + SLACK;
            if high < 0.0 {
                continue;
            }
            cells.extend(
                (low..=high as usize)
                    .filter(|&across| across < self.size[minor])
                    .map(|across| {
                        let (row, column) = if major == 0 {
                            (across, at)
                        } else {
                            (at, across)
                        };
                        row * self.size[0] + column
                    }),
            );
        }
        cells
    }

    fn piece(&self, plane: &SectionPlane, triangle: u32) -> Option<Piece> {
        let numbers = self.mesh.triangles()[triangle as usize];
        let corners = self.mesh.corners(triangle as usize);
        let sides = corners.map(|corner| plane.distance(&corner));
        if sides.iter().all(|side| *side >= 0.0) || sides.iter().all(|side| *side < 0.0) {
            return None;
        }
        let mut ends = (0..3).filter_map(|i| {
            let k = (i + 1) % 3;
            if (sides[i] >= 0.0) == (sides[k] >= 0.0) {
                return None;
            }
            // Both triangles of an edge must find the very same point on it.
            let (a, b) = if numbers[i] < numbers[k] {
                (i, k)
            } else {
                (k, i)
            };
            let share = sides[a] / (sides[a] - sides[b]);
            Some(End {
                edge: [numbers[a], numbers[b]],
                at: plane.section_point(&(corners[a] + (corners[b] - corners[a]) * share)),
            })
        });
        let ends = [ends.next()?, ends.next()?];
        Some(Piece { triangle, ends })
    }
}

/// Where a plane crosses an edge of the mesh.
#[derive(Debug, Clone, Copy)]
struct End {
    edge: [u32; 2],
    at: SectionPoint,
}

/// What a plane cuts from one triangle.
#[derive(Debug, Clone, Copy)]
struct Piece {
    triangle: u32,
    ends: [End; 2],
}

/// Joins pieces through the edges they share.
fn chained(pieces: &[Piece]) -> Vec<CutLine> {
    // Each end by its number: twice that of its piece, and one more for the second.
    let end_of = |end: usize| &pieces[end / 2].ends[end % 2];
    let mut by_edge: Vec<([u32; 2], usize)> = (0..2 * pieces.len())
        .map(|end| (end_of(end).edge, end))
        .collect();
    by_edge.sort_unstable();
    // All ends on the edge of each.
    let mut on_edge = vec![&by_edge[..0]; by_edge.len()];
    for run in by_edge.chunk_by(|a, b| a.0 == b.0) {
        for (_, end) in run {
            on_edge[*end] = run;
        }
    }
    let is_open = |end: usize| on_edge[end].len() == 1;
    let mut is_used = vec![false; pieces.len()];
    let mut lines = Vec::new();
    // Open lines from their ends first, closed ones from anywhere then.
    let opened = (0..pieces.len()).filter(|i| is_open(2 * i) || is_open(2 * i + 1));
    for start in opened.chain(0..pieces.len()) {
        if is_used[start] {
            continue;
        }
        let (a, b) = (2 * start, 2 * start + 1);
        let from_a = is_open(a) || !is_open(b);
        let (first, mut ahead) = if from_a { (a, b) } else { (b, a) };
        let mut line = CutLine {
            points: vec![end_of(first).at, end_of(ahead).at],
            triangles: vec![pieces[start].triangle],
        };
        is_used[start] = true;
        while let Some((_, met)) = on_edge[ahead].iter().find(|(_, end)| !is_used[end / 2]) {
            is_used[met / 2] = true;
            ahead = met ^ 1;
            line.points.push(end_of(ahead).at);
            line.triangles.push(pieces[met / 2].triangle);
        }
        lines.push(line);
    }
    lines.sort_by_key(|line| std::cmp::Reverse(line.points.len()));
    lines
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A cylinder along z without lids: radius 2 mm, 0 to 3 mm high.
    fn tube(sides: u32) -> Mesh {
        let vertices = (0..2 * sides)
            .map(|i| {
                let (sin, cos) =
                    (std::f64::consts::TAU * f64::from(i / 2) / f64::from(sides)).sin_cos();
                Point3::new(2.0 * cos, 2.0 * sin, 3.0 * f64::from(i % 2))
            })
            .collect();
        let triangles = (0..sides)
            .flat_map(|i| {
                let (a, b) = (2 * i, 2 * ((i + 1) % sides));
                [[a, b, b + 1], [a, b + 1, a + 1]]
            })
            .collect();
        Mesh::new(vertices, triangles, None).expect("a mesh")
    }

    fn length(line: &CutLine) -> f64 {
        line.points
            .windows(2)
            .map(|p| (p[1][0] - p[0][0]).hypot(p[1][1] - p[0][1]))
            .sum()
    }

    #[test]
    fn a_tube_is_cut_along_two_straight_lines() {
        let mesh = tube(60);
        let cutter = Cutter::new(&mesh, |_| true);
        for angle in [0.0, 0.3, 1.7_f64] {
            let plane = SectionPlane {
                origin: Point3::new(0.5, 0.0, 1.0),
                across: Vector2::new(angle.cos(), angle.sin()),
            };
            let lines = cutter.cut(&plane, -9.0..=9.0);
            assert_eq!(lines.len(), 2);
            for line in &lines {
                assert!((length(line) - 3.0).abs() < 1e-9 && !line.is_closed());
                assert_eq!(line.triangles.len(), line.points.len() - 1);
            }
            let one_side = cutter.cut(&plane, 0.0..=9.0);
            assert_eq!(one_side.len(), 1);
            assert!(one_side[0].points.iter().all(|p| p[0] > 0.0));
        }
    }

    #[test]
    fn a_ball_is_cut_along_one_closed_line() {
        // An octahedron: the cut through its middle is a square.
        let axes = [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]];
        let vertices = axes
            .iter()
            .flat_map(|a| [Point3::from(*a), Point3::from(a.map(|x| -x))])
            .collect();
        let triangles = (0..8_u32)
            .map(|i| [i & 1, 2 + (i >> 1 & 1), 4 + (i >> 2 & 1)])
            .collect();
        let mesh = Mesh::new(vertices, triangles, None).expect("a mesh");
        let plane = SectionPlane {
            origin: Point3::new(0.0, 0.1, 0.0),
            across: Vector2::x(),
        };
        let lines = Cutter::new(&mesh, |_| true).cut(&plane, -5.0..=5.0);
        assert_eq!(lines.len(), 1);
        assert!(lines[0].is_closed());
        assert!((length(&lines[0]) - 4.0 * 0.9 * 2f64.sqrt()).abs() < 1e-12);
        let beside = SectionPlane {
            origin: Point3::new(0.0, 1.1, 0.0),
            ..plane
        };
        assert!(
            Cutter::new(&mesh, |_| true)
                .cut(&beside, -5.0..=5.0)
                .is_empty()
        );
    }

    #[test]
    fn a_cut_in_any_direction_misses_no_triangle_and_takes_none_twice() {
        let mesh = tube(90);
        let cutter = Cutter::new(&mesh, |_| true);
        for step in 0..90 {
            let angle = f64::from(step) * 4f64.to_radians() + 0.003;
            let across = Vector2::new(angle.cos(), angle.sin());
            let plane = SectionPlane {
                origin: Point3::from(Vector2::new(-across.y, across.x).push(0.0) * 0.7),
                across,
            };
            let mut cut: Vec<u32> = cutter
                .cut(&plane, -9.0..=9.0)
                .into_iter()
                .flat_map(|line| line.triangles)
                .collect();
            cut.sort_unstable();
            let crosses = |t: &u32| cutter.piece(&plane, *t).is_some();
            let all: Vec<u32> = (0..mesh.triangles().len() as u32).filter(crosses).collect();
            assert_eq!(cut, all, "{step}");
            assert_eq!(cut.len(), 4);
        }
    }
}
