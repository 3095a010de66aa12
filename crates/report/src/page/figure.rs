//! Figures on the page. Each carries, in `data-value`, the very number of
//! `result.json`; what is read is that number, rounded as everywhere else.

use crate::told;
use maud::{Markup, html};

fn told_as(value: f64, text: &str) -> Markup {
    html! { data value=(value) { (text) } }
}

/// A measured figure with its expanded uncertainty and its unit. Where none is
/// known, that is said.
pub fn quantity(value: f64, uncertainty: Option<f64>, unit: &str) -> Markup {
    html! {
        span.figure {
            (told_as(value, &told::two_decimals(value)))
            @if let Some(u) = uncertainty { " ± " (told_as(u, &told::two_decimals(u))) }
            (told::unit(unit))
            @if uncertainty.is_none() { span.aside { " (uncertainty not known)" } }
        }
    }
}

/// A figure that counts or describes the file itself, and is exact.
pub fn exact(value: f64, unit: &str) -> Markup {
    html! { (told_as(value, &told::two_decimals(value))) (told::unit(unit)) }
}

/// A limit, in full.
pub fn limit(value: f64, unit: &str) -> Markup {
    html! { (told_as(value, &value.to_string())) (told::unit(unit)) }
}

/// A number of things.
pub fn count(number: u64) -> Markup {
    told_as(number as f64, &number.to_string())
}

/// An area of tissue surface, mm² in the result.
pub fn area(mm2: f64) -> Markup {
    told_as(mm2, &told::area(mm2))
}

/// A share, 0 to 1 in the result.
pub fn share(share: f64) -> Markup {
    told_as(share, &told::percent(share))
}

/// Where no figure stands, and why.
pub fn none(why: &str) -> Markup {
    html! { span.aside { "none: " (why) } }
}
