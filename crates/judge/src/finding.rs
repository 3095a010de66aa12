//! A finding: one thing that fails or cannot be judged.

use crate::checks::Check;
use crate::decision::Conformity;
use crate::protocol::Level;
use crate::stretch::Stretch;
use measure::{Arch, Side, Zone};
use nalgebra::Point3;

/// How a check came out where it did not come out well; most urgent first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The limit is surely missed, or the input is surely not what it should be.
    Fail,
    /// It cannot be decided: the figure is too near its limit for its
    /// uncertainty, or it could not be measured.
    Borderline,
    /// Worth knowing; changes no verdict.
    Note,
}

impl Severity {
    /// What a decision means at the level of its limit; nothing where the
    /// limit is surely met.
    #[must_use]
    pub fn of(conformity: Conformity, level: Level) -> Option<Self> {
        match (conformity, level) {
            (Conformity::Conforming, _) => None,
            (_, Level::Note) => Some(Self::Note),
            (Conformity::NotConforming, Level::Fail) => Some(Self::Fail),
            (_, Level::Undecided) | (Conformity::Borderline, _) => Some(Self::Borderline),
        }
    }

    /// The word for it in results.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Fail => "fail",
            Self::Borderline => "borderline",
            Self::Note => "note",
        }
    }
}

/// The measured figure of a finding and the limit that it was judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// The figure, in `unit`.
    pub measured: f64,
    /// Its expanded uncertainty (k = 2), in `unit`; `None` for a figure that is
    /// a property of the file itself or whose uncertainty is not known.
    pub uncertainty: Option<f64>,
    /// The limit, in `unit`.
    pub limit: f64,
    /// Unit of the three; `1` for a plain number.
    pub unit: String,
}

/// A place on an impression.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// The point, in the coordinates of the impression scan, mm.
    pub at: Point3<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

/// One thing that fails or cannot be judged, and what to do about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// How it came out.
    pub severity: Severity,
    /// Which check found it.
    pub check: Check,
    /// Number of the impression in the case, from 0; `None` for the case itself.
    pub impression: Option<usize>,
    /// The jaw: as declared, else as found.
    pub arch: Option<Arch>,
    /// Where.
    pub place: Option<Place>,
    /// The figure and its limit, where it is a matter of figures.
    pub figure: Option<Figure>,
    /// Number of the spot of that impression that it speaks of, from 0.
    pub spot: Option<usize>,
    /// The stretch of that impression's border that it speaks of.
    pub stretch: Option<Stretch>,
    /// Number of the surface defect of that impression that it speaks of, from 0.
    pub defect: Option<usize>,
    /// Number of the landmark of that impression that it speaks of, from 0.
    pub landmark: Option<usize>,
    /// One plain instruction.
    pub instruction: String,
}

impl Finding {
    /// A finding on the case as a whole, without place and figure.
    pub(crate) fn on_case(
        check: Check,
        severity: Severity,
        instruction: impl Into<String>,
    ) -> Self {
        Self {
            severity,
            check,
            impression: None,
            arch: None,
            place: None,
            figure: None,
            spot: None,
            stretch: None,
            defect: None,
            landmark: None,
            instruction: instruction.into(),
        }
    }
}

/// A check that was not made, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotJudged {
    /// Code of the check, or name of the part of the result that stays empty.
    pub check: String,
    /// The reason, in plain words.
    pub why: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn borderline_is_never_lost_unless_the_limit_only_notes() {
        use Conformity::*;
        for level in [Level::Fail, Level::Undecided] {
            assert_eq!(Severity::of(Borderline, level), Some(Severity::Borderline));
        }
        assert_eq!(
            Severity::of(NotConforming, Level::Fail),
            Some(Severity::Fail)
        );
        assert_eq!(
            Severity::of(NotConforming, Level::Undecided),
            Some(Severity::Borderline)
        );
        for conformity in [NotConforming, Borderline] {
            assert_eq!(Severity::of(conformity, Level::Note), Some(Severity::Note));
        }
        for level in [Level::Fail, Level::Undecided, Level::Note] {
            assert_eq!(Severity::of(Conforming, level), None);
        }
    }
}
