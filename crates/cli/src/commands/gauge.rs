//! `archproof gauge`.

use crate::command_line::GaugeArguments;
use crate::failure::Failure;
use crate::progress::Progress;
use crate::terminal::say;
use report::gauge::{gauge_of_folder, gauge_of_table, gauge_text};
use report::json_text;
use report::result::assemble;

pub fn run(arguments: &GaugeArguments) -> Result<(), Failure> {
    let progress = Progress::start();
    let result = if arguments.study.is_dir() {
        gauge_of_folder(&arguments.study, |scan| {
            let source = arguments.scans.source(scan);
            let checked = source.check(source.case()?, &|step| progress.show(step))?;
            Ok(assemble(&checked))
        })?
    } else {
        gauge_of_table(&arguments.study)?
    };
    drop(progress);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&gauge_text(&result))?;
    }
    Ok(())
}
