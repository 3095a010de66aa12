//! Repeated scans of one impression, each checked as a case of its own: how far
//! they lie apart, and how well each figure of their results repeats.

mod spread;

pub use spread::{ApartPlace, Laid, NotComparable, Repeat, RepeatDoesNotFit, Spread, spread};

use crate::figure::NamedFigure;
use check::{CheckedCase, CheckedImpression};
use mesh::read::shown_path;
use messages::{Message, message};
use statistics::repeatability::Repeatability;
use std::collections::BTreeMap;
use std::path::PathBuf;
use thiserror::Error;

/// Why repeated scans cannot be compared; its text is one line for people.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum RepeatError {
    /// One scan repeats nothing.
    TooFew,
    /// A scan does not lie on the first.
    NotComparable {
        /// The scan.
        path: PathBuf,
        /// Why.
        why: RepeatDoesNotFit,
    },
}

impl RepeatError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::TooFew => message!("repeat-too-few"),
            Self::NotComparable { path, why } => {
                message!("of-file", path = shown_path(path), problem = why)
            }
        }
    }
}

/// What repeated scans of one impression came to.
#[derive(Debug)]
pub struct Repeats<'a> {
    /// The first of the scans, on which the others are registered.
    pub first: &'a CheckedImpression,
    /// All of them, in the order in which they were given.
    pub scans: Vec<&'a CheckedImpression>,
    /// How far they lie apart at each place of the first.
    pub spread: Spread,
    /// Repeatability of each figure that every scan has.
    pub figures: Vec<FigureRepeatability>,
    /// Figures that some scan lacks.
    pub not_judged: Vec<NotRepeated>,
}

/// Repeatability of a figure, in the sense of ISO 5725.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureRepeatability {
    /// The figure.
    pub figure: String,
    /// Its unit.
    pub unit: &'static str,
    /// In each scan.
    pub readings: Vec<f64>,
    /// What they say.
    pub repeatability: Repeatability,
}

/// A figure whose repeatability could not be worked out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NotRepeated {
    /// The figure.
    pub figure: String,
    /// Why.
    pub why: Message,
}

/// Compares repeated scans of one impression; `figures` are those of the result
/// of each.
///
/// # Errors
/// When there is one scan alone, or one does not lie on the first.
pub fn compare<'a>(
    checked: &'a [CheckedCase],
    figures: &[Vec<NamedFigure>],
) -> Result<Repeats<'a>, RepeatError> {
    let scans: Vec<&CheckedImpression> =
        checked.iter().flat_map(|case| &case.impressions).collect();
    let [first, _, ..] = scans[..] else {
        return Err(RepeatError::TooFew);
    };
    let meshes: Vec<_> = scans
        .iter()
        .map(|one| one.scanned.figures().outward(&one.scan.mesh))
        .collect();
    let measured: Vec<_> = (meshes.iter().zip(&scans))
        .map(|(mesh, one)| (mesh.as_ref(), &one.scanned))
        .collect();
    let spread = spread(&measured).map_err(|NotComparable { scan, why }| {
        let inputs = checked.iter().flat_map(|case| &case.case.impressions);
        let path = inputs.map(|input| input.scan.clone()).nth(scan);
        RepeatError::NotComparable {
            path: path.unwrap_or_default(),
            why,
        }
    })?;
    let (figures, not_judged) = repeatability(figures);
    Ok(Repeats {
        first,
        scans,
        spread,
        figures,
        not_judged,
    })
}

/// Figures that every scan has, with their repeatability, and the others.
fn repeatability(scans: &[Vec<NamedFigure>]) -> (Vec<FigureRepeatability>, Vec<NotRepeated>) {
    let mut order: Vec<&str> = Vec::new();
    let mut all: BTreeMap<&str, (&'static str, Vec<f64>)> = BTreeMap::new();
    for one in scans.iter().flatten() {
        let (_, readings) = all.entry(&one.name).or_insert_with(|| {
            order.push(&one.name);
            (one.unit, Vec::new())
        });
        readings.push(one.value);
    }
    let (mut found, mut lacking) = (Vec::new(), Vec::new());
    for name in order {
        let (unit, readings) = &all[name];
        match Repeatability::of(readings).filter(|_| readings.len() == scans.len()) {
            Some(repeatability) => found.push(FigureRepeatability {
                figure: name.to_owned(),
                unit,
                readings: readings.clone(),
                repeatability,
            }),
            None => lacking.push(NotRepeated {
                figure: name.to_owned(),
                why: message!(
                    "repeat-some-have-it",
                    have = readings.len(),
                    all = scans.len()
                ),
            }),
        }
    }
    (found, lacking)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_that_not_every_scan_has_are_named() {
        let figure = |name: &str, value| NamedFigure {
            name: name.to_owned(),
            unit: "mm",
            value,
            limits: crate::FigureLimits::default(),
        };
        let whole = vec![figure("cover, median", 2.5), figure("border length", 250.0)];
        let bare = vec![figure("cover, median", 2.6)];
        let (found, lacking) = repeatability(&[whole.clone(), whole, bare]);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].figure, "cover, median");
        assert_eq!(found[0].repeatability.readings, 3);
        assert_eq!(lacking[0].figure, "border length");
        assert_eq!(lacking[0].why.to_string(), "2 of 3 scans have it");
    }
}
