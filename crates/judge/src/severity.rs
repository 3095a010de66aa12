//! How urgent a finding is, and how urgent a protocol says that it shall be.

use crate::decision::Conformity;
use serde::{Deserialize, Serialize};

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

/// What missing a limit means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// The impression fails.
    Fail,
    /// The impression cannot be accepted on this measurement, but it does not fail.
    Undecided,
    /// It is said, and changes no verdict.
    Note,
}

impl Level {
    /// How it comes out to miss surely what is limited on this level.
    #[must_use]
    pub fn severity(self) -> Severity {
        match self {
            Self::Fail => Severity::Fail,
            Self::Undecided => Severity::Borderline,
            Self::Note => Severity::Note,
        }
    }
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
            assert_eq!(
                Severity::of(NotConforming, level),
                Some(level.severity()),
                "a sure miss is as severe as its level says"
            );
        }
    }
}
