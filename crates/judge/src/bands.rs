//! The material between the two bands of a frenum stands out between their notches, as a nodule
//! does.

use crate::stretch::within;
use measure::{Border, Defect, DefectKind, Dip, Measurement};
use nalgebra::Point3;

/// Whether a nodule may be the material between two bands of a frenum: it lies at the border
/// between two notches, is as wide as the border between them, and stands no higher than they are
/// deep.
pub(crate) fn may_lie_between(measurement: &Measurement, defect: &Defect) -> bool {
    let is_at_border = defect.from_edge_mm <= 0.5 * defect.across_mm;
    let border = measurement.border.as_ref().ok();
    let is_between = |border: &Border| {
        let notches = || border.dips.iter().filter(|dip| dip.kind.may_be_frenum());
        let nearest = nearest_station(border, &defect.centre);
        notches().any(|before| {
            notches().any(|after| is_between_notches(border, before, after, nearest, defect))
        })
    };
    defect.kind == DefectKind::Nodule && is_at_border && border.is_some_and(is_between)
}

fn is_between_notches(
    border: &Border,
    before: &Dip,
    after: &Dip,
    station: usize,
    defect: &Defect,
) -> bool {
    let count = border.stations.len();
    let steps = (after.bottom + count - before.bottom) % count;
    let ends = [before.to, after.from].map(|number| border.stations[number].point);
    2 * steps < count
        && within(before.bottom, after.bottom, station)
        && (ends[1] - ends[0]).norm() <= defect.across_mm
        && defect.depth_mm <= Some(before.depth.mm.min(after.depth.mm))
}

/// The number of the station that lies nearest; 0 of a border without stations.
fn nearest_station(border: &Border, place: &Point3<f64>) -> usize {
    let distance = |number: &usize| (border.stations[*number].point - place).norm_squared();
    (0..border.stations.len())
        .min_by(|a, b| distance(a).total_cmp(&distance(b)))
        .unwrap_or(0)
}
