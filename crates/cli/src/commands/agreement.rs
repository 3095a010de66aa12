//! `archproof agreement`.

use crate::command_line::AgreementArguments;
use crate::failure::Failure;
use crate::terminal::say;
use report::{AgreementResult, agreement_text, json_text};
use study::agreement::agreement_of;

pub fn run(arguments: &AgreementArguments) -> Result<(), Failure> {
    let study = agreement_of(&arguments.verdicts, arguments.beside.as_deref())?;
    let result = AgreementResult::of(&study);
    if arguments.json {
        say(&json_text(&result))?;
    } else {
        say(&agreement_text(&result, arguments.spoken.language()))?;
    }
    Ok(())
}
