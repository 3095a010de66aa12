//! The border line proves itself before anything is judged by it: each station
//! lies on the first summit that one meets from the crest outward, and the
//! stations run along both sides of the whole arch.

use super::figures::{BorderPart, Missing, STATION_STEP_MM, StationFigure};
use super::station::{Outlook, Reached};
use crate::anatomy;
use crate::frame::has_both_limbs;
use geometry::height_map::HeightMap;
use nalgebra::{Point2, Point3, Vector2};
use rayon::prelude::*;

/// A station this much lower than the summit before it has slipped off, mm.
const SLIPPED_MM: f64 = 2.0;
/// Shorter runs of them are the steep side of a notch or a short stretch, which the
/// cells of the height map blur, mm.
const LEAST_RUN_MM: f64 = 3.0;
/// A station that was looked for again lies this near to the summit, mm.
const ON_SUMMIT_MM: f64 = 0.4;

/// The stations, looked for again at the summit of their flange where a stretch has
/// slipped off it; without figures where that leads nowhere.
pub(super) fn on_the_summit(
    stations: Vec<Reached>,
    outward: &[Vector2<f64>],
    outlook: &Outlook<'_>,
    map: &HeightMap,
) -> Vec<Reached> {
    let summits: Vec<Option<Point3<f64>>> = (stations.par_iter())
        .map(|station| missed_summit(station, outlook, map))
        .collect();
    let least = (LEAST_RUN_MM / STATION_STEP_MM) as usize;
    let is_long = runs_of_some(&summits, least);
    (stations
        .into_iter()
        .zip(summits)
        .zip(is_long.into_iter().zip(outward)))
    .map(|((first, summit), (is_long, outward))| match summit {
        Some(summit) if is_long => {
            let again = outlook.look(&summit, *outward);
            let is_found =
                again.part == first.part && (again.point.z - summit.z).abs() <= ON_SUMMIT_MM;
            if is_found {
                again
            } else {
                without_figures(first)
            }
        }
        _ => first,
    })
    .collect()
}

/// The summit that a station of a flange lies well below.
fn missed_summit(station: &Reached, outlook: &Outlook<'_>, map: &HeightMap) -> Option<Point3<f64>> {
    if station.part == BorderPart::Posterior || !station.is_scanned() {
        return None;
    }
    let foot = outlook.spine.foot(station.point.xy());
    summit(map, foot.at, station.point.xy())
        .filter(|summit| summit.z - station.point.z > SLIPPED_MM)
}

/// Which places belong to a run of at least so many that hold something.
fn runs_of_some<T>(places: &[Option<T>], least: usize) -> Vec<bool> {
    places
        .chunk_by(|a, b| a.is_some() == b.is_some())
        .flat_map(|run| std::iter::repeat_n(run[0].is_some() && run.len() >= least, run.len()))
        .collect()
}

/// The first summit on the way from a place on the crest toward another: from
/// there the surface falls again.
fn summit(map: &HeightMap, from: Point2<f64>, toward: Point2<f64>) -> Option<Point3<f64>> {
    const STEP_MM: f64 = 0.25;
    /// A shallower fall may be a wave of the flange.
    const FALL_MM: f64 = 1.0;
    let away = (toward - from).try_normalize(0.0)?;
    let mut highest: Option<Point3<f64>> = None;
    for step in 1..=(anatomy::OUTER_BORDER_WITHIN_MM / STEP_MM) as usize {
        let place = from + away * (step as f64 * STEP_MM);
        let Some(height) = map.at(place) else {
            continue;
        };
        match highest {
            Some(top) if height < top.z - FALL_MM => return highest,
            Some(top) if height <= top.z => {}
            _ => highest = Some(Point3::new(place.x, place.y, height)),
        }
    }
    highest
}

fn without_figures(mut station: Reached) -> Reached {
    for figure in StationFigure::ALL {
        *station.figure_mut(figure) = Err(Missing::OffTheSummit);
    }
    station
}

/// Whether the crest line runs back on both sides, and stations of the labial and
/// buccal border accompany nearly all of it, one side after the other.
pub(super) fn covers_the_arch(stations: &[Reached], crest: &[Point3<f64>]) -> bool {
    let outer: Vec<Point2<f64>> = (stations.iter())
        .filter(|station| station.part == BorderPart::Outer)
        .map(|station| station.point.xy())
        .collect();
    has_both_limbs(crest) && changes_sides_once(&outer) && accompany_both_limbs(&outer, crest)
}

/// Whether a line that begins at the midline lies on one side and then on the other: one
/// that goes to and fro over the front was followed from a crest line led astray.
fn changes_sides_once(outer: &[Point2<f64>]) -> bool {
    /// Nearer to the midline a station is on neither side.
    const CLEAR_MM: f64 = 4.0;
    let clear = outer
        .iter()
        .map(|point| point.x)
        .filter(|x| x.abs() > CLEAR_MM);
    let is_right: Vec<bool> = clear.map(|x| x > 0.0).collect();
    is_right
        .windows(2)
        .filter(|pair| pair[0] != pair[1])
        .count()
        <= 1
}

fn accompany_both_limbs(outer: &[Point2<f64>], crest: &[Point3<f64>]) -> bool {
    /// The crest line's ends, where flanges run out into the back.
    const ENDS_MM: f64 = 12.0;
    const LEAST_SHARE: f64 = 0.8;
    let [first, last] = [crest.first(), crest.last()].map(|end| end.map(Point3::xy));
    let (Some(first), Some(last)) = (first, last) else {
        return false;
    };
    let is_accompanied = |place: &Point2<f64>| {
        let within = anatomy::OUTER_BORDER_WITHIN_MM;
        outer.iter().any(|point| (point - place).norm() <= within)
    };
    let is_covered = |is_on_side: fn(f64) -> bool| {
        let limb: Vec<Point2<f64>> = (crest.iter().map(Point3::xy))
            .filter(|place| is_on_side(place.x))
            .filter(|place| (place - first).norm() > ENDS_MM && (place - last).norm() > ENDS_MM)
            .collect();
        let covered = limb.iter().filter(|place| is_accompanied(place)).count();
        covered as f64 >= LEAST_SHARE * limb.len() as f64
    };
    is_covered(|x| x > 0.0) && is_covered(|x| x < 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use geometry::height_map::FINE_CELL_MM;

    /// A flange along y: its height is a function of x, from 0 to 16 mm.
    fn flange(height: impl Fn(f64) -> f64) -> HeightMap {
        const STEP_MM: f64 = 0.25;
        let (across, along) = (65_u32, 9_u32);
        let vertices: Vec<Point3<f64>> = (0..across * along)
            .map(|k| {
                let (x, y) = (f64::from(k % across), f64::from(k / across));
                Point3::new(x * STEP_MM, (y - 4.0) * STEP_MM, height(x * STEP_MM))
            })
            .collect();
        let triangles: Vec<[u32; 3]> = (0..along - 1)
            .flat_map(|j| (0..across - 1).map(move |i| j * across + i))
            .flat_map(|a| [[a, a + 1, a + across + 1], [a, a + across + 1, a + across]])
            .collect();
        HeightMap::of(&vertices, &triangles, FINE_CELL_MM)
    }

    /// The border at 7 mm is 6 mm high; the outside falls by 4 mm and rises to a
    /// handle, lower or higher than the border.
    #[test]
    fn the_summit_is_the_border_and_not_the_handle_beyond_it() {
        for handle_mm in [5.0, 9.0] {
            let map = flange(|x| match x {
                ..7.0 => 6.0 * x / 7.0,
                7.0..9.0 => 6.0 - 2.0 * (x - 7.0),
                _ => 2.0 + (handle_mm - 2.0) * (x - 9.0) / 7.0,
            });
            let toward = Point2::new(15.0, 0.0);
            let found = summit(&map, Point2::origin(), toward).expect("there is surface");
            // To a cell of the map.
            let off = found - Point3::new(7.0, 0.0, 6.0);
            assert!(off.x.abs() <= 0.6 && off.z.abs() <= 0.2, "{found}");
        }
    }

    #[test]
    fn a_shallow_wave_on_the_way_is_no_summit() {
        let map = flange(|x| x / 2.0 + 0.3 * (2.0 * x).sin());
        let found = summit(&map, Point2::origin(), Point2::new(9.0, 0.0));
        assert!(found.is_some_and(|summit| summit.x > 14.0), "{found:?}");
    }

    #[test]
    fn a_crest_line_that_lost_a_limb_is_no_whole_arch() {
        let arch = |from_degrees: u32| -> Vec<Point3<f64>> {
            (from_degrees..=180)
                .map(|degrees| f64::from(degrees).to_radians().sin_cos())
                .map(|(sin, cos)| Point3::new(57.3 * cos, 57.3 * sin, 0.0))
                .collect()
        };
        assert!(has_both_limbs(&arch(0)) && has_both_limbs(&arch(30)));
        assert!(!has_both_limbs(&arch(60)) && !has_both_limbs(&[]));
    }

    #[test]
    fn a_border_that_goes_to_and_fro_over_the_front_is_none() {
        let line = |xs: &[f64]| xs.iter().map(|&x| Point2::new(x, 20.0)).collect::<Vec<_>>();
        assert!(changes_sides_once(&line(&[
            0.0, -9.0, -25.0, 28.0, 8.0, 1.0
        ])));
        assert!(!changes_sides_once(&line(&[
            0.0, -17.0, 11.0, -25.0, 28.0, 8.0
        ])));
    }

    #[test]
    fn runs_shorter_than_wanted_do_not_count() {
        let places = [Some(1), None, Some(1), Some(1), Some(1), None];
        let long = [false, false, true, true, true, false];
        assert_eq!(runs_of_some(&places, 3), long);
    }
}
