//! The hollow before the trough's end: the retromolar pad, in the negative of a lower
//! jaw.

use super::figures::{Covered, Extent, Seen, Unseen};
use super::trough::{Closing, TROUGH_STEP_MM, TroughEnd};
use crate::anatomy;

/// Expanded uncertainty (k = 2) of where a pad begins, mm.
const PAD_BEGINS_WITHIN_MM: f64 = 1.2;

impl TroughEnd {
    /// The hollow before the trough's end (retromolar pad, in the negative), and
    /// how much of the pad the impression covers. Where the trough rises again
    /// behind the hollow, that is all of it, however far the floor falls on toward
    /// the ramus; else the pad's usual length says.
    pub(super) fn hollow(&self, noise_mm: f64) -> Result<Closing, Unseen> {
        let last = self.bottoms.len() - 1;
        let first = last.saturating_sub(steps(anatomy::PAD_WITHIN_MM));
        let least_mm = anatomy::PAD_LEAST_DEPTH_MM.max(4.0 * noise_mm);
        let depth = |i: &usize| self.shoulder(*i).min(self.rise_behind(*i));
        let deepest = |depth: &dyn Fn(&usize) -> f64| {
            (first..=last)
                .map(|i| (i, depth(&i)))
                .filter(|(_, depth)| *depth >= least_mm)
                .max_by(|a, b| a.1.total_cmp(&b.1))
        };
        if let Some((bottom, depth_mm)) = deepest(&depth) {
            let seen = self.seen_hollow(bottom, depth_mm, noise_mm);
            return Ok(Closing::pad(seen, 100.0, true));
        }
        let Some((bottom, fall)) = deepest(&|i| self.shoulder(*i)) else {
            let over_level = self.z(self.top()) - self.level();
            return Err(if over_level < anatomy::TROUGH_END_LEAST_RISE_MM {
                Unseen::TroughOpen {
                    open_mm: over_level.max(0.0),
                }
            } else {
                Unseen::NoRelief { least_mm }
            });
        };
        let begins = (0..=bottom)
            .rev()
            .find(|&i| self.z(bottom) + (1.0 - anatomy::PAD_BEGINS_PART) * fall <= self.z(i))
            .unwrap_or(first);
        let length_mm = (last - begins) as f64 * TROUGH_STEP_MM;
        let percent = (100.0 * length_mm / anatomy::PAD_USUAL_LENGTH_MM).min(100.0);
        let seen = self.seen_hollow(bottom, fall, noise_mm);
        Ok(Closing::pad(seen, percent, false))
    }

    /// How far the floor falls to a bottom over the length of a pad's slope, mm.
    fn shoulder(&self, bottom: usize) -> f64 {
        let from = bottom.saturating_sub(steps(anatomy::PAD_SLOPE_MM));
        self.highest_mm(from..bottom + 1) - self.z(bottom)
    }

    /// How far the floor rises behind a bottom, mm.
    fn rise_behind(&self, bottom: usize) -> f64 {
        self.highest_mm(bottom..self.bottoms.len()) - self.z(bottom)
    }

    fn seen_hollow(&self, bottom: usize, depth: f64, noise_mm: f64) -> Seen {
        // The middle between the places at half depth: the bottom is level.
        let half = self.z(bottom) + depth / 2.0;
        let (from, to) = self.run_round(bottom, |z| z <= half);
        Seen {
            point: self.bottoms[(from + to) / 2],
            // Half of the hollow's length, as far as its depth is not known.
            uncertainty_mm: 1.3 + (to - from) as f64 * TROUGH_STEP_MM * (noise_mm / depth).min(0.5),
            confidence: depth / (depth + anatomy::PAD_LEAST_DEPTH_MM),
            relief_mm: Some(depth),
        }
    }
}

impl Closing {
    fn pad(seen: Seen, percent: f64, is_whole: bool) -> Self {
        let within_mm = match is_whole {
            true => PAD_BEGINS_WITHIN_MM,
            false => {
                PAD_BEGINS_WITHIN_MM.hypot(percent / 100.0 * anatomy::PAD_USUAL_LENGTH_WITHIN_MM)
            }
        };
        Self {
            seen,
            extent: Extent {
                margin: None,
                covered: Some(Covered {
                    percent,
                    uncertainty_percent: 100.0 * within_mm / anatomy::PAD_USUAL_LENGTH_MM,
                }),
            },
            is_whole,
        }
    }
}

fn steps(mm: f64) -> usize {
    (mm / TROUGH_STEP_MM) as usize
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Point3;

    /// A floor through heights 2 mm apart, toward the end.
    fn floor(heights: &[f64]) -> TroughEnd {
        let between = heights.windows(2).flat_map(|pair| {
            (0..4).map(move |k| pair[0] + (pair[1] - pair[0]) * f64::from(k) / 4.0)
        });
        let bottoms = (between.chain(heights.last().copied()).enumerate())
            .map(|(i, z)| Point3::new(0.0, -(i as f64) * TROUGH_STEP_MM, z))
            .collect();
        TroughEnd { bottoms }
    }

    fn percent(found: &Closing) -> f64 {
        found.extent.covered.expect("a pad has one").percent
    }

    const LEVEL: [f64; 7] = [0.6; 7];

    #[test]
    fn a_pad_is_whole_where_the_floor_falls_on_toward_the_ramus() {
        let floor = floor(&[&LEVEL[..], &[0.0, -1.3, -2.8, -3.2, -2.3, -3.0, -5.0]].concat());
        let found = floor.hollow(0.01).expect("there is a hollow");
        assert!(found.is_whole);
        assert!((found.seen.point.y + 20.0).abs() <= 1.0, "{found:?}");
        assert!((percent(&found) - 100.0).abs() < 1e-9);
    }

    #[test]
    fn a_slight_rise_behind_a_deep_pad_closes_it() {
        let floor = floor(&[&LEVEL[..], &[-1.0, -2.8, -3.5, -3.0, -4.0]].concat());
        let found = floor.hollow(0.02).expect("there is a hollow");
        assert!(found.is_whole);
        assert!((found.seen.point.y + 18.0).abs() <= 1.0, "{found:?}");
    }

    #[test]
    fn a_hollow_that_ends_at_its_deepest_is_open_and_covered_in_part() {
        let found = floor(&[&LEVEL[..], &[0.0, -1.5, -3.0]].concat()).hollow(0.02);
        let found = found.expect("there is a hollow");
        assert!(!found.is_whole);
        assert!((percent(&found) - 50.0).abs() <= 12.0, "{found:?}");
    }

    #[test]
    fn a_level_floor_has_no_hollow() {
        assert!(floor(&[0.6; 12]).hollow(0.02).is_err());
    }
}
