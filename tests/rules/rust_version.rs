//! README states the Rust versions that the manifests ask for.

use crate::common::repo;
use std::fs;

#[test]
fn readme_states_the_versions_of_the_manifests() {
    let readme = fs::read_to_string(repo().join("README.md")).unwrap();
    let all = version_in("Cargo.toml", &["workspace", "package"]);
    let window = version_in("viewer/Cargo.toml", &["package"]);
    let wanted = format!("Rust {all} or newer ({window} for the window)");
    assert!(readme.contains(&wanted), "README.md does not say: {wanted}");
}

fn version_in(manifest: &str, table: &[&str]) -> String {
    let text = fs::read_to_string(repo().join(manifest)).unwrap();
    let whole: toml::Table = text.parse().unwrap();
    let table = table
        .iter()
        .fold(&whole, |t, name| t[*name].as_table().unwrap());
    table["rust-version"].as_str().unwrap().to_owned()
}
