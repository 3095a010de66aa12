//! Figures as people read them: the one place where they are rounded for the
//! summary, the drawings and the report.

use judge::{Bound, decide};
use measure::Measured;
use messages::{Language, Value, text};

/// Two decimals, and no sign before nothing.
pub(crate) fn two_decimals(value: f64) -> String {
    format!("{:.2}", (value * 100.0).round() / 100.0 + 0.0)
}

/// A unit after its figure, with the space between; nothing for a plain number.
pub(crate) fn unit(unit: &str) -> String {
    match unit {
        "1" => String::new(),
        "deg" => "°".to_owned(),
        unit => format!(" {}", unit.replace("mm2", "mm²")),
    }
}

/// A figure with its expanded uncertainty and its unit: `8.12 ± 0.11 mm`. The uncertainty
/// has two significant digits, rounded up; the figure goes to the same place.
pub(crate) fn quantity(value: f64, uncertainty: Option<f64>, of: &str) -> String {
    with_unit(parts(value, uncertainty, 0), of)
}

/// A figure with its expanded uncertainty and its unit, to so many digits that what is
/// printed leads to the same decision as what was measured.
pub(crate) fn decided(value: f64, uncertainty: Option<f64>, bound: Bound, of: &str) -> String {
    with_unit(decided_parts(value, uncertainty, bound), of)
}

fn with_unit([value, doubt]: [String; 2], of: &str) -> String {
    let doubt = if doubt.is_empty() {
        doubt
    } else {
        format!(" ± {doubt}")
    };
    format!("{value}{doubt}{}", unit(of))
}

/// Figure and uncertainty as they are printed beside a bound; the second is empty where no
/// uncertainty is known.
pub(crate) fn decided_parts(value: f64, uncertainty: Option<f64>, bound: Bound) -> [String; 2] {
    const MOST_MORE: i32 = 3;
    let decision = |value, doubt| decide(value, doubt, bound);
    let sought = decision(value, uncertainty.unwrap_or(0.0));
    let shows_it = |printed: &[String; 2]| {
        let [value, doubt] = printed.each_ref().map(|text| text.parse().unwrap_or(0.0));
        decision(value, doubt) == sought
    };
    let tries = (0..=MOST_MORE).map(|more| parts(value, uncertainty, more));
    let mut last = parts(value, uncertainty, 0);
    for printed in tries {
        if shows_it(&printed) {
            return printed;
        }
        last = printed;
    }
    last
}

/// Figure and uncertainty as they are printed, to `more` digits than usual; the second is
/// empty where no uncertainty is known.
pub(crate) fn parts(value: f64, uncertainty: Option<f64>, more: i32) -> [String; 2] {
    let Some(doubt) = uncertainty else {
        return [rounded(value, 2 + more), String::new()];
    };
    if !(doubt.is_finite() && doubt > 0.0) {
        return [rounded(value, 2 + more), rounded(doubt, 2 + more)];
    }
    let mut decimals = places(doubt) + more;
    let mut up = rounded_up(doubt, decimals);
    // What rounds up to the next power of ten has a digit too many.
    if places(up) + more < decimals {
        decimals -= 1;
        up = rounded_up(doubt, decimals);
    }
    [rounded(value, decimals), rounded(up, decimals)]
}

/// Decimals that show two significant digits of a number above 0.
fn places(number: f64) -> i32 {
    1 - number.log10().floor() as i32
}

fn rounded_up(number: f64, decimals: i32) -> f64 {
    let factor = 10_f64.powi(decimals);
    // What is a round number but for the last bit of its binary form is not rounded up.
    (number * factor - 1e-6).ceil() / factor
}

/// A number to so many decimals, below 0 to tens and hundreds; no sign before nothing.
fn rounded(number: f64, decimals: i32) -> String {
    let factor = 10_f64.powi(decimals);
    let number = (number * factor).round() / factor + 0.0;
    format!("{number:.*}", usize::try_from(decimals).unwrap_or(0))
}

/// What is printed, with the decimal sign of a language.
pub(crate) fn in_language(figure: impl Into<String>, language: Language) -> String {
    Value::figure(figure).text(language)
}

/// A measured length with its uncertainty: `8.12 ± 0.10 mm`.
pub(crate) fn measured(length: Measured) -> String {
    quantity(length.mm, Some(length.uncertainty_mm), "mm")
}

/// An area of tissue surface, given in mm², as `42.5 cm²`.
pub(crate) fn area(mm2: f64) -> String {
    format!("{:.1} cm²", mm2 / 100.0)
}

/// A share, 0 to 1, as `98 %`; never `100 %` unless it is all, never `0 %` unless it is none.
pub(crate) fn percent(share: f64) -> String {
    in_percent(share, 0)
}

/// How many of all, as a share: `99.5 %`; never `100 %` unless it is all, never `0 %`
/// unless it is none.
pub(crate) fn share_of(part: u64, of: u64, language: Language) -> String {
    if of == 0 {
        return text!(language, "share-of-none");
    }
    in_language(in_percent(part as f64 / of as f64, 1), language)
}

/// The ends of an interval of a share, 0 to 1: `97.1 % to 99.8 %`.
pub(crate) fn share_interval(ends: [f64; 2], language: Language) -> String {
    let [low, high] = ends.map(|end| Value::figure(in_percent(end, 1)));
    text!(language, "share-interval", low = low, high = high)
}

fn in_percent(share: f64, decimals: usize) -> String {
    let least = 10_f64.powi(-i32::try_from(decimals).unwrap_or(0));
    let shown = format!("{:.decimals$}", share * 100.0);
    let value: f64 = shown.parse().unwrap_or(f64::NAN);
    if share == 0.0 || share == 1.0 {
        format!("{:.0} %", share * 100.0)
    } else if value == 0.0 && share > 0.0 {
        format!("< {least} %")
    } else if value == 100.0 && share < 1.0 {
        format!("> {} %", 100.0 - least)
    } else {
        format!("{shown} %")
    }
}

/// A sentence begins with a capital.
pub(crate) fn capital(sentence: &str) -> String {
    let mut letters = sentence.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    // U to two significant digits, rounded up; the figure to the same place.
    #[test]
    fn an_uncertainty_is_rounded_up_to_two_digits() {
        for (value, uncertainty, expected) in [
            (5.3149, 0.0783, "5.315 ± 0.079 mm"),
            (5.3149, 0.1, "5.31 ± 0.10 mm"),
            (5.3149, 0.0996, "5.31 ± 0.10 mm"),
            (5.3149, 0.009_99, "5.315 ± 0.010 mm"),
            (5.3149, 1.23, "5.3 ± 1.3 mm"),
            (543.2, 72.4, "543 ± 73 mm"),
            (5432.0, 123.0, "5430 ± 130 mm"),
            (-0.004, 0.031, "-0.004 ± 0.031 mm"),
            (-0.0001, 0.031, "0.000 ± 0.031 mm"),
            (1.0, 0.0, "1.00 ± 0.00 mm"),
        ] {
            assert_eq!(quantity(value, Some(uncertainty), "mm"), expected);
        }
    }

    #[test]
    fn printed_figures_never_contradict_the_decision() {
        for (value, doubt) in [
            (0.184, 0.017),
            (0.182, 0.016),
            (0.1869, 0.0131),
            (0.1868, 0.0131),
            (0.2101, 0.010_01),
            (0.2, 0.0),
            (0.2004, 0.0),
            (0.196, 0.0),
        ] {
            for bound in [Bound::AtLeast(0.2), Bound::AtMost(0.2)] {
                let printed = decided_parts(value, Some(doubt), bound);
                let [shown, shown_doubt] = printed.map(|text| text.parse::<f64>().unwrap());
                let meant = decide(value, doubt, bound);
                assert_eq!(
                    decide(shown, shown_doubt, bound),
                    meant,
                    "{value} ± {doubt}"
                );
            }
        }
    }

    #[test]
    fn nothing_has_no_sign() {
        assert_eq!(two_decimals(-0.004), "0.00");
        assert_eq!(two_decimals(-0.006), "-0.01");
    }

    #[test]
    fn a_figure_has_its_uncertainty_and_its_unit() {
        assert_eq!(quantity(8.123, Some(0.104), "mm"), "8.12 ± 0.11 mm");
        assert_eq!(quantity(12.0, None, "mm2"), "12.00 mm²");
        assert_eq!(quantity(0.25, None, "1"), "0.25");
        assert_eq!(area(4251.0), "42.5 cm²");
        assert_eq!(percent(0.976), "98 %");
    }

    #[test]
    fn a_share_is_all_or_none_only_where_it_is() {
        for (part, of, expected) in [
            (4_975, 5_000, "99.5 %"),
            (4_999, 5_000, "> 99.9 %"),
            (5_000, 5_000, "100 %"),
            (1, 5_000, "< 0.1 %"),
            (0, 5_000, "0 %"),
            (1, 3, "33.3 %"),
            (0, 0, "of none"),
        ] {
            assert_eq!(share_of(part, of, Language::English), expected);
        }
        assert_eq!(percent(0.9999), "> 99 %");
        assert_eq!(percent(0.0001), "< 1 %");
        assert_eq!(percent(1.0), "100 %");
        let interval = |language| share_interval([0.0, 0.9999], language);
        assert_eq!(interval(Language::English), "0 % to > 99.9 %");
        assert_eq!(interval(Language::German), "0 % bis > 99,9 %");
    }
}
