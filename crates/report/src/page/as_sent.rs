//! The impression as it was sent beside it as it arrived.

use super::figure::{at_most, limit, none, quantity, share};
use super::filled::{PART, filled, form_of};
use super::material::Material;
use super::table::{place, table, words};
use crate::result::{ChangeInTransit, Damage, DamageWord, ImpressionResult, PlaceThen};
use crate::text::words::place_kind;
use maud::{Markup, html};
use messages::{Language, text};

pub fn part(
    material: &Material<'_>,
    _number: usize,
    impression: &ImpressionResult,
) -> Option<Markup> {
    let language = material.language;
    let sent = impression.as_sent.as_ref()?;
    let limit_of = |key| match material.result.protocol.limits.get(key) {
        Some(of) => at_most(language, of.value, "mm"),
        None => none(language, &text!(language, "since-sent-no-limit")),
    };
    Some(html! {
        h3 { (text!(language, "since-sent")) }
        @if let Some(why) = sent.unused_in(language) { p { (text!(language, "since-sent-unused", why = why)) } }
        @if let Some(change) = &sent.change {
            (arch(language, change, &limit_of("most_arch_change_mm")))
            p {
                (filled(
                    &text!(language, "since-sent-ground", share = PART[0]),
                    &[share(language, change.unchanged_share)],
                ))
            }
            @if change.damage.is_empty() {
                p {
                    (filled(
                        &text!(language, "since-sent-no-damage", uncertainty = PART[0]),
                        &[limit(language, change.uncertainty_mm, "mm")],
                    ))
                }
            } @else {
                (damage(language, change, &limit_of("most_local_change_mm")))
            }
            @if !change.places.is_empty() { (places(language, change)) }
        }
    })
}

fn arch(language: Language, change: &ChangeInTransit, limit: &Markup) -> Markup {
    let of = |name: String, mm, uncertainty_mm| {
        vec![
            words(name),
            quantity(language, mm, Some(uncertainty_mm), "mm"),
            limit.clone(),
        ]
    };
    let bends = change.bends.iter().flat_map(|bend| {
        let side = form_of(bend.side);
        [
            of(
                text!(language, "since-sent-heel-toward-tissue", side = side),
                bend.end_toward_tissue_mm,
                bend.end_toward_tissue_uncertainty_mm,
            ),
            of(
                text!(language, "since-sent-heel-outward", side = side),
                bend.end_outward_mm,
                bend.end_outward_uncertainty_mm,
            ),
        ]
    });
    let larger = vec![
        words(text!(language, "since-sent-larger")),
        quantity(
            language,
            change.larger_percent,
            Some(change.larger_uncertainty_percent),
            "%",
        ),
        words(text!(language, "since-sent-judged-by-heels")),
    ];
    let apart = of(
        text!(language, "since-sent-heels-apart"),
        change.heels_apart_mm,
        change.heels_apart_uncertainty_mm,
    );
    let rows: Vec<Vec<Markup>> = [larger, apart].into_iter().chain(bends).collect();
    let columns = [
        text!(language, "head-figure"),
        text!(language, "head-measured"),
        text!(language, "head-limit"),
    ];
    table(&text!(language, "since-sent-arch"), &columns, &rows)
}

fn damage(language: Language, change: &ChangeInTransit, limit: &Markup) -> Markup {
    let row = |damage: &Damage| {
        vec![
            words(damage_kind(language, damage.kind)),
            place(language, Some(&damage.zone), damage.side),
            quantity(
                language,
                damage.depth_mm,
                Some(damage.depth_uncertainty_mm),
                "mm",
            ),
            quantity(language, damage.area_mm2, None, "mm2"),
            limit.clone(),
        ]
    };
    let rows: Vec<Vec<Markup>> = change.damage.iter().map(row).collect();
    let columns = [
        text!(language, "head-what"),
        text!(language, "head-where"),
        text!(language, "head-moved"),
        text!(language, "head-area"),
        text!(language, "head-limit"),
    ];
    table(&text!(language, "since-sent-damage"), &columns, &rows)
}

fn damage_kind(language: Language, kind: DamageWord) -> String {
    match kind {
        DamageWord::MissingAtBorder => text!(language, "since-sent-torn"),
        DamageWord::PressedIn => text!(language, "since-sent-pressed-in"),
        DamageWord::StuckOn => text!(language, "since-sent-stuck-on"),
    }
}

fn places(language: Language, change: &ChangeInTransit) -> Markup {
    let row = |then: &PlaceThen| {
        vec![
            words(place_kind(&then.kind, language)),
            place(language, Some(&then.zone), then.side),
            match then.found_again {
                Some(true) => words(text!(language, "since-sent-found-again")),
                Some(false) => words(text!(language, "since-sent-gone")),
                None => none(language, &text!(language, "since-sent-not-measured")),
            },
        ]
    };
    let rows: Vec<Vec<Markup>> = change.places.iter().map(row).collect();
    let columns = [
        text!(language, "head-what-it-was"),
        text!(language, "head-where"),
        text!(language, "head-as-it-arrived"),
    ];
    table(&text!(language, "since-sent-places"), &columns, &rows)
}
