//! The window shows figures and computes none.

use crate::common::{assert_none, words_out_of_place};

#[test]
fn measuring_is_used_only_where_the_plan_allows_it() {
    assert_none(&words_out_of_place(&["measure::", "geometry::"], |row| {
        row.measures
    }));
}
