//! Which findings are done: saved beside the result.

use mesh::write::{WriteError, write_atomically};
use report::result::{Finding, Point};
use serde::{Deserialize, Serialize};
use std::path::Path;

/// Name of the file.
pub const TICKS_FILE: &str = "done.toml";

/// The findings that are done.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Ticks {
    /// SHA-256 of each scan of the result that they belong to.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    scans_sha256: Vec<String>,
    #[serde(default)]
    done: Vec<Tick>,
}

/// What a finding is known by, so that a tick stays with its place when the
/// case is checked again and findings are counted anew.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Tick {
    check: String,
    #[serde(default)]
    impression: Option<u64>,
    #[serde(default)]
    at: Option<Point>,
}

impl Tick {
    fn of(finding: &Finding) -> Self {
        Self {
            check: finding.check.clone(),
            impression: finding.impression,
            at: finding.at,
        }
    }
}

impl Ticks {
    /// Those of a result folder; none where nothing was saved or it cannot be read.
    #[must_use]
    pub fn load(folder: &Path) -> Self {
        mesh::read::settings_text(&folder.join(TICKS_FILE))
            .ok()
            .and_then(|text| toml::from_str(&text).ok())
            .unwrap_or_default()
    }

    /// Those of a result folder, for scans of these SHA-256: none where they are of others.
    #[must_use]
    pub fn of_scans(folder: &Path, scans_sha256: &[String]) -> Self {
        let mut ticks = Self::load(folder);
        if !ticks.scans_sha256.is_empty() && ticks.scans_sha256 != scans_sha256 {
            ticks = Self::default();
        }
        ticks.scans_sha256 = scans_sha256.to_owned();
        ticks
    }

    /// Whether a finding is done.
    #[must_use]
    pub fn is_done(&self, finding: &Finding) -> bool {
        self.done.contains(&Tick::of(finding))
    }

    /// Done becomes not done, and the other way round.
    pub fn toggle(&mut self, finding: &Finding) {
        let tick = Tick::of(finding);
        match self.done.iter().position(|done| *done == tick) {
            Some(at) => {
                self.done.remove(at);
            }
            None => self.done.push(tick),
        }
    }

    /// Saves them into a result folder.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn save(&self, folder: &Path) -> Result<(), WriteError> {
        let text = toml::to_string(self).unwrap_or_default();
        write_atomically(&folder.join(TICKS_FILE), |out| {
            out.write_all(b"# Findings that were marked as done in the window.\n")?;
            out.write_all(text.as_bytes())
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::finding;

    #[test]
    fn ticks_of_other_scans_do_not_count() {
        let folder = tempfile::tempdir().unwrap();
        let [one, other] = ["1a", "2b"].map(|sum| vec![sum.to_owned()]);
        let mut ticks = Ticks::of_scans(folder.path(), &one);
        ticks.toggle(&finding("F1", None));
        ticks.save(folder.path()).unwrap();
        let is_done =
            |of: &[String]| Ticks::of_scans(folder.path(), of).is_done(&finding("F1", None));
        assert!(is_done(&one) && !is_done(&other));
    }

    #[test]
    fn ticks_survive_the_round_trip_and_a_new_count() {
        let folder = tempfile::tempdir().unwrap();
        let mut ticks = Ticks::load(folder.path());
        assert_eq!(ticks, Ticks::default());
        let first = finding("F1", Some([1.5, 2.0, 3.0]));
        let second = finding("F2", None);
        ticks.toggle(&first);
        ticks.toggle(&second);
        ticks.save(folder.path()).unwrap();
        let read = Ticks::load(folder.path());
        assert_eq!(read, ticks);
        assert!(read.is_done(&finding("F9", Some([1.5, 2.0, 3.0]))));
        assert!(!read.is_done(&finding("F1", Some([1.6, 2.0, 3.0]))));
        ticks.toggle(&first);
        assert!(!ticks.is_done(&first) && ticks.is_done(&second));
        assert!(ticks.save(Path::new("/no/such/folder")).is_err());
    }
}
