//! `archproof-viewer`: opens the window on a result folder, a case or a scan.

use arguments::Source;
use clap::builder::{OsStringValueParser, TypedValueParser};
use clap::{CommandFactory, Parser};
use clap_mangen::Man;
use messages::Language;
use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use viewer::window::{self, Options};

/// Shows the result of a check on the impression, and flies to each finding
///
/// A case file or a scan is checked first. Keys are shown by H. Without a result, a
/// case or a scan, a desk opens on which scans can be dropped.
#[derive(Debug, Parser)]
#[command(
    name = "archproof-viewer",
    version,
    // Empty where it is not given: options such as the language may be given without it.
    mut_arg("input", |input| input
        .required(false)
        .value_parser(OsStringValueParser::new().map(PathBuf::from))
        .default_value("")
        .hide_default_value(true)
        .value_name("RESULT|CASE|SCAN")
        .help(
            "Result folder of 'archproof check', a case file (case.toml), an impression scan, or \
             a folder of scans; without one, the desk",
        ))
)]
struct Arguments {
    #[command(flatten)]
    source: Option<Source>,
    /// Width and height of the window [default: as it was left]
    #[arg(long, value_name = "WxH", value_parser = size)]
    size: Option<(u32, u32)>,
    /// Print the time to the first frame and the time of frames
    #[arg(long)]
    times: bool,
    /// Print the manual page
    #[arg(long, hide = true)]
    manual: bool,
}

fn size(text: &str) -> Result<(u32, u32), String> {
    let parsed = text
        .split_once('x')
        .and_then(|(w, h)| Some((w.parse().ok()?, h.parse().ok()?)));
    parsed.ok_or_else(|| "write width and height as 1280x800".to_owned())
}

fn main() -> ExitCode {
    let started = std::time::Instant::now();
    let arguments = Arguments::parse();
    if arguments.manual {
        return manual();
    }
    let language = arguments.source.as_ref().and_then(|source| source.language);
    let options = Options {
        source: arguments.source.filter(is_given),
        language,
        size: arguments.size,
        times: arguments.times,
        started,
    };
    match window::run(options) {
        Ok(()) => ExitCode::SUCCESS,
        Err(missing) => {
            let language = language.unwrap_or_else(Language::of_system);
            let missing = missing.message().text(language);
            let _ = writeln!(std::io::stderr(), "error: {missing}");
            ExitCode::from(2)
        }
    }
}

/// Whether there is something to be opened.
fn is_given(source: &Source) -> bool {
    !source.input.as_os_str().is_empty()
}

/// Prints the manual page, for whoever makes a package.
fn manual() -> ExitCode {
    // The empty date is quoted, or the next word would take its place.
    let page = Man::new(Arguments::command())
        .date("\"\"")
        .source(concat!("archproof ", env!("CARGO_PKG_VERSION")));
    match page.render(&mut std::io::stdout()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(_) => ExitCode::from(2),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    #[test]
    fn what_is_given_is_opened_and_without_it_the_desk() {
        let given = |arguments: &[&str]| {
            Arguments::try_parse_from(arguments).map(|all| all.source.filter(is_given))
        };
        assert_eq!(given(&["archproof-viewer"]).ok(), Some(None));
        let german = ["archproof-viewer", "--language", "de"];
        assert_eq!(given(&german).ok(), Some(None));
        let source = Arguments::try_parse_from(german)
            .ok()
            .and_then(|all| all.source);
        let language = source.and_then(|source| source.language);
        assert_eq!(language, Some(Language::German));
        for arguments in [
            &["archproof-viewer", "case.toml"][..],
            &["archproof-viewer", "case.toml", "--language", "de"],
        ] {
            let source = given(arguments).ok().flatten();
            let input = source.as_ref().map(|source| source.input.as_path());
            assert_eq!(input, Some(Path::new("case.toml")), "{arguments:?}");
        }
    }
}
