//! The folder that the results of many cases go into.
//!
//! ```text
//! DIR/cases/FOLDER/…      the results of a case and its record
//! DIR/results.jsonl, summary.*, findings.*   tables over all, and the page
//! DIR/inputs.csv          which file each folder is of; for the operator alone
//! DIR/batch.toml          put there last: what was checked, and how
//! DIR/.archproof-batch.lock   whose folder it is; never taken away
//! ```

use crate::digest::Running;
use crate::error::BatchError;
use crate::settings::LOCK;
use report::Language;
use report::folder::{
    CaseRecord, Conditions, DriftOptions, Overview, PAGE_FILE, Page, TableError, TableFiles,
    harmless,
};
use serde::{Deserialize, Serialize};
use std::fs::{self, File, TryLockError};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// Beginning of the names of what is not finished.
const ASIDE: &str = ".writing-";

/// What the tables of a folder are of: its `batch.toml`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Manifest {
    /// Version of the program.
    pub program: String,
    /// SHA-256 over the protocol and what else was said on how to check.
    pub settings_sha256: String,
    /// What the limits call themselves.
    pub protocol: String,
    /// SHA-256 of name and limits, as in each `result.json`.
    pub protocol_sha256: String,
    /// Number of the shard, from 1.
    pub shard: u64,
    /// Number of shards.
    pub shards: u64,
    /// Cases in the tables.
    pub cases: u64,
    /// Those of them that could not be checked.
    pub unreadable: u64,
}

impl Manifest {
    const FILE: &str = "batch.toml";

    /// As the page over the folder says it.
    pub(crate) fn conditions(&self) -> Conditions {
        Conditions {
            program: self.program.clone(),
            protocol: self.protocol.clone(),
            protocol_sha256: self.protocol_sha256.clone(),
            shard: (self.shards > 1).then_some(self.shard),
            shards: self.shards,
        }
    }

    /// Reads that of a folder.
    ///
    /// # Errors
    /// When it holds no finished results.
    pub fn read(folder: &Path) -> Result<Self, BatchError> {
        let text = mesh::read::settings_text(&folder.join(Self::FILE)).ok();
        text.and_then(|text| toml::from_str(&text).ok())
            .ok_or_else(|| BatchError::Unfinished(folder.to_owned()))
    }
}

/// A row of `inputs.csv`.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Input {
    /// Folder of the case's results.
    pub folder: String,
    /// Path of its case file or scan, below the folder that was given.
    pub place: String,
}

/// Name of the table that says which file each result folder is of.
const INPUTS: &str = "inputs.csv";

/// A result folder that this run alone writes into.
pub struct Output {
    folder: PathBuf,
    /// Locked while it lives; the system unlocks it whatever ends the program.
    _lock: File,
}

impl Output {
    /// Opens a folder, made if it is not there. Without `resume` it must hold
    /// no results.
    pub fn open(folder: &Path, resume: bool) -> Result<Self, BatchError> {
        let cases = folder.join("cases");
        fs::create_dir_all(&cases).map_err(BatchError::write(&cases))?;
        let lock = folder.join(LOCK);
        let file = File::create(&lock).map_err(BatchError::write(&lock))?;
        match file.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => return Err(BatchError::InUse(folder.to_owned())),
            Err(TryLockError::Error(error)) => return Err(BatchError::write(&lock)(error)),
        }
        let output = Self {
            folder: folder.to_owned(),
            _lock: file,
        };
        output.sweep(&cases)?;
        output.sweep(folder)?;
        let is_empty = fs::read_dir(&cases).is_ok_and(|mut entries| entries.next().is_none());
        if !resume && !is_empty {
            return Err(BatchError::InTheWay(folder.to_owned()));
        }
        Ok(output)
    }

    /// Says that the tables are not of what is there, until they are finished.
    pub fn begin(&self) -> Result<(), BatchError> {
        let path = self.folder.join(Manifest::FILE);
        match fs::remove_file(&path) {
            Err(error) if error.kind() != ErrorKind::NotFound => {
                Err(BatchError::write(&path)(error))
            }
            _ => Ok(()),
        }
    }

    /// Takes away what a broken-off run left unfinished.
    fn sweep(&self, folder: &Path) -> Result<(), BatchError> {
        let entries = fs::read_dir(folder).map_err(BatchError::write(folder))?;
        for entry in entries.filter_map(Result::ok) {
            if entry.file_name().to_string_lossy().starts_with(ASIDE) {
                let path = entry.path();
                let gone = if path.is_dir() {
                    fs::remove_dir_all(&path)
                } else {
                    fs::remove_file(&path)
                };
                gone.map_err(BatchError::write(&path))?;
            }
        }
        Ok(())
    }

    /// The results of a case.
    fn case(&self, name: &str) -> PathBuf {
        self.folder.join("cases").join(name)
    }

    /// The record of a case that is done.
    pub fn record(&self, name: &str) -> Option<CaseRecord> {
        CaseRecord::read(&self.case(name)).ok()
    }

    /// A folder in which the results of a case are made ready.
    pub fn aside(&self) -> Result<TempDir, BatchError> {
        let cases = self.folder.join("cases");
        tempfile::Builder::new()
            .prefix(ASIDE)
            .tempdir_in(&cases)
            .map_err(BatchError::write(&cases))
    }

    /// Puts the results of a case in their place, in one step, the record with
    /// them.
    pub fn put(&self, aside: TempDir, name: &str, record: &CaseRecord) -> Result<(), BatchError> {
        let place = self.case(name);
        let put = || {
            keep_what_people_wrote(&place, aside.path())?;
            fs::write(aside.path().join(CaseRecord::FILE), record.encoded())?;
            #[cfg(unix)]
            make_ordinary(aside.path(), &self.folder)?;
            if place.exists() {
                fs::remove_dir_all(&place)?;
            }
            fs::rename(aside.path(), &place)
        };
        put().map_err(BatchError::write(&place))?;
        // It has moved: there is nothing left to take away.
        let _ = aside.keep();
        Ok(())
    }

    /// Writes the tables over these cases, each from its record, and then what
    /// they are of; `about` counts no case yet.
    pub fn finish(
        &self,
        inputs: Vec<Input>,
        about: Manifest,
        page: (&DriftOptions, Language),
    ) -> Result<Overview, BatchError> {
        let inputs = inputs.into_iter().map(|input| (&*self.folder, input));
        let conditions = about.conditions();
        write_tables(&self.folder, inputs.collect(), (conditions, page), about)
    }
}

/// Copies what people wrote beside the results of a case to the new results: marked
/// landmarks, ticks, the decision. Each carries the checksum of its scans.
fn keep_what_people_wrote(place: &Path, aside: &Path) -> std::io::Result<()> {
    let is_by_hand = |name: &str| {
        let is_toml = name.ends_with(".toml");
        is_toml
            && ["decision", "done", "landmarks"]
                .iter()
                .any(|by| name.starts_with(by))
    };
    let entries = match fs::read_dir(place) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(()),
        entries => entries?,
    };
    for entry in entries {
        let entry = entry?;
        if is_by_hand(&entry.file_name().to_string_lossy()) {
            fs::copy(entry.path(), aside.join(entry.file_name()))?;
        }
    }
    Ok(())
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), BatchError> {
    mesh::write::write_atomically(path, |out| out.write_all(bytes)).map_err(|error| {
        let source = match error {
            mesh::write::WriteError::Io { source, .. } => source,
            other => std::io::Error::other(other.to_string()),
        };
        BatchError::write(path)(source)
    })
}

/// Writes into `folder` the tables over these cases, each with the result
/// folder that it lies in, and the page in a language; last of all `about`, with their
/// number.
pub fn write_tables(
    folder: &Path,
    mut cases: Vec<(&Path, Input)>,
    (conditions, (drift, language)): (Conditions, (&DriftOptions, Language)),
    about: Manifest,
) -> Result<Overview, BatchError> {
    cases.sort_by(|a, b| a.1.cmp(&b.1));
    let mut tables = TableFiles::begin(folder)?;
    let mut page = Page::new(drift.clone(), language);
    let mut given = Running::default();
    for (of, input) in &cases {
        let case = of.join("cases").join(&input.folder);
        let record =
            CaseRecord::read(&case).map_err(|_| BatchError::Unfinished((*of).to_owned()))?;
        let link = format!("{}cases/{}", way(folder, of), input.folder);
        tables.add(&record, &link)?;
        given.add(&[&input.folder, &record.provenance.inputs_sha256]);
        page.add(&record, case, link);
    }
    tables.finish()?;
    let (overview, page) = page.finish(conditions, given.finish());
    write(&folder.join(PAGE_FILE), page.as_bytes())?;
    write_inputs(folder, &cases)?;
    let manifest = Manifest {
        cases: overview.cases,
        unreadable: overview.verdicts.unreadable,
        ..about
    };
    // Plain numbers and texts always have a TOML form.
    let text = toml::to_string(&manifest).unwrap_or_default();
    write(&folder.join(Manifest::FILE), text.as_bytes())?;
    Ok(overview)
}

fn write_inputs(folder: &Path, cases: &[(&Path, Input)]) -> Result<(), BatchError> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for (_, input) in cases {
        let safe = Input {
            folder: input.folder.clone(),
            place: harmless(&input.place).into_owned(),
        };
        writer.serialize(safe).map_err(TableError::from)?;
    }
    let inputs = writer
        .into_inner()
        .map_err(|e| TableError::from(e.into_error()))?;
    write(&folder.join(INPUTS), &inputs)
}

/// The rows of a folder's `inputs.csv`.
///
/// # Errors
/// When there is none, or it cannot be read.
pub fn read_inputs(folder: &Path) -> Result<Vec<Input>, BatchError> {
    let bytes = mesh::read::bounded(&folder.join(INPUTS), mesh::read::MAX_TABLE_BYTES)
        .map_err(|_| BatchError::Unfinished(folder.to_owned()))?;
    let unfinished = |_| BatchError::Unfinished(folder.to_owned());
    let mut reader = csv::Reader::from_reader(bytes.as_slice());
    let rows: Result<Vec<Input>, _> = reader.deserialize().collect();
    let unquoted = |input: Input| match input.place.strip_prefix('\'') {
        // The quote that made it harmless for spreadsheets.
        Some(place) if harmless(place) != place => Input {
            place: place.to_owned(),
            ..input
        },
        _ => input,
    };
    let rows = rows.map_err(unfinished)?;
    Ok(rows.into_iter().map(unquoted).collect())
}

/// The way from one folder to another, to be followed by a name: empty, or with
/// a `/` at its end.
fn way(from: &Path, to: &Path) -> String {
    let (Ok(from), Ok(to)) = (from.canonicalize(), to.canonicalize()) else {
        return String::new();
    };
    let both = from.components().zip(to.components());
    let shared = both.take_while(|(a, b)| a == b).count();
    let up = from.components().skip(shared).map(|_| "..".to_owned());
    let down = to.components().skip(shared);
    let down = down.map(|part| part.as_os_str().to_string_lossy().into_owned());
    up.chain(down).map(|part| part + "/").collect()
}

/// Temporary folders are private; a result is as private as its neighbours.
#[cfg(unix)]
fn make_ordinary(folder: &Path, like: &Path) -> std::io::Result<()> {
    fs::set_permissions(folder, fs::metadata(like)?.permissions())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_manifest_and_inputs_too_large_to_be_ours_are_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        for (name, most) in [
            (Manifest::FILE, mesh::read::MAX_SETTINGS_BYTES),
            (INPUTS, mesh::read::MAX_TABLE_BYTES),
        ] {
            let file = File::create(folder.path().join(name)).unwrap();
            file.set_len(most + 1).unwrap();
        }
        assert!(Manifest::read(folder.path()).is_err());
        assert!(read_inputs(folder.path()).is_err());
    }

    #[test]
    fn what_people_wrote_stays_when_a_case_is_checked_again() {
        let folder = tempfile::tempdir().unwrap();
        let [old, new] = ["old", "new"].map(|name| folder.path().join(name));
        fs::create_dir_all(&new).unwrap();
        keep_what_people_wrote(&old, &new).unwrap();
        fs::create_dir_all(&old).unwrap();
        let by_hand = [
            "decision.toml",
            "done.toml",
            "landmarks-maxillary-wash.toml",
        ];
        for name in by_hand.iter().chain(&["result.json", "sheet.html"]) {
            fs::write(old.join(name), name).unwrap();
        }
        keep_what_people_wrote(&old, &new).unwrap();
        let kept = fs::read_dir(&new).unwrap().count();
        let is_same = |name: &&str| fs::read_to_string(new.join(name)).unwrap() == **name;
        assert!(kept == by_hand.len() && by_hand.iter().all(is_same));
    }

    #[test]
    fn the_way_leads_from_one_folder_to_the_other() {
        let folder = tempfile::tempdir().unwrap();
        let [a, b] = ["x/a", "y/b"].map(|name| folder.path().join(name));
        fs::create_dir_all(&a).unwrap();
        fs::create_dir_all(&b).unwrap();
        assert_eq!(way(&a, &a), "");
        assert_eq!(way(&a, &b), "../../y/b/");
        assert_eq!(way(folder.path(), &b), "y/b/");
    }
}
