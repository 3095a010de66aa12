//! The case file, `case.toml`.

use super::arch_entry::ArchEntry;
use super::fault::{CaseError, CaseFault, CaseProblem};
use super::labels::{self, Labels};
use super::marks::read_landmarks;
use super::scanned_at::{BadTime, scanned_at};
use super::{Case, Consignment, JawRelation};
use crate::located::{self, Located};
use crate::scanner::ScannerEntry;
use measure::Arch;
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::case::{CentricRelationBy, ImpressionInput, Material, Stage};
    use nalgebra::Point3;
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
