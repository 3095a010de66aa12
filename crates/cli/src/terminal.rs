//! Printing: results to standard output, complaints to standard error.

use messages::{Language, Message, text};
use std::fmt::Display;
use std::io::{self, BufRead, ErrorKind, IsTerminal, Write};

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

/// Whether a person sits at a terminal to answer.
pub fn is_asked_on_terminal() -> bool {
    io::stdin().is_terminal() && io::stdout().is_terminal()
}

/// Asks a question; gives the number of the answer from 0, `None` to leave it open.
pub fn answer(
    question: &Message,
    choices: &[&Message],
    language: Language,
) -> io::Result<Option<usize>> {
    let mut text = format!("\n{}\n", question.text(language));
    for (i, choice) in choices.iter().enumerate() {
        text += &format!("  {}  {}\n", i + 1, choice.text(language));
    }
    say(&text)?;
    loop {
        let asked = text!(language, "choice-number", most = choices.len());
        say(&format!("{asked} "))?;
        let mut line = String::new();
        let is_over = io::stdin().lock().read_line(&mut line)? == 0;
        match line.trim().parse::<usize>() {
            _ if is_over || line.trim().is_empty() => return Ok(None),
            Ok(number) if (1..=choices.len()).contains(&number) => return Ok(Some(number - 1)),
            _ => say(&format!("{}\n", text!(language, "choice-not-listed")))?,
        }
    }
}
