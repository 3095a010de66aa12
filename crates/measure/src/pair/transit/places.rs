//! Places that a scan as sent shows, looked for in the scan as it arrived.

use super::figures::{PlaceKind, PlaceThen};
use crate::border::{Border, Dip};
use crate::cover::SpotKind;
use crate::measurement::Measurement;
use crate::words::{Side, Zone};
use nalgebra::Point3;

/// Where nothing of the kind lies nearer than this, mm, the place is gone.
const WITHIN_MM: f64 = 2.0;

/// Every bare or thin place, defect and short stretch of the impression as sent. `now` takes a
/// place of that scan to the scan as it arrived.
pub(super) fn looked_for(
    then: &Measurement,
    arrived: &Measurement,
    now: impl Fn(&Point3<f64>) -> Point3<f64>,
) -> Vec<PlaceThen> {
    let spots = (then.spots.iter())
        .filter(|spot| spot.stop.is_none() && spot.around.is_none())
        .map(|spot| {
            let at = now(&spot.centre);
            let is_there = arrived
                .cover
                .is_ok()
                .then(|| has_spot(arrived, spot.kind, &at));
            place(
                PlaceKind::Spot(spot.kind),
                at,
                (spot.zone, spot.side),
                is_there,
            )
        });
    let defects = then
        .tissue
        .iter()
        .flat_map(|tissue| &tissue.defects)
        .map(|defect| {
            let at = now(&defect.centre);
            let is_there = arrived.tissue.as_ref().ok().map(|tissue| {
                let mut same = tissue.defects.iter().filter(|d| d.kind == defect.kind);
                let reach_mm = WITHIN_MM + defect.across_mm / 2.0;
                same.any(|d| (d.centre - at).norm() <= reach_mm)
            });
            place(
                PlaceKind::Defect(defect.kind),
                at,
                (defect.zone, defect.side),
                is_there,
            )
        });
    let stretches = then.border.iter().flat_map(|border| {
        let short = border.dips.iter().filter(|dip| is_short(dip));
        short.map(move |dip| &border.stations[dip.bottom])
    });
    let stretches = stretches.map(|station| {
        let at = now(&station.point);
        let is_there = arrived
            .border
            .as_ref()
            .ok()
            .map(|border| has_stretch(border, &at));
        place(
            PlaceKind::ShortBorder,
            at,
            (station.zone, station.side),
            is_there,
        )
    });
    spots.chain(defects).chain(stretches).collect()
}

fn place(
    kind: PlaceKind,
    at: Point3<f64>,
    (zone, side): (Zone, Option<Side>),
    is_there: Option<bool>,
) -> PlaceThen {
    PlaceThen {
        kind,
        at,
        zone,
        side,
        is_there,
    }
}

/// A thin place that is bare now is there again, and a bare one that is thin is not.
fn has_spot(arrived: &Measurement, kind: SpotKind, at: &Point3<f64>) -> bool {
    let same = |of: SpotKind| of == kind || of == SpotKind::ShowThrough;
    let mut spots = arrived.spots.iter().filter(|spot| same(spot.kind));
    spots.any(|spot| (spot.centre - at).norm() <= WITHIN_MM + (spot.area_mm2).sqrt())
}

fn is_short(dip: &Dip) -> bool {
    !dip.kind.may_be_frenum()
}

fn has_stretch(border: &Border, at: &Point3<f64>) -> bool {
    let near = |station: usize| (border.stations[station].point - at).norm() <= WITHIN_MM;
    let holds = |dip: &Dip, station: usize| {
        if dip.from <= dip.to {
            (dip.from..=dip.to).contains(&station)
        } else {
            station >= dip.from || station <= dip.to
        }
    };
    let mut short = border.dips.iter().filter(|dip| is_short(dip));
    short.any(|dip| (0..border.stations.len()).any(|s| holds(dip, s) && near(s)))
}
