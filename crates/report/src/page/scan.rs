//! The scan as a file and as a mesh, and how well each part was scanned.

use super::figure::{area, count, exact, limit, none, quantity, share};
use super::filled::{PART, filled};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ImpressionResult, ScanResult, TrayJoint, TrayScan, ZoneScan};
use crate::text::format::capital;
use crate::text::words::tray_found;
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let edge = material.result.protocol.limits.get("median_edge_mm");
    let scan = &impression.scan;
    let of_trays = (impression.tray.iter()).flat_map(|tray| tray.warnings_in(language));
    let warnings: Vec<String> = (scan.warnings_in(language).into_iter())
        .chain(of_trays)
        .collect();
    let of_scan = text!(language, "scan-of-impression");
    let of_tray = text!(language, "scan-of-tray");
    Some(html! {
        h3 { (text!(language, "scan")) }
        (fact_table(language, &of_scan, &facts(language, scan, edge.map(|l| l.value))))
        @match &impression.tray {
            Some(tray) => (fact_table(language, &of_tray, &tray_facts(language, tray))),
            None => p { (text!(language, "scan-no-tray")) },
        }
        @if let Some(chosen) = &impression.tray_chosen { p { (capital(&tray_found(chosen, language))) "." } }
        @if !impression.tray_joints.is_empty() { (joints(language, &impression.tray_joints)) }
        @if !scan.parts.is_empty() {
            (parts(language, scan))
            @if let Some(mm) = scan.cut_width_mm {
                p {
                    (text!(language, "scan-cut-apart")) " "
                    (filled(&text!(language, "scan-parts-laid", width = PART[0]), &[exact(language, mm, "mm")]))
                }
            }
        }
        @for warning in warnings { p { (text!(language, "scan-on-reading", warning = warning.as_str())) } }
        @if !impression.zones.is_empty() { (zones(language, &impression.zones)) }
    })
}

fn fact_table(language: Language, caption: &str, facts: &[Vec<Markup>]) -> Markup {
    let columns = [text!(language, "head-fact"), text!(language, "head-value")];
    table(caption, &columns, facts)
}

fn joints(language: Language, joints: &[TrayJoint]) -> Markup {
    let row = |joint: &TrayJoint| {
        let [one, other] = joint.pieces;
        let within = |mm| quantity(language, mm, Some(joint.uncertainty_mm), "mm");
        vec![
            words(text!(
                language,
                "list",
                first = one.to_string(),
                last = other.to_string()
            )),
            within(joint.gap_mm),
            within(joint.step_mm),
        ]
    };
    let rows: Vec<Vec<Markup>> = joints.iter().map(row).collect();
    let columns = [
        text!(language, "head-pieces"),
        text!(language, "head-gap"),
        text!(language, "head-step"),
    ];
    table(&text!(language, "scan-joints"), &columns, &rows)
}

fn parts(language: Language, scan: &ScanResult) -> Markup {
    let not_joined = || none(language, &text!(language, "scan-parts-not-joined"));
    let length = |mm: Option<f64>| match mm {
        Some(mm) => exact(language, mm, "mm"),
        None => not_joined(),
    };
    let rows: Vec<Vec<Markup>> = (scan.parts.iter().enumerate())
        .map(|(number, part)| {
            vec![
                count(number as u64 + 1),
                match part.fitting_share {
                    Some(share) => {
                        let share = format!("{:.0}", 100.0 * share);
                        words(text!(language, "scan-part-share", share = share))
                    }
                    None => not_joined(),
                },
                length(part.rms_mm),
                length(part.uncertainty_mm),
            ]
        })
        .collect();
    let columns = [
        text!(language, "head-part-of-impression"),
        text!(language, "head-on-tray"),
        text!(language, "head-distance-from-it"),
        text!(language, "head-lies-within"),
    ];
    table(&text!(language, "scan-parts"), &columns, &rows)
}

fn zones(language: Language, zones: &[ZoneScan]) -> Markup {
    let row = |zone: &ZoneScan| {
        vec![
            place(language, Some(&zone.zone), zone.side),
            area(language, zone.area_mm2),
            share(language, zone.coverage),
            exact(language, zone.median_edge_mm, "mm"),
            exact(language, zone.noise_mm, "mm"),
            filled(
                &text!(
                    language,
                    "scan-least-void",
                    across = PART[0],
                    depth = PART[1]
                ),
                &[
                    exact(language, zone.least_void_across_mm, "mm"),
                    exact(language, zone.least_void_depth_mm, "mm"),
                ],
            ),
        ]
    };
    let rows: Vec<Vec<Markup>> = zones.iter().map(row).collect();
    let columns = [
        text!(language, "head-part-of-arch"),
        text!(language, "head-area"),
        text!(language, "head-scanned"),
        text!(language, "head-median-edge"),
        text!(language, "head-noise"),
        text!(language, "head-least-void"),
    ];
    table(&text!(language, "scan-by-region"), &columns, &rows)
}

fn unit(language: Language, unit: &str, is_assumed: bool) -> Markup {
    words(if is_assumed {
        text!(language, "scan-unit-assumed", unit = unit)
    } else {
        text!(language, "scan-unit-named", unit = unit)
    })
}

fn yes_or_no(language: Language, is: bool) -> String {
    if is {
        text!(language, "cell-yes")
    } else {
        text!(language, "cell-no")
    }
}

fn free_text(language: Language, carries_text: bool) -> Markup {
    words(if carries_text {
        text!(language, "scan-carries-text")
    } else {
        text!(language, "cell-no")
    })
}

/// What is said of every scan first: its file and the numbers in it.
fn of_the_file(
    language: Language,
    file: &str,
    sha256: &str,
    unit: Markup,
    [triangles, vertices]: [u64; 2],
) -> Vec<Vec<Markup>> {
    vec![
        vec![words(text!(language, "scan-file")), words(file)],
        vec![
            words(text!(language, "scan-checksum")),
            html! { code { (sha256) } },
        ],
        vec![words(text!(language, "scan-unit")), unit],
        vec![
            words(text!(language, "scan-size")),
            html! { (count(triangles)) ", " (count(vertices)) },
        ],
    ]
}

fn facts(language: Language, scan: &ScanResult, coarsest_mm: Option<f64>) -> Vec<Vec<Markup>> {
    let row = |name: String, value: Markup| vec![words(name), value];
    let of_this_mesh =
        |value: Markup| filled(&text!(language, "scan-exact", value = PART[0]), &[value]);
    let edge = exact(language, scan.median_edge_mm, "mm");
    let edge = match coarsest_mm {
        Some(mm) => filled(
            &text!(
                language,
                "scan-exact-with-limit",
                value = PART[0],
                limit = PART[1]
            ),
            &[edge, limit(language, mm, "mm")],
        ),
        None => of_this_mesh(edge),
    };
    let noise = match scan.noise_mm {
        Some(mm) => filled(
            &text!(language, "scan-noise-value", noise = PART[0]),
            &[exact(language, mm, "mm")],
        ),
        None => none(language, &text!(language, "scan-no-noise")),
    };
    let outer = match scan.has_outer_surface {
        Some(is) => yes_or_no(language, is),
        None => text!(language, "cell-not-known"),
    };
    let mut facts = of_the_file(
        language,
        &scan.file,
        &scan.sha256,
        unit(language, &scan.unit, scan.unit_assumed),
        [scan.triangles, scan.vertices],
    );
    facts.extend([
        row(text!(language, "scan-components"), count(scan.components)),
        row(
            text!(language, "scan-open-loops"),
            count(scan.boundary_loops),
        ),
        row(
            text!(language, "scan-branching-edges"),
            count(scan.non_manifold_edges),
        ),
        row(
            text!(language, "scan-flat-triangles"),
            count(scan.degenerate_triangles),
        ),
        row(text!(language, "scan-median-edge"), edge),
        row(
            text!(language, "scan-mesh-area"),
            of_this_mesh(area(language, scan.area_mm2)),
        ),
        row(text!(language, "scan-noise"), noise),
        row(text!(language, "scan-outer-surface"), words(outer)),
        row(
            text!(language, "scan-colour"),
            words(yes_or_no(language, scan.has_colour)),
        ),
        row(
            text!(language, "scan-free-text"),
            free_text(language, scan.carries_text),
        ),
    ]);
    facts
}

fn tray_facts(language: Language, tray: &TrayScan) -> Vec<Vec<Markup>> {
    let mut facts = of_the_file(
        language,
        &tray.file,
        &tray.sha256,
        unit(language, &tray.unit, tray.unit_assumed),
        [tray.triangles, tray.vertices],
    );
    facts.push(vec![
        words(text!(language, "scan-free-text")),
        free_text(language, tray.carries_text),
    ]);
    facts
}
