//! Tables over all cases, each in three formats that hold the same rows: JSON
//! (a row a line), CSV and Parquet.

use super::record::CaseRecord;
use super::rows::{FindingRow, ImpressionRow};
use super::workbook::CaseWorkbook;
use judge::system_says;
use mesh::write::{persist, temporary_in};
use messages::{Message, message};
use parquet::errors::ParquetError;
use parquet::file::writer::SerializedFileWriter;
use parquet::record::RecordWriter;
use rust_xlsxwriter::XlsxError;
use serde::Serialize;
use std::borrow::Cow;
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};
use tempfile::NamedTempFile;
use thiserror::Error;

/// Rows of a Parquet row group.
const GROUP: usize = 10_000;

/// Why the tables could not be written.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum TableError {
    /// The system refused.
    Io(#[from] io::Error),
    /// A CSV file cannot be made.
    Csv(#[from] csv::Error),
    /// The workbook cannot be made.
    Workbook(#[from] XlsxError),
    /// A Parquet file cannot be made.
    Parquet(#[from] ParquetError),
}

impl TableError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Io(error) => message!("tables-unwritten", reason = system_says(error)),
            Self::Csv(error) => message!("tables-no-csv", reason = error.to_string()),
            Self::Workbook(error) => message!("tables-no-workbook", reason = error.to_string()),
            Self::Parquet(error) => message!("tables-no-parquet", reason = error.to_string()),
        }
    }
}

/// The tables of a folder of cases, while they are being written. Nothing is
/// seen of them before [`finish`](Self::finish).
pub struct TableFiles {
    folder: PathBuf,
    impressions: Table<ImpressionRow>,
    findings: Table<FindingRow>,
    workbook: CaseWorkbook,
}

impl TableFiles {
    /// Names of the files: rows of impressions, then rows of findings, and the list of cases.
    pub const NAMES: [&str; 7] = [
        "results.jsonl",
        "summary.csv",
        "summary.parquet",
        "findings.jsonl",
        "findings.csv",
        "findings.parquet",
        Self::WORKBOOK,
    ];
    /// The list of all cases.
    const WORKBOOK: &str = "summary.xlsx";

    /// Begins tables in a folder that is there.
    ///
    /// # Errors
    /// When the folder cannot be written to.
    pub fn begin(folder: &Path) -> Result<Self, TableError> {
        Ok(Self {
            folder: folder.to_owned(),
            impressions: Table::begin(folder)?,
            findings: Table::begin(folder)?,
            workbook: CaseWorkbook::begin()?,
        })
    }

    /// Adds the rows of a case, whose results lie at `link`, seen from the tables.
    ///
    /// # Errors
    /// When the disk is full.
    pub fn add(&mut self, record: &CaseRecord, link: &str) -> Result<(), TableError> {
        for row in &record.impressions {
            self.impressions.add(row.clone())?;
        }
        for row in &record.findings {
            self.findings.add(row.clone())?;
        }
        let link = format!("{link}/{}", record.opens());
        self.workbook.add(record, &link)?;
        Ok(())
    }

    /// Puts the tables in their places.
    ///
    /// # Errors
    /// When the disk is full.
    pub fn finish(self) -> Result<(), TableError> {
        let files = [self.impressions.finish()?, self.findings.finish()?];
        let mut workbook = temporary_in(&self.folder)?;
        self.workbook.finish(workbook.as_file_mut())?;
        for (file, name) in files.into_iter().flatten().zip(Self::NAMES) {
            persist(file, name)?;
        }
        Ok(persist(workbook, Self::WORKBOOK)?)
    }
}

/// One table in its three formats.
struct Table<T> {
    json: BufWriter<NamedTempFile>,
    csv: csv::Writer<NamedTempFile>,
    parquet: SerializedFileWriter<NamedTempFile>,
    /// Rows that wait for their row group to fill.
    waiting: Vec<T>,
}

/// The fields of a row, as CSV has them.
fn fields_of<T: Serialize>(row: &T) -> Result<csv::StringRecord, TableError> {
    let mut writer = csv::WriterBuilder::new()
        .has_headers(false)
        .from_writer(Vec::new());
    writer.serialize(row)?;
    let bytes = writer.into_inner().map_err(|e| e.into_error())?;
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .from_reader(bytes.as_slice());
    let mut fields = csv::StringRecord::new();
    reader.read_record(&mut fields)?;
    Ok(fields)
}

/// A text that a spreadsheet would take for a formula, made harmless by a quote before it;
/// numbers are left as they are.
#[must_use]
pub fn harmless(text: &str) -> Cow<'_, str> {
    let is_formula = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    if is_formula && text.parse::<f64>().is_err() {
        Cow::Owned(format!("'{text}"))
    } else {
        Cow::Borrowed(text)
    }
}

impl<T: Serialize> Table<T>
where
    for<'a> &'a [T]: RecordWriter<T>,
{
    fn begin(folder: &Path) -> Result<Self, TableError> {
        let none: &[T] = &[];
        let schema = none.schema()?;
        let mut csv = csv::WriterBuilder::new()
            .has_headers(false)
            .from_writer(temporary_in(folder)?);
        csv.write_record(schema.get_fields().iter().map(|column| column.name()))?;
        let parquet = temporary_in(folder)?;
        Ok(Self {
            json: BufWriter::new(temporary_in(folder)?),
            csv,
            parquet: SerializedFileWriter::new(parquet, schema, Default::default())?,
            waiting: Vec::new(),
        })
    }

    fn add(&mut self, row: T) -> Result<(), TableError> {
        serde_json::to_writer(&mut self.json, &row).map_err(io::Error::from)?;
        self.json.write_all(b"\n")?;
        let fields = fields_of(&row)?;
        self.csv
            .write_record(fields.iter().map(|field| harmless(field).into_owned()))?;
        self.waiting.push(row);
        if self.waiting.len() == GROUP {
            self.put_group()?;
        }
        Ok(())
    }

    fn put_group(&mut self) -> Result<(), TableError> {
        if !self.waiting.is_empty() {
            let mut group = self.parquet.next_row_group()?;
            self.waiting.as_slice().write_to_row_group(&mut group)?;
            group.close()?;
            self.waiting.clear();
        }
        Ok(())
    }

    /// The files, complete: JSON, CSV, Parquet.
    fn finish(mut self) -> Result<[NamedTempFile; 3], TableError> {
        self.put_group()?;
        let json = self.json.into_inner().map_err(|e| e.into_error())?;
        let csv = self.csv.into_inner().map_err(|e| e.into_error())?;
        Ok([json, csv, self.parquet.into_inner()?])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::files::json::schema_of;
    use crate::folder::record::Provenance;
    use crate::result::CaseResult;
    use crate::testing::checked_with_spots;
    use std::fs;

    fn records() -> [CaseRecord; 2] {
        let provenance = Provenance {
            inputs_sha256: String::new(),
            settings_sha256: String::new(),
            program: String::new(),
        };
        let result = CaseResult::of(&checked_with_spots());
        let why = Message::verbatim("no surface, \"but\" text");
        [
            CaseRecord::checked(&result, "a", &[], Vec::new(), provenance.clone()),
            CaseRecord::unreadable(None, "b", (why, false), provenance),
        ]
    }

    fn written(records: &[CaseRecord]) -> tempfile::TempDir {
        let folder = tempfile::tempdir().unwrap();
        let mut tables = TableFiles::begin(folder.path()).unwrap();
        for record in records {
            tables.add(record, "cases/x").unwrap();
        }
        tables.finish().unwrap();
        folder
    }

    /// Parquet is compared by another library in `tests/outside`.
    #[test]
    fn json_and_csv_hold_the_rows() {
        let records = records();
        let folder = written(&records);
        let rows: Vec<ImpressionRow> = records.iter().flat_map(|r| r.impressions.clone()).collect();
        let json = fs::read_to_string(folder.path().join("results.jsonl")).unwrap();
        let read: Vec<ImpressionRow> = json
            .lines()
            .map(|l| serde_json::from_str(l).unwrap())
            .collect();
        assert_eq!(read, rows);
        let mut csv = csv::Reader::from_path(folder.path().join("summary.csv")).unwrap();
        let read: Vec<ImpressionRow> = csv.deserialize().map(Result::unwrap).collect();
        assert_eq!(read, rows);
    }

    #[test]
    fn tables_without_rows_name_their_columns() {
        let folder = written(&[]);
        let mut names: Vec<_> = fs::read_dir(folder.path())
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        let mut wanted = TableFiles::NAMES;
        wanted.sort_unstable();
        assert_eq!(names, wanted);
        let csv = fs::read_to_string(folder.path().join("findings.csv")).unwrap();
        assert!(
            csv.starts_with("folder,case,finding,severity,check,"),
            "{csv}"
        );
    }

    #[test]
    fn no_text_of_a_user_is_a_formula_in_a_spreadsheet() {
        for (text, safe) in [
            ("=1+1", "'=1+1"),
            ("@SUM(A1)", "'@SUM(A1)"),
            ("-cmd", "'-cmd"),
            ("+cmd", "'+cmd"),
            ("-0.25", "-0.25"),
            ("D-1042", "D-1042"),
            ("", ""),
        ] {
            assert_eq!(harmless(text), safe);
        }
        let mut records = records();
        records[0].impressions[0].case = Some("=HYPERLINK(\"x\")".to_owned());
        let folder = written(&records);
        let csv = fs::read_to_string(folder.path().join("summary.csv")).unwrap();
        assert!(csv.contains("'=HYPERLINK") && !csv.contains(",=") && !csv.contains(",\"="));
    }

    #[test]
    fn every_column_is_explained() {
        for schema in [schema_of::<ImpressionRow>(), schema_of::<FindingRow>()] {
            let columns = schema.as_value()["properties"].as_object().unwrap().clone();
            assert!(columns.values().all(|c| c["description"].is_string()));
        }
    }
}
