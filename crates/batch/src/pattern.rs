//! Patterns of the names of scans that are cases without a case file.

use std::str::FromStr;
use thiserror::Error;

/// A name with one star in it, which stands for anything but nothing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NamePattern {
    before: String,
    after: String,
}

/// A pattern that cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum PatternError {
    /// Not one star, or a folder in it.
    #[error("a pattern of scans is a file's name with one *, as in '*-upper.ply'")]
    OneStar,
}

impl FromStr for NamePattern {
    type Err = PatternError;

    fn from_str(text: &str) -> Result<Self, PatternError> {
        match text.split_once('*') {
            Some((before, after)) if !after.contains('*') && !text.contains(['/', '\\']) => {
                Ok(Self {
                    before: before.to_owned(),
                    after: after.to_owned(),
                })
            }
            _ => Err(PatternError::OneStar),
        }
    }
}

impl NamePattern {
    /// What the star stands for in a name.
    #[must_use]
    pub fn star<'a>(&self, name: &'a str) -> Option<&'a str> {
        let star = name.strip_prefix(&self.before)?.strip_suffix(&self.after)?;
        (!star.is_empty()).then_some(star)
    }

    /// The name in which the star stands for this.
    pub(crate) fn name(&self, star: &str) -> String {
        format!("{}{star}{}", self.before, self.after)
    }
}

/// Which scans are cases without a case file.
#[derive(Debug, Clone)]
pub struct Pattern {
    /// Names of impression scans.
    pub scans: NamePattern,
    /// Name of the scan of the tray in the same folder, its star standing for
    /// the same.
    pub trays: Option<NamePattern>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn patterns_have_one_star() {
        for wrong in ["upper.ply", "*-*.ply", "a/*.ply", ""] {
            assert_eq!(wrong.parse::<NamePattern>(), Err(PatternError::OneStar));
        }
        let pattern: NamePattern = "u-*.ply".parse().unwrap();
        assert_eq!(pattern.star("u-7.ply"), Some("7"));
        assert_eq!(pattern.star("u-.ply"), None);
        assert_eq!(pattern.star("7.ply"), None);
    }
}
