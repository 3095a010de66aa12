//! `archproof repeat`.

use super::check::whereabouts;
use crate::command_line::RepeatArguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::progress::Progress;
use crate::terminal::say;
use report::json_text;
use report::repeat::{compare_repeats, repeat_text};

pub fn run(arguments: &RepeatArguments) -> Result<(), Failure> {
    let progress = Progress::start();
    let mut checked = Vec::new();
    for scan in &arguments.scans {
        let source = arguments.how.source(scan);
        checked.push(source.check(source.case()?, &|step| progress.show(step))?);
    }
    let repeats = compare_repeats(&checked)?;
    let files = uninterrupted(|| repeats.write(&arguments.out))?;
    drop(progress);
    if arguments.json {
        say(&json_text(&repeats.result))?;
    } else {
        say(&(repeat_text(&repeats.result) + &whereabouts(&arguments.out, &files)))?;
    }
    Ok(())
}
