//! The landmarks file, in which an operator has marked landmarks on a scan.

use super::fault::{CaseError, CaseFault, CaseProblem};
use crate::located;
use measure::landmarks::{LandmarkMark, LandmarkName};
use measure::{Arch, Side};
use nalgebra::Point3;
use serde::Deserialize;
use std::path::Path;
use toml::Spanned;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MarksFile {
    scan_sha256: Option<String>,
    #[serde(default)]
    landmark: Vec<Entry>,
}

/// What a landmarks file says.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct MarkedLandmarks {
    /// The landmarks, in the numbers of the scan's file.
    pub marks: Vec<LandmarkMark>,
    /// SHA-256 of the scan that they were marked on, where the file says so.
    pub scan_sha256: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    name: Spanned<String>,
    side: Option<SideEntry>,
    arch: Option<ArchEntry>,
    point: Spanned<[f64; 3]>,
}

#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "lowercase")]
enum SideEntry {
    Right,
    Left,
    Midline,
}

#[derive(Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum ArchEntry {
    Maxillary,
    Mandibular,
}

impl From<ArchEntry> for Arch {
    fn from(entry: ArchEntry) -> Self {
        match entry {
            ArchEntry::Maxillary => Self::Maxillary,
            ArchEntry::Mandibular => Self::Mandibular,
        }
    }
}

/// Landmarks marked in a file, in the numbers of the scan's file. Where `arch`
/// is given, marks that are said to be of the other jaw are left out.
///
/// # Errors
/// When the file cannot be read or says something that no landmarks file can
/// say; the error names file and line.
pub fn read_landmarks(path: &Path, arch: Option<Arch>) -> Result<MarkedLandmarks, CaseError> {
    located::read(path, |text| parse(text, arch))
}

fn parse(text: &str, arch: Option<Arch>) -> Result<MarkedLandmarks, CaseProblem> {
    let file: MarksFile = located::from_toml(text, CaseFault::Toml)?;
    let mut marks: Vec<LandmarkMark> = Vec::new();
    for entry in file.landmark {
        let faulty = |fault| located::at(text, entry.name.span().start, fault);
        let written = entry.name.get_ref();
        let name = named(written).ok_or_else(|| faulty(CaseFault::unknown_landmark(written)))?;
        let side = match entry.side {
            Some(SideEntry::Right) => Some(Side::Right),
            Some(SideEntry::Left) => Some(Side::Left),
            Some(SideEntry::Midline) | None => None,
        };
        if name.is_paired() != side.is_some() {
            return Err(faulty(CaseFault::LandmarkSide(name)));
        }
        let point = entry.point.get_ref();
        if !point.iter().all(|c| c.is_finite()) {
            let start = entry.point.span().start;
            return Err(located::at(text, start, CaseFault::MarkNotFinite));
        }
        if let (Some(own), Some(arch)) = (entry.arch, arch)
            && Arch::from(own) != arch
        {
            continue;
        }
        if marks.iter().any(|m| m.name == name && m.side == side) {
            return Err(faulty(CaseFault::MarkedTwice(name)));
        }
        marks.push(LandmarkMark {
            name,
            side,
            point: Point3::from(*point),
        });
    }
    Ok(MarkedLandmarks {
        marks,
        scan_sha256: file.scan_sha256.map(|sum| sum.to_lowercase()),
    })
}

/// The landmark of a name, whose words may be joined by hyphens or underscores.
fn named(text: &str) -> Option<LandmarkName> {
    let plain = text.trim().to_lowercase().replace(['-', '_'], " ");
    LandmarkName::ALL
        .into_iter()
        .find(|name| name.in_words() == plain)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    const WHOLE: &str = r#"
[[landmark]]
name = "incisive-papilla"
side = "midline"
point = [1, 2.5, 3]
[[landmark]]
name = "hamular notch"
side = "left"
arch = "maxillary"
point = [-20.0, -31.0, 4.0]
[[landmark]]
name = "labial frenum"
arch = "mandibular"
point = [0.0, 30.0, 4.0]
"#;

    #[test]
    fn marks_are_read_and_those_of_the_other_jaw_left_out() {
        let marks = parse(WHOLE, Some(Arch::Maxillary)).unwrap().marks;
        let names: Vec<_> = marks.iter().map(|m| (m.name, m.side)).collect();
        assert_eq!(
            names,
            [
                (LandmarkName::IncisivePapilla, None),
                (LandmarkName::HamularNotch, Some(Side::Left)),
            ]
        );
        assert_eq!(marks[0].point, Point3::new(1.0, 2.5, 3.0));
        assert_eq!(parse(WHOLE, None).unwrap().marks.len(), 3);
        assert!(parse("", None).unwrap().marks.is_empty());
    }

    #[rstest]
    #[case::unknown(
        "[[landmark]]\nname = \"nose\"\npoint = [1, 2, 3]",
        2,
        "incisive papilla"
    )]
    #[case::no_side(
        "[[landmark]]\nname = \"hamular notch\"\npoint = [1, 2, 3]",
        2,
        "right or left"
    )]
    #[case::a_side(
        "[[landmark]]\nname = \"rugae\"\nside = \"left\"\npoint = [1, 2, 3]",
        2,
        "midline"
    )]
    #[case::nan("[[landmark]]\nname = \"rugae\"\npoint = [1,\nnan, 3]", 3, "finite")]
    #[case::twice(
        "[[landmark]]\nname = \"rugae\"\npoint = [1, 2, 3]\n[[landmark]]\nname = \"rugae\"\npoint = [1, 2, 3]",
        5,
        "twice"
    )]
    #[case::key(
        "[[landmark]]\nname = \"rugae\"\nwhere = 1\npoint = [1, 2, 3]",
        3,
        "where"
    )]
    fn nonsense_is_refused_by_line(#[case] text: &str, #[case] line: usize, #[case] says: &str) {
        let problem = parse(text, None).unwrap_err();
        assert_eq!(problem.line, Some(line), "{problem}");
        assert!(problem.to_string().contains(says), "{problem}");
    }
}
