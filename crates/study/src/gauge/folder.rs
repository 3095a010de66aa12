//! Readings from folders: OPERATOR/PART/REPEAT, each repeat a scan or the folder
//! of its result.

use super::error::{GaugeError, no_study};
use super::figure_study::{FigureStudy, GaugeStudy, NotStudied};
use crate::figure::{FigureLimits, NamedFigure};
use messages::{Message, message};
use statistics::gauge::{Reading, StudyError};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// Works out a crossed gauge study of every figure of results that are kept as
/// OPERATOR/PART/REPEAT. A repeat is a result folder or a scan: `read` gives its
/// figures, and `None` where it is neither. Names that begin with a dot are
/// passed over.
///
/// # Errors
/// When the folders hold something else, a repeat cannot be read, or not every operator read every part equally often.
pub fn study_of_folder(
    folder: &Path,
    mut read: impl FnMut(&Path) -> Result<Option<Vec<NamedFigure>>, Message>,
) -> Result<GaugeStudy, GaugeError> {
    let mut all = Vec::new();
    for operator in folders_in(folder)? {
        for part in folders_in(&operator)? {
            for repeat in entries(&part)? {
                let figures = figures_of(&repeat, &mut read)?;
                all.push(([&operator, &part].map(|p| named(p)), figures));
            }
        }
    }
    let mut by_name: BTreeMap<&str, (&'static str, FigureLimits, Vec<Reading>)> = BTreeMap::new();
    for ([operator, part], figures) in &all {
        for figure in figures {
            let entry = by_name.entry(&figure.name);
            let (_, limits, readings) = entry.or_insert((figure.unit, figure.limits, Vec::new()));
            if *limits != figure.limits {
                *limits = FigureLimits::default();
            }
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
    for (name, (unit, limits, readings)) in &by_name {
        let lacking = all.len() - readings.len();
        let why = if lacking > 0 {
            message!("gauge-lacking", lacking = lacking, all = all.len())
        } else {
            match FigureStudy::of(name, Some(unit), readings) {
                Ok(study) => {
                    let limits = *limits;
                    studies.push(FigureStudy { limits, ..study });
                    continue;
                }
                Err(same @ StudyError::NoVariation) => no_study(&same),
                Err(other) => return Err(wrong(other)),
            }
        };
        let figure = (*name).to_owned();
        not_studied.push(NotStudied { figure, why });
    }
    if all.is_empty() {
        return Err(wrong(StudyError::TooSmall));
    }
    Ok(GaugeStudy {
        studies,
        not_studied,
    })
}

/// The figures of a repeat.
fn figures_of(
    repeat: &Path,
    read: &mut impl FnMut(&Path) -> Result<Option<Vec<NamedFigure>>, Message>,
) -> Result<Vec<NamedFigure>, GaugeError> {
    let figures = read(repeat).map_err(GaugeError::Repeat)?;
    figures.ok_or_else(|| GaugeError::NoRepeat(repeat.to_owned()))
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
        Some(path) => Err(GaugeError::FileForFolder(path.clone())),
        None => Ok(found),
    }
}
