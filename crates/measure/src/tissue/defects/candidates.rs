//! Places that stand out of the smooth surface, or lie below it.

use super::background::Departures;
use super::surface::Surface;
use nalgebra::Point3;
use rayon::prelude::*;

/// Which way a place departs from the smooth surface.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Sense {
    /// Into the material.
    Pit,
    /// Out of it.
    Bump,
}

impl Sense {
    /// What makes a departure of this sense positive.
    pub(super) fn sign(self) -> f64 {
        match self {
            Self::Pit => -1.0,
            Self::Bump => 1.0,
        }
    }
}

/// A place that may be a defect.
#[derive(Debug, Clone, Copy)]
pub(super) struct Candidate {
    pub vertex: u32,
    pub sense: Sense,
    /// How far it departs, mm.
    pub peak_mm: f64,
}

/// The vertices of greatest departure in their surroundings that stand out of
/// them, deepest first: that depart at least `stands_out` times as far as the
/// surface is rough there.
pub(super) fn proposed(
    surface: &Surface<'_>,
    over: &Departures,
    least_mm: f64,
    stands_out: f32,
) -> Vec<Candidate> {
    let departures = &over.smoothed_mm;
    let mut found: Vec<Candidate> = (0..departures.len() as u32)
        .into_par_iter()
        .with_min_len(4096)
        .filter(|&v| surface.chosen[v as usize])
        .filter_map(|v| {
            let own = departures[v as usize];
            let least = least_mm as f32;
            let sense = match own {
                h if h >= least => Sense::Bump,
                h if h <= -least => Sense::Pit,
                _ => return None,
            };
            if own.abs() < stands_out * over.roughness_mm[v as usize] {
                return None;
            }
            let sign = sense.sign() as f32;
            let tops = surface.neighbours(v).iter().all(|&n| {
                departures[n as usize].is_nan() || departures[n as usize] * sign <= own * sign
            });
            tops.then_some(Candidate {
                vertex: v,
                sense,
                peak_mm: f64::from(own * sign),
            })
        })
        .collect();
    found.sort_by(|a, b| {
        b.peak_mm
            .total_cmp(&a.peak_mm)
            .then(a.vertex.cmp(&b.vertex))
    });
    far_apart(surface.points, found)
}

/// Those that are not near a deeper one of the same sense.
fn far_apart(points: &[Point3<f64>], found: Vec<Candidate>) -> Vec<Candidate> {
    const APART_MM: f64 = 0.6;
    let mut kept: Vec<Candidate> = Vec::new();
    for candidate in found {
        let place = points[candidate.vertex as usize];
        let near = |other: &Candidate| {
            other.sense == candidate.sense
                && (points[other.vertex as usize] - place).norm_squared() < APART_MM * APART_MM
        };
        if !kept.iter().any(near) {
            kept.push(candidate);
        }
    }
    kept
}
