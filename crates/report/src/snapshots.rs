//! What is written, as it was last agreed: one snapshot a format. After a wanted
//! change, run the tests with `INSTA_UPDATE=always` and read the difference.

use crate::files::json::schema_text;
use crate::files::outputs::outputs;
use crate::result::CaseResult;
use crate::testing::{checked_whole, checked_with_spots};
use crate::text::summary::summary;

/// Without what differs from build to build, and with a line for each tag.
fn steady(text: &str) -> String {
    let mut pieces = text.split("base64,");
    let mut steady = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let picture = piece.find('"').unwrap();
        steady += "base64,PICTURE";
        steady += &piece[picture..];
    }
    let version = concat!("archproof ", env!("CARGO_PKG_VERSION"));
    steady
        .replace(version, "archproof VERSION")
        .replace("><", ">\n<")
}

#[test]
fn the_page() {
    let checked = checked_with_spots();
    let files = outputs(&checked, &CaseResult::of(&checked), &|| {}).unwrap();
    let (_, page) = files
        .iter()
        .find(|(name, _)| name == "report.html")
        .unwrap();
    let page = String::from_utf8(page.clone()).unwrap();
    let (before, style) = page.split_once("<style>").unwrap();
    let (_, after) = style.split_once("</style>").unwrap();
    insta::assert_snapshot!(steady(&format!("{before}<style></style>{after}")));
}

#[test]
fn the_summary() {
    insta::assert_snapshot!(escapes_shown(&summary(&CaseResult::of(&checked_whole()))));
}

#[test]
fn the_schema() {
    insta::assert_snapshot!(schema_text::<CaseResult>());
}

/// Escapes of terminal colours in letters that a file can hold.
fn escapes_shown(text: &str) -> String {
    text.replace('\u{1b}', "ESC")
}
