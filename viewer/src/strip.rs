//! The border strip: where each place of the border lies on a strip of the
//! screen, and what is at a pixel of it.

use crate::unrolled::{Spot, Track};

/// Tracks beside each other on a strip, all at one scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Strip {
    /// The tracks, left one first.
    pub tracks: Vec<Track>,
    /// Left end of each, pixels.
    lefts: Vec<f64>,
    /// Their scale.
    pub px_per_mm: f64,
}

impl Strip {
    /// Tracks from pixel `left` on over `width` pixels, `gap` pixels apart.
    #[must_use]
    pub fn new(tracks: Vec<Track>, left: f64, width: f64, gap: f64) -> Self {
        let length = |track: &Track| {
            let [from, to] = track.reach();
            to - from
        };
        let gaps = gap * tracks.len().saturating_sub(1) as f64;
        let whole: f64 = tracks.iter().map(length).sum();
        let px_per_mm = (width - gaps).max(1.0) / whole.max(1.0);
        let mut next = left;
        let lefts = tracks.iter().map(|track| {
            let this = next;
            next += length(track) * px_per_mm + gap;
            this
        });
        Self {
            lefts: lefts.collect(),
            tracks,
            px_per_mm,
        }
    }

    /// Pixels from the left of a distance from a track's midline, mm.
    #[must_use]
    pub fn x(&self, track: usize, along_mm: f64) -> f64 {
        let [from, _] = self.tracks[track].reach();
        self.lefts[track] + (along_mm - from) * self.px_per_mm
    }

    /// Both ends of a track, pixels from the left.
    #[must_use]
    pub fn ends(&self, track: usize) -> [f64; 2] {
        self.tracks[track].reach().map(|along| self.x(track, along))
    }

    /// The place under a pixel, and its track; `None` beside the tracks.
    #[must_use]
    pub fn spot(&self, x: f64) -> Option<(usize, Spot)> {
        const BESIDE_PX: f64 = 3.0;
        let holds = |&track: &usize| {
            let [from, to] = self.ends(track);
            (from - BESIDE_PX..=to + BESIDE_PX).contains(&x)
        };
        let track = (0..self.tracks.len()).find(holds)?;
        let [from, _] = self.tracks[track].reach();
        let along = from + (x - self.lefts[track]) / self.px_per_mm;
        Some((track, self.tracks[track].spot(along)?))
    }

    /// The track of a place, and how far from its midline it is, mm. Between
    /// two tracks it is the nearer station's.
    #[must_use]
    pub fn along(&self, spot: &Spot) -> Option<(usize, f64)> {
        /// Ends of a track are neighbours on the closed border.
        const NEIGHBOURS: f64 = 0.5;
        self.tracks.iter().enumerate().find_map(|(number, track)| {
            let nearer = track.along(spot.station())?;
            let [from, to] = track.reach();
            let ends = track.along(spot.from).zip(track.along(spot.to));
            let between = ends.filter(|(a, b)| (b - a).abs() < NEIGHBOURS * (to - from));
            Some((
                number,
                between.map_or(nearer, |(a, b)| a + (b - a) * spot.part),
            ))
        })
    }

    /// Pixels from the left of a place.
    #[must_use]
    pub fn x_of(&self, spot: &Spot) -> Option<f64> {
        let (track, along) = self.along(spot)?;
        Some(self.x(track, along))
    }

    /// What a run of stations covers, from one number up to another round the
    /// border: pixels from the left, one pair for each piece on a track.
    #[must_use]
    pub fn spans(&self, from: usize, to: usize) -> Vec<[f64; 2]> {
        let holds = |station: usize| {
            if from <= to {
                (from..=to).contains(&station)
            } else {
                station >= from || station <= to
            }
        };
        let of_track = |number: usize| {
            let stations = &self.tracks[number].stations;
            stations
                .chunk_by(move |a, b| holds(a.0) == holds(b.0))
                .filter(move |run| holds(run[0].0))
                .filter_map(move |run| {
                    let ends = run.first().zip(run.last())?;
                    Some([self.x(number, ends.0.1), self.x(number, ends.1.1)])
                })
        };
        (0..self.tracks.len()).flat_map(of_track).collect()
    }
}

/// The lane of each of several spans, so that no two of a lane come nearer than
/// `apart`; the last of `lanes` takes what finds no room.
#[must_use]
pub fn lanes(spans: &[[f64; 2]], apart: f64, lanes: usize) -> Vec<usize> {
    let mut taken: Vec<Vec<[f64; 2]>> = vec![Vec::new(); lanes.max(1)];
    let free = |lane: &Vec<[f64; 2]>, span: &[f64; 2]| {
        lane.iter()
            .all(|other| span[0] >= other[1] + apart || span[1] + apart <= other[0])
    };
    spans
        .iter()
        .map(|span| {
            let found = taken.iter().position(|lane| free(lane, span));
            let lane = found.unwrap_or(taken.len() - 1);
            taken[lane].push(*span);
            lane
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::unrolled::Midline;

    /// A track of stations 5 mm apart whose numbers begin at `first`.
    fn track(first: usize, count: usize) -> Track {
        let half = (count - 1) as f64 * 2.5;
        Track {
            midline: Midline::Labial,
            stations: (0..count)
                .map(|n| (first + n, n as f64 * 5.0 - half))
                .collect(),
        }
    }

    #[test]
    fn every_pixel_of_a_track_leads_to_its_place_and_back() {
        // 100 mm and 50 mm on 320 pixels: 2 to a mm, 20 between them.
        let strip = Strip::new(vec![track(0, 21), track(21, 11)], 40.0, 320.0, 20.0);
        assert!((strip.px_per_mm - 2.0).abs() < 1e-12);
        assert_eq!(
            [strip.ends(0), strip.ends(1)],
            [[40.0, 240.0], [260.0, 360.0]]
        );
        assert!((strip.x(0, 0.0) - 140.0).abs() < 1e-9);
        for x in [40.0, 41.3, 140.0, 239.9, 240.0, 260.0, 300.7, 360.0] {
            let (_, spot) = strip.spot(x).unwrap();
            assert!((strip.x_of(&spot).unwrap() - x).abs() < 1e-9, "{x}");
        }
        assert_eq!(strip.spot(250.0), None);
        assert_eq!(strip.spot(30.0), None);
        assert_eq!(strip.spot(300.0).unwrap().0, 1);
    }

    #[test]
    fn a_place_where_the_border_closes_is_that_of_the_nearer_end() {
        let strip = Strip::new(vec![track(0, 21)], 0.0, 100.0, 0.0);
        let at = |part| Spot {
            from: 20,
            to: 0,
            part,
        };
        assert_eq!(strip.x_of(&at(0.2)), Some(100.0));
        assert_eq!(strip.x_of(&at(0.8)), Some(0.0));
    }

    #[test]
    fn a_run_over_the_end_is_drawn_in_two_pieces() {
        let strip = Strip::new(vec![track(0, 21)], 0.0, 100.0, 0.0);
        assert_eq!(strip.spans(4, 6), [[20.0, 30.0]]);
        assert_eq!(strip.spans(18, 1), [[0.0, 5.0], [90.0, 100.0]]);
    }

    #[test]
    fn spans_that_touch_have_lanes_of_their_own() {
        let spans = [[0.0, 10.0], [5.0, 15.0], [20.0, 30.0], [8.0, 22.0]];
        assert_eq!(lanes(&spans, 2.0, 3), [0, 1, 0, 2]);
        assert_eq!(lanes(&spans, 2.0, 2), [0, 1, 0, 1]);
    }
}
