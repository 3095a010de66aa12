//! `archproof explain`.

use crate::failure::Failure;
use crate::terminal::say;
use judge::Check;

pub fn run(code: Option<&str>) -> Result<(), Failure> {
    match code {
        Some(code) => say(code.parse::<Check>()?.page())?,
        None => {
            let mut codes: String = Check::ALL
                .map(|check| format!("{:<21} {}\n", check.code(), check.gist()))
                .concat();
            codes.push_str("\n'archproof explain CODE' prints the page of a check.\n");
            say(&codes)?;
        }
    }
    Ok(())
}
