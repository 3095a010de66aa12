//! What a file's name suggests. It is weak evidence: it settles nothing.

use judge::Stage;
use measure::Arch;
use std::path::Path;

/// What a file's name suggests.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Hints {
    /// Of which jaw.
    pub(super) arch: Option<Arch>,
    /// What kind of thing.
    pub(super) kind: Option<Kind>,
}

/// A kind of thing that a name suggests.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// An impression, of a stage where the name says one.
    Impression(Option<Stage>),
    /// A tray.
    Tray,
    /// A record of the jaw relation.
    Record,
}

const UPPER: &[&str] = &["upper", "maxilla", "maxillary"];
const LOWER: &[&str] = &["lower", "mandible", "mandibular"];
const TRAY: &[&str] = &["tray", "trays"];
const RECORD: &[&str] = &["record", "bite", "relation", "registration"];
const WASH: &[&str] = &["wash"];
const BEFORE: &[&str] = &["first", "before", "preliminary"];
const IMPRESSION: &[&str] = &["impression", "imp"];

impl Hints {
    /// What the name of a file suggests.
    pub(super) fn of(file: &Path) -> Self {
        let stem = file.file_stem().unwrap_or_default().to_string_lossy();
        let words: Vec<String> = (stem.split(|c: char| !c.is_alphabetic()))
            .map(str::to_lowercase)
            .collect();
        let has = |known: &[&str]| words.iter().any(|word| known.contains(&word.as_str()));
        let arch = match (has(UPPER), has(LOWER)) {
            (true, false) => Some(Arch::Maxillary),
            (false, true) => Some(Arch::Mandibular),
            _ => None,
        };
        let stage = match (has(BEFORE), has(WASH)) {
            (true, _) => Some(Stage::FirstPass),
            (false, true) => Some(Stage::Wash),
            _ => None,
        };
        let kind = match (has(TRAY), has(RECORD), stage) {
            (true, false, _) => Some(Kind::Tray),
            (false, true, _) => Some(Kind::Record),
            (false, false, Some(stage)) => Some(Kind::Impression(Some(stage))),
            (false, false, None) if has(IMPRESSION) => Some(Kind::Impression(None)),
            _ => None,
        };
        Self { arch, kind }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_suggest_jaw_and_kind_and_nothing_when_they_say_both() {
        let of = |name: &str| Hints::of(Path::new(name));
        assert_eq!(
            of("Upper_before-wash 2.stl"),
            Hints {
                arch: Some(Arch::Maxillary),
                kind: Some(Kind::Impression(Some(Stage::FirstPass)))
            }
        );
        assert_eq!(of("mandible-tray.ply").kind, Some(Kind::Tray));
        assert_eq!(of("upper-lower-bite.ply").arch, None);
        assert_eq!(of("upper-lower-bite.ply").kind, Some(Kind::Record));
        assert_eq!(of("scan 0001.obj"), Hints::default());
    }
}
