//! Figures as people read them: the one place where they are rounded for the
//! summary, the drawings and the report.

use measure::Measured;

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

/// A figure with its expanded uncertainty and its unit: `8.12 ± 0.10 mm`.
pub(crate) fn quantity(value: f64, uncertainty: Option<f64>, of: &str) -> String {
    let doubt = uncertainty.map_or(String::new(), |u| format!(" ± {}", two_decimals(u)));
    format!("{}{doubt}{}", two_decimals(value), unit(of))
}

/// A measured length with its uncertainty: `8.12 ± 0.10 mm`.
pub(crate) fn measured(length: Measured) -> String {
    quantity(length.mm, Some(length.uncertainty_mm), "mm")
}

/// An area of tissue surface, given in mm², as `42.5 cm²`.
pub(crate) fn area(mm2: f64) -> String {
    format!("{:.1} cm²", mm2 / 100.0)
}

/// A share, 0 to 1, as `98 %`.
pub(crate) fn percent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
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

    #[test]
    fn nothing_has_no_sign() {
        assert_eq!(two_decimals(-0.004), "0.00");
        assert_eq!(two_decimals(-0.006), "-0.01");
    }

    #[test]
    fn a_figure_has_its_uncertainty_and_its_unit() {
        assert_eq!(quantity(8.123, Some(0.104), "mm"), "8.12 ± 0.10 mm");
        assert_eq!(quantity(12.0, None, "mm2"), "12.00 mm²");
        assert_eq!(quantity(0.25, None, "1"), "0.25");
        assert_eq!(area(4251.0), "42.5 cm²");
        assert_eq!(percent(0.976), "98 %");
    }
}
