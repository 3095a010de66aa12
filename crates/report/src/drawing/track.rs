//! The closed border unrolled: one track for labial and buccal border with the
//! back at its ends, and one for a lingual border.

use crate::text::facing;
use judge::Stretch;
use measure::{Arch, Border, BorderPart, Side};
use messages::{Message, message};

/// A stretch of border laid out in a line, seen as the impression is in pictures.
#[derive(Debug, Clone)]
pub struct Track {
    /// What is shown.
    pub title: Message,
    /// The midline in its middle.
    pub midline: Message,
    /// Stations with their distance along the border from the midline, mm, positive
    /// toward the right of the page, in that order.
    pub stations: Vec<(usize, f64)>,
}

/// The tracks of a border, top one first.
pub fn tracks(border: &Border, arch: Arch) -> Vec<Track> {
    let to_the_right = match facing::on_the_right(arch) {
        Side::Left => 1.0,
        Side::Right => -1.0,
    };
    let lingual = lingual_run(border);
    let mut outer = Track {
        title: message!("chart-outer"),
        midline: message!("midline-labial"),
        stations: (0..border.stations.len())
            .filter(|number| !lingual.contains(number))
            .map(|number| {
                (
                    number,
                    to_the_right * left_of_labial_midline(border, number),
                )
            })
            .collect(),
    };
    outer.stations.sort_by(|a, b| a.1.total_cmp(&b.1));
    let mut tracks = vec![outer];
    if let Some(middle) = lingual_midline(border, &lingual) {
        let along = |number: usize| border.stations[number].s * border.length_mm;
        let mut inner = Track {
            title: message!("chart-lingual"),
            midline: message!("midline-lingual"),
            // The line comes from the patient's left here.
            stations: lingual
                .iter()
                .map(|&number| (number, to_the_right * (along(middle) - along(number))))
                .collect(),
        };
        inner.stations.sort_by(|a, b| a.1.total_cmp(&b.1));
        tracks.push(inner);
    }
    tracks
}

impl Track {
    /// The parts of a stretch that lie on the track, as distances from the
    /// midline: two where it goes on from one end to the other.
    pub fn spans(&self, stretch: &Stretch) -> Vec<(f64, f64)> {
        self.stations
            .chunk_by(|a, b| stretch.holds(a.0) == stretch.holds(b.0))
            .filter(|run| stretch.holds(run[0].0))
            .filter_map(|run| Some((run.first()?.1, run.last()?.1)))
            .collect()
    }

    /// Where a station lies on the track.
    pub fn place(&self, station: usize) -> Option<f64> {
        let found = self.stations.iter().find(|(number, _)| *number == station);
        found.map(|(_, along)| *along)
    }

    /// First and last distance from the midline, mm.
    pub fn reach(&self) -> (f64, f64) {
        let ends = self.stations.first().zip(self.stations.last());
        ends.map_or((-1.0, 1.0), |(first, last)| (first.1, last.1))
    }
}

/// Along the border to the patient's left, mm.
fn left_of_labial_midline(border: &Border, number: usize) -> f64 {
    let s = border.stations[number].s;
    let left = if s <= 0.5 { s } else { s - 1.0 };
    left * border.length_mm
}

/// Numbers of the lingual stations and of what lies between them.
fn lingual_run(border: &Border) -> Vec<usize> {
    let is_lingual = |s: &measure::Station| s.part == BorderPart::Lingual;
    let first = border.stations.iter().position(is_lingual);
    let last = border.stations.iter().rposition(is_lingual);
    first
        .zip(last)
        .map_or(Vec::new(), |(first, last)| (first..=last).collect())
}

/// The lingual station on the midline: the line comes from the left.
fn lingual_midline(border: &Border, lingual: &[usize]) -> Option<usize> {
    let is_right = |&number: &usize| border.stations[number].side == Some(Side::Right);
    let is_left = |&number: &usize| border.stations[number].side == Some(Side::Left);
    let right_from = lingual.iter().position(is_right).unwrap_or(lingual.len());
    let left_to = lingual.iter().rposition(is_left).map_or(0, |i| i + 1);
    let middle = right_from.midpoint(left_to);
    lingual.get(middle).or(lingual.last()).copied()
}
