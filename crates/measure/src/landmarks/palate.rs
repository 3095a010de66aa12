//! Relief of the palate: the incisive papilla (a hollow in the negative, just
//! palatal to the crest, LM-01), rugae (LM-02) and foveae (pimples, LM-07).
//!
//! Relief is what departs from the shape that neighbouring places share. Before
//! the rugae that shape is the section across the ridge, which changes slowly
//! along it: for each distance from the crest line a parabola along the crest,
//! fitted so that a part of the places may be something else.

use super::figures::{Seen, Unseen};
use super::ground::Ground;
use crate::anatomy;
use nalgebra::{Matrix3, Matrix4, Point2, Point3, Vector2, Vector3, Vector4};

/// Step of the grid that relief is looked at on, mm.
const GRID_STEP_MM: f64 = 0.5;

/// How far along the crest to either side of the midline neighbours lie, mm.
const ALONG_MM: f64 = 9.0;

/// The front of the crest in plan as one smooth curve: the bottom of a trough is
/// level, and the crest line's own points wander across it.
struct Front {
    /// Coefficients of 1, x, x², x⁴.
    shape: Vector4<f64>,
}

impl Front {
    fn of(ground: &Ground<'_>) -> Option<Self> {
        const WITHIN_MM: f64 = 13.0;
        let (mut matrix, mut side) = (Matrix4::zeros(), Vector4::zeros());
        let crest = ground.crest().filter(|p| p.x.abs() <= WITHIN_MM);
        for point in crest {
            let basis = Self::basis(point.x);
            matrix += basis * basis.transpose();
            side += basis * point.y;
        }
        let shape = matrix.cholesky()?.solve(&side);
        Some(Self { shape })
    }

    fn basis(x: f64) -> Vector4<f64> {
        Vector4::new(1.0, x, x * x, x.powi(4))
    }

    /// The place at x, and the direction away from the inside of the arch.
    fn at(&self, x: f64) -> (Point2<f64>, Vector2<f64>) {
        let slope = Vector4::new(0.0, 1.0, 2.0 * x, 4.0 * x.powi(3)).dot(&self.shape);
        let place = Point2::new(x, Self::basis(x).dot(&self.shape));
        (place, Vector2::new(-slope, 1.0).normalize())
    }
}

/// A place of the grid: its height and how far it stands over the shape that its
/// neighbours share, mm; `None` where nothing was scanned.
#[derive(Debug, Clone, Copy)]
struct Cell {
    place: Point2<f64>,
    height: Option<f64>,
    over: Option<f64>,
}

/// A grid of relief along and across the crest.
struct Relief {
    /// Toward the palate from the crest, mm, for each row.
    palatal: Vec<f64>,
    cells: Vec<Vec<Cell>>,
    /// Standard deviation of what is left, mm.
    scatter_mm: f64,
}

impl Relief {
    fn of(ground: &Ground<'_>) -> Option<Self> {
        let front = Front::of(ground)?;
        let along: Vec<f64> = steps(-ALONG_MM, ALONG_MM);
        let palatal: Vec<f64> = steps(
            *anatomy::PAPILLA_PALATAL_OF_CREST_MM.start() - 2.0,
            *anatomy::PAPILLA_PALATAL_OF_CREST_MM.end() + 4.0,
        );
        let columns: Vec<_> = along.iter().map(|&x| front.at(x)).collect();
        let cells: Vec<Vec<Cell>> = palatal
            .iter()
            .map(|&inward| {
                let row: Vec<(Point2<f64>, Option<f64>)> = columns
                    .iter()
                    .map(|(crest, outward)| crest - outward * inward)
                    .map(|place| (place, ground.map.at(place)))
                    .collect();
                let beside: Vec<(f64, f64)> = (along.iter().zip(&row))
                    .filter(|(_, (place, _))| place.x.abs() > anatomy::PAPILLA_ASIDE_MM + 0.5)
                    .filter_map(|(&s, (_, height))| Some((s, (*height)?)))
                    .collect();
                let common = robust_parabola(&beside);
                let over = |s: f64, height: Option<f64>| {
                    Some(height? - common?.dot(&Vector3::new(1.0, s, s * s)))
                };
                (row.iter().zip(&along))
                    .map(|(&(place, height), &s)| Cell {
                        place,
                        height,
                        over: over(s, height),
                    })
                    .collect()
            })
            .collect();
        let over = cells.iter().flatten().filter_map(|cell| cell.over);
        let mut sizes: Vec<f64> = over.map(f64::abs).collect();
        if sizes.len() < 100 {
            return None;
        }
        let middle = sizes.len() / 2;
        let (_, median, _) = sizes.select_nth_unstable_by(middle, f64::total_cmp);
        let scatter_mm = 1.4826 * *median;
        Some(Self {
            palatal,
            cells,
            scatter_mm,
        })
    }

    /// Depth of a bell-shaped hollow of the papilla's widths round a place, by
    /// least squares with the level around free; `None` where much is missing.
    fn hollow_at(&self, place: &Point2<f64>) -> Option<f64> {
        const REACH: f64 = 2.5;
        const LEAST_SHARE: f64 = 0.9;
        let mut sums = [0.0; 5];
        let mut within = 0.0;
        for cell in self.cells.iter().flatten() {
            let aside = cell.place - place;
            let off = (aside.x / anatomy::PAPILLA_BELL_WIDTHS_MM[0])
                .hypot(aside.y / anatomy::PAPILLA_BELL_WIDTHS_MM[1]);
            if off > REACH {
                continue;
            }
            within += 1.0;
            let Some(over) = cell.over else { continue };
            let bell = (-0.5 * off * off).exp();
            for (sum, term) in sums
                .iter_mut()
                .zip([1.0, bell, bell * bell, over, bell * over])
            {
                *sum += term;
            }
        }
        let [n, b, bb, h, bh] = sums;
        let spread = n * bb - b * b;
        (n >= LEAST_SHARE * within && spread > 0.0).then(|| -(n * bh - b * h) / spread)
    }
}

/// The incisive papilla.
pub(super) fn papilla(ground: &Ground<'_>) -> Result<Seen, Unseen> {
    let relief = Relief::of(ground).ok_or(Unseen::NoSurface)?;
    let deepest = (relief.palatal.iter().zip(&relief.cells))
        .filter(|(palatal, _)| anatomy::PAPILLA_PALATAL_OF_CREST_MM.contains(*palatal))
        .flat_map(|(_, row)| row)
        .filter(|cell| cell.place.x.abs() <= anatomy::PAPILLA_ASIDE_MM)
        .filter_map(|cell| {
            let point = Point3::new(cell.place.x, cell.place.y, cell.height?);
            Some((point, relief.hollow_at(&cell.place)?))
        })
        .max_by(|a, b| a.1.total_cmp(&b.1));
    let least_mm = anatomy::PAPILLA_LEAST_DEPTH_MM.max(4.0 * ground.noise_mm);
    match deepest {
        Some((point, depth)) if depth >= least_mm => Ok(Seen {
            point,
            uncertainty_mm: 0.9
                + anatomy::PAPILLA_BELL_WIDTHS_MM[1] * (relief.scatter_mm / depth).min(1.0),
            confidence: depth / (depth + least_mm),
            relief_mm: Some(depth),
        }),
        Some(_) => Err(Unseen::NoRelief { least_mm }),
        None => Err(Unseen::NoSurface),
    }
}

/// Rugae: waves of the anterior palate to one or both sides of the raphe; the
/// place is the middle of the region that they lie in.
pub(super) fn rugae(ground: &Ground<'_>) -> Result<Seen, Unseen> {
    let (front, _) = ground.crest_at(0.0).ok_or(Unseen::NoSurface)?;
    let mut waves = Vec::new();
    for side in [-1.0, 1.0] {
        for aside in steps(anatomy::RUGAE_ASIDE_MM[0], anatomy::RUGAE_ASIDE_MM[1]) {
            let heights: Vec<f64> = steps(
                anatomy::RUGAE_BEHIND_FRONT_MM[0],
                anatomy::RUGAE_BEHIND_FRONT_MM[1],
            )
            .iter()
            .map_while(|behind| ground.map.at(Point2::new(side * aside, front.y - behind)))
            .collect();
            // What is left over a running mean over 3 mm, which rugae do not follow.
            let reach = (1.5 / GRID_STEP_MM) as usize;
            waves.extend((reach..heights.len().saturating_sub(reach)).map(|i| {
                let window = &heights[i - reach..=i + reach];
                heights[i] - window.iter().sum::<f64>() / window.len() as f64
            }));
        }
    }
    if waves.len() < 50 {
        return Err(Unseen::NoSurface);
    }
    let wave_mm = (waves.iter().map(|w| w * w).sum::<f64>() / waves.len() as f64).sqrt();
    let least_mm = anatomy::RUGAE_LEAST_WAVE_MM.max(2.0 * ground.noise_mm);
    let middle = Point2::new(
        0.0,
        front.y - (anatomy::RUGAE_BEHIND_FRONT_MM[0] + anatomy::RUGAE_BEHIND_FRONT_MM[1]) / 2.0,
    );
    let height = ground.map.at(middle).ok_or(Unseen::NoSurface)?;
    if wave_mm < least_mm {
        return Err(Unseen::NoRelief { least_mm });
    }
    Ok(Seen {
        point: Point3::new(middle.x, middle.y, height),
        uncertainty_mm: (anatomy::RUGAE_BEHIND_FRONT_MM[1] - anatomy::RUGAE_BEHIND_FRONT_MM[0])
            / 2.0,
        confidence: wave_mm / (wave_mm + least_mm),
        relief_mm: Some(wave_mm),
    })
}

/// The foveae: two pimples side by side, near the midline, a little before the
/// back of the impression, which lies at `back` there. The place is between them.
pub(super) fn foveae(ground: &Ground<'_>, back: &Point3<f64>) -> Result<Seen, Unseen> {
    /// Coarser scans have less than two points on one, mm.
    const COARSEST_MM: f64 = 0.4;
    if ground.edge_mm > COARSEST_MM {
        return Err(Unseen::TooCoarse {
            edge_mm: ground.edge_mm,
            coarsest_mm: COARSEST_MM,
        });
    }
    let best = |side: f64| -> Option<(Point2<f64>, f64)> {
        let behind = steps(
            anatomy::FOVEAE_BEFORE_EDGE_MM[0],
            anatomy::FOVEAE_BEFORE_EDGE_MM[1],
        );
        steps(anatomy::FOVEAE_ASIDE_MM[0], anatomy::FOVEAE_ASIDE_MM[1])
            .into_iter()
            .flat_map(|aside| behind.iter().map(move |b| (aside, *b)))
            .map(|(aside, before)| Point2::new(side * aside, back.y + before))
            .filter_map(|place| Some((place, height_over_ring(ground, place)?)))
            .max_by(|a, b| a.1.total_cmp(&b.1))
    };
    let (Some(one), Some(other)) = (best(-1.0), best(1.0)) else {
        return Err(Unseen::NoSurface);
    };
    let least_mm = anatomy::FOVEAE_LEAST_HEIGHT_MM.max(4.0 * ground.noise_mm);
    let height = one.1.min(other.1);
    if height < least_mm || (one.0.y - other.0.y).abs() > anatomy::FOVEAE_LEVEL_WITHIN_MM {
        return Err(Unseen::NoRelief { least_mm });
    }
    let between = nalgebra::center(&one.0, &other.0);
    let z = ground.map.at(between).ok_or(Unseen::NoSurface)?;
    Ok(Seen {
        point: Point3::new(between.x, between.y, z),
        uncertainty_mm: 1.0,
        confidence: height / (height + least_mm),
        relief_mm: Some(height),
    })
}

/// How far a place stands over the mean of a ring round it, mm.
fn height_over_ring(ground: &Ground<'_>, place: Point2<f64>) -> Option<f64> {
    const RING_MM: f64 = 1.75;
    const POINTS: usize = 16;
    let ring = (0..POINTS)
        .map(|k| {
            let (sin, cos) = (std::f64::consts::TAU * k as f64 / POINTS as f64).sin_cos();
            ground.map.at(place + Vector2::new(cos, sin) * RING_MM)
        })
        .sum::<Option<f64>>()?;
    Some(ground.map.at(place)? - ring / POINTS as f64)
}

/// Values a step apart from one to the other, both included.
fn steps(from: f64, to: f64) -> Vec<f64> {
    let count = ((to - from) / GRID_STEP_MM).round() as usize;
    (0..=count)
        .map(|i| from + i as f64 * GRID_STEP_MM)
        .collect()
}

/// Coefficients of a parabola through heights at places along a line (biweight,
/// Beaton and Tukey 1974).
fn robust_parabola(heights: &[(f64, f64)]) -> Option<Vector3<f64>> {
    const ROUNDS: usize = 8;
    const FLOOR_MM: f64 = 0.02;
    const LEAST: usize = 12;
    let seen: Vec<(Vector3<f64>, f64)> = heights
        .iter()
        .map(|&(s, height)| (Vector3::new(1.0, s, s * s), height))
        .collect();
    if seen.len() < LEAST {
        return None;
    }
    let mut weights = vec![1.0; seen.len()];
    let mut shape = Vector3::zeros();
    for _ in 0..ROUNDS {
        let (mut matrix, mut side) = (Matrix3::zeros(), Vector3::zeros());
        for ((basis, height), weight) in seen.iter().zip(&weights) {
            matrix += basis * basis.transpose() * *weight;
            side += basis * *height * *weight;
        }
        shape = matrix.cholesky()?.solve(&side);
        let off: Vec<f64> = seen.iter().map(|(b, z)| (z - shape.dot(b)).abs()).collect();
        let mut sorted = off.clone();
        sorted.sort_by(f64::total_cmp);
        let scale = (1.4826 * sorted[sorted.len() / 2]).max(FLOOR_MM);
        for (weight, off) in weights.iter_mut().zip(off) {
            let rest = (1.0 - (off / (4.685 * scale)).powi(2)).max(0.0);
            *weight = rest * rest;
        }
    }
    Some(shape)
}
