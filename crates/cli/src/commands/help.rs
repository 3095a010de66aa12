//! `archproof help`: of a command, or a page on a topic.

use crate::command_line::Arguments;
use crate::failure::Failure;
use crate::interrupt::uninterrupted;
use crate::terminal::say;
use clap::CommandFactory;
use mesh::read::shown_path;
use mesh::write::write_atomically;
use messages::{Language, text};
use report::scanning_page;
use std::fmt::Write;
use std::path::Path;

const SCANNING: &str = include_str!("../pages/scanning.md");

/// The pages, by topic; each begins with its topic and what it is about.
const PAGES: [(&str, &str); 10] = [
    ("start", include_str!("../pages/start.md")),
    ("scanning", SCANNING),
    ("case-file", include_str!("../pages/case-file.md")),
    ("files", include_str!("../pages/files.md")),
    (
        "border-moulding",
        include_str!("../pages/border-moulding.md"),
    ),
    ("window", include_str!("../pages/window.md")),
    ("batch", include_str!("../pages/batch.md")),
    ("queue", include_str!("../pages/queue.md")),
    ("measuring", include_str!("../pages/measuring.md")),
    ("accuracy", include_str!("../pages/accuracy.md")),
];

/// Prints the help of a command, and the page of a topic where there is one of that name.
pub fn run(of: &[String], html: Option<&Path>, language: Language) -> Result<(), Failure> {
    if let Some(file) = html {
        return match of {
            [topic] if topic == "scanning" => write(file),
            _ => Err(Failure::NoDrawings),
        };
    }
    let mut command = Arguments::command();
    command.build();
    let found = of.iter().try_fold(&mut command, |within, name| {
        within.find_subcommand_mut(name)
    });
    let help = found.map(|command| command.render_long_help().to_string());
    let page = match of {
        [topic] => PAGES.iter().find(|(name, _)| name == topic),
        _ => None,
    };
    let text = match (help, page) {
        (Some(help), Some((_, page))) => format!("{help}\n{page}"),
        (Some(help), None) if of.is_empty() => format!("{help}\n{}", topics()),
        (Some(help), None) => help,
        (None, Some((_, page))) => (*page).to_owned(),
        (None, None) => return Err(Failure::Topic(of.join(" ").escape_debug().to_string())),
    };
    say(&format!("{}{text}", in_english_only(language)))?;
    Ok(())
}

/// Says that what follows is in English, where another language was asked for.
fn in_english_only(language: Language) -> String {
    match language {
        Language::English => String::new(),
        other => text!(other, "page-in-english") + "\n\n",
    }
}

/// Writes the page on scanning with its drawings.
fn write(file: &Path) -> Result<(), Failure> {
    let page = scanning_page(SCANNING);
    uninterrupted(|| write_atomically(file, |out| out.write_all(page.as_bytes())))?;
    say(&format!("Written: {}\n", shown_path(file)))?;
    Ok(())
}

/// The topics with what each is about.
fn topics() -> String {
    let mut text = String::from("Topics ('archproof help TOPIC'):\n");
    for (_, page) in PAGES {
        let head = page.lines().next().unwrap_or_default();
        if let Some((topic, about)) = head.trim_start_matches("# ").split_once(": ") {
            // Writing to a String cannot fail.
            let _ = writeln!(text, "  {topic:<15}  {about}");
        }
    }
    text
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may panic")]
mod tests {
    use super::*;
    use judge::words::{ZONES, movement, zone};
    use measure::Arch;

    #[test]
    fn every_page_begins_with_its_topic() {
        for (topic, page) in PAGES {
            assert!(page.starts_with(&format!("# {topic}: ")), "{topic}");
        }
        assert_eq!(topics().lines().count(), 1 + PAGES.len());
    }

    #[test]
    fn the_page_on_scanning_has_a_drawing_to_each_section_and_states_the_limit() {
        let page = scanning_page(SCANNING);
        let sections = SCANNING.matches("\n## ").count();
        // The last says how to name files.
        assert_eq!(page.matches("<svg").count(), sections - 1);
        let limit = judge::Protocol::default().value(judge::LimitKey::MedianEdge);
        assert!(SCANNING.contains(&format!("Above a median edge of {limit} mm")));
    }

    #[test]
    fn the_page_on_border_moulding_lists_the_movements_of_instructions() {
        let (_, page) = PAGES
            .iter()
            .find(|(topic, _)| *topic == "border-moulding")
            .unwrap();
        let (upper, lower) = page.split_once("| lower jaw |").unwrap();
        for (arch, part) in [(Arch::Maxillary, upper), (Arch::Mandibular, lower)] {
            for of in ZONES {
                // Zones that are not named there lie within the border.
                let row = part
                    .lines()
                    .find(|line| line.starts_with('|') && line.contains(zone(of)));
                if let Some((row, movement)) = row.zip(movement(arch, of)) {
                    assert!(row.contains(&movement.to_string()), "{row}: {movement}");
                }
            }
        }
    }
}
