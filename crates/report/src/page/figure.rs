//! Figures on the page. Each carries, in `data-value`, the very number of
//! `result.json`; what is read is that number, rounded as everywhere else.

use super::filled::{PART, filled};
use crate::text::format;
use maud::{Markup, html};
use messages::{Language, Value, text};

fn shown(language: Language, value: f64, text: &str) -> Markup {
    html! { data value=(value) { (Value::figure(text).text(language)) } }
}

/// A measured figure with its expanded uncertainty and its unit. Where none is
/// known, that is said.
pub fn quantity(language: Language, value: f64, uncertainty: Option<f64>, unit: &str) -> Markup {
    html! {
        span.figure {
            @let [text, doubt] = format::parts(value, uncertainty, 0);
            (shown(language, value, &text))
            @if let Some(u) = uncertainty { " ± " (shown(language, u, &doubt)) }
            (format::unit(unit))
            @if uncertainty.is_none() { span.aside { " " (text!(language, "figure-uncertainty-not-stated")) } }
        }
    }
}

/// A measured figure beside its limit: as [`quantity`], to so many digits that the decision
/// shows.
pub fn decided(
    language: Language,
    value: f64,
    uncertainty: Option<f64>,
    bound: judge::Bound,
    unit: &str,
) -> Markup {
    html! {
        span.figure {
            @let [text, doubt] = format::decided_parts(value, uncertainty, bound);
            (shown(language, value, &text))
            @if let Some(u) = uncertainty { " ± " (shown(language, u, &doubt)) }
            (format::unit(unit))
            @if uncertainty.is_none() { span.aside { " " (text!(language, "figure-uncertainty-not-stated")) } }
        }
    }
}

/// A figure that counts or describes the file itself, and is exact.
pub fn exact(language: Language, value: f64, unit: &str) -> Markup {
    html! { (shown(language, value, &format::two_decimals(value))) (format::unit(unit)) }
}

/// A limit, in full.
pub fn limit(language: Language, value: f64, unit: &str) -> Markup {
    html! { (shown(language, value, &value.to_string())) (format::unit(unit)) }
}

/// A limit from below.
pub fn at_least(language: Language, value: f64, unit: &str) -> Markup {
    let text = text!(language, "cell-at-least", limit = PART[0]);
    filled(&text, &[limit(language, value, unit)])
}

/// A limit from above.
pub fn at_most(language: Language, value: f64, unit: &str) -> Markup {
    let text = text!(language, "cell-at-most", limit = PART[0]);
    filled(&text, &[limit(language, value, unit)])
}

/// A number of things.
pub fn count(number: u64) -> Markup {
    html! { data value=(number as f64) { (number) } }
}

/// An area of tissue surface, mm² in the result.
pub fn area(language: Language, mm2: f64) -> Markup {
    shown(language, mm2, &format::area(mm2))
}

/// A share, 0 to 1 in the result.
pub fn share(language: Language, share: f64) -> Markup {
    shown(language, share, &format::percent(share))
}

/// Where no figure stands, and why.
pub fn none(language: Language, why: &str) -> Markup {
    html! { span.aside { (text!(language, "figure-not-available", why = why)) } }
}
