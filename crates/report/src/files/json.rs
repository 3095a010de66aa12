//! Plain data as JSON.

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};
use serde::Serialize;

/// Plain data as an indented JSON text with a line end.
#[must_use]
pub fn json_text(value: &impl Serialize) -> String {
    let mut text = serde_json::to_string_pretty(value)
        .expect("results are plain data with text keys, which always have a JSON form");
    text.push('\n');
    text
}

/// Plain data as JSON in one line, with a line end.
#[must_use]
pub fn json_line(value: &impl Serialize) -> String {
    let mut text = serde_json::to_string(value)
        .expect("results are plain data with text keys, which always have a JSON form");
    text.push('\n');
    text
}

/// JSON Schema of plain data as it is written: every field is there, though it
/// may be null.
#[must_use]
pub fn schema_of<T: JsonSchema>() -> Schema {
    SchemaSettings::draft2020_12()
        .for_serialize()
        .into_generator()
        .into_root_schema_for::<T>()
}

/// The same as an indented text with a line end.
#[must_use]
pub fn schema_text<T: JsonSchema>() -> String {
    json_text(schema_of::<T>().as_value())
}
