//! In which unit a scan must be read, by its size.
//!
//! Most scan formats carry no unit. An impression in its tray has a longest
//! side of 35 to 160 mm, and mostly of 55 to 130 (common practice, no source);
//! the units are so far apart that a size is hardly ever usual in two of them.

use mesh::Unit;

/// Longest side of an impression in its tray, mm: no less and no more.
pub const PLAUSIBLE_MM: std::ops::RangeInclusive<f64> = 35.0..=160.0;
/// Where it mostly lies, mm: narrow enough that no size is usual in centimetres
/// and in inches alike.
const USUAL_MM: std::ops::RangeInclusive<f64> = 55.0..=130.0;

/// How the unit of a scan was settled.
#[derive(Debug, Clone, PartialEq)]
pub enum UnitReading {
    /// The operator named it.
    Given(Unit),
    /// Not named; the size is plausible in millimetres.
    Assumed,
    /// Not named; of all units the size is plausible in this one alone, or
    /// usual in this one alone, and it is not millimetres.
    Inferred(Unit),
    /// Not named; the size is plausible in several units, none of them
    /// millimetres, and usual in none. Read as millimetres.
    Ambiguous(Vec<Unit>),
    /// Not named, and no unit makes the size plausible. Read as millimetres.
    Implausible,
}

impl UnitReading {
    /// Settles the unit of a scan from the longest side of its bounding box,
    /// in the file's own numbers.
    #[must_use]
    pub fn of(longest_side: f64, given: Option<Unit>) -> Self {
        if let Some(unit) = given {
            return Self::Given(unit);
        }
        let within = |range: std::ops::RangeInclusive<f64>| -> Vec<Unit> {
            Unit::ALL
                .into_iter()
                .filter(|unit| range.contains(&(longest_side * unit.in_mm())))
                .collect()
        };
        let plausible = within(PLAUSIBLE_MM);
        match (&plausible[..], &within(USUAL_MM)[..]) {
            ([], _) => Self::Implausible,
            _ if plausible.contains(&Unit::Millimetre) => Self::Assumed,
            (&[only], _) | (_, &[only]) => Self::Inferred(only),
            _ => Self::Ambiguous(plausible),
        }
    }

    /// The unit that the file's numbers are read in.
    #[must_use]
    pub fn unit(&self) -> Unit {
        match self {
            Self::Given(unit) | Self::Inferred(unit) => *unit,
            Self::Assumed | Self::Ambiguous(_) | Self::Implausible => Unit::Millimetre,
        }
    }

    /// Whether nobody named the unit.
    #[must_use]
    pub fn is_assumed(&self) -> bool {
        !matches!(self, Self::Given(_))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    // An impression of 70 mm in each unit, and sizes that two units fit.
    #[rstest]
    #[case(70.0, UnitReading::Assumed)]
    #[case(70_000.0, UnitReading::Inferred(Unit::Micrometre))]
    #[case(7.0, UnitReading::Inferred(Unit::Centimetre))]
    #[case(0.07, UnitReading::Inferred(Unit::Metre))]
    #[case(70.0 / 25.4, UnitReading::Inferred(Unit::Inch))]
    #[case(6.0, UnitReading::Inferred(Unit::Centimetre))]
    #[case(4.0, UnitReading::Inferred(Unit::Inch))]
    #[case(5.3, UnitReading::Ambiguous(vec![Unit::Centimetre, Unit::Inch]))]
    #[case(900.0, UnitReading::Implausible)]
    #[case(0.0, UnitReading::Implausible)]
    fn size_tells_the_unit(#[case] longest_side: f64, #[case] expected: UnitReading) {
        assert_eq!(UnitReading::of(longest_side, None), expected);
    }

    #[test]
    fn what_the_operator_says_stands() {
        let reading = UnitReading::of(70.0, Some(Unit::Inch));
        assert_eq!(reading.unit(), Unit::Inch);
        assert!(!reading.is_assumed());
    }
}
