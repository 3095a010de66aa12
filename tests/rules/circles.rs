//! Files of a crate do not import each other in circles.

use crate::common::{HOUSE, assert_none};

/// Crates in which no circle is allowed.
const WITHOUT: &[&str] = &[
    "geometry",
    "judge",
    "measure",
    "mesh",
    "phantom",
    "statistics",
];

#[test]
fn no_circles_of_files() {
    let mut found = Vec::new();
    for room in HOUSE
        .crates
        .iter()
        .filter(|room| WITHOUT.contains(&room.name.as_str()))
    {
        for circle in room.circles() {
            let files: Vec<String> = circle
                .iter()
                .map(|&file| room.files[file].path.display().to_string())
                .collect();
            found.push(format!("{}: {}", room.name, files.join(", ")));
        }
    }
    assert_none(&found);
}
