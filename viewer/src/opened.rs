//! What the window shows: the result of a case with its impressions in the
//! shown frame. Opened from a result folder, or from a case or a bare scan
//! that is checked first; both ways end with the same.

use crate::placement::Placement;
use judge::{Case, CaseError, ImpressionInput, Protocol, ProtocolError, Stage};
use measure::TrayRegistration;
use mesh::{Mesh, MeshError, ReadError, SpatialIndex, Unit};
use nalgebra::{Point3, Vector3};
use report::result::{Arch, CaseResult, FileKind, ImpressionResult};
use report::{CheckOptions, ReadMapError, ReadResultError, WriteError};
use std::path::{Path, PathBuf};
use thiserror::Error;

/// What is to be opened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// A result folder, a case file or a scan.
    pub path: PathBuf,
    /// Folder for the results of a check; `archproof-CASE` if none is given.
    pub out: Option<PathBuf>,
    /// Protocol file with acceptance limits of one's own.
    pub protocol: Option<PathBuf>,
}

/// Why something could not be opened; its text is one line for people, the
/// same as the command's.
#[derive(Debug, Error)]
pub enum OpenError {
    /// No result.
    #[error(transparent)]
    Result(#[from] ReadResultError),
    /// No cover map.
    #[error(transparent)]
    Map(#[from] ReadMapError),
    /// No scan.
    #[error(transparent)]
    Scan(#[from] ReadError),
    /// No case.
    #[error(transparent)]
    Case(#[from] CaseError),
    /// No protocol.
    #[error(transparent)]
    Protocol(#[from] ProtocolError),
    /// Results could not be written.
    #[error(transparent)]
    Write(#[from] WriteError),
    /// Colours and vertices do not belong together.
    #[error(transparent)]
    Mesh(#[from] MeshError),
}

/// A case with everything that is shown of it.
pub struct Opened {
    /// What was found out.
    pub result: CaseResult,
    /// Where the result lies, and where ticks and landmarks are saved.
    pub folder: PathBuf,
    /// Each impression of the result, in its order.
    pub impressions: Vec<Shown>,
}

/// An impression in the shown frame.
pub struct Shown {
    /// Its surface, mm; empty where the result folder holds none.
    pub surface: Mesh,
    /// Outward normal at each vertex.
    pub normals: Vec<Vector3<f64>>,
    /// Cover at each vertex, mm.
    pub cover_mm: Vec<Option<f32>>,
    /// Where it lies.
    pub placement: Placement,
    /// For rays.
    pub index: SpatialIndex,
    /// The registered tray; result folders hold none.
    pub tray: Option<Mesh>,
}

impl Shown {
    /// An impression whose mesh (scan coordinates, mm) has this cover.
    fn new(of: &ImpressionResult, mesh: &Mesh, cover_mm: Vec<Option<f32>>) -> Self {
        let in_mm = of.scan.unit.parse::<Unit>().map_or(1.0, Unit::in_mm);
        let centre = mesh
            .bounds()
            .map_or_else(Point3::origin, |(low, high)| nalgebra::center(&low, &high));
        let placement = of
            .frame
            .as_ref()
            .and_then(|frame| Placement::of_frame(frame, in_mm))
            .unwrap_or_else(|| Placement::unturned(centre, in_mm));
        let surface = mesh.moved(placement.shown_from_scan());
        Self {
            normals: surface.vertex_normals(),
            index: SpatialIndex::new(&surface),
            surface,
            cover_mm,
            placement,
            tray: None,
        }
    }

    /// With a tray scan (mm) laid where it was registered.
    fn with_tray(mut self, tray: &Mesh, registration: &TrayRegistration) -> Self {
        let to_shown = self.placement.shown_from_scan() * registration.impression_from_tray;
        self.tray = Some(tray.moved(&to_shown));
        self
    }

    /// Corners of the box around it, shown frame, mm.
    #[must_use]
    pub fn bounds(&self) -> (Point3<f64>, Point3<f64>) {
        self.surface.bounds().unwrap_or((
            Point3::new(-30.0, -30.0, -10.0),
            Point3::new(30.0, 30.0, 10.0),
        ))
    }
}

/// Opens a result folder, or checks a case or a scan and opens what came of
/// it; `progress` is told each step.
///
/// # Errors
/// When it cannot be read, checked or written.
pub fn open(source: &Source, progress: &(dyn Fn(String) + Sync)) -> Result<Opened, OpenError> {
    if source.path.is_dir() {
        progress("reading the result".to_owned());
        return open_folder(&source.path);
    }
    let is_case = source
        .path
        .extension()
        .is_some_and(|ending| ending.eq_ignore_ascii_case("toml"));
    let mut case = if is_case {
        Case::from_file(&source.path)?
    } else {
        // Never named after the file, whose name may be the patient's.
        Case::of_one(
            "unnamed",
            ImpressionInput {
                declared: None,
                stage: Stage::Single,
                scan: source.path.clone(),
                tray: None,
                stops: Vec::new(),
                marks: Vec::new(),
            },
        )
    };
    let protocol = match &source.protocol {
        Some(file) => Protocol::from_file(file)?,
        None => Protocol::default(),
    };
    let folder = source
        .out
        .clone()
        .unwrap_or_else(|| report::default_folder(&case.id));
    add_marks(&mut case, &folder)?;
    let options = CheckOptions {
        unit: None,
        protocol,
    };
    let checked = report::check_case(case, &options, &|step| progress(step.to_string()))?;
    let result = report::result::assemble(&checked);
    progress("writing the results".to_owned());
    report::write_all(&checked, &result, &folder)?;
    let impressions = result
        .impressions
        .iter()
        .zip(&checked.impressions)
        .map(|(of, one)| {
            let mesh = &one.scan.mesh;
            let Ok(cover) = &one.measurement.cover else {
                return Shown::new(of, mesh, vec![None; mesh.vertices().len()]);
            };
            let single = |mm: &Option<f64>| mm.map(|mm| mm as f32);
            let shown = Shown::new(of, mesh, cover.at_vertex_mm.iter().map(single).collect());
            match &one.tray {
                Some(tray) => shown.with_tray(&tray.mesh, &cover.registration),
                None => shown,
            }
        })
        .collect();
    Ok(Opened {
        result,
        folder,
        impressions,
    })
}

/// Landmarks that were marked in the window count when the case is checked
/// again, where the case itself names none.
fn add_marks(case: &mut Case, folder: &Path) -> Result<(), CaseError> {
    let several = case.impressions.len() > 1;
    for input in case.impressions.iter_mut().filter(|i| i.marks.is_empty()) {
        let arch = input.declared.map(Arch::from);
        let file = folder.join(marks_file(several.then_some((arch, input.stage))));
        if file.exists() {
            input.marks = judge::read_landmarks(&file, input.declared)?;
        }
    }
    Ok(())
}

/// Name of the file with the landmarks of an impression: told by jaw and stage
/// where there are several.
#[must_use]
pub fn marks_file(of_several: Option<(Option<Arch>, Stage)>) -> String {
    let Some((arch, stage)) = of_several else {
        return "landmarks.toml".to_owned();
    };
    let jaw = match arch {
        Some(Arch::Maxillary) => "maxillary-",
        Some(Arch::Mandibular) => "mandibular-",
        None => "",
    };
    format!("landmarks-{jaw}{}.toml", stage.name().replace('_', "-"))
}

fn open_folder(folder: &Path) -> Result<Opened, OpenError> {
    let result = report::read_result(folder)?;
    let impressions = result
        .impressions
        .iter()
        .enumerate()
        .map(|(number, of)| {
            let map = result.files.iter().find(|file| {
                file.kind == FileKind::CoverMap && file.impression == Some(number as u64)
            });
            let Some(map) = map else {
                let empty = Mesh::new(Vec::new(), Vec::new(), None)?;
                return Ok(Shown::new(of, &empty, Vec::new()));
            };
            let read = report::read_cover_map(&folder.join(&map.file))?;
            let in_mm = of.scan.unit.parse::<Unit>().map_or(1.0, Unit::in_mm);
            Ok(Shown::new(of, &read.mesh.scaled(in_mm), read.cover_mm))
        })
        .collect::<Result<_, OpenError>>()?;
    Ok(Opened {
        result,
        folder: folder.to_owned(),
        impressions,
    })
}
