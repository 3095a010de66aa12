//! `archproof judge`: measured results judged again by other limits.

use crate::command_line::JudgeArguments;
use crate::failure::Failure;
use crate::terminal::say;
use judge::Protocol;
use report::{AgainTally, again_head, again_line, json_line};

pub fn run(arguments: &JudgeArguments) -> Result<(), Failure> {
    let protocol = Protocol::from_file(&arguments.protocol)?;
    let language = arguments.spoken.language();
    let mut tally = AgainTally::default();
    if !arguments.json {
        say(&again_head(protocol.name(), language))?;
    }
    let unread = batch::judge_again(&arguments.dir, &protocol, |folder, again| {
        tally.add(&again);
        if arguments.json {
            say(&json_line(&again))?;
        } else if let Some(line) = again_line(folder, &again, language) {
            say(&line)?;
        }
        Ok::<(), Failure>(())
    })?;
    if !arguments.json {
        say(&tally.text(unread, language))?;
    }
    Ok(())
}
