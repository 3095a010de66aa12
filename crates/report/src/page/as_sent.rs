//! The impression as it was sent beside it as it arrived.

use super::figure::{limit, none, quantity, share};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ChangeInTransit, ImpressionResult};
use crate::text::words::side_word;
use maud::{Markup, html};
use messages::Language;

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let sent = impression.as_sent.as_ref()?;
    let limit_of = |key| match material.result.protocol.limits.get(key) {
        Some(of) => html! { "at most " (limit(of.value, "mm")) },
        None => none("the protocol holds no such limit"),
    };
    Some(html! {
        h3 { "Change since the impression was sent" }
        @if let Some(why) = &sent.unused { p { "The scan as sent was not compared: " (why) "." } }
        @if let Some(change) = &sent.change {
            (table("Change of the arch as a whole", &["Figure", "Measured (k = 2)", "Limit"], &arch(change, &limit_of("most_arch_change_mm"))))
            p {
                "Addition silicone shrinks by 0.3 % in a week, which is 0.13 mm over 42 mm; the standard allows "
                "1.5 %. After allowing for bend and size, " (share(change.unchanged_share)) " of the tissue surface lies on the scan as sent."
            }
            @if change.damage.is_empty() {
                p { "No place changed by itself by more than its uncertainty (" (limit(change.uncertainty_mm, "mm")) " on half of the surface)." }
            } @else {
                (table("Places that changed by themselves", &["What", "Where", "Moved (k = 2)", "Area", "Limit"], &damage(change, &limit_of("most_local_change_mm"))))
            }
            @if !change.places.is_empty() {
                (table("Places on the scan as sent", &["What it was", "Where", "As it arrived"], &places(change)))
            }
        }
    })
}

fn arch(change: &ChangeInTransit, limit: &Markup) -> Vec<Vec<Markup>> {
    let of = |name: String, mm, uncertainty_mm, limit| {
        vec![
            html! { (name) },
            quantity(mm, Some(uncertainty_mm), "mm"),
            limit,
        ]
    };
    let bends = change.bends.iter().flat_map(|bend| {
        let side = side_word(bend.side, Language::English);
        [
            of(
                format!("{side} heel toward the tissue, beside the front"),
                bend.end_toward_tissue_mm,
                bend.end_toward_tissue_uncertainty_mm,
                limit.clone(),
            ),
            of(
                format!("{side} heel outward, beside the front"),
                bend.end_outward_mm,
                bend.end_outward_uncertainty_mm,
                limit.clone(),
            ),
        ]
    });
    let larger = vec![
        words("larger evenly"),
        quantity(
            change.larger_percent,
            Some(change.larger_uncertainty_percent),
            "%",
        ),
        words("judged by the heels"),
    ];
    let apart = of(
        "heels farther apart, in all".to_owned(),
        change.heels_apart_mm,
        change.heels_apart_uncertainty_mm,
        limit.clone(),
    );
    [larger, apart].into_iter().chain(bends).collect()
}

fn damage(change: &ChangeInTransit, limit: &Markup) -> Vec<Vec<Markup>> {
    let row = |damage: &crate::result::Damage| {
        vec![
            words(damage.kind.in_words()),
            place(Some(&damage.zone), damage.side),
            quantity(damage.depth_mm, Some(damage.depth_uncertainty_mm), "mm"),
            quantity(damage.area_mm2, None, "mm2"),
            limit.clone(),
        ]
    };
    change.damage.iter().map(row).collect()
}

fn places(change: &ChangeInTransit) -> Vec<Vec<Markup>> {
    let row = |then: &crate::result::PlaceThen| {
        vec![
            words(&then.kind),
            place(Some(&then.zone), then.side),
            match then.found_again {
                Some(true) => words("found again"),
                Some(false) => words("gone"),
                None => none("not measured there"),
            },
        ]
    };
    change.places.iter().map(row).collect()
}
