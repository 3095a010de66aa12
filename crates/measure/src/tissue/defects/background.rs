//! The smooth surface that a defect departs from, and by how much.
//!
//! Robust quadrics around places spread over the surface, blended (a partition
//! of unity; Ohtake, Belyaev, Alexa, Turk and Seidel 2003): what is smaller
//! than about half their radius does not pull them.

use super::quadric::{Frame, Quadric};
use super::surface::{Searcher, Surface};
use nalgebra::Vector3;
use rayon::prelude::*;

/// Points that a fit uses at most: more would not make it better.
const MOST_POINTS: usize = 96;

/// How a surface departs from its smooth self.
pub(super) struct Departures {
    /// Height of each chosen vertex over the smooth surface, mm; `NAN` where
    /// there is no such surface.
    pub raw_mm: Vec<f32>,
    /// The same averaged with the neighbours'.
    pub smoothed_mm: Vec<f32>,
    /// Standard deviation of the surface about its smooth self there, mm.
    pub roughness_mm: Vec<f32>,
}

/// Departures from a smooth surface made of fits of this radius.
pub(super) fn departures(surface: &Surface<'_>, radius_mm: f64) -> Departures {
    let spacing = radius_mm / 1.8;
    let reach = 1.25 * spacing;
    let seeds = surface.spread(spacing);
    let parts: Vec<Vec<Entry>> = seeds
        .par_chunks(64)
        .map_init(
            || Searcher::new(surface),
            |searcher, chunk| {
                let mut entries = Vec::new();
                for &seed in chunk {
                    around(surface, searcher, seed, radius_mm, reach, &mut entries);
                }
                entries
            },
        )
        .collect();
    let mut sums = vec![[0f32; 3]; surface.points.len()];
    for entry in parts.into_iter().flatten() {
        let sum = &mut sums[entry.vertex as usize];
        sum[0] += entry.weight;
        sum[1] += entry.weight * entry.height;
        sum[2] += entry.weight * entry.scale;
    }
    let raw: Vec<f32> = sums.iter().map(|s| s[1] / s[0]).collect();
    let smoothed = (0..raw.len() as u32)
        .into_par_iter()
        .with_min_len(4096)
        .map(|v| {
            let own = raw[v as usize];
            let known = surface
                .neighbours(v)
                .iter()
                .map(|&n| raw[n as usize])
                .filter(|h| !h.is_nan());
            let (sum, count) = known.fold((own, 1.0), |(s, c), h| (s + h, c + 1.0));
            sum / count
        })
        .collect();
    Departures {
        smoothed_mm: smoothed,
        roughness_mm: sums.iter().map(|s| s[2] / s[0]).collect(),
        raw_mm: raw,
    }
}

/// What one fit says of one vertex.
struct Entry {
    vertex: u32,
    weight: f32,
    height: f32,
    scale: f32,
}

fn around(
    surface: &Surface<'_>,
    searcher: &mut Searcher,
    seed: u32,
    radius_mm: f64,
    reach_mm: f64,
    entries: &mut Vec<Entry>,
) {
    let ball = searcher.ball(surface, seed, radius_mm);
    let origin = surface.points[seed as usize];
    let Some(frame) = Frame::at(surface, origin, &ball) else {
        return;
    };
    let up = frame.up();
    let stride = ball.len().div_ceil(MOST_POINTS);
    let fitted: Vec<Vector3<f64>> = ball
        .iter()
        .step_by(stride)
        .filter(|&&v| surface.normals[v as usize].dot(&up) > 0.2)
        .map(|&v| frame.local(&surface.points[v as usize]))
        .collect();
    let Some(fit) = Quadric::robust_fit(&fitted, surface.noise_mm.max(1e-3)) else {
        return;
    };
    for &v in &ball {
        let from_seed = (surface.points[v as usize] - origin).norm() / reach_mm;
        if from_seed < 1.0 && surface.chosen[v as usize] {
            let p = frame.local(&surface.points[v as usize]);
            let height = p.z - fit.height.at(p.x, p.y);
            entries.push(Entry {
                vertex: v,
                weight: (1.0 - from_seed * from_seed).powi(2) as f32,
                height: height as f32,
                scale: fit.scale_mm as f32,
            });
        }
    }
}
