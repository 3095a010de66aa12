//! Notches that frena leave in a border, of several shapes.

use crate::border::soft_floor;
use crate::shaping::{bell, rise};
use serde::Serialize;

/// The outline of a notch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NotchShape {
    /// Straight sides that meet in a narrow bottom.
    V,
    /// A level bottom between steep sides.
    U,
    /// Rounded at its bottom and its shoulders.
    Bell,
}

/// A notch of a given shape.
#[derive(Debug, Clone, Copy)]
pub(crate) struct ShapedNotch {
    /// Its outline.
    pub shape: NotchShape,
    /// Arc length of its middle, mm.
    pub along: f64,
    /// Depth, mm.
    pub depth: f64,
    /// Width at half its depth, mm.
    pub width: f64,
}

/// A V is rounded over this much at its bottom, mm.
const TIP_MM: f64 = 0.5;
/// A bell's width at half its height, in standard widths.
const BELL_WIDTH: f64 = 2.354_820_045;

impl ShapedNotch {
    /// How much lower it makes the border at an arc length, mm.
    pub(crate) fn depth_at(&self, along: f64) -> f64 {
        let aside = along - self.along;
        self.depth
            * match self.shape {
                NotchShape::Bell => bell(aside * BELL_WIDTH / self.width),
                NotchShape::U => {
                    let side = (0.42 * self.width).min(0.35 * self.depth).max(0.6);
                    let half = self.width / 2.0;
                    1.0 - rise(aside.abs(), half - side, half + side)
                }
                NotchShape::V => {
                    let left = |aside: f64| 1.0 - aside.hypot(TIP_MM) / self.width;
                    let sides = left(aside) / left(0.0);
                    // The soft corner at the shoulder is scaled to the depth.
                    soft_floor(sides * 4.0, 0.0) / soft_floor(4.0, 0.0)
                }
            }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_notch_is_as_deep_and_at_half_its_depth_about_as_wide_as_drawn() {
        for shape in [NotchShape::V, NotchShape::U, NotchShape::Bell] {
            let notch = ShapedNotch {
                shape,
                along: 2.0,
                depth: 4.0,
                width: 6.0,
            };
            assert!((notch.depth_at(2.0) - 4.0).abs() < 1e-9, "{shape:?}");
            for edge in [-1.0, 5.0] {
                let share = notch.depth_at(edge) / 4.0;
                assert!((share - 0.5).abs() < 0.05, "{shape:?}: {share}");
            }
            assert!(notch.depth_at(14.0) < 0.03, "{shape:?}");
        }
    }
}
