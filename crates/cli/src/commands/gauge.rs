//! `archproof gauge`.

use crate::command_line::{GaugeArguments, ScanArguments};
use crate::failure::Failure;
use crate::progress::Progress;
use crate::terminal::say;
use check::proposal::is_scan;
use messages::Message;
use report::result::CaseResult;
use report::{GaugeResult, comparable_figures, gauge_text, json_text, kept_figures};
use std::path::Path;
use study::gauge::{study_of_folder, study_of_table};
use study::{FigureLimits, NamedFigure};

pub fn run(arguments: &GaugeArguments) -> Result<(), Failure> {
    let language = arguments.spoken.language();
    let progress = Progress::start(language);
    let study = if arguments.study.is_dir() {
        study_of_folder(&arguments.study, |repeat| {
            figures(repeat, &arguments.scans, &progress)
        })?
    } else {
        let mut study = study_of_table(&arguments.study)?;
        let (least, most) = (arguments.least, arguments.most);
        for one in &mut study.studies {
            one.limits = FigureLimits { least, most };
        }
        study
    };
    let result = GaugeResult::of(&study);
    drop(progress);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&gauge_text(&result, language))?;
    }
    Ok(())
}

/// The figures of a result folder, or of a scan that is checked now; `None` of
/// anything else.
fn figures(
    repeat: &Path,
    how: &ScanArguments,
    progress: &Progress,
) -> Result<Option<Vec<NamedFigure>>, Message> {
    let kept = kept_figures(repeat).map_err(|why| why.message())?;
    if kept.is_some() || !(repeat.is_file() && is_scan(repeat)) {
        return Ok(kept);
    }
    let source = how.source(repeat);
    let case = source.case().map_err(|why| why.message())?;
    let checked = source.check(case, &|step| progress.show(step));
    let checked = checked.map_err(|why| why.message())?;
    Ok(Some(comparable_figures(&CaseResult::of(&checked))))
}
