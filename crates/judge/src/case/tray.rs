//! What may be said of a tray that was not scanned.

use measure::TrayThickness;
use messages::{Message, message};
use thiserror::Error;

/// What a thickness is taken to be known to, where nothing is said: k = 2, mm.
/// Stock trays are thicker at rims and ribs than elsewhere. Common practice, no
/// source.
const USUAL_UNCERTAINTY_MM: f64 = 0.5;
/// No tray is thinner or thicker, mm.
const POSSIBLE_MM: std::ops::RangeInclusive<f64> = 0.2..=8.0;

/// The text is no colour.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{}", self.message())]
pub struct BadColour(String);

impl BadColour {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        message!("case-colour", text = self.0.as_str())
    }
}

/// The numbers are no thickness of a tray.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{}", self.message())]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum BadThickness {
    Impossible(f64),
    Uncertainty(f64),
    NoThickness,
}

impl BadThickness {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Impossible(mm) => message!(
                "case-thickness",
                given = mm.to_string(),
                least = POSSIBLE_MM.start().to_string(),
                most = POSSIBLE_MM.end().to_string()
            ),
            Self::Uncertainty(mm) => message!("case-uncertainty", given = mm.to_string()),
            Self::NoThickness => message!("case-no-thickness"),
        }
    }
}

/// A colour written as `#rrggbb`, sRGB.
///
/// # Errors
/// When it is written in another way.
pub fn colour_from_hex(text: &str) -> Result<[u8; 3], BadColour> {
    let bad = || BadColour(text.escape_default().to_string());
    let digits = text.strip_prefix('#').ok_or_else(bad)?;
    if digits.len() != 6 || !digits.bytes().all(|b| b.is_ascii_hexdigit()) {
        return Err(bad());
    }
    let number = u32::from_str_radix(digits, 16).map_err(|_| bad())?;
    let [_, red, green, blue] = number.to_be_bytes();
    Ok([red, green, blue])
}

/// A tray's thickness with its expanded uncertainty (k = 2), mm, as far as they
/// are said.
///
/// # Errors
/// When no tray is so thick, or the uncertainty is not possible.
pub fn thickness(
    mm: Option<f64>,
    uncertainty_mm: Option<f64>,
) -> Result<Option<TrayThickness>, BadThickness> {
    let Some(mm) = mm else {
        return match uncertainty_mm {
            Some(_) => Err(BadThickness::NoThickness),
            None => Ok(None),
        };
    };
    if !POSSIBLE_MM.contains(&mm) {
        return Err(BadThickness::Impossible(mm));
    }
    let uncertainty_mm = uncertainty_mm.unwrap_or(USUAL_UNCERTAINTY_MM);
    if !uncertainty_mm.is_finite() || uncertainty_mm < 0.0 {
        return Err(BadThickness::Uncertainty(uncertainty_mm));
    }
    Ok(Some(TrayThickness { mm, uncertainty_mm }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[test]
    fn colours_are_read_as_they_are_written() {
        assert_eq!(colour_from_hex("#0a80FF"), Ok([10, 128, 255]));
        for text in [
            "", "#", "0a80ff", "#0a80f", "#0a80fff", "#0a80fg", "#+a80ff", "#ä80ff",
        ] {
            assert!(colour_from_hex(text).is_err(), "{text}");
        }
    }

    #[rstest]
    #[case(Some(2.0), None, Ok(Some((2.0, 0.5))))]
    #[case(Some(2.0), Some(0.1), Ok(Some((2.0, 0.1))))]
    #[case(None, None, Ok(None))]
    #[case(None, Some(0.1), Err(BadThickness::NoThickness))]
    #[case(Some(20.0), None, Err(BadThickness::Impossible(20.0)))]
    #[case(Some(2.0), Some(-0.1), Err(BadThickness::Uncertainty(-0.1)))]
    fn thicknesses_are_possible_ones(
        #[case] mm: Option<f64>,
        #[case] uncertainty_mm: Option<f64>,
        #[case] expected: Result<Option<(f64, f64)>, BadThickness>,
    ) {
        let found = thickness(mm, uncertainty_mm);
        assert_eq!(found.map(|t| t.map(|t| (t.mm, t.uncertainty_mm))), expected);
        assert!(thickness(Some(f64::NAN), None).is_err());
        assert!(thickness(Some(2.0), Some(f64::INFINITY)).is_err());
    }
}
