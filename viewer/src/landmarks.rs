//! Landmarks marked by hand, saved in the numbers of the scan file.

use judge::system_says;
use measure::landmarks::LandmarkName;
use mesh::read::shown_path;
use mesh::write::{WriteError, write_atomically};
use messages::{Language, Message, message};
use report::result::{Arch, Point, Side};
use report::words;
use serde::{Deserialize, Serialize};
use std::path::Path;

/// The side of a landmark, as the file has it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Where {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
    /// On the midline.
    Midline,
}

impl Where {
    /// Of a side in a result.
    #[must_use]
    pub fn of(side: Option<Side>) -> Self {
        match side {
            Some(Side::Right) => Right,
            Some(Side::Left) => Left,
            None => Midline,
        }
    }
}

use Where::{Left, Midline, Right};

/// The landmarks that can be marked on an impression of a jaw.
#[must_use]
pub fn of_arch(arch: Option<Arch>) -> Vec<(&'static str, Where)> {
    let jaw = match arch {
        Some(Arch::Mandibular) => measure::Arch::Mandibular,
        Some(Arch::Maxillary) | None => measure::Arch::Maxillary,
    };
    let sides = |name: LandmarkName| match name.is_paired() {
        true => vec![Right, Left],
        false => vec![Midline],
    };
    LandmarkName::ALL
        .into_iter()
        .filter(|name| name.belongs_to(jaw))
        .flat_map(|name| {
            sides(name)
                .into_iter()
                .map(move |side| (name.in_words(), side))
        })
        .collect()
}

/// A landmark in words.
#[must_use]
pub fn in_words((name, side): (&str, Where), language: Language) -> String {
    at_side(words::landmark_word(name, language), side, language)
}

/// A zone in words.
#[must_use]
pub fn zone_in_words(zone: &str, side: Option<Side>, language: Language) -> String {
    at_side(words::zone_name(zone, language), Where::of(side), language)
}

fn at_side(name: String, side: Where, language: Language) -> String {
    let side = match side {
        Right => Side::Right,
        Left => Side::Left,
        Midline => return name,
    };
    format!("{name}, {}", words::side_word(side, language))
}

/// A marked landmark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Mark {
    /// Its name in the trade.
    pub name: String,
    /// The side.
    pub side: Where,
    /// Where, in the numbers of the scan file.
    pub point: Point,
}

/// The marked landmarks of an impression.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct Marks {
    /// SHA-256 of the scan that they were marked on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    scan_sha256: Option<String>,
    #[serde(default, rename = "landmark")]
    marks: Vec<Mark>,
    /// What was there before each step, to go back to.
    #[serde(skip)]
    earlier: Vec<Vec<Mark>>,
    /// What was there before each step back.
    #[serde(skip)]
    later: Vec<Vec<Mark>>,
}

impl Marks {
    /// Those of a file; none where it is not there.
    ///
    /// # Errors
    /// In words for people, when it is there and cannot be read.
    pub fn load(path: &Path) -> Result<Self, Message> {
        match mesh::read::settings_text(path) {
            Ok(text) => toml::from_str(&text).map_err(|error| {
                let line = error.message().replace('\n', " ");
                message!("landmarks-no-list", path = shown_path(path), reason = line)
            }),
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(Self::default()),
            Err(error) => Err(message!(
                "landmarks-unreadable",
                path = shown_path(path),
                reason = system_says(&error)
            )),
        }
    }

    /// Those of a file, for a scan of this SHA-256: none where they were marked on another.
    ///
    /// # Errors
    /// As for [`Marks::load`].
    pub fn of_scan(path: &Path, scan_sha256: &str) -> Result<Self, Message> {
        let mut marks = Self::load(path)?;
        if marks
            .scan_sha256
            .as_ref()
            .is_some_and(|sum| sum != scan_sha256)
        {
            marks = Self::default();
        }
        marks.scan_sha256 = Some(scan_sha256.to_owned());
        Ok(marks)
    }

    /// The marks.
    #[must_use]
    pub fn all(&self) -> &[Mark] {
        &self.marks
    }

    /// The mark of a landmark, if it has one.
    #[must_use]
    pub fn get(&self, (name, side): (&str, Where)) -> Option<&Mark> {
        self.marks
            .iter()
            .find(|mark| mark.name == name && mark.side == side)
    }

    /// Marks a landmark, or moves its mark.
    pub fn mark(&mut self, (name, side): (&str, Where), point: Point) {
        self.earlier.push(self.marks.clone());
        self.later.clear();
        self.marks
            .retain(|mark| mark.name != name || mark.side != side);
        self.marks.push(Mark {
            name: name.to_owned(),
            side,
            point,
        });
    }

    /// Takes the last step back; whether there was one.
    pub fn undo(&mut self) -> bool {
        step(&mut self.earlier, &mut self.marks, &mut self.later)
    }

    /// Takes the last step back again; whether there was one.
    pub fn redo(&mut self) -> bool {
        step(&mut self.later, &mut self.marks, &mut self.earlier)
    }

    /// Saves them.
    ///
    /// # Errors
    /// When the file cannot be written.
    pub fn save(&self, path: &Path) -> Result<(), WriteError> {
        let text = toml::to_string(self).unwrap_or_default();
        write_atomically(path, |out| {
            out.write_all(
                b"# Landmarks marked by hand; points in the numbers of the scan file.\n",
            )?;
            out.write_all(text.as_bytes())
        })
    }
}

/// Puts the last of `from` in the place of the marks, and these onto `to`.
fn step(from: &mut Vec<Vec<Mark>>, marks: &mut Vec<Mark>, to: &mut Vec<Vec<Mark>>) -> bool {
    let Some(taken) = from.pop() else {
        return false;
    };
    to.push(std::mem::replace(marks, taken));
    true
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_are_moved_undone_and_read_back() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("landmarks.toml");
        let mut marks = Marks::load(&path).unwrap();
        let papilla = ("incisive papilla", Midline);
        assert!(of_arch(Some(Arch::Maxillary)).contains(&papilla));
        assert!(of_arch(Some(Arch::Mandibular)).contains(&("retromolar pad", Left)));
        marks.mark(papilla, [1.0, 2.0, 3.25]);
        marks.mark(("hamular notch", Right), [4.0, 5.0, 6.0]);
        marks.mark(papilla, [1.0, 2.0, 3.5]);
        assert_eq!(marks.all().len(), 2);
        assert_eq!(marks.get(papilla).unwrap().point, [1.0, 2.0, 3.5]);
        assert!(marks.undo() && marks.redo() && !marks.redo());
        assert_eq!(marks.get(papilla).unwrap().point, [1.0, 2.0, 3.5]);
        assert!(marks.undo());
        assert_eq!(marks.get(papilla).unwrap().point, [1.0, 2.0, 3.25]);
        marks.save(&path).unwrap();
        let text = std::fs::read_to_string(&path).unwrap();
        assert!(text.contains("[[landmark]]\nname = \"incisive papilla\"\nside = \"midline\"\n"));
        assert_eq!(Marks::load(&path).unwrap().all(), marks.all());
        assert!(marks.undo() && marks.undo() && !marks.undo());
        assert!(marks.all().is_empty());
        std::fs::write(&path, "landmark = 3").unwrap();
        let refused = Marks::load(&path).unwrap_err().to_string();
        assert!(refused.contains("landmarks.toml") && !refused.contains('\n'));
    }
}
