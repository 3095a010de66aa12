//! `archproof repeat`.

use super::check::whereabouts;
use crate::command_line::RepeatArguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::progress::Progress;
use crate::terminal::say;
use report::result::CaseResult;
use report::{
    KnownRepeatability, RepeatResult, comparable_figures, json_text, repeat_text, write_repeats,
};
use study::repeats::compare;

pub fn run(arguments: &RepeatArguments) -> Result<(), Failure> {
    let known = arguments
        .known
        .as_deref()
        .map(KnownRepeatability::from_file);
    let known = known.transpose()?;
    let language = arguments.spoken.language();
    let progress = Progress::start(language);
    let mut checked = Vec::new();
    for scan in &arguments.scans {
        let source = arguments.how.source(scan);
        checked.push(source.check(source.case()?, &|step| progress.show(step))?);
    }
    let figures: Vec<_> = (checked.iter())
        .map(|checked| comparable_figures(&CaseResult::of(checked)))
        .collect();
    let repeats = compare(&checked, &figures)?;
    let mut result = RepeatResult::of(&repeats);
    if let Some(known) = &known {
        result = result.beside(known);
    }
    let files = uninterrupted(|| write_repeats(&repeats, &result, &arguments.out))?;
    drop(progress);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&(repeat_text(&result, language) + &whereabouts(&arguments.out, &files, language)))?;
    }
    Ok(())
}
