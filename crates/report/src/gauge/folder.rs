//! Readings from folders: OPERATOR/PART/REPEAT, each repeat a scan or the folder
//! of its result.

use super::{FigureStudy, GaugeError, GaugeResult, NotStudied};
use crate::figures::figures;
use crate::outputs::RESULT_FILE;
use crate::read_result;
use crate::result::CaseResult;
use check::CheckError;
use statistics::gauge::{Reading, StudyError};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Endings of scan files.
const ENDINGS: [&str; 3] = ["stl", "ply", "obj"];

/// Works out a crossed gauge study of every figure of results that are kept as
/// OPERATOR/PART/REPEAT: a repeat is a result folder, or a scan, which `check`
/// turns into a result. Names that begin with a point are passed over.
///
/// # Errors
/// When the folders hold something else, a scan cannot be checked or a result
/// not read, or not every operator read every part equally often.
pub fn gauge_of_folder(
    folder: &Path,
    mut check: impl FnMut(&Path) -> Result<CaseResult, CheckError>,
) -> Result<GaugeResult, GaugeError> {
    let mut all = Vec::new();
    for operator in folders_in(folder)? {
        for part in folders_in(&operator)? {
            for repeat in entries(&part)? {
                let result = result_of(&repeat, &mut check)?;
                all.push(([&operator, &part].map(|p| named(p)), figures(&result)));
            }
        }
    }
    let mut by_name: BTreeMap<&str, (&'static str, Vec<Reading>)> = BTreeMap::new();
    for ([operator, part], figures) in &all {
        for figure in figures {
            let entry = by_name.entry(&figure.name);
            let (_, readings) = entry.or_insert((figure.unit, Vec::new()));
            readings.push(Reading {
                operator: operator.clone(),
                part: part.clone(),
                value: figure.value,
            });
        }
    }
    let wrong = |source| GaugeError::Study {
        path: folder.to_owned(),
        source,
    };
    let (mut studies, mut not_studied) = (Vec::new(), Vec::new());
    for (name, (unit, readings)) in &by_name {
        let lacking = all.len() - readings.len();
        let why = if lacking > 0 {
            format!("{lacking} of {} readings lack it", all.len())
        } else {
            match FigureStudy::of(name, Some(unit), readings) {
                Ok(study) => {
                    studies.push(study);
                    continue;
                }
                Err(same @ StudyError::NoVariation) => same.to_string(),
                Err(other) => return Err(wrong(other)),
            }
        };
        let figure = (*name).to_owned();
        not_studied.push(NotStudied { figure, why });
    }
    if all.is_empty() {
        return Err(wrong(StudyError::TooSmall));
    }
    Ok(GaugeResult::of(studies, not_studied))
}

fn result_of(
    repeat: &Path,
    check: &mut impl FnMut(&Path) -> Result<CaseResult, CheckError>,
) -> Result<CaseResult, GaugeError> {
    if repeat.join(RESULT_FILE).is_file() {
        return Ok(read_result(repeat)?);
    }
    let is_scan = repeat.is_file()
        && repeat
            .extension()
            .is_some_and(|e| ENDINGS.iter().any(|known| e.eq_ignore_ascii_case(known)));
    if !is_scan {
        return Err(GaugeError::Layout {
            path: repeat.to_owned(),
            wanted: "is neither a scan nor a result folder",
        });
    }
    Ok(check(repeat)?)
}

fn named(path: &Path) -> String {
    let name = path.file_name().unwrap_or_default();
    name.to_string_lossy().into_owned()
}

/// What is in a folder, by name.
fn entries(folder: &Path) -> Result<Vec<PathBuf>, GaugeError> {
    let unreadable = |source| GaugeError::Unreadable {
        path: folder.to_owned(),
        source,
    };
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(unreadable)? {
        let path = entry.map_err(unreadable)?.path();
        if !named(&path).starts_with('.') {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

/// The folders in a folder, which holds nothing else.
fn folders_in(folder: &Path) -> Result<Vec<PathBuf>, GaugeError> {
    let found = entries(folder)?;
    match found.iter().find(|path| !path.is_dir()) {
        Some(path) => Err(GaugeError::Layout {
            path: path.clone(),
            wanted: "is a file where a folder is wanted",
        }),
        None => Ok(found),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::assemble;
    use crate::testing::checked_with_border;
    use crate::write_all;

    #[test]
    fn every_figure_of_kept_results_is_studied() {
        let folder = tempfile::tempdir().unwrap();
        let checked = checked_with_border();
        for (number, place) in [
            "A/1/1", "A/1/2", "A/2/1", "A/2/2", "B/1/1", "B/1/2", "B/2/1", "B/2/2",
        ]
        .into_iter()
        .enumerate()
        {
            let mut result = assemble(&checked);
            let border = result.impressions[0].border.as_mut().unwrap();
            border.length_mm += 0.1 * number as f64;
            result.files.clear();
            write_all(&checked, &result, &folder.path().join(place)).unwrap();
        }
        let none =
            |_: &Path| -> Result<CaseResult, CheckError> { unreachable!("no scan is there") };
        let found = gauge_of_folder(folder.path(), none).unwrap();
        let length = (found.studies.iter()).find(|s| s.figure == "border length");
        // 100.0, .1 | .2, .3 | .4, .5 | .6, .7: repeats differ by 0.1 everywhere.
        let repeats = &length.unwrap().analysis[3];
        assert!((repeats.sum_of_squares - 4.0 * 0.1 * 0.1 / 2.0).abs() < 1e-9);
        assert_eq!(length.unwrap().unit, Some("mm"));
        let same = (found.not_studied.iter()).find(|n| n.figure == "scanned area");
        assert!(same.unwrap().why.contains("every reading is the same"));

        std::fs::write(folder.path().join("A/1/notes.txt"), "x").unwrap();
        let told = gauge_of_folder(folder.path(), none)
            .unwrap_err()
            .to_string();
        assert!(told.contains("notes.txt: is neither a scan"), "{told}");
        std::fs::remove_file(folder.path().join("A/1/notes.txt")).unwrap();
        std::fs::remove_dir_all(folder.path().join("B/2/2")).unwrap();
        let told = gauge_of_folder(folder.path(), none)
            .unwrap_err()
            .to_string();
        assert!(told.contains("\"B\" read part \"2\" 1 times"), "{told}");
    }
}
