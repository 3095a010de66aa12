//! The case file, `case.toml`.

use super::fault::{CaseError, CaseFault, CaseProblem};
use super::labels::{self, Labels};
use super::marks::read_landmarks;
use super::scanned_at::{BadTime, scanned_at};
use super::tray::{BadThickness, colour_from_hex, thickness};
use super::{Case, Consignment, ImpressionInput, JawRelation, Material, Stage};
use crate::located::{self, Located};
use crate::scanner::ScannerEntry;
use measure::Arch;
use nalgebra::Point3;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use toml::Spanned;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CaseFile {
    case: Spanned<String>,
    scanner: Option<Spanned<ScannerEntry>>,
    trays: Option<PathBuf>,
    maxillary: Option<Spanned<ArchEntry>>,
    mandibular: Option<Spanned<ArchEntry>>,
    jaw_relation: Option<Spanned<JawRelation>>,
    #[serde(alias = "parcel")]
    consignment: Option<Consignment>,
    scanned_at: Option<Spanned<toml::Value>>,
    labels: Option<Spanned<BTreeMap<Spanned<String>, Spanned<String>>>>,
}

/// A scan, or the scans of the parts of an impression or of the pieces of a tray.
#[derive(Deserialize)]
#[serde(
    untagged,
    expecting = "expected the name of a file (a string), or a list of the parts' files"
)]
enum ScanEntry {
    Whole(PathBuf),
    Parts(Vec<PathBuf>),
}

impl ScanEntry {
    /// The first file and the others.
    fn files(&self) -> Option<(&PathBuf, &[PathBuf])> {
        match self {
            Self::Whole(file) => Some((file, &[])),
            Self::Parts(files) => files.split_first(),
        }
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ArchEntry {
    #[serde(alias = "before_wash")]
    first_pass: Option<Spanned<ScanEntry>>,
    wash: Option<Spanned<ScanEntry>>,
    one_step: Option<Spanned<ScanEntry>>,
    #[serde(alias = "before_wash_as_sent")]
    first_pass_as_sent: Option<Spanned<PathBuf>>,
    wash_as_sent: Option<Spanned<PathBuf>>,
    one_step_as_sent: Option<Spanned<PathBuf>>,
    #[serde(alias = "before_wash_landmarks")]
    first_pass_landmarks: Option<PathBuf>,
    wash_landmarks: Option<PathBuf>,
    one_step_landmarks: Option<PathBuf>,
    tray: Option<Spanned<ScanEntry>>,
    tray_relieved: Option<Spanned<PathBuf>>,
    tray_thickness_mm: Option<Spanned<f64>>,
    tray_thickness_uncertainty_mm: Option<Spanned<f64>>,
    tray_colour: Option<Spanned<String>>,
    #[serde(default)]
    stops: Vec<Spanned<[f64; 3]>>,
    #[serde(default)]
    stops_relieved: bool,
    material: Option<Material>,
    hours_since_taken: Option<Spanned<f64>>,
}

impl Case {
    /// Reads a case file, and the landmarks files that it names; paths in it are
    /// taken from the folder it lies in.
    ///
    /// # Errors
    /// When the file cannot be read, is not TOML, holds an unknown key or a
    /// value of a wrong kind, or names no impression; the error names file and line.
    pub fn from_file(path: &Path) -> Result<Self, CaseError> {
        let folder = path.parent().unwrap_or(Path::new(""));
        let (mut case, marked) = located::read(path, |text| parse(text, folder))?;
        for (impression, landmarks) in case.impressions.iter_mut().zip(marked) {
            if let Some(file) = landmarks {
                let marked = read_landmarks(&file, impression.declared)?;
                impression.marks = marked.marks;
                impression.marks_sha256 = marked.scan_sha256;
                impression.marks_file = Some(file);
            }
        }
        Ok(case)
    }
}

/// The case, and the landmarks file of each of its impressions, not read yet.
fn parse(text: &str, folder: &Path) -> Result<(Case, Vec<Option<PathBuf>>), CaseProblem> {
    let file: CaseFile = located::from_toml(text, CaseFault::Toml)?;
    let id = file.case.get_ref().trim();
    if id.is_empty() || id.chars().any(char::is_control) {
        return Err(located::at(text, file.case.span().start, CaseFault::NoId));
    }
    let mut impressions = Vec::new();
    let mut marked = Vec::new();
    let mut empty = Vec::new();
    for (arch, entry) in [
        (Arch::Maxillary, &file.maxillary),
        (Arch::Mandibular, &file.mandibular),
    ] {
        if let Some(entry) = entry {
            let of_jaw = entry.get_ref().impressions(arch, folder, text)?;
            if entry.get_ref().is_contradictory() {
                let start = entry.span().start;
                return Err(located::at(text, start, CaseFault::OneStepAndStages));
            }
            if of_jaw.is_empty() {
                empty.push(located::at(text, entry.span().start, CaseFault::EmptyJaw));
            }
            impressions.extend(of_jaw);
            marked.extend(entry.get_ref().landmarks_files(folder));
        }
    }
    if impressions.is_empty() {
        return Err(Located {
            line: None,
            fault: CaseFault::NoImpression,
        });
    }
    if let Some(problem) = empty.into_iter().next() {
        return Err(problem);
    }
    let jaw_relation = file
        .jaw_relation
        .map(|record| relation(record, folder, text));
    let scanner = (file.scanner.as_ref())
        .map(|entry| ScannerEntry::scanner(entry, text, folder, CaseFault::Scanner))
        .transpose()?;
    let scanned_at = file.scanned_at.map(|stated| stated_time(&stated, text));
    let case = Case {
        scanner,
        scanned_at: scanned_at.transpose()?,
        trays: file.trays.map(|trays| folder.join(trays)),
        id: id.to_owned(),
        impressions,
        jaw_relation: jaw_relation.transpose()?,
        consignment: file.consignment,
        labels: file
            .labels
            .map_or_else(|| Ok(Labels::new()), |given| labels_of(given, text))?,
    };
    Ok((case, marked))
}

/// When the scans were made, given as a text or as a date of TOML.
fn stated_time(stated: &Spanned<toml::Value>, text: &str) -> Result<String, CaseProblem> {
    let time = match stated.get_ref() {
        toml::Value::String(written) => scanned_at(written),
        toml::Value::Datetime(date) => scanned_at(&date.to_string()),
        _ => Err(BadTime),
    };
    time.map_err(|why| located::at(text, stated.span().start, why.into()))
}

/// The labels, if each is a code.
fn labels_of(
    given: Spanned<BTreeMap<Spanned<String>, Spanned<String>>>,
    text: &str,
) -> Result<Labels, CaseProblem> {
    let start = given.span().start;
    let given = given.into_inner();
    let at = |start, why: labels::BadLabel| located::at(text, start, why.into());
    labels::number_checked(given.len()).map_err(|why| at(start, why))?;
    let mut checked = Labels::new();
    for (key, value) in given {
        labels::checked(key.get_ref(), value.get_ref())
            .map_err(|why| at(value.span().start, why))?;
        checked.insert(key.into_inner(), value.into_inner());
    }
    Ok(checked)
}

/// The relation of the jaws, if its numbers make sense.
fn relation(
    record: Spanned<JawRelation>,
    folder: &Path,
    text: &str,
) -> Result<JawRelation, CaseProblem> {
    let start = record.span().start;
    let record = record.into_inner();
    let fault = if !record.numbers().all(f64::is_finite) {
        CaseFault::ReadingNotFinite
    } else if record.is_ambiguous() {
        CaseFault::ValueAndReadings
    } else {
        return Ok(JawRelation {
            scan: record.scan.map(|scan| folder.join(scan)),
            ..record
        });
    };
    Err(located::at(text, start, fault))
}

impl ArchEntry {
    /// The landmarks file of each scan that is named, in the order of the stages.
    fn landmarks_files(&self, folder: &Path) -> Vec<Option<PathBuf>> {
        [
            (&self.first_pass, &self.first_pass_landmarks),
            (&self.wash, &self.wash_landmarks),
            (&self.one_step, &self.one_step_landmarks),
        ]
        .into_iter()
        .filter(|(scan, _)| scan.is_some())
        .map(|(_, file)| file.as_ref().map(|file| folder.join(file)))
        .collect()
    }

    /// Whether the tray is given in pieces.
    fn has_pieces(&self) -> bool {
        let files = self.tray.as_ref().and_then(|tray| tray.get_ref().files());
        files.is_some_and(|(_, others)| !others.is_empty())
    }

    /// Whether an impression in one step is named beside one of two stages.
    fn is_contradictory(&self) -> bool {
        self.one_step.is_some() && (self.first_pass.is_some() || self.wash.is_some())
    }

    /// Whether scans, tray, stops and hours go together.
    fn checked(&self, text: &str) -> Result<(), CaseProblem> {
        for stop in &self.stops {
            let fault = if self.tray.is_none() {
                CaseFault::StopsWithoutTray
            } else if !stop.get_ref().iter().all(|c| c.is_finite()) {
                CaseFault::StopNotFinite
            } else {
                continue;
            };
            return Err(located::at(text, stop.span().start, fault));
        }
        if let Some(relieved) = &self.tray_relieved
            && (self.tray.is_none() || self.one_step.is_some())
        {
            let fault = CaseFault::RelievedAlone;
            return Err(located::at(text, relieved.span().start, fault));
        }
        for (sent, arrived) in [
            (&self.first_pass_as_sent, &self.first_pass),
            (&self.wash_as_sent, &self.wash),
            (&self.one_step_as_sent, &self.one_step),
        ] {
            if let (Some(sent), None) = (sent, arrived) {
                let fault = CaseFault::SentAlone;
                return Err(located::at(text, sent.span().start, fault));
            }
        }
        if let Some(hours) = &self.hours_since_taken
            && !(hours.get_ref().is_finite() && *hours.get_ref() >= 0.0)
        {
            return Err(located::at(text, hours.span().start, CaseFault::Hours));
        }
        for entry in [&self.first_pass, &self.wash, &self.one_step]
            .into_iter()
            .flatten()
        {
            let fault = match entry.get_ref().files() {
                None => CaseFault::NoParts,
                Some((_, [_, ..])) if self.tray.is_none() => CaseFault::PartsWithoutTray,
                Some((_, [_, ..])) if self.has_pieces() => CaseFault::PiecesNotWhole,
                Some(_) => continue,
            };
            return Err(located::at(text, entry.span().start, fault));
        }
        if let Some(tray) = &self.tray {
            let fault = match tray.get_ref().files() {
                None => Some(CaseFault::NoPieces),
                Some((_, [_, ..])) if self.tray_relieved.is_some() => {
                    Some(CaseFault::PiecesNotWhole)
                }
                Some(_) => None,
            };
            if let Some(fault) = fault {
                return Err(located::at(text, tray.span().start, fault));
            }
        }
        Ok(())
    }

    fn impressions(
        &self,
        arch: Arch,
        folder: &Path,
        text: &str,
    ) -> Result<Vec<ImpressionInput>, CaseProblem> {
        self.checked(text)?;
        let trays = self.tray.as_ref().and_then(|tray| tray.get_ref().files());
        let value = |of: &Option<Spanned<f64>>| of.as_ref().map(|value| *value.get_ref());
        let (mm, doubt) = (&self.tray_thickness_mm, &self.tray_thickness_uncertainty_mm);
        let tray_thickness = thickness(value(mm), value(doubt)).map_err(|why| {
            let of_doubt = !matches!(why, BadThickness::Impossible(_));
            let at_fault = if of_doubt { doubt } else { mm };
            let start = at_fault.as_ref().map_or(0, |value| value.span().start);
            located::at(text, start, why.into())
        })?;
        let colour = self.tray_colour.as_ref().map(|written| {
            colour_from_hex(written.get_ref())
                .map_err(|why| located::at(text, written.span().start, why.into()))
        });
        let tray_colour = colour.transpose()?;
        Ok([
            (Stage::FirstPass, &self.first_pass, &self.first_pass_as_sent),
            (Stage::Wash, &self.wash, &self.wash_as_sent),
            (Stage::Single, &self.one_step, &self.one_step_as_sent),
        ]
        .into_iter()
        .filter_map(|(stage, scan, sent)| {
            let (scan, others) = scan.as_ref()?.get_ref().files()?;
            Some(ImpressionInput {
                declared: Some(arch),
                stage,
                scan: folder.join(scan),
                other_parts: others.iter().map(|part| folder.join(part)).collect(),
                as_sent: (sent.as_ref()).map(|sent| folder.join(sent.get_ref())),
                tray: trays.map(|(tray, _)| folder.join(tray)),
                other_pieces: trays.map_or_else(Vec::new, |(_, pieces)| {
                    pieces.iter().map(|piece| folder.join(piece)).collect()
                }),
                tray_relieved: (self.tray_relieved.as_ref())
                    .map(|relieved| folder.join(relieved.get_ref())),
                tray_thickness,
                tray_colour,
                stops: self
                    .stops
                    .iter()
                    .map(|s| Point3::from(*s.get_ref()))
                    .collect(),
                stops_relieved: self.stops_relieved,
                material: self.material,
                hours_since_taken: value(&self.hours_since_taken),
                marks: Vec::new(),
                marks_sha256: None,
                marks_file: None,
            })
        })
        .collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::case::CentricRelationBy;
    use rstest::rstest;

    const WHOLE: &str = r##"
case = "D-1042"
trays = "shelf"
[maxillary]
first_pass = "upper-first.ply"
wash = "upper-wash.ply"
wash_landmarks = "upper-marks.toml"
tray = "upper-tray.stl"
stops = [[12.1, 30.4, 8], [-12.3, 30.1, 8.1]]
stops_relieved = true
[mandibular]
material = "addition-silicone"
hours_since_taken = 30
tray_thickness_mm = 2.1
tray_colour = "#d6ceba"
wash = "/elsewhere/lower-wash.stl"
[jaw_relation]
scan = "record.ply"
vertical_dimension_mm = 66.0
rest_vertical_dimension_readings_mm = [68.5, 69.5, 69.0]
vertical_dimension_by = "lip-contact"
centric_relation_by = "gothic-arch"
upper_lip_length_mm = 21.5
papilla_to_lip_mm = 7.5
[consignment]
prescription = true
disinfectant = "as the protocol says"
disinfection_min = 10
expected = ["upper impression", "lower impression", "jaw-relation record"]
packed = ["upper impression", "lower impression"]
"##;

    #[test]
    fn the_older_names_of_keys_mean_the_same() {
        let older = "case = \"a\"\n[maxillary]\nfirst_pass = \"f\"\nfirst_pass_landmarks = \"m\"\n\
                     [consignment]\nprescription = true";
        let newer = "case = \"a\"\n[maxillary]\nbefore_wash = \"f\"\nbefore_wash_landmarks = \"m\"\n\
                     [parcel]\nprescription = true";
        let [older, newer] = [older, newer].map(|text| parse(text, Path::new("")).unwrap());
        assert_eq!(older, newer);
        assert_eq!(newer.0.impressions[0].stage, Stage::FirstPass);
        assert!(newer.0.consignment.is_some());
    }

    #[test]
    fn the_time_of_scanning_is_a_text_or_a_date() {
        let of = |stated: &str| {
            let text = format!("case = \"a\"\n{stated}\n[maxillary]\nwash = \"w.ply\"");
            parse(&text, Path::new("")).map(|(case, _)| case.scanned_at)
        };
        for (stated, wanted) in [
            ("", None),
            ("scanned_at = 2026-03-04", Some("2026-03-04")),
            ("scanned_at = \"2026-03-04\"", Some("2026-03-04")),
            (
                "scanned_at = 2026-03-04T10:20:00+01:00",
                Some("2026-03-04T09:20:00Z"),
            ),
            (
                "scanned_at = 2026-03-04 10:20:00",
                Some("2026-03-04T10:20:00Z"),
            ),
        ] {
            assert_eq!(of(stated), Ok(wanted.map(str::to_owned)), "{stated}");
        }
        for stated in [
            "scanned_at = 20260304",
            "scanned_at = 10:20:00",
            "scanned_at = \"soon\"",
        ] {
            let problem = of(stated).unwrap_err();
            assert_eq!(problem.line, Some(2), "{stated}");
            assert!(problem.fault.to_string().contains("2026-03-04"));
        }
    }

    #[test]
    fn an_impression_in_one_step_is_named_as_such() {
        let text = "case = \"a\"\n[mandibular]\none_step = \"o.ply\"\none_step_landmarks = \"m\"";
        let (case, marked) = parse(text, Path::new("")).unwrap();
        assert_eq!(case.impressions[0].stage, Stage::Single);
        assert_eq!(marked, [Some("m".into())]);
    }

    #[test]
    fn an_impression_is_named_as_it_was_sent_and_as_it_arrived() {
        let text =
            "case = \"a\"\n[mandibular]\nbefore_wash = \"f\"\nwash = \"w\"\nwash_as_sent = \"s\"";
        let (case, _) = parse(text, Path::new("folder")).unwrap();
        let sent: Vec<_> = case
            .impressions
            .iter()
            .map(|i| i.as_sent.as_deref())
            .collect();
        assert_eq!(sent, [None, Some(Path::new("folder/s"))]);
        assert_eq!(case.scans().len(), 3);
    }

    #[test]
    fn the_parts_of_an_impression_are_a_list() {
        let text = "case = \"a\"\n[mandibular]\ntray = \"t\"\nwash = [\"front\", \"back\"]";
        let (case, _) = parse(text, Path::new("folder")).unwrap();
        let files: Vec<_> = case.impressions[0].scan_files().collect();
        assert_eq!(files, ["folder/front", "folder/back"].map(Path::new));
        assert_eq!(case.scans().len(), 3);
    }

    #[test]
    fn every_key_of_a_case_is_read_and_paths_lie_beside_it() {
        let (case, marked) = parse(WHOLE, Path::new("folder")).unwrap();
        assert_eq!(marked, [None, Some("folder/upper-marks.toml".into()), None]);
        assert_eq!(case.id, "D-1042");
        assert_eq!(case.trays.as_deref(), Some(Path::new("folder/shelf")));
        // Nothing is said of the second jaw's tray but its thickness.
        assert!(!case.impressions.iter().any(ImpressionInput::is_from_shelf));
        let scans: Vec<_> = case.impressions.iter().map(|i| i.scan.as_path()).collect();
        assert_eq!(
            scans,
            [
                Path::new("folder/upper-first.ply"),
                Path::new("folder/upper-wash.ply"),
                Path::new("/elsewhere/lower-wash.stl")
            ]
        );
        assert_eq!(case.impressions[1].stage, Stage::Wash);
        assert_eq!(case.impressions[0].stops[0], Point3::new(12.1, 30.4, 8.0));
        assert_eq!(case.impressions[2].declared, Some(Arch::Mandibular));
        assert_eq!(case.impressions[2].tray_colour, Some([0xd6, 0xce, 0xba]));
        assert_eq!(case.impressions[2].tray_thickness.map(|t| t.mm), Some(2.1));
        assert_eq!(case.impressions[0].tray_thickness, None);
        assert!(case.impressions[1].stops_relieved && !case.impressions[2].stops_relieved);
        assert_eq!(
            case.impressions[2].material,
            Some(Material::AdditionSilicone)
        );
        assert_eq!(case.impressions[2].hours_since_taken, Some(30.0));
        let record = case.jaw_relation.as_ref().unwrap();
        assert_eq!(record.rest_mm(), Some(69.0));
        assert_eq!(
            record.centric_relation_by,
            Some(CentricRelationBy::GothicArch)
        );
        assert_eq!(record.scan.as_deref(), Some(Path::new("folder/record.ply")));
        assert_eq!(
            case.consignment.as_ref().unwrap().disinfection_min,
            Some(10.0)
        );
        assert!(case.is_superseded(0));
        assert!(!case.is_superseded(1) && !case.is_superseded(2));
    }

    #[rstest]
    #[case::unknown_key("case = \"a\"\nupper = 1", Some(2), "upper")]
    #[case::unknown_arch_key(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\nscan = \"x\"",
        Some(4),
        "scan"
    )]
    #[case::wrong_kind("case = \"a\"\n[maxillary]\nwash = 3", Some(3), "string")]
    #[case::no_case("[maxillary]\nwash = \"w\"", Some(1), "case")]
    #[case::empty_id("case = \" \"\n[maxillary]\nwash = \"w\"", Some(1), "pseudonym")]
    #[case::escape_in_id(
        "case = \"\\u001b[2J\"\n[maxillary]\nwash = \"w\"",
        Some(1),
        "pseudonym"
    )]
    #[case::nothing_in_it("case = \"a\"\n[maxillary]\ntray = \"t\"", None, "no impression")]
    #[case::nan_stop(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\ntray = \"t\"\nstops = [[1, 2, 3],\n[nan, 0, 0]]",
        Some(6),
        "finite"
    )]
    #[case::short_stop(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\ntray = \"t\"\nstops = [[1, 2]]",
        Some(5),
        ""
    )]
    #[case::no_such_colour(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\ntray_colour = \"ivory\"",
        Some(4),
        "#rrggbb"
    )]
    #[case::no_such_thickness(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\ntray_thickness_mm = 0",
        Some(4),
        "0.2 to 8 mm"
    )]
    #[case::uncertainty_of_nothing(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\ntray_thickness_uncertainty_mm = 0.1",
        Some(4),
        "no thickness"
    )]
    #[case::no_tray(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\nstops = [[1, 2, 3]]",
        Some(4),
        "no tray"
    )]
    #[case::one_step_beside_a_wash(
        "case = \"a\"\n[mandibular]\nwash = \"w\"\none_step = \"o\"",
        Some(2),
        "one_step"
    )]
    #[case::empty_jaw(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\n[mandibular]\ntray = \"t\"",
        Some(4),
        "no impression of this jaw"
    )]
    #[case::value_and_readings(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\n[jaw_relation]\nvertical_dimension_mm = 1\n\
         vertical_dimension_readings_mm = [1, 2]",
        Some(4),
        "both"
    )]
    #[case::reading_nan(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\n[jaw_relation]\npapilla_to_lip_mm = nan",
        Some(4),
        "finite"
    )]
    #[case::before_it_was_taken(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\nhours_since_taken = -1",
        Some(4),
        "0 or more"
    )]
    #[case::no_such_material(
        "case = \"a\"\n[maxillary]\nwash = \"w\"\nmaterial = \"clay\"",
        Some(4),
        "addition-silicone"
    )]
    #[case::sent_and_never_arrived(
        "case = \"a\"\n[maxillary]\nbefore_wash = \"f\"\nwash_as_sent = \"w\"",
        Some(4),
        "as it arrived"
    )]
    #[case::no_parts(
        "case = \"a\"\n[maxillary]\ntray = \"t\"\nwash = []",
        Some(4),
        "is empty"
    )]
    #[case::parts_in_a_tray_in_pieces(
        "case = \"a\"\n[maxillary]\nwash = [\"f\", \"b\"]\ntray = [\"t\", \"u\"]",
        Some(3),
        "scan the tray whole"
    )]
    #[case::no_pieces(
        "case = \"a\"\n[maxillary]\nwash = \"f\"\ntray = []",
        Some(4),
        "is empty"
    )]
    #[case::parts_without_tray(
        "case = \"a\"\n[maxillary]\nwash = [\"f\", \"b\"]",
        Some(3),
        "whole tray"
    )]
    #[case::not_toml("case = \"a", Some(1), "")]
    fn nonsense_is_refused_by_line(
        #[case] text: &str,
        #[case] line: Option<usize>,
        #[case] says: &str,
    ) {
        let problem = parse(text, Path::new("")).unwrap_err();
        assert_eq!(problem.line, line, "{problem}");
        let message = problem.to_string();
        assert!(message.contains(says), "{message}");
        assert!(!message.contains('\n'), "{message}");
    }
}
