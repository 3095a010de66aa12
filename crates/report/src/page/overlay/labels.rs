//! Names of marks, laid out so that none covers another.

use super::marks::Mark;
use super::sheet::{ASIDE, LETTERING, SheetPoint, TOP, WIDTH, round};
use super::symbols::outlined;
use maud::{Markup, html};

/// All marks of a picture, their numbers beside it.
pub(super) fn marked(marks: &[Mark<'_>], high: f64) -> Markup {
    let left: Vec<&Mark<'_>> = marks.iter().filter(|m| m.at[0] <= WIDTH / 2.0).collect();
    let right: Vec<&Mark<'_>> = marks.iter().filter(|m| m.at[0] > WIDTH / 2.0).collect();
    html! {
        @for mark in marks { (outlined(mark)) }
        (column(left, high, true))
        (column(right, high, false))
    }
}

/// Numbers down one side of a picture with a line from each to its mark.
fn column(mut marks: Vec<&Mark<'_>>, high: f64, is_left: bool) -> Markup {
    marks.sort_by(|a, b| a.at[1].total_cmp(&b.at[1]));
    let wanted: Vec<f64> = marks.iter().map(|mark| mark.at[1]).collect();
    let heights = apart(&wanted, TOP + LETTERING / 2.0, TOP + high, LETTERING + 2.0);
    let size = if marks.len() as f64 * (LETTERING + 2.0) > high {
        LETTERING * 0.7
    } else {
        LETTERING
    };
    let (x, anchor, foot) = if is_left {
        (ASIDE - 26.0, "end", ASIDE - 22.0)
    } else {
        (WIDTH - ASIDE + 26.0, "start", WIDTH - ASIDE + 22.0)
    };
    html! {
        @for (mark, y) in marks.iter().zip(heights) {
            @let tip = toward(mark.at, [foot, y], mark.radius);
            (leader([foot, y], tip))
            text x=(x) y=(round(y + size * 0.35)) font-size=(size) font-weight="bold" text-anchor=(anchor) { (mark.id) }
        }
    }
}

/// Heights close to those wanted (in rising order), between two bounds and with
/// a distance from each other; closer together where there is no room for it.
pub(crate) fn apart(wanted: &[f64], low: f64, high: f64, distance: f64) -> Vec<f64> {
    let distance = distance.min((high - low) / wanted.len().max(1) as f64);
    let mut heights: Vec<f64> = Vec::with_capacity(wanted.len());
    for &y in wanted {
        let above = heights.last().map_or(low, |last| last + distance);
        heights.push(y.max(above));
    }
    let mut floor = high;
    for y in heights.iter_mut().rev() {
        *y = y.min(floor);
        floor = *y - distance;
    }
    heights
}

/// The point of a ring round `middle` that lies toward `from`.
fn toward(middle: SheetPoint, from: SheetPoint, radius: f64) -> SheetPoint {
    let run = [from[0] - middle[0], from[1] - middle[1]];
    let length = run[0].hypot(run[1]).max(1e-9);
    [0, 1].map(|k| middle[k] + run[k] / length * radius)
}

fn leader(from: SheetPoint, to: SheetPoint) -> Markup {
    html! {
        @for (colour, width) in [("#ffffff", 4.5), ("#1a1a1a", 1.5)] {
            line x1=(round(from[0])) y1=(round(from[1])) x2=(round(to[0])) y2=(round(to[1]))
                stroke=(colour) stroke-width=(width) {}
        }
    }
}

/// A name beside its mark.
pub(super) fn label(at: &SheetPoint, radius: f64, text: &str) -> Markup {
    let (x, y) = (round(at[0] + radius + 6.0), round(at[1] + 8.0));
    html! {
        text x=(x) y=(y) font-size="24" font-weight="bold" stroke="#ffffff" stroke-width="5" stroke-linejoin="round" { (text) }
        text x=(x) y=(y) font-size="24" font-weight="bold" { (text) }
    }
}

#[cfg(test)]
mod tests {
    use super::apart;

    #[test]
    fn numbers_beside_a_picture_stay_apart_and_on_the_sheet() {
        assert_eq!(apart(&[10.0, 50.0], 0.0, 100.0, 20.0), [10.0, 50.0]);
        assert_eq!(
            apart(&[10.0, 11.0, 12.0], 0.0, 100.0, 20.0),
            [10.0, 30.0, 50.0]
        );
        assert_eq!(apart(&[95.0, 99.0], 0.0, 100.0, 20.0), [80.0, 100.0]);
        let many = apart(&[50.0; 30], 0.0, 100.0, 20.0);
        assert!(many.iter().all(|y| (-1e-9..=100.0).contains(y)));
        assert!(many.windows(2).all(|pair| pair[1] - pair[0] > 3.0));
    }
}
