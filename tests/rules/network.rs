//! Nothing uses the network.

use crate::common::{assert_none, repo, words_out_of_place};
use archproof_tests::house::packages_in;
use archproof_tests::house::plan::Where;

/// Packages that speak to the network.
const PACKAGES: &[&str] = &[
    "curl",
    "hyper",
    "isahc",
    "native-tls",
    "openssl",
    "reqwest",
    "rustls",
    "tokio",
    "ureq",
];

/// Of these, what a library of the window asks for in browsers alone.
const IN_BROWSERS: &[&str] = &["tokio"];

#[test]
fn no_code_uses_the_network() {
    let words = ["std::net", "Tcp", "Udp"];
    assert_none(&words_out_of_place(&words, |_| Where::Nowhere));
}

#[test]
fn no_package_uses_the_network() {
    let packages = packages_in(&repo().join("Cargo.lock")).unwrap();
    let is_meant =
        |name: &&String| PACKAGES.contains(&name.as_str()) && !IN_BROWSERS.contains(&name.as_str());
    let used: Vec<String> = packages
        .into_iter()
        .filter(|name| is_meant(&name))
        .collect();
    assert_none(&used);
}
