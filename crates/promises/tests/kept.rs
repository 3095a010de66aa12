//! How promises are kept: rows that go on after a stop, the table of figures, and
//! that no promise is left out.

use promises::errors::Errors;
use promises::figures::{Figure, of_table, put, table};
use promises::rows::{Kept, target};
use std::fs;
use std::path::Path;

#[test]
fn what_was_done_is_not_done_again_and_half_a_line_is() {
    let name = format!("test-of-rows-{}", std::process::id());
    let path = target().join("promises").join(format!("{name}.csv"));
    let first = Kept::open(&name);
    assert_eq!(first.row("one", || (1.5, "a, \"b\"".to_owned())).0, 1.5);
    first.row("two", || (2.5, String::new()));
    drop(first);
    let whole = fs::read(&path).expect("it was written");
    fs::write(&path, &whole[..whole.len() - 4]).expect("it can be cut");
    let second = Kept::open(&name);
    let again: (f64, String) = second.row("one", || panic!("it was done"));
    assert_eq!(again, (1.5, "a, \"b\"".to_owned()));
    assert_eq!(second.row("two", || (3.5, String::new())).0, 3.5);
    fs::remove_file(&path).expect("it is there");
}

fn figure(promise: &str, figure: &str, value: &str) -> Figure {
    Figure {
        promise: promise.to_owned(),
        figure: format!("`{figure}` of it"),
        bar: "3 mm".to_owned(),
        value: value.to_owned(),
        trials: String::new(),
        command: "one | another".to_owned(),
    }
}

#[test]
fn a_table_is_read_as_it_was_written() {
    let all = [figure("a", "x", "1"), figure("b", "y", "2, 3")];
    let (before, read) = of_table(&format!("# Figures\n\n{}", table(&all)));
    assert_eq!(
        (before.as_str(), read.as_slice()),
        ("# Figures\n\n", &all[..])
    );
}

#[test]
fn a_figure_takes_the_place_of_its_last_value() {
    let mut all = vec![figure("a", "x", "1"), figure("b", "y", "2")];
    put(&mut all, figure("a", "x", "7"));
    put(&mut all, figure("a", "z", "8"));
    let values: Vec<&str> = all.iter().map(|f| f.value.as_str()).collect();
    assert_eq!(values, ["7", "8", "2"]);
}

#[test]
fn quantiles_are_those_of_the_values_rounded_up() {
    let all: Errors = (1..=100).map(|i| f64::from(i) * 0.001).collect();
    let twice = Errors::merged([all.clone(), all]);
    assert_eq!(twice.count(), 200);
    assert!((twice.quantile(0.5) - 0.050).abs() < 2e-5);
    assert!((twice.quantile(0.95) - 0.095).abs() < 2e-5);
}

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
