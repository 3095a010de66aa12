//! Rows of a promise that were computed before: a run that was stopped goes on.

use serde::Serialize;
use serde::de::DeserializeOwned;
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::fs::{self, File};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex, PoisonError};

/// A digest of the program that runs: another build starts anew.
static BUILD: LazyLock<String> = LazyLock::new(|| {
    let program = std::env::current_exe().expect("a program knows its file");
    let digest = Sha256::digest(fs::read(program).expect("and can read it"));
    digest
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect()
});

/// The folder in which cargo builds: the one that it has tagged.
pub fn target() -> PathBuf {
    let program = std::env::current_exe().expect("a program knows its file");
    let tagged = |folder: &&Path| folder.join("CACHEDIR.TAG").exists();
    let found = program.ancestors().find(tagged);
    found.expect("cargo tags its target folder").to_owned()
}

/// `target/promises/NAME.csv`: build, trial and row (JSON) of each trial done.
pub struct Kept {
    known: HashMap<String, String>,
    file: Mutex<File>,
}

impl Kept {
    /// The rows of a promise that this build has computed.
    pub fn open(promise: &str) -> Self {
        let folder = target().join("promises");
        fs::create_dir_all(&folder).expect("a folder below target can be made");
        let path = folder.join(format!("{promise}.csv"));
        let known: HashMap<String, String> = csv::Reader::from_path(&path)
            .map(|mut reader| {
                let rows = reader.deserialize::<[String; 3]>();
                rows.filter_map(Result::ok)
                    .filter(|[build, ..]| *build == *BUILD)
                    .map(|[_, trial, row]| (trial, row))
                    .collect()
            })
            .unwrap_or_default();
        // Written anew: a run that was killed may have left half a line.
        let mut text = line(["build", "trial", "row"]);
        for (trial, row) in &known {
            text.extend(line([&BUILD, trial, row]));
        }
        let mut file = File::create(&path).expect("a file below target can be written");
        file.write_all(&text).expect("there is room for it");
        Self {
            known,
            file: Mutex::new(file),
        }
    }

    /// The row of a trial: the one kept, or else a new one, which is then kept.
    pub fn row<Row>(&self, trial: &str, compute: impl FnOnce() -> Row) -> Row
    where
        Row: Serialize + DeserializeOwned,
    {
        let kept = self.known.get(trial);
        if let Some(row) = kept.and_then(|text| serde_json::from_str(text).ok()) {
            return row;
        }
        let row = compute();
        let text = serde_json::to_string(&row).expect("rows are plain data");
        let mut file = self.file.lock().unwrap_or_else(PoisonError::into_inner);
        file.write_all(&line([&BUILD, trial, &text]))
            .expect("there is room for it");
        row
    }
}

fn line(fields: [&str; 3]) -> Vec<u8> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(fields).expect("memory takes it");
    writer.into_inner().expect("memory takes it")
}
