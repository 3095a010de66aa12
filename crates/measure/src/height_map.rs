//! Orthographic height of a surface seen along an axis, on a square grid.
//!
//! A helper for finding things: undercuts are hidden in it, so no figure is
//! ever taken from a height map.

use nalgebra::{Point2, Point3};

/// Height of the topmost surface over each cell; `NAN` where there is none.
#[derive(Debug, Clone)]
pub struct HeightMap {
    low: Point2<f64>,
    cell_mm: f64,
    columns: usize,
    rows: usize,
    heights: Vec<f32>,
}

impl HeightMap {
    /// The map of points whose z is the height, with gaps of a cell or two
    /// between points filled from their neighbours.
    pub fn of(points: impl Iterator<Item = Point3<f64>> + Clone, cell_mm: f64) -> Self {
        let (mut low, mut high) = (
            Point2::new(f64::INFINITY, f64::INFINITY),
            Point2::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        );
        for p in points.clone() {
            low = Point2::new(low.x.min(p.x), low.y.min(p.y));
            high = Point2::new(high.x.max(p.x), high.y.max(p.y));
        }
        if !low.x.is_finite() {
            (low, high) = (Point2::origin(), Point2::origin());
        }
        let columns = ((high.x - low.x) / cell_mm) as usize + 1;
        let rows = ((high.y - low.y) / cell_mm) as usize + 1;
        let mut map = Self {
            low,
            cell_mm,
            columns,
            rows,
            heights: vec![f32::NAN; columns * rows],
        };
        for p in points {
            let column = ((p.x - low.x) / cell_mm) as usize;
            let row = ((p.y - low.y) / cell_mm) as usize;
            let height = &mut map.heights[row * columns + column];
            // `max` of NaN and a number is the number.
            *height = height.max(p.z as f32);
        }
        map.fill_gaps();
        map.fill_gaps();
        map
    }

    /// Side of a cell that vertices at this distance fill, mm.
    pub fn cell_for(edge_mm: f64) -> f64 {
        (1.25 * edge_mm).max(0.5)
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
            (place.x - self.low.x) / self.cell_mm,
            (place.y - self.low.y) / self.cell_mm,
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

    /// Depth of each cell below the grey-scale closing of the map with a square
    /// of the given half side: how deep the cell lies in a valley narrower than
    /// the square (Serra 1982; black top-hat). 0 off the surface.
    pub fn valley_depths(&self, half_side_mm: f64) -> Vec<f32> {
        let reach = (half_side_mm / self.cell_mm).round() as usize;
        let ground: Vec<f32> = self
            .heights
            .iter()
            .map(|&h| if h.is_nan() { f32::NEG_INFINITY } else { h })
            .collect();
        // Room around the map, or its rim would count as the foot of a valley.
        let (columns, rows) = (self.columns + 2 * reach, self.rows + 2 * reach);
        let mut padded = vec![f32::NEG_INFINITY; columns * rows];
        for row in 0..self.rows {
            let start = (row + reach) * columns + reach;
            padded[start..start + self.columns]
                .copy_from_slice(&ground[row * self.columns..(row + 1) * self.columns]);
        }
        let raised = square_filter(&padded, columns, rows, reach, f32::max);
        let closed = square_filter(&raised, columns, rows, reach, f32::min);
        (0..self.heights.len())
            .map(|i| {
                let (row, column) = (i / self.columns, i % self.columns);
                if self.heights[i].is_nan() {
                    0.0
                } else {
                    closed[(row + reach) * columns + column + reach] - self.heights[i]
                }
            })
            .collect()
    }

    /// Gives each empty cell with five or more filled neighbours their mean height.
    fn fill_gaps(&mut self) {
        let before = self.heights.clone();
        for row in 1..self.rows.saturating_sub(1) {
            for column in 1..self.columns.saturating_sub(1) {
                let i = row * self.columns + column;
                if !before[i].is_nan() {
                    continue;
                }
                let around = [
                    i - self.columns - 1,
                    i - self.columns,
                    i - self.columns + 1,
                    i - 1,
                    i + 1,
                    i + self.columns - 1,
                    i + self.columns,
                    i + self.columns + 1,
                ];
                let (mut sum, mut filled) = (0.0, 0);
                for j in around {
                    if !before[j].is_nan() {
                        sum += before[j];
                        filled += 1;
                    }
                }
                if filled >= 5 {
                    self.heights[i] = sum / filled as f32;
                }
            }
        }
    }
}

/// A moving maximum or minimum over a square window, rows then columns; what
/// lies off the grid does not count.
fn square_filter(
    values: &[f32],
    columns: usize,
    rows: usize,
    reach: usize,
    pick: impl Fn(f32, f32) -> f32,
) -> Vec<f32> {
    let mut along_rows = vec![0.0; values.len()];
    for row in 0..rows {
        let line = &values[row * columns..(row + 1) * columns];
        for column in 0..columns {
            let window = &line[column.saturating_sub(reach)..(column + reach + 1).min(columns)];
            along_rows[row * columns + column] = window.iter().copied().fold(line[column], &pick);
        }
    }
    let mut out = along_rows.clone();
    for row in 0..rows {
        for other in row.saturating_sub(reach)..(row + reach + 1).min(rows) {
            for column in 0..columns {
                let at = row * columns + column;
                out[at] = pick(out[at], along_rows[other * columns + column]);
            }
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_groove_has_the_depth_it_was_cut_with() {
        // A plate 40 x 20 mm with a groove 6 mm wide and 3 mm deep along y.
        let points = (0..160).flat_map(|i| {
            (0..80).map(move |j| {
                let (x, y) = (f64::from(i) * 0.25, f64::from(j) * 0.25);
                let depth = if (17.0..23.0).contains(&x) { 3.0 } else { 0.0 };
                Point3::new(x, y, -depth)
            })
        });
        let map = HeightMap::of(points, 0.5);
        let depths = map.valley_depths(5.0);
        for (i, centre) in map.cells() {
            let expected = if (17.0..23.0).contains(&centre.x) {
                3.0
            } else {
                0.0
            };
            assert!((depths[i] - expected).abs() < 1e-6, "{centre}");
        }
    }
}
