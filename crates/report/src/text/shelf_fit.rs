//! How the trays of a shelf suit a mouth, as text.

use super::format;
use super::words::{arch_word, side_word};
use crate::result::{ClearanceResult, Conclusion, EdgeResult, Side, TrayResult};
use crate::studies::shelf_fit::FitResult;
use messages::Language;
use std::fmt::{self, Write};

/// How the trays of a shelf suit a mouth, as text for people.
#[must_use]
pub fn fit_text(result: &FitResult) -> String {
    let mut text = String::new();
    // Writing to a String cannot fail.
    let _ = write_text(&mut text, result);
    text
}

fn write_text(out: &mut String, result: &FitResult) -> fmt::Result {
    write_conclusion(out, result)?;
    let [from, to] = result.tried.wanted_clearance_mm;
    let wanted = format!("{from} to {to} mm");
    writeln!(
        out,
        "\n{:<20}{:>10}{:>10}{:>10}{:>14}  {:<44}  touches",
        "tray", "least, mm", "median", "± (k = 2)", wanted, "edge to border, least"
    )?;
    for tray in &result.tried.trays {
        write_tray(out, tray)?;
    }
    writeln!(
        out,
        "\nClearance from the tissue to the inside of each tray, in the place where it is most even. The \
         column \"{wanted}\" is the share of the tissue over the tray with that clearance."
    )?;
    if result.is_positive {
        writeln!(
            out,
            "The scan shows the mouth or a cast: the distance is to where the scan ends, which is not \
             the border."
        )?;
    }
    writeln!(
        out,
        "Try the tray in the mouth before you use it; the licensed clinician decides."
    )
}

fn write_conclusion(out: &mut String, result: &FitResult) -> fmt::Result {
    let arch = arch_word(result.arch);
    let name = result.tried.tray.as_deref().unwrap_or_default();
    match result.tried.conclusion {
        Conclusion::Take => writeln!(out, "TAKE {name} ({arch}): it touches nowhere."),
        Conclusion::Adapt => {
            writeln!(out, "NONE FITS ({arch}): {name} comes nearest. Adapt it:")?;
            for touch in &result.tried.bend {
                writeln!(
                    out,
                    "  Bend it away from the {}: it reaches {:.1} mm into the tissue over {}.",
                    place(&touch.zone, touch.side),
                    touch.depth_mm,
                    format::area(touch.area_mm2)
                )?;
            }
            for edge in &result.tried.shorten {
                writeln!(
                    out,
                    "  Shorten it at the {}: its edge reaches {:.1} mm past the border.",
                    place(&edge.zone, edge.side),
                    edge.past_border_mm
                )?;
            }
            Ok(())
        }
        Conclusion::Individual => writeln!(
            out,
            "NONE FITS ({arch}): make an individual tray. No tray on the shelf comes near enough to be adapted."
        ),
        Conclusion::NoneOfThisJaw => writeln!(
            out,
            "NONE FITS ({arch}): there is no {arch} tray on the shelf. Scan those that you have."
        ),
    }
}

fn place(zone: &str, side: Option<Side>) -> String {
    side.map_or_else(
        || zone.to_owned(),
        |side| format!("{zone}, {}", side_word(side, Language::English)),
    )
}

fn write_tray(out: &mut String, tray: &TrayResult) -> fmt::Result {
    let name = &tray.name;
    match &tray.clearance {
        Some(found) => {
            let least = least_edge(found).map_or_else(String::new, |edge| {
                format!("{:.1} mm, {}", edge.least_mm, place(&edge.zone, edge.side))
            });
            writeln!(
                out,
                "{name:<20}{:>10.2}{:>10.2}{:>10.2}{:>14}  {least:<44}  {}",
                found.least_mm,
                found.median_mm,
                found.uncertainty_mm,
                format::percent(found.wanted_share),
                touches(found)
            )
        }
        None if tray.is_of_the_other_jaw => writeln!(out, "{name:<20}  a tray of the other jaw"),
        None => writeln!(
            out,
            "{name:<20}  could not be tried in: no tray is seen in its scan"
        ),
    }
}

fn least_edge(found: &ClearanceResult) -> Option<&EdgeResult> {
    let edges = found.edges.iter();
    edges.min_by(|a, b| a.least_mm.total_cmp(&b.least_mm))
}

fn touches(found: &ClearanceResult) -> String {
    let places: Vec<String> = (found.touches.iter())
        .map(|touch| place(&touch.zone, touch.side))
        .collect();
    if places.is_empty() {
        "nowhere".to_owned()
    } else {
        places.join("; ")
    }
}
