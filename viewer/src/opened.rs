//! What the window shows: the result of a case with its impressions in the
//! shown frame. Opened from a result folder, or from a case or a bare scan
//! that is checked first; both ways end with the same.

use crate::placement::Placement;
use arguments::Source;
use check::reader::refused;
use check::{CheckError, CheckedCase, Clock};
use judge::{Case, CaseError, Stage, system_says};
use measure::TrayRegistration;
use mesh::read::shown_path;
use mesh::{Mesh, SpatialIndex, Unit};
use messages::{Language, Message, message, text};
use nalgebra::{Point3, Vector3};
use rayon::prelude::*;
use report::result::{Arch, CaseResult, ImpressionResult, OutputFile};
use report::{
    FiguredMesh, ReadResultError, ReadSurfaceError, WriteError, default_folder, folder_without_case,
};
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::path::{Path, PathBuf};
use std::time::SystemTime;
use thiserror::Error;

/// Why something could not be opened; its text is one line for people, the
/// same as the command's.
#[derive(Debug, Error)]
pub enum OpenError {
    /// The case could not be checked.
    #[error(transparent)]
    Check(#[from] CheckError),
    /// The results could not be written.
    #[error(transparent)]
    Write(#[from] WriteError),
    /// No result.
    #[error(transparent)]
    Result(#[from] ReadResultError),
    /// No surface.
    #[error(transparent)]
    Surface(#[from] ReadSurfaceError),
    /// Nobody waits for it any more.
    #[error("{}", self.message())]
    Cancelled,
}

impl OpenError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Check(error) => error.message(),
            Self::Write(error) => error.message(),
            Self::Result(error) => error.message(),
            Self::Surface(ReadSurfaceError::Scan(error)) => refused(error),
            Self::Surface(ReadSurfaceError::Io { path, source }) => message!(
                "drawing-unreadable",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::Surface(ReadSurfaceError::NotOurs { path }) => {
                message!("surface-of-another", path = shown_path(path))
            }
            Self::Cancelled => message!("opening-cancelled"),
        }
    }
}

/// A case with everything that is shown of it.
pub struct Opened {
    /// What was found out.
    pub result: CaseResult,
    /// Where the result lies, and where ticks and landmarks are saved.
    pub folder: PathBuf,
    /// The language that it is shown in.
    pub language: Language,
    /// Each impression of the result, in its order.
    pub impressions: Vec<Shown>,
}

/// An impression in the shown frame.
pub struct Shown {
    /// Its surface, mm; empty where there is none to show.
    pub surface: Mesh,
    /// Outward normal at each vertex.
    pub normals: Vec<Vector3<f64>>,
    /// By name, a figure for each vertex; `None` where it is not known.
    pub figures: BTreeMap<String, Vec<Option<f32>>>,
    /// Where it lies.
    pub placement: Placement,
    /// For rays.
    pub index: SpatialIndex,
    /// The registered tray; result folders hold none.
    pub tray: Option<Mesh>,
}

impl Shown {
    /// An impression whose mesh (scan coordinates, mm) has these figures.
    fn new(
        of: &ImpressionResult,
        mesh: &Mesh,
        figures: BTreeMap<String, Vec<Option<f32>>>,
    ) -> Self {
        let in_mm = in_mm(of);
        let centre = mesh
            .bounds()
            .map_or_else(Point3::origin, |(low, high)| nalgebra::center(&low, &high));
        let placement = of
            .frame
            .as_ref()
            .and_then(|frame| Placement::of_frame(frame, in_mm))
            .unwrap_or_else(|| Placement::unturned(centre, in_mm));
        let surface = mesh.moved(placement.shown_from_scan());
        let (normals, index) =
            rayon::join(|| surface.vertex_normals(), || SpatialIndex::new(&surface));
        Self {
            normals,
            index,
            surface,
            figures,
            placement,
            tray: None,
        }
    }

    /// A figure at each vertex that is the number of something; as many `None`
    /// as vertices where there is no such figure.
    pub fn numbers(&self, name: &str) -> impl Iterator<Item = Option<usize>> {
        let numbers = self.figures.get(name);
        (0..self.surface.vertices().len())
            .map(move |vertex| Some((*numbers?.get(vertex)?)? as usize))
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
        self.surface.bounds().unwrap_or_else(Self::nowhere)
    }

    /// The box that is looked at where there is nothing.
    pub(crate) fn nowhere() -> (Point3<f64>, Point3<f64>) {
        (
            Point3::new(-30.0, -30.0, -10.0),
            Point3::new(30.0, 30.0, 10.0),
        )
    }
}

/// Opens a result folder, or checks a case or a scan and opens what came of
/// it; `progress` is told each step.
///
/// # Errors
/// When it cannot be read, checked or written.
pub fn open(source: &Source, progress: &(dyn Fn(String) + Sync)) -> Result<Opened, OpenError> {
    open_unless(source, progress, &|| false)
}

/// What unwinds a check that nobody waits for any more.
struct Cancelled;

/// As [`open`]; whether it is cancelled is looked at before each step and before
/// each file of the results is made. Then nothing is written.
///
/// The steps lie several libraries deep, on many threads: the check is left by
/// unwinding, which holds nothing back and leaves every library as it is.
///
/// # Errors
/// As [`open`], and when it was cancelled.
pub fn open_unless(
    source: &Source,
    progress: &(dyn Fn(String) + Sync),
    is_cancelled: &(dyn Fn() -> bool + Sync),
) -> Result<Opened, OpenError> {
    let look = || {
        if is_cancelled() {
            resume_unwind(Box::new(Cancelled));
        }
    };
    // Nothing that a cancelled check has changed outlives it.
    let opened = catch_unwind(AssertUnwindSafe(|| open_watched(source, progress, &look)));
    opened.unwrap_or_else(|thrown| match thrown.downcast::<Cancelled>() {
        Ok(_) => Err(OpenError::Cancelled),
        Err(panic) => resume_unwind(panic),
    })
}

fn open_watched(
    source: &Source,
    progress: &(dyn Fn(String) + Sync),
    look: &(dyn Fn() + Sync),
) -> Result<Opened, OpenError> {
    let progress = |step: String| {
        look();
        progress(step);
    };
    let language = source.language();
    if source.input.is_dir() {
        progress(text!(language, "opening-result"));
        let result = report::read_result(&source.input)?;
        return read(result, source.input.clone(), None, language);
    }
    let mut case = source.case()?;
    let is_named = source.case.is_some() || source.is_case_file();
    let of_case = is_named.then(|| default_folder(&case.id));
    let known = source.out.clone().or(of_case);
    if let Some(folder) = &known {
        add_marks(&mut case, folder).map_err(CheckError::from)?;
    }
    let clock = Clock::start();
    let checked = source.check(case, &|step| {
        if clock.begin(step) {
            progress(step.message().text(language));
        } else {
            look();
        }
    })?;
    let folder = known.unwrap_or_else(|| {
        let sum = checked
            .impressions
            .first()
            .map(|one| one.scan.sha256.as_str());
        folder_without_case(SystemTime::now(), sum.unwrap_or_default())
    });
    let mut result = CaseResult::of(&checked);
    report::add_return_note(&mut result);
    progress(text!(language, "opening-writing"));
    report::write_all_watched(&checked, &result, &folder, language, look)?;
    read(result, folder, Some(&checked), language)
}

/// Reads what is shown of a result from its folder; trays, and scans that show
/// no impression, are had only where the case was checked just now.
fn read(
    result: CaseResult,
    folder: PathBuf,
    checked: Option<&CheckedCase>,
    language: Language,
) -> Result<Opened, OpenError> {
    let numbers: Vec<usize> = (0..result.impressions.len()).collect();
    let impressions = numbers
        .into_par_iter()
        .map(|number| {
            let of = &result.impressions[number];
            let FiguredMesh { mesh, figures } = figured(&result, number, &folder)?;
            let one = checked.map(|checked| &checked.impressions[number]);
            let shown = match one.filter(|_| mesh.vertices().is_empty()) {
                Some(one) => Shown::new(of, &one.scan.mesh, figures),
                None => Shown::new(of, &mesh.scaled(in_mm(of)), figures),
            };
            let tray = one.and_then(|one| {
                Some((
                    one.tray.as_ref()?,
                    one.measured()?.cover.as_ref().ok()?.registration.as_ref()?,
                ))
            });
            Ok(match tray {
                Some((tray, registration)) => shown.with_tray(&tray.mesh, registration),
                None => shown,
            })
        })
        .collect::<Result<_, OpenError>>()?;
    Ok(Opened {
        result,
        folder,
        language,
        impressions,
    })
}

/// The mesh of an impression, in the numbers of its scan file, with the figures
/// of every file of the result that holds this mesh; empty where none does.
fn figured(result: &CaseResult, number: usize, folder: &Path) -> Result<FiguredMesh, OpenError> {
    let mut whole = FiguredMesh::default();
    let surface = result.impressions[number].surface.as_ref();
    let is_surface = |file: &&OutputFile| Some(&file.file) == surface.map(|s| &s.file);
    let of_impression = || {
        let files = result.files.iter();
        files.filter(|f| f.impression == Some(number as u64) && f.file.ends_with(".ply"))
    };
    let first = of_impression().filter(is_surface);
    for file in first.chain(of_impression().filter(|file| !is_surface(file))) {
        let read = report::read_surface(&folder.join(&file.file))?;
        if whole.mesh.vertices().is_empty() {
            whole.mesh = read.mesh;
        } else if whole.mesh.vertices().len() != read.mesh.vertices().len() {
            continue;
        }
        whole.figures.extend(read.figures);
    }
    Ok(whole)
}

/// Length of the unit of an impression's scan file, mm.
fn in_mm(of: &ImpressionResult) -> f64 {
    of.scan.unit.parse::<Unit>().map_or(1.0, Unit::in_mm)
}

/// Landmarks that were marked in the window count when the case is checked
/// again, where the case itself names none.
fn add_marks(case: &mut Case, folder: &Path) -> Result<(), CaseError> {
    let several = case.impressions.len() > 1;
    for input in case.impressions.iter_mut().filter(|i| i.marks.is_empty()) {
        let arch = input.declared.map(Arch::from);
        let file = folder.join(marks_file(several.then_some((arch, input.stage))));
        if file.exists() {
            let marked = judge::read_landmarks(&file, input.declared)?;
            input.marks = marked.marks;
            input.marks_sha256 = marked.scan_sha256;
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
