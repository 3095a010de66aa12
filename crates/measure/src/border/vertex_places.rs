//! Where each vertex of the tissue surface lies in the arch: its zone, and on a
//! flange the station of the border that its figures are taken at.

use super::figures::{Border, BorderPart};
use crate::anatomy;
use crate::impression::Impression;
use crate::words::{Side, Zone};
use nalgebra::Point2;
use rayon::prelude::*;

/// Where a vertex of the tissue surface lies in the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct VertexPlace {
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// On a flange: number of the station of the border that it belongs to.
    pub station: Option<usize>,
}

/// The place of each vertex; `None` off the tissue surface.
pub(crate) fn of_vertices(
    impression: &Impression,
    border: Option<&Border>,
) -> Vec<Option<VertexPlace>> {
    let mesh = &impression.local;
    let mut on_tissue = vec![false; mesh.vertices().len()];
    for (corners, &tissue) in mesh.triangles().iter().zip(&impression.regions.is_tissue) {
        for &corner in corners.iter().filter(|_| tissue) {
            on_tissue[corner as usize] = true;
        }
    }
    let local_from_scan = impression.frame.local_from_scan();
    let stations: Vec<(BorderPart, Point2<f64>)> = border
        .iter()
        .flat_map(|border| &border.stations)
        .map(|station| (station.part, (local_from_scan * station.point).xy()))
        .collect();
    mesh.vertices()
        .par_iter()
        .zip(on_tissue)
        .map(|(place, on_tissue)| {
            on_tissue.then(|| {
                let zone = impression.zones.zone(place);
                VertexPlace {
                    zone,
                    side: impression.zones.side(place),
                    station: flange(zone).and_then(|part| nearest(&stations, part, place.xy())),
                }
            })
        })
        .collect()
}

/// The part of the border that a flange ends at; `None` of other zones.
fn flange(zone: Zone) -> Option<BorderPart> {
    match zone {
        Zone::LabialFlange | Zone::BuccalFlange | Zone::Distobuccal => Some(BorderPart::Outer),
        Zone::LingualFlange | Zone::Retromylohyoid => Some(BorderPart::Lingual),
        _ => None,
    }
}

/// The station of a part that lies nearest in plan.
fn nearest(
    stations: &[(BorderPart, Point2<f64>)],
    part: BorderPart,
    to: Point2<f64>,
) -> Option<usize> {
    let (number, squared) = stations
        .iter()
        .enumerate()
        .filter(|(_, (of, _))| *of == part)
        .map(|(number, (_, at))| (number, (at - to).norm_squared()))
        .min_by(|a, b| a.1.total_cmp(&b.1))?;
    (squared <= anatomy::FLANGE_LEANS_WITHIN_MM * anatomy::FLANGE_LEANS_WITHIN_MM).then_some(number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_station_of_its_part_counts_within_reach() {
        let at = |x: f64| Point2::new(x, 0.0);
        let stations = [
            (BorderPart::Outer, at(0.0)),
            (BorderPart::Lingual, at(4.0)),
            (BorderPart::Outer, at(9.0)),
        ];
        assert_eq!(nearest(&stations, BorderPart::Outer, at(4.0)), Some(0));
        assert_eq!(nearest(&stations, BorderPart::Lingual, at(9.0)), Some(1));
        assert_eq!(nearest(&stations, BorderPart::Lingual, at(90.0)), None);
        assert_eq!(nearest(&[], BorderPart::Outer, at(0.0)), None);
    }
}
