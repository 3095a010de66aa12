//! What is written, as it was last agreed: one snapshot a format. After a wanted
//! change, run the tests with `INSTA_UPDATE=always` and read the difference.

use crate::files::json::schema_text;
use crate::files::outputs::outputs;
use crate::result::CaseResult;
use crate::testing::{checked_whole, checked_with_spots};
use crate::text::summary::summary;
use messages::Language;

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

/// A policy without the checksums of style and script.
fn without_checksums(page: &str) -> String {
    let mut pieces = page.split("sha256-");
    let mut rest = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        rest += "CHECKSUM";
        rest += piece.trim_start_matches(|c: char| c.is_ascii_alphanumeric() || "+/=".contains(c));
    }
    rest
}

#[test]
fn the_page() {
    let checked = checked_with_spots();
    let files = outputs(
        &checked,
        &CaseResult::of(&checked),
        Language::English,
        &|| {},
    )
    .unwrap();
    let (_, page) = files
        .iter()
        .find(|(name, _)| name == "report.html")
        .unwrap();
    let page = String::from_utf8(page.clone()).unwrap();
    let (before, style) = page.split_once("<style>").unwrap();
    let (_, after) = style.split_once("</style>").unwrap();
    // The scripts are read in their own files, and packed surfaces by nobody.
    let (after, script) = after.rsplit_once("<script>").unwrap();
    let (_, end) = script.split_once("</script>").unwrap();
    let (after, surface) = after
        .split_once("application/octet-stream\" id=\"surface-1\">")
        .unwrap();
    let (_, scene) = surface.split_once('<').unwrap();
    let before = without_checksums(before);
    let page = format!(
        "{before}<style></style>{after}application/octet-stream\"><{scene}<script></script>{end}"
    );
    insta::assert_snapshot!(steady(&page));
}

#[test]
fn the_summary() {
    insta::assert_snapshot!(escapes_shown(&summary(
        &CaseResult::of(&checked_whole()),
        Language::English
    )));
}

#[test]
fn the_schema() {
    insta::assert_snapshot!(schema_text::<CaseResult>());
}

/// Escapes of terminal colours in letters that a file can hold.
fn escapes_shown(text: &str) -> String {
    text.replace('\u{1b}', "ESC")
}
