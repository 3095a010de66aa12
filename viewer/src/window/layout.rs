//! Which part of the window holds what.

use crate::view::Canvas;

/// Width of the list, points at text size 1.
const LIST: f64 = 350.0;
/// Height of the bar above the picture, points at text size 1.
const BAR: f64 = 62.0;
/// Height of the cautions, points at text size 1.
const FOOT: f64 = 40.0;
/// Height of the border strip, points at text size 1.
const STRIP: f64 = 140.0;
/// The picture is never lower than this share of the window because of the strip.
const LEAST_PICTURE: f64 = 0.4;

/// The parts of a window, pixels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layout {
    /// The list of findings.
    pub list: Canvas,
    /// The papers and the decision.
    pub bar: Canvas,
    /// The impressions.
    pub picture: Canvas,
    /// The border strip; `None` where it is hidden or the window is too low.
    pub strip: Option<Canvas>,
    /// The cautions.
    pub foot: Canvas,
}

impl Layout {
    /// Of a window of so many pixels; `scale` is pixels to a point at text size 1.
    #[must_use]
    pub fn of(width: f64, height: f64, scale: f64, wants_strip: bool) -> Self {
        let left = (LIST * scale).min(width / 2.0);
        let row = |top: f64, height: f64| Canvas {
            left,
            top,
            width: width - left,
            height,
        };
        let (bar, foot) = (BAR * scale, FOOT * scale);
        let room = (height - bar - foot).max(1.0);
        let strip = STRIP * scale;
        let has_strip = wants_strip && room - strip >= LEAST_PICTURE * height;
        let picture = if has_strip { room - strip } else { room };
        Self {
            list: Canvas {
                left: 0.0,
                top: 0.0,
                width: left,
                height,
            },
            bar: row(0.0, bar),
            picture: row(bar, picture),
            strip: has_strip.then(|| row(bar + picture, strip)),
            foot: row(bar + room, foot),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_parts_fill_the_window_and_none_covers_another() {
        for [width, height] in [[1280.0, 800.0], [1920.0, 1080.0], [800.0, 500.0]] {
            for scale in [1.0, 1.5, 2.0] {
                for wants_strip in [true, false] {
                    let of = Layout::of(width, height, scale, wants_strip);
                    let mut parts = vec![of.list, of.bar, of.picture, of.foot];
                    parts.extend(of.strip);
                    let area = |part: &Canvas| part.width * part.height;
                    let sum: f64 = parts.iter().map(area).sum();
                    assert!((sum - width * height).abs() < 1e-6, "{of:?}");
                    for part in &parts {
                        assert!(part.left >= 0.0 && part.top >= 0.0, "{of:?}");
                        assert!(part.left + part.width <= width + 1e-9, "{of:?}");
                        assert!(part.top + part.height <= height + 1e-9, "{of:?}");
                    }
                    assert!(of.strip.is_none() || wants_strip);
                }
            }
        }
        assert!(Layout::of(1280.0, 800.0, 1.5, true).strip.is_some());
        assert!(Layout::of(800.0, 500.0, 1.5, true).strip.is_none());
    }
}
