//! The figures of all promises, each beside its bar: gathered below `target`
//! by the tests, and put into `FIGURES.md` by the program `figures`.

use crate::rows::target;
use serde::{Deserialize, Serialize};
use std::fs::{self, File};
use std::path::Path;

/// One row of the table of figures.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Figure {
    /// Name of the promise, or of what measures the figure.
    pub promise: String,
    /// What was measured, with its unit.
    pub figure: String,
    /// What it is held to.
    pub bar: String,
    /// Last value.
    pub value: String,
    /// How many trials it comes from.
    pub trials: String,
    /// What measures it again.
    pub command: String,
}

impl Figure {
    fn is_of(&self, other: &Self) -> bool {
        (&self.promise, &self.figure) == (&other.promise, &other.figure)
    }
}

/// The command that runs the test that runs.
pub(crate) fn command() -> String {
    let program = std::env::current_exe().unwrap_or_default();
    let name = program.file_stem().unwrap_or_default().to_string_lossy();
    let test = name.rsplit_once('-').map_or(&*name, |(test, _)| test);
    let seeds = std::env::var("ARCHPROOF_SEEDS")
        .map(|count| format!("ARCHPROOF_SEEDS={count} "))
        .unwrap_or_default();
    format!("{seeds}cargo test --workspace --test {test}")
}

/// Puts a figure into `target/figures.csv`, in place of its last value. Several
/// programs may do so at once.
pub(crate) fn record(figure: &Figure) {
    let folder = target();
    let lock = File::create(folder.join("figures.lock")).expect("target can be written");
    lock.lock().expect("the lock can be waited for");
    let path = folder.join("figures.csv");
    let mut all = read(&path);
    put(&mut all, figure.clone());
    let unfinished = folder.join("figures.csv.unfinished");
    let mut writer = csv::Writer::from_path(&unfinished).expect("target can be written");
    for figure in &all {
        writer.serialize(figure).expect("there is room for it");
    }
    writer.flush().expect("there is room for it");
    fs::rename(&unfinished, &path).expect("target can be written");
}

/// The figures gathered in a file; none where there is no such file.
fn read(path: &Path) -> Vec<Figure> {
    csv::Reader::from_path(path)
        .map(|mut reader| reader.deserialize().filter_map(Result::ok).collect())
        .unwrap_or_default()
}

/// The figures that the tests have gathered below `target`.
pub fn gathered() -> Vec<Figure> {
    read(&target().join("figures.csv"))
}

/// Puts a figure in place of its last value, or else after those of its promise.
pub fn put(all: &mut Vec<Figure>, figure: Figure) {
    match all.iter_mut().find(|other| other.is_of(&figure)) {
        Some(last) => *last = figure,
        None => {
            let after = all
                .iter()
                .rposition(|other| other.promise == figure.promise);
            all.insert(after.map_or(all.len(), |i| i + 1), figure);
        }
    }
}

const HEAD: &str = "| promise | figure | bar | last value | trials | command |\n| --- | --- | --- | --- | --- | --- |\n";

/// The rows of a table that [`table`] wrote, and the text before it.
pub fn of_table(text: &str) -> (String, Vec<Figure>) {
    let (before, rows) = text.split_once(HEAD).unwrap_or((text, ""));
    let figures = rows.lines().filter_map(|line| {
        let line = line.strip_prefix("| ")?.strip_suffix(" |")?;
        let cells: Vec<String> = (line.split(" | "))
            .map(|cell| cell.replace("\\|", "|"))
            .map(|cell| if cell == "-" { String::new() } else { cell })
            .collect();
        let [promise, figure, bar, value, trials, command] = cells.try_into().ok()?;
        let [promise, command] = [promise, command].map(|code| code.replace('`', ""));
        Some(Figure {
            promise,
            figure,
            bar,
            value,
            trials,
            command,
        })
    });
    (before.to_owned(), figures.collect())
}

/// The figures as a table in Markdown.
pub fn table(figures: &[Figure]) -> String {
    let cell = |text: &str| match text {
        "" => "-".to_owned(),
        text => text.replace('|', "\\|"),
    };
    let code = |text: &str| match text {
        "" => "-".to_owned(),
        text => format!("`{}`", cell(text)),
    };
    let row = |f: &Figure| {
        let said = [&f.figure, &f.bar, &f.value, &f.trials].map(|text| cell(text));
        format!(
            "| {} | {} | {} |\n",
            code(&f.promise),
            said.join(" | "),
            code(&f.command)
        )
    };
    let rows: String = figures.iter().map(row).collect();
    format!("{HEAD}{rows}")
}
