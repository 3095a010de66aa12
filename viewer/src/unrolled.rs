//! The closed border laid out in straight tracks, and places on it: from a
//! length along the border to a station and a point of the surface, and back.

use nalgebra::Point3;
use report::result::{Border, BorderPart, Side};

/// Where the middle of a track is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Midline {
    /// Toward the lip.
    Labial,
    /// Toward the tongue.
    Lingual,
}

/// A stretch of the border laid out in a straight line.
#[derive(Debug, Clone, PartialEq)]
pub struct Track {
    /// Where its middle is.
    pub midline: Midline,
    /// Station numbers with their distance along the border from the midline,
    /// mm, negative to the left of the screen, in that order.
    pub stations: Vec<(usize, f64)>,
}

impl Track {
    /// First and last distance from the midline, mm.
    #[must_use]
    pub fn reach(&self) -> [f64; 2] {
        let ends = self.stations.first().zip(self.stations.last());
        ends.map_or([0.0, 0.0], |(first, last)| [first.1, last.1])
    }

    /// How far from the midline a station is, mm; `None` where it is on another
    /// track.
    #[must_use]
    pub fn along(&self, station: usize) -> Option<f64> {
        let found = self.stations.iter().find(|(number, _)| *number == station);
        found.map(|(_, along)| *along)
    }

    /// The place at a distance from the midline, mm; the nearest end beyond it.
    #[must_use]
    pub fn spot(&self, along_mm: f64) -> Option<Spot> {
        let after = self.stations.partition_point(|(_, at)| *at < along_mm);
        let from = self.stations.get(after.saturating_sub(1))?;
        let to = self.stations.get(after).unwrap_or(from);
        let apart = to.1 - from.1;
        let part = if apart > 0.0 {
            ((along_mm - from.1) / apart).clamp(0.0, 1.0)
        } else {
            0.0
        };
        Some(Spot {
            from: from.0,
            to: to.0,
            part,
        })
    }
}

/// A place on the border: part of the way from one station to its neighbour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spot {
    /// Number of the station.
    pub from: usize,
    /// Number of its neighbour.
    pub to: usize,
    /// Share of the way, 0 to 1.
    pub part: f64,
}

impl Spot {
    /// The nearer station.
    #[must_use]
    pub fn station(&self) -> usize {
        if self.part < 0.5 { self.from } else { self.to }
    }

    /// The point there, by the points of all stations.
    #[must_use]
    pub fn point(&self, points: &[Point3<f64>]) -> Option<Point3<f64>> {
        let (from, to) = (points.get(self.from)?, points.get(self.to)?);
        Some(from + (to - from) * self.part)
    }

    /// The place on a closed border nearest to a point, and its distance, mm.
    #[must_use]
    pub fn nearest(points: &[Point3<f64>], to: &Point3<f64>) -> Option<(Self, f64)> {
        let all = points.len();
        let on_piece = |from: usize| {
            let next = (from + 1) % all;
            let (start, piece) = (points[from], points[next] - points[from]);
            let length = piece.norm_squared();
            let part = if length > 0.0 {
                ((to - start).dot(&piece) / length).clamp(0.0, 1.0)
            } else {
                0.0
            };
            let spot = Self {
                from,
                to: next,
                part,
            };
            (spot, (start + piece * part - to).norm())
        };
        let pieces = (0..all).map(on_piece);
        pieces.min_by(|a, b| a.1.total_cmp(&b.1))
    }
}

/// What a track needs to know of a station.
#[derive(Debug, Clone, Copy)]
struct Stop {
    s: f64,
    is_lingual: bool,
    side: Option<Side>,
}

/// The tracks of a border: the labial and buccal one with the back at its ends,
/// then a lingual one. Right and left are as on the screen.
#[must_use]
pub fn tracks(border: &Border, right_is_on_the_right: bool) -> Vec<Track> {
    let stops = border.stations.iter().map(|station| Stop {
        s: station.s,
        is_lingual: station.part == BorderPart::Lingual,
        side: station.side,
    });
    let stops: Vec<Stop> = stops.collect();
    laid_out(&stops, border.length_mm, right_is_on_the_right)
}

fn laid_out(stops: &[Stop], length_mm: f64, right_is_on_the_right: bool) -> Vec<Track> {
    if stops.is_empty() {
        return Vec::new();
    }
    // Stations run toward the patient's left.
    let toward_left = if right_is_on_the_right { -1.0 } else { 1.0 };
    let first = stops.iter().position(|stop| stop.is_lingual);
    let last = stops.iter().rposition(|stop| stop.is_lingual);
    let lingual = first
        .zip(last)
        .map_or(0..0, |(first, last)| first..last + 1);
    let track = |midline, stations: Vec<(usize, f64)>| {
        let mut track = Track { midline, stations };
        track.stations.sort_by(|a, b| a.1.total_cmp(&b.1));
        track
    };
    let outer = (0..stops.len()).filter(|number| !lingual.contains(number));
    let outer = outer.map(|number| {
        let s = stops[number].s;
        let left = if s <= 0.5 { s } else { s - 1.0 };
        (number, toward_left * left * length_mm)
    });
    let mut tracks = vec![track(Midline::Labial, outer.collect())];
    if !lingual.is_empty() {
        let middle = stops[lingual_midline(stops, lingual.start, lingual.end)].s;
        // The border comes back from the patient's left here.
        let inner = lingual.map(|number| {
            let right = stops[number].s - middle;
            (number, -toward_left * right * length_mm)
        });
        tracks.push(track(Midline::Lingual, inner.collect()));
    }
    tracks
}

/// The lingual station on the midline, where the patient's left ends.
fn lingual_midline(stops: &[Stop], from: usize, to: usize) -> usize {
    let side = |number: usize| stops[number].side;
    let right_from = (from..to).find(|&n| side(n) == Some(Side::Right));
    let left_to = (from..to).rfind(|&n| side(n) == Some(Side::Left));
    let left_to = left_to.map_or(from, |n| n + 1);
    right_from.unwrap_or(to).midpoint(left_to).min(to - 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Twenty stations round a circle of 100 mm, every 5 mm; those of `lingual`
    /// are lingual, left then right.
    fn stops(lingual: std::ops::Range<usize>) -> Vec<Stop> {
        let middle = lingual.start.midpoint(lingual.end);
        let stop = |number: usize| Stop {
            s: number as f64 / 20.0,
            is_lingual: lingual.contains(&number),
            side: match number {
                _ if number == middle => None,
                _ if number < middle => Some(Side::Left),
                _ => Some(Side::Right),
            },
        };
        (0..20).map(stop).collect()
    }

    fn circle() -> Vec<Point3<f64>> {
        let place = |number: usize| {
            let angle = std::f64::consts::TAU * number as f64 / 20.0;
            Point3::new(10.0 * angle.sin(), 10.0 * angle.cos(), 0.0)
        };
        (0..20).map(place).collect()
    }

    #[test]
    fn the_patients_left_lies_on_the_side_of_the_screen_where_it_is_seen() {
        for (right_is_on_the_right, sign) in [(true, -1.0), (false, 1.0)] {
            let tracks = laid_out(&stops(0..0), 100.0, right_is_on_the_right);
            let [track] = &tracks[..] else {
                panic!("{tracks:?}")
            };
            assert_eq!(track.along(0), Some(0.0));
            // 15 mm toward the patient's left, and 15 mm toward the right.
            assert_eq!(track.along(3), Some(sign * 15.0));
            assert!((track.along(17).unwrap() + sign * 15.0).abs() < 1e-9);
            let [from, to] = track.reach();
            assert!((to - from - 95.0).abs() < 1e-9);
        }
    }

    #[test]
    fn a_lingual_border_has_a_track_of_its_own_the_same_way_round() {
        let tracks = laid_out(&stops(7..14), 100.0, false);
        let [outer, lingual] = &tracks[..] else {
            panic!("{tracks:?}")
        };
        assert_eq!(outer.stations.len() + lingual.stations.len(), 20);
        assert_eq!(lingual.midline, Midline::Lingual);
        assert!(lingual.along(10).unwrap().abs() < 1e-9);
        // Station 8 is on the left like station 3, so on the same side.
        assert!((lingual.along(8).unwrap() - 10.0).abs() < 1e-9);
        assert!(outer.along(3).unwrap() > 0.0 && outer.along(8).is_none());
    }

    #[test]
    fn a_length_leads_to_a_place_and_the_place_back_to_the_length() {
        let points = circle();
        let tracks = laid_out(&stops(0..0), 100.0, true);
        for along in [-44.0, -12.5, -0.1, 0.0, 3.0, 31.0] {
            let spot = tracks[0].spot(along).unwrap();
            let place = spot.point(&points).unwrap();
            let (found, off) = Spot::nearest(&points, &place).unwrap();
            assert!(off < 1e-9);
            let [from, to] = [found.from, found.to].map(|n| tracks[0].along(n).unwrap());
            assert!((from + (to - from) * found.part - along).abs() < 1e-9);
        }
        let beyond = tracks[0].spot(1e3).unwrap();
        assert_eq!(
            tracks[0].along(beyond.station()),
            Some(tracks[0].reach()[1])
        );
    }

    #[test]
    fn a_border_without_stations_has_no_places() {
        assert!(laid_out(&[], 0.0, true).is_empty());
        assert_eq!(Spot::nearest(&[], &Point3::origin()), None);
        let track = Track {
            midline: Midline::Labial,
            stations: Vec::new(),
        };
        assert_eq!(track.spot(1.0), None);
    }
}
