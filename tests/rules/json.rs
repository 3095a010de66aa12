//! Only `report` knows JSON, HTML and SVG; phantoms write their truth as JSON.

use crate::common::{assert_none, packages_out_of_place, words_out_of_place};

#[test]
fn only_report_knows_json() {
    assert_none(&words_out_of_place(&["serde_json", "schemars"], |row| {
        row.json
    }));
    assert_none(&packages_out_of_place(&["serde_json", "schemars"], |row| {
        row.json
    }));
}

#[test]
fn only_report_knows_html_and_svg() {
    assert_none(&words_out_of_place(&["<html", "<svg"], |row| row.markup));
}
