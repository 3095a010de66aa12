//! Plain data as JSON.

use serde::Serialize;

/// Plain data as an indented JSON text with a line end.
#[must_use]
pub fn json_text(value: &impl Serialize) -> String {
    let mut text = serde_json::to_string_pretty(value)
        .expect("results are plain data with text keys, which always have a JSON form");
    text.push('\n');
    text
}
