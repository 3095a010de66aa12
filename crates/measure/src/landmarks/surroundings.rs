//! What lies round a landmark: the border beyond it, ends of the scan, defects,
//! tray that shows.

use super::figures::{
    Extent, Landmark, LandmarkMark, LandmarkName, LandmarkSource, NEARBY_MM, Nearby, NearbyKind,
    Seen, Unseen,
};
use super::ground::Ground;
use super::sources::{Sighting, Sources};
use crate::anatomy;
use crate::border::{Border, DipKind, Measured, STATION_PLACE_MM, STATION_STEP_MM, Station};
use crate::cover::SpotKind;
use geometry::closed_line::inside_by_in_plan;
use nalgebra::{Point3, Vector3};

/// Scan coordinates throughout.
pub(super) struct Surroundings<'a> {
    ground: &'a Ground<'a>,
    sources: &'a Sources<'a>,
    rim: Vec<Point3<f64>>,
}

impl<'a> Surroundings<'a> {
    pub(super) fn new(ground: &'a Ground<'a>, sources: &'a Sources<'a>) -> Self {
        Self {
            rim: rim_of(ground, sources),
            ground,
            sources,
        }
    }

    /// The landmark that someone has marked: seen where there is surface.
    pub(super) fn marked(&self, mark: &LandmarkMark) -> Sighting {
        /// A mark lies on the surface to this, mm.
        const ON_SURFACE_MM: f64 = 2.0;
        /// Expanded uncertainty (k = 2) of a mark, mm.
        const MARK_MM: f64 = 0.5;
        let mesh = &self.sources.impression.local;
        let place = self.ground.local(&mark.point);
        let on_tissue = (mesh.triangles().iter())
            .zip(&self.sources.impression.regions.is_tissue)
            .filter(|(_, tissue)| **tissue)
            .flat_map(|(corners, _)| *corners)
            .any(|v| (mesh.vertices()[v as usize] - place).norm() <= ON_SURFACE_MM);
        Sighting {
            name: mark.name,
            side: mark.side,
            seen: if on_tissue {
                Ok(Seen {
                    point: mark.point,
                    uncertainty_mm: MARK_MM,
                    confidence: 1.0,
                    relief_mm: None,
                })
            } else {
                Err(Unseen::NoSurface)
            },
            expected: Some(mark.point),
            extent: Extent::default(),
        }
    }

    /// The landmark with what lies round it.
    pub(super) fn round(&self, sighting: Sighting, source: LandmarkSource) -> Landmark {
        let name = sighting.name;
        let place = match &sighting.seen {
            Ok(seen) => Some(seen.point),
            Err(_) => sighting.expected,
        };
        Landmark {
            extent: self.extent(&sighting),
            zone: place.map(|place| self.ground.zone(&place)),
            nearby: place.map_or_else(Vec::new, |place| self.nearby(name, &place)),
            name,
            side: sighting.side,
            source,
            seen: sighting.seen,
            expected: sighting.expected,
        }
    }

    /// What the search found of the extent; else the distance to the border line.
    fn extent(&self, sighting: &Sighting) -> Extent {
        let own = sighting.extent;
        let Ok(seen) = &sighting.seen else {
            return own;
        };
        if sighting.name.is_of_border() || own != Extent::default() {
            return own;
        }
        let local = self.ground.local(&seen.point).xy();
        let margin = inside_by_in_plan(&self.ground.border_line(), local).map(|mm| Measured {
            mm,
            uncertainty_mm: seen.uncertainty_mm.hypot(STATION_PLACE_MM),
        });
        Extent { margin, ..own }
    }

    fn nearby(&self, name: LandmarkName, place: &Point3<f64>) -> Vec<Nearby> {
        let from_reach = |other: &Point3<f64>, half_size: f64| {
            (other - place).norm() - half_size - name.reach_mm()
        };
        let nearest = |places: &mut dyn Iterator<Item = Point3<f64>>| {
            places
                .map(|place| from_reach(&place, 0.0))
                .fold(f64::INFINITY, f64::min)
        };
        let half_of = |area_mm2: f64| (area_mm2 / std::f64::consts::PI).sqrt();
        let defects = (self.sources.defects.iter().enumerate()).map(|(i, defect)| Nearby {
            kind: NearbyKind::Defect(i),
            distance_mm: from_reach(
                &defect.centre,
                defect
                    .length_mm
                    .map_or(half_of(defect.area_mm2), |l| l / 2.0),
            ),
        });
        let spots = (self.sources.spots.iter().enumerate())
            .filter(|(_, spot)| spot.kind == SpotKind::ShowThrough && spot.stop.is_none())
            .map(|(i, spot)| Nearby {
                kind: NearbyKind::ShowThrough(i),
                distance_mm: from_reach(&spot.centre, half_of(spot.area_mm2)),
            });
        let short = (self.ground.border.iter()).flat_map(|border| {
            short_of(border).map(|(dip, stations)| Nearby {
                kind: NearbyKind::ShortBorder(dip),
                distance_mm: nearest(&mut stations.map(|i| border.stations[i].point)),
            })
        });
        let ending = self.ground.border.into_iter().flat_map(unseen_of);
        let ends = Nearby {
            kind: NearbyKind::ScanEnds,
            distance_mm: nearest(&mut ending.chain(self.rim.iter().copied())),
        };
        let mut all: Vec<Nearby> = defects
            .chain(spots)
            .chain(short)
            .chain([ends])
            .filter(|nearby| nearby.distance_mm <= NEARBY_MM)
            .collect();
        all.sort_by(|a, b| {
            let by_distance = a.distance_mm.total_cmp(&b.distance_mm);
            by_distance.then(a.kind.cmp(&b.kind))
        });
        all
    }
}

/// Dips that are short of their neighbourhood: the number and the stations of each.
fn short_of(border: &Border) -> impl Iterator<Item = (usize, impl Iterator<Item = usize>)> {
    let count = border.stations.len();
    (border.dips.iter().enumerate())
        .filter(|(_, dip)| dip.kind == DipKind::Short)
        .map(move |(number, dip)| {
            let (from, length) = (dip.from, (dip.to + count - dip.from) % count);
            (number, (0..=length).map(move |k| (from + k) % count))
        })
}

/// Places of the border where the scan ends over a stretch that may hide something.
fn unseen_of(border: &Border) -> Vec<Point3<f64>> {
    let is_unseen = |s: &Station| s.scan_ends || s.uncertainty_mm.is_none();
    let round = border.stations.iter().map(|s| (s.point, is_unseen(s)));
    wide_runs(&round.collect::<Vec<_>>())
}

/// The chosen places of a closed line, a station apart, that lie in runs as long as a gap
/// that may hide something.
fn wide_runs(round: &[(Point3<f64>, bool)]) -> Vec<Point3<f64>> {
    // A run across the first place is one.
    let start = round.iter().position(|(_, chosen)| !chosen).unwrap_or(0);
    let (behind, before) = round.split_at(start);
    ([before, behind].concat().chunk_by(|a, b| a.1 == b.1))
        .filter(|run| run[0].1)
        .map(|run| run.iter().map(|(place, _)| *place).collect())
        .filter(|run: &Vec<Point3<f64>>| {
            length_mm(run) + STATION_STEP_MM >= anatomy::GAP_HIDES_FROM_MM
        })
        .flatten()
        .collect()
}

fn length_mm(line: &[Point3<f64>]) -> f64 {
    line.windows(2).map(|ends| (ends[1] - ends[0]).norm()).sum()
}

/// Whether a loop of vertices encloses no circle as wide as a gap that may hide something: the
/// surface spanned between the loop and its middle is smaller than that circle.
fn is_narrow(rim: &[Point3<f64>]) -> bool {
    let sum: Vector3<f64> = rim.iter().map(|p| p.coords).sum();
    let middle = Point3::from(sum / rim.len().max(1) as f64);
    let next = rim.iter().cycle().skip(1);
    let area_mm2: f64 = (rim.iter().zip(next))
        .map(|(a, b)| (a - middle).cross(&(b - middle)).norm() / 2.0)
        .sum();
    let widest_mm = 2.0 * (area_mm2 / std::f64::consts::PI).sqrt();
    widest_mm < anatomy::GAP_HIDES_FROM_MM
}

/// Places where a scan of both sides ends, scan coordinates: its rim, and what
/// was bitten out of the border. Holes within the tissue surface are defects, and narrow
/// ones hide nothing.
fn rim_of(ground: &Ground<'_>, sources: &Sources<'_>) -> Vec<Point3<f64>> {
    /// Share of a loop that lies on outer surface where it is no hole.
    const LEAST_OUTER: f64 = 0.2;
    let (mesh, regions) = (&sources.impression.local, &sources.impression.regions);
    if !regions.has_outer_surface() {
        return Vec::new();
    }
    let mut is_outer = vec![false; mesh.vertices().len()];
    for (corners, tissue) in mesh.triangles().iter().zip(&regions.is_tissue) {
        for &v in corners {
            is_outer[v as usize] |= !tissue;
        }
    }
    (sources.loops.iter())
        .filter(|vertices| {
            let outer = vertices.iter().filter(|&&v| is_outer[v as usize]).count();
            outer as f64 >= LEAST_OUTER * vertices.len() as f64
        })
        .map(|vertices| (vertices.iter()).map(|&v| ground.scan(&mesh.vertices()[v as usize])))
        .map(Iterator::collect)
        .filter(|rim: &Vec<Point3<f64>>| !is_narrow(rim))
        .flatten()
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ring(across_mm: f64) -> Vec<Point3<f64>> {
        let angles = (0..24).map(|k| std::f64::consts::TAU * f64::from(k) / 24.0);
        let on = |angle: f64| Point3::new(angle.cos(), angle.sin(), 0.0) * (across_mm / 2.0);
        angles.map(on).collect()
    }

    /// A square of 10 mm with places 0.5 mm apart, of which some were not seen.
    #[test]
    fn a_run_of_border_that_was_not_seen_counts_from_a_length_on() {
        let side = |k: u32| f64::from(k % 20) * 0.5;
        let place = |k: u32| match k / 20 {
            0 => Point3::new(side(k), 0.0, 0.0),
            1 => Point3::new(10.0, side(k), 0.0),
            2 => Point3::new(10.0 - side(k), 10.0, 0.0),
            _ => Point3::new(0.0, 10.0 - side(k), 0.0),
        };
        let counted = |unseen: &[u32]| {
            let round: Vec<_> = (0..80).map(|k| (place(k), unseen.contains(&k))).collect();
            wide_runs(&round).len()
        };
        assert_eq!(counted(&[]), 0);
        assert_eq!(counted(&[30, 31, 32, 50, 51, 70]), 0);
        assert_eq!(counted(&[30, 31, 32, 33, 50]), 4);
        assert_eq!(counted(&[78, 79, 0, 1]), 4);
        assert_eq!(counted(&(0..80).collect::<Vec<_>>()), 80);
    }

    #[test]
    fn a_gap_hides_something_from_a_width_on() {
        assert!(is_narrow(&ring(1.9)) && !is_narrow(&ring(2.1)));
        let slit = [[0.0, 0.0], [8.0, 0.0], [8.0, 0.1], [0.0, 0.1]];
        assert!(is_narrow(&slit.map(|[x, y]| Point3::new(x, y, 0.0))));
    }
}
