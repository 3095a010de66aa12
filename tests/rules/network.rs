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

/// Packages of the window's lock file that are built in browsers alone.
const IN_BROWSERS: &[&str] = &["tokio"];

#[test]
fn no_code_uses_the_network() {
    let words = ["std::net", "Tcp", "Udp"];
    assert_none(&words_out_of_place(&words, |_| Where::Nowhere));
}

#[test]
fn no_package_uses_the_network() {
    let used = |lock: &str, but: &[&str]| -> Vec<String> {
        let packages = packages_in(&repo().join(lock)).unwrap();
        let is_meant =
            |name: &&String| PACKAGES.contains(&name.as_str()) && !but.contains(&name.as_str());
        packages
            .iter()
            .filter(is_meant)
            .map(|name| format!("{lock}: {name}"))
            .collect()
    };
    assert_none(&used("Cargo.lock", &[]));
    assert_none(&used("viewer/Cargo.lock", IN_BROWSERS));
}
