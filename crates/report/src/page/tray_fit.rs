//! How the tray suits the mouth, and how it stood.

use super::figure::{exact, limit, none, quantity};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ImpressionResult, LimbBend, ProtocolResult, Side, TraySeating, TrayZone};
use maud::{Markup, html};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let fit = impression.tray_fit.as_ref()?;
    let protocol = &material.result.protocol;
    let zones: Vec<Vec<Markup>> = fit.zones.iter().map(zone).collect();
    let bends = impression.cover.iter().flat_map(|cover| &cover.tray_bend);
    let bends: Vec<Vec<Markup>> = bends.flat_map(|limb| bend(limb, protocol)).collect();
    Some(html! {
        h3 { "Tray" }
        @if let Some(seating) = &fit.seating {
            (table(
                "Tray position compared with the position that would have given the most even thickness",
                &["Deviation", "Measured (k = 2)", "Limit"],
                &rows(seating, protocol),
            ))
            p {
                "Thickness varies with a standard deviation of " (exact(seating.cover_sd_mm, "mm")) "; in the best tray "
                "position it would be " (exact(seating.even_sd_mm, "mm")) "."
            }
        }
        @if !bends.is_empty() {
            (table(
                "Bend of the tray between its scan and the impression, beside its front",
                &["Place", "Moved (k = 2)", "Limit"],
                &bends,
            ))
        }
        @if !zones.is_empty() {
            (table("The tray in each part of the arch, medians", &["Part", "Tray's edge to border (k = 2)", "Material thickness (k = 2)"], &zones))
        }
    })
}

fn rows(seating: &TraySeating, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let row = |what: &str, value: f64, doubt: f64, key: &str| {
        let found = protocol.limits.get(key)?;
        Some(vec![
            words(what),
            quantity(value, Some(doubt), &found.unit),
            html! { "at most " (limit(found.value, &found.unit)) " either way" },
        ])
    };
    let (shift, tilt) = ("most_tray_shift_mm", "most_tray_tilt_deg");
    [
        row(
            "to the patient's right",
            seating.right_mm,
            seating.right_uncertainty_mm,
            shift,
        ),
        row(
            "to the front",
            seating.anterior_mm,
            seating.anterior_uncertainty_mm,
            shift,
        ),
        row(
            "tilted, front nearer to the tissue",
            seating.front_up_deg,
            seating.front_up_uncertainty_deg,
            tilt,
        ),
        row(
            "tilted, patient's right nearer to the tissue",
            seating.right_up_deg,
            seating.right_up_uncertainty_deg,
            tilt,
        ),
        row(
            "turned, front toward the patient's right",
            seating.turned_right_deg,
            seating.turned_right_uncertainty_deg,
            tilt,
        ),
        row(
            "wide, over the width of the arch",
            seating.wider_mm,
            seating.wider_uncertainty_mm,
            "most_tray_width_mm",
        ),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn bend(limb: &LimbBend, protocol: &ProtocolResult) -> Vec<Vec<Markup>> {
    let side = match limb.side {
        Side::Right => "right",
        Side::Left => "left",
    };
    let most = protocol.limits.get("most_tray_bend_mm");
    let row = |place: &str, way: &str, value: f64, doubt: f64| {
        vec![
            html! { (side) " limb, " (place) ": " (way) },
            quantity(value, Some(doubt), "mm"),
            match most {
                Some(found) if place == "end" => {
                    html! { "at most " (limit(found.value, &found.unit)) " in all" }
                }
                _ => words("no limit"),
            },
        ]
    };
    vec![
        row(
            "end",
            "toward the tissue",
            limb.end_toward_tissue_mm,
            limb.end_toward_tissue_uncertainty_mm,
        ),
        row(
            "end",
            "outward",
            limb.end_outward_mm,
            limb.end_outward_uncertainty_mm,
        ),
        row(
            "middle",
            "toward the tissue",
            limb.middle_toward_tissue_mm,
            limb.middle_toward_tissue_uncertainty_mm,
        ),
        row(
            "middle",
            "outward",
            limb.middle_outward_mm,
            limb.middle_outward_uncertainty_mm,
        ),
    ]
}

fn zone(zone: &TrayZone) -> Vec<Markup> {
    let amount = |value: Option<f64>, doubt, why| match value {
        Some(mm) => quantity(mm, doubt, "mm"),
        None => none(why),
    };
    vec![
        place(Some(&zone.zone), zone.side),
        amount(
            zone.edge_to_border_mm,
            zone.edge_to_border_uncertainty_mm,
            "no border here",
        ),
        amount(zone.cover_mm, zone.cover_uncertainty_mm, "not known here"),
    ]
}
