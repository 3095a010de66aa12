//! Closed triangle meshes of solids: surface nets on a grid.

use nalgebra::{Point3, Vector3};
use rayon::prelude::*;

/// A function that is negative inside, positive outside and about as large as
/// the distance to the surface.
pub(crate) trait Solid: Sync {
    /// What can be worked out once for all points above one place of the plan.
    type Column;

    /// The column over a point of the plan.
    fn column(&self, x: f64, y: f64) -> Self::Column;

    /// The value at a height in a column.
    fn value(&self, column: &Self::Column, z: f64) -> f64;

    /// The value at a point.
    fn at(&self, p: &Point3<f64>) -> f64 {
        self.value(&self.column(p.x, p.y), p.z)
    }
}

/// Grid to mesh on: lowest corner, points along each axis, distance between points.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Grid {
    /// Lowest corner.
    pub origin: Point3<f64>,
    /// Number of points along x, y, z.
    pub size: [usize; 3],
    /// Distance between neighbours, mm.
    pub step: f64,
}

impl Grid {
    /// The grid of a given step that covers a box.
    #[must_use]
    pub(crate) fn covering(low: Point3<f64>, high: Point3<f64>, step: f64) -> Self {
        let size = [0, 1, 2].map(|k| ((high[k] - low[k]) / step).ceil() as usize + 2);
        Self {
            origin: low,
            size,
            step,
        }
    }

    fn coordinate(&self, axis: usize, index: usize) -> f64 {
        self.origin[axis] + index as f64 * self.step
    }

    fn strides(&self) -> [usize; 3] {
        [self.size[1] * self.size[2], self.size[2], 1]
    }
}

/// The eight corners of a cell, as steps along x, y, z.
const CORNERS: [[usize; 3]; 8] = [
    [0, 0, 0],
    [1, 0, 0],
    [0, 1, 0],
    [1, 1, 0],
    [0, 0, 1],
    [1, 0, 1],
    [0, 1, 1],
    [1, 1, 1],
];

/// Bits of the four corners of each face, round about.
const FACES: [[usize; 4]; 6] = [
    [0, 2, 6, 4],
    [1, 3, 7, 5],
    [0, 1, 5, 4],
    [2, 3, 7, 6],
    [0, 1, 3, 2],
    [4, 5, 7, 6],
];

/// The twelve edges of a cell as pairs of corners.
const EDGES: [[usize; 2]; 12] = [
    [0, 1],
    [2, 3],
    [4, 5],
    [6, 7],
    [0, 2],
    [1, 3],
    [4, 6],
    [5, 7],
    [0, 4],
    [1, 5],
    [2, 6],
    [3, 7],
];

/// Values this many steps from the surface are not worked out exactly.
const BAND_STEPS: f64 = 3.5;

/// Vertices and outward-wound triangles of the surface of a solid.
#[must_use]
pub(crate) fn surface<S: Solid>(solid: &S, grid: &Grid) -> (Vec<Point3<f64>>, Vec<[u32; 3]>) {
    let mut values = sampled(solid, grid);
    make_well_composed(&mut values, grid);
    let cells = Cells::crossed(&values, grid);
    let vertices = cells.vertices(solid, &values, grid);
    let triangles = cells.triangles(&values, grid, &vertices);
    (vertices, triangles)
}

/// Values on the grid; far from the surface only their sign is right.
fn sampled<S: Solid>(solid: &S, grid: &Grid) -> Vec<f32> {
    let [_, ny, nz] = grid.size;
    let mut values = vec![0.0; grid.size.iter().product()];
    values.par_chunks_mut(nz).enumerate().for_each(|(c, out)| {
        let column = solid.column(grid.coordinate(0, c / ny), grid.coordinate(1, c % ny));
        let mut k = 0;
        while k < nz {
            let value = solid.value(&column, grid.coordinate(2, k));
            let free = ((value.abs() / grid.step - BAND_STEPS) / 1.5).max(0.0) as usize + 1;
            let end = (k + free).min(nz);
            out[k..end].fill(value as f32);
            k = end;
        }
    });
    values
}

/// Moves single grid points outside where two parts of the solid would touch
/// along an edge or at a corner only, so that the surface is a manifold.
fn make_well_composed(values: &mut [f32], grid: &Grid) {
    let strides = grid.strides();
    let offsets = CORNERS.map(|c| (0..3).map(|k| c[k] * strides[k]).sum::<usize>());
    let mut open = mixed_cells(values, grid, &offsets);
    while let Some(cell) = open.pop() {
        let corner = offsets.map(|o| cell + o);
        let inside = corner.map(|c| values[c] < 0.0);
        let Some(flipped) = ambiguous_corner(&inside, |k| values[corner[k]]) else {
            continue;
        };
        let point = corner[flipped];
        values[point] = (grid.step * 1e-3) as f32;
        open.extend(
            offsets
                .iter()
                .filter_map(|o| point.checked_sub(*o))
                .filter(|&c| {
                    let at = [
                        c / strides[0],
                        c / strides[1] % grid.size[1],
                        c % grid.size[2],
                    ];
                    (0..3).all(|k| at[k] + 1 < grid.size[k])
                }),
        );
    }
}

fn mixed_cells(values: &[f32], grid: &Grid, offsets: &[usize; 8]) -> Vec<usize> {
    let [nx, ny, nz] = grid.size;
    (0..nx - 1)
        .into_par_iter()
        .flat_map_iter(|i| {
            (0..ny - 1).flat_map(move |j| {
                let start = (i * ny + j) * nz;
                (start..start + nz - 1).filter(move |&cell| {
                    let inside = values[cell] < 0.0;
                    offsets.iter().any(|o| (values[cell + o] < 0.0) != inside)
                })
            })
        })
        .collect()
}

/// The inside corner to give up in a cell where parts touch along an edge or
/// at a corner only: the one nearest to the surface.
fn ambiguous_corner(inside: &[bool; 8], value: impl Fn(usize) -> f32) -> Option<usize> {
    let nearest = |corners: &[usize]| {
        corners
            .iter()
            .copied()
            .filter(|&k| inside[k])
            .max_by(|&a, &b| value(a).total_cmp(&value(b)))
    };
    for face in &FACES {
        let [a, b, c, d] = face.map(|k| inside[k]);
        if a == c && b == d && a != b {
            return nearest(face);
        }
    }
    let count = inside.iter().filter(|&&i| i).count();
    let lonely = |of: bool| (0..4).any(|k| inside[k] == of && inside[7 - k] == of);
    ((count == 2 && lonely(true)) || (count == 6 && lonely(false)))
        .then(|| nearest(&[0, 1, 2, 3, 4, 5, 6, 7]))
        .flatten()
}

/// The cells that the surface crosses; each gets one vertex.
struct Cells {
    /// Number of the first cell of each column of cells (by grid column).
    first: Vec<u32>,
    /// Height index of each cell.
    heights: Vec<u32>,
}

impl Cells {
    fn crossed(values: &[f32], grid: &Grid) -> Self {
        let strides = grid.strides();
        let offsets = CORNERS.map(|c| (0..3).map(|k| c[k] * strides[k]).sum::<usize>());
        let cells = mixed_cells(values, grid, &offsets);
        let nz = grid.size[2];
        let mut first = vec![0u32; grid.size[0] * grid.size[1] + 1];
        for cell in &cells {
            first[cell / nz + 1] += 1;
        }
        for c in 1..first.len() {
            first[c] += first[c - 1];
        }
        Self {
            first,
            heights: cells.iter().map(|cell| (cell % nz) as u32).collect(),
        }
    }

    fn vertex(&self, column: usize, height: usize) -> Option<u32> {
        let (from, to) = (self.first[column], self.first[column + 1]);
        self.heights[from as usize..to as usize]
            .binary_search(&(height as u32))
            .ok()
            .map(|i| from + i as u32)
    }

    fn columns(&self) -> impl IndexedParallelIterator<Item = (usize, std::ops::Range<usize>)> + '_ {
        (0..self.first.len() - 1)
            .into_par_iter()
            .map(|c| (c, self.first[c] as usize..self.first[c + 1] as usize))
    }

    fn vertices<S: Solid>(&self, solid: &S, values: &[f32], grid: &Grid) -> Vec<Point3<f64>> {
        let [_, ny, nz] = grid.size;
        self.columns()
            .flat_map_iter(|(column, cells)| {
                cells.map(move |n| {
                    let k = self.heights[n] as usize;
                    place_vertex(
                        solid,
                        values,
                        grid,
                        [column / ny, column % ny, k],
                        column * nz + k,
                    )
                })
            })
            .collect()
    }

    fn triangles(&self, values: &[f32], grid: &Grid, vertices: &[Point3<f64>]) -> Vec<[u32; 3]> {
        let [_, ny, nz] = grid.size;
        let strides = grid.strides();
        self.columns()
            .flat_map_iter(|(column, cells)| {
                let mut quads = Vec::new();
                for n in cells {
                    let k = self.heights[n] as usize;
                    let cell = column * nz + k;
                    // The edges that meet at the cell's lowest corner.
                    for (axis, (u, v)) in [(1, 2), (2, 0), (0, 1)].into_iter().enumerate() {
                        let (from, to) = (values[cell] < 0.0, values[cell + strides[axis]] < 0.0);
                        if from == to {
                            continue;
                        }
                        let step = [ny, 1, 0];
                        let around = [[0, 0], [1, 0], [1, 1], [0, 1]].map(|[du, dv]| {
                            let height =
                                k.checked_sub(usize::from(u == 2) * du + usize::from(v == 2) * dv)?;
                            self.vertex(column.checked_sub(step[u] * du + step[v] * dv)?, height)
                        });
                        if let [Some(a), Some(b), Some(c), Some(d)] = around {
                            let quad = if from { [a, b, c, d] } else { [a, d, c, b] };
                            quads.extend(split(quad, vertices));
                        }
                    }
                }
                quads
            })
            .collect()
    }
}

/// Two triangles of a quadrilateral, cut along its shorter diagonal.
fn split([a, b, c, d]: [u32; 4], vertices: &[Point3<f64>]) -> [[u32; 3]; 2] {
    let length = |p: u32, q: u32| (vertices[p as usize] - vertices[q as usize]).norm_squared();
    if length(a, c) <= length(b, d) {
        [[a, b, c], [a, c, d]]
    } else {
        [[a, b, d], [b, c, d]]
    }
}

/// The vertex of a cell: the mean of the crossings on its edges, then moved
/// onto the surface along the mean gradient.
fn place_vertex<S: Solid>(
    solid: &S,
    values: &[f32],
    grid: &Grid,
    cell: [usize; 3],
    index: usize,
) -> Point3<f64> {
    let strides = grid.strides();
    let corner = CORNERS
        .map(|c| f64::from(values[index + (0..3).map(|k| c[k] * strides[k]).sum::<usize>()]));
    let (mut sum, mut count) = (Vector3::zeros(), 0.0);
    for [a, b] in EDGES {
        if (corner[a] < 0.0) == (corner[b] < 0.0) {
            continue;
        }
        let share = corner[a] / (corner[a] - corner[b]);
        sum += Vector3::from([0, 1, 2].map(|k| {
            let (from, to) = (CORNERS[a][k] as f64, CORNERS[b][k] as f64);
            from + share * (to - from)
        }));
        count += 1.0;
    }
    let within: Vector3<f64> = sum / f64::max(count, 1.0);
    let start =
        Point3::from([0, 1, 2].map(|k| grid.coordinate(k, cell[k]) + within[k] * grid.step));
    let gradient = trilinear_gradient(&corner, &within) / grid.step;
    onto_surface(solid, start, gradient, grid.step)
}

fn trilinear_gradient(corner: &[f64; 8], within: &Vector3<f64>) -> Vector3<f64> {
    let mut gradient = Vector3::zeros();
    for (value, at) in corner.iter().zip(CORNERS) {
        let weight = |k: usize| {
            if at[k] == 1 {
                within[k]
            } else {
                1.0 - within[k]
            }
        };
        for k in 0..3 {
            let sign = if at[k] == 1 { 1.0 } else { -1.0 };
            gradient[k] += sign * value * weight((k + 1) % 3) * weight((k + 2) % 3);
        }
    }
    gradient
}

fn onto_surface<S: Solid>(
    solid: &S,
    start: Point3<f64>,
    gradient: Vector3<f64>,
    step: f64,
) -> Point3<f64> {
    let steepness = gradient.norm();
    if steepness < 0.1 {
        return start;
    }
    let direction = gradient / steepness;
    let (mut moved, mut slope) = (0.0, steepness);
    let mut last = solid.at(&start);
    for _ in 0..2 {
        let change = (-last / slope).clamp(-0.5 * step, 0.5 * step);
        let next = solid.at(&(start + direction * (moved + change)));
        if next.abs() > last.abs() {
            break;
        }
        if change.abs() > 1e-6 {
            slope = ((next - last) / change).clamp(0.3 * steepness, 3.0 * steepness);
        }
        moved += change;
        last = next;
    }
    start + direction * moved
}
