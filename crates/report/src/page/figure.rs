//! Figures on the page. Each carries, in `data-value`, the very number of
//! `result.json`; what is read is that number, rounded as everywhere else.

use crate::text::format;
use maud::{Markup, html};

fn shown(value: f64, text: &str) -> Markup {
    html! { data value=(value) { (text) } }
}

/// A measured figure with its expanded uncertainty and its unit. Where none is
/// known, that is said.
pub fn quantity(value: f64, uncertainty: Option<f64>, unit: &str) -> Markup {
    html! {
        span.figure {
            @let [text, doubt] = format::parts(value, uncertainty, 0);
            (shown(value, &text))
            @if let Some(u) = uncertainty { " ± " (shown(u, &doubt)) }
            (format::unit(unit))
            @if uncertainty.is_none() { span.aside { " (uncertainty not stated)" } }
        }
    }
}

/// A measured figure beside its limit: as [`quantity`], to so many digits that the decision
/// shows.
pub fn decided(value: f64, uncertainty: Option<f64>, bound: judge::Bound, unit: &str) -> Markup {
    html! {
        span.figure {
            @let [text, doubt] = format::decided_parts(value, uncertainty, bound);
            (shown(value, &text))
            @if let Some(u) = uncertainty { " ± " (shown(u, &doubt)) }
            (format::unit(unit))
            @if uncertainty.is_none() { span.aside { " (uncertainty not stated)" } }
        }
    }
}

/// A figure that counts or describes the file itself, and is exact.
pub fn exact(value: f64, unit: &str) -> Markup {
    html! { (shown(value, &format::two_decimals(value))) (format::unit(unit)) }
}

/// A limit, in full.
pub fn limit(value: f64, unit: &str) -> Markup {
    html! { (shown(value, &value.to_string())) (format::unit(unit)) }
}

/// A number of things.
pub fn count(number: u64) -> Markup {
    shown(number as f64, &number.to_string())
}

/// An area of tissue surface, mm² in the result.
pub fn area(mm2: f64) -> Markup {
    shown(mm2, &format::area(mm2))
}

/// A share, 0 to 1 in the result.
pub fn share(share: f64) -> Markup {
    shown(share, &format::percent(share))
}

/// Where no figure stands, and why.
pub fn none(why: &str) -> Markup {
    html! { span.aside { "not available (" (why) ")" } }
}
