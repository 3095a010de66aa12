//! Heights at even steps along a border: rulers laid over them, their closing,
//! and the shape of what lies below.

use super::figures::{DipKind, STATION_STEP_MM};

/// A part of a flange in which one frenum is expected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum FrenumPlace {
    Midline,
    /// About the premolars, before the midline in the order of the stretch.
    BuccalBefore,
    /// About the premolars, after the midline.
    BuccalAfter,
}

/// A dip between two places of a profile.
#[derive(Debug, Clone, Copy)]
pub(super) struct ProfileDip {
    pub kind: DipKind,
    /// Where a frenum may lie at its bottom.
    pub frenum_place: Option<FrenumPlace>,
    /// Where it ends as steeply as a stretch that was not moulded.
    pub steep_ends: [Option<usize>; 2],
    pub from: usize,
    pub to: usize,
    pub bottom: usize,
    pub depth_mm: f64,
    pub width_mm: f64,
}

/// A kind of ruler.
pub(super) struct RulerKind {
    /// Its length, mm.
    pub length_mm: f64,
    /// How far the lower shoulder of a dip rises over its bottom at least, as a
    /// part of its depth.
    pub least_rise: f64,
}

/// A ruler laid over a place, as high there as one can be.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ruler {
    /// Its height over the place, mm.
    pub at: f64,
    /// Where its ends lie.
    pub from: usize,
    /// The other end.
    pub to: usize,
}

/// The highest ruler of a length over each place.
pub(super) fn rulers(heights: &[f64], length_mm: f64) -> Vec<Ruler> {
    let length = (length_mm / STATION_STEP_MM) as usize;
    let last = heights.len().saturating_sub(1);
    (0..heights.len())
        .map(|i| {
            let mut best = Ruler {
                at: heights[i],
                from: i,
                to: i,
            };
            for from in i.saturating_sub(length)..i {
                for to in i + 1..=(from + length).min(last) {
                    let share = (i - from) as f64 / (to - from) as f64;
                    let at = heights[from] + (heights[to] - heights[from]) * share;
                    if at > best.at {
                        best = Ruler { at, from, to };
                    }
                }
            }
            best
        })
        .collect()
}

/// How far a dip reaches before and after its bottom at a depth, mm.
pub(super) fn widths_above(depth: &[f64], level: f64, bottom: usize) -> [f64; 2] {
    let reach = |places: &mut dyn Iterator<Item = usize>| -> f64 {
        let mut before = bottom;
        let mut steps = 0.0;
        for k in places {
            if depth[k] <= level {
                let fall = (depth[before] - depth[k]).max(f64::MIN_POSITIVE);
                return steps + (depth[before] - level) / fall;
            }
            before = k;
            steps += 1.0;
        }
        steps
    };
    [
        STATION_STEP_MM * reach(&mut (0..bottom).rev()),
        STATION_STEP_MM * reach(&mut (bottom + 1..depth.len())),
    ]
}

/// From where on either side depth does nothing but grow to a bottom, waves
/// apart: what lies beyond is another dip.
pub(super) fn own_slopes(depth: &[f64], bottom: usize) -> (usize, usize) {
    const WAVE_MM: f64 = 0.15;
    let least = |places: &mut dyn Iterator<Item = usize>| {
        let mut at = bottom;
        for k in places {
            if depth[at] <= 0.0 || depth[k] > depth[at] + WAVE_MM {
                break;
            }
            if depth[k] < depth[at] {
                at = k;
            }
        }
        at
    };
    (
        least(&mut (0..bottom).rev()),
        least(&mut (bottom + 1..depth.len())),
    )
}

/// A rise of a border from the bottom of a dip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Rise {
    /// mm for each mm along the border.
    pub slope: f64,
    /// Where its middle lies.
    pub at: usize,
}

/// The steepest rise on either side of a bottom. It begins below nearly the depth of
/// the dip, and ends where that side's own shoulder lies: the depth is that of the
/// lower one.
pub(super) fn steepest_rises(heights: &[f64], bottom: usize, depth_mm: f64) -> [Rise; 2] {
    const OVER: usize = (3.0 / STATION_STEP_MM) as usize;
    const NEARLY: f64 = 0.9;
    let side = |places: &mut dyn Iterator<Item = usize>| {
        let places: Vec<usize> = places.collect();
        let level = Rise {
            slope: 0.0,
            at: bottom,
        };
        (places.windows(OVER + 1))
            .take_while(|run| heights[run[0]] < heights[bottom] + NEARLY * depth_mm)
            .map(|run| Rise {
                slope: (heights[run[OVER]] - heights[run[0]]) / (OVER as f64 * STATION_STEP_MM),
                at: run[OVER / 2],
            })
            .max_by(|a, b| a.slope.total_cmp(&b.slope))
            .filter(|rise| rise.slope > 0.0)
            .unwrap_or(level)
    };
    [
        side(&mut (0..=bottom).rev()),
        side(&mut (bottom..heights.len())),
    ]
}

/// All round a bottom that lies below the ruler.
pub(super) fn all_below(depth: &[f64], bottom: usize) -> (usize, usize) {
    let on_ruler = |k: &usize| depth[*k] <= 0.0;
    let from = (0..bottom).rev().find(on_ruler).unwrap_or(0);
    let to = (bottom..depth.len()).find(on_ruler);
    (from, to.unwrap_or(depth.len() - 1))
}

/// Raises what lies below the straight line between two places to it.
pub(super) fn bridge(heights: &mut [f64], from: usize, to: usize) {
    let (start, end) = (heights[from], heights[to]);
    let length = (to - from).max(1) as f64;
    for (k, height) in heights[from..=to].iter_mut().enumerate() {
        *height = height.max(start + (end - start) * k as f64 / length);
    }
}

/// Places deeper than all within 2 mm.
pub(super) fn peaks(depth: &[f64]) -> Vec<usize> {
    let reach = (2.0 / STATION_STEP_MM) as usize;
    (0..depth.len())
        .filter(|&i| {
            (i.saturating_sub(reach)..(i + reach + 1).min(depth.len()))
                .all(|k| depth[k] < depth[i] || (depth[k] == depth[i] && k >= i))
        })
        .collect()
}

/// Grey-scale closing with a window of `reach` places to either side; nothing
/// lies beyond the ends, so a border that falls toward them does not dip.
pub(super) fn closing(heights: &[f64], reach: usize) -> Vec<f64> {
    let windowed = |values: &[f64], pick: fn(f64, f64) -> f64, nothing: f64| -> Vec<f64> {
        let count = values.len() as isize;
        (-(reach as isize)..count + reach as isize)
            .map(|i| {
                let (low, high) = (i - reach as isize, i + reach as isize);
                (low.max(0)..=high.min(count - 1))
                    .map(|k| values[k as usize])
                    .fold(nothing, pick)
            })
            .collect()
    };
    // Dilated beyond the ends, then eroded: the window at an end holds what
    // the dilation has there.
    let dilated = windowed(heights, f64::max, f64::NEG_INFINITY);
    let count = heights.len();
    (0..count)
        .map(|i| {
            dilated[i..=i + 2 * reach]
                .iter()
                .copied()
                .fold(f64::INFINITY, f64::min)
        })
        .collect()
}
