//! An HTML document that needs no other file.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use messages::Language;
use sha2::{Digest, Sha256};

/// How every page looks.
const STYLE: &str = include_str!("style.css");

/// A page that needs no other file and runs nothing, in a language.
pub(crate) fn in_language(title: &str, body: &Markup, language: Language) -> String {
    document(title, body, &[STYLE], None, language)
}

/// A page in a language, with a style of its own besides that of every page.
pub(crate) fn with_style(title: &str, body: &Markup, style: &str, language: Language) -> String {
    document(title, body, &[STYLE, style], None, language)
}

/// A page that runs this script alone.
pub(super) fn with_script(title: &str, body: &Markup, script: &str, language: Language) -> String {
    document(title, body, &[STYLE], Some(script), language)
}

fn document(
    title: &str,
    body: &Markup,
    styles: &[&str],
    script: Option<&str>,
    language: Language,
) -> String {
    let page = html! {
        (DOCTYPE)
        html lang=(language.code()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(policy(styles, script));
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="referrer" content="no-referrer";
                title { (title) }
                link rel="icon" href="data:,";
                @for style in styles { style { (PreEscaped(style)) } }
            }
            body {
                (body)
                @if let Some(script) = script { script { (PreEscaped(script)) } }
            }
        }
    };
    page.into_string()
}

/// Whatever a browser would do with a name in the case: nothing is loaded, and nothing styles
/// the page or runs but what has one of these checksums.
fn policy(styles: &[&str], script: Option<&str>) -> String {
    let styles: Vec<String> = styles.iter().map(|style| checksum(style)).collect();
    let script = script.map_or("'none'".to_owned(), checksum);
    format!(
        "default-src 'none'; img-src data:; font-src data:; style-src {}; script-src {script}; \
         base-uri 'none'; form-action 'none'",
        styles.join(" ")
    )
}

/// A style or a script as a policy names it.
fn checksum(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text)))
}
