//! Printing: results to standard output, complaints to standard error.

use std::fmt::Display;
use std::io::{self, ErrorKind, Write};

/// Prints a text, without its colours where the output is no terminal or
/// NO_COLOR is set. A reader that has gone away is no failure.
pub fn say(text: &str) -> io::Result<()> {
    let mut out = anstream::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() == ErrorKind::BrokenPipe => Ok(()),
        other => other,
    }
}

/// A text on standard error, beside the result. There is nobody left to tell if
/// that fails.
pub fn note(text: &str) {
    let _ = io::stderr().lock().write_all(text.as_bytes());
}

/// One line on standard error. There is nobody left to tell if that fails.
pub fn complain(what: &dyn Display) {
    let _ = writeln!(io::stderr().lock(), "archproof: {what}");
}
