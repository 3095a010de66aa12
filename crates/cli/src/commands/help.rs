//! `archproof help`: of a command, or a page on a topic.

use crate::command_line::{Arguments, in_language};
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::pages::{PAGES, Page};
use crate::terminal::say;
use clap::CommandFactory;
use mesh::read::shown_path;
use mesh::write::write_atomically;
use messages::{Language, text};
use report::scanning_page;
use std::fmt::Write;
use std::path::Path;

/// The topic whose page has drawings.
const DRAWN: &str = "scanning";

/// Prints the help of a command, and the page of a topic where there is one of that name.
pub fn run(of: &[String], html: Option<&Path>, language: Language) -> Result<(), Failure> {
    let page = match of {
        [topic] => Page::on(topic),
        _ => None,
    };
    if let Some(file) = html {
        let drawn = page.filter(|page| page.topic == DRAWN);
        return write(drawn.ok_or(Failure::NoDrawings)?, file, language);
    }
    let help = help(of, language);
    let page = page.map(|page| page.text(language));
    let text = match (help, page) {
        (Some(help), Some(page)) => format!("{help}\n{page}"),
        (Some(help), None) if of.is_empty() => format!("{help}\n{}", topics(language)),
        (Some(help), None) => help,
        (None, Some(page)) => page.to_owned(),
        (None, None) => return Err(Failure::Topic(of.join(" ").escape_debug().to_string())),
    };
    say(&text)?;
    Ok(())
}

/// The help of a command, if there is one of that name.
fn help(of: &[String], language: Language) -> Option<String> {
    let mut command = in_language(Arguments::command(), language);
    command.build();
    let found = of.iter().try_fold(&mut command, |within, name| {
        within.find_subcommand_mut(name)
    });
    found.map(|command| command.render_long_help().to_string())
}

/// Writes a page with its drawings.
fn write(page: &Page, file: &Path, language: Language) -> Result<(), Failure> {
    let page = scanning_page(page.text(language), language);
    uninterrupted(|| write_atomically(file, |out| out.write_all(page.as_bytes())))?;
    say(&format!(
        "{}\n",
        text!(language, "page-written", path = shown_path(file))
    ))?;
    Ok(())
}

/// The topics with what each is about.
fn topics(language: Language) -> String {
    let mut text = text!(language, "help-topics") + "\n";
    for page in &PAGES {
        // Writing to a String cannot fail.
        let _ = writeln!(text, "  {:<15}  {}", page.topic, page.about(language));
    }
    text
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may panic")]
mod tests {
    use super::*;

    #[test]
    fn the_page_on_scanning_has_a_drawing_to_each_section_in_every_language() {
        for language in Language::ALL {
            let text = Page::on(DRAWN).unwrap().text(language);
            let page = scanning_page(text, language);
            let sections = text.matches("\n## ").count();
            // The last says how to name files.
            assert_eq!(page.matches("<svg").count(), sections - 1, "{language}");
            assert!(page.contains(&format!("<html lang=\"{language}\">")));
            assert!(!page.contains('`'), "{language}");
        }
    }

    #[test]
    fn topics_are_listed_in_every_language() {
        for language in Language::ALL {
            let list = topics(language);
            assert_eq!(list.lines().count(), 1 + PAGES.len(), "{list}");
        }
    }
}
