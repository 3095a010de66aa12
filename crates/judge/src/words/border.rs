//! Where on a border, in words.

use crate::stretch::apart_mm;
use measure::{Arch, Border, BorderPart, Side};

/// Nearer to a midline than this is on it, mm.
const ON_MIDLINE_MM: f64 = 0.75;

/// A stretch of border: `from 10 to 22 mm left of the labial midline`. Lengths
/// are along the border; sides are the patient's.
#[must_use]
pub fn stretch(border: &Border, arch: Option<Arch>, from: usize, to: usize) -> String {
    let (one, other) = (Spot::of(border, from), Spot::of(border, to));
    if border.stations[from].part == BorderPart::Posterior && arch == Some(Arch::Mandibular) {
        let side = border.stations[from]
            .side
            .map_or(String::new(), |side| format!("{} ", super::side(side)));
        return format!("behind the {side}retromolar pad");
    }
    let midline = match border.stations[from].part {
        BorderPart::Outer => "labial midline",
        BorderPart::Lingual => "lingual midline",
        BorderPart::Posterior => "midline at the back",
    };
    match (one.side, other.side) {
        (Some(a), Some(b)) if a == b => {
            let (near, far) = (one.mm.min(other.mm), one.mm.max(other.mm));
            format!(
                "from {near:.0} to {far:.0} mm {} of the {midline}",
                super::side(a)
            )
        }
        (Some(a), Some(b)) => format!(
            "from {:.0} mm {} to {:.0} mm {} of the {midline}",
            one.mm,
            super::side(a),
            other.mm,
            super::side(b)
        ),
        (None, Some(side)) => from_midline(midline, other.mm, side),
        (Some(side), None) => from_midline(midline, one.mm, side),
        (None, None) => format!("at the {midline}"),
    }
}

fn from_midline(midline: &str, mm: f64, side: Side) -> String {
    format!(
        "from the {midline} to {mm:.0} mm {} of it",
        super::side(side)
    )
}

/// A place relative to the midline of its part of the border.
struct Spot {
    mm: f64,
    side: Option<Side>,
}

impl Spot {
    fn of(border: &Border, station: usize) -> Self {
        let middle = midline(border, station);
        let there = apart_mm(border, middle, station);
        let mm = there.min(border.length_mm - there);
        Self {
            mm,
            side: border.stations[station]
                .side
                .filter(|_| mm >= ON_MIDLINE_MM),
        }
    }
}

/// The station on the midline of the part of the border that a station lies in;
/// where that part has none, its end nearest to a midline does not matter and
/// the first station stands for it.
fn midline(border: &Border, station: usize) -> usize {
    let part = border.stations[station].part;
    if part == BorderPart::Outer {
        return 0;
    }
    let count = border.stations.len();
    let middle: Vec<usize> = (0..count)
        .filter(|&i| {
            let (here, next) = (&border.stations[i], &border.stations[(i + 1) % count]);
            here.part == part
                && (here.side.is_none()
                    || (next.part == part && next.side.is_some() && next.side != here.side))
        })
        .collect();
    middle.get(middle.len() / 2).copied().unwrap_or(0)
}
