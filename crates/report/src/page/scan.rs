//! The scan as a file and as a mesh, and how well each part was scanned.

use super::figure::{area, count, exact, limit, none, quantity, share};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ImpressionResult, ScanResult, TrayJoint, TrayScan};
use crate::text::format::capital;
use crate::text::words::tray_found;
use maud::{Markup, html};
use messages::Language;

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let edge = material.result.protocol.limits.get("median_edge_mm");
    let zones: Vec<Vec<Markup>> = impression
        .zones
        .iter()
        .map(|zone| {
            vec![
                place(Some(&zone.zone), zone.side),
                area(zone.area_mm2),
                share(zone.coverage),
                exact(zone.median_edge_mm, "mm"),
                exact(zone.noise_mm, "mm"),
                html! { (exact(zone.least_void_across_mm, "mm")) " across, " (exact(zone.least_void_depth_mm, "mm")) " deep" },
            ]
        })
        .collect();
    let columns = [
        "Part",
        "Area",
        "Scanned",
        "Median edge",
        "Noise (standard deviation)",
        "Smallest void that can be seen",
    ];
    Some(html! {
        h3 { "Scan" }
        (table("The scan of the impression", &["Fact", "Value"], &facts(&impression.scan, edge.map(|l| l.value))))
        @match &impression.tray {
            Some(tray) => (table("The scan of the empty tray", &["Fact", "Value"], &tray_facts(tray))),
            None => p { "No scan of the empty tray was given." },
        }
        @if let Some(chosen) = &impression.tray_chosen { p { (capital(&tray_found(chosen, Language::English))) "." } }
        @if !impression.tray_joints.is_empty() {
            (table("The joints of the tray", &["Pieces", "Gap", "Step"], &joint_facts(&impression.tray_joints)))
        }
        @if !impression.scan.parts.is_empty() {
            (table("The parts of the impression", &["Part", "On the tray", "Distance from it (root mean square)", "Lies within (k = 2)"], &part_facts(&impression.scan)))
            @if let Some(mm) = impression.scan.cut_width_mm {
                p { "The impression was cut apart. Its parts were laid on the scan of the whole tray, in whose numbers all places are given; the cuts are " (exact(mm, "mm")) " wide." }
            }
        }
        @let warnings = impression.scan.warnings.iter().chain(impression.tray.iter().flat_map(|tray| &tray.warnings));
        @for warning in warnings { p { "On reading: " (warning) } }
        @if !zones.is_empty() {
            (table("Scan quality by region (properties of the mesh, given without uncertainty)", &columns, &zones))
        }
    })
}

fn row(name: &str, value: Markup) -> Vec<Markup> {
    vec![words(name), value]
}

fn unit(unit: &str, is_assumed: bool) -> Markup {
    html! {
        (unit)
        @if is_assumed { " (assumed from the size: nobody named it)" } @else { " (as named by the operator)" }
    }
}

fn joint_facts(joints: &[TrayJoint]) -> Vec<Vec<Markup>> {
    let row = |joint: &TrayJoint| {
        let [one, other] = joint.pieces;
        let within = |mm| quantity(mm, Some(joint.uncertainty_mm), "mm");
        vec![
            html! { (one) " and " (other) },
            within(joint.gap_mm),
            within(joint.step_mm),
        ]
    };
    joints.iter().map(row).collect()
}

fn part_facts(scan: &ScanResult) -> Vec<Vec<Markup>> {
    let length = |mm: Option<f64>| match mm {
        Some(mm) => exact(mm, "mm"),
        None => none("the parts were not joined"),
    };
    (scan.parts.iter().enumerate())
        .map(|(number, part)| {
            vec![
                count(number as u64 + 1),
                match part.fitting_share {
                    Some(share) => html! { (format!("{:.0} % of its surface", 100.0 * share)) },
                    None => none("the parts were not joined"),
                },
                length(part.rms_mm),
                length(part.uncertainty_mm),
            ]
        })
        .collect()
}

fn facts(scan: &ScanResult, coarsest_mm: Option<f64>) -> Vec<Vec<Markup>> {
    vec![
        row("file", words(&scan.file)),
        row("checksum (SHA-256)", html! { code { (scan.sha256) } }),
        row("unit of its numbers", unit(&scan.unit, scan.unit_assumed)),
        row(
            "triangles, vertices",
            html! { (count(scan.triangles)) ", " (count(scan.vertices)) },
        ),
        row("connected parts", count(scan.components)),
        row("loops of open edges", count(scan.boundary_loops)),
        row(
            "edges of three triangles or more",
            count(scan.non_manifold_edges),
        ),
        row("triangles without area", count(scan.degenerate_triangles)),
        row(
            "median edge",
            html! {
                (exact(scan.median_edge_mm, "mm")) " (exact, of this mesh)"
                @if let Some(mm) = coarsest_mm { ", limit " (limit(mm, "mm")) }
            },
        ),
        row(
            "area of the whole mesh",
            html! { (area(scan.area_mm2)) " (exact, of this mesh)" },
        ),
        row(
            "noise along the normal (standard deviation)",
            match scan.noise_mm {
                Some(mm) => html! { (exact(mm, "mm")) " (its own uncertainty is not stated)" },
                None => none("it could not be determined"),
            },
        ),
        row(
            "outer surface scanned too",
            words(match scan.has_outer_surface {
                Some(true) => "yes",
                Some(false) => "no",
                None => "not known",
            }),
        ),
        row("colour", words(if scan.has_colour { "yes" } else { "no" })),
        row(
            "free text in the file",
            words(if scan.carries_text {
                "yes: it may name a person"
            } else {
                "no"
            }),
        ),
    ]
}

fn tray_facts(tray: &TrayScan) -> Vec<Vec<Markup>> {
    vec![
        row("file", words(&tray.file)),
        row("checksum (SHA-256)", html! { code { (tray.sha256) } }),
        row("unit of its numbers", unit(&tray.unit, tray.unit_assumed)),
        row(
            "triangles, vertices",
            html! { (count(tray.triangles)) ", " (count(tray.vertices)) },
        ),
        row(
            "free text in the file",
            words(if tray.carries_text {
                "yes: it may name a person"
            } else {
                "no"
            }),
        ),
    ]
}
