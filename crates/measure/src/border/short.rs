//! Stretches of a border that lie below the grey-scale closing of its height
//! (Serra 1982).

use super::figures::{DipKind, STATION_STEP_MM};
use super::heights::{ProfileDip, closing};
use crate::anatomy;

/// Longest stretch that is seen against its neighbourhood, mm.
const LONGEST_MM: f64 = 26.0;

/// Stretches that lie below the closing of the heights.
pub(super) fn short_stretches(heights: &[f64]) -> Vec<ProfileDip> {
    let depth = below_closing(heights);
    let mut found = Vec::new();
    let mut at = 0;
    while at < depth.len() {
        let end = at + depth[at..].iter().take_while(|&&d| d > 0.0).count();
        if end > at {
            found.extend(stretch_within(&depth, at, end - 1));
        }
        at = end + 1;
    }
    found
}

/// How far each height lies below the closing of all.
pub(super) fn below_closing(heights: &[f64]) -> Vec<f64> {
    let closed = closing(heights, (LONGEST_MM / STATION_STEP_MM / 2.0) as usize);
    closed.iter().zip(heights).map(|(c, h)| c - h).collect()
}

/// The stretch that is lowest between two places.
fn stretch_within(depth: &[f64], from: usize, to: usize) -> Option<ProfileDip> {
    let bottom = (from..=to).max_by(|&a, &b| depth[a].total_cmp(&depth[b]).then(b.cmp(&a)))?;
    let half = |k: &usize| depth[*k] >= depth[bottom] / 2.0;
    let from = (from..=bottom).rev().take_while(half).last()?;
    let to = (bottom..=to).take_while(half).last()?;
    (depth[bottom] >= anatomy::DIP_LEAST_DEPTH_MM).then_some(ProfileDip {
        kind: DipKind::Short,
        frenum_place: None,
        steep_ends: [None; 2],
        from,
        to,
        bottom,
        depth_mm: depth[bottom],
        width_mm: (to - from + 1) as f64 * STATION_STEP_MM,
    })
}
