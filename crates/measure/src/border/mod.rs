//! The border: where tissue surface turns over into outer surface, followed all
//! the way round, and what the sections across it show.
//!
//! First the border is followed roughly on the height map, as the one closed
//! path of most height; then the mesh is cut square to it every half
//! millimetre, and every figure is taken on the cut.

mod dips;
mod figures;
mod height_profile;
mod heights;
mod outline;
mod profile;
mod proof;
mod rays;
mod short;
mod station;
mod vertex_places;

pub use figures::{
    Border, BorderPart, Dip, DipKind, Measured, Missing, NoBorder, Reading, Section, Station,
    StationFigure,
};
pub(crate) use figures::{STATION_PLACE_MM, STATION_STEP_MM};
pub use geometry::section::SectionPoint;
pub use vertex_places::VertexPlace;
pub(crate) use vertex_places::of_vertices;

use crate::frame::CrestLine;
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::tray::LocalTray;
use crate::words::Arch;
use geometry::closed_line;
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use geometry::order::median;
use geometry::polyline::{evenly, smoothed};
use geometry::section::Cutter;
use nalgebra::{Point3, Vector2};
use rayon::prelude::*;
use rays::Spine;
use station::{Outlook, Reached};

/// The rough border is smoothed over this much to either side, mm.
const SMOOTH_MM: f64 = 1.5;

/// Follows the border and measures its sections; `belongs` says which triangles
/// are no stray islands. Points in the outcome lie in scan coordinates.
pub(crate) fn measure(
    impression: &Impression,
    belongs: &[bool],
    tray: Option<LocalTray<'_>>,
    noise_mm: f64,
    settings: &MeasureSettings,
) -> Result<Border, NoBorder> {
    let kept: Vec<[u32; 3]> = impression
        .local
        .triangles()
        .iter()
        .enumerate()
        .filter(|(t, _)| belongs[*t])
        .map(|(_, corners)| *corners)
        .collect();
    let map = HeightMap::of(impression.local.vertices(), &kept, FINE_CELL_MM);
    let crest = impression.zones.crest_points();
    // Where the line does not prove itself, another start may lead to one that does.
    let starts: [Start; 2] = [Spine::of, Spine::whole];
    let mut outcome = Err(NoBorder::NoLine);
    for start in starts {
        let Some(spine) = start(crest, &map) else {
            continue;
        };
        let outlook = Outlook {
            impression,
            spine: &spine,
            cutter: Cutter::new(&impression.local, |t| belongs[t]),
            tray,
            tray_cutter: tray.map(|tray| Cutter::new(tray.mesh(), |_| true)),
            noise_mm,
            settings,
        };
        outcome = followed(&outlook, &map);
        if outcome.is_ok() {
            break;
        }
    }
    outcome.map(|reached| assembled(impression, reached))
}

/// Where following the border starts from, by the crest line and the height map.
type Start = fn(&[Point3<f64>], &HeightMap) -> Option<Spine>;

/// The stations of the border from one start, where they prove themselves.
fn followed(outlook: &Outlook<'_>, map: &HeightMap) -> Result<Vec<Reached>, NoBorder> {
    let arch = outlook.impression.frame.arch;
    let rays = rays::rays_round(outlook.spine, arch);
    let rough = outline::rough_border(map, &rays).ok_or(NoBorder::NoLine)?;
    let rough = from_midline(
        closed_line::smooth_and_even(&rough, STATION_STEP_MM, SMOOTH_MM),
        arch,
    );
    let outward = outward_normals(&rough);
    let reached: Vec<Reached> = rough
        .par_iter()
        .zip(&outward)
        .map(|(point, outward)| outlook.look(point, *outward))
        .collect();
    let reached = proof::on_the_summit(reached, &outward, outlook, map);
    let reached = with_doubt_along(with_whole_parts(reached));
    proof::covers_the_arch(&reached, outlook.impression.zones.crest_points())
        .then_some(reached)
        .ok_or(NoBorder::NotRound)
}

/// Where a flange is so low that its border comes near the crest, single planes
/// are laid wrongly: a short run between two of one part belongs to that part.
fn with_whole_parts(mut reached: Vec<Reached>) -> Vec<Reached> {
    const SHORTEST_MM: f64 = 6.0;
    let parts: Vec<BorderPart> = reached.iter().map(|station| station.part).collect();
    let most = (SHORTEST_MM / STATION_STEP_MM) as usize;
    let mut at = 0;
    for run in parts.chunk_by(|a, b| a == b) {
        let (from, to) = (at, at + run.len());
        at = to;
        if run.len() > most || from == 0 || to == parts.len() || parts[from - 1] != parts[to] {
            continue;
        }
        for station in &mut reached[from..to] {
            station.part = parts[to];
        }
    }
    reached
}

/// The closed line beginning at the labial midline and running toward the
/// patient's left. The line runs toward -x there, which is the left of an
/// upper jaw.
fn from_midline(mut line: Vec<Point3<f64>>, arch: Arch) -> Vec<Point3<f64>> {
    if arch == Arch::Mandibular {
        line.reverse();
    }
    let front = (0..line.len())
        .filter(|&i| line[i].y > 0.0)
        .min_by(|&a, &b| {
            // The lingual border crosses the midline too, further back.
            let off = |i: usize| line[i].x.abs() - 0.05 * line[i].y;
            off(a).total_cmp(&off(b))
        });
    line.rotate_left(front.unwrap_or(0));
    line
}

/// Unit vectors in plan away from the inside of a closed line.
fn outward_normals(line: &[Point3<f64>]) -> Vec<Vector2<f64>> {
    const REACH: usize = 6;
    let twice_area: f64 = (0..line.len())
        .map(|i| {
            line[i]
                .xy()
                .coords
                .perp(&line[(i + 1) % line.len()].xy().coords)
        })
        .sum();
    let sense = twice_area.signum();
    closed_line::directions(line, REACH)
        .into_iter()
        .map(|along| Vector2::new(along.y, -along.x) * sense)
        .collect()
}

/// A station is where its plane was laid, not where another observer would lay
/// it: where a figure changes along the border, that doubt is added to it.
fn with_doubt_along(mut reached: Vec<Reached>) -> Vec<Reached> {
    /// The change is taken over so many stations to either side.
    const BESIDE: usize = 2;
    for figure in StationFigure::ALL {
        let values: Vec<Option<f64>> = reached
            .iter_mut()
            .map(|station| station.figure_mut(figure).ok().map(|measured| measured.mm))
            .collect();
        let count = values.len();
        for (i, station) in reached.iter_mut().enumerate() {
            let (before, after) = (
                values[(i + count - BESIDE) % count],
                values[(i + BESIDE) % count],
            );
            let own = station.figure_mut(figure);
            if let (Ok(own), Some(before), Some(after)) = (own, before, after) {
                let change = (after - before).abs() / (2.0 * BESIDE as f64 * STATION_STEP_MM);
                own.uncertainty_mm = own.uncertainty_mm.hypot(change * STATION_PLACE_MM);
            }
        }
    }
    // A radius known no better than its own size is none.
    for station in &mut reached {
        if station
            .border_radius
            .is_ok_and(|radius| radius.uncertainty_mm >= radius.mm)
        {
            station.border_radius = Err(Missing::NoRoll);
        }
    }
    reached
}

/// Stations as they leave: numbered along the line, named, in scan coordinates.
fn assembled(impression: &Impression, reached: Vec<Reached>) -> Border {
    const WIDEST_GAP_MM: f64 = 3.0;
    let points: Vec<Point3<f64>> = reached.iter().map(|r| r.point).collect();
    let length_mm = closed_line::length(&points);
    let scan_from_local = impression.frame.local_from_scan().inverse();
    let widest = reached
        .chunk_by(|a, b| a.uncertainty_mm.is_none() == b.uncertainty_mm.is_none())
        .filter(|run| run[0].uncertainty_mm.is_none())
        .map(|run| run.len() as f64 * STATION_STEP_MM)
        .fold(0.0, f64::max);
    let crest_line = crest_line(impression.zones.crest(), impression.frame.arch, &reached)
        .iter()
        .map(|p| scan_from_local * p)
        .collect();
    let dips = dips::dips(&reached);
    let opposite = opposites(&reached);
    let mut passed = 0.0;
    let steps: Vec<f64> = closed_line::steps(&points).collect();
    let stations = reached
        .into_iter()
        .zip(opposite)
        .zip(steps)
        .map(|((own, opposite), step)| {
            let s = passed / length_mm;
            passed += step;
            Station {
                s,
                part: own.part,
                zone: impression.zones.zone(&own.point),
                side: impression.zones.side(&own.point),
                point: scan_from_local * own.point,
                uncertainty_mm: own.uncertainty_mm,
                scan_ends: own.scan_ends,
                flange_height: own.flange_height,
                flange_thickness: own.flange_thickness,
                border_radius: own.border_radius,
                overlap: own.overlap,
                opposite,
                section: own.section,
            }
        })
        .collect();
    Border {
        closed: widest <= WIDEST_GAP_MM,
        length_mm,
        stations,
        dips,
        crest_line,
    }
}

/// The bottoms of the sections across the outer border, smooth, from the
/// patient's right to the left; local coordinates.
///
/// The bottom of a trough is nearly level, and single sections put theirs far
/// aside: along the rough crest line the median of where its neighbours' lie is
/// taken, across it and in height.
fn crest_line(rough: &CrestLine, arch: Arch, reached: &[Reached]) -> Vec<Point3<f64>> {
    const NEIGHBOURS: usize = 4;
    const SMOOTH: usize = 3;
    const BEYOND_END_MM: f64 = 1.5;
    let mut offsets: Vec<Vec<(f64, f64)>> = vec![Vec::new(); rough.points().len()];
    let bottoms = reached
        .iter()
        .filter(|station| station.part == BorderPart::Outer)
        .filter_map(|station| station.crest);
    for bottom in bottoms {
        let i = rough.nearest(bottom.xy());
        let off = bottom - rough.points()[i];
        if off.xy().dot(&rough.direction(i)).abs() <= BEYOND_END_MM {
            offsets[i].push((off.xy().dot(&rough.outward(i)), off.z));
        }
    }
    let last = offsets.len().saturating_sub(1);
    let line: Vec<Point3<f64>> = (0..offsets.len())
        .filter_map(|i| {
            let near = i.saturating_sub(NEIGHBOURS)..=(i + NEIGHBOURS).min(last);
            let near: Vec<(f64, f64)> = offsets[near].iter().flatten().copied().collect();
            let across = middle(near.iter().map(|off| off.0))?;
            let place = rough.points()[i].xy() + rough.outward(i) * across;
            let height = rough.points()[i].z + middle(near.iter().map(|off| off.1))?;
            Some(Point3::new(place.x, place.y, height))
        })
        .collect();
    let mut line = evenly(&smoothed(&line, SMOOTH), STATION_STEP_MM);
    // The rough line begins on +x, which is the patient's right in the upper jaw.
    if arch == Arch::Mandibular {
        line.reverse();
    }
    line
}

fn middle(values: impl Iterator<Item = f64>) -> Option<f64> {
    median(&mut values.collect::<Vec<f64>>())
}

/// For each station the one of the same stretch nearest to its mirror image.
fn opposites(reached: &[Reached]) -> Vec<Option<usize>> {
    const WITHIN_MM: f64 = 4.0;
    reached
        .iter()
        .map(|own| {
            let mirrored = nalgebra::Point2::new(-own.point.x, own.point.y);
            let distance = |i: usize| (reached[i].point.xy() - mirrored).norm();
            (0..reached.len())
                .filter(|&i| reached[i].part == own.part)
                .min_by(|&a, &b| distance(a).total_cmp(&distance(b)))
                .filter(|&i| distance(i) <= WITHIN_MM)
        })
        .collect()
}
