//! What was found of the tray, in the words of the contract.

use crate::result::{BesideCover, TrayColour, TrayFit, TraySeating, TrayZone};
use crate::rounding::figure;
use judge::words;
use measure::ImpressionMeasurement;
use measure::tray_fit::Amount;

pub(super) fn colour(measurement: &ImpressionMeasurement) -> Option<TrayColour> {
    let found = measurement.colour.as_ref()?.as_ref().ok()?;
    let hex = |[red, green, blue]: [u8; 3]| format!("#{red:02x}{green:02x}{blue:02x}");
    Some(TrayColour {
        material: hex(found.material),
        tray: hex(found.tray),
        inferred: found.inferred,
        difference: figure(found.difference),
        separation: figure(found.separation),
        area_judged_mm2: figure(found.area_judged_mm2),
        tray_seen_mm2: figure(found.tray_seen_mm2),
        other_mm2: figure(found.other_mm2),
        beside_cover: found.beside_cover.map(|beside| BesideCover {
            both_mm2: figure(beside.both_mm2),
            colour_only_mm2: figure(beside.colour_only_mm2),
            cover_only_mm2: figure(beside.cover_only_mm2),
        }),
    })
}

pub(super) fn fit(measurement: &ImpressionMeasurement) -> Option<TrayFit> {
    let found = measurement.tray_fit.as_ref()?;
    let both = |amount: Option<Amount>| {
        amount.map_or((None, None), |amount| {
            (Some(figure(amount.value)), Some(figure(amount.uncertainty)))
        })
    };
    Some(TrayFit {
        zones: (found.zones.iter())
            .map(|zone| {
                let (edge_to_border_mm, edge_to_border_uncertainty_mm) =
                    both(zone.edge_to_border_mm);
                let (cover_mm, cover_uncertainty_mm) = both(zone.cover_mm);
                TrayZone {
                    zone: words::zone(zone.zone).to_owned(),
                    side: zone.side.map(Into::into),
                    edge_to_border_mm,
                    edge_to_border_uncertainty_mm,
                    cover_mm,
                    cover_uncertainty_mm,
                }
            })
            .collect(),
        seating: found.seating.as_ref().map(|seating| TraySeating {
            right_mm: figure(seating.right_mm.value),
            right_uncertainty_mm: figure(seating.right_mm.uncertainty),
            anterior_mm: figure(seating.anterior_mm.value),
            anterior_uncertainty_mm: figure(seating.anterior_mm.uncertainty),
            front_up_deg: figure(seating.front_up_deg.value),
            front_up_uncertainty_deg: figure(seating.front_up_deg.uncertainty),
            right_up_deg: figure(seating.right_up_deg.value),
            right_up_uncertainty_deg: figure(seating.right_up_deg.uncertainty),
            turned_right_deg: figure(seating.turned_right_deg.value),
            turned_right_uncertainty_deg: figure(seating.turned_right_deg.uncertainty),
            wider_mm: figure(seating.wider_mm.value),
            wider_uncertainty_mm: figure(seating.wider_mm.uncertainty),
            cover_sd_mm: figure(seating.cover_sd_mm),
            even_sd_mm: figure(seating.even_sd_mm),
        }),
    })
}
