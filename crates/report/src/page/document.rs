//! An HTML document that needs no other file.

use maud::{DOCTYPE, Markup, PreEscaped, html};

/// A page that needs no other file.
pub(crate) fn whole(title: &str, body: &Markup) -> String {
    // Whatever a browser would do with a name in the case: nothing is loaded or run.
    let policy = "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'";
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
                style { (PreEscaped(include_str!("style.css"))) }
            }
            body { (body) }
        }
    };
    page.into_string()
}
