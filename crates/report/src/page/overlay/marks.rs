//! What is marked on a picture, and where.

use super::sheet::SheetPoint;
use crate::picture::Picture;
use crate::result::{CaseResult, Finding, ImpressionResult, OnTray, Severity, Spot, Station};
use mesh::Unit;
use nalgebra::Point3;

/// Findings that are marked on one picture: more could not be told apart.
pub(in crate::page) const MOST_MARKS: usize = 40;
/// Something on a picture.
pub(crate) struct Mark<'a> {
    pub(crate) id: &'a str,
    pub(crate) kind: Kind,
    pub(crate) at: SheetPoint,
    pub(crate) radius: f64,
    /// The stretch of border that it is about, as far as it shows.
    pub(crate) lines: Vec<Vec<SheetPoint>>,
}

/// What a mark stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    /// A ring, and a line along a stretch.
    Finding(Severity),
    /// A saltire.
    Landmark,
}

/// Findings with a place on an impression, and marks of those that show.
pub(crate) fn finding_marks<'a>(
    result: &'a CaseResult,
    number: usize,
    impression: &ImpressionResult,
    picture: &Picture,
    sheet: &dyn Fn(SheetPoint) -> SheetPoint,
    px: f64,
) -> (Vec<&'a str>, Vec<Mark<'a>>) {
    let mine: Vec<&Finding> = (result.findings.iter())
        .filter(|f| f.impression == Some(number as u64) && f.at.is_some())
        .collect();
    let marks = (mine.iter())
        .filter_map(|finding| mark(impression, finding, picture, sheet, px))
        .take(MOST_MARKS)
        .collect();
    (mine.iter().map(|f| f.id.as_str()).collect(), marks)
}

/// Landmarks whose place is known, and marks of those that show.
pub(super) fn landmark_marks<'a>(
    impression: &'a ImpressionResult,
    picture: &Picture,
    sheet: &dyn Fn(SheetPoint) -> SheetPoint,
) -> (Vec<&'a str>, Vec<Mark<'a>>) {
    let known = || impression.landmarks.iter().filter(|l| l.point.is_some());
    let marks = known()
        .filter_map(|landmark| {
            let at = point_mm(impression, landmark.point.as_ref()?)?;
            Some(Mark {
                id: &landmark.id,
                kind: Kind::Landmark,
                at: picture.shown(&at).map(sheet)?,
                radius: 9.0,
                lines: Vec::new(),
            })
        })
        .collect();
    (known().map(|l| l.id.as_str()).collect(), marks)
}

/// Findings on an impression that ask for relief of its tray or may, with their patches.
pub(crate) fn to_relieve<'a>(
    result: &'a CaseResult,
    number: usize,
    impression: &'a ImpressionResult,
) -> impl Iterator<Item = (&'a Finding, &'a Spot, &'a OnTray)> {
    let mine = (result.findings.iter())
        .filter(move |f| f.impression == Some(number as u64) && f.severity != Severity::Note);
    mine.filter_map(|finding| {
        let spot = spot(impression, finding)?;
        Some((finding, spot, spot.on_tray.as_ref()?))
    })
}

/// Marks of the places at which a tray is to be relieved, on a picture of its inside.
pub(super) fn tray_marks<'a>(
    result: &'a CaseResult,
    number: usize,
    impression: &'a ImpressionResult,
    picture: &Picture,
    sheet: &dyn Fn(SheetPoint) -> SheetPoint,
    px: f64,
) -> Vec<Mark<'a>> {
    let in_mm = (impression.tray.as_ref())
        .and_then(|tray| tray.unit.parse::<Unit>().ok())
        .map_or(1.0, Unit::in_mm);
    let marks = to_relieve(result, number, impression).filter_map(|(finding, _, on_tray)| {
        let at = Point3::from(on_tray.at.map(|c| c * in_mm));
        Some(Mark {
            id: &finding.id,
            kind: Kind::Finding(finding.severity),
            at: picture.shown(&at).map(sheet)?,
            radius: ring(radius_mm(impression, finding), picture, px),
            lines: Vec::new(),
        })
    });
    marks.take(MOST_MARKS).collect()
}

/// Radius of the ring round a place, drawn so large that it can be seen.
pub(super) fn ring(radius_mm: f64, picture: &Picture, px: f64) -> f64 {
    const LEAST_RADIUS: f64 = 14.0;
    (radius_mm * picture.camera.px_per_mm * px).max(LEAST_RADIUS)
}

pub(super) fn mark<'a>(
    impression: &ImpressionResult,
    finding: &'a Finding,
    picture: &Picture,
    sheet: &dyn Fn(SheetPoint) -> SheetPoint,
    px: f64,
) -> Option<Mark<'a>> {
    let shown = |point: &[f64; 3]| picture.shown(&point_mm(impression, point)?).map(sheet);
    let at = shown(finding.at.as_ref()?)?;
    let stretch = stretch(impression, finding);
    let stations: Vec<Option<SheetPoint>> = stretch.iter().map(|s| shown(&s.point)).collect();
    let lines = stations
        .split(Option::is_none)
        .map(|run| run.iter().flatten().copied().collect::<Vec<SheetPoint>>())
        .filter(|run| run.len() > 1)
        .collect();
    Some(Mark {
        id: &finding.id,
        kind: Kind::Finding(finding.severity),
        at,
        radius: ring(radius_mm(impression, finding), picture, px),
        lines,
    })
}

/// Radius of the ring round a place, mm; 0 where its size is not known.
pub(in crate::page) fn radius_mm(impression: &ImpressionResult, finding: &Finding) -> f64 {
    let area_mm2 = spot(impression, finding).map_or(0.0, |spot| spot.area_mm2);
    (area_mm2 / std::f64::consts::PI).sqrt() * 1.3
}

/// A point of the result, mm.
pub(in crate::page) fn point_mm(
    impression: &ImpressionResult,
    point: &[f64; 3],
) -> Option<Point3<f64>> {
    let in_mm = impression.scan.unit.parse::<Unit>().ok()?.in_mm();
    Some(Point3::from(point.map(|c| c * in_mm)))
}

fn spot<'a>(impression: &'a ImpressionResult, finding: &Finding) -> Option<&'a Spot> {
    let spots = &impression.cover.as_ref()?.spots;
    spots
        .iter()
        .find(|spot| Some(&spot.id) == finding.refers_to.as_ref())
}

/// Stations of the stretch of border that a finding is about.
pub(in crate::page) fn stretch<'a>(
    impression: &'a ImpressionResult,
    finding: &Finding,
) -> Vec<&'a Station> {
    let stations = impression.border.as_ref().map(|border| &border.stations);
    let ends = finding.from_station.zip(finding.to_station);
    let Some((stations, (from, to))) = stations.zip(ends) else {
        return Vec::new();
    };
    let (from, to) = (from as usize, to as usize);
    let runs = if from <= to {
        [from..to + 1, 0..0]
    } else {
        [from..stations.len(), 0..to + 1]
    };
    runs.into_iter()
        .flat_map(|run| stations.get(run).unwrap_or_default())
        .collect()
}
