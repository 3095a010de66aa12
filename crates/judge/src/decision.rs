//! The decision rule: when a measured figure may be called conforming.
//!
//! In the general terms of ISO 14253-1: a figure conforms only if it meets its
//! limit by more than its expanded uncertainty (k = 2), fails to conform only
//! if it misses the limit by more than that, and is undecided in between.

/// What a measured figure says about its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Conformity {
    /// The limit is met, the uncertainty allowed for.
    Conforming,
    /// The limit is missed, the uncertainty allowed for.
    NotConforming,
    /// The limit lies within the uncertainty of the figure.
    Borderline,
}

/// A limit, in the unit of the figure that it is for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// The figure must not be less.
    AtLeast(f64),
    /// The figure must not be more.
    AtMost(f64),
}

impl Bound {
    /// `at least` or `at most`.
    #[must_use]
    pub fn in_words(self) -> &'static str {
        match self {
            Self::AtLeast(_) => "at least",
            Self::AtMost(_) => "at most",
        }
    }

    /// The limiting value itself.
    #[must_use]
    pub fn value(self) -> f64 {
        match self {
            Self::AtLeast(value) | Self::AtMost(value) => value,
        }
    }
}

/// Decides a figure against a limit; `uncertainty` is expanded (k = 2), and
/// all three are in one unit.
///
/// A figure exactly at the limit without any uncertainty conforms. Anything
/// that is not a number decides nothing: it is borderline, never conforming.
#[must_use]
pub fn decide(measured: f64, uncertainty: f64, bound: Bound) -> Conformity {
    let margin = match bound {
        Bound::AtLeast(limit) => measured - limit,
        Bound::AtMost(limit) => limit - measured,
    };
    if !uncertainty.is_finite() || uncertainty < 0.0 {
        Conformity::Borderline
    } else if margin > uncertainty || (margin == 0.0 && uncertainty == 0.0) {
        Conformity::Conforming
    } else if margin < -uncertainty {
        Conformity::NotConforming
    } else {
        Conformity::Borderline
    }
}

#[cfg(test)]
mod tests {
    use super::{Bound::*, Conformity::*, *};
    use rstest::rstest;

    // Worked from the definition: zone of conformity is inside the limit by
    // more than U, zone of non-conformity outside by more than U.
    #[rstest]
    #[case(1.11, 0.1, AtLeast(1.0), Conforming)]
    #[case(1.05, 0.1, AtLeast(1.0), Borderline)]
    #[case(1.00, 0.1, AtLeast(1.0), Borderline)]
    #[case(0.95, 0.1, AtLeast(1.0), Borderline)]
    #[case(0.89, 0.1, AtLeast(1.0), NotConforming)]
    #[case(0.89, 0.1, AtMost(1.0), Conforming)]
    #[case(0.95, 0.1, AtMost(1.0), Borderline)]
    #[case(1.05, 0.1, AtMost(1.0), Borderline)]
    #[case(1.11, 0.1, AtMost(1.0), NotConforming)]
    #[case(1.25, 0.25, AtLeast(1.0), Borderline)]
    #[case(0.75, 0.25, AtLeast(1.0), Borderline)]
    #[case(-0.5, 0.1, AtLeast(0.2), NotConforming)]
    fn a_figure_is_placed_by_its_uncertainty(
        #[case] measured: f64,
        #[case] uncertainty: f64,
        #[case] bound: Bound,
        #[case] expected: Conformity,
    ) {
        assert_eq!(decide(measured, uncertainty, bound), expected);
    }

    #[test]
    fn without_uncertainty_the_limit_itself_conforms() {
        assert_eq!(decide(1.0, 0.0, AtLeast(1.0)), Conforming);
        assert_eq!(decide(1.0, 0.0, AtMost(1.0)), Conforming);
    }

    #[rstest]
    #[case(f64::NAN, 0.1)]
    #[case(5.0, f64::NAN)]
    #[case(5.0, f64::INFINITY)]
    #[case(5.0, -0.1)]
    fn what_is_no_number_never_conforms(#[case] measured: f64, #[case] uncertainty: f64) {
        assert_eq!(decide(measured, uncertainty, AtLeast(1.0)), Borderline);
        assert_eq!(decide(measured, uncertainty, AtMost(9.0)), Borderline);
    }
}
