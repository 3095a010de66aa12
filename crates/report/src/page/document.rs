//! An HTML document that needs no other file.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use sha2::{Digest, Sha256};

/// A page that needs no other file and runs nothing.
pub(crate) fn whole(title: &str, body: &Markup) -> String {
    page(title, body, None)
}

/// A page that needs no other file and runs this script alone.
pub(super) fn with_script(title: &str, body: &Markup, script: &str) -> String {
    page(title, body, Some(script))
}

fn page(title: &str, body: &Markup, script: Option<&str>) -> String {
    // Whatever a browser would do with a name in the case: nothing is loaded, and nothing runs
    // but the script with this checksum.
    const STYLE: &str = include_str!("style.css");
    let run = script.map_or("'none'".to_owned(), checksum);
    let policy = format!(
        "default-src 'none'; img-src data:; style-src {}; script-src {run}; base-uri 'none'; form-action 'none'",
        checksum(STYLE)
    );
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(policy);
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="referrer" content="no-referrer";
                title { (title) }
                link rel="icon" href="data:,";
                style { (PreEscaped(STYLE)) }
            }
            body {
                (body)
                @if let Some(script) = script { script { (PreEscaped(script)) } }
            }
        }
    };
    page.into_string()
}

/// A script as a policy names it.
fn checksum(script: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(script)))
}
