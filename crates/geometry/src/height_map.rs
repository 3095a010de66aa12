//! Orthographic height of a surface seen along an axis, on a square grid.
//!
//! A helper for finding things: undercuts are hidden in it, so no figure is
//! ever taken from a height map.

use nalgebra::{Point2, Point3, Vector2};
use std::ops::Range;

/// Side of a cell for finding crest, border and symmetry, mm.
pub const FINE_CELL_MM: f64 = 0.5;

/// Numbers of the cells whose centres, which lie at halves, are between two places.
fn centres_between(low: f64, high: f64) -> Range<usize> {
    let first = (low - 0.5).max(0.0);
    let whole = first as usize;
    // Conversion cuts off.
    let end = if high < 0.5 {
        0
    } else {
        (high - 0.5) as usize + 1
    };
    whole + usize::from((whole as f64) < first)..end
}

/// Height of the topmost surface over each cell; `NAN` where there is none.
#[derive(Debug, Clone)]
pub struct HeightMap {
    low: Point2<f64>,
    cell_mm: f64,
    cells_per_mm: f64,
    columns: usize,
    rows: usize,
    heights: Vec<f32>,
    shows_outside: Vec<bool>,
}

impl HeightMap {
    /// The map of triangles over vertices whose z is the height. Triangles are
    /// filled in, or a coarse place would show what lies beneath it.
    pub fn of(vertices: &[Point3<f64>], triangles: &[[u32; 3]], cell_mm: f64) -> Self {
        let (mut low, mut high) = (
            Point2::new(f64::INFINITY, f64::INFINITY),
            Point2::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        );
        for p in vertices {
            low = Point2::new(low.x.min(p.x), low.y.min(p.y));
            high = Point2::new(high.x.max(p.x), high.y.max(p.y));
        }
        if !low.x.is_finite() {
            (low, high) = (Point2::origin(), Point2::origin());
        }
        let cells_per_mm = 1.0 / cell_mm;
        let columns = ((high.x - low.x) * cells_per_mm) as usize + 1;
        let rows = ((high.y - low.y) * cells_per_mm) as usize + 1;
        let mut map = Self {
            low,
            cell_mm,
            cells_per_mm,
            columns,
            rows,
            heights: vec![f32::NAN; columns * rows],
            shows_outside: vec![false; columns * rows],
        };
        let in_cells: Vec<Point3<f64>> = (vertices.iter())
            .map(|p| {
                let place = (p.xy() - low) * cells_per_mm;
                Point3::new(place.x, place.y, p.z)
            })
            .collect();
        for corners in triangles {
            map.raise(corners.map(|v| in_cells[v as usize]));
        }
        map
    }

    /// Raises the cell under a triangle's middle, and those whose centres it
    /// covers, to it. Corners are in cells across, and in mm up.
    fn raise(&mut self, [a, b, c]: [Point3<f64>; 3]) {
        let (ab, ac) = (b.xy() - a.xy(), c.xy() - a.xy());
        // Twice the area in plan: positive where the outside is seen.
        let doubled_area = ab.perp(&ac);
        let outside = doubled_area > 0.0;
        let middle = (a.coords + b.coords + c.coords) / 3.0;
        self.raise_cell(middle.x as usize, middle.y as usize, middle.z, outside);
        if doubled_area == 0.0 {
            return;
        }
        let top = a.z.max(b.z).max(c.z) as f32;
        let columns = centres_between(a.x.min(b.x).min(c.x), a.x.max(b.x).max(c.x));
        let size = doubled_area.abs();
        let sense = doubled_area.signum();
        for row in centres_between(a.y.min(b.y).min(c.y), a.y.max(b.y).max(c.y)) {
            for column in columns.clone() {
                if self.heights[row * self.columns + column] >= top {
                    continue;
                }
                let place = Vector2::new(column as f64 + 0.5 - a.x, row as f64 + 0.5 - a.y);
                let (v, w) = (place.perp(&ac) * sense, ab.perp(&place) * sense);
                if v >= 0.0 && w >= 0.0 && v + w <= size {
                    let (v, w) = (v / size, w / size);
                    let height = a.z * (1.0 - v - w) + b.z * v + c.z * w;
                    self.raise_cell(column, row, height, outside);
                }
            }
        }
    }

    fn raise_cell(&mut self, column: usize, row: usize, height: f64, outside: bool) {
        let cell = row * self.columns + column;
        let height = height as f32;
        if self.heights[cell].is_nan() || self.heights[cell] < height {
            self.heights[cell] = height;
            self.shows_outside[cell] = outside;
        }
    }

    /// Whether a cell's topmost surface shows its outside.
    pub fn shows_outside(&self, cell: usize) -> bool {
        self.shows_outside[cell]
    }

    /// Side of a cell, mm.
    pub fn cell_mm(&self) -> f64 {
        self.cell_mm
    }

    /// Height at a place, mm; `None` off the surface.
    pub fn at(&self, place: Point2<f64>) -> Option<f64> {
        let i = self.cell_of(place)?;
        let height = self.heights[i];
        (!height.is_nan()).then_some(f64::from(height))
    }

    /// The cell that a place lies in; `None` off the map.
    pub fn cell_of(&self, place: Point2<f64>) -> Option<usize> {
        let (x, y) = (
            (place.x - self.low.x) * self.cells_per_mm,
            (place.y - self.low.y) * self.cells_per_mm,
        );
        let inside = x >= 0.0 && y >= 0.0 && x < self.columns as f64 && y < self.rows as f64;
        inside.then(|| y as usize * self.columns + x as usize)
    }

    /// Number of cells.
    pub fn cell_count(&self) -> usize {
        self.heights.len()
    }

    /// Centre of a cell.
    pub fn centre_of(&self, cell: usize) -> Point2<f64> {
        let (row, column) = (cell / self.columns, cell % self.columns);
        Point2::new(
            self.low.x + (column as f64 + 0.5) * self.cell_mm,
            self.low.y + (row as f64 + 0.5) * self.cell_mm,
        )
    }

    /// Centre and height of every cell that holds surface, with its number.
    pub fn cells(&self) -> impl Iterator<Item = (usize, Point3<f64>)> + '_ {
        self.heights
            .iter()
            .enumerate()
            .filter(|(_, h)| !h.is_nan())
            .map(|(i, &h)| {
                let centre = self.centre_of(i);
                (i, Point3::new(centre.x, centre.y, f64::from(h)))
            })
    }

    /// Whether a cell holds surface.
    pub fn has_surface(&self, cell: usize) -> bool {
        !self.heights[cell].is_nan()
    }

    /// The eight cells around a cell; `None` for those off the map.
    pub fn around(&self, cell: usize) -> impl Iterator<Item = Option<usize>> + '_ {
        const STEPS: [(isize, isize); 8] = [
            (-1, -1),
            (-1, 0),
            (-1, 1),
            (0, -1),
            (0, 1),
            (1, -1),
            (1, 0),
            (1, 1),
        ];
        let (row, column) = (cell / self.columns, cell % self.columns);
        STEPS.into_iter().map(move |(down, along)| {
            let row = row.checked_add_signed(down).filter(|&r| r < self.rows)?;
            let column = column
                .checked_add_signed(along)
                .filter(|&c| c < self.columns)?;
            Some(row * self.columns + column)
        })
    }

    /// Parts of the map, joined through sides and corners of cells, whose cells
    /// hold surface and are `chosen`; each as its cells.
    pub fn connected(&self, chosen: impl Fn(usize) -> bool) -> Vec<Vec<usize>> {
        let open = |cell: usize| !self.heights[cell].is_nan() && chosen(cell);
        let mut seen = vec![false; self.heights.len()];
        let mut parts = Vec::new();
        for start in 0..self.heights.len() {
            if seen[start] || !open(start) {
                continue;
            }
            seen[start] = true;
            let mut part = vec![start];
            let mut next = 0;
            while next < part.len() {
                let (row, column) = (part[next] / self.columns, part[next] % self.columns);
                next += 1;
                for r in row.saturating_sub(1)..(row + 2).min(self.rows) {
                    for c in column.saturating_sub(1)..(column + 2).min(self.columns) {
                        let cell = r * self.columns + c;
                        if !seen[cell] && open(cell) {
                            seen[cell] = true;
                            part.push(cell);
                        }
                    }
                }
            }
            parts.push(part);
        }
        parts
    }

    /// Depth of each cell below the grey-scale closing of the map with a square
    /// of the given half side: how deep the cell lies in a valley narrower than
    /// the square (Serra 1982; black top-hat). 0 off the surface.
    pub fn valley_depths(&self, half_side_mm: f64) -> Vec<f32> {
        self.top_hat(half_side_mm, 1.0)
    }

    /// Height of each cell over the grey-scale opening of the map: how high the
    /// cell stands on a ridge narrower than the square, with lower surface on
    /// both sides (white top-hat). 0 off the surface.
    pub fn ridge_heights(&self, half_side_mm: f64) -> Vec<f32> {
        self.top_hat(half_side_mm, -1.0)
    }

    /// Depths of valleys, or with a sign of -1 those of the map upside down.
    fn top_hat(&self, half_side_mm: f64, sign: f32) -> Vec<f32> {
        let reach = (half_side_mm / self.cell_mm).round() as usize;
        // Room around the map, or its rim would count as the foot of a valley.
        let (columns, rows) = (self.columns + 2 * reach, self.rows + 2 * reach);
        let mut padded = vec![f32::NEG_INFINITY; columns * rows];
        for row in 0..self.rows {
            let start = (row + reach) * columns + reach;
            let own = &self.heights[row * self.columns..(row + 1) * self.columns];
            for (cell, height) in padded[start..].iter_mut().zip(own) {
                if !height.is_nan() {
                    *cell = sign * height;
                }
            }
        }
        let raised = square_filter(&padded, columns, reach, f32::NEG_INFINITY, f32::max);
        let closed = square_filter(&raised, columns, reach, f32::INFINITY, f32::min);
        (0..self.heights.len())
            .map(|i| {
                let (row, column) = (i / self.columns, i % self.columns);
                if self.heights[i].is_nan() {
                    0.0
                } else {
                    closed[(row + reach) * columns + column + reach] - sign * self.heights[i]
                }
            })
            .collect()
    }
}

/// A moving maximum or minimum over a square window, rows then columns; what
/// lies off the grid is `nothing` to it.
fn square_filter(
    values: &[f32],
    columns: usize,
    reach: usize,
    nothing: f32,
    pick: impl Fn(f32, f32) -> f32 + Copy,
) -> Vec<f32> {
    let along_rows = row_filter(values, columns, reach, nothing, pick);
    let turned = transposed(&along_rows, columns);
    let rows = values.len() / columns;
    let along_columns = row_filter(&turned, rows, reach, nothing, pick);
    transposed(&along_columns, rows)
}

/// The filter along each row, by windows that double in width: as many passes
/// as the width has binary digits.
fn row_filter(
    values: &[f32],
    columns: usize,
    reach: usize,
    nothing: f32,
    pick: impl Fn(f32, f32) -> f32,
) -> Vec<f32> {
    let width = 2 * reach + 1;
    let mut out = Vec::with_capacity(values.len());
    let mut line = vec![nothing; columns + 2 * reach];
    for row in values.chunks_exact(columns) {
        line.fill(nothing);
        line[reach..reach + columns].copy_from_slice(row);
        let mut done = 1;
        while 2 * done <= width {
            for i in 0..line.len() - done {
                line[i] = pick(line[i], line[i + done]);
            }
            done *= 2;
        }
        out.extend((0..columns).map(|i| pick(line[i], line[i + width - done])));
    }
    out
}

fn transposed(values: &[f32], columns: usize) -> Vec<f32> {
    let rows = values.len() / columns;
    (0..columns)
        .flat_map(|column| (0..rows).map(move |row| values[row * columns + column]))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_groove_has_the_depth_it_was_cut_with() {
        // A plate 40 x 20 mm with a groove 6 mm wide and 3 mm deep along y, and
        // a second plate below it that must not show; in triangles of 2 mm.
        let mut vertices = Vec::new();
        let mut triangles = Vec::new();
        for (floor, deep) in [(0.0, 3.0), (-10.0, 0.0)] {
            let first = vertices.len() as u32;
            for i in 0..=20_u32 {
                for j in 0..=10_u32 {
                    let (x, y) = (2.0 * f64::from(i), 2.0 * f64::from(j));
                    let depth = if (17.0..23.0).contains(&x) { deep } else { 0.0 };
                    vertices.push(Point3::new(x, y, floor - depth));
                }
            }
            for i in 0..20 {
                for j in 0..10 {
                    let k = first + i * 11 + j;
                    triangles.extend([[k, k + 11, k + 1], [k + 1, k + 11, k + 12]]);
                }
            }
        }
        let map = HeightMap::of(&vertices, &triangles, 0.5);
        let depths = map.valley_depths(5.0);
        for (i, centre) in map.cells() {
            // Walls 2 mm wide lead down to the floor from 18 to 22 mm.
            let expected = if (18.5..21.5).contains(&centre.x) {
                3.0
            } else if (16.0..24.0).contains(&centre.x) {
                continue;
            } else {
                0.0
            };
            assert!((depths[i] - expected).abs() < 1e-6, "{centre}");
        }
    }
}
