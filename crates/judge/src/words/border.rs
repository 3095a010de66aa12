//! Where on a border, in words.

use crate::stretch::apart_mm;
use measure::{Arch, Border, BorderPart, Side};
use messages::{Message, Value, message};

/// Nearer to a midline than this is on it, mm.
const ON_MIDLINE_MM: f64 = 0.75;

/// A stretch of border: `from 10 to 22 mm left of the labial midline`. Lengths
/// are along the border; sides are the patient's.
#[must_use]
pub fn stretch(border: &Border, arch: Option<Arch>, from: usize, to: usize) -> Message {
    let (one, other) = (Spot::of(border, from), Spot::of(border, to));
    if border.stations[from].part == BorderPart::Posterior && arch == Some(Arch::Mandibular) {
        let side = border.stations[from].side.map_or("none", super::side);
        return message!("stretch-behind-pad", side = side);
    }
    let midline = match border.stations[from].part {
        BorderPart::Outer => message!("midline-labial"),
        BorderPart::Lingual => message!("midline-lingual"),
        BorderPart::Posterior => message!("midline-back"),
    };
    match (one.side, other.side) {
        (Some(a), Some(b)) if a == b => message!(
            "stretch-on-side",
            near = whole_mm(one.mm.min(other.mm)),
            far = whole_mm(one.mm.max(other.mm)),
            side = super::side(a),
            midline = midline
        ),
        (Some(a), Some(b)) => message!(
            "stretch-across",
            from = whole_mm(one.mm),
            side = super::side(a),
            to = whole_mm(other.mm),
            other = super::side(b),
            midline = midline
        ),
        (None, Some(side)) => from_midline(midline, other.mm, side),
        (Some(side), None) => from_midline(midline, one.mm, side),
        (None, None) => message!("stretch-at-midline", midline = midline),
    }
}

fn from_midline(midline: Message, mm: f64, side: Side) -> Message {
    message!(
        "stretch-from-midline",
        midline = midline,
        to = whole_mm(mm),
        side = super::side(side)
    )
}

fn whole_mm(mm: f64) -> Value {
    Value::figure(format!("{mm:.0}"))
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
