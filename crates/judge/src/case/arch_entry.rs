//! What a case file says of one jaw: its scans, its tray, and what goes with them.

use super::fault::{CaseFault, CaseProblem};
use super::tray::{BadThickness, colour_from_hex, thickness};
use super::{ImpressionInput, Material, Stage};
use crate::located;
use measure::Arch;
use nalgebra::Point3;
use serde::Deserialize;
use std::path::{Path, PathBuf};
use toml::Spanned;

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
pub(super) struct ArchEntry {
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

impl ArchEntry {
    /// The landmarks file of each scan that is named, in the order of the stages.
    pub(super) fn landmarks_files(&self, folder: &Path) -> Vec<Option<PathBuf>> {
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
    pub(super) fn is_contradictory(&self) -> bool {
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

    /// The impressions that are named, in the order of the stages.
    pub(super) fn impressions(
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
