//! Which part of the window holds what.

use crate::view::Canvas;

/// Width of the list, points at text size 1.
const LIST: f64 = 350.0;
/// The list is never wider than this share of the window.
const MOST_LIST: f64 = 0.4;
/// Height of the bar above the picture with one row of buttons, and of each
/// further row, points at text size 1.
const BAR: [f64; 2] = [54.0, 26.0];
/// Length of its buttons side by side, points at text size 1.
const BUTTONS: f64 = 810.0;
/// Height of the cautions with two lines, and of each further line, points at
/// text size 1.
const FOOT: [f64; 2] = [40.0, 15.0];
/// Length of the cautions on one line, points at text size 1.
const CAUTIONS: f64 = 1490.0;
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

/// The greatest size of text for which a window of so many points has room.
#[must_use]
pub fn most_text_size(width: f64, height: f64) -> f64 {
    const AT_SIZE_1: [f64; 2] = [800.0, 500.0];
    (width / AT_SIZE_1[0]).min(height / AT_SIZE_1[1]).max(0.5)
}

impl Layout {
    /// Of a window of so many pixels; `scale` is pixels to a point at text size 1.
    #[must_use]
    pub fn of(width: f64, height: f64, scale: f64, wants_strip: bool) -> Self {
        let left = (LIST * scale).min(width * MOST_LIST);
        let row = |top: f64, height: f64| Canvas {
            left,
            top,
            width: width - left,
            height,
        };
        let lines = |length: f64| (length * scale / (width - left - 16.0).max(1.0)).ceil();
        let bar = scale * (BAR[0] + BAR[1] * (lines(BUTTONS) - 1.0));
        let foot = scale * (FOOT[0] + FOOT[1] * (lines(CAUTIONS) - 2.0).max(0.0));
        let (bar, foot) = (bar.min(height * 0.4), foot.min(height * 0.3));
        let room = height - bar - foot;
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
