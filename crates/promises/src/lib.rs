//! The figures that this software promises, each asked of phantoms whose truth
//! is known by formula.
//!
//! Each function here is one promise: it takes the [`Population`] that it is
//! asked of, prints its figures and panics where one misses its bar. Every day
//! one mouth of each jaw is asked (`tests/one_mouth.rs` of the whole); the tests
//! of this crate ask many, as many of each jaw as `ARCHPROOF_SEEDS` says.
//!
//! ```text
//! ARCHPROOF_SEEDS=50 cargo test -p archproof-promises --test border -- --nocapture
//! cargo run -p archproof-promises --bin figures
//! ```
//!
//! A run that was stopped goes on where it stopped, and the second command puts
//! the figures into `FIGURES.md`.
#![allow(clippy::print_stdout, reason = "the figures are what it is for")]

pub mod border;
pub mod border_change;
pub mod colour;
pub mod cover;
pub mod crest;
mod errors;
pub mod figures;
pub mod frame;
pub mod intake;
pub mod jaws;
pub mod landmarks;
pub mod landmarks_lost;
mod population;
pub mod registration;
mod rows;
pub mod spots;
pub mod tissue;
pub mod tray;
pub mod wash;
pub mod wash_places;

pub use population::{Asked, Population};

/// A test for each promise named, asked of a population; or for each that needs
/// none.
#[macro_export]
macro_rules! ask {
    ($population:ident, $module:ident: $($promise:ident),+ $(,)?) => {$(
        #[test]
        fn $promise() {
            $crate::$module::$promise($crate::Population::$population);
        }
    )+};
    ($module:ident: $($promise:ident),+ $(,)?) => {$(
        #[test]
        fn $promise() {
            $crate::$module::$promise();
        }
    )+};
}

#[cfg(test)]
mod tests {
    use std::fs;
    use std::path::Path;

    fn texts(folder: &str) -> Vec<(String, String)> {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
        let entries = fs::read_dir(folder).expect("the folder is there");
        let paths = entries.map(|entry| entry.expect("it can be listed").path());
        paths
            .filter(|path| path.extension().is_some_and(|ext| ext == "rs"))
            .map(|path| (path.display().to_string(), fs::read_to_string(&path)))
            .map(|(name, text)| (name, text.expect("it is text")))
            .collect()
    }

    #[test]
    fn every_promise_is_asked_of_one_mouth_and_of_many() {
        let [many, one] = ["tests", "../../tests"].map(|folder| {
            let texts = texts(folder).into_iter().map(|(_, text)| text);
            texts.collect::<String>()
        });
        let mut promises = 0;
        for (file, text) in texts("src") {
            let marked = text.lines().filter_map(|line| line.strip_prefix("pub fn "));
            let names = marked.filter_map(|rest| rest.strip_suffix("(population: Population) {"));
            for name in names {
                promises += 1;
                assert!(many.contains(name) && one.contains(name), "{file}: {name}");
            }
        }
        assert!(promises > 20);
    }

    #[test]
    fn seeds_are_those_of_the_population() {
        for (file, text) in texts("src") {
            let lines = text
                .lines()
                .filter(|line| !file.ends_with("lib.rs") && line.contains("seed"));
            for line in lines {
                let is_range = line.split("..").skip(1).any(|after| {
                    after
                        .trim_start_matches('=')
                        .starts_with(|c: char| c.is_ascii_digit())
                });
                assert!(!is_range, "{file}: a range over seeds: {line}");
            }
        }
    }
}
